#include "core/label/label_lines.h"

#include <algorithm>
#include <array>

namespace nettare {

namespace {

using enum Component;
using enum LabelOnly;

/// 21 CFR 101.9(c) and (d); indents and the order of the voluntary vitamins, that of the table in
/// (c)(8)(iv), from memory. Alcohol stands on no such list; packages that print it do so last.
constexpr std::array kUsLines{
    PrintedLine{ENERC_KCAL, "Calories", "", 0, true},
    PrintedLine{FAT, "Total Fat", "g", 0, true},
    PrintedLine{FASAT, "Saturated Fat", "g", 1, true},
    PrintedLine{FATRN, "Trans Fat", "g", 1, true},
    PrintedLine{FAPU, "Polyunsaturated Fat", "g", 1, false},
    PrintedLine{FAMS, "Monounsaturated Fat", "g", 1, false},
    PrintedLine{CHOLE, "Cholesterol", "mg", 0, true},
    PrintedLine{NA, "Sodium", "mg", 0, true},
    PrintedLine{CHOCDF, "Total Carbohydrate", "g", 0, true},
    PrintedLine{FIBTG, "Dietary Fiber", "g", 1, true},
    PrintedLine{SUGAR, "Total Sugars", "g", 1, true},
    PrintedLine{SUGAD, "Includes Added Sugars", "g", 2, true},
    PrintedLine{POLYL, "Sugar Alcohol", "g", 1, false},
    PrintedLine{PROCNT, "Protein", "g", 0, true},
    PrintedLine{VITD, "Vitamin D", "mcg", 0, true},
    PrintedLine{CA, "Calcium", "mg", 0, true},
    PrintedLine{FE, "Iron", "mg", 0, true},
    PrintedLine{K, "Potassium", "mg", 0, true},
    PrintedLine{VITA_RAE, "Vitamin A", "mcg", 0, false},
    PrintedLine{VITC, "Vitamin C", "mg", 0, false},
    PrintedLine{TOCPHA, "Vitamin E", "mg", 0, false},
    PrintedLine{VITK1, "Vitamin K", "mcg", 0, false},
    PrintedLine{THIA, "Thiamin", "mg", 0, false},
    PrintedLine{RIBF, "Riboflavin", "mg", 0, false},
    PrintedLine{NIA, "Niacin", "mg", 0, false},
    PrintedLine{VITB6A, "Vitamin B6", "mg", 0, false},
    PrintedLine{FOLDFE, "Folate", "mcg", 0, false},
    PrintedLine{VITB12, "Vitamin B12", "mcg", 0, false},
    PrintedLine{PANTAC, "Pantothenic Acid", "mg", 0, false},
    PrintedLine{P, "Phosphorus", "mg", 0, false},
    PrintedLine{MG, "Magnesium", "mg", 0, false},
    PrintedLine{ZN, "Zinc", "mg", 0, false},
    PrintedLine{SE, "Selenium", "mcg", 0, false},
    PrintedLine{CU, "Copper", "mg", 0, false},
    PrintedLine{MN, "Manganese", "mg", 0, false},
    PrintedLine{CHOLN, "Choline", "mg", 0, false},
    PrintedLine{ALC, "Alcohol", "g", 0, false},
};

/// Regulation (EU) 1169/2011, Annex XV; the order of the voluntary lines, and of vitamins and
/// minerals that of Annex XIII, from memory. Sodium beside salt and alcohol are no lines of the
/// annex; packages that print them do so outside it.
constexpr std::array kEuLines{
    PrintedLine{ENERC_KJ, "Energy", "kJ", 0, true},
    PrintedLine{ENERC_KCAL, "Energy", "kcal", 0, true},
    PrintedLine{FAT, "Fat", "g", 0, true},
    PrintedLine{FASAT, "of which saturates", "g", 1, true},
    PrintedLine{FAMS, "mono-unsaturates", "g", 1, false},
    PrintedLine{FAPU, "polyunsaturates", "g", 1, false},
    PrintedLine{CHOAVL, "Carbohydrate", "g", 0, true},
    PrintedLine{SUGAR, "of which sugars", "g", 1, true},
    PrintedLine{POLYL, "polyols", "g", 1, false},
    PrintedLine{STARCH, "starch", "g", 1, false},
    PrintedLine{FIBTG, "Fibre", "g", 0, false},
    PrintedLine{PROCNT, "Protein", "g", 0, true},
    PrintedLine{NACL, "Salt", "g", 0, true},
    PrintedLine{NA, "Sodium", "mg", 0, false},
    PrintedLine{VITA_RAE, "Vitamin A", "µg", 0, false},
    PrintedLine{VITD, "Vitamin D", "µg", 0, false},
    PrintedLine{TOCPHA, "Vitamin E", "mg", 0, false},
    PrintedLine{VITK1, "Vitamin K", "µg", 0, false},
    PrintedLine{VITC, "Vitamin C", "mg", 0, false},
    PrintedLine{THIA, "Thiamin", "mg", 0, false},
    PrintedLine{RIBF, "Riboflavin", "mg", 0, false},
    PrintedLine{NIA, "Niacin", "mg", 0, false},
    PrintedLine{VITB6A, "Vitamin B6", "mg", 0, false},
    PrintedLine{FOL, "Folic acid", "µg", 0, false},
    PrintedLine{VITB12, "Vitamin B12", "µg", 0, false},
    PrintedLine{PANTAC, "Pantothenic acid", "mg", 0, false},
    PrintedLine{K, "Potassium", "mg", 0, false},
    PrintedLine{CA, "Calcium", "mg", 0, false},
    PrintedLine{P, "Phosphorus", "mg", 0, false},
    PrintedLine{MG, "Magnesium", "mg", 0, false},
    PrintedLine{FE, "Iron", "mg", 0, false},
    PrintedLine{ZN, "Zinc", "mg", 0, false},
    PrintedLine{CU, "Copper", "mg", 0, false},
    PrintedLine{MN, "Manganese", "mg", 0, false},
    PrintedLine{SE, "Selenium", "µg", 0, false},
    PrintedLine{ALC, "Alcohol", "g", 0, false},
};

}  // namespace

std::span<const PrintedLine> printedLines(LabelRules rules) {
    if (rules == LabelRules::Us) return kUsLines;
    return kEuLines;
}

const PrintedLine* printedLine(LabelRules rules, const LabelLine& line) {
    const auto lines = printedLines(rules);
    const auto found = std::ranges::find(lines, line, &PrintedLine::line);
    return found != lines.end() ? &*found : nullptr;
}

}  // namespace nettare
