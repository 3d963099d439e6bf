#include "db/import/imported_traits.h"

#include <algorithm>
#include <string>
#include <vector>

#include "db/search_words.h"

namespace nettare {

namespace {

// What goes into the foods of a group, and what a word of a name says, is common practice.

constexpr std::string_view kPlantGroupWords[]{
    "cereal", "cereals", "fruit",   "fruits", "grains",    "herbs",
    "legume", "legumes", "millets", "nut",    "nuts",      "pulses",
    "roots",  "seeds",   "spices",  "tubers", "vegetable", "vegetables"};

constexpr std::string_view kAnimalGroupWords[]{"beef", "eggs", "finfish",   "fish", "game",
                                               "lamb", "pork", "shellfish", "veal", "poultry"};

/// Groups whose foods are made of several things, whatever else their name says.
constexpr std::string_view kMixedGroupWords[]{
    "baby",   "baked", "beverages",  "breakfast", "fast",   "fats",   "luncheon", "meals", "mixed",
    "native", "oils",  "restaurant", "sausages",  "sauces", "snacks", "soups",    "sweets"};

/// With any of these a food has fat of another kind in it, or may have.
constexpr std::string_view kFatWords[]{
    "bacon",   "battered", "beef",       "breaded",      "butter",  "cheese",    "chicken",
    "chips",   "coconut",  "cream",      "creamed",      "egg",     "eggs",      "fat",
    "fish",    "fried",    "frosted",    "hydrogenated", "lard",    "margarine", "meat",
    "milk",    "mix",      "oil",        "partially",    "pork",    "prepared",  "refried",
    "roasted", "sauce",    "shortening", "spread",       "stuffed", "tallow",    "toasted"};

/// With any of these sugar may have been added.
constexpr std::string_view kSugarWords[]{
    "barbecue", "breaded", "brine",     "candied",   "candy",   "chocolate", "cocktail", "coated",
    "cured",    "dessert", "flavored",  "flavoured", "frosted", "glazed",    "honey",    "juice",
    "ketchup",  "maple",   "marinade",  "marinated", "mix",     "nectar",    "pickle",   "pickled",
    "pickles",  "pie",     "prepared",  "relish",    "sauce",   "smoked",    "solution", "spread",
    "sugar",    "sugars",  "sweetened", "syrup",     "teriyaki"};

/// What a plain food may be "with".
constexpr std::string_view kOwnParts[]{"bone", "fat", "leaves", "peel", "salt", "skin", "tops"};

template <class Words>
bool isAmong(const Words& words, std::string_view word) {
    return std::ranges::find(words, word) != std::end(words);
}

template <class Words>
bool anyAmong(const std::vector<std::string>& found, const Words& words) {
    return std::ranges::any_of(found,
                               [&](const std::string& word) { return isAmong(words, word); });
}

/// "with skin" is the food itself, "with cheese" is not.
bool isWithOthers(const std::vector<std::string>& name) {
    for (std::size_t i = 0; i < name.size(); ++i) {
        if (name[i] != "with" && name[i] != "added" && name[i] != "and") continue;
        if (name[i] != "with") return true;
        if (i + 1 == name.size() || !isAmong(kOwnParts, name[i + 1])) return true;
    }
    return false;
}

}  // namespace

ImportedTraits importedTraits(std::string_view name, std::string_view group,
                              ProcessingPlace place) {
    const std::vector<std::string> words = searchWords(name);
    const std::vector<std::string> groupWords = searchWords(group);
    const bool plain = place == ProcessingPlace::Plain && !anyAmong(groupWords, kMixedGroupWords) &&
                       !isWithOthers(words);
    const bool plantGroup = anyAmong(groupWords, kPlantGroupWords);
    const bool single = plantGroup || anyAmong(groupWords, kAnimalGroupWords);
    ImportedTraits traits;
    traits.plant = plain && plantGroup && !anyAmong(words, kFatWords);
    if (plain && single && !anyAmong(words, kSugarWords))
        traits.addedSugars = {AddedSugarKind::None, 0, "a plain food, nothing is added"};
    else
        traits.addedSugars = {AddedSugarKind::BetweenNoneAndAll, 0,
                              "the table does not say what part of its sugars was added"};
    return traits;
}

}  // namespace nettare
