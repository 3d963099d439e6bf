#include "app/gui/path/sample_path.h"
#include "app/gui/support/gui.h"
#include "app/path/path_tree.h"
#include "app/theme/dress.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QSignalSpy>
#include <QTest>

#include <vector>

namespace nettare {

namespace {

/// A tree that shows a path and remembers which lines were asked for.
struct ShownTree {
    explicit ShownTree(int lines, QSize size = {800, 700}) {
        tree.show(samplePath(lines));
        QObject::connect(&tree, &PathTree::lineWanted, &tree,
                         [this](std::size_t line) { wanted.push_back(line); });
        showReady(tree, size);
        tree.setFocus();
        settle();
    }

    [[nodiscard]] QModelIndex at(const std::vector<int>& rows) const {
        return tree.steps().at(rows);
    }
    [[nodiscard]] QString spoken(const std::vector<int>& rows) const {
        return at(rows).data(Qt::AccessibleTextRole).toString();
    }

    PathTree tree;
    std::vector<std::size_t> wanted;
};

const std::vector<int> kFirstLine{0, 0, 0, 0};

}  // namespace

TEST_CASE("the steps of a path keep the rules of a tree") {
    PathModel model;
    const QAbstractItemModelTester tester{&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal};
    model.show(samplePath(3));
    CHECK(model.size() == 13);
    model.show(samplePath(1));
    CHECK(model.rowCount(model.at({0, 0, 0})) == 2);
    model.clear();
    CHECK(model.rowCount() == 0);
}

TEST_CASE("a short path opens whole, a long one down to its lines") {
    const ShownTree few{3}, many{40};
    CHECK(few.tree.isExpanded(few.at(kFirstLine)));
    CHECK(many.tree.isExpanded(many.at({0, 0, 0})));
    CHECK_FALSE(many.tree.isExpanded(many.at(kFirstLine)));
}

TEST_CASE("every step is read out with its value, its spread, its words and its way") {
    const ShownTree shown{3};
    CHECK(shown.spoken({0}) ==
          QStringLiteral("240 kcal, plus or minus 5: per portion, rounded once: "
                         "120.16 kcal × 2 skewers"));
    CHECK(shown.spoken({0, 0, 0, 0, 0}) ==
          QStringLiteral("353.4 g, plus or minus 7.0: your series of 6 readings: 36 × 9.817 g; "
                         "series; variance 36² s²/6 + 36 s²; another way, by the table: 382 g, "
                         "7.9 % apart"));
    CHECK(shown.spoken({0, 0, 0, 3}) == QStringLiteral("no data: fennel does not say"));
}

TEST_CASE("arrows walk and fold the path") {
    ShownTree shown{3};
    CHECK(shown.tree.currentIndex() == shown.at({0}));
    for (int i = 0; i < 3; ++i) pressKey(shown.tree, Qt::Key_Down);
    CHECK(shown.tree.currentIndex() == shown.at(kFirstLine));
    pressKey(shown.tree, Qt::Key_Left);
    CHECK_FALSE(shown.tree.isExpanded(shown.at(kFirstLine)));
    pressKey(shown.tree, Qt::Key_Down);
    CHECK(shown.tree.currentIndex() == shown.at({0, 0, 0, 1}));
    pressKey(shown.tree, Qt::Key_Left);
    pressKey(shown.tree, Qt::Key_Left);
    CHECK(shown.tree.currentIndex() == shown.at({0, 0, 0}));
}

TEST_CASE("Enter on what is of a line asks for the line, on anything else it folds") {
    ShownTree shown{3};
    shown.tree.setCurrentIndex(shown.at({0, 0, 0, 1, 0}));
    pressKey(shown.tree, Qt::Key_Return);
    REQUIRE(shown.wanted.size() == 1);
    CHECK(shown.wanted.front() == 1);
    shown.tree.setCurrentIndex(shown.at({0, 0}));
    pressKey(shown.tree, Qt::Key_Return);
    CHECK(shown.wanted.size() == 1);
    CHECK_FALSE(shown.tree.isExpanded(shown.at({0, 0})));
}

TEST_CASE("a double click on a step asks for its line") {
    ShownTree shown{3};
    const QPoint middle = shown.tree.visualRect(shown.at(kFirstLine)).center();
    QTest::mouseClick(shown.tree.viewport(), Qt::LeftButton, {}, middle);
    QTest::mouseDClick(shown.tree.viewport(), Qt::LeftButton, {}, middle);
    REQUIRE(shown.wanted.size() == 1);
    CHECK(shown.wanted.front() == 0);
}

TEST_CASE("the cards of a path are in the colours of the shade") {
    auto& application = *qobject_cast<QApplication*>(QCoreApplication::instance());
    ShownTree shown{3};
    for (const Shade shade : {Shade::Dark, Shade::Light}) {
        dress(application, shade);
        settle();
        const QImage image = picture(shown.tree);
        const int most = image.width() * image.height() / 4;
        CHECK(pixelsOf(image, colour(Role::Raised, shade)) > most);
        CHECK(pixelsOf(image, colour(Role::Raised,
                                     shade == Shade::Dark ? Shade::Light : Shade::Dark)) < 100);
    }
}

TEST_CASE("the words of a step wrap where there is little room") {
    const ShownTree wide{3, {1400, 700}}, narrow{3, {480, 700}};
    const std::vector<int> grams{0, 0, 0, 0, 0};
    CHECK(narrow.tree.visualRect(narrow.at(grams)).height() >
          wide.tree.visualRect(wide.at(grams)).height());
}

TEST_CASE("a simulated interval stands in place of the half-width of the figure alone") {
    ShownTree shown{3};
    shown.tree.setInterval(QStringLiteral("235 to 246"));
    CHECK_THAT(shown.spoken({0}).toStdString(), Catch::StartsWith("240 kcal, 235 to 246: "));
    CHECK_THAT(shown.spoken({0, 0}).toStdString(),
               Catch::StartsWith("120.16 kcal, plus or minus 2.5: "));
    shown.tree.setInterval({});
    CHECK_THAT(shown.spoken({0}).toStdString(), Catch::StartsWith("240 kcal, plus or minus 5: "));
}

TEST_CASE("the place on a path is kept when it is shown anew") {
    ShownTree shown{3};
    shown.tree.setCurrentIndex(shown.at({0, 0, 0, 1, 0}));
    shown.tree.show(samplePath(3));
    CHECK(shown.tree.currentIndex() == shown.at({0, 0, 0, 1, 0}));
    shown.tree.show(samplePath(1));
    CHECK(shown.tree.currentIndex() == shown.at({0}));
}

}  // namespace nettare
