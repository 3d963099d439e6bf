#pragma once

#include <string>
#include <vector>

#include "core/edit/edit.h"
#include "core/support/result.h"

namespace nettare {

/// What was kept in the demo kitchen, oldest first; `recipe` is a word of its own for one recipe.
struct SampleRevision {
    std::string recipe;
    std::string document;  ///< path inside the folder
    std::string keptAt;    ///< ISO 8601 with offset
    std::string note;
};

/// Edits that a draft has since its newest revision.
struct SampleDraft {
    std::string recipe;
    std::string changedAt;
    std::vector<Edit> edits;
};

struct SampleHistory {
    std::vector<SampleRevision> revisions;
    std::vector<SampleDraft> drafts;
};

/// Reads history.json. Fails as reading a recipe document does.
[[nodiscard]] Result<SampleHistory> readSampleHistory(const std::string& path);

}  // namespace nettare
