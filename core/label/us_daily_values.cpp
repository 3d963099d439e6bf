#include "core/label/us_daily_values.h"

#include <algorithm>
#include <array>

namespace nettare {

namespace {

using enum Component;
using enum DailyValueKind;

constexpr std::string_view kDrvRecalled = "21 CFR 101.9(c)(9), from memory";
constexpr std::string_view kRdiRecalled = "21 CFR 101.9(c)(8)(iv), from memory";
constexpr std::string_view kRdiChart =
    "21 CFR 101.9(c)(8)(iv); FDA vitamins and minerals chart, October 2021";
constexpr std::string_view kRdiQuoted = "21 CFR 101.9(c)(8)(iv), quoted in FDA draft guidance";
/// The table's niacin leaves out what tryptophan yields, and its vitamin K is K1 alone: the percent
/// of these two is a lower bound.
constexpr std::string_view kRdiOfWider =
    "21 CFR 101.9(c)(8)(iv), from memory; the RDI counts more forms than this component";

/// In the component's unit, as the lists have them: {12, -1} is 1.2 mg. Each row says where it was
/// read, and "from memory" where it was not.
constexpr std::array kDailyValues{
    UsDailyValue{FAT, ReferenceValue, {78, 0}, kDrvRecalled},
    UsDailyValue{FASAT, ReferenceValue, {20, 0}, kDrvRecalled},
    UsDailyValue{CHOLE, ReferenceValue, {300, 0}, kDrvRecalled},
    UsDailyValue{NA, ReferenceValue, {2300, 0}, kDrvRecalled},
    UsDailyValue{CHOCDF, ReferenceValue, {275, 0}, kDrvRecalled},
    UsDailyValue{FIBTG, ReferenceValue, {28, 0}, kDrvRecalled},
    UsDailyValue{SUGAD, ReferenceValue, {50, 0}, kDrvRecalled},
    UsDailyValue{PROCNT, ReferenceValue, {50, 0}, "21 CFR 101.9(c)(7)(iii)"},
    UsDailyValue{VITD, RecommendedIntake, {20, 0}, kRdiRecalled},
    UsDailyValue{CA, RecommendedIntake, {1300, 0}, kRdiRecalled},
    UsDailyValue{FE, RecommendedIntake, {18, 0}, kRdiRecalled},
    UsDailyValue{K, RecommendedIntake, {4700, 0}, kRdiQuoted},
    UsDailyValue{VITA_RAE, RecommendedIntake, {900, 0}, kRdiRecalled},
    UsDailyValue{VITC, RecommendedIntake, {90, 0}, kRdiRecalled},
    UsDailyValue{TOCPHA, RecommendedIntake, {15, 0}, kRdiRecalled},
    UsDailyValue{VITK1, RecommendedIntake, {120, 0}, kRdiOfWider},
    UsDailyValue{THIA, RecommendedIntake, {12, -1}, kRdiRecalled},
    UsDailyValue{RIBF, RecommendedIntake, {13, -1}, kRdiChart},
    UsDailyValue{NIA, RecommendedIntake, {16, 0}, kRdiOfWider},
    UsDailyValue{VITB6A, RecommendedIntake, {17, -1}, kRdiRecalled},
    UsDailyValue{FOLDFE, RecommendedIntake, {400, 0}, kRdiChart},
    UsDailyValue{VITB12, RecommendedIntake, {24, -1}, kRdiRecalled},
    UsDailyValue{PANTAC, RecommendedIntake, {5, 0}, kRdiChart},
    UsDailyValue{P, RecommendedIntake, {1250, 0}, kRdiRecalled},
    UsDailyValue{MG, RecommendedIntake, {420, 0}, kRdiRecalled},
    UsDailyValue{ZN, RecommendedIntake, {11, 0}, kRdiRecalled},
    UsDailyValue{SE, RecommendedIntake, {55, 0}, kRdiRecalled},
    UsDailyValue{CU, RecommendedIntake, {9, -1}, kRdiQuoted},
    UsDailyValue{MN, RecommendedIntake, {23, -1}, kRdiRecalled},
    UsDailyValue{CHOLN, RecommendedIntake, {550, 0}, kRdiChart},
};

}  // namespace

const UsDailyValue* usDailyValue(Component component) {
    const auto* found =
        std::find_if(kDailyValues.begin(), kDailyValues.end(),
                     [&](const UsDailyValue& row) { return row.component == component; });
    return found == kDailyValues.end() ? nullptr : found;
}

}  // namespace nettare
