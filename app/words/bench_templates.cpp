#include "app/words/bench_templates.h"

namespace nettare {

std::string_view benchTemplateFor(ErrorCode code) {
    using enum ErrorCode;
    switch (code) {
        case TagsNotSorted:
            return "the conditions do not stand in the order of the alphabet, each once, from "
                   "“{found}” "
                   "on; sort them.";
        case ScaleNotKnown:
            return "no scale here is called “{found}”; it can be {known}, or add it first.";
        case ScaleAmbiguous:
            return "there are several scales, {known}; say which one showed it.";
        case VesselNotKnown:
            return "no vessel here is called “{found}”; it can be {known}, or weigh it empty "
                   "first.";
        case VesselOtherUnit:
            return "the tare of “{found}” is known in {unit}, and the scale shows {wanted}; weigh "
                   "it empty on this scale.";
        case ReadingNotFound:
            return "the ledger has no reading {found}; name one by its id, or by how that begins.";
        case ReadingOverruled:
            return "the reading {found} was taken back before; record a new one.";
        case ReadingNotLeftOut:
            return "the reading {found} counts already; nothing is to be done.";
        case ReadingLeftOut:
            return "the reading {found} is left out of its series; take it in first, with a reason "
                   "of its own (--take-in).";
        case ReadingOfNoSeries:
            return "the reading {found} is of no series, so that none asks about it; nothing is to "
                   "be done.";
        case NotOfTheScale:
            return "the scale shows steps of {step}, and {found} is none; type what it showed.";
        case AboveCapacity:
            return "the scale takes {most} at most, and {found} is more; weigh in two parts.";
        case SeriesNotFound:
            return "there is no series of “{found}”; there are series of {known}.";
        case SeriesAmbiguous:
            return "there are several series, {known}; say which one with its piece, measure or "
                   "“edible / bought”.";
        case SeriesOfOther:
            return "the line counts {wanted} and the series is of {found}; choose a series of "
                   "{wanted}, or change the line.";
        case SeriesNotFollowed:
            return "“{recipe}” counts nothing by the series {found} with those conditions; give a "
                   "line the series first, below the ingredient table.";
        case SeriesShowsNoSpread:
            return "fewer than two readings of “{found}” count, so it shows no spread to pool "
                   "with; weigh more of it, or pool with another series.";
        case PoolOfOther:
            return "“{found}” is no series of {wanted}; pool with one that is.";
        case PoolWithItself:
            return "these readings of “{found}” are among those that are shown; split the series "
                   "with --tag, or pool with another one.";
        case ReadingOfNothing:
            return "a reading of a series needs its food and what it is of; name both.";
        case PairNotWhole:
            return "the reading {found} says what came out, and not what went in; name the reading "
                   "before it.";
        case LedgerWithoutHead:
            return "the ledger has no entry with the hash {found}; it is not the one that was "
                   "printed, or its end is lost: compare it with a backup.";
        default:
            return {};
    }
}

std::string_view benchTemplateOfNone(ErrorCode code) {
    using enum ErrorCode;
    switch (code) {
        case ScaleNotKnown:
            return "there is no scale here yet; add one with the steps that it shows.";
        case VesselNotKnown:
            return "no vessel here is called “{found}”, nor has another one a tare; weigh it empty "
                   "first.";
        case SeriesNotFound:
            return "there is no series of “{found}”, nor of anything else; record a reading with "
                   "its food and what it is per.";
        default:
            return {};
    }
}

std::string_view benchTemplateOfTwo(ErrorCode code) {
    if (code == ErrorCode::ReadingOverruled)
        return "the reading {found} was replaced by {other}; name that one.";
    if (code == ErrorCode::PairNotWhole)
        return "the reading {found} is what went in for {other} already, and would count twice; "
               "weigh each lot before and after, or give {other} another one with --instead-of.";
    return {};
}

}  // namespace nettare
