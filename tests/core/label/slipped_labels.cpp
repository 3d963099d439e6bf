#include "slipped_labels.h"

#include <array>
#include <cmath>

#include "core/label/label_interval.h"

namespace nettare {

namespace {

/// Lines that the energy is checked against, kcal per unit.
std::vector<std::pair<LabelLine, double>> energyLines(LabelRules rules) {
    using enum Component;
    if (rules == LabelRules::Us) return {{ENERC_KCAL, 1}, {FAT, 9}, {CHOCDF, 4}, {PROCNT, 4}};
    return {{ENERC_KJ, 1 / 4.184}, {ENERC_KCAL, 1}, {FAT, 9}, {LabelOnly::CHOAVL, 4}, {PROCNT, 4}};
}

std::string mistyped(const std::string& text, std::mt19937& random) {
    std::string typed = text;
    const std::size_t at = random() % text.size();
    const auto way = random() % 10;
    if (way < 6 && text[at] != '.') {
        typed[at] = static_cast<char>('0' + random() % 10);
    } else if (way == 6) {
        typed.erase(at, 1);
    } else if (way == 7) {
        typed.insert(at, 1, text[at]);
    } else if (way == 8 && at > 0) {
        std::swap(typed[at - 1], typed[at]);
    } else if (text.find('.') != std::string::npos) {
        typed.erase(text.find('.'), 1);
    }
    return typed;
}

bool isFigure(const std::string& typed) {
    const auto figure = Decimal::read(typed);
    const bool zeroInFront = typed.size() > 1 && typed[0] == '0' && typed[1] != '.';
    return figure && !zeroInFront;
}

}  // namespace

std::optional<SlippedLabel> slipped(const LabelFacts& label, std::mt19937& random) {
    const auto lines = energyLines(label.rules);
    const LabelLine line = lines[random() % lines.size()].first;
    const std::string right = *label.printed(line);
    // "less than 1" and "<0.5" have nothing to slip but their own word.
    if (!Decimal::read(right)) return std::nullopt;
    const std::string typed = mistyped(right, random);
    if (!isFigure(typed) || Decimal::read(typed) == Decimal::read(right)) return std::nullopt;
    SlippedLabel slip{label, line, right};
    for (LabelAmount& amount : slip.label.amounts)
        if (amount.line == line) amount.printed = typed;
    return slip;
}

SlipSize sizeOfSlip(const SlippedLabel& slip) {
    SlipSize size;
    for (const auto& row : energyLines(slip.label.rules)) {
        const LabelLine line = row.first;
        const double factor = row.second;
        const std::string& typed = *slip.label.printed(line);
        const auto width = [&](const std::string& text) {
            const auto interval = printedInterval(slip.label.rules, line, text);
            return interval ? factor * interval->closed().width() : 0;
        };
        size.open += width(typed);
        if (line == LabelLine{Component::ENERC_KCAL})
            size.energy = Decimal::read(slip.line == line ? slip.right : typed)->value();
        if (line != slip.line) continue;
        size.open += width(slip.right);
        size.moved =
            factor * std::fabs(Decimal::read(typed)->value() - Decimal::read(slip.right)->value());
    }
    return size;
}

}  // namespace nettare
