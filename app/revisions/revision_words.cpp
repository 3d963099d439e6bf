#include "app/revisions/revision_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QRegularExpression>
#include <QStringList>

#include "core/publish/compared_figures.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

struct RevisionWords {
    Q_DECLARE_TR_FUNCTIONS(RevisionWords)
};

QString unitOf(Component component) {
    const std::string_view unit = factsOf(component).unit;
    return QString::fromUtf8(unit.data(), static_cast<qsizetype>(unit.size()));
}

/// How far the figure itself lies beyond the target: above a ceiling, below a floor.
double valueBeyond(const TargetVerdict& verdict) {
    if (verdict.target.atMost) return verdict.figure.value - verdict.target.atMost->value();
    return verdict.target.atLeast->value() - verdict.figure.value;
}

QString amountOf(Component component, double value) {
    return QString::fromStdString(numberAt(factsOf(component).decimals, value)) + u' ' +
           unitOf(component);
}

}  // namespace

QString revisionDay(const std::string& at) {
    const QDate day = QDateTime::fromString(QString::fromStdString(at), Qt::ISODate).date();
    static const QRegularExpression kDayOfWeek{QStringLiteral("\\W*dddd\\W*")};
    const QString format = QLocale{}.dateFormat(QLocale::LongFormat).remove(kDayOfWeek);
    return day.isValid() ? QLocale{}.toString(day, format) : QString{};
}

QString revisionTitle(const RevisionSummary& revision) {
    QStringList parts{RevisionWords::tr("Revision %1").arg(revision.number)};
    if (const QString day = revisionDay(revision.at); !day.isEmpty()) parts << day;
    if (!revision.note.empty())
        parts << RevisionWords::tr("“%1”").arg(QString::fromStdString(revision.note));
    return parts.join(QStringLiteral(" · "));
}

QString parentText(const RevisionSummary& revision) {
    if (!revision.parent || *revision.parent == revision.number - 1) return {};
    return RevisionWords::tr("revision %1").arg(*revision.parent);
}

QString intervalText(const TargetVerdict& verdict) {
    const auto beyond = missedBy(verdict);
    if (!beyond) return RevisionWords::tr("interval open");
    return RevisionWords::tr("interval %1 beyond").arg(amountOf(verdict.target.component, *beyond));
}

QString verdictText(const TargetVerdict& verdict) {
    switch (verdict.state) {
        case TargetState::Met:
            return RevisionWords::tr("met");
        case TargetState::ValueOnly:
            return RevisionWords::tr("met by value, %1").arg(intervalText(verdict));
        case TargetState::NotMet:
            break;
    }
    // Its value may keep to the target where a missing part may not.
    if (!verdict.figure.complete()) return RevisionWords::tr("not met, part has no data");
    return RevisionWords::tr("missed by %1")
        .arg(amountOf(verdict.target.component, valueBeyond(verdict)));
}

QString targetText(const TargetEntry& target) {
    const bool ceiling = target.atMost.has_value();
    const Decimal value = ceiling ? *target.atMost : *target.atLeast;
    const QString amount = QString::fromStdString(value.text()) + u' ' + unitOf(target.component);
    const QString word = ceiling ? RevisionWords::tr("Ceiling") : RevisionWords::tr("Floor");
    switch (target.per) {
        case Basis::Piece:
            return RevisionWords::tr("%1 %2 a piece").arg(word, amount);
        case Basis::Portion:
            return RevisionWords::tr("%1 %2 a portion").arg(word, amount);
        case Basis::Hundred:
            return RevisionWords::tr("%1 %2 in 100 g").arg(word, amount);
        case Basis::Batch:
            return RevisionWords::tr("%1 %2 a batch").arg(word, amount);
    }
    return {};
}

}  // namespace nettare
