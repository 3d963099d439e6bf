#include "app/figures/figure_words.h"

#include <QCoreApplication>

#include "core/publish/basis_text.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

struct FigureWords {
    Q_DECLARE_TR_FUNCTIONS(FigureWords)
};

QString wordText(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

QString limitText(const TargetVerdict& verdict) {
    const TargetEntry& target = verdict.target;
    const Decimal limit = target.atMost ? *target.atMost : *target.atLeast;
    const auto unit = factsOf(target.component).unit;
    return wordText(limit.text() + " " + std::string{unit});
}

// The end of the interval that decides, rounded away from the value: nothing looks safer than it
// is.
QString deciding(const TargetVerdict& verdict) {
    const int decimals = factsOf(verdict.target.component).decimals;
    if (!verdict.target.atMost)
        return wordText(numberAt(decimals, verdict.interval.low, Direction::Floor));
    return verdict.interval.high
               ? wordText(numberAt(decimals, *verdict.interval.high, Direction::Ceiling))
               : QString{};
}

/// "kept with a probability of 72 %", rounded down; nothing where it is all but sure or out of the
/// question.
QString chanceText(const TargetVerdict& verdict) {
    const double percent = 100 * verdict.probability;
    if (verdict.state == TargetState::Met || percent < 1) return {};
    return FigureWords::tr(", kept with a probability of %1 %")
        .arg(wordText(numberAt(0, percent, Direction::Floor)));
}

QString ceilingText(const TargetVerdict& verdict) {
    const QString limit = limitText(verdict), end = deciding(verdict);
    switch (verdict.state) {
        case TargetState::Met:
            return FigureWords::tr("under the ceiling of %1: met, the upper end is %2")
                .arg(limit, end);
        case TargetState::ValueOnly:
            return end.isEmpty()
                       ? FigureWords::tr("ceiling of %1 not safely met: there is no upper end")
                             .arg(limit)
                       : FigureWords::tr("ceiling of %1 not safely met: the upper end is %2%3")
                             .arg(limit, end, chanceText(verdict));
        case TargetState::NotMet:
            return FigureWords::tr("over the ceiling of %1: not met%2")
                .arg(limit, chanceText(verdict));
    }
    return {};
}

QString floorText(const TargetVerdict& verdict) {
    const QString limit = limitText(verdict), end = deciding(verdict);
    switch (verdict.state) {
        case TargetState::Met:
            return FigureWords::tr("above the floor of %1: met, the lower end is %2")
                .arg(limit, end);
        case TargetState::ValueOnly:
            return FigureWords::tr("floor of %1 not safely met: the lower end is %2%3")
                .arg(limit, end, chanceText(verdict));
        case TargetState::NotMet:
            return FigureWords::tr("below the floor of %1: not met%2")
                .arg(limit, chanceText(verdict));
    }
    return {};
}

}  // namespace

QString componentName(Component component) {
    // The two that stand below another one in every declaration.
    if (component == Component::FASAT) return FigureWords::tr("of which saturated");
    if (component == Component::SUGAR) return FigureWords::tr("of which sugars");
    const auto name = factsOf(component).name;
    QString words = QCoreApplication::translate("Component", std::string{name}.c_str());
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    return words;
}

QString figureValue(const Figure& figure) {
    const int decimals = factsOf(figure.component).decimals;
    if (figure.complete()) return wordText(numberAt(decimals, figure.value));
    return FigureWords::tr("at least %1")
        .arg(wordText(numberAt(decimals, figure.atLeast, Direction::Floor)));
}

QString figureSpread(const Figure& figure) {
    if (!figure.complete()) return {};
    return wordText(
        halfWidthText(factsOf(figure.component).decimals, intervalOf(figure).halfWidth));
}

QString knownFor(const Figure& figure) {
    if (figure.complete()) return {};
    return FigureWords::tr("known for %1 % of the weight")
        .arg(wordText(numberAt(0, 100 * figure.knownShare, Direction::Floor)));
}

QString spokenFigure(const Figure& figure) {
    const ComponentFacts& facts = factsOf(figure.component);
    const QString name = componentName(figure.component), unit = wordText(std::string{facts.unit});
    if (!figure.complete())
        return FigureWords::tr("%1: %2 %3, %4")
            .arg(name, figureValue(figure), unit, knownFor(figure));
    return FigureWords::tr("%1: %2 %3, plus or minus %4")
        .arg(name, figureValue(figure), unit, figureSpread(figure).mid(2));
}

QString basisName(Basis basis, const Recipe& recipe) {
    switch (basis) {
        case Basis::Piece:
            return FigureWords::tr("per %1").arg(wordText(recipe.pieceWord));
        case Basis::Portion:
            return FigureWords::tr("per portion of %1").arg(wordText(portionText(recipe)));
        case Basis::Hundred:
            return FigureWords::tr("per 100 g");
        case Basis::Batch:
            return FigureWords::tr("per batch");
    }
    return {};
}

QString safePortion(const TargetVerdict& verdict, const Recipe& recipe) {
    if (!verdict.largestPortion) return {};
    const QString most = wordText(numberAt(0, *verdict.largestPortion, Direction::Floor));
    if (recipe.portionGrams) return FigureWords::tr("A portion of up to %1 g is safe.").arg(most);
    if (*verdict.largestPortion < 1)
        return FigureWords::tr("Not even one %1 is safe.").arg(wordText(recipe.pieceWord));
    const bool one = *verdict.largestPortion < 2;
    return FigureWords::tr("A portion of up to %1 %2 is safe.")
        .arg(most, wordText(one ? recipe.pieceWord : recipe.piecesWord));
}

QString verdictText(const TargetVerdict& verdict, const Recipe& recipe, bool withBasis) {
    QString words = verdict.target.atMost ? ceilingText(verdict) : floorText(verdict);
    if (!withBasis) return words;
    return FigureWords::tr("%1 %2: %3")
        .arg(componentName(verdict.target.component), basisName(verdict.target.per, recipe), words);
}

}  // namespace nettare
