#include "app/pantry/label_words.h"

#include <QCoreApplication>

#include <algorithm>

#include "core/label/label_interval.h"
#include "core/publish/label_basis_text.h"
#include "core/publish/label_sentence.h"

namespace nettare {

namespace {

struct LabelWords {
    Q_DECLARE_TR_FUNCTIONS(LabelForm)
};

QString shown(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

}  // namespace

QString rulesName(LabelRules rules) {
    return rules == LabelRules::Us ? LabelWords::tr("United States") : LabelWords::tr("EU and UK");
}

QString stateName(LabelState state) {
    switch (state) {
        case LabelState::Prepared:
            return LabelWords::tr("prepared");
        case LabelState::Drained:
            return LabelWords::tr("drained");
        case LabelState::AsSold:
            break;
    }
    return LabelWords::tr("as sold");
}

QString calledName(LabelRules rules, const LabelLine& line) {
    const PrintedLine* const printed = printedLine(rules, line);
    if (printed == nullptr) return shown(nameOf(line));
    const auto alike =
        std::ranges::count(printedLines(rules), printed->called, &PrintedLine::called);
    if (alike < 2) return shown(printed->called);
    return LabelWords::tr("%1, %2").arg(shown(printed->called), shown(printed->unit));
}

QString calledUnit(LabelRules rules, const LabelLine& line) {
    const PrintedLine* const printed = printedLine(rules, line);
    return shown(printed != nullptr ? printed->unit : unitOf(line));
}

StandsFor standsFor(const LabelFacts& label, const LabelAmount& amount) {
    const auto interval = labelInterval(label, amount);
    if (interval) return {QString::fromStdString(intervalText(*interval)), false};
    return {interval.error().code == ErrorCode::LabelAmountImpossible
                ? LabelWords::tr("never printed so")
                : LabelWords::tr("not an amount"),
            true};
}

QString findingTitle(LabelFindingKind kind) {
    switch (kind) {
        case LabelFindingKind::NotLawful:
            return LabelWords::tr("No rounding gives this amount");
        case LabelFindingKind::KilojoulesDiffer:
            return LabelWords::tr("The two energies differ");
        case LabelFindingKind::UnlikeMeasure:
            return LabelWords::tr("The measure weighs other than like foods");
        case LabelFindingKind::TooHeavy:
            return LabelWords::tr("It weighs less than its parts");
        case LabelFindingKind::Energy:
        case LabelFindingKind::FatParts:
        case LabelFindingKind::CarbohydrateParts:
        case LabelFindingKind::AddedSugars:
        case LabelFindingKind::SaltDiffers:
            break;
    }
    return LabelWords::tr("These cannot all be right");
}

QString slipAction(const LabelFacts& label, const LabelSlip& slip) {
    const QString unit = slip.line                    ? calledUnit(label.rules, *slip.line)
                         : label.servingInMillilitres ? QStringLiteral("mL")
                                                      : QStringLiteral("g");
    const QString amount = QString::fromStdString(slip.instead);
    const bool saysUnit = unit.isEmpty() || amount.endsWith(unit);
    return saysUnit ? LabelWords::tr("Use %1").arg(amount)
                    : LabelWords::tr("Use %1 %2").arg(amount, unit);
}

QString labelBasis(const LabelFacts& label) {
    const QString basis = isolated(labelBasisText(label));
    QStringList parts{rulesName(label.rules), label.per == LabelPer::Serving
                                                  ? LabelWords::tr("per serving %1").arg(basis)
                                                  : LabelWords::tr("per %1").arg(basis)};
    if (label.state != LabelState::AsSold) parts += stateName(label.state);
    return parts.join(QStringLiteral(", "));
}

// The characters that isolate come from another typeface and make a line taller, so that text which
// goes from left to right does without.
QString isolated(const QString& text) {
    const bool turns = std::ranges::any_of(text, [](QChar each) {
        return each.direction() == QChar::DirR || each.direction() == QChar::DirAL;
    });
    if (!turns) return text;
    return QChar{0x2068} + text + QChar{0x2069};
}

QString isolated(const std::string& text) {
    return isolated(QString::fromStdString(text));
}

}  // namespace nettare
