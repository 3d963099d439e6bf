#include "app/revisions/revision_words.h"

#include <catch2/catch.hpp>

#include <QLocale>

namespace nettare {

TEST_CASE("the day of a revision is written as the user's country does") {
    const std::string kept = "2026-03-12T23:30:00+02:00";
    const QLocale before;
    QLocale::setDefault(QLocale{QLocale::German});
    CHECK(revisionDay(kept).toStdString() == "12. März 2026");
    QLocale::setDefault(QLocale{QLocale::English, QLocale::UnitedStates});
    CHECK(revisionDay(kept).toStdString() == "March 12, 2026");
    QLocale::setDefault(before);
    CHECK(revisionDay("").isEmpty());
}

TEST_CASE("a revision names its parent only where that is not the one before") {
    RevisionSummary revision;
    revision.number = 4;
    revision.parent = 3;
    CHECK(parentText(revision).isEmpty());
    revision.parent = 1;
    CHECK(parentText(revision) == QStringLiteral("revision 1"));
    revision.parent.reset();
    CHECK(parentText(revision).isEmpty());
}

TEST_CASE("a ceiling says by how much it was missed, and an interval how far it reaches beyond") {
    TargetVerdict verdict;
    verdict.target = {Component::ENERC_KCAL, Basis::Portion, Decimal{150, 0}, std::nullopt};
    verdict.figure.component = Component::ENERC_KCAL;
    verdict.figure.value = verdict.figure.atLeast = 174.2;
    verdict.figure.atMost = 174.2;
    verdict.interval = {170.2, 178.2, 4};
    CHECK(targetText(verdict.target) == QStringLiteral("Ceiling 150 kcal a portion"));
    CHECK(verdictText(verdict) == QStringLiteral("missed by 24 kcal"));
    verdict.state = TargetState::ValueOnly;
    verdict.interval = {144.0, 153.0, 4.5};
    CHECK(verdictText(verdict) == QStringLiteral("met by value, interval 3 kcal beyond"));
    verdict.interval.high.reset();
    CHECK(verdictText(verdict) == QStringLiteral("met by value, interval open"));
    verdict.state = TargetState::Met;
    CHECK(verdictText(verdict) == QStringLiteral("met"));
}

}  // namespace nettare
