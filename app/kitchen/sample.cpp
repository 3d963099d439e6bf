#include "app/kitchen/sample.h"

#include <algorithm>
#include <map>
#include <random>

#include "app/files/read_file.h"
#include "app/files/share_folder.h"
#include "app/kitchen/keep_draft.h"
#include "app/kitchen/ledger_entries.h"
#include "app/kitchen/sample_history.h"
#include "core/recipe/read_recipe.h"
#include "db/kitchen/uuid.h"

namespace nettare {

namespace {

/// The same UUIDs in every build, from a generator whose raw output is the same everywhere.
class FixedUuids {
public:
    std::string operator()() {
        UuidBytes bytes{};
        for (unsigned char& byte : bytes) byte = static_cast<unsigned char>(generator_() & 0xFFU);
        return uuidOf(bytes);
    }

private:
    std::mt19937 generator_{20260411};  // the day of the first revision
};

Error inDocument(const std::string& file, Error error) {
    if (error.file.empty()) error.file = file;
    return error;
}

/// Fills a kitchen from the folder of the demo.
class SampleBuilder {
public:
    SampleBuilder(Kitchen& kitchen, const FoodTables& tables, std::string folder)
        : kitchen_{kitchen}, tables_{tables}, folder_{std::move(folder)} {}

    Result<void> build(const SampleHistory& history) {
        for (const SampleRevision& revision : history.revisions)
            newest_[revision.recipe] = revision.document;
        for (const SampleRevision& revision : history.revisions)
            if (auto kept = keep(revision); !kept) return kept;
        for (const SampleDraft& draft : history.drafts)
            if (auto done = goOn(draft); !done) return done;
        return {};
    }

private:
    Result<Json> read(const std::string& name) const {
        const std::string file = folder_ + "/" + name;
        const auto text = readFile(file);
        if (!text) return fail(text.error());
        auto json = parseJson(*text);
        if (!json) return fail(inDocument(file, json.error()));
        return json;
    }

    /// The recipe's id in the kitchen; its draft is the newest document from the start.
    Result<std::string> idOf(const SampleRevision& revision) {
        std::string& id = ids_[revision.recipe];
        if (!id.empty()) return id;
        const auto document = read(newest_[revision.recipe]);
        if (!document) return fail(document.error());
        auto added = kitchen_.addRecipe(*document, revision.keptAt);
        if (added) id = *added;
        return added;
    }

    Result<void> keep(const SampleRevision& revision) {
        const auto document = read(revision.document);
        if (!document) return fail(document.error());
        const auto id = idOf(revision);
        if (!id) return fail(id.error());
        const auto closure = closureOfDraft(kitchen_, *document, tables_);
        if (!closure) return fail(inDocument(revision.document, closure.error()));
        int& number = numbers_[*id];
        const auto parent = number > 0 ? std::optional<int>{number} : std::nullopt;
        const auto toKeep =
            revisionToKeep(*document, *closure, revision.note, revision.keptAt, parent);
        if (!toKeep) return fail(inDocument(revision.document, toKeep.error()));
        if (auto done = record(*document, *id, revision.keptAt); !done) return done;
        const auto kept = kitchen_.keep(*id, *toKeep);
        if (!kept) return fail(kept.error());
        number = *kept;
        return {};
    }

    Result<void> record(const Json& document, const std::string& id, const std::string& at) {
        const auto read = readRecipe(document);
        if (!read) return fail(read.error());
        const auto recorded = recordDocument(kitchen_, *read, id, {at, std::ref(uuids_)});
        if (!recorded) return fail(recorded.error());
        return {};
    }

    Result<void> goOn(const SampleDraft& draft) {
        auto document = read(newest_[draft.recipe]);
        for (const Edit& edit : draft.edits)
            if (document) document = applied(std::move(*document), edit);
        if (!document) return fail(document.error());
        JournalChange change;
        change.edits = draft.edits;
        change.cursor = draft.edits.size();
        change.at = draft.changedAt;
        return kitchen_.journal(ids_[draft.recipe], change);
    }

    Kitchen& kitchen_;
    const FoodTables& tables_;
    std::string folder_;
    std::map<std::string, std::string> newest_, ids_;  ///< by the history's word for a recipe
    std::map<std::string, int> numbers_;               ///< newest revision by id
    FixedUuids uuids_;
};

}  // namespace

Result<Kitchen> openSample() {
    return Kitchen::openCopy(shareFolder() + "/demo.nettare");
}

Result<Kitchen> buildSample(const std::string& folder, DossierLoader& loader) {
    const auto history = readSampleHistory(folder + "/history.json");
    if (!history) return fail(history.error());
    const auto tables = loader.tables();
    if (!tables) return fail(tables.error());
    auto kitchen = Kitchen::inMemory(history->revisions.front().keptAt);
    if (!kitchen) return fail(kitchen.error());
    const auto built = SampleBuilder{*kitchen, **tables, folder}.build(*history);
    if (!built) return fail(built.error());
    return kitchen;
}

}  // namespace nettare
