#include "core/food/component.h"

namespace nettare {

using enum Component;

const std::array<ComponentFacts, kComponentCount>& allComponents() {
    // In the order of the enumeration, which factsOf() relies on.
    static constexpr std::array<ComponentFacts, kComponentCount> kFacts{{
        {WATER, "WATER", "g", "water", 1},
        {ASH, "ASH", "g", "ash", 1},
        {ENERC_KCAL, "ENERC_KCAL", "kcal", "energy", 0},
        {ENERC_KJ, "ENERC_KJ", "kJ", "energy in kJ", 0},
        {PROCNT, "PROCNT", "g", "protein", 1},
        {FAT, "FAT", "g", "fat", 1},
        {FASAT, "FASAT", "g", "saturated fat", 1},
        {FATRN, "FATRN", "g", "trans fat", 1},
        {FAMS, "FAMS", "g", "monounsaturated fat", 1},
        {FAPU, "FAPU", "g", "polyunsaturated fat", 1},
        {CHOLE, "CHOLE", "mg", "cholesterol", 0},
        {CHOCDF, "CHOCDF", "g", "carbohydrate", 1},
        {FIBTG, "FIBTG", "g", "fibre", 1},
        {SUGAR, "SUGAR", "g", "sugars", 1},
        {SUGAD, "SUGAD", "g", "added sugars", 1},
        {NA, "NA", "mg", "sodium", 0},
        {CA, "CA", "mg", "calcium", 0},
        {FE, "FE", "mg", "iron", 1},
        {K, "K", "mg", "potassium", 0},
        {VITD, "VITD", "µg", "vitamin D", 1},
        {VITA_RAE, "VITA_RAE", "µg", "vitamin A", 0},
        {VITC, "VITC", "mg", "vitamin C", 1},
        {THIA, "THIA", "mg", "thiamin", 2},
        {RIBF, "RIBF", "mg", "riboflavin", 2},
        {NIA, "NIA", "mg", "niacin", 1},
        {VITB6A, "VITB6A", "mg", "vitamin B6", 2},
        {FOL, "FOL", "µg", "folate", 0},
        {FOLDFE, "FOLDFE", "µg", "folate, DFE", 0},
        {VITB12, "VITB12", "µg", "vitamin B12", 2},
        {VITK1, "VITK1", "µg", "vitamin K1", 0},
        {TOCPHA, "TOCPHA", "mg", "vitamin E", 1},
        {MG, "MG", "mg", "magnesium", 0},
        {P, "P", "mg", "phosphorus", 0},
        {ZN, "ZN", "mg", "zinc", 1},
        {CU, "CU", "mg", "copper", 2},
        {MN, "MN", "mg", "manganese", 2},
        {SE, "SE", "µg", "selenium", 1},
        {CHOLN, "CHOLN", "mg", "choline", 0},
        {PANTAC, "PANTAC", "mg", "pantothenic acid", 1},
        {CAFFN, "CAFFN", "mg", "caffeine", 0},
        {ALC, "ALC", "g", "alcohol", 1},
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
