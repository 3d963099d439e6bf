#include "app/widgets/table_delegate.h"

#include "app/gui/support/gui.h"
#include "app/gui/widgets/sample_table.h"
#include "app/theme/dress.h"
#include "app/theme/spacing.h"

#include <QAbstractItemModelTester>
#include <QAccessible>
#include <QApplication>
#include <QHeaderView>
#include <QTableView>

#include <cmath>
#include <memory>
#include <vector>

namespace nettare {

namespace {

struct ShownTable {
    explicit ShownTable(SampleTable* cells) : model{cells} {
        dressTable(view);
        view.setModel(model.get());
        view.resizeColumnsToContents();
        showReady(view, {980, 300});
        view.clearSelection();
    }

    /// The picture of a cell's viewport, from a left edge on.
    [[nodiscard]] QImage cellPicture(int row, int column) {
        return picture(*view.viewport()).copy(view.visualRect(model->index(row, column)));
    }

    std::unique_ptr<SampleTable> model;
    QTableView view;
};

std::vector<Cell> oneCell(const char* number) {
    return {numberCell(QString::fromUtf8(number))};
}

/// Columns of a picture that hold ink, between two positions.
bool holdsInk(const QImage& image, int from, int to, const QColor& ground) {
    for (int x = from; x < to; ++x)
        for (int y = 0; y < image.height() - 1; ++y)
            if (image.pixel(x, y) != ground.rgba()) return true;
    return false;
}

}  // namespace

TEST_CASE("a number is parted at its decimal mark, whichever the language has") {
    CHECK(splitNumber(QStringLiteral("12.25")).whole == QStringLiteral("12"));
    CHECK(splitNumber(QStringLiteral("12,25")).fraction == QStringLiteral(",25"));
    CHECK(splitNumber(QStringLiteral("300")).whole == QStringLiteral("300"));
    CHECK(splitNumber(QStringLiteral("300")).fraction.isEmpty());
}

TEST_CASE("the decimal marks of 9.5, 12.25 and 300 stand on one line") {
    ShownTable table{new SampleTable{{QStringLiteral("Grams")},
                                     {oneCell("9.5"), oneCell("12.25"), oneCell("300")}}};
    table.view.setCurrentIndex({});
    table.view.clearFocus();
    const QFontMetricsF metrics{numberFont(table.view.font(), false)};
    const int width = table.view.columnWidth(0);
    const int mark = width - kSpace2Px -
                     static_cast<int>(std::ceil(metrics.horizontalAdvance(QStringLiteral(".25"))));
    const int digitStart = mark + static_cast<int>(std::ceil(metrics.horizontalAdvance(u'.')));
    const QImage half = table.cellPicture(0, 0);
    const QImage quarter = table.cellPicture(1, 0);
    const QImage whole = table.cellPicture(2, 0);
    const QColor ground = colour(Role::Raised, Shade::Light);
    const QRect markOnly{mark, 0, digitStart - mark - 1, half.height() - 1};
    CHECK(holdsInk(half.copy(markOnly), 0, markOnly.width(), ground));
    CHECK(half.copy(markOnly) == quarter.copy(markOnly));
    CHECK_FALSE(holdsInk(whole, mark, width, ground));
    CHECK(holdsInk(whole, mark - 8, mark, ground));
    // And no digit of either stands over it.
    CHECK_FALSE(holdsInk(half.copy(QRect{mark, 0, digitStart - mark - 1, 14}), 0,
                         digitStart - mark - 1, ground));
}

TEST_CASE("a longer fraction moves the marks of the whole column") {
    ShownTable table{new SampleTable{{QStringLiteral("Grams")}, {oneCell("9.5"), oneCell("300")}}};
    QStyleOptionViewItem option;
    option.rect = {0, 0, 120, 32};
    option.font = table.view.font();
    const auto* const delegate = qobject_cast<TableDelegate*>(table.view.itemDelegate());
    const auto markOf = [&](int row) {
        return decimalMarkX(delegate->placeOf(option, table.model->index(row, 0)));
    };
    const int before = markOf(0);
    CHECK(markOf(1) == before);
    table.model->put(1, 0, numberCell(QStringLiteral("300.125"), QStringLiteral("mg")));
    CHECK(markOf(0) == markOf(1));
    CHECK(markOf(0) < before);
}

TEST_CASE("a screen reader hears every cell, missing ones too") {
    ShownTable table{skewerTable()};
    const QAbstractItemModelTester tester{table.model.get(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal};
    QAccessibleInterface* const spoken = QAccessible::queryAccessibleInterface(&table.view);
    REQUIRE(spoken != nullptr);
    REQUIRE(spoken->tableInterface() != nullptr);
    const auto heard = [&](int row, int column) {
        return spoken->tableInterface()->cellAt(row, column)->text(QAccessible::Name);
    };
    for (int row = 0; row < table.model->rowCount(); ++row)
        for (int column = 0; column < table.model->columnCount(); ++column)
            CHECK_FALSE(heard(row, column).isEmpty());
    CHECK(heard(0, 4) == QStringLiteral("series, 6×"));
    CHECK(heard(0, 6) == QStringLiteral("100 %"));
    CHECK(heard(1, 0) ==
          QStringLiteral("2 bulps, “bulps” is no unit of this food; write bulbs or grams."));
    CHECK(heard(2, 2) == QStringLiteral("33.6, was 47.5"));
    CHECK(heard(3, 5) == QStringLiteral("\u22127"));
    CHECK(heard(4, 5) == QStringLiteral("at least 0.4"));
    CHECK(heard(4, 1) == QStringLiteral("lemon juice, added"));
    CHECK(heard(5, 1) == QStringLiteral("smoked paprika, removed"));
    CHECK(heard(5, 4) == QStringLiteral("by density"));
    CHECK(heard(6, 2) == QStringLiteral("no data"));
}

TEST_CASE("the selected row has the cobalt rim at its left, by day and night") {
    ShownTable table{skewerTable()};
    for (const Shade shade : {Shade::Light, Shade::Dark}) {
        dress(*qApp, shade);
        table.view.setCurrentIndex(table.model->index(2, 1));
        const QImage selected = table.cellPicture(2, 0);
        const QImage other = table.cellPicture(3, 0);
        for (int x = 0; x < kRimPx; ++x)
            CHECK(selected.pixelColor(x, 10) == colour(Role::Cobalt, shade));
        CHECK(selected.pixelColor(kRimPx + 1, 2) == colour(Role::Selection, shade));
        CHECK(other.pixelColor(0, 10) == colour(Role::Raised, shade));
    }
    dress(*qApp, Shade::Light);
}

TEST_CASE("the columns are as wide as their content, so that nothing is cut") {
    ShownTable table{skewerTable()};
    keepPicture(table.view, QStringLiteral("table"));
    QStyleOptionViewItem option;
    option.font = table.view.font();
    option.widget = &table.view;
    for (int column = 0; column < table.model->columnCount(); ++column)
        for (int row = 0; row < table.model->rowCount(); ++row) {
            const QModelIndex index = table.model->index(row, column);
            CHECK(table.view.itemDelegate()->sizeHint(option, index).width() <=
                  table.view.columnWidth(column));
        }
    CHECK(table.view.rowHeight(0) == kControlHeightPx);
    table.view.setCurrentIndex(table.model->index(0, 1));
    keepPicture(table.view, QStringLiteral("table-selected"));
    dress(*qApp, Shade::Dark);
    keepPicture(table.view, QStringLiteral("table-dark"));
    dress(*qApp, Shade::Light);
}

}  // namespace nettare
