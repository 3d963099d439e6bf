#include "app/kitchen/keep_draft.h"

#include <algorithm>

#include "core/nutrition/figures.h"
#include "core/publish/figures_json.h"
#include "core/publish/figures_record.h"

namespace nettare {

namespace {

/// The table rows of a dossier, each once.
std::vector<TableFood> rowsOf(const Dossier& dossier) {
    std::vector<TableFood> rows;
    for (const Food& food : dossier.foods)
        if (food.table && std::ranges::find(rows, food.table->row, &TableFood::row) == rows.end())
            rows.push_back(*food.table);
    return rows;
}

}  // namespace

Result<RevisionToKeep> revisionToKeep(const Json& document, const Closure& closure,
                                      const std::string& note, const std::string& at,
                                      std::optional<int> parent) {
    const auto dossier = dossierOf(document, "", closure);
    if (!dossier) return fail(dossier.error());
    const auto cooked = cook(*dossier);
    if (!cooked) return fail(cooked.error());
    RevisionToKeep revision;
    revision.document = document;
    revision.note = note;
    revision.at = at;
    revision.parent = parent;
    revision.foods = rowsOf(*dossier);
    revision.figures = figuresRecord(*dossier, *cooked);
    revision.arithmetic = kArithmeticVersion;
    return revision;
}

}  // namespace nettare
