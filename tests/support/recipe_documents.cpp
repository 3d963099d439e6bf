#include "recipe_documents.h"

#include "json_edit.h"

namespace nettare {

Json fullRecipe() {
    static const std::string kText = fileText(NETTARE_TEST_DATA "/recipe/full.json");
    return jsonOf(kText);
}

Json smallRecipe() {
    return jsonOf(R"({
        "format": "nettare recipe", "version": 1, "title": "Salt", "measures": "metric",
        "makes": {"pieces": "1", "piece": "pinch", "plural": "pinches"},
        "portion": {"grams": "2"},
        "foods": [{"id": "salt", "name": "salt",
                   "stated": [{"component": "NA", "per_100g": "39300", "reason": "invented"}]}],
        "lines": [{"id": "salt", "amount": "2", "unit": "g", "food": "salt"}]})");
}

}  // namespace nettare
