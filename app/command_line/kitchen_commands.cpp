#include "app/command_line/kitchen_commands.h"

#include <fmt/core.h>

#include <optional>
#include <ostream>
#include <utility>

#include "app/command_line/kitchen_recipes.h"
#include "app/command_line/show_recipe.h"
#include "app/command_line/verify_figures.h"
#include "app/kitchen/add_documents.h"
#include "app/session/now.h"
#include "app/words/error_sentence.h"
#include "core/publish/number_text.h"
#include "core/support/sha256.h"
#include "core/support/text.h"
#include "db/kitchen/uuid.h"

namespace nettare {

namespace {

constexpr std::size_t kLongestShown = 200;
constexpr std::size_t kHashShown = 12;  // digits that tell revisions apart for people

/// "1 recipe", "2 recipes"
std::string counted(std::size_t count, std::string_view one, std::string_view several) {
    return fmt::format("{} {}", count, count == 1 ? one : several);
}

Result<std::vector<AddedRecipe>> added(Kitchen& kitchen, const AddCommand& command,
                                       DossierLoader& loader, const std::string& at) {
    return addDocuments(kitchen, command.documents, loader, {at, &newUuid});
}

/// A new kitchen is filled in memory first, so that its file is there whole or not at all.
Result<std::vector<AddedRecipe>> addedToNew(const AddCommand& command, const std::string& path,
                                            DossierLoader& loader, const std::string& at) {
    auto kitchen = Kitchen::inMemory(at);
    if (!kitchen) return fail(kitchen.error());
    auto recipes = added(*kitchen, command, loader, at);
    if (!recipes) return recipes;
    if (auto written = kitchen->backUp(path); !written) return fail(written.error());
    return recipes;
}

/// "144 kcal" for a portion of the draft; "no figures" where it has none as it stands.
std::string portionEnergy(const OpenRecipe& open, const std::string& id) {
    const auto recipe = open(id);
    const auto figures =
        recipe ? figuresPer(Basis::Portion, recipe->dossier, recipe->cooked) : fail(recipe.error());
    if (!figures) return "no figures";
    return figureText((*figures)[Component::ENERC_KCAL]);
}

std::string stateOf(const ShelvedRecipe& recipe) {
    if (recipe.revisions == 0) return "in work";
    const std::string newest = "revision " + std::to_string(recipe.revisions);
    return recipe.inWork ? newest + ", in work" : newest;
}

/// A fault where the ledger has no entry of that hash. Fails: NotAHash.
Result<std::optional<Error>> lostHead(const std::string& head, const Kitchen& kitchen) {
    if (head.empty()) return std::optional<Error>{};
    const std::string hash = lowerAscii(trimmed(head));
    if (!isSha256(hash))
        return fail(ofArgument("--head", Error{ErrorCode::NotAHash}.with("found", head)));
    const auto there = kitchen.hasLedgerHash(hash);
    if (!there) return fail(there.error());
    if (*there) return std::optional<Error>{};
    Error lost{ErrorCode::LedgerWithoutHead};
    lost.file = kitchen.path();
    lost.values.push_back({"found", hash});  // in full: with() would cut it
    return std::optional{std::move(lost)};
}

}  // namespace

Result<void> addToKitchen(const AddCommand& command, const std::string& path, DossierLoader& loader,
                          std::ostream& out) {
    const std::string at = now();
    auto kitchen = Kitchen::open(path, KitchenAccess::Write);
    const bool isNew = !kitchen && kitchen.error().code == ErrorCode::KitchenMissing;
    if (!kitchen && !isNew) return fail(kitchen.error());
    const auto recipes =
        isNew ? addedToNew(command, path, loader, at) : added(*kitchen, command, loader, at);
    if (!recipes) return fail(recipes.error());
    for (const AddedRecipe& recipe : *recipes)
        out << fmt::format("Added “{}” as {}, revision 1, with {}\n",
                           shortened(recipe.title, kLongestShown), recipe.recipe,
                           counted(recipe.indications, "indication", "indications"));
    return {};
}

Result<void> listRecipes(const Kitchen& kitchen, DossierLoader& loader, std::ostream& out) {
    const auto recipes = kitchen.recipes();
    if (!recipes) return fail(recipes.error());
    const OpenRecipe open = recipesOf(kitchen, loader, {});
    for (const ShelvedRecipe& recipe : *recipes)
        out << fmt::format("{:<32}  {:<20}  {:>12} per portion  {}\n", recipe.id, stateOf(recipe),
                           portionEnergy(open, recipe.id), shortened(recipe.title, kLongestShown));
    if (recipes->empty()) out << "This kitchen has no recipe yet.\n";
    return {};
}

Result<void> listRevisions(const RevisionsCommand& command, const Kitchen& kitchen,
                           std::ostream& out) {
    const auto recipe = kitchen.recipeNamed(command.recipe);
    if (!recipe) return fail(recipe.error());
    const auto revisions = kitchen.revisions(*recipe);
    if (!revisions) return fail(revisions.error());
    for (const RevisionSummary& revision : *revisions)
        out << fmt::format("{:>4}  {}  {}  {}\n", revision.number, revision.at,
                           revision.hash.substr(0, kHashShown),
                           shortened(revision.note, kLongestShown));
    if (revisions->empty()) out << "Nothing of “" << *recipe << "” was kept yet.\n";
    return {};
}

Result<std::size_t> verifyKitchen(const VerifyCommand& command, const Kitchen& kitchen,
                                  std::ostream& out) {
    auto lost = lostHead(command.head, kitchen);
    if (!lost) return fail(lost.error());
    auto check = kitchen.verify();
    if (!check) return fail(check.error());
    if (*lost) check->faults.push_back(std::move(**lost));
    for (Error& fault : changedFigures(kitchen, check->faults))
        check->faults.push_back(std::move(fault));
    out << counted(check->recipes, "recipe", "recipes") << ", "
        << counted(check->revisions, "revision", "revisions") << ", "
        << counted(check->foodVersions, "food version", "food versions") << ", "
        << counted(check->ledgerEntries, "ledger entry", "ledger entries") << "\n";
    if (!check->ledgerHead.empty()) out << "Head of the ledger: " << check->ledgerHead << "\n";
    for (const Error& fault : check->faults) out << errorSentence(fault) << "\n";
    out << (check->faults.empty() ? "No fault found."
                                  : counted(check->faults.size(), "fault", "faults") + " found.")
        << "\n";
    return check->faults.size();
}

Result<void> backUpKitchen(const BackupCommand& command, const Kitchen& kitchen,
                           std::ostream& out) {
    if (auto written = kitchen.backUp(command.out); !written) return written;
    out << "Copy written to " << command.out << '\n';
    return {};
}

}  // namespace nettare
