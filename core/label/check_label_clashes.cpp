#include "core/label/check_label_clashes.h"

#include <algorithm>

#include "core/label/lawful_energy.h"

namespace nettare {

namespace {

using enum CheckedLine;

/// g per mL; whipped and puffed foods to salt and syrup, common practice.
constexpr Interval kAnyDensity{0.02, 2.0};
/// Like foods are whipped, chopped and pressed in other ways than the product.
constexpr double kLikeWithin = 2;
constexpr double kMilligramsPerGram = 1000;
constexpr double kSaltOfSodium = 2.5;  ///< Regulation (EU) 1169/2011, Annex I, 11

/// Whether no amount lies in both: only then one of them is wrong, however each was rounded.
bool apart(Interval a, Interval b) {
    return a.low > b.high + kSameGrams || b.low > a.high + kSameGrams;
}

/// One label on its way through the checks.
struct ClashSearch {
    const LabelNumbers& numbers;
    const LabelSurroundings& surroundings;
    std::vector<LabelClash> found{};

    /// Lines that the label does not print are left out.
    void add(LabelFindingKind kind, Interval says, Interval others, std::string_view unit,
             std::initializer_list<CheckedLine> lines, bool serving = false) {
        LabelClash clash{kind, says, others, unit, {}, serving, false};
        for (const CheckedLine line : lines)
            if (numbers[line]) clash.lines.push_back(line);
        std::ranges::sort(clash.lines);
        found.push_back(std::move(clash));
    }

    void checkUsEnergy();
    void checkEuEnergy();
    void checkParts(LabelFindingKind kind, CheckedLine whole,
                    std::initializer_list<CheckedLine> parts);
    void checkSalt();
    void checkWeight();
    void checkLoneWeights();
    void checkMeasure();
};

/// No label of the US prints kilojoules as a line of its own.
void ClashSearch::checkUsEnergy() {
    if (!numbers[Kilocalories]) return;
    const Interval lawful = usLawfulEnergy(numbers);
    if (apart(*numbers[Kilocalories], lawful))
        add(LabelFindingKind::Energy, *numbers[Kilocalories], lawful, "kcal",
            {Kilocalories, Fat, Carbohydrate, Fibre, Polyols, Protein, Alcohol});
}

/// The kilojoules are compared with the kilocalories alone, and then with what the lines leave.
void ClashSearch::checkEuEnergy() {
    const EuLawfulEnergy lawful = euLawfulEnergy(numbers);
    const auto& kcal = numbers[Kilocalories];
    const auto& kj = numbers[Kilojoules];
    const bool kcalOff = kcal && apart(*kcal, lawful.kilocalories);
    const bool kjOff = kj && apart(*kj, lawful.kilojoules);
    if (kcalOff)
        add(LabelFindingKind::Energy, *kcal, lawful.kilocalories, "kcal",
            {Kilocalories, Fat, Carbohydrate, Fibre, Polyols, Protein, Alcohol});
    // Both off is one finding: fat, carbohydrate or protein slipped, most likely.
    if (kcalOff && kjOff) found.back().lines.insert(found.back().lines.begin() + 1, Kilojoules);
    if (!kcalOff && kjOff)
        add(LabelFindingKind::Energy, *kj, lawful.kilojoules, "kJ",
            {Kilojoules, Fat, Carbohydrate, Fibre, Polyols, Protein, Alcohol});
    if (!kcal || !kj) return;
    if (apart(*kj, kilojoulesOf(*kcal)))
        add(LabelFindingKind::KilojoulesDiffer, *kj, kilojoulesOf(*kcal), "kJ",
            {Kilocalories, Kilojoules});
    else if (!kjOff && lawful.kilojoulesThen && apart(*kj, *lawful.kilojoulesThen))
        add(LabelFindingKind::KilojoulesDiffer, *kj, *lawful.kilojoulesThen, "kJ",
            {Kilocalories, Kilojoules, Fat, Carbohydrate, Fibre, Polyols, Protein, Alcohol});
}

/// One part that is more than the whole is named alone; else all of them.
void ClashSearch::checkParts(LabelFindingKind kind, CheckedLine whole,
                             std::initializer_list<CheckedLine> parts) {
    if (!numbers[whole]) return;
    const double most = numbers[whole]->high + kSameGrams;
    Interval sum;
    for (const CheckedLine part : parts) {
        if (!numbers[part]) continue;
        if (numbers[part]->low > most)
            return add(kind, *numbers[whole], *numbers[part], "g", {whole, part});
        sum.low += numbers[part]->low;
        sum.high += numbers[part]->high;
    }
    if (sum.low <= most) return;
    add(kind, *numbers[whole], sum, "g", parts);
    auto& lines = found.back().lines;
    lines.insert(lines.begin(), whole);
}

/// Where a label prints both.
void ClashSearch::checkSalt() {
    if (!numbers[Salt] || !numbers[Sodium]) return;
    const double factor = kSaltOfSodium / kMilligramsPerGram;
    const Interval made{numbers[Sodium]->low * factor, numbers[Sodium]->high * factor};
    if (apart(*numbers[Salt], made))
        add(LabelFindingKind::SaltDiffers, *numbers[Salt], made, "g", {Salt, Sodium});
}

/// Of salt its sodium alone is certain to be weight of its own: broth powders have it from
/// glutamate, which counts as protein or carbohydrate.
void ClashSearch::checkWeight() {
    if (!numbers.grams) return;
    Interval sum;
    const auto count = [&](CheckedLine line, double factor) {
        if (!numbers[line]) return;
        sum.low += factor * numbers[line]->low;
        sum.high += factor * numbers[line]->high;
    };
    for (const CheckedLine line : {Fat, Carbohydrate, Protein, Alcohol}) count(line, 1);
    if (numbers.rules == LabelRules::Eu) count(Fibre, 1);
    if (numbers[Salt])
        count(Salt, 1 / kSaltOfSodium);
    else
        count(Sodium, 1 / kMilligramsPerGram);
    if (sum.low <= numbers.grams->high + kSameGrams) return;
    const CheckedLine sodium = numbers[Salt] ? Salt : Sodium;
    if (numbers.rules == LabelRules::Eu)
        add(LabelFindingKind::TooHeavy, *numbers.grams, sum, "g",
            {Fat, Carbohydrate, Fibre, Protein, sodium, Alcohol}, numbers.perServing);
    else
        add(LabelFindingKind::TooHeavy, *numbers.grams, sum, "g",
            {Fat, Carbohydrate, Protein, sodium, Alcohol}, numbers.perServing);
}

/// Clashes of parts or weight that name a line that alone is more than all of it. Where none does,
/// such a line is a clash of its own: saturates beside no fat.
void ClashSearch::checkLoneWeights() {
    const auto isMore = [&](CheckedLine line) { return numbers.isMoreThanAll(line); };
    for (LabelClash& clash : found) {
        const bool ofWeight = clash.kind == LabelFindingKind::TooHeavy ||
                              clash.kind == LabelFindingKind::FatParts ||
                              clash.kind == LabelFindingKind::CarbohydrateParts ||
                              clash.kind == LabelFindingKind::AddedSugars;
        clash.impossible = ofWeight && std::ranges::any_of(clash.lines, isMore);
    }
    if (std::ranges::any_of(found, &LabelClash::impossible)) return;
    for (std::size_t i = 0; i < kCheckedLineCount; ++i) {
        const auto line = static_cast<CheckedLine>(i);
        if (!isMore(line)) continue;
        add(LabelFindingKind::TooHeavy, *numbers.grams, *numbers[line], "g", {line},
            numbers.perServing);
        found.back().impossible = true;
    }
}

/// A measure in the unit of the serving is compared as it is: 1 cup with 240 mL, 1 oz with 28 g. A
/// volume that weighs something gives a density. Ounces of a liquid are not compared.
void ClashSearch::checkMeasure() {
    const auto& measure = surroundings.measure;
    if (!measure || !numbers.serving) return;
    const bool millilitres = surroundings.label.servingInMillilitres;
    if (measure->grams == !millilitres) {
        if (apart(*numbers.serving, measure->size))
            add(LabelFindingKind::UnlikeMeasure, *numbers.serving, measure->size,
                millilitres ? "mL" : "g", {}, true);
        return;
    }
    if (measure->grams) return;
    const auto& like = surroundings.like;
    const Interval density{numbers.serving->low / measure->size.high,
                           numbers.serving->high / measure->size.low};
    const Interval known = like ? Interval{like->least, like->most} : kAnyDensity;
    const double within = like ? kLikeWithin : 1;
    if (apart(density, {known.low / within, known.high * within}))
        add(LabelFindingKind::UnlikeMeasure, density, known, "g per mL", {}, true);
}

}  // namespace

std::vector<LabelClash> labelClashes(const LabelNumbers& numbers,
                                     const LabelSurroundings& surroundings) {
    ClashSearch search{numbers, surroundings};
    if (numbers.rules == LabelRules::Us)
        search.checkUsEnergy();
    else
        search.checkEuEnergy();
    search.checkParts(LabelFindingKind::FatParts, Fat, {Saturates, Trans, Mono, Poly});
    if (numbers.rules == LabelRules::Us)
        search.checkParts(LabelFindingKind::CarbohydrateParts, Carbohydrate,
                          {Fibre, Sugars, Polyols});
    else
        search.checkParts(LabelFindingKind::CarbohydrateParts, Carbohydrate,
                          {Sugars, Polyols, Starch});
    search.checkParts(LabelFindingKind::AddedSugars, Sugars, {AddedSugars});
    search.checkSalt();
    search.checkWeight();
    search.checkLoneWeights();
    search.checkMeasure();
    return search.found;
}

}  // namespace nettare
