#include "core/label/us_rounding.h"

#include "core/label/us_daily_values.h"

#include <fmt/format.h>

#include <array>
#include <cmath>

namespace nettare {

namespace {

using enum PrintKind;

/// No serving is as large; twelve digits of it still show hundredths.
constexpr double kMostPerServing = 1e9;
constexpr Decimal kNone{};
constexpr Decimal kHalf{5, -1};
constexpr Decimal kOne{1, 0};
constexpr Decimal kFive{5, 0};
constexpr Decimal kTen{10, 0};

/// (c)(1): below 5 may be 0; to 5 up to and including 50; to 10 above.
constexpr std::array kCalories{
    PrintBand{Zero, kNone, kNone, true, kFive, false},
    PrintBand{Nearest, kFive, kNone, true, Decimal{50, 0}, true},
    PrintBand{Nearest, kTen, Decimal{50, 0}, false, std::nullopt, false},
};

/// (c)(2): below 0.5 is 0; to 0.5 below 5; to 1 from 5.
constexpr std::array kFats{
    PrintBand{Zero, kNone, kNone, true, kHalf, false},
    PrintBand{Nearest, kHalf, kHalf, true, kFive, false},
    PrintBand{Nearest, kOne, kFive, true, std::nullopt, false},
};

/// (c)(3): below 2 is 0; 2 to 5 may be "less than 5"; to 5 otherwise. Nothing from 2 on is 0, so
/// that the nearest step starts where it reaches 5.
constexpr std::array kCholesterol{
    PrintBand{Zero, kNone, kNone, true, Decimal{2, 0}, false},
    PrintBand{LessThan, kFive, Decimal{2, 0}, true, kFive, true},
    PrintBand{Nearest, kFive, Decimal{25, -1}, true, std::nullopt, false},
};

/// (c)(4): below 5 is 0; to 5 up to and including 140; to 10 above.
constexpr std::array kSodium{
    PrintBand{Zero, kNone, kNone, true, kFive, false},
    PrintBand{Nearest, kFive, kFive, true, Decimal{140, 0}, true},
    PrintBand{Nearest, kTen, Decimal{140, 0}, false, std::nullopt, false},
};

/// (c)(6) and (c)(7): below 0.5 may be 0; below 1 may be "less than 1"; to 1 otherwise.
constexpr std::array kWholeGrams{
    PrintBand{Zero, kNone, kNone, true, kHalf, false},
    PrintBand{LessThan, kOne, kNone, true, kOne, false},
    PrintBand{Nearest, kOne, kHalf, true, std::nullopt, false},
};

constexpr PrintBand toStep(Decimal step) {
    return {Nearest, step, kNone, true, std::nullopt, false};
}
constexpr std::array kToHundredth{toStep(Decimal{1, -2})};
constexpr std::array kToTenth{toStep(Decimal{1, -1})};
constexpr std::array kToOne{toStep(kOne)};
constexpr std::array kToFive{toStep(kFive)};
constexpr std::array kToTen{toStep(kTen)};

/// FDA's recommended steps by size of the RDI. The steps from 250 on are from memory. An RDI below
/// 1 (copper, 0.9) would lose its figure at 0.1: (c)(8)(ii) allows more digits for small amounts.
PrintRule recommendedBands(Decimal intake) {
    if (intake < kOne) return kToHundredth;
    if (intake < Decimal{25, 0}) return kToTenth;
    if (intake < Decimal{250, 0}) return kToOne;
    if (intake < Decimal{500, 0}) return kToFive;
    return kToTen;
}

/// Vitamins and minerals have no row: their step follows from their daily value.
struct RuleRow {
    Component component;
    UsAmountRule rule;
};

constexpr std::array kAmountRules{
    RuleRow{Component::ENERC_KCAL, {"21 CFR 101.9(c)(1)", kCalories}},
    RuleRow{Component::FAT, {"21 CFR 101.9(c)(2)", kFats}},
    RuleRow{Component::FASAT, {"21 CFR 101.9(c)(2)(i)", kFats}},
    RuleRow{Component::FATRN, {"21 CFR 101.9(c)(2)(ii)", kFats}},
    RuleRow{Component::FAPU, {"21 CFR 101.9(c)(2)(iii)", kFats}},
    RuleRow{Component::FAMS, {"21 CFR 101.9(c)(2)(iv)", kFats}},
    RuleRow{Component::CHOLE, {"21 CFR 101.9(c)(3)", kCholesterol}},
    RuleRow{Component::NA, {"21 CFR 101.9(c)(4)", kSodium}},
    RuleRow{Component::CHOCDF, {"21 CFR 101.9(c)(6)", kWholeGrams}},
    RuleRow{Component::FIBTG, {"21 CFR 101.9(c)(6)(i)", kWholeGrams}},
    RuleRow{Component::SUGAR, {"21 CFR 101.9(c)(6)(ii)", kWholeGrams}},
    RuleRow{Component::SUGAD, {"21 CFR 101.9(c)(6)(iii), steps from memory", kWholeGrams}},
    RuleRow{Component::PROCNT, {"21 CFR 101.9(c)(7)", kWholeGrams}},
};

}  // namespace

std::optional<UsAmountRule> usAmountRule(Component component) {
    for (const RuleRow& row : kAmountRules)
        if (row.component == component) return row.rule;
    const UsDailyValue* daily = usDailyValue(component);
    if (daily == nullptr) return std::nullopt;
    return UsAmountRule{"21 CFR 101.9(c)(8)(ii), step recommended by FDA",
                        recommendedBands(daily->amount), true,
                        Decimal{2 * daily->amount.coefficient(), daily->amount.exponent() - 2}};
}

Result<std::string> usAmountText(Component component, double amountPerServing) {
    const auto rule = usAmountRule(component);
    const std::string_view tagname = factsOf(component).tagname;
    if (!rule) return fail(Error{ErrorCode::ComponentUnknown}.with("component", tagname));
    // -1 stands for all that is no amount: no band holds it, so that one way out serves.
    const bool usable = std::isfinite(amountPerServing) && amountPerServing <= kMostPerServing;
    const Decimal amount = usable ? Decimal::fromDouble(amountPerServing) : Decimal{-1, 0};
    const auto printed = printedUnder(rule->bands, amount);
    if (!printed)
        return fail(Error{ErrorCode::OutOfRange}
                        .with("component", tagname)
                        .with("found", fmt::format("{}", amountPerServing)));
    return printed->text();
}

}  // namespace nettare
