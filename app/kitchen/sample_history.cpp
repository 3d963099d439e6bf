#include "app/kitchen/sample_history.h"

#include "app/files/read_file.h"
#include "core/recipe/read_recipe.h"
#include "core/support/json_reader.h"

namespace nettare {

namespace {

SampleRevision readRevision(ObjectReader& reader) {
    SampleRevision revision;
    revision.recipe = reader.id("recipe");
    revision.document = reader.text("document", kNameLength);
    revision.keptAt = reader.text("kept_at", kNameLength);
    revision.note = reader.text("note", kProseLength);
    reader.finish();
    return revision;
}

SampleDraft readDraft(ObjectReader& reader) {
    SampleDraft draft;
    draft.recipe = reader.id("recipe");
    draft.changedAt = reader.text("changed_at", kNameLength);
    for (const auto& [json, pointer] : reader.items("edits", 0, kMostEntries)) {
        auto edit = readEdit(json);
        if (edit)
            draft.edits.push_back(std::move(*edit));
        else if (!reader.failure())
            reader.failure() = edit.error().at(pointer + edit.error().pointer);
    }
    reader.finish();
    return draft;
}

Result<SampleHistory> historyFrom(const Json& json) {
    std::optional<Error> failure;
    ObjectReader root{json, "", failure};
    SampleHistory history;
    for (const auto& [item, pointer] : root.items("revisions", 1, kMostEntries)) {
        ObjectReader reader{item, pointer, failure};
        history.revisions.push_back(readRevision(reader));
    }
    for (const auto& [item, pointer] : root.items("drafts", 0, kMostEntries)) {
        ObjectReader reader{item, pointer, failure};
        history.drafts.push_back(readDraft(reader));
    }
    root.finish();
    if (failure) return fail(*failure);
    return history;
}

}  // namespace

Result<SampleHistory> readSampleHistory(const std::string& path) {
    const auto text = readFile(path);
    if (!text) return fail(text.error());
    const auto json = parseJson(*text);
    auto history = json ? historyFrom(*json) : fail(json.error());
    if (history) return history;
    Error error = history.error();
    error.file = path;
    return fail(error);
}

}  // namespace nettare
