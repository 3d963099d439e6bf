#include "lawful_eu_prints.h"

namespace nettare {

namespace {

using EuTexts = std::set<std::string>;

constexpr std::int64_t kWhole = 1'000'000;

std::string millionthsText(std::int64_t millionths) {
    std::string text = std::to_string(millionths / kWhole);
    std::string decimals = std::to_string(kWhole + millionths % kWhole).substr(1);
    while (!decimals.empty() && decimals.back() == '0') decimals.pop_back();
    return decimals.empty() ? text : text + "." + decimals;
}

/// The nearest multiple of a step, or both in a tie.
EuTexts nearestEuTexts(std::int64_t amount, std::int64_t step) {
    const std::int64_t below = amount / step * step;
    EuTexts texts;
    if (2 * (amount - below) <= step) texts.insert(millionthsText(below));
    if (2 * (amount - below) >= step) texts.insert(millionthsText(below + step));
    return texts;
}

/// One row of the guidance's table: up to and including the floor "0" or "less than"; below the
/// coarse end to the fine step; from there on to the coarse one.
EuTexts byRow(std::int64_t amount, std::int64_t floor, const char* lessThan, std::int64_t fineStep,
              std::int64_t coarseFrom, std::int64_t coarseStep) {
    if (amount <= floor) return {"0", lessThan};
    return nearestEuTexts(amount, amount < coarseFrom ? fineStep : coarseStep);
}

EuTexts bySignificantFigures(std::int64_t amount, int figures) {
    std::int64_t power = 1;
    for (int i = 0; i < figures; ++i) power *= 10;
    std::int64_t step = 1;
    while (amount / step >= power) step *= 10;
    EuTexts texts = nearestEuTexts(amount, step);
    for (std::int64_t decimals = kWhole; decimals >= 10; decimals /= 10)
        texts.merge(nearestEuTexts(amount, decimals));
    return texts;
}

}  // namespace

EuTexts lawfulEuPrints(const LabelLine& line, std::int64_t millionths) {
    const auto component = componentOf(line);
    if (line == LabelLine{LabelOnly::NACL})
        return byRow(millionths, 12'500, "less than 0.01", 10'000, kWhole, 100'000);
    if (!component)
        return byRow(millionths, 500'000, "less than 0.5", 100'000, 10 * kWhole, kWhole);
    switch (*component) {
        case Component::ENERC_KCAL:
        case Component::ENERC_KJ:
            return nearestEuTexts(millionths, kWhole);
        case Component::FAT:
        case Component::SUGAR:
        case Component::FIBTG:
        case Component::PROCNT:
            return byRow(millionths, 500'000, "less than 0.5", 100'000, 10 * kWhole, kWhole);
        case Component::FASAT:
        case Component::FAMS:
        case Component::FAPU:
            return byRow(millionths, 100'000, "less than 0.1", 100'000, 10 * kWhole, kWhole);
        case Component::NA:
            return byRow(millionths, 5 * kWhole, "less than 5", 10 * kWhole, 1000 * kWhole,
                         100 * kWhole);
        case Component::VITA_RAE:
        case Component::FOL:
        case Component::CA:
        case Component::P:
        case Component::MG:
        case Component::K:
            return bySignificantFigures(millionths, 3);
        default:
            return bySignificantFigures(millionths, 2);
    }
}

}  // namespace nettare
