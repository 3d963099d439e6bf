#include "app/compare/card_words.h"

#include "app/compare/calm_difference.h"
#include "app/compare/target_card.h"

#include <QCoreApplication>

#include <array>

#include "core/publish/comparable_text.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

struct CardText {
    Q_DECLARE_TR_FUNCTIONS(CardText)
};

constexpr std::array kCardComponents{Component::ENERC_KCAL, Component::FAT, Component::NA,
                                     Component::PROCNT};

QString nameOnCard(Component component) {
    switch (component) {
        case Component::ENERC_KCAL:
            return CardText::tr("Energy");
        case Component::FAT:
            return CardText::tr("Fat");
        case Component::NA:
            return CardText::tr("Sodium");
        default:
            return CardText::tr("Protein");
    }
}

QString basisOnCard(Basis basis) {
    return basis == Basis::Piece ? CardText::tr("per piece") : CardText::tr("per portion");
}

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

/// "at least 3.1" where a part is missing.
QString endText(const Figure& figure, const QString& exact) {
    if (figure.complete()) return exact;
    return CardText::tr("at least %1")
        .arg(text(numberAt(factsOf(figure.component).decimals, figure.atLeast, Direction::Floor)));
}

/// A figure's two ends and what lies between them, as they are written.
struct FigureChange {
    QString name, unit, before, after, difference, plusMinus;
    DifferenceKind kind;
    QString whyNot;  ///< "not comparable: the dish was weighed …"
};

QString whyNotOf(const FigureDifference& figure, const StateNames& states) {
    if (!figure.notComparable) return {};
    return text(notComparableText(*figure.notComparable, states.left.toStdString(),
                                  states.right.toStdString()));
}

FigureChange changeOf(const FigureDifference& figure, const QString& name,
                      const StateNames& states) {
    const ComponentFacts& facts = factsOf(figure.before.component);
    const auto exact = calmDifference(facts.decimals, figure.before.value, figure.after.value);
    FigureChange change{
        name,
        QString::fromUtf8(facts.unit.data(), static_cast<qsizetype>(facts.unit.size())),
        endText(figure.before, text(exact.before)),
        endText(figure.after, text(exact.after)),
        text(exact.difference),
        {},
        figure.kind,
        whyNotOf(figure, states)};
    change.plusMinus = text(halfWidthText(decimalsOf(exact.before), figure.halfWidth));
    return change;
}

QString detailOf(const FigureChange& change) {
    const QString ends = CardText::tr("%1 → %2").arg(change.before, change.after);
    switch (change.kind) {
        case DifferenceKind::Real:
            return CardText::tr("%1 · %2, a real change").arg(ends, change.plusMinus);
        case DifferenceKind::Within:
            return CardText::tr("%1 · %2, within uncertainty").arg(ends, change.plusMinus);
        case DifferenceKind::NotComparable:
            return CardText::tr("%1 · %2").arg(ends, change.whyNot);
        case DifferenceKind::None:
            break;
    }
    return CardText::tr("%1, as before").arg(change.after);
}

QString spokenOf(const FigureChange& change) {
    const auto say = [&](const QString& sentence) {
        return sentence.arg(change.name, change.before, change.after, change.unit,
                            change.difference, change.plusMinus);
    };
    switch (change.kind) {
        case DifferenceKind::Real:
            return say(CardText::tr("%1: %2 %4 before, %3 %4 after; %5 %4, %6, a real change."));
        case DifferenceKind::Within:
            return say(
                CardText::tr("%1: %2 %4 before, %3 %4 after; %5 %4, %6, within uncertainty, which "
                             "is no sure change."));
        case DifferenceKind::NotComparable:
            return CardText::tr("%1: %2 %4 before, %3 %4 after; %5.")
                .arg(change.name, change.before, change.after, change.unit, change.whyNot);
        case DifferenceKind::None:
            break;
    }
    return CardText::tr("%1: %2 %3, as before.").arg(change.name, change.after, change.unit);
}

CardWords figureCard(const FigureDifference& figure, const QString& name,
                     const StateNames& states) {
    const FigureChange change = changeOf(figure, name, states);
    const bool open = change.kind == DifferenceKind::NotComparable;
    return {name, open ? CardText::tr("open") : change.difference + u' ' + change.unit,
            detailOf(change), spokenOf(change)};
}

}  // namespace

std::vector<CardWords> cardWords(const Comparison& comparison, const StateNames& states) {
    std::vector<CardWords> cards;
    for (const Component component : kCardComponents) {
        QString name = nameOnCard(component);
        if (cards.empty()) name = CardText::tr("%1, %2").arg(name, basisOnCard(comparison.basis));
        cards.push_back(figureCard(comparison.figures[indexOf(component)], name, states));
    }
    for (const TargetChange& target : comparison.targets) cards.push_back(targetCard(target));
    return cards;
}

}  // namespace nettare
