#include "core/publish/label_basis_text.h"

#include <fmt/core.h>

namespace nettare {

namespace {

std::string sizeOf(const LabelFacts& label) {
    return label.servingSize->text() + (label.servingInMillilitres ? " mL" : " g");
}

std::string householdOf(const LabelFacts& label) {
    return label.householdAmount->text() + " " + label.householdUnit;
}

}  // namespace

std::string labelBasisText(const LabelFacts& label) {
    if (label.per == LabelPer::HundredGrams) return "100 g";
    if (label.per == LabelPer::HundredMillilitres) return "100 mL";
    if (!label.householdAmount) return sizeOf(label);
    return fmt::format("{} ({})", householdOf(label), sizeOf(label));
}

std::string labelServingText(const LabelFacts& label) {
    if (!label.servingSize) return {};
    if (!label.householdAmount) return sizeOf(label);
    return fmt::format("{} = {}", householdOf(label), sizeOf(label));
}

}  // namespace nettare
