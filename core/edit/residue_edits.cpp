#include "core/edit/residue_edits.h"

#include <array>

#include "core/edit/residue_parts.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

/// All members that say what a residue is.
constexpr std::array<std::string_view, 9> kMakeupKeys{
    "line", "mixture", "shares", "mixed_at", "drip", "unknown", "water", "not_eaten", "called"};

std::optional<Error> missingResidue(const Json& document, std::size_t index) {
    if (index < itemsOf(document, "residues").size()) return std::nullopt;
    return Error{ErrorCode::EditDoesNotFit}.at(pointerTo("/residues", index));
}

std::string residueSubject(const Json& document, std::string_view called) {
    return std::string{called.empty() ? textAt(document, "title") : called};
}

}  // namespace

ResidueMakeup ResidueMakeup::ofLines(std::vector<std::string> lines) {
    ResidueMakeup makeup;
    if (lines.size() == 1) makeup.kind = ResidueKind::Line;
    if (lines.size() > 1) makeup.kind = ResidueKind::Mixture;
    makeup.lines = std::move(lines);
    return makeup;
}

Result<Edit> addResidue(const Json& document, const ResidueMakeup& makeup,
                        const std::vector<std::string>& readings) {
    auto residue = residueJson(document, makeup);
    if (!residue) return fail(residue.error());
    Json ids = Json::array();
    for (const std::string& reading : readings) {
        if (const auto known = entryNamed(document, "readings", reading); !known)
            return fail(known.error());
        ids.append(Json{reading});
    }
    EditDraft draft{document, EditKind::Residue, residueSubject(document, makeup.called)};
    draft.append("/residues", residue->set("readings", std::move(ids)));
    return draft.takeChecked();
}

Result<Edit> setResidueMakeup(const Json& document, std::size_t index,
                              const ResidueMakeup& makeup) {
    if (auto error = missingResidue(document, index)) return fail(std::move(*error));
    const auto residue = residueJson(document, makeup);
    if (!residue) return fail(residue.error());
    EditDraft draft{document, EditKind::Residue, residueSubject(document, makeup.called)};
    for (const std::string_view key : kMakeupKeys) {
        const Json* after = residue->find(key);
        draft.set(pointerTo(pointerTo("/residues", index), key),
                  after != nullptr ? std::optional{*after} : std::nullopt);
    }
    return draft.takeChecked();
}

Result<Edit> removeResidue(const Json& document, std::size_t index) {
    if (auto error = missingResidue(document, index)) return fail(std::move(*error));
    const std::string_view called = textAt(itemsOf(document, "residues")[index], "called");
    EditDraft draft{document, EditKind::Residue, residueSubject(document, called)};
    draft.remove("/residues", index);
    return draft.takeChecked();
}

}  // namespace nettare
