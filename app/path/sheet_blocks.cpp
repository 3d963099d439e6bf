#include "app/path/sheet_blocks.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

#include "app/path/wrapped_text.h"

namespace nettare {

namespace {

struct SheetWords {
    Q_DECLARE_TR_FUNCTIONS(WorkingSheet)
};

constexpr double kIndentCpt = 1200, kLetterCpt = 1200, kNumbersCpt = 9200, kGapCpt = 800;

PaperBlock heading(const QString& text, double widthCpt) {
    PaperBlock block =
        textBlock(text, boldPaperFont(kPaperHeadingCpt), kPaperInk, widthCpt, kPaperAirCpt);
    block.withNext = true;
    const auto paint = block.paint;
    constexpr double kBefore = 1200;
    block.heightCpt += kBefore;
    block.paint = [paint](QPainter& painter, double top) { paint(painter, top + kBefore); };
    return block;
}

PaperBlock stepBlock(const SheetStep& step, double widthCpt) {
    const double left = step.depth * kIndentCpt;
    const QFont value = boldPaperFont(kPaperTextCpt), spread = paperFont(kPaperTextCpt),
                small = paperFont(kPaperSmallCpt);
    const double number = wideOnPaper(value, step.value) + wideOnPaper(spread, step.spread);
    const double right = left + kLetterCpt + std::max(kNumbersCpt, number);
    const double wordsAt = right + kGapCpt;
    const QStringList words = wrappedLines(step.words, spread, widthCpt - wordsAt);
    const QStringList more =
        step.more.isEmpty() ? QStringList{} : wrappedLines(step.more, small, widthCpt - wordsAt);
    const double text =
        static_cast<double>(std::max(qsizetype{1}, words.size())) * lineStep(spread) +
        static_cast<double>(more.size()) * lineStep(small);
    return {
        text + 2 * kPaperAirCpt, [=](QPainter& painter, double top) {
            paperHairline(painter, left, top, widthCpt - left);
            double base = top + kPaperAirCpt + QFontMetricsF{spread}.ascent();
            painter.setPen(kPaperInk);
            painter.setFont(value);
            painter.drawText(QPointF{left, base}, step.mark);
            painter.drawText(QPointF{right - number, base}, step.value);
            painter.setFont(spread);
            painter.drawText(QPointF{right - wideOnPaper(spread, step.spread), base}, step.spread);
            base = drawLines(painter, words, spread, {wordsAt, base});
            painter.setPen(kPaperInk2);
            drawLines(painter, more, small, {wordsAt, base});
        }};
}

PaperBlock shareBlock(const QString& name, const QString& percent, double widthCpt) {
    const QFont font = paperFont(kPaperTextCpt);
    const QStringList lines = wrappedLines(name, font, widthCpt - kNumbersCpt);
    return {static_cast<double>(lines.size()) * lineStep(font) + 2 * kPaperAirCpt,
            [=](QPainter& painter, double top) {
                paperHairline(painter, 0, top, widthCpt);
                const double base = top + kPaperAirCpt + QFontMetricsF{font}.ascent();
                painter.setFont(font);
                painter.setPen(kPaperInk);
                painter.drawText(QPointF{kLetterCpt + 3000 - wideOnPaper(font, percent), base},
                                 percent);
                drawLines(painter, lines, font, {kLetterCpt + 3000 + kGapCpt, base});
            }};
}

void addSheetHead(std::vector<PaperBlock>& blocks, const WorkingSheet& sheet, double widthCpt) {
    blocks.push_back(
        textBlock(sheet.title, boldPaperFont(kPaperTitleCpt), kPaperInk, widthCpt, kPaperAirCpt));
    const auto small = [&](const QString& text) {
        blocks.push_back(
            textBlock(text, paperFont(kPaperSmallCpt), kPaperInk2, widthCpt, kPaperAirCpt));
    };
    small(sheet.state);
    if (!sheet.ledgerHead.isEmpty())
        small(SheetWords::tr("Ledger head %1, entries: %2")
                  .arg(sheet.ledgerHead)
                  .arg(sheet.ledgerEntries));
    blocks.push_back(heading(SheetWords::tr("Working sheet: %1").arg(sheet.figure), widthCpt));
}

void addSheetEnd(std::vector<PaperBlock>& blocks, const WorkingSheet& sheet, double widthCpt) {
    const auto text = [&](const QString& words) {
        blocks.push_back(textBlock(words, paperFont(kPaperTextCpt), kPaperInk, widthCpt, 0));
    };
    if (!sheet.shares.empty())
        blocks.push_back(heading(SheetWords::tr("What makes it unsure"), widthCpt));
    for (const auto& [name, percent] : sheet.shares)
        blocks.push_back(shareBlock(name, percent, widthCpt));
    if (!sheet.nextOutcome.isEmpty()) {
        blocks.push_back(heading(sheet.next.isEmpty() ? SheetWords::tr("Nothing to weigh")
                                                      : SheetWords::tr("Next: %1").arg(sheet.next),
                                 widthCpt));
        text(sheet.nextOutcome);
    }
    if (!sheet.simulation.isEmpty()) {
        blocks.push_back(heading(SheetWords::tr("Checked another way"), widthCpt));
        text(sheet.simulation);
    }
    blocks.push_back(textBlock(
        u'\n' + SheetWords::tr("W weighed, L label, T table, A assumed. ± is the half-width of a "
                               "95 % interval. Estimates from tables, labels and own weighings; "
                               "no laboratory analysis and no medical advice."),
        paperFont(kPaperSmallCpt), kPaperInk2, widthCpt, 0));
}

}  // namespace

std::vector<PaperBlock> blocksOf(const WorkingSheet& sheet, double widthCpt) {
    std::vector<PaperBlock> blocks;
    addSheetHead(blocks, sheet, widthCpt);
    for (const SheetStep& step : sheet.steps) blocks.push_back(stepBlock(step, widthCpt));
    addSheetEnd(blocks, sheet, widthCpt);
    return blocks;
}

std::vector<std::size_t> pagesOf(const std::vector<PaperBlock>& blocks, double heightCpt) {
    std::vector<std::size_t> first{0};
    double used = 0;
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        double needed = blocks[i].heightCpt;
        if (blocks[i].withNext && i + 1 < blocks.size()) needed += blocks[i + 1].heightCpt;
        if (used > 0 && used + needed > heightCpt) {
            first.push_back(i);
            used = 0;
        }
        used += blocks[i].heightCpt;
    }
    return first;
}

}  // namespace nettare
