#include "app/panel/panel_column.h"

#include <algorithm>

namespace nettare {

namespace {

constexpr int kCapitalsPercentOfSize = 72;  // Lato: 1433/2000 em
constexpr int kPitchPercentOfSize = 125;
constexpr int kLeastGapCpt = 600;  // between the left and the right words of a row

int widthOf(const PanelTextLine& line) {
    return line.empty() ? 0 : line.back().rightCpt - line.front().leftCpt;
}

int endOf(const PanelTextLine& line) {
    return line.empty() ? 0 : line.back().rightCpt;
}

int sizeOfLine(const PanelTextLine& line) {
    int sizeCpt = 0;
    for (const PanelText& run : line) sizeCpt = std::max(sizeCpt, run.style.sizeCpt);
    return sizeCpt;
}

void moveToRightEdge(PanelTextLine& line, int rightCpt) {
    const int byCpt = rightCpt - line.back().rightCpt;
    for (PanelText& run : line) {
        run.leftCpt += byCpt;
        run.rightCpt += byCpt;
    }
}

}  // namespace

PanelColumn::PanelColumn(PanelLayout& layout, int leftCpt, int rightCpt, int topCpt,
                         const PanelTextWidth& width)
    : layout_{layout}, leftCpt_{leftCpt}, rightCpt_{rightCpt}, bottomCpt_{topCpt}, width_{width} {}

void PanelColumn::rule(int heightCpt, int indentCpt) {
    const int leftCpt = leftCpt_ + indentCpt;
    layout_.rules.push_back({leftCpt, bottomCpt_, rightCpt_ - leftCpt, heightCpt});
    bottomCpt_ += heightCpt;
}

std::vector<PanelTextLine> PanelColumn::rowLines(const PanelRow& row) const {
    const PanelMeasure whole{leftCpt_ + row.indentCpt, rightCpt_, row.hangCpt};
    auto right = wrapWords(row.right, {leftCpt_, rightCpt_, 0}, width_);
    for (PanelTextLine& line : right) moveToRightEdge(line, rightCpt_);
    auto left = wrapWords(row.left, whole, width_);
    if (right.size() == 1) {
        const int wideCpt = widthOf(right.front());
        PanelMeasure beside = whole;
        beside.rightCpt -= wideCpt + kLeastGapCpt;
        // A percent keeps its column to itself; wider words take what room the last line leaves.
        if (wideCpt * 4 <= rightCpt_ - leftCpt_) left = wrapWords(row.left, beside, width_);
        if (left.empty()) left.emplace_back();
        if (endOf(left.back()) <= beside.rightCpt) {
            for (PanelText& run : right.front()) left.back().push_back(std::move(run));
            right.clear();
        }
    }
    for (PanelTextLine& line : right) left.push_back(std::move(line));
    return left;
}

void PanelColumn::row(const PanelRow& row) {
    if (row.left.empty() && row.right.empty()) return;
    bottomCpt_ += row.aboveCpt;
    int percent = kCapitalsPercentOfSize;
    for (PanelTextLine& line : rowLines(row)) {
        bottomCpt_ += sizeOfLine(line) * percent / 100;
        for (PanelText& run : line) {
            run.baselineCpt = bottomCpt_;
            layout_.texts.push_back(std::move(run));
        }
        percent = kPitchPercentOfSize;
    }
    bottomCpt_ += row.belowCpt;
}

}  // namespace nettare
