#include "core/publish/against_table_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/food/piece_word.h"
#include "core/publish/measure_text.h"
#include "core/publish/number_text.h"
#include "core/publish/series_text.h"
#include "core/publish/within_text.h"

namespace nettare {

namespace {

/// A series on the way to words.
struct Compared {
    std::string ours;        ///< "your prawns"
    std::string theirs;      ///< "the table's 10.6 g"
    std::string difference;  ///< "2 g"
    int readings = 0;
    const AgainstPublished& against;
};

/// Freedom is told in whole degrees, rounded down.
std::string welchText(const AgainstPublished& against) {
    const std::string degrees = numberAt(0, against.freedom, Direction::Floor);
    return fmt::format("t = {}, {} {} of freedom", numberAt(2, against.t), degrees,
                       degrees == "1" ? "degree" : "degrees");
}

std::string differsText(const Compared& told) {
    const bool less = told.against.difference < 0;
    // Where neither side scatters there is no t.
    const std::string how =
        told.against.freedom > 0 ? fmt::format(" ({})", welchText(told.against)) : "";
    return fmt::format("{} are {} than {}, and the difference is real{}.", capitalised(told.ours),
                       less ? "lighter" : "heavier", told.theirs, how);
}

/// What would show a difference as large as this one; empty where nothing is to be said.
std::string moreText(const Compared& told) {
    if (told.against.difference == 0) return {};
    const std::string exact = told.against.publishedExact ? " if that figure were exact" : "";
    if (!told.against.moreToTell)
        return fmt::format("; not even {} more weighings would show one of {}{}", kMostMoreReadings,
                           told.difference, exact);
    const int more = *told.against.moreToTell;
    return fmt::format("; {} more {} would show one of {}{}", more,
                       more == 1 ? "weighing" : "weighings", told.difference, exact);
}

std::string cannotBeTold(const Compared& told) {
    if (told.readings == 1)
        return fmt::format("With one reading no difference from {} can be told{}.", told.theirs,
                           moreText(told));
    std::string text = fmt::format(
        "Whether {} differ from {} cannot be told, since no spread is published with it", told.ours,
        told.theirs);
    if (told.against.moreToTell == 0)
        return text + "; the interval of their mean leaves that figure out.";
    return text + moreText(told) + ".";
}

std::string agreesText(const Compared& told) {
    const std::string how =
        told.against.freedom > 0 ? fmt::format(" ({})", welchText(told.against)) : "";
    return fmt::format("No difference from {} shows{}{}.", told.theirs, how, moreText(told));
}

constexpr std::size_t kMostMeasures = 4;

/// "large ear, medium ear and 3 more".
std::string listed(const std::vector<std::string>& measures, std::string_view joint) {
    const std::size_t shown = std::min(measures.size(), kMostMeasures);
    const auto end = measures.begin() + static_cast<std::ptrdiff_t>(shown);
    std::string text = fmt::format("{}", fmt::join(measures.begin(), end, joint));
    if (measures.size() > shown) text += fmt::format(" and {} more", measures.size() - shown);
    return text;
}

}  // namespace

std::string notInTableText(const SeriesKey& key, const std::vector<std::string>& fitting,
                           const std::vector<std::string>& all) {
    const std::string one = singularOf(key.of);
    if (fitting.size() > 1)
        return fmt::format(
            "The table has several weights of one {}: {}. Tag the readings by the one that is "
            "meant to hold them against it.",
            one, listed(fitting, "; "));
    if (all.empty()) return fmt::format("The table has no weight of one {}.", one);
    return fmt::format("The table has no weight of one {}; it has {}.", one, listed(all, ", "));
}

std::string againstTableText(const SeriesKey& key, const SeriesReport& report,
                             const PublishedMean& published) {
    const double difference = std::fabs(report.against->difference);
    const Compared told{fmt::format("your {}", seriesPlural(key)),
                        fmt::format("the table's {} g", shortNumber(published.mean)),
                        fmt::format("{} g", shortNumber(difference)), report.statistics.readings,
                        *report.against};
    switch (told.against.verdict) {
        case AgainstTable::Differs:
            return differsText(told);
        case AgainstTable::Agrees:
            return agreesText(told);
        case AgainstTable::CannotBeTold:
            break;
    }
    return cannotBeTold(told);
}

}  // namespace nettare
