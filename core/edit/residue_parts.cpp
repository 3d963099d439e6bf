#include "core/edit/residue_parts.h"

#include <algorithm>
#include <charconv>

#include "core/recipe/words.h"

namespace nettare {

namespace {

/// The error of a makeup that names what is not there.
std::optional<Error> unknownIn(const Json& document, const ResidueMakeup& makeup) {
    for (const std::string& line : makeup.lines)
        if (const auto known = entryNamed(document, "lines", line); !known) return known.error();
    for (const ShareEntry& share : makeup.shares)
        if (const auto known = entryNamed(document, "lines", share.line); !known)
            return known.error();
    if (makeup.kind != ResidueKind::Drip) return std::nullopt;
    const auto food = entryNamed(document, "foods", makeup.food);
    return food ? std::nullopt : std::optional{food.error()};
}

std::optional<std::size_t> stepIn(std::string_view text) {
    std::size_t number = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool all = read.ec == std::errc{} && read.ptr == text.data() + text.size();
    return all && number > 0 ? std::optional{number - 1} : std::nullopt;
}

Json sharesJson(const std::vector<ShareEntry>& shares) {
    Json all = Json::array();
    for (const auto& [line, share] : shares) {
        Json json = Json::object();
        all.append(json.set("line", Json{line}).set("share", Json{share}));
    }
    return all;
}

/// The value of the key that says what a residue is.
Json valueOf(const ResidueMakeup& makeup) {
    switch (makeup.kind) {
        case ResidueKind::Line:
            return Json{makeup.lines.empty() ? std::string{} : makeup.lines.front()};
        case ResidueKind::Mixture: {
            Json lines = Json::array();
            for (const std::string& line : makeup.lines) lines.append(Json{line});
            return lines;
        }
        case ResidueKind::Drip:
            return Json{makeup.food};
        case ResidueKind::Unknown:
        case ResidueKind::Water:
        case ResidueKind::NotEaten:
            break;
    }
    return Json{true};
}

/// Takes the line out of one residue; the residue goes with its last line.
void takeOutOfResidue(const Json& residue, std::size_t index, std::string_view line,
                      EditDraft& draft) {
    const auto isLine = [&](const Json& item) {
        return item.text() != nullptr && *item.text() == line;
    };
    const Json::Array& mixture = itemsOf(residue, "mixture");
    const auto inside = std::ranges::find_if(mixture, isLine);
    const bool inMixture = inside != mixture.end();
    if (textAt(residue, "line") != line && !inMixture) return;
    if (!inMixture || mixture.size() == 1) return draft.remove("/residues", index);
    const std::string place = pointerTo("/residues", index);
    draft.remove(place + "/mixture", static_cast<std::size_t>(inside - mixture.begin()));
    const Json::Array& shares = itemsOf(residue, "shares");
    for (std::size_t i = shares.size(); i-- > 0;)
        if (textAt(shares[i], "line") == line) draft.remove(place + "/shares", i);
}

}  // namespace

Result<Json> residueJson(const Json& document, const ResidueMakeup& makeup) {
    if (auto error = unknownIn(document, makeup)) return fail(std::move(*error));
    Json residue = Json::object();
    residue.set(wordFor(makeup.kind, kResidueWords), valueOf(makeup));
    if (!makeup.called.empty()) residue.set("called", Json{makeup.called});
    if (makeup.kind != ResidueKind::Mixture) return residue;
    if (!makeup.shares.empty()) residue.set("shares", sharesJson(makeup.shares));
    if (makeup.mixedAt.empty()) return residue;
    residue.set("mixed_at", Json{makeup.mixedAt});
    // What is no number is refused as such, with the document.
    const auto step = stepIn(makeup.mixedAt);
    if (step && *step >= itemsOf(document, "steps").size())
        return fail(Error{ErrorCode::UnknownReference}.with("found", makeup.mixedAt).at("/steps"));
    return residue;
}

void takeOutOfResidues(const Json& document, std::string_view line, EditDraft& draft) {
    // The last first, so that the indices of the others stay.
    const Json::Array& residues = itemsOf(document, "residues");
    for (std::size_t i = residues.size(); i-- > 0;) takeOutOfResidue(residues[i], i, line, draft);
}

std::optional<std::size_t> stepOf(const Json& residue) {
    return stepIn(textAt(residue, "mixed_at"));
}

}  // namespace nettare
