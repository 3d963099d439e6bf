#include <fmt/core.h>

#include <algorithm>

#include "core/label/label_values.h"
#include "core/nutrition/composition_parts.h"
#include "core/publish/label_basis_text.h"
#include "core/publish/measure_text.h"
#include "core/publish/path_work.h"

namespace nettare {

namespace {

constexpr double kKilojoulesEach = 4.184;

/// What the values of a food are per: 100 g, or a serving of its label.
double gramsPer(const PathWork& work, std::size_t food, Component component) {
    const Composition& composition = work.cooked.compositions[food];
    return composition[component].onLabel ? composition.labelGrams->value() : 100;
}

const StatedValue* statedValue(const Food& food, Component component) {
    for (const StatedValue& stated : food.stated)
        if (stated.component == component) return &stated;
    return nullptr;
}

/// "0.43 of 4 lots", "spread assumed", "spread follows from its parts".
std::string spreadWords(const Food& food, Component component) {
    if (component == Component::CHOCDF || component == Component::ENERC_KCAL ||
        component == Component::ENERC_KJ)
        return "its spread follows from its parts (closure)";
    const Spread& spread = food.table->profile.spread[indexOf(component)];
    if (spread.standardError && spread.n >= 2)
        return fmt::format("standard error {} of {} lots", shortNumber(*spread.standardError),
                           spread.n);
    if (spread.assumedRelative)
        return fmt::format("the table gives no spread, {} is assumed",
                           percent(*spread.assumedRelative));
    return "no spread is known";
}

std::string labelWords(const Food& food) {
    const LabelFacts& label = *food.label;
    return fmt::format("{}: its label, in {}", food.name, labelBasisText(label));
}

std::string statedWords(const Food& food, Component component) {
    if (const StatedValue* stated = statedValue(food, component))
        return fmt::format("{}: stated, {}", food.name, stated->reason);
    const std::string& reason = food.addedSugars.reason;
    return food.name + ": stated" + (reason.empty() ? "" : ", " + reason);
}

std::string valueWords(const Food& food, Component component, Origin origin) {
    switch (origin) {
        case Origin::Missing:
            break;
        case Origin::Stated:
            return statedWords(food, component);
        case Origin::Label:
            return labelWords(food);
        case Origin::Table:
            return food.name + ": " + food.table->row.text() + ", edible portion";
        case Origin::ByKind:
            return food.name + ": zero by its kind";
        case Origin::ByParent:
            return food.name + ": zero, since what it is a part of leaves none";
        case Origin::AllSugars:
            return food.name + ": all of its sugars are added";
        case Origin::Converted:
            return food.name + ": converted at 4.184 kJ a kcal";
    }
    return food.name + ": no data";
}

/// 95 % half-width of a value by its composition's sources.
double valueHalfWidth(const PathWork& work, std::size_t food, Component component) {
    LinearForm form;
    for (const CompositionSource& source : work.cooked.compositions[food].sources)
        for (const Effect& effect : source.effects)
            if (effect.component == component)
                form.depend(source.source, effect.perGram * gramsPer(work, food, component));
    return pathHalfWidth(form, work.meaning());
}

std::string perText(double grams, Component component) {
    return fmt::format("{} per {} g", factsOf(component).unit, shortNumber(grams));
}

/// "“1.3” stands for 1.25 to 1.35 g": what the rounding of the label leaves open.
std::string standsFor(const LabelFacts& label, const LabelValue::Part& part) {
    const LabelAmount& amount = label.amounts[part.amount];
    if (part.low >= part.high)
        return fmt::format("“{}” is all of it: {} {}", amount.printed, shortNumber(part.high),
                           unitOf(amount.line));
    return fmt::format("“{}” stands for {} to {} {}", amount.printed, shortNumber(part.low),
                       shortNumber(part.high), unitOf(amount.line));
}

/// A line of a label that is no component, as printed: "1.3 g of salt".
PathDraft printedDraft(const LabelFacts& label, const LabelValue::Part& part,
                       const std::string& food) {
    const LabelLine& line = label.amounts[part.amount].line;
    PathDraft draft =
        pathDraft(PathKind::Value, fmt::format("{} per {}", unitOf(line), labelBasisText(label)),
                  fmt::format("{}: {} by its label", food, nameOf(line)));
    const PathNumber number = pathNumber(part.printed, {}, 2);
    draft.value = number.value;
    draft.decimals = number.decimals;
    draft.step.more = standsFor(label, part);
    return draft;
}

/// What the label prints: the amount itself, sodium as salt, carbohydrate without its fibre.
void byPrintedLines(PathDraft& draft, const Food& food, Component component) {
    const auto values = labelValues(*food.label);
    const auto value = std::ranges::find(*values, component, &LabelValue::component);
    if (value == values->end()) return;
    if (value->isPlain()) {
        draft.step.more = standsFor(*food.label, value->parts.front());
        return;
    }
    for (const LabelValue::Part& part : value->parts) {
        PathDraft printed = printedDraft(*food.label, part, food.name);
        if (value->parts.size() > 1) {
            draft.add(std::move(printed));
            continue;
        }
        draft.by(std::move(printed), " g");
        draft.by(pathNumber(part.factor, " mg/g"));
    }
}

PathDraft knownValue(const PathWork& work, std::size_t index, Component component) {
    const Food& food = work.dossier.foods[index];
    const ComponentAmount& amount = work.cooked.compositions[index][component];
    const double grams = gramsPer(work, index, component);
    PathDraft draft = pathDraft(PathKind::Value, perText(grams, component),
                                valueWords(food, component, amount.origin));
    const PathNumber number =
        pathNumber(amount.perGram * grams, {}, factsOf(component).decimals + 1);
    draft.value = number.value;
    draft.decimals = number.decimals;
    if (amount.origin == Origin::Label) byPrintedLines(draft, food, component);
    if (amount.origin == Origin::Table) draft.step.more = spreadWords(food, component);
    if (amount.origin == Origin::Converted) {
        const bool toKilojoules = component == Component::ENERC_KJ;
        const Component other = toKilojoules ? Component::ENERC_KCAL : Component::ENERC_KJ;
        draft.by(knownValue(work, index, other), " " + std::string{factsOf(other).unit});
        draft.by(pathNumber(kKilojoulesEach), !toKilojoules);
    }
    return draft.within(valueHalfWidth(work, index, component), factsOf(component).decimals + 1);
}

/// "no data: between 0 and 4.0 g": the end that counts.
PathDraft missingValue(const PathWork& work, std::size_t index, double per100g) {
    const ComponentAmount& amount = work.amountOf(index);
    PathDraft draft =
        pathDraft(PathKind::Missing, perText(100, work.component),
                  work.dossier.foods[index].name + ": no data; " +
                      (amount.high ? fmt::format("between {} and {} {} by its other parts",
                                                 shortNumber(100 * amount.low),
                                                 shortNumber(100 * *amount.high), work.facts.unit)
                                   : std::string{"nothing bounds it"}));
    const PathNumber number = pathNumber(per100g, {}, work.decimals());
    draft.value = number.value;
    draft.decimals = number.decimals;
    return draft;
}

}  // namespace

std::optional<double> missingPer100g(const PathWork& work, std::size_t food, bool drip) {
    const ComponentAmount& amount = work.amountOf(food);
    const bool tooMuch = drip && work.cooked.batch.dripMissing[indexOf(work.component)];
    if (amount.origin != Origin::Missing && !tooMuch) return std::nullopt;
    // What ran off without a bound takes nothing away at the upper end; at the lower end there is
    // no number, and no path asks for one.
    if (!amount.high || tooMuch) return drip ? 0 : 100 * amount.low;
    const bool most = (work.end == PathEnd::Most) != drip;
    return 100 * (most ? std::max(amount.low, *amount.high) : std::min(amount.low, *amount.high));
}

PathDraft valueDraft(const PathWork& work, std::size_t food) {
    return knownValue(work, food, work.component);
}

PathDraft contentDraft(const PathWork& work, std::size_t food, PathDraft grams, bool drip) {
    const auto missing = missingPer100g(work, food, drip);
    PathDraft draft =
        pathDraft(missing ? PathKind::Missing : PathKind::Line, std::string{work.facts.unit}, {});
    draft.negative = drip;
    draft.decimals = work.decimals();
    draft.step.way = grams.step.way;
    draft.by(std::move(grams), " g");
    const double per = gramsPer(work, food, work.component);
    const bool serving = !missing && work.amountOf(food).onLabel;
    if (serving) draft.by(pathNumber(per, " g"), true);
    draft.by(missing ? missingValue(work, food, *missing) : valueDraft(work, food), work.unit());
    if (!serving) draft.by(pathNumber(100, " g"), true);
    return draft.computed();
}

LinearForm contentOf(const PathWork& work, const Leaf& leaf) {
    const Composition& composition = work.cooked.compositions[leaf.food];
    const ComponentAmount& amount = composition[work.component];
    if (missingPer100g(work, leaf.food, leaf.drip.has_value())) return {};
    LinearForm content = leaf.grams.times(amount.perGram);
    const double grams = leaf.grams.value();
    for (const CompositionSource& source : composition.sources)
        for (const Effect& effect : source.effects)
            if (effect.component == work.component)
                content.depend(source.source, grams * effect.perGram);
    if (amount.onLabel)
        for (const LinearForm::Term& term : composition.labelGrams->terms())
            content.depend(term.source, -grams * amount.perGram / composition.labelGrams->value() *
                                            term.sensitivity);
    return content;
}

}  // namespace nettare
