#include "core/label/lawful_energy.h"

#include <algorithm>
#include <array>

namespace nettare {

namespace {

using enum CheckedLine;

/// No serving weighs as much: stands for "not known".
constexpr double kAnyGrams = 1e6;

constexpr Interval kNoGrams{0, 0};

// Option A, specific Atwater factors, kcal per gram: the least and the most that USDA SR28
// publishes (FOOD_DES, Pro_Factor, Fat_Factor, CHO_Factor; 4,565 rows have all three). Set aside
// are protein 0.91 (sorghum grain alone) and 0, fat below 8.37 (5 rows, misprints; soybean
// lecithin) and above 9.02 (2 rows), carbohydrate 4.27 (5 rows without any).
constexpr Interval kProteinFactor{1.8, 4.36};
constexpr Interval kFatFactor{8.37, 9.02};
constexpr double kMostCarbohydrateFactor = 4.2;
/// Cocoa without sugar.
constexpr double kLeastCarbohydrateFactor = 1.33;
// Low factors are those of foods with much fibre or organic acids. Protein and carbohydrate
// together therefore also have at least 2.75 and 3.4 kcal/g less 5.2 per gram of fibre and 0.93 per
// gram of acid, which is at most 6 % of a food (lemon juice). Fitted to SR28: with the ranges above
// every row stays within, but three baking powders, four diet products made of acids or sugar
// alcohols, and a row whose three factors are all 4. What holds for foods holds for their mixtures.
constexpr double kProteinTogether = 2.75;
constexpr double kCarbohydrateTogether = 3.4;
constexpr double kFibreTakes = 5.2;
constexpr double kAcidTakes = 0.93;
constexpr double kMostAcidShare = 0.06;
// Option E, bomb calorimetry less 1.25 kcal per gram of protein: heats of combustion of
// protein 5.75, fat 9.5, carbohydrate 4.2 and alcohol 7.1 kcal/g at most, from memory.
constexpr double kMostProtein = 4.5;
constexpr double kMostFat = 9.5;
constexpr double kMostAlcohol = 7.1;
/// USDA Handbook 74.
constexpr double kLeastAlcohol = 6.93;

// What a package need not print, as shares of the weight: the strongest spirits, from memory, and
// lemon juice, which has 6 % of acids, in a concentrate, by common practice.
constexpr double kMostAlcoholShare = 0.8;
constexpr double kMostUnprintedAcidShare = 0.08;
/// Grams of fat and of protein below which a label of grams may be one of wine, vinegar or juice.
constexpr double kHardlyAny = 1;

Interval printedOr(const LabelNumbers& label, CheckedLine line, Interval otherwise) {
    return label[line].value_or(otherwise);
}

/// What the weight leaves beside the least of what is printed; fibre is part of the carbohydrate on
/// labels of the US.
double restOfWeight(const LabelNumbers& label) {
    if (!label.grams) return kAnyGrams;
    double rest = label.grams->high;
    for (const CheckedLine line : {Fat, Carbohydrate, Protein, Alcohol, Fibre})
        if (label[line] && (line != Fibre || label.rules == LabelRules::Eu))
            rest -= label[line]->low;
    return std::max(rest, 0.0);
}

/// What the weight leaves, up to that share of it.
Interval unprintedUpTo(const LabelNumbers& label, double share) {
    const double grams = label.grams ? label.grams->high : kAnyGrams;
    return {0, std::min(restOfWeight(label), share * grams)};
}

/// The alcohol of a label: as printed, or what a drink may have unprinted.
Interval alcoholOf(const LabelNumbers& label) {
    return printedOr(label, Alcohol,
                     mayHideAlcohol(label) ? unprintedUpTo(label, kMostAlcoholShare) : kNoGrams);
}

/// The least energy of protein and carbohydrate by factors that the law names or SR28 publishes.
double leastWithoutFat(const LabelNumbers& label, double protein, double carbohydrate,
                       double fibre) {
    const double sugars = printedOr(label, Sugars, kNoGrams).low;
    const double acids = std::clamp(carbohydrate - fibre - sugars, 0.0,
                                    kMostAcidShare * label.grams.value_or(Interval{}).high);
    const double specific =
        std::max(kProteinFactor.low * protein + kLeastCarbohydrateFactor * carbohydrate,
                 kProteinTogether * protein + kCarbohydrateTogether * carbohydrate -
                     kFibreTakes * fibre - kAcidTakes * acids);
    // Option C: what is not digestible has nothing.
    const double digestible = 4 * protein + 4 * std::max(carbohydrate - fibre, 0.0);
    return std::min(specific, digestible);
}

/// Annex XIV, per gram.
struct AnnexPart {
    double kilocalories, kilojoules;
    Interval grams;
};
using AnnexParts = std::array<AnnexPart, 7>;

AnnexParts annexParts(const LabelNumbers& label) {
    const Interval missing{0, restOfWeight(label)};
    const Interval carbohydrate = printedOr(label, Carbohydrate, missing);
    const Interval polyols = printedOr(label, Polyols, kNoGrams);
    // In the order of kJ per kcal, which the bounds below rely on. Polyols may be erythritol, 0.
    return {{
        {2, 8, printedOr(label, Fibre, missing)},
        {9, 37, printedOr(label, Fat, missing)},
        {7, 29, alcoholOf(label)},
        {2.4, 10, {0, polyols.high}},
        {4, 17, printedOr(label, Protein, missing)},
        {4,
         17,
         {std::max(carbohydrate.low - polyols.high, 0.0),
          std::max(carbohydrate.high - polyols.low, 0.0)}},
        {3, 13, mayHideAlcohol(label) ? unprintedUpTo(label, kMostUnprintedAcidShare) : kNoGrams},
    }};
}

/// kJ at the least of every part, and what each part adds, taken in this order up to so many kcal.
template <class Parts>
double kilojoulesFilled(const Parts& parts, double kilocalories) {
    double kilojoules = 0;
    for (const AnnexPart& part : parts) {
        kilojoules += part.kilojoules * part.grams.low;
        kilocalories -= part.kilocalories * part.grams.low;
    }
    for (const AnnexPart& part : parts) {
        const double added = std::clamp(kilocalories, 0.0, part.kilocalories * part.grams.width());
        kilojoules += added * part.kilojoules / part.kilocalories;
        kilocalories -= added;
    }
    return kilojoules;
}

/// Exact: the parts with the fewest kJ per kcal make the least, those with the most the most.
Interval kilojoulesWhere(const AnnexParts& parts, Interval kilocalories) {
    AnnexParts richestFirst = parts;
    std::ranges::reverse(richestFirst);
    return {kilojoulesFilled(parts, kilocalories.low),
            kilojoulesFilled(richestFirst, kilocalories.high)};
}

}  // namespace

bool mayHideAlcohol(const LabelNumbers& label) {
    if (label.ofVolume || label.rules == LabelRules::Us) return label.ofVolume;
    const auto hardlyAny = [&](CheckedLine line) {
        return label[line] && label[line]->high < kHardlyAny;
    };
    return hardlyAny(Fat) && hardlyAny(Protein);
}

Interval usLawfulEnergy(const LabelNumbers& label) {
    const Interval missing{0, restOfWeight(label)};
    const Interval fat = printedOr(label, Fat, missing);
    const Interval protein = printedOr(label, Protein, missing);
    const Interval carbohydrate = printedOr(label, Carbohydrate, missing);
    // The law asks for fibre from 1 g on; before protein is there, that line may still come.
    const Interval fibre = printedOr(label, Fibre, {0, label[Protein] ? 1 : carbohydrate.high});
    const Interval polyols = printedOr(label, Polyols, kNoGrams);
    const Interval alcohol = alcoholOf(label);
    // A sugar alcohol may have as little as nothing.
    const double digested = std::max(carbohydrate.low - polyols.high, 0.0);
    return {kFatFactor.low * fat.low + leastWithoutFat(label, protein.low, digested, fibre.high) +
                kLeastAlcohol * alcohol.low,
            kMostFat * fat.high + kMostProtein * protein.high +
                kMostCarbohydrateFactor * carbohydrate.high + kMostAlcohol * alcohol.high};
}

EuLawfulEnergy euLawfulEnergy(const LabelNumbers& label) {
    const AnnexParts parts = annexParts(label);
    EuLawfulEnergy energy;
    for (const AnnexPart& part : parts) {
        energy.kilocalories.low += part.kilocalories * part.grams.low;
        energy.kilocalories.high += part.kilocalories * part.grams.high;
        energy.kilojoules.low += part.kilojoules * part.grams.low;
        energy.kilojoules.high += part.kilojoules * part.grams.high;
    }
    const auto& printed = label[Kilocalories];
    if (printed && printed->high >= energy.kilocalories.low &&
        printed->low <= energy.kilocalories.high)
        energy.kilojoulesThen = kilojoulesWhere(parts, *printed);
    return energy;
}

Interval kilojoulesOf(Interval kilocalories) {
    // Annex XIV: 8/2 for fibre to 13/3 for organic acids; 4.184 lies between.
    return {kilocalories.low * 4, kilocalories.high * 13 / 3};
}

std::optional<Interval> usualEnergy(const LabelNumbers& label) {
    if (!label[Fat] || !label[Carbohydrate] || !label[Protein]) return std::nullopt;
    const auto printed = [&](CheckedLine line) {
        return label[line] ? label.printed[static_cast<std::size_t>(line)] : 0.0;
    };
    const double all =
        9 * printed(Fat) + 4 * printed(Carbohydrate) + 4 * printed(Protein) + 7 * printed(Alcohol);
    if (label.rules == LabelRules::Us)
        return Interval{
            all - 4 * std::min(printed(Fibre) + printed(Polyols), printed(Carbohydrate)), all};
    const double annex = all + 2 * printed(Fibre);
    return Interval{annex - 4 * printed(Polyols), annex - 1.6 * printed(Polyols)};
}

}  // namespace nettare
