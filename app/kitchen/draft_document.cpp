#include "app/kitchen/draft_document.h"

#include <algorithm>

namespace nettare {

Result<Json> documentOf(const StoredDraft& draft) {
    Result<Json> document = draft.base;
    const std::size_t count = std::min(draft.cursor, draft.edits.size());
    for (std::size_t i = 0; i < count && document; ++i)
        document = applied(std::move(*document), draft.edits[i]);
    return document;
}

}  // namespace nettare
