#include <catch2/catch.hpp>

#include "app/panel/panel_layout.h"
#include "app/panel/panel_sizes.h"

#include "panel/sample_panels.h"

#include <fmt/format.h>
#include <algorithm>

using namespace nettare;

namespace {

constexpr int kBoxLeftCpt = kPanelMarginCpt;
constexpr int kBoxRightCpt = kPanelMarginCpt + kPanelBoxWidthCpt;
constexpr int kTextLeftCpt = kBoxLeftCpt + kPanelBoxRuleCpt + kPanelPaddingCpt;
constexpr int kTextRightCpt = kBoxRightCpt - kPanelBoxRuleCpt - kPanelPaddingCpt;

/// A face without a font: each character 0.55 em wide, bold ones 0.6 em.
int plainWidth(std::string_view text, const PanelStyle& style) {
    const auto characters = std::ranges::count_if(
        text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; });
    const int perMille = style.face == PanelFace::Regular ? 550 : 600;
    return static_cast<int>(characters) * style.sizeCpt * perMille / 1000;
}

struct Frame {
    int leftCpt, topCpt, rightCpt, bottomCpt;
};

/// The room of a text: from an accent on a capital to a descender of Lato (0.93 and 0.21 em,
/// measured); digits have no descender.
Frame frameOf(const PanelText& text) {
    const bool digits = text.text.find_first_not_of("0123456789") == std::string::npos;
    return {text.leftCpt, text.baselineCpt - text.style.sizeCpt * 93 / 100, text.rightCpt,
            text.baselineCpt + (digits ? 0 : text.style.sizeCpt * 21 / 100)};
}

Frame frameOf(const PanelRule& rule) {
    return {rule.leftCpt, rule.topCpt, rule.leftCpt + rule.widthCpt, rule.topCpt + rule.heightCpt};
}

bool overlap(const Frame& a, const Frame& b) {
    return a.leftCpt < b.rightCpt && b.leftCpt < a.rightCpt && a.topCpt < b.bottomCpt &&
           b.topCpt < a.bottomCpt;
}

const PanelText& find(const PanelLayout& layout, std::string_view text) {
    INFO(text);
    const auto found = std::ranges::find(layout.texts, text, &PanelText::text);
    REQUIRE(found != layout.texts.end());
    return *found;
}

int boxBottomCpt(const PanelLayout& layout) {
    int bottomCpt = 0;
    for (const PanelRule& rule : layout.rules)
        bottomCpt = std::max(bottomCpt, frameOf(rule).bottomCpt);
    return bottomCpt;
}

/// The rule that stands closest above a text.
const PanelRule& ruleAbove(const PanelLayout& layout, const PanelText& text) {
    const PanelRule* closest = nullptr;
    for (const PanelRule& rule : layout.rules)
        if (rule.topCpt < text.baselineCpt && rule.widthCpt > rule.heightCpt &&
            (closest == nullptr || rule.topCpt > closest->topCpt))
            closest = &rule;
    REQUIRE(closest != nullptr);
    return *closest;
}

void checkNothingOverlaps(const PanelLayout& layout) {
    for (std::size_t i = 0; i < layout.texts.size(); ++i) {
        const Frame text = frameOf(layout.texts[i]);
        INFO(layout.texts[i].text);
        for (std::size_t j = 0; j < i; ++j) {
            INFO(layout.texts[j].text);
            CHECK_FALSE(overlap(text, frameOf(layout.texts[j])));
        }
        for (const PanelRule& rule : layout.rules) CHECK_FALSE(overlap(text, frameOf(rule)));
    }
}

void checkInsideBox(const PanelLayout& layout, std::string_view firstOfCaution) {
    const int bottomCpt = boxBottomCpt(layout);
    bool outside = false;
    for (const PanelText& text : layout.texts) {
        INFO(text.text);
        const Frame frame = frameOf(text);
        outside = outside || text.text.starts_with(firstOfCaution);
        CHECK(frame.leftCpt >= (outside ? kBoxLeftCpt : kTextLeftCpt));
        CHECK(frame.rightCpt <= (outside ? kBoxRightCpt : kTextRightCpt));
        CHECK(frame.topCpt >= (outside ? bottomCpt : kPanelMarginCpt + kPanelBoxRuleCpt));
        CHECK(frame.bottomCpt <= (outside ? layout.heightCpt : bottomCpt - kPanelBoxRuleCpt));
    }
    CHECK(outside);
}

}  // namespace

TEST_CASE("no type of a panel is smaller than the rule allows", "[panel]") {
    const auto leastPt = [](PanelPart part) { return sizeOf(part).leastCpt / 100.0; };
    // 21 CFR 101.9(d)(3)(i), (ii), quoted second-hand
    CHECK(leastPt(PanelPart::Servings) == 10);
    CHECK(leastPt(PanelPart::ServingSize) == 10);
    // 21 CFR 101.9(d)(1)(iii), (d)(5), quoted second-hand
    CHECK(leastPt(PanelPart::CaloriesName) == 16);
    CHECK(leastPt(PanelPart::Calories) == 22);
    CHECK(leastPt(PanelPart::Line) == 8);
    CHECK(leastPt(PanelPart::Vitamin) == 8);
    // from memory
    CHECK(leastPt(PanelPart::Footnote) == 6);
    for (std::size_t i = 0; i < kPanelPartSizes.size(); ++i) {
        const PanelPartSize& size = kPanelPartSizes[i];
        INFO(size.paragraph);
        CHECK(static_cast<std::size_t>(size.part) == i);
        CHECK(size.sizeCpt >= size.leastCpt);
        CHECK_FALSE(size.paragraph.empty());
        // (d)(2), from memory: the title is above all type but the figure of calories
        const bool below = size.part == PanelPart::Title || size.part == PanelPart::Calories ||
                           size.sizeCpt < sizeOf(PanelPart::Title).leastCpt;
        CHECK(below);
    }
}

TEST_CASE("every text of a panel is set in the size and face of its part", "[panel]") {
    const PanelLayout layout = layOutPanel(skewerPanel(), plainWidth);
    const std::pair<const char*, PanelPart> parts[] = {
        {"6 servings per container", PanelPart::Servings},
        {"Serving size", PanelPart::ServingSize},
        {"Amount per serving", PanelPart::AmountHead},
        {"Calories", PanelPart::CaloriesName},
        {"290", PanelPart::Calories},
        {"% Daily Value*", PanelPart::PercentHead},
        {"17g", PanelPart::Line},
        {"Saturated Fat", PanelPart::Line},
        {"Vitamin D", PanelPart::Vitamin},
    };
    for (const auto& [text, part] : parts) {
        const PanelStyle& style = find(layout, text).style;
        CHECK(style.sizeCpt == sizeOf(part).sizeCpt);
        CHECK(style.face == sizeOf(part).face);
    }
    CHECK(find(layout, "Total Fat").style.face == PanelFace::Bold);
    CHECK(find(layout, "22%").style.face == PanelFace::Bold);
    CHECK(find(layout, "10%").style.face == PanelFace::Regular);
}

TEST_CASE("digits of amounts, percents and calories keep their width", "[panel]") {
    const PanelLayout layout = layOutPanel(skewerPanel(), plainWidth);
    for (const char* figure : {"290", "17g", "22%", "0.1mcg", "10%"})
        CHECK(find(layout, figure).style.figures);
    for (const char* words : {"Calories", "Total Fat", "Nutrition Facts", "Serving size"})
        CHECK_FALSE(find(layout, words).style.figures);
}

TEST_CASE("the title fills the width and is wrapped rather than set too small", "[panel]") {
    const auto oneWider = [](std::string_view text, const PanelStyle& style) {
        return plainWidth(text, style) * 3 / 4;
    };
    const PanelLayout layout = layOutPanel(skewerPanel(), plainWidth);
    const PanelText& title = find(layout, "Nutrition Facts");
    CHECK(title.rightCpt - title.leftCpt > (kTextRightCpt - kTextLeftCpt) * 95 / 100);
    CHECK(find(layOutPanel(skewerPanel(), oneWider), "Nutrition Facts").style.sizeCpt ==
          sizeOf(PanelPart::Title).sizeCpt);
    const PanelLayout german = layOutPanel(germanPanel(), plainWidth);
    CHECK(find(german, "Durchschnittliche").style.sizeCpt == sizeOf(PanelPart::Title).leastCpt);
    for (const PanelText& text : german.texts)
        CHECK(text.style.sizeCpt >= sizeOf(PanelPart::Caution).leastCpt);
}

TEST_CASE("nothing overlaps, and all but the caution stands in the box", "[panel]") {
    const PanelLayout english = layOutPanel(skewerPanel(), plainWidth);
    checkNothingOverlaps(english);
    checkInsideBox(english, "Calculated");
    const PanelLayout german = layOutPanel(germanPanel(), plainWidth);
    checkNothingOverlaps(german);
    checkInsideBox(german, "Aus Rezeptdaten");
}

TEST_CASE("texts of a panel are kept in the order they are read", "[panel]") {
    const PanelLayout layout = layOutPanel(germanPanel(), plainWidth);
    for (std::size_t i = 1; i < layout.texts.size(); ++i) {
        const PanelText& before = layout.texts[i - 1];
        const PanelText& text = layout.texts[i];
        INFO(before.text << " | " << text.text);
        const bool follows =
            text.baselineCpt > before.baselineCpt ||
            (text.baselineCpt == before.baselineCpt && text.leftCpt > before.rightCpt);
        CHECK(follows);
    }
}

TEST_CASE("lines of a panel stand at their indent and percents at the right edge", "[panel]") {
    const PanelLayout layout = layOutPanel(skewerPanel(), plainWidth);
    CHECK(find(layout, "Total Fat").leftCpt == kTextLeftCpt);
    CHECK(find(layout, "Saturated Fat").leftCpt == kTextLeftCpt + kPanelIndentCpt);
    CHECK(find(layout, "Includes 4g Added Sugars").leftCpt == kTextLeftCpt + 2 * kPanelIndentCpt);
    for (const char* text : {"290", "% Daily Value*", "22%", "4%", "10%"})
        CHECK(find(layout, text).rightCpt == kTextRightCpt);
    CHECK(find(layout, "22%").baselineCpt == find(layout, "Total Fat").baselineCpt);
    CHECK(find(layout, "290").baselineCpt == find(layout, "Calories").baselineCpt);
}

TEST_CASE("the hairline above added sugars begins at their indent, all others at the edge",
          "[panel]") {
    // 21 CFR 101.9(d)(1)(v), second-hand
    const PanelLayout layout = layOutPanel(skewerPanel(), plainWidth);
    for (const PanelLine& line : skewerPanel().lines) {
        const std::string first = line.includes ? line.text() : line.name;
        const PanelRule& rule = ruleAbove(layout, find(layout, first));
        INFO(first);
        CHECK(rule.heightCpt == kPanelHairlineCpt);
        CHECK(rule.leftCpt == kTextLeftCpt + (line.includes ? 2 * kPanelIndentCpt : 0));
        CHECK(frameOf(rule).rightCpt == kTextRightCpt);
    }
}

TEST_CASE("bars part the serving, the calories, the nutrients and the vitamins", "[panel]") {
    const PanelLayout layout = layOutPanel(skewerPanel(), plainWidth);
    const auto above = [&](std::string_view text) {
        return ruleAbove(layout, find(layout, text)).heightCpt;
    };
    CHECK(above("6 servings per container") == kPanelHairlineCpt);
    CHECK(above("Amount per serving") == kPanelThickBarCpt);
    CHECK(above("% Daily Value*") == kPanelThinBarCpt);
    CHECK(above("Vitamin D") == kPanelThickBarCpt);
    CHECK(above("Calcium") == kPanelHairlineCpt);
    const auto note = std::ranges::find_if(
        layout.texts, [](const PanelText& text) { return text.text.starts_with("*The"); });
    REQUIRE(note != layout.texts.end());
    CHECK(ruleAbove(layout, *note).heightCpt == kPanelThinBarCpt);
}

TEST_CASE("lines of one text leave more than a point of leading", "[panel]") {
    // 21 CFR 101.9(d)(1)(iii), from memory: at least one point
    for (const Panel& panel : {skewerPanel(), germanPanel()}) {
        const PanelLayout layout = layOutPanel(panel, plainWidth);
        for (std::size_t i = 1; i < layout.texts.size(); ++i) {
            const PanelText& before = layout.texts[i - 1];
            const PanelText& text = layout.texts[i];
            const int pitchCpt = text.baselineCpt - before.baselineCpt;
            const bool sameType = text.style.sizeCpt == before.style.sizeCpt;
            INFO(text.text);
            CHECK((pitchCpt == 0 || !sameType || pitchCpt >= text.style.sizeCpt + 100));
        }
    }
}

TEST_CASE("the page of a panel is whole points with a margin on every side", "[panel]") {
    for (const Panel& panel : {skewerPanel(), germanPanel()}) {
        const PanelLayout layout = layOutPanel(panel, plainWidth);
        CHECK(layout.widthCpt == 25200);
        CHECK(layout.heightCpt % 100 == 0);
        CHECK(layout.heightCpt - layout.texts.back().baselineCpt >= kPanelMarginCpt);
        CHECK(layout.heightCpt - layout.texts.back().baselineCpt < kPanelMarginCpt + 100);
        CHECK(frameOf(layout.rules.back()).rightCpt == kBoxRightCpt);
    }
}

TEST_CASE("a short serving stands beside its head, a long one below", "[panel]") {
    Panel panel = skewerPanel();
    panel.servingHousehold = "1 cup";
    const PanelLayout layout = layOutPanel(panel, plainWidth);
    CHECK(find(layout, "1 cup (128g)").baselineCpt == find(layout, "Serving size").baselineCpt);
    const PanelLayout longer = layOutPanel(skewerPanel(), plainWidth);
    CHECK(find(longer, "2 skewers with fiery sauce (128g)").baselineCpt >
          find(longer, "Serving size").baselineCpt);
}

TEST_CASE("a panel without vitamins, footnote and caution ends after its nutrients", "[panel]") {
    Panel panel = skewerPanel();
    panel.vitamins.clear();
    panel.footnote.clear();
    panel.caution.clear();
    const PanelLayout layout = layOutPanel(panel, plainWidth);
    CHECK(layout.texts.back().text == "24g");
    CHECK(boxBottomCpt(layout) - layout.texts.back().baselineCpt < 500);
    CHECK(layout.heightCpt - boxBottomCpt(layout) < kPanelMarginCpt + 100);
}
