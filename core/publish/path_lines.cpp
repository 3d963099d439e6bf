#include <fmt/core.h>

#include "core/publish/path_work.h"

namespace nettare {

namespace {

/// Steps of the main recipe's line, marked as such; those of a kept recipe below it are not.
void markLine(PathDraft& draft, std::size_t line) {
    draft.step.line = line;
    for (PathDraft& below : draft.below)
        if (below.step.kind != PathKind::Kept) markLine(below, line);
}

/// "Sauce, revision 3": a kitchen names a kept recipe by its revision.
std::string keptName(const Recipe& kept) {
    const std::size_t mark = kept.file.rfind('#');
    return mark == std::string::npos ? kept.title
                                     : kept.title + ", revision " + kept.file.substr(mark + 1);
}

double halfWidthOfLine(PathWork& work, std::size_t recipe, const std::string& id) {
    LinearForm content;
    for (const Leaf& leaf : work.gramsOf(recipe).eaten.leaves)
        if (!leaf.drip && (leaf.path == id || leaf.path.starts_with(id + "/")))
            content.add(contentOf(work, leaf));
    return pathHalfWidth(content, work.meaning());
}

/// Grams of it x what its whole batch holds / weight of its batch.
PathDraft keptLine(PathWork& work, std::size_t recipe, std::size_t index) {
    const Line& line = work.dossier.recipes[recipe].lines[index];
    const std::size_t inner = std::get<RecipeIndex>(line.what).index;
    PathDraft batch = batchDraft(work, inner);
    batch.step.kind = PathKind::Kept;
    batch.step.words = keptName(work.dossier.recipes[inner]) + ": its batch";
    PathDraft draft = pathDraft(PathKind::Line, std::string{work.facts.unit}, line.name);
    draft.by(eatenDraft(work, recipe, index), " g");
    draft.by(std::move(batch), work.unit());
    draft.by(wholeDraft(work, inner), " g", true);
    return draft.computed();
}

std::string lineWords(const Line& line) {
    return line.name + (line.preparation.empty() ? "" : ", " + line.preparation);
}

}  // namespace

PathDraft lineDraft(PathWork& work, std::size_t recipe, std::size_t index) {
    const Line& line = work.dossier.recipes[recipe].lines[index];
    const auto* food = std::get_if<FoodIndex>(&line.what);
    PathDraft draft = food != nullptr
                          ? contentDraft(work, food->index, eatenDraft(work, recipe, index), false)
                          : keptLine(work, recipe, index);
    draft.step.words = lineWords(line);
    draft.decimals = work.decimals();
    // What a kept recipe lost in its cooking is water, and no part of its leaves.
    if (food != nullptr || work.component != Component::WATER)
        draft.within(halfWidthOfLine(work, recipe, line.id), work.decimals());
    if (recipe == 0) markLine(draft, index);
    return draft;
}

}  // namespace nettare
