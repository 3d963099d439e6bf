#include "core/edit/step_edits.h"

#include "core/edit/residue_parts.h"
#include "core/recipe/read_recipe.h"

namespace nettare {

namespace {

const std::string kSteps = "/steps";

/// Steps are called by their number, as the cook counts.
std::string stepName(std::size_t index) {
    return "step " + std::to_string(index + 1);
}

std::optional<Error> missingStep(const Json& document, std::size_t index) {
    if (index < itemsOf(document, "steps").size()) return std::nullopt;
    return Error{ErrorCode::EditDoesNotFit}.at(pointerTo(kSteps, index));
}

}  // namespace

Result<Edit> addStep(const Json& document, std::size_t at, std::string_view typed) {
    if (at > itemsOf(document, "steps").size())
        return fail(Error{ErrorCode::EditDoesNotFit}.at(pointerTo(kSteps, at)));
    Json step = Json::object();
    step.set("text", Json{typed});
    EditDraft draft{document, EditKind::AddStep, stepName(at)};
    draft.insert(kSteps, at, std::move(step));
    followSteps(document, draft,
                [&](std::size_t other) { return std::optional{other + (other >= at ? 1 : 0)}; });
    return draft.takeChecked();
}

Result<Edit> changeStep(const Json& document, std::size_t at, std::string_view typed) {
    if (auto error = missingStep(document, at)) return fail(std::move(*error));
    const std::string place = pointerTo(kSteps, at) + "/text";
    auto text = typedText(place, typed, kProseLength);
    if (!text) return fail(text.error());
    EditDraft draft{document, EditKind::ChangeStep, stepName(at)};
    draft.set(place, std::move(*text));
    return draft.take();
}

Result<Edit> removeStep(const Json& document, std::size_t at) {
    if (auto error = missingStep(document, at)) return fail(std::move(*error));
    EditDraft draft{document, EditKind::RemoveStep, stepName(at)};
    draft.remove(kSteps, at);
    followSteps(document, draft, [&](std::size_t other) -> std::optional<std::size_t> {
        if (other == at) return std::nullopt;
        return other - (other > at ? 1 : 0);
    });
    return draft.take();
}

Result<Edit> moveStep(const Json& document, std::size_t from, std::size_t to) {
    if (auto error = missingStep(document, from)) return fail(std::move(*error));
    if (auto error = missingStep(document, to)) return fail(std::move(*error));
    EditDraft draft{document, EditKind::MoveStep, stepName(from)};
    draft.move(kSteps, from, to);
    followSteps(document, draft, [&](std::size_t other) {
        if (other == from) return std::optional{to};
        const std::size_t without = other - (other > from ? 1 : 0);
        return std::optional{without + (without >= to ? 1 : 0)};
    });
    return draft.take();
}

}  // namespace nettare
