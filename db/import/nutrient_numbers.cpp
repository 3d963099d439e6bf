#include "db/import/nutrient_numbers.h"

#include <algorithm>
#include <array>
#include <utility>

namespace nettare {

namespace {

using enum Component;

struct NumberedComponent {
    Component component;
    std::string_view number;
};

// USDA National Nutrient Database for Standard Reference, Release 28, file NUTR_DEF (number and
// tagname); 539 (sugars, added), which Release 28 has not: nutrient list of FoodData Central, from
// memory. 324 (vitamin D in IU) shares the tagname VITD with 328 and is not it. In the order of
// Component, which nutrientNumberOf() relies on.
constexpr std::array<NumberedComponent, kComponentCount> kNumbers{{
    {WATER, "255"},    {ASH, "207"},    {ENERC_KCAL, "208"}, {ENERC_KJ, "268"}, {PROCNT, "203"},
    {FAT, "204"},      {FASAT, "606"},  {FATRN, "605"},      {FAMS, "645"},     {FAPU, "646"},
    {CHOLE, "601"},    {CHOCDF, "205"}, {FIBTG, "291"},      {SUGAR, "269"},    {SUGAD, "539"},
    {NA, "307"},       {CA, "301"},     {FE, "303"},         {K, "306"},        {VITD, "328"},
    {VITA_RAE, "320"}, {VITC, "401"},   {THIA, "404"},       {RIBF, "405"},     {NIA, "406"},
    {VITB6A, "415"},   {FOL, "417"},    {FOLDFE, "435"},     {VITB12, "418"},   {VITK1, "430"},
    {TOCPHA, "323"},   {MG, "304"},     {P, "305"},          {ZN, "309"},       {CU, "312"},
    {MN, "315"},       {SE, "317"},     {CHOLN, "421"},      {PANTAC, "410"},   {CAFFN, "262"},
    {ALC, "221"},
}};

// Standard Reference: "kcal", "µg"; FoodData Central: capitals, "UG".
constexpr std::array<std::pair<std::string_view, std::string_view>, 8> kUsdaUnits{{
    {"G", "g"},
    {"MG", "mg"},
    {"UG", "µg"},
    {"MCG", "µg"},
    {"\xCE\xBCg", "µg"},  // with a Greek mu
    {"KCAL", "kcal"},
    {"KJ", "kJ"},
    {"iu", "IU"},
}};

}  // namespace

std::optional<Component> componentOfNutrientNumber(std::string_view number) {
    const auto* const found = std::ranges::find(kNumbers, number, &NumberedComponent::number);
    if (found == kNumbers.end()) return std::nullopt;
    return found->component;
}

std::string_view nutrientNumberOf(Component component) {
    return kNumbers[indexOf(component)].number;
}

std::string_view unitOfUsda(std::string_view written) {
    for (const auto& [theirs, ours] : kUsdaUnits)
        if (theirs == written) return ours;
    return written;
}

}  // namespace nettare
