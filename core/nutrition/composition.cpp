#include "core/nutrition/composition.h"

#include <cmath>

#include "core/label/us_printed_interval.h"
#include "core/nutrition/composition_parts.h"
#include "core/nutrition/label_source.h"
#include "core/support/json.h"
#include "core/support/text.h"

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

/// The printed figure without its unit and grouping commas; where it is "less than", the middle of
/// what it stands for. The text is one that usPrintedInterval() has read.
double printedValue(const std::string& printed, const DecimalInterval& interval) {
    std::string figure{trimmed(printed)};
    if (figure.front() < '0' || figure.front() > '9') return interval.closed().middle();
    figure.erase(figure.find_last_of("0123456789") + 1);
    const auto number = Decimal::read(replaced(figure, ",", ""));
    return number ? number->value() : interval.closed().middle();
}

/// An error of a label's line, at its place below the food.
Error ofLabelLine(ErrorCode code, const LabelAmount& line, std::size_t index) {
    const std::string place = pointerTo("/label/declares", index);
    const ComponentFacts& facts = factsOf(line.component);
    if (code == ErrorCode::ComponentUnknown)
        return Error{code}.with("found", facts.tagname).at(place + "/component");
    return Error{code}
        .with("found", line.printed)
        .with("component", facts.name)
        .at(place + "/printed");
}

/// Grams of a part cannot exceed the grams of the serving.
double boundedHigh(Component component, double high, double servingGrams) {
    return factsOf(component).unit == "g" && high > servingGrams ? servingGrams : high;
}

}  // namespace

std::optional<Error> addLabel(const Food& food, std::uint32_t index, const Assumptions& assumptions,
                              Composition& composition) {
    if (!food.label) return std::nullopt;
    const LinearForm serving = servingGrams(*food.label, index);
    composition.servingGrams = serving.value();
    composition.servingSource = serving.terms().front().source;
    const double declaration = assumptions.declarationSpread.value();
    for (std::size_t i = 0; i < food.label->amounts.size(); ++i) {
        const LabelAmount& line = food.label->amounts[i];
        ComponentAmount& amount = composition.amounts[indexOf(line.component)];
        const auto interval = usPrintedInterval(line.component, line.printed);
        if (!interval) return ofLabelLine(interval.error().code, line, i);
        if (amount.origin != Origin::Missing) continue;
        const double value = printedValue(line.printed, *interval);
        const double low = interval->low.value();
        const double high = boundedHigh(line.component, interval->high.value(), serving.value());
        if (low > high) return ofLabelLine(ErrorCode::LabelAmountImpossible, line, i);
        const double off = (low + high) / 2 - value;
        const double u = std::sqrt((high - low) * (high - low) / 12 + off * off);
        amount.origin = Origin::Label;
        amount.onServing = true;
        amount.perGram = value / serving.value();
        amount.low = low / serving.value();
        amount.high = high / serving.value();
        const double perUnit = 1 / serving.value();
        composition.sources.push_back({rectangle(compositionKey(index, line.component), u, off),
                                       EffectList{{line.component, perUnit}}});
        if (declaration > 0)
            composition.sources.push_back({rectangle({SourceKind::Declaration, index,
                                                      compositionKey(index, line.component).second},
                                                     rectangular(2 * declaration * value)),
                                           EffectList{{line.component, perUnit}}});
    }
    return std::nullopt;
}

void addTable(const Food& food, Composition& composition) {
    if (!food.table) return;
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
    addTableSources(food, index, assumptions, composition);
    passOnEffects(composition);
    return composition;
}

}  // namespace nettare
