#include "app/panel/panel_layout.h"

#include "app/panel/panel_column.h"
#include "app/panel/panel_sizes.h"

namespace nettare {

namespace {

constexpr int kBoxLeftCpt = kPanelMarginCpt;
constexpr int kBoxRightCpt = kBoxLeftCpt + kPanelBoxWidthCpt;
constexpr int kInnerLeftCpt = kBoxLeftCpt + kPanelBoxRuleCpt + kPanelPaddingCpt;
constexpr int kInnerRightCpt = kBoxRightCpt - kPanelBoxRuleCpt - kPanelPaddingCpt;
constexpr int kTitleStepCpt = 25;
constexpr int kLineAboveCpt = 270;
constexpr int kLineBelowCpt = 330;

PanelStyle styleOf(PanelPart part, bool figures = false) {
    return {sizeOf(part).face, sizeOf(part).sizeCpt, figures};
}

std::vector<PanelWord> wordsOf(PanelPart part, std::string_view text) {
    return panelWords(text, styleOf(part));
}

void addWords(std::vector<PanelWord>& words, std::vector<PanelWord> more) {
    for (PanelWord& word : more) words.push_back(std::move(word));
}

/// The largest size at which the title fits the width, or its least size.
PanelStyle titleStyle(const std::string& title, const PanelTextWidth& width) {
    PanelStyle style = styleOf(PanelPart::Title);
    while (style.sizeCpt > sizeOf(PanelPart::Title).leastCpt &&
           width(title, style) > kInnerRightCpt - kInnerLeftCpt)
        style.sizeCpt -= kTitleStepCpt;
    return style;
}

void addHead(PanelColumn& column, const Panel& panel, const PanelTextWidth& width) {
    column.row({.left = panelWords(panel.title, titleStyle(panel.title, width)),
                .right = {},
                .aboveCpt = 630,
                .belowCpt = 520});
    column.rule(kPanelHairlineCpt);
    column.row({.left = wordsOf(PanelPart::Servings, panel.servings),
                .right = {},
                .aboveCpt = 400,
                .belowCpt = 100});
    auto serving = wordsOf(PanelPart::ServingSize, panel.servingHousehold);
    addWords(serving, wordsOf(PanelPart::ServingSize, panel.servingMetric));
    column.row({.left = wordsOf(PanelPart::ServingSize, panel.servingSizeHead),
                .right = std::move(serving),
                .aboveCpt = 430,
                .belowCpt = 450});
    column.rule(kPanelThickBarCpt);
}

void addCalories(PanelColumn& column, const Panel& panel) {
    column.row({.left = wordsOf(PanelPart::AmountHead, panel.amountHead),
                .right = {},
                .aboveCpt = 350,
                .belowCpt = 150});
    column.row({.left = wordsOf(PanelPart::CaloriesName, panel.caloriesName),
                .right = panelWords(panel.calories, styleOf(PanelPart::Calories, true)),
                .aboveCpt = 410,
                .belowCpt = 450});
    column.rule(kPanelThinBarCpt);
}

/// Name and amount in the order they are read, each word in its style.
std::vector<PanelWord> lineWords(const PanelLine& line, PanelPart part) {
    PanelStyle name = styleOf(part);
    if (line.bold) name.face = PanelFace::Bold;
    const PanelStyle amount = styleOf(part, true);
    std::vector<PanelWord> words;
    if (line.includes) return panelWords(line.text(), amount);
    addWords(words, panelWords(line.name, name));
    addWords(words, panelWords(line.amount, amount));
    return words;
}

void addLine(PanelColumn& column, const PanelLine& line, PanelPart part) {
    PanelStyle percent = styleOf(part, true);
    // The percents of the nutrients are bold, those of the vitamins plain: common practice.
    if (part == PanelPart::Line) percent.face = PanelFace::Bold;
    PanelRow row{.left = lineWords(line, part),
                 .right = {},
                 .aboveCpt = kLineAboveCpt,
                 .belowCpt = kLineBelowCpt,
                 .indentCpt = line.indent * kPanelIndentCpt,
                 .hangCpt = kPanelIndentCpt};
    if (line.percent) row.right = panelWords(*line.percent, percent);
    column.row(row);
}

void addLines(PanelColumn& column, const Panel& panel) {
    column.row({.left = {},
                .right = wordsOf(PanelPart::PercentHead, panel.percentHead),
                .aboveCpt = kLineAboveCpt,
                .belowCpt = kLineBelowCpt});
    for (const PanelLine& line : panel.lines) {
        // Full width but for the one above added sugars: 21 CFR 101.9(d)(1)(v), second-hand.
        column.rule(kPanelHairlineCpt, line.includes ? line.indent * kPanelIndentCpt : 0);
        addLine(column, line, PanelPart::Line);
    }
}

void addVitamins(PanelColumn& column, const Panel& panel) {
    int ruleCpt = kPanelThickBarCpt;
    for (const PanelLine& line : panel.vitamins) {
        column.rule(ruleCpt);
        addLine(column, line, PanelPart::Vitamin);
        ruleCpt = kPanelHairlineCpt;
    }
}

void addFootnote(PanelColumn& column, const Panel& panel, const PanelTextWidth& width) {
    if (panel.footnote.empty()) return;
    const bool starred = panel.footnote.starts_with('*');
    column.rule(kPanelThinBarCpt);
    column.row({.left = wordsOf(PanelPart::Footnote, panel.footnote),
                .right = {},
                .aboveCpt = 330,
                .belowCpt = 420,
                .hangCpt = starred ? width("*", styleOf(PanelPart::Footnote)) : 0});
}

void addBox(PanelLayout& layout, int topCpt, int bottomCpt) {
    const int insideCpt = bottomCpt - topCpt - 2 * kPanelBoxRuleCpt;
    layout.rules.push_back({kBoxLeftCpt, topCpt, kPanelBoxWidthCpt, kPanelBoxRuleCpt});
    layout.rules.push_back(
        {kBoxLeftCpt, bottomCpt - kPanelBoxRuleCpt, kPanelBoxWidthCpt, kPanelBoxRuleCpt});
    for (const int leftCpt : {kBoxLeftCpt, kBoxRightCpt - kPanelBoxRuleCpt})
        layout.rules.push_back({leftCpt, topCpt + kPanelBoxRuleCpt, kPanelBoxRuleCpt, insideCpt});
}

int wholePoints(int heightCpt) {
    return (heightCpt + 99) / 100 * 100;
}

}  // namespace

PanelLayout layOutPanel(const Panel& panel, const PanelTextWidth& width) {
    PanelLayout layout;
    PanelColumn box{layout, kInnerLeftCpt, kInnerRightCpt, kPanelMarginCpt + kPanelBoxRuleCpt,
                    width};
    addHead(box, panel, width);
    addCalories(box, panel);
    addLines(box, panel);
    addVitamins(box, panel);
    addFootnote(box, panel, width);
    const int boxBottomCpt = box.bottomCpt() + kPanelBoxRuleCpt;
    addBox(layout, kPanelMarginCpt, boxBottomCpt);
    PanelColumn outside{layout, kBoxLeftCpt, kBoxRightCpt, boxBottomCpt, width};
    outside.row({.left = wordsOf(PanelPart::Caution, panel.caution),
                 .right = {},
                 .aboveCpt = 600,
                 .belowCpt = 0});
    layout.widthCpt = wholePoints(kBoxRightCpt + kPanelMarginCpt);
    layout.heightCpt = wholePoints(outside.bottomCpt() + kPanelMarginCpt);
    return layout;
}

}  // namespace nettare
