#pragma once

#include <QString>

#include <string>
#include <vector>

#include "app/bench/weigh_state.h"
#include "core/ledger/ledger_reading.h"

namespace nettare {

/// What was weighed as the first of a pair and waits for its second: the raw batch in the oven,
/// five bulbs to be trimmed. Several may wait, and other things are weighed meanwhile.
class OpenPairs {
public:
    /// Looks for those of a ratio among the newest readings; none for another subject.
    void look(const WeighSubject& subject, const std::vector<LedgerReading>& newestFirst);

    [[nodiscard]] bool isEmpty() const { return firsts_.empty(); }
    /// The one of today that waits longest; empty where none does. Older ones have to be chosen.
    [[nodiscard]] std::string ofToday() const;
    /// The one to choose after that: the next that waits, then none, which begins a pair.
    [[nodiscard]] std::string nextTo(const std::string& before) const;
    /// The first of the pair that goes on after a recording; `usual` where nothing else waits. Who
    /// began another pair beside an open one begins the next one too; the second of one is followed
    /// by that of the next.
    [[nodiscard]] std::string goOn(const WeighState& done, const std::string& usual);
    /// "with 486.0 g" and "as bought, 15:38"; "a new pair" and "as bought"
    [[nodiscard]] SubjectWords words(const std::string& before) const;

private:
    struct First {
        std::string id;
        Decimal net;
        std::string unit, at;
    };

    std::vector<First> firsts_;  ///< the one that waits longest in front
    QString beforeWord_;
};

}  // namespace nettare
