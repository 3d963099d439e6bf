#include "core/label/label_values.h"

#include <algorithm>

#include "core/label/check_label_numbers.h"
#include "core/label/label_interval.h"
#include "core/support/json.h"

namespace nettare {

namespace {

/// Salt is sodium x 2.5: Regulation (EU) 1169/2011, Annex I, 11.
constexpr double kSodiumMgPerSaltGram = 400;

/// One line as a part of some component.
Result<LabelValue::Part> partOf(const LabelFacts& label, std::size_t index, double factor) {
    const LabelAmount& amount = label.amounts[index];
    const std::string place = pointerTo("/declares", index);
    const auto interval = labelInterval(label, amount);
    if (!interval) {
        if (interval.error().code == ErrorCode::ComponentUnknown)
            return fail(Error{ErrorCode::ComponentUnknown}
                            .with("found", tagnameOf(amount.line))
                            .at(place + "/component"));
        return fail(Error{interval.error().code}
                        .with("found", amount.printed)
                        .with("component", nameOf(amount.line))
                        .at(place + "/printed"));
    }
    LabelValue::Part part{index, factor, printedFigure(amount, *interval), interval->low.value(),
                          interval->high.value()};
    if (unitOf(amount.line) != "g") return part;
    const double grams = labelGrams(label);
    const auto held = gramsHeld(label);
    if (part.low > (held ? held->high : grams) + kSameGrams)
        return fail(Error{ErrorCode::LabelAmountImpossible}
                        .with("found", amount.printed)
                        .with("component", nameOf(amount.line))
                        .at(place + "/printed"));
    for (double* figure : {&part.printed, &part.low, &part.high})
        *figure = std::min(*figure, grams);
    return part;
}

std::optional<std::size_t> indexOfLine(const LabelFacts& label, const LabelLine& line) {
    const auto found = std::ranges::find(label.amounts, line, &LabelAmount::line);
    if (found == label.amounts.end()) return std::nullopt;
    return static_cast<std::size_t>(found - label.amounts.begin());
}

/// The lines that the component of this line rests on, as indices and factors; none where it has
/// no component, or another line gives that.
struct Rest {
    std::optional<Component> component;
    std::vector<std::pair<std::size_t, double>> lines;
};

Rest restOf(const LabelFacts& label, std::size_t index) {
    const LabelLine& line = label.amounts[index].line;
    if (const auto component = componentOf(line)) return {component, {{index, 1}}};
    const auto prints = [&](Component c) { return indexOfLine(label, c); };
    switch (std::get<LabelOnly>(line)) {
        case LabelOnly::NACL:
            if (prints(Component::NA)) return {};
            return {Component::NA, {{index, kSodiumMgPerSaltGram}}};
        case LabelOnly::CHOAVL: {
            const auto fibre = prints(Component::FIBTG);
            if (prints(Component::CHOCDF) || !fibre) return {};
            return {Component::CHOCDF, {{index, 1}, {*fibre, 1}}};
        }
        case LabelOnly::POLYL:
        case LabelOnly::STARCH:
            return {};
    }
    return {};
}

}  // namespace

Result<std::vector<LabelValue>> labelValues(const LabelFacts& label) {
    std::vector<LabelValue> values;
    values.reserve(label.amounts.size());
    for (std::size_t i = 0; i < label.amounts.size(); ++i) {
        // Lines without a component of their own must be amounts as well.
        if (const auto own = partOf(label, i, 1); !own) return fail(own.error());
        const Rest rest = restOf(label, i);
        if (!rest.component) continue;
        LabelValue value;
        value.component = *rest.component;
        for (const auto& [line, factor] : rest.lines) {
            const auto part = partOf(label, line, factor);
            if (!part) return fail(part.error());
            value.value += factor * part->printed;
            value.low += factor * part->low;
            value.high += factor * part->high;
            value.parts.push_back(*part);
        }
        if (factsOf(value.component).unit == "g")
            value.high = std::min(value.high, std::max(value.low, labelGrams(label)));
        values.push_back(std::move(value));
    }
    return values;
}

bool labelGives(const LabelFacts& label, Component component) {
    for (std::size_t i = 0; i < label.amounts.size(); ++i)
        if (restOf(label, i).component == component) return true;
    return false;
}

double labelGrams(const LabelFacts& label) {
    if (label.per == LabelPer::HundredGrams) return 100;
    const double density = label.density ? label.density->gramsPerMl.value() : 1;
    if (label.per == LabelPer::HundredMillilitres) return 100 * density;
    const double size = label.servingSize ? label.servingSize->value() : 0;
    return label.servingInMillilitres ? size * density : size;
}

Profile labelProfile(const LabelFacts& label) {
    LabelFacts readable = label;
    std::erase_if(readable.amounts, [&](const LabelAmount& amount) {
        return !labelInterval(label, amount).has_value();
    });
    Profile profile;
    const double grams = labelGrams(label);
    const auto values = labelValues(readable);
    if (!values || grams <= 0) return profile;
    for (const LabelValue& value : *values)
        profile.per100g[indexOf(value.component)] = value.value * 100 / grams;
    return profile;
}

}  // namespace nettare
