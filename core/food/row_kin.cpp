#include "core/food/row_kin.h"

#include <algorithm>
#include <array>

#include "core/food/piece_word.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// A kind with which the names of SR28 begin; the thing stands behind it.
struct RowKind {
    std::string_view word;  ///< in lower case
    bool ofName;            ///< a cook says it too: "olive oil", but "salmon"
};

constexpr std::array kRowKinds{
    RowKind{"alcoholic beverage", false},
    RowKind{"beverages", false},
    RowKind{"bread", true},
    RowKind{"cereals", false},
    RowKind{"cheese", false},
    RowKind{"crustaceans", false},
    RowKind{"fish", false},
    RowKind{"game meat", false},
    RowKind{"mollusks", false},
    RowKind{"nuts", false},
    RowKind{"oil", true},
    RowKind{"salad dressing", false},
    RowKind{"sauce", true},
    RowKind{"sausage", true},
    RowKind{"seaweed", false},
    RowKind{"seeds", false},
    RowKind{"spices", false},
    RowKind{"sweeteners", false},
};

/// Words that say what was done to a thing, or how much of it there is, and not what it is.
constexpr std::array<std::string_view, 26> kSaidOfIt{
    "raw",     "cooked",  "boiled",   "dry",       "dried",      "drained", "canned",
    "frozen",  "fresh",   "roasted",  "fried",     "baked",      "steamed", "grilled",
    "browned", "salted",  "unsalted", "sweetened", "ground",     "whole",   "ripe",
    "peeled",  "chopped", "smoked",   "with",      "unsweetened"};

struct TreatmentWords {
    Treatment treatment;
    std::string_view words;  ///< a phrase of whole words
};

constexpr std::array kTreatmentWords{
    TreatmentWords{Treatment::Raw, "raw"},
    TreatmentWords{Treatment::Raw, "fresh"},
    TreatmentWords{Treatment::Raw, "uncooked"},
    TreatmentWords{Treatment::Raw, "unheated"},
    TreatmentWords{Treatment::Cooked, "cooked"},
    TreatmentWords{Treatment::Cooked, "boiled"},
    TreatmentWords{Treatment::Cooked, "roasted"},
    TreatmentWords{Treatment::Cooked, "baked"},
    TreatmentWords{Treatment::Cooked, "fried"},
    TreatmentWords{Treatment::Cooked, "steamed"},
    TreatmentWords{Treatment::Cooked, "broiled"},
    TreatmentWords{Treatment::Cooked, "grilled"},
    TreatmentWords{Treatment::Cooked, "braised"},
    TreatmentWords{Treatment::Cooked, "stewed"},
    TreatmentWords{Treatment::Cooked, "poached"},
    TreatmentWords{Treatment::Cooked, "browned"},
    TreatmentWords{Treatment::Cooked, "scrambled"},
    TreatmentWords{Treatment::Dried, "dried"},
    TreatmentWords{Treatment::Dried, "dry"},
    TreatmentWords{Treatment::Dried, "dehydrated"},
    TreatmentWords{Treatment::Drained, "drained"},
    TreatmentWords{Treatment::Canned, "canned"},
    TreatmentWords{Treatment::Frozen, "frozen"},
    TreatmentWords{Treatment::Salted, "with salt"},
    TreatmentWords{Treatment::Salted, "with added salt"},
    TreatmentWords{Treatment::Salted, "salt added"},
    TreatmentWords{Treatment::Salted, "salted"},
    TreatmentWords{Treatment::Unsalted, "without salt"},
    TreatmentWords{Treatment::Unsalted, "without added salt"},
    TreatmentWords{Treatment::Unsalted, "no salt added"},
    TreatmentWords{Treatment::Unsalted, "unsalted"},
    TreatmentWords{Treatment::Sweetened, "syrup"},
    TreatmentWords{Treatment::Sweetened, "sweetened"},
    TreatmentWords{Treatment::Sweetened, "sugar added"},
    TreatmentWords{Treatment::Treated, "solution"},
    TreatmentWords{Treatment::Treated, "enhanced"},
    TreatmentWords{Treatment::Treated, "cured"},
    TreatmentWords{Treatment::Treated, "smoked"},
    TreatmentWords{Treatment::Treated, "pickled"},
    TreatmentWords{Treatment::Treated, "brined"},
    TreatmentWords{Treatment::Treated, "enriched"},
    TreatmentWords{Treatment::Treated, "fortified"},
};

/// Lower case, with single spaces where anything but letters stood, also at both ends.
std::string spaced(std::string_view text) {
    std::string result = " ";
    for (const char c : lowerAscii(text)) {
        const bool letter = (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) > 0x7F;
        if (letter)
            result += c;
        else if (result.back() != ' ')
            result += ' ';
    }
    if (result.back() != ' ') result += ' ';
    return result;
}

bool says(const std::string& spacedName, std::string_view words) {
    return spacedName.find(" " + std::string{words} + " ") != std::string::npos;
}

std::vector<std::string> thingWords(std::string_view part) {
    std::vector<std::string> found;
    const std::string text = spaced(part);
    for (const std::string_view word : words(text))
        if (std::ranges::find(kSaidOfIt, word) == kSaidOfIt.end())
            found.push_back(singularOf(word));
    return found;
}

}  // namespace

std::vector<std::string> thingOf(std::string_view rowName) {
    const std::vector<std::string_view> parts = split(rowName, ',');
    const std::string first = lowerAscii(trimmed(parts.front()));
    const auto* const kind = std::ranges::find(kRowKinds, first, &RowKind::word);
    for (std::size_t i = kind != kRowKinds.end() ? 1 : 0; i < parts.size(); ++i) {
        auto thing = thingWords(parts[i]);
        if (thing.empty()) continue;
        if (kind != kRowKinds.end() && kind->ofName) thing.emplace_back(kind->word);
        return thing;
    }
    return thingWords(parts.front());
}

bool isSameThing(std::string_view rowName, std::string_view otherName) {
    auto one = thingOf(rowName);
    auto other = thingOf(otherName);
    std::ranges::sort(one);
    std::ranges::sort(other);
    return !one.empty() && one == other;
}

std::vector<Treatment> treatmentsOf(std::string_view rowName) {
    const std::string name = spaced(rowName);
    std::vector<Treatment> found;
    for (const auto& [treatment, words] : kTreatmentWords)
        if (says(name, words) && (found.empty() || found.back() != treatment))
            found.push_back(treatment);
    // "no salt added" also says "salt added".
    if (std::ranges::find(found, Treatment::Unsalted) != found.end())
        std::erase(found, Treatment::Salted);
    return found;
}

std::string_view nameOf(Treatment treatment) {
    constexpr std::array<std::string_view, 10> kNames{
        "raw",    "cooked",    "dried",        "drained",   "canned",
        "frozen", "with salt", "without salt", "sweetened", "treated"};
    return kNames.at(static_cast<std::size_t>(treatment));
}

}  // namespace nettare
