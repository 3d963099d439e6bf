#include "app/loading/closure.h"

#include <algorithm>

#include "app/loading/kept_reference.h"
#include "core/recipe/read_recipe.h"

namespace nettare {

namespace {

/// The text member of a value, or nothing: a draft may be half written.
const std::string* textOf(const Json& json, std::string_view key) {
    const Json* member = json.find(key);
    return member == nullptr ? nullptr : member->text();
}

std::optional<TableRow> rowOf(const Json& food) {
    const Json* row = food.find("table");
    if (row == nullptr) return std::nullopt;
    const std::string* table = textOf(*row, "table");
    const std::string* release = textOf(*row, "release");
    const std::string* number = textOf(*row, "number");
    if (table == nullptr || release == nullptr || number == nullptr) return std::nullopt;
    return TableRow{*table, *release, *number};
}

const Json::Array& foodEntriesOf(const Json& document) {
    static const Json::Array kNone;
    const Json* foods = document.find("foods");
    return foods != nullptr && foods->items() != nullptr ? *foods->items() : kNone;
}

void addOnce(Closure& closure, const TableFood& food) {
    if (closure.food(food.row) == nullptr) closure.foods.push_back(food);
}

bool isMissing(const Error& error) {
    return error.code == ErrorCode::RecipeNotFound || error.code == ErrorCode::RevisionNotFound;
}

/// Brings in the revisions that documents use, and those that these use. Each is read once, so
/// references that lead round come to an end.
class KeptRecipes {
public:
    KeptRecipes(const Kitchen& kitchen, Closure& closure) : kitchen_{kitchen}, closure_{closure} {}

    /// `name` is that of the document, for errors; empty where its reader knows it.
    Result<void> addUsedBy(const Json& document, const std::string& name) {
        const Json::Array& foods = foodEntriesOf(document);
        for (std::size_t i = 0; i < foods.size(); ++i) {
            const std::string* used = textOf(foods[i], "recipe");
            if (used == nullptr || closure_.recipes.contains(*used)) continue;
            if (auto added = add(*used); !added) {
                Error error = added.error();
                if (error.code == ErrorCode::NotAKeptRecipe && error.pointer.empty()) {
                    error.file = name;
                    error.pointer = pointerTo("/foods", i) + "/recipe";
                }
                return fail(error);
            }
        }
        return {};
    }

private:
    Result<void> add(const std::string& used) {
        const auto reference = keptReference(used);
        if (!reference) return fail(Error{ErrorCode::NotAKeptRecipe}.with("found", used));
        const auto kept = kitchen_.stored(reference->recipe, reference->revision);
        if (!kept && isMissing(kept.error()))
            return fail(Error{ErrorCode::NotAKeptRecipe}.with("found", used));
        if (!kept) return fail(kept.error());
        for (const PinnedFood& pinned : kept->foods) addOnce(closure_, pinned.food);
        closure_.recipes.emplace(used, kept->document);
        return addUsedBy(kept->document, used);
    }

    const Kitchen& kitchen_;
    Closure& closure_;
};

/// The row as the kitchen used it first, else as the tables have it.
Result<std::optional<TableFood>> rowFor(const TableRow& row, const Kitchen& kitchen,
                                        const FoodTables& tables) {
    auto kept = kitchen.food(row);
    if (!kept || *kept) return kept;
    return tables.find(row);
}

/// A document that is read, with the name that errors give it.
Result<LoadedRecipe> loaded(const std::string& name, const Json& document) {
    auto recipe = readRecipe(document);
    if (recipe) return LoadedRecipe{name, std::move(*recipe)};
    Error error = recipe.error();
    error.file = name;
    return fail(error);
}

}  // namespace

const TableFood* Closure::food(const TableRow& row) const {
    const auto found = std::ranges::find(foods, row, &TableFood::row);
    return found == foods.end() ? nullptr : &*found;
}

Result<Closure> closureOfDraft(const Kitchen& kitchen, const Json& document,
                               const FoodTables& tables) {
    Closure closure;
    for (const Json& food : foodEntriesOf(document)) {
        const auto row = rowOf(food);
        if (!row || closure.food(*row) != nullptr) continue;
        const auto found = rowFor(*row, kitchen, tables);
        if (!found) return fail(found.error());
        if (*found) closure.foods.push_back(**found);
    }
    if (auto added = KeptRecipes{kitchen, closure}.addUsedBy(document, ""); !added)
        return fail(added.error());
    return closure;
}

Result<Closure> closureOfRevision(const Kitchen& kitchen, const Json& document,
                                  const std::vector<PinnedFood>& foods) {
    Closure closure;
    for (const PinnedFood& pinned : foods) addOnce(closure, pinned.food);
    if (auto added = KeptRecipes{kitchen, closure}.addUsedBy(document, ""); !added)
        return fail(added.error());
    return closure;
}

Result<Closure> closureOfRevision(const Kitchen& kitchen, const KeptRevision& revision) {
    return closureOfRevision(kitchen, revision.document, revision.foods);
}

Result<Dossier> dossierOf(const LoadedRecipe& recipe, const Closure& closure) {
    const FoodLookup foods = [&](const TableRow& row) -> Result<std::optional<TableFood>> {
        const TableFood* food = closure.food(row);
        return food == nullptr ? std::optional<TableFood>{} : *food;
    };
    const RecipeLookup recipes = [&](const std::string& reference, const std::string& /*from*/) {
        const auto kept = closure.recipes.find(reference);
        if (kept != closure.recipes.end()) return loaded(reference, kept->second);
        Error error = Error{ErrorCode::NotAKeptRecipe}.with("found", reference);
        error.file = reference;
        return Result<LoadedRecipe>{fail(error)};
    };
    return makeDossier(recipe, foods, recipes);
}

Result<Dossier> dossierOf(const Json& document, const std::string& name, const Closure& closure) {
    const auto recipe = loaded(name, document);
    if (!recipe) return fail(recipe.error());
    return dossierOf(*recipe, closure);
}

}  // namespace nettare
