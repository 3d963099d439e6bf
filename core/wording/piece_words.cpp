#include "core/wording/piece_words.h"

#include <string>

#include "core/food/piece_word.h"
#include "core/wording/word_list.h"

namespace nettare {

namespace {

using enum PieceWordKind;

/// Common practice.
constexpr WordTable kPieceWords{
    PieceWord{"bag", Pack, {}, false},           PieceWord{"ball", Part, {}, false},
    PieceWord{"bar", Pack, {}, false},           PieceWord{"basket", Pack, {}, false},
    PieceWord{"batch", Part, {}, false},         PieceWord{"bit", Manner, {}, false},
    PieceWord{"block", Pack, {}, false},         PieceWord{"bottle", Pack, {}, false},
    PieceWord{"bowl", Part, {}, false},          PieceWord{"box", Pack, {}, false},
    PieceWord{"branch", Part, {}, false},        PieceWord{"bulb", Part, {}, true},
    PieceWord{"bunch", Part, {}, false},         PieceWord{"can", Pack, {}, false},
    PieceWord{"carton", Pack, {}, false},        PieceWord{"chunk", Part, {}, false},
    PieceWord{"clove", Part, {}, true},          PieceWord{"cluster", Part, {}, false},
    PieceWord{"container", Pack, {}, false},     PieceWord{"crown", Part, {}, false},
    PieceWord{"cube", Part, {}, false},          PieceWord{"dollop", Manner, {}, false},
    PieceWord{"drizzle", Manner, {}, false},     PieceWord{"ear", Part, {}, false},
    PieceWord{"envelope", Pack, {}, false},      PieceWord{"fillet", Part, {}, true},
    PieceWord{"fistful", Manner, {}, false},     PieceWord{"floret", Part, {}, false},
    PieceWord{"glass", Part, {}, false},         PieceWord{"glug", Manner, {}, false},
    PieceWord{"grating", Manner, {}, false},     PieceWord{"grind", Manner, {}, false},
    PieceWord{"grinding", Manner, {}, false},    PieceWord{"handful", Manner, {}, false},
    PieceWord{"head", Part, {}, false},          PieceWord{"jar", Pack, {}, false},
    PieceWord{"knob", Manner, {}, false},        PieceWord{"ladle", Part, {}, false},
    PieceWord{"ladleful", Part, {}, false},      PieceWord{"leaf", Part, {}, false},
    PieceWord{"link", Part, {}, false},          PieceWord{"loaf", Part, {}, false},
    PieceWord{"log", Pack, {}, false},           PieceWord{"lump", Manner, {}, false},
    PieceWord{"mug", Part, {}, false},           PieceWord{"nub", Manner, {}, false},
    PieceWord{"pack", Pack, {}, false},          PieceWord{"package", Pack, {}, false},
    PieceWord{"packet", Pack, "package", false}, PieceWord{"pckg", Pack, "package", false},
    PieceWord{"piece", Part, {}, false},         PieceWord{"pkg", Pack, "package", false},
    PieceWord{"pkt", Pack, "package", false},    PieceWord{"pod", Part, {}, false},
    PieceWord{"portion", Part, {}, false},       PieceWord{"pot", Pack, {}, false},
    PieceWord{"pouch", Pack, {}, false},         PieceWord{"punnet", Pack, {}, false},
    PieceWord{"rasher", Part, {}, true},         PieceWord{"rib", Part, {}, true},
    PieceWord{"round", Part, {}, false},         PieceWord{"sachet", Pack, {}, false},
    PieceWord{"scoop", Part, {}, false},         PieceWord{"segment", Part, {}, false},
    PieceWord{"sheet", Part, {}, true},          PieceWord{"shot", Part, {}, false},
    PieceWord{"slab", Part, {}, false},          PieceWord{"slice", Part, {}, true},
    PieceWord{"slug", Manner, {}, false},        PieceWord{"smidgen", Manner, {}, false},
    PieceWord{"spear", Part, {}, false},         PieceWord{"splash", Manner, {}, false},
    PieceWord{"spoonful", Part, {}, false},      PieceWord{"sprig", Part, {}, true},
    PieceWord{"sprinkle", Manner, {}, false},    PieceWord{"sprinkling", Manner, {}, false},
    PieceWord{"square", Part, {}, false},        PieceWord{"squeeze", Manner, {}, false},
    PieceWord{"squirt", Manner, {}, false},      PieceWord{"stalk", Part, {}, true},
    PieceWord{"stem", Part, {}, false},          PieceWord{"stick", Part, {}, true},
    PieceWord{"strand", Part, {}, false},        PieceWord{"strip", Part, {}, false},
    PieceWord{"swirl", Manner, {}, false},       PieceWord{"thread", Part, {}, false},
    PieceWord{"thumb", Manner, {}, false},       PieceWord{"tin", Pack, {}, false},
    PieceWord{"touch", Manner, {}, false},       PieceWord{"tray", Pack, {}, false},
    PieceWord{"tub", Pack, {}, false},           PieceWord{"tube", Pack, {}, false},
    PieceWord{"turn", Manner, {}, false},        PieceWord{"twist", Manner, {}, false},
    PieceWord{"wedge", Part, {}, false},         PieceWord{"wheel", Part, {}, false},
};

/// Where a piece word is the first half of a food's name.
constexpr WordList kFoodsTogether{
    "head on", "leaf lard", "pot roast", "rib eye", "rib roast", "round steak",
};

constexpr WordList kCuts{
    "back rib",       "beef fillet", "beef rib",         "bread stick",  "cheese stick",
    "cut rib",        "dried clove", "fish stick",       "ground clove", "lamb fillet",
    "lamb rib",       "lolly stick", "mozzarella stick", "pork fillet",  "pork rib",
    "pretzel stick",  "prime rib",   "short rib",        "spare rib",    "veal fillet",
    "venison fillet", "whole clove",
};

std::string joined(std::string_view first, std::string_view second) {
    return std::string{first} + " " + std::string{second};
}

}  // namespace

const PieceWord* pieceWord(std::string_view lower) {
    if (lower == "leaves") lower = "leaf";
    if (lower == "loaves") lower = "loaf";
    if (const PieceWord* word = kPieceWords.rowOf(lower)) return word;
    if (!lower.ends_with('s')) return nullptr;
    return kPieceWords.rowOf(singularOf(lower));
}

std::string_view pieceNamed(const PieceWord& word) {
    return word.piece.empty() ? word.word : word.piece;
}

bool isFoodTogether(std::string_view first, std::string_view second) {
    return kFoodsTogether.has(joined(first, second));
}

bool isCutOrShape(std::string_view first, std::string_view second) {
    return kCuts.has(joined(first, second));
}

}  // namespace nettare
