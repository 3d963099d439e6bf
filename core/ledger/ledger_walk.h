#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/ledger/ledger_entry.h"
#include "core/ledger/sayings.h"
#include "core/ledger/scale_checks.h"

namespace nettare {

/// What an entry is worth, seen from the end of the ledger. A net is gross less tare, or what the
/// jar showed before less gross; nothing where one of them is not known.
struct WalkedEntry {
    std::optional<Decimal> gross, tare, jarBefore, net;
    const Said* said = nullptr;  ///< null where nothing was said of it
    /// What took back its tare, or the jar before; null while that stands.
    const Said* ofTare = nullptr;
    /// What took back a ratio's before, where nothing stands in its place; null else.
    const Said* ofBefore = nullptr;
    bool suspect = false;  ///< a check doubts its scale, that of its tare, or of a ratio's before
};

/// Goes over a ledger of any length twice, since what an entry is worth is said after it: every
/// entry is handed to survey() first, and again, in the same order, to look(). Memory grows with
/// the entries that speak of others, are others' tares or a ratio's before, about 60 bytes for one;
/// never with the texts.
class LedgerWalk {
public:
    void survey(const ChainedEntry& chained);
    /// All entries were surveyed. What was said lives as long as this.
    [[nodiscard]] WalkedEntry look(const ChainedEntry& chained);

private:
    /// 128 bits of a UUID.
    struct Uuid {
        std::uint64_t high = 0, low = 0;
        friend bool operator==(const Uuid&, const Uuid&) = default;
    };
    struct UuidHash {
        std::size_t operator()(const Uuid& id) const {
            return std::hash<std::uint64_t>{}(id.high ^ (id.low * 0x9E3779B97F4A7C15U));
        }
    };
    /// What an entry showed that is another one's tare or before; known once it was looked at.
    struct TareShown {
        Decimal shown;
        std::uint8_t unit = 0;    ///< place in units_, from 1
        bool suspect = false;     ///< its own scale
        bool netSuspect = false;  ///< or that of its tare
    };
    /// An entry that took another one's place.
    struct Correction {
        long long sequence = 0;
        std::string scale;
    };

    [[nodiscard]] static Uuid uuidOf(std::string_view id);
    [[nodiscard]] std::uint8_t unitOf(const std::string& symbol);
    /// What the tare of an entry, or the jar before, showed; null where it is not known.
    [[nodiscard]] const TareShown* tareOf(const LedgerEntry& entry) const;
    /// What a ratio names as before, followed to what took its place.
    struct Before {
        const std::string* id;             ///< of the last that is known
        const Correction* last = nullptr;  ///< null where that is what the ratio names itself
        const Said* takenBack = nullptr;   ///< null while it stands
    };
    [[nodiscard]] Before beforeOf(const std::string& named) const;
    /// Whether what stands before a ratio is in doubt. Of what takes its place after the ratio, the
    /// scale of its own tare is not asked.
    [[nodiscard]] bool isSuspect(const Before& before) const;
    /// What took an entry back; null while it stands, or where there is none.
    [[nodiscard]] const Said* takenBack(const std::string& id) const;
    void weigh(const LedgerEntry& entry, const TareShown* other, WalkedEntry& walked);

    Sayings sayings_;
    std::vector<ChainedEntry> checks_;  ///< and what speaks of them
    std::optional<ScaleChecks> scales_;
    std::vector<std::string> units_;
    std::unordered_map<Uuid, TareShown, UuidHash> tares_;
    std::unordered_map<std::string, Correction> corrections_;
};

}  // namespace nettare
