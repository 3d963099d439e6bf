#include "app/compare/target_card.h"

#include "app/revisions/revision_words.h"

#include <QCoreApplication>

namespace nettare {

namespace {

struct TargetCard {
    Q_DECLARE_TR_FUNCTIONS(TargetCard)
};

/// What stands large on the card.
QString stateWord(const TargetVerdict& verdict) {
    switch (verdict.state) {
        case TargetState::Met:
            return TargetCard::tr("met");
        case TargetState::ValueOnly:
            return TargetCard::tr("met by value");
        case TargetState::NotMet:
            break;
    }
    return TargetCard::tr("missed");
}

/// What the large word leaves to be said.
QString nowText(const TargetVerdict& verdict) {
    switch (verdict.state) {
        case TargetState::Met:
            return {};
        case TargetState::ValueOnly:
            return intervalText(verdict);
        case TargetState::NotMet:
            break;
    }
    return verdictText(verdict);
}

QString wasText(const std::optional<TargetVerdict>& verdict) {
    if (!verdict) return TargetCard::tr("was not set");
    return TargetCard::tr("was %1").arg(verdictText(*verdict));
}

}  // namespace

CardWords targetCard(const TargetChange& target) {
    const TargetVerdict& known = target.after ? *target.after : *target.before;
    CardWords words;
    words.subject = targetText(known.target);
    words.change = target.after ? stateWord(*target.after) : TargetCard::tr("not set");
    const QString now = target.after ? nowText(*target.after) : QString{};
    const bool asBefore =
        target.before && target.after && verdictText(*target.before) == verdictText(*target.after);
    const QString was = asBefore ? TargetCard::tr("as before") : wasText(target.before);
    words.detail = now.isEmpty() ? was : TargetCard::tr("%1; %2").arg(now, was);
    words.spoken = TargetCard::tr("%1: %2, %3.").arg(words.subject, words.change, words.detail);
    return words;
}

}  // namespace nettare
