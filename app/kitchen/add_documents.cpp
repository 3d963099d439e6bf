#include "app/kitchen/add_documents.h"

#include <filesystem>
#include <map>

#include "app/files/read_file.h"
#include "app/kitchen/keep_draft.h"
#include "app/loading/kept_reference.h"
#include "core/nutrition/figures.h"
#include "core/recipe/read_recipe.h"
#include "core/support/sha256.h"
#include "core/support/text.h"

namespace nettare {

namespace {

constexpr std::size_t kLongestFileName = 200;

using std::filesystem::path;

Error inFile(const std::string& file, Error error) {
    if (error.file.empty()) error.file = file;
    return error;
}

/// Every revision of a kitchen by the hash of its document.
Result<std::map<std::string, KeptReference>> keptByHash(const Kitchen& kitchen) {
    std::map<std::string, KeptReference> kept;
    const auto recipes = kitchen.recipes();
    if (!recipes) return fail(recipes.error());
    for (const ShelvedRecipe& recipe : *recipes) {
        const auto revisions = kitchen.revisions(recipe.id);
        if (!revisions) return fail(revisions.error());
        for (const RevisionSummary& revision : *revisions)
            kept.emplace(revision.hash, KeptReference{recipe.id, revision.number});
    }
    return kept;
}

/// Adds documents that were read and cooked before, so references end and have no cycles.
class DocumentAdder {
public:
    DocumentAdder(Kitchen& kitchen, const FoodTables& tables, const Adding& adding)
        : kitchen_{kitchen}, tables_{tables}, adding_{adding} {}

    Result<void> addAll(const std::vector<std::string>& paths) {
        auto kept = keptByHash(kitchen_);
        if (!kept) return fail(kept.error());
        kept_ = std::move(*kept);
        for (const std::string& each : paths)
            if (auto added = add(path{each}.lexically_normal().string(), false); !added)
                return fail(added.error());
        return {};
    }

    std::vector<AddedRecipe> take() { return std::move(added_); }

private:
    /// The revision that a document became or is; one that nobody uses must be new.
    Result<KeptReference> add(const std::string& file, bool used) {
        if (const auto added = inThisCall_.find(file); added != inThisCall_.end())
            return added->second;
        auto document = read(file);
        if (!document) return fail(document.error());
        const auto kept = kept_.find(sha256(writeJson(*document)));
        if (kept != kept_.end() && !used) return fail(alreadyKept(file, *document, kept->second));
        if (kept != kept_.end()) return kept->second;
        auto reference = keep(file, *document);
        if (reference) inThisCall_.emplace(file, *reference);
        return reference;
    }

    /// The document with the revisions of this kitchen in place of the files that it uses.
    Result<Json> read(const std::string& file) {
        const auto text = readFile(file);
        if (!text) return fail(text.error());
        auto document = parseJson(*text);
        if (!document) return fail(inFile(file, document.error()));
        for (Json& food : *document->find("foods")->items()) {
            const Json* used = food.find("recipe");
            if (used == nullptr) continue;
            const path beside = path{file}.parent_path() / *used->text();
            const auto reference = add(beside.lexically_normal().string(), true);
            if (!reference) return fail(reference.error());
            food.set("recipe", Json{reference->text()});
        }
        return document;
    }

    Result<KeptReference> keep(const std::string& file, const Json& document) {
        const auto closure = closureOfDraft(kitchen_, document, tables_);
        if (!closure) return fail(inFile(file, closure.error()));
        const std::string name = shortened(path{file}.filename().string(), kLongestFileName);
        const auto revision =
            revisionToKeep(document, *closure, "added from " + name, adding_.at, {});
        if (!revision) return fail(inFile(file, revision.error()));
        const auto recipe = kitchen_.addRecipe(document, adding_.at);
        if (!recipe) return fail(recipe.error());
        const auto indications = record(document, *recipe);
        if (!indications) return fail(inFile(file, indications.error()));
        const auto number = kitchen_.keep(*recipe, *revision);
        if (!number) return fail(number.error());
        added_.push_back({file, *document.find("title")->text(), *recipe, *indications});
        const KeptReference reference{*recipe, *number};
        kept_.emplace(sha256(writeJson(document)), reference);
        return reference;
    }

    Result<std::size_t> record(const Json& document, const std::string& recipe) {
        const auto read = readRecipe(document);
        if (!read) return fail(read.error());
        return recordDocument(kitchen_, *read, recipe, adding_);
    }

    static Error alreadyKept(const std::string& file, const Json& document,
                             const KeptReference& kept) {
        Error error{ErrorCode::AlreadyKept};
        error.file = file;
        return error.with("title", *document.find("title")->text())
            .with("recipe", kept.recipe)
            .with("revision", std::to_string(kept.revision));
    }

    Kitchen& kitchen_;
    const FoodTables& tables_;
    const Adding& adding_;
    std::map<std::string, KeptReference> kept_;        ///< by hash
    std::map<std::string, KeptReference> inThisCall_;  ///< by path
    std::vector<AddedRecipe> added_;
};

}  // namespace

Result<std::vector<AddedRecipe>> addDocuments(Kitchen& kitchen,
                                              const std::vector<std::string>& paths,
                                              DossierLoader& loader, const Adding& adding) {
    for (const std::string& each : paths) {
        const auto dossier = loader.load(each, &kitchen);
        if (!dossier) return fail(dossier.error());
        if (const auto cooked = cook(*dossier); !cooked) return fail(cooked.error());
    }
    const auto tables = loader.tables();
    if (!tables) return fail(tables.error());
    DocumentAdder adder{kitchen, **tables, adding};
    const auto added = kitchen.together([&] { return adder.addAll(paths); });
    if (!added) return fail(added.error());
    return adder.take();
}

}  // namespace nettare
