#include <algorithm>

#include "core/recipe/read_parts.h"
#include "core/recipe/read_recipe.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

/// A key that can only say yes.
void readTrue(ObjectReader& reader, std::string_view key) {
    if (!reader.optionalFlag(key) && !reader.failure())
        reader.failure() = Error{ErrorCode::NotOneOf}
                               .with("found", "false")
                               .with("known", "true")
                               .at(pointerTo(reader.pointer(), key));
}

/// What was mixed: the lines, how much of them, and at which step.
void readMixture(ObjectReader& reader, ResidueEntry& residue) {
    residue.lines = reader.ids("mixture", kMostEntries);
    for (const auto& [json, pointer] : reader.items("shares", 0, kMostEntries)) {
        ObjectReader share{json, pointer, reader.failure()};
        ShareEntry entry;
        entry.line = share.id("line");
        entry.share = share.text("share", kAmountLength);
        share.finish();
        residue.shares.push_back(std::move(entry));
    }
    if (reader.has("mixed_at")) residue.mixedAt = readWholeText(reader, "mixed_at");
}

/// The same weight at other test cooks; only a cooked weight holds what is not eaten.
std::vector<CookReadings> readOtherCooks(ObjectReader& reader, bool withNotEaten) {
    std::vector<CookReadings> cooks;
    for (const auto& [json, pointer] : reader.items("other_cooks", 0, kMostEntries)) {
        ObjectReader cook{json, pointer, reader.failure()};
        CookReadings& entry = cooks.emplace_back();
        entry.readings = cook.ids("readings", kMostEntries);
        if (withNotEaten) entry.notEaten = cook.optionalIds("not_eaten", kMostEntries);
        cook.finish();
    }
    return cooks;
}

/// The key that is there says what the residue is.
ResidueEntry readResidue(ObjectReader& reader) {
    std::array<std::string_view, kResidueWords.size()> kinds;
    std::ranges::transform(kResidueWords, kinds.begin(), &Word<ResidueKind>::word);
    ResidueEntry residue;
    const std::size_t which = reader.exactlyOneOf(kinds);
    if (which < kinds.size()) residue.kind = kResidueWords[which].meaning;
    switch (residue.kind) {
        case ResidueKind::Line:
            residue.lines = {reader.id("line")};
            break;
        case ResidueKind::Mixture:
            readMixture(reader, residue);
            break;
        case ResidueKind::Drip:
            residue.food = reader.id("drip");
            break;
        case ResidueKind::Unknown:
            readTrue(reader, "unknown");
            break;
        case ResidueKind::Water:
            readTrue(reader, "water");
            break;
        case ResidueKind::NotEaten:
            readTrue(reader, "not_eaten");
            break;
    }
    residue.called = reader.optionalText("called", kNameLength).value_or("");
    residue.readings = reader.ids("readings", kMostEntries);
    residue.otherCooks = readOtherCooks(reader, false);
    reader.finish();
    return residue;
}

/// The dish after cooking; what is not eaten of it is weighed apart.
void readCooked(ObjectReader& root, RecipeDocument& document) {
    if (!root.has("cooked")) return;
    ObjectReader reader = root.object("cooked");
    CookedEntry cooked;
    cooked.readings = reader.ids("readings", kMostEntries);
    cooked.notEaten = reader.optionalIds("not_eaten", kMostEntries);
    cooked.otherCooks = readOtherCooks(reader, true);
    reader.finish();
    document.cooked = cooked;
}

}  // namespace

void readResidues(ObjectReader& root, RecipeDocument& document) {
    for (const auto& [json, pointer] : root.items("residues", 0, kMostEntries)) {
        ObjectReader reader{json, pointer, root.failure()};
        document.residues.push_back(readResidue(reader));
    }
    readCooked(root, document);
}

}  // namespace nettare
