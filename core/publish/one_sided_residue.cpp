#include "core/publish/one_sided_residue.h"

#include <algorithm>
#include <set>

#include "core/nutrition/share_name.h"

namespace nettare {

namespace {

using Identities = std::set<std::string>;

const std::string& identityMadeOf(const Dossier& dossier, const Line& line) {
    if (const auto* food = std::get_if<FoodIndex>(&line.what))
        return dossier.foods[food->index].identity;
    return dossier.recipes[std::get<RecipeIndex>(line.what).index].file;
}

Identities ofAllLines(const Dossier& dossier) {
    Identities all;
    for (const Line& line : dossier.main().lines) all.insert(identityMadeOf(dossier, line));
    return all;
}

/// What a residue may hold, and what it may be: kinds that are weighed alike are one.
Identities heldBy(const Dossier& dossier, const Residue& residue) {
    switch (residue.kind) {
        case ResidueKind::Line:
        case ResidueKind::Mixture: {
            Identities held;
            for (const std::size_t line : residue.lines)
                held.insert(identityMadeOf(dossier, dossier.main().lines[line]));
            return held;
        }
        case ResidueKind::Drip:
            return {dossier.foods[*residue.food].identity};
        case ResidueKind::Unknown:
            return ofAllLines(dossier);
        case ResidueKind::Water:
            return {"cooking water"};
        case ResidueKind::NotEaten:
            return {"not eaten"};
    }
    return {};
}

bool overlap(const Identities& a, const Identities& b) {
    return std::ranges::any_of(a, [&](const std::string& one) { return b.contains(one); });
}

bool isOfLines(ResidueKind kind) {
    return kind == ResidueKind::Line || kind == ResidueKind::Mixture ||
           kind == ResidueKind::Unknown;
}

/// Whether the other side weighed anything of what the residue holds.
bool isWeighedIn(const Dossier& other, const Identities& held) {
    return std::ranges::any_of(other.main().residues, [&](const Residue& residue) {
        return overlap(held, heldBy(other, residue));
    });
}

/// Whether the component is in any food that is, or is in, what was left over.
bool holdsAny(const ComparedState& state, const Identities& held, Component component) {
    const Dossier& dossier = state.dossier;
    const bool kept = std::ranges::any_of(
        dossier.recipes, [&](const Recipe& recipe) { return held.contains(recipe.file); });
    if (kept) return true;
    for (std::size_t food = 0; food < dossier.foods.size(); ++food) {
        const ComponentAmount& amount = state.cooked.compositions[food][component];
        const bool isIn = amount.origin == Origin::Missing || amount.perGram != 0;
        if (isIn && held.contains(dossier.foods[food].identity)) return true;
    }
    return false;
}

bool carries(const Residue& residue, const ComparedState& state, const Identities& held,
             Component component, bool raw) {
    if (residue.kind == ResidueKind::Water) return component == Component::WATER;
    if (residue.kind == ResidueKind::NotEaten) return raw;
    return holdsAny(state, held, component);
}

}  // namespace

std::optional<std::string> oneSidedResidue(Component component, bool raw,
                                           const ComparedState& state, const ComparedState& other) {
    const std::vector<Residue>& residues = state.dossier.main().residues;
    const Identities others = ofAllLines(other.dossier);
    for (std::size_t i = 0; i < residues.size(); ++i) {
        const Identities held = heldBy(state.dossier, residues[i]);
        const bool isNew = isOfLines(residues[i].kind) && !overlap(held, others);
        if (isNew || isWeighedIn(other.dossier, held)) continue;
        if (carries(residues[i], state, held, component, raw))
            return residueCalled(state.dossier, numberOf(0, i));
    }
    return std::nullopt;
}

}  // namespace nettare
