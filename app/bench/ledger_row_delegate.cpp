#include "app/bench/ledger_row_delegate.h"

#include <QCoreApplication>
#include <QPainter>
#include <QWidget>

#include <algorithm>

#include "app/bench/bench_type.h"
#include "app/bench/ledger_list_model.h"
#include "app/bench/ledger_row.h"
#include "app/theme/palette.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

/// From here on a row is one line, px.
constexpr int kWide_px = 1000;
/// From here on it is two, else three.
constexpr int kMiddle_px = 600;

struct DelegateText {
    Q_DECLARE_TR_FUNCTIONS(LedgerRow)
};

/// Puts texts into a row, from left to right and from right to left.
class LedgerRowPainter {
public:
    LedgerRowPainter(QPainter& painter, const QRect& place, bool struck, Shade shade)
        : painter_{painter}, place_{place}, struck_{struck}, shade_{shade} {}

    void right(const QString& text, Weight weight, Role ink, int width_px = 0) {
        const QFont font = fontOf(weight);
        const int wide = std::max(width_px, QFontMetrics{font}.horizontalAdvance(text) + 2);
        draw({place_.right() - wide + 1, place_.top(), wide, place_.height()}, font, ink, text,
             Qt::AlignRight);
        place_.setRight(place_.right() - wide - kSpace4Px);
    }
    void left(const QString& text, Weight weight, Role ink, int width_px = 0) {
        const QFont font = fontOf(weight);
        const int wide = width_px > 0 ? width_px : place_.width();
        draw({place_.left(), place_.top(), wide, place_.height()}, font, ink, text, Qt::AlignLeft);
        place_.setLeft(place_.left() + wide + kSpace4Px);
    }

private:
    [[nodiscard]] QFont fontOf(Weight weight) const {
        QFont font = benchFigures(weight);
        font.setStrikeOut(struck_);
        return font;
    }
    void draw(const QRect& where, const QFont& font, Role ink, const QString& text,
              Qt::Alignment side) {
        painter_.setFont(font);
        painter_.setPen(colour(struck_ ? Role::Ink2 : ink, shade_));
        painter_.drawText(where, static_cast<int>(side | Qt::AlignVCenter) | Qt::TextSingleLine,
                          QFontMetrics{font}.elidedText(text, Qt::ElideRight, where.width()));
    }

    QPainter& painter_;
    QRect place_;
    bool struck_;
    Shade shade_;
};

/// Lines of a row, by the width that it has.
int linesAt(int width_px) {
    if (width_px >= kWide_px) return 1;
    return width_px >= kMiddle_px ? 2 : 3;
}

int widthOf(const char* sample) {
    return QFontMetrics{benchFigures(Weight::Semibold)}.horizontalAdvance(QLatin1String{sample});
}

QString sumOf(const LedgerRow& row) {
    return row.tare.isEmpty() ? row.gross : DelegateText::tr("%1 − %2").arg(row.gross, row.tare);
}

void paintWide(QPainter& painter, const LedgerRow& row, const QRect& place, Shade shade) {
    LedgerRowPainter line{painter, place, row.struck, shade};
    line.left(row.time, Weight::Regular, Role::Ink2, widthOf("30 May 00:00"));
    // A long reason leaves the numbers their place.
    const QString became =
        QFontMetrics{benchFigures()}.elidedText(row.became, Qt::ElideRight, place.width() * 2 / 5);
    line.right(became, Weight::Regular, Role::Ink2, widthOf("scale checked"));
    line.right(row.net, Weight::Semibold, Role::Ink, widthOf("1234.5 g"));
    line.right(row.tare, Weight::Regular, Role::Ink2, widthOf("1234.5 g"));
    line.right(row.gross, Weight::Regular, Role::Ink, widthOf("1234.5 g"));
    line.left(row.what, Weight::Regular, Role::Ink);
}

void paintNarrow(QPainter& painter, const LedgerRow& row, QRect place, Shade shade) {
    const int height = QFontMetrics{benchFigures()}.height();
    const int lines = linesAt(place.width());
    place.setTop(place.top() + (place.height() - lines * height) / 2);
    place.setHeight(height);
    LedgerRowPainter first{painter, place, row.struck, shade};
    first.right(row.net.isEmpty() ? row.gross : row.net, Weight::Semibold, Role::Ink);
    first.left(row.what, Weight::Semibold, Role::Ink);
    place.translate(0, height);
    LedgerRowPainter second{painter, place, row.struck, shade};
    if (!row.net.isEmpty()) second.right(sumOf(row), Weight::Regular, Role::Ink2);
    if (lines == 2)
        return second.left(DelegateText::tr("%1 · %2").arg(row.time, row.became), Weight::Regular,
                           Role::Ink2);
    second.left(row.time, Weight::Regular, Role::Ink2);
    place.translate(0, height);
    LedgerRowPainter third{painter, place, row.struck, shade};
    third.left(row.became, Weight::Regular, Role::Ink2);
}

}  // namespace

void LedgerRowDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const {
    const auto row = index.data(LedgerListModel::kRowRole).value<LedgerRow>();
    const Shade shade = shadeOf(option.palette);
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    painter->save();
    painter->fillRect(option.rect, colour(selected ? Role::Selection : Role::Raised, shade));
    const QRect foot{option.rect.left(), option.rect.bottom(), option.rect.width(), 1};
    painter->fillRect(foot, colour(Role::Hairline, shade));
    if (selected) {
        QRect rim = option.rect;
        rim.setWidth(kRimPx);
        painter->fillRect(rim, colour(Role::Cobalt, shade));
    }
    const QRect place = option.rect.adjusted(kSpace4Px, 0, -kSpace4Px, 0);
    if (linesAt(place.width()) == 1)
        paintWide(*painter, row, place, shade);
    else
        paintNarrow(*painter, row, place, shade);
    if (option.state.testFlag(QStyle::State_HasFocus)) {
        painter->setPen(QPen{colour(Role::Cobalt, shade), kFocusRingPx});
        painter->drawRect(option.rect.adjusted(1, 1, -2, -2));
    }
    painter->restore();
}

QSize LedgerRowDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    const int width = option.widget == nullptr ? option.rect.width() : option.widget->width();
    const int line = QFontMetrics{benchFigures()}.height();
    return {kBenchTargetPx * 4,
            std::max(kBenchTargetPx, linesAt(width - 2 * kSpace4Px) * line + kSpace3Px)};
}

}  // namespace nettare
