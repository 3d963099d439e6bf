#include "core/food/component.h"

namespace nettare {

using enum Component;

const std::array<ComponentFacts, kComponentCount>& allComponents() {
    static constexpr std::array<ComponentFacts, kComponentCount> kFacts{{
        {WATER, "WATER", "g", "water"},
        {ASH, "ASH", "g", "ash"},
        {ENERC_KCAL, "ENERC_KCAL", "kcal", "energy"},
        {ENERC_KJ, "ENERC_KJ", "kJ", "energy in kJ"},
        {PROCNT, "PROCNT", "g", "protein"},
        {FAT, "FAT", "g", "fat"},
        {FASAT, "FASAT", "g", "saturated fat"},
        {FATRN, "FATRN", "g", "trans fat"},
        {FAMS, "FAMS", "g", "monounsaturated fat"},
        {FAPU, "FAPU", "g", "polyunsaturated fat"},
        {CHOLE, "CHOLE", "mg", "cholesterol"},
        {CHOCDF, "CHOCDF", "g", "carbohydrate"},
        {FIBTG, "FIBTG", "g", "fibre"},
        {SUGAR, "SUGAR", "g", "sugars"},
        {SUGAD, "SUGAD", "g", "added sugars"},
        {NA, "NA", "mg", "sodium"},
        {CA, "CA", "mg", "calcium"},
        {FE, "FE", "mg", "iron"},
        {K, "K", "mg", "potassium"},
        {VITD, "VITD", "µg", "vitamin D"},
        {VITA_RAE, "VITA_RAE", "µg", "vitamin A"},
        {VITC, "VITC", "mg", "vitamin C"},
        {THIA, "THIA", "mg", "thiamin"},
        {RIBF, "RIBF", "mg", "riboflavin"},
        {NIA, "NIA", "mg", "niacin"},
        {VITB6A, "VITB6A", "mg", "vitamin B6"},
        {FOL, "FOL", "µg", "folate"},
        {FOLDFE, "FOLDFE", "µg", "folate, DFE"},
        {VITB12, "VITB12", "µg", "vitamin B12"},
        {VITK1, "VITK1", "µg", "vitamin K1"},
        {TOCPHA, "TOCPHA", "mg", "vitamin E"},
        {MG, "MG", "mg", "magnesium"},
        {P, "P", "mg", "phosphorus"},
        {ZN, "ZN", "mg", "zinc"},
        {CU, "CU", "mg", "copper"},
        {MN, "MN", "mg", "manganese"},
        {SE, "SE", "µg", "selenium"},
        {CHOLN, "CHOLN", "mg", "choline"},
        {PANTAC, "PANTAC", "mg", "pantothenic acid"},
        {CAFFN, "CAFFN", "mg", "caffeine"},
        {ALC, "ALC", "g", "alcohol"},
    }};
    return kFacts;
}

const ComponentFacts& factsOf(Component component) {
    return allComponents()[indexOf(component)];
}

std::optional<Component> componentNamed(std::string_view tagname) {
    for (const ComponentFacts& facts : allComponents())
        if (facts.tagname == tagname) return facts.component;
    return std::nullopt;
}

}  // namespace nettare
