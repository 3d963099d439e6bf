#pragma once

#include "core/publish/comparison.h"
#include "kitchen.h"

namespace kitchen {

/// A kitchen with all that a comparison looks at.
struct ServedState {
    RecipeDocument document;
    Served served;

    explicit ServedState(const Kitchen& kitchen)
        : document{Served::orThrow(readRecipe(kitchen.document()))}, served{kitchen} {}

    [[nodiscard]] ComparedState state() const { return {document, served.dossier, served.cooked}; }
};

inline Comparison comparedKitchens(const Kitchen& before, const Kitchen& after) {
    const ServedState older{before};
    const ServedState newer{after};
    return Served::orThrow(compared(older.state(), newer.state()));
}

/// Oil, sugar and weighed fennel, in the amounts given.
inline Kitchen dish(const std::string& oilTbsp, const std::string& sugarTsp) {
    Kitchen kitchen;
    kitchen.reading("bulbs", "400");
    kitchen.line(R"({"id":"oil","amount":")" + oilTbsp + R"(","unit":"tbsp","food":"oil"})");
    kitchen.line(R"({"id":"sugar","amount":")" + sugarTsp + R"(","unit":"tsp","food":"sugar"})");
    kitchen.line(
        R"({"id":"fennel","amount":"2","piece":"bulb","food":"fennel","weighed":["bulbs"]})");
    kitchen.json("steps", R"([{"text":"Cut the fennel."},{"text":"Fry it in the oil."}])");
    kitchen.json("targets", R"([{"component":"ENERC_KCAL","per":"batch","at_most":"600"}])");
    return kitchen;
}

}  // namespace kitchen
