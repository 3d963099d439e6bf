#include "app/bench/open_pairs.h"

#include <QCoreApplication>
#include <QDateTime>

#include <algorithm>
#include <set>

#include "app/bench/bench_words.h"
#include "app/session/now.h"

namespace nettare {

namespace {

struct OpenPairText {
    Q_DECLARE_TR_FUNCTIONS(OpenPairs)
};

/// A first of a pair belongs to no series itself: its food and its state say what it is.
bool isFirstOf(const FreeSubject& ratio, const std::string& why, const LedgerReading& reading) {
    const LedgerEntry& entry = reading.entry();
    return reading.net && reading.counts() && !entry.series && entry.why == why &&
           entry.state == stateBefore(*ratio.series) &&
           foldedWhat(entry.what) == foldedWhat(ratio.what);
}

/// Ids of what stands before a reading of a ratio, with the corrections of these.
std::set<std::string> doneAmong(const std::vector<LedgerReading>& newestFirst) {
    std::set<std::string> done;
    for (const LedgerReading& reading : newestFirst)
        if (reading.entry().series && reading.supersededBy.empty())
            done.insert(reading.entry().series->before);
    for (auto reading = newestFirst.rbegin(); reading != newestFirst.rend(); ++reading)
        if (!reading->successor.empty() && done.contains(reading->entry().id))
            done.insert(reading->successor);
    return done;
}

bool isOfToday(const std::string& at) {
    return QDateTime::fromString(QString::fromStdString(at), Qt::ISODate).date() == today();
}

}  // namespace

void OpenPairs::look(const WeighSubject& subject, const std::vector<LedgerReading>& newestFirst) {
    firsts_.clear();
    if (!isPair(subject)) return;
    const auto& ratio = std::get<FreeSubject>(subject);
    beforeWord_ = beforeWord(*ratio.series);
    const std::string why = beforeWord_.toStdString();
    const std::set<std::string> done = doneAmong(newestFirst);
    for (const LedgerReading& reading : newestFirst) {
        const LedgerEntry& entry = reading.entry();
        if (!isFirstOf(ratio, why, reading) || done.contains(entry.id)) continue;
        firsts_.insert(firsts_.begin(), {entry.id, *reading.net, entry.unit, entry.at});
    }
}

std::string OpenPairs::ofToday() const {
    const auto first =
        std::ranges::find_if(firsts_, [](const First& each) { return isOfToday(each.at); });
    return first == firsts_.end() ? std::string{} : first->id;
}

std::string OpenPairs::nextTo(const std::string& before) const {
    if (firsts_.empty()) return before;
    const auto now = std::ranges::find(firsts_, before, &First::id);
    if (now == firsts_.end()) return firsts_.front().id;
    return now + 1 == firsts_.end() ? std::string{} : (now + 1)->id;
}

std::string OpenPairs::goOn(const WeighState& done, const std::string& usual) {
    if (!isPair(done.subject) || done.isJarBefore()) return usual;
    if (done.isBefore()) return firsts_.empty() ? usual : std::string{};
    std::erase_if(firsts_, [&done](const First& each) { return each.id == done.before; });
    return ofToday();
}

SubjectWords OpenPairs::words(const std::string& before) const {
    const auto now = std::ranges::find(firsts_, before, &First::id);
    if (now == firsts_.end()) return {OpenPairText::tr("a new pair"), beforeWord_};
    const QString time = isOfToday(now->at) ? clockTime(now->at).left(5) : dayAndTime(now->at);
    return {OpenPairText::tr("with %1").arg(benchMass(now->net, now->unit)),
            OpenPairText::tr("%1, %2").arg(beforeWord_, time)};
}

}  // namespace nettare
