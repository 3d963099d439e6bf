#include "app/widgets/cell.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <cmath>

#include "app/widgets/plain_tip.h"

namespace nettare {

namespace {

QString cellWord(const char* word) {
    return QCoreApplication::translate("Cell", word);
}

void say(QStringList& parts, const QString& part) {
    if (!part.isEmpty()) parts += part;
}

QString spokenChange(const Cell& cell) {
    switch (cell.change) {
        case CellChange::Added:
            return cellWord(QT_TRANSLATE_NOOP("Cell", "added"));
        case CellChange::Removed:
            return cellWord(QT_TRANSLATE_NOOP("Cell", "removed"));
        case CellChange::Changed:
            return cell.was.isEmpty() ? cellWord(QT_TRANSLATE_NOOP("Cell", "changed"))
                                      : cellWord(QT_TRANSLATE_NOOP("Cell", "was %1")).arg(cell.was);
        case CellChange::None:
        case CellChange::Equal:
            break;
    }
    return {};
}

/// The part of the text that says the value.
QString valueText(const Cell& cell) {
    if (cell.kind == CellKind::NoData) return wordOf(Mark::NoData);
    if (cell.kind == CellKind::Way && cell.text.isEmpty()) return wordOf(cell.mark);
    if (cell.kind == CellKind::Share && cell.text.isEmpty())
        return cellWord(QT_TRANSLATE_NOOP("Cell", "%1 %"))
            .arg(static_cast<int>(std::lround(100 * std::clamp(cell.share, 0.0, 1.0))));
    return cell.text;
}

}  // namespace

Cell textCell(const QString& text, const QString& muted) {
    Cell cell;
    cell.text = text;
    cell.muted = muted;
    return cell;
}

Cell numberCell(const QString& number, const QString& unit) {
    Cell cell;
    cell.kind = CellKind::Number;
    cell.text = number;
    if (cell.text.startsWith(u'-')) cell.text[0] = QChar{0x2212};
    cell.unit = unit;
    return cell;
}

Cell wayCell(Mark mark, const QString& word) {
    if (mark == Mark::NoData) return noDataCell();
    Cell cell;
    cell.kind = CellKind::Way;
    cell.mark = mark;
    cell.text = word.isEmpty() ? wordOf(mark) : word;
    return cell;
}

Cell shareCell(double share, const QString& text) {
    Cell cell;
    cell.kind = CellKind::Share;
    cell.share = share;
    cell.text = text;
    return cell;
}

Cell noDataCell() {
    Cell cell;
    cell.kind = CellKind::NoData;
    cell.mark = Mark::NoData;
    return cell;
}

Cell findingCell(const QString& sentence) {
    Cell cell;
    cell.kind = CellKind::Finding;
    cell.text = sentence;
    return cell;
}

QString plainText(const Cell& cell) {
    QStringList parts;
    say(parts, cell.before);
    say(parts, valueText(cell));
    say(parts, cell.unit);
    if (!cell.muted.isEmpty()) parts += QStringLiteral("· ") + cell.muted;
    return parts.join(u' ');
}

QString spokenText(const Cell& cell) {
    QStringList parts;
    say(parts, cell.before);
    say(parts, valueText(cell));
    say(parts, cell.unit);
    if (cell.kind == CellKind::Finding && cell.text.isEmpty())
        parts += cellWord(QT_TRANSLATE_NOOP("Cell", "no finding"));
    QStringList said{parts.join(u' ')};
    say(said, cell.muted);
    say(said, spokenChange(cell));
    say(said, cell.problem);
    said.removeAll(QString{});
    return said.join(QStringLiteral(", "));
}

QVariant cellData(const Cell& cell, int role) {
    switch (role) {
        case kCellRole:
            return QVariant::fromValue(cell);
        case Qt::DisplayRole:
            return plainText(cell);
        case Qt::AccessibleTextRole:
            return spokenText(cell);
        case Qt::ToolTipRole:
            if (cell.kind == CellKind::Finding && !cell.text.isEmpty()) return plainTip(cell.text);
            return cell.problem.isEmpty() ? QVariant{} : QVariant{plainTip(cell.problem)};
        case Qt::TextAlignmentRole:
            return QVariant{cell.kind == CellKind::Number ? Qt::AlignRight | Qt::AlignVCenter
                                                          : Qt::AlignLeft | Qt::AlignVCenter};
        default:
            return {};
    }
}

}  // namespace nettare
