#pragma once

#include <map>
#include <string>
#include <tuple>
#include <variant>
#include <vector>

#include "core/recipe/dossier.h"

namespace nettare {

/// Puts what documents weighed into a dossier. What a dish and the kept recipes in it both hold is
/// there once, since it is uncertain once: the same scale, the same vessel, the same moment at a
/// scale, the same series. It is the same where the id and all else are equal; two indications
/// without a time could be of two days, so they are never the same, but a series of such is, by
/// everything that they showed.
class SharedWeighing {
public:
    explicit SharedWeighing(Dossier& dossier) : dossier_{dossier} {}

    /// From here on things are compared; a document that stands alone can do without.
    void share() { shares_ = true; }

    // Each answers the place of the thing in its list of the dossier. What it refers to is there.
    std::size_t add(Scale scale);
    std::size_t add(Vessel vessel);
    std::size_t add(Indication indication);
    std::size_t add(const Reading& reading);
    std::size_t add(SeriesData series);

private:
    using Shown = std::tuple<std::string, std::size_t, std::string, WeighedState, std::string>;
    using TareShown = std::variant<std::size_t, Shown>;  ///< vessel, or indication
    using Weighed = std::tuple<std::string, int, Shown, TareShown>;
    /// What it is pooled with: the assumed spread, or an earlier one with name, s and freedom.
    using Pooled = std::tuple<bool, std::string, std::string, std::string>;
    using Repeated =
        std::tuple<std::string, std::string, SeriesKind, std::string, Pooled, std::vector<Weighed>>;

    Shown shown(std::size_t indication) const;
    Weighed weighed(std::size_t reading) const;
    Repeated repeated(const SeriesData& series) const;

    Dossier& dossier_;
    bool shares_ = false;
    std::map<std::tuple<std::string, std::string, std::string_view, std::string, double>,
             std::size_t>
        scales_;
    std::map<std::tuple<std::string, std::string, std::size_t, std::string>, std::size_t> vessels_;
    std::map<Shown, std::size_t> indications_;
    std::map<std::tuple<std::string, int, std::size_t, bool, std::size_t>, std::size_t> readings_;
    std::map<Repeated, std::size_t> series_;
};

}  // namespace nettare
