#pragma once

#include "app/panel/panel_items.h"

#include <array>
#include <string_view>

namespace nettare {

/// The parts of a panel that have a type size of their own.
enum class PanelPart {
    Title,
    Servings,
    ServingSize,
    AmountHead,
    CaloriesName,
    Calories,
    PercentHead,
    Line,
    Vitamin,
    Footnote,
    Caution,
};

/// Type of one part: our size, the least lawful one, and where the least is written.
struct PanelPartSize {
    PanelPart part;
    PanelFace face;
    int sizeCpt;   ///< the title: the largest that is tried
    int leastCpt;  ///< never set smaller
    std::string_view paragraph;
};

/// In the order of PanelPart. Paragraphs are those of 21 CFR 101.9.
constexpr std::array<PanelPartSize, 11> kPanelPartSizes{{
    {PanelPart::Title, PanelFace::Black, 3000, 1900, "(d)(2), from memory: above all but calories"},
    {PanelPart::Servings, PanelFace::Regular, 1000, 1000, "(d)(3)(i)"},
    {PanelPart::ServingSize, PanelFace::Bold, 1000, 1000, "(d)(3)(ii)"},
    {PanelPart::AmountHead, PanelFace::Bold, 800, 600, "(d)(4), least size from memory"},
    {PanelPart::CaloriesName, PanelFace::Black, 1800, 1600, "(d)(1)(iii), (d)(5)"},
    {PanelPart::Calories, PanelFace::Black, 2600, 2200, "(d)(1)(iii), (d)(5)"},
    {PanelPart::PercentHead, PanelFace::Bold, 800, 600, "(d)(6), least size from memory"},
    {PanelPart::Line, PanelFace::Regular, 900, 800, "(d)(1)(iii)"},
    {PanelPart::Vitamin, PanelFace::Regular, 900, 800, "(d)(1)(iii), (d)(8), from memory"},
    {PanelPart::Footnote, PanelFace::Regular, 700, 600, "(d)(9), least size from memory"},
    {PanelPart::Caution, PanelFace::Regular, 700, 600, "none; outside the box, ours"},
}};

[[nodiscard]] constexpr const PanelPartSize& sizeOf(PanelPart part) {
    return kPanelPartSizes[static_cast<std::size_t>(part)];
}

// Bars and hairlines. The rule asks for a hairline box, for hairlines between the nutrients and for
// bars, and gives a thickness for none of them: every figure here is ours.
constexpr int kPanelHairlineCpt = 25;
constexpr int kPanelBoxRuleCpt = 50;
constexpr int kPanelThinBarCpt = 250;   ///< below calories and below the vitamins
constexpr int kPanelThickBarCpt = 600;  ///< below the serving and below the nutrients

// The page, the box and the indents; ours as well.
constexpr int kPanelMarginCpt = 1800;  ///< between page and box, on every side
constexpr int kPanelBoxWidthCpt = 21600;
constexpr int kPanelPaddingCpt = 600;  ///< between box rule and texts, left and right
constexpr int kPanelIndentCpt = 1000;  ///< one step of PanelLine::indent

}  // namespace nettare
