#include "core/publish/against_table_text.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

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

}  // namespace

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
