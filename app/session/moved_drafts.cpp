#include "app/session/moved_drafts.h"

#include "app/kitchen/draft_document.h"
#include "core/edit/food_row_edits.h"

namespace nettare {

namespace {

Result<void> moveOne(Kitchen& kitchen, const std::string& recipe, const DraftsToMove& moved,
                     const std::string& at) {
    const auto draft = kitchen.draft(recipe);
    if (!draft) return fail(draft.error());
    const auto document = documentOf(*draft);
    if (!document) return fail(document.error());
    const auto edit = moveOwnFoods(*document, moved.numbers, moved.to.row, moved.to.name);
    if (!edit) return {};
    return kitchen.journal(recipe, {draft->cursor, {*edit}, draft->cursor + 1, at});
}

}  // namespace

Result<void> moveDraftsOn(Kitchen& kitchen, const DraftsToMove& moved, const std::string& at) {
    return kitchen.together([&]() -> Result<void> {
        if (auto copied = kitchen.copyIn({moved.to}); !copied) return copied;
        for (const std::string& recipe : moved.recipes)
            if (auto done = moveOne(kitchen, recipe, moved, at); !done) return done;
        return {};
    });
}

}  // namespace nettare
