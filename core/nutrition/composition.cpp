#include "core/nutrition/composition.h"

#include <algorithm>
#include <cmath>

#include "core/label/label_interval.h"
#include "core/label/label_values.h"
#include "core/nutrition/composition_parts.h"
#include "core/nutrition/label_source.h"

namespace nettare {

std::string_view nameOf(Origin origin) {
    switch (origin) {
        case Origin::Missing:
            return "no data";
        case Origin::Stated:
            return "stated";
        case Origin::Label:
            return "label";
        case Origin::Table:
            return "table";
        case Origin::ByKind:
            return "zero by kind";
        case Origin::ByParent:
            return "zero by its parent";
        case Origin::AllSugars:
            return "all of its sugars";
        case Origin::Converted:
            return "converted";
    }
    return {};
}

void addStated(const Food& food, std::uint32_t index, Composition& composition) {
    for (const StatedValue& stated : food.stated) {
        ComponentAmount& amount = composition.amounts[indexOf(stated.component)];
        amount.origin = Origin::Stated;
        amount.perGram = stated.per100g.value() / 100;
        const double lastDigit = Decimal{1, -stated.per100g.decimals()}.value();
        const double width = stated.within ? 2 * stated.within->value() : lastDigit;
        composition.sources.push_back(
            {rectangle(compositionKey(index, stated.component), rectangular(width)),
             EffectList{{stated.component, 0.01}}});
    }
}

namespace {

/// The source that a printed line is: its rounding moves the component it is or gives.
Component sourceOf(const LabelFacts& label, const LabelValue& value, const LabelValue::Part& part) {
    return componentOf(label.amounts[part.amount].line).value_or(value.component);
}

/// What a unit of the printed line moves, by its rounding and by the product's deviation from it.
void addLabelSources(const LabelFacts& label, const LabelValue& value, std::uint32_t food,
                     double declaration, Composition& composition) {
    const double grams = labelGrams(label);
    for (const LabelValue::Part& part : value.parts) {
        const SourceKey key = compositionKey(food, sourceOf(label, value, part));
        const EffectList effects{{value.component, part.factor / grams}};
        const double off = (part.low + part.high) / 2 - part.printed;
        const double width = part.high - part.low;
        composition.sources.push_back(
            {rectangle(key, std::sqrt(width * width / 12 + off * off), off), effects});
        if (declaration > 0)
            composition.sources.push_back({rectangle({SourceKind::Declaration, food, key.second},
                                                     rectangular(2 * declaration * part.printed)),
                                           effects});
    }
}

/// Without a printed fibre nobody knows the carbohydrate with it, but it is no less.
void boundCarbohydrate(const LabelFacts& label, Composition& composition) {
    const std::string* printed = label.printed(LabelOnly::CHOAVL);
    ComponentAmount& whole = composition.amounts[indexOf(Component::CHOCDF)];
    if (printed == nullptr || whole.origin != Origin::Missing) return;
    const auto interval = labelInterval(label, {LabelOnly::CHOAVL, *printed});
    if (!interval) return;
    whole.low = interval->low.value() / labelGrams(label);
    composition.withoutFibre =
        Interval{whole.low, std::min(1.0, interval->high.value() / labelGrams(label))};
}

}  // namespace

std::optional<Error> addLabel(const Food& food, std::uint32_t index, const Assumptions& assumptions,
                              Composition& composition) {
    if (!food.label) return std::nullopt;
    const LabelFacts& label = *food.label;
    const auto values = labelValues(label);
    if (!values) return values.error().at("/label" + values.error().pointer);
    LinearForm basis = labelBasis(label, index);
    // Figures of 100 g have no grams of their own that could move them.
    const bool moves = !basis.terms().empty();
    const double grams = basis.value();
    if (moves) composition.labelGrams = std::move(basis);
    const double declaration =
        label.declarationSpread.value_or(assumptions.declarationSpread).value();
    const bool fibreStated = composition[Component::FIBTG].origin != Origin::Missing;
    for (const LabelValue& value : *values) {
        ComponentAmount& amount = composition.amounts[indexOf(value.component)];
        // With a stated fibre the printed one is no part of the carbohydrate.
        const bool replaced = fibreStated && value.parts.size() > 1;
        if (amount.origin != Origin::Missing || replaced) continue;
        amount = {Origin::Label, moves, value.value / grams, value.low / grams, value.high / grams};
        addLabelSources(label, value, index, declaration, composition);
    }
    boundCarbohydrate(label, composition);
    return std::nullopt;
}

void addTable(const Food& food, Composition& composition) {
    // The row of a labelled food has its label's values once more, without their rounding.
    if (!food.table || food.labelOfRow) return;
    using enum Component;
    // The two units of energy are one fact: once stated or declared in one, the table gives
    // neither.
    const bool energyKnown = composition[ENERC_KCAL].origin != Origin::Missing ||
                             composition[ENERC_KJ].origin != Origin::Missing;
    for (const ComponentFacts& facts : allComponents()) {
        ComponentAmount& amount = composition.amounts[indexOf(facts.component)];
        const auto value = food.table->profile[facts.component];
        if (amount.origin != Origin::Missing || !value) continue;
        if (energyKnown && (facts.component == ENERC_KCAL || facts.component == ENERC_KJ)) continue;
        if (composition.withoutFibre && facts.component == CHOCDF) continue;
        amount.origin = Origin::Table;
        amount.perGram = *value / 100;
    }
}

Result<Composition> compositionOf(const Food& food, std::uint32_t index,
                                  const Assumptions& assumptions) {
    Composition composition;
    addStated(food, index, composition);
    if (const auto error = addLabel(food, index, assumptions, composition)) return fail(*error);
    addTable(food, composition);
    settleGaps(food, composition);
    settleAddedSugars(food, index, composition);
    addTableSources(food, index, assumptions, composition);
    passOnEffects(composition);
    if (const auto error = checkAddedSugars(food, composition)) return fail(*error);
    return composition;
}

}  // namespace nettare
