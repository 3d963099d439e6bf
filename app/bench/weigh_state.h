#pragma once

#include <QString>

#include <optional>
#include <string>

#include "app/bench/weigh_subject.h"
#include "core/ledger/bench_equipment.h"

namespace nettare {

/// What the number that the scale shows is held against.
enum class TareKind {
    Zeroed,    ///< the scale shows zero with nothing, or the empty bowl, on it
    Vessel,    ///< a vessel with a known tare
    Shown,     ///< the scale showed it just now
    SameBowl,  ///< the bowl with all that was weighed into it so far
    Jar,       ///< a jar that is taken from: what it showed before less what it shows now
};

struct BenchTare {
    TareKind kind = TareKind::Zeroed;
    std::string vessel;  ///< name
    Decimal shown;
    std::string entry;  ///< UUID of what showed it; of a jar empty until it was weighed
    std::string at;
    bool inLedger = false;
    std::string scale{};    ///< of a vessel: that it was weighed empty on
    Decimal readability{};  ///< of that scale, in its unit
};

/// A vessel of the kitchen as a tare.
[[nodiscard]] BenchTare tareOf(const KnownVessel& vessel);

/// A weighing as it stands at the bench; what is typed is handed in.
struct WeighState {
    KnownScale scale;
    BenchTare tare;
    WeighSubject subject;
    int pieces = 1;
    std::string before;  ///< UUID of the first reading of a pair; empty until it was weighed
    std::optional<Decimal> wanted;  ///< net that is weighed out
    bool add = false;               ///< to what the recipe had weighed for the same, not instead

    /// The jar is on the scale for the first time: what it shows is no net yet.
    [[nodiscard]] bool isJarBefore() const {
        return tare.kind == TareKind::Jar && tare.entry.empty();
    }
    /// The first of a pair.
    [[nodiscard]] bool isBefore() const { return isPair(subject) && before.empty(); }
    /// In the scale's unit; nothing while a jar is weighed first.
    [[nodiscard]] std::optional<Decimal> netOf(Decimal shown) const;
    [[nodiscard]] std::optional<double> netGramsOf(Decimal shown) const;
    /// Steps of the scale that showed the tare, in the scale's unit.
    [[nodiscard]] Decimal tareReadability() const;
};

/// False where no scale is known yet: its readability is 0.
[[nodiscard]] bool hasSteps(const KnownScale& scale);

/// Why it cannot be recorded, and what to do; empty where it can.
[[nodiscard]] QString benchRefusal(const WeighState& state, Decimal shown);

/// Under 20 steps of the scale: what rounding alone is, with the figure. Empty from there on.
[[nodiscard]] QString benchCaution(const WeighState& state, Decimal shown);

/// "58.9", with a minus sign as it is printed.
[[nodiscard]] QString benchNumber(Decimal number);
/// "58.9 g"
[[nodiscard]] QString benchMass(Decimal number, const std::string& unit);

/// "g ± 0.1": the unit of a net, with its 95 % half-width by the rounding of its two indications.
[[nodiscard]] QString unitWithin(const WeighState& state);

/// "steel bowl · 212.2 g", "zero", "same bowl · 412.6 g", "from the jar"
[[nodiscard]] QString tareWords(const BenchTare& tare, const std::string& unit);

/// "− tare 212.2 g", "jar 523.4 g −", as it stands beside the number typed.
[[nodiscard]] QString tareSum(const WeighState& state);

}  // namespace nettare
