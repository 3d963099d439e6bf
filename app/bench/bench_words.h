#pragma once

#include <QString>
#include <QStringList>

#include <optional>

#include "app/bench/weigh_state.h"

namespace nettare {

struct KnownScale;

/// The reason that a reading is taken back for until another one is given.
[[nodiscard]] QString slipOfTheHand();
/// The usual reasons, that one first.
[[nodiscard]] QStringList usualReasons();

/// What lies on the scale now: of a pair it says which of the two.
[[nodiscard]] SubjectWords benchSubject(const WeighState& state, const DraftSession* draft);

/// What to do next.
[[nodiscard]] QString benchHint(const WeighState& state, bool typed);

/// "Recorded 58.9 g, prawn meat, 18:04:31"; without a net what was shown.
[[nodiscard]] QString recordedWords(const LedgerEntry& entry, const std::optional<Decimal>& net,
                                    const QString& what);
/// "Taken back: 271.1 g, prawn meat, 18:04:31; slip of the hand"
[[nodiscard]] QString takenBackWords(const LedgerEntry& entry, const std::string& reason);

/// "18:04:31" of a time with offset, as the clock of the place showed it.
[[nodiscard]] QString clockTime(const std::string& at);
/// The same, with the day before it where that is not today.
[[nodiscard]] QString dayAndTime(const std::string& at);

/// What is left of a weight that is weighed out.
struct ToGo {
    QString number, words;  ///< "12.3", "g to go"
};
[[nodiscard]] ToGo toGo(const WeighState& state, const std::optional<Decimal>& shown);

/// "“counter”, 0.1 g" and "checked today 17:51 with 200 g".
struct ScaleHeading {
    QString scale, check;
};
[[nodiscard]] ScaleHeading scaleWords(const KnownScale* scale);

}  // namespace nettare
