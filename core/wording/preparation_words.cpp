#include "core/wording/preparation_words.h"

#include "core/wording/word_list.h"

namespace nettare {

namespace {

constexpr WordList kActs{
    "beaten",   "boned",     "broken",   "browned",  "bruised",     "chopped",   "cleaned",
    "cored",    "creamed",   "crumbled", "crushed",  "cubed",       "debearded", "deboned",
    "deseeded", "destemmed", "deveined", "diced",    "dissolved",   "divided",   "drained",
    "flaked",   "grated",    "halved",   "hulled",   "husked",      "julienned", "juiced",
    "mashed",   "measured",  "melted",   "minced",   "packed",      "peeled",    "picked",
    "pitted",   "pounded",   "pressed",  "pureed",   "pur\u00e9ed", "quartered", "rinsed",
    "scalded",  "scraped",   "scrubbed", "seeded",   "segmented",   "separated", "shaved",
    "shelled",  "shredded",  "shucked",  "sieved",   "sifted",      "skinned",   "slivered",
    "sliced",   "smashed",   "soaked",   "softened", "spooned",     "squeezed",  "stemmed",
    "stoned",   "strained",  "thawed",   "toasted",  "torn",        "trimmed",   "washed",
    "whipped",  "whisked",   "zested",
};

constexpr WordList kManners{
    "coarsely", "fine",    "finely", "firmly",  "freshly",  "gently", "lightly", "loosely",
    "roughly",  "thickly", "thinly", "tightly", "tightly-", "very",   "well",    "well-",
};

/// The act and the words behind it that make it part of a food's name.
struct BoughtSo {
    std::string_view word, next;
};

constexpr std::array<BoughtSo, 35> kBoughtSo{{
    {"crushed", "ice"},      {"crushed", "red"},         {"crushed", "pepper"},
    {"crushed", "tomato"},   {"crushed", "tomatoes"},    {"crushed", "chilli"},
    {"crushed", "chili"},    {"crushed", "pineapple"},   {"minced", "beef"},
    {"minced", "lamb"},      {"minced", "meat"},         {"minced", "pork"},
    {"minced", "turkey"},    {"minced", "veal"},         {"minced", "chicken"},
    {"pressed", "olive"},    {"flaked", "almonds"},      {"slivered", "almonds"},
    {"shredded", "wheat"},   {"shredded", "coconut"},    {"strained", "yogurt"},
    {"strained", "yoghurt"}, {"toasted", "sesame oil"},  {"whipped", "cream"},
    {"whipped", "topping"},  {"creamed", "corn"},        {"creamed", "coconut"},
    {"pressed", "rapeseed"}, {"flaked", "sea"},          {"flaked", "salt"},
    {"browned", "butter"},   {"mashed", "potato"},       {"pickled", "ginger"},
    {"creamed", "spinach"},  {"creamed", "horseradish"},
}};

constexpr WordList kAdjectives{
    "yellow",       "golden",        "young",        "old",          "natural",      "strong",
    "chilled",      "cooled",        "warmed",       "all-purpose",  "baby",         "bitter",
    "black",        "blue",          "bone-in",      "boneless",     "boned",        "brown",
    "canned",       "center-cut",    "coarse",       "cold",         "cooked",       "crisp",
    "crusty",       "dark",          "day-old",      "dried",        "dry",          "extra",
    "extra-virgin", "fatty",         "fine",         "firm",         "free-range",   "fresh",
    "freshly",      "frozen",        "full-fat",     "good",         "good-quality", "granulated",
    "green",        "ground",        "high-quality", "hot",          "jarred",       "lean",
    "light",        "low-fat",       "low-sodium",   "low-salt",     "lukewarm",     "mature",
    "mild",         "nonfat",        "organic",      "orange",       "pink",         "plain",
    "purple",       "quick-cooking", "raw",          "reduced-fat",  "red",          "ripe",
    "roasted",      "salted",        "seedless",     "semi-skimmed", "sharp",        "skin-on",
    "skinless",     "skimmed",       "smoked",       "smooth",       "soft",         "stale",
    "sweet",        "tart",          "tender",       "unsalted",     "unsweetened",  "warm",
    "white",        "whole",
};

bool isManner(std::string_view lower) {
    return kManners.has(lower);
}

/// The act at `i` with the words behind it.
bool isBoughtSo(const LineScan& scan, std::size_t i) {
    return std::ranges::any_of(kBoughtSo, [&](const BoughtSo& row) {
        return scan.is(i, row.word) && scan.areAt(i + 1, row.next);
    });
}

/// One act with the manners before it, or `i`.
std::size_t oneActEnd(const LineScan& scan, std::size_t i) {
    std::size_t at = i;
    while (isManner(scan.word(at))) ++at;
    if (!isAct(scan.word(at)) || isBoughtSo(scan, at)) return i;
    return at + 1;
}

bool joinsActs(const LineScan& scan, std::size_t i) {
    return scan.is(i, "and") || scan.is(i, "&") || scan.is(i, "or") || scan.is(i, "then") ||
           scan.isKind(i, TokenKind::Comma);
}

}  // namespace

bool isAct(std::string_view lower) {
    if (kActs.has(lower)) return true;
    const std::size_t hyphen = lower.find('-');
    if (hyphen == std::string_view::npos || !isManner(lower.substr(0, hyphen))) return false;
    return kActs.has(lower.substr(hyphen + 1));
}

std::size_t actEnd(const LineScan& scan, std::size_t i) {
    std::size_t end = oneActEnd(scan, i);
    while (end != i) {
        std::size_t next = end;
        while (joinsActs(scan, next) && next < end + 2) ++next;
        const std::size_t more = next == end ? next : oneActEnd(scan, next);
        if (more == next) break;
        end = more;
    }
    return end;
}

bool isAdjective(std::string_view lower) {
    return kAdjectives.has(lower) || isAct(lower) || isManner(lower) || lower.ends_with("-free") ||
           lower.ends_with("-fed") || lower.ends_with("-cut");
}

bool isBoughtState(std::string_view lower) {
    return lower == "frozen" || lower == "canned" || lower == "tinned" || lower == "jarred" ||
           lower == "dried";
}

}  // namespace nettare
