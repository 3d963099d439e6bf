#include "app/gui/support/gui.h"
#include "app/import_table/column_model.h"
#include "app/import_table/import_screen.h"
#include "app/kitchen/sample.h"
#include "app/session/kitchen_session.h"
#include "app/widgets/basis_switch.h"
#include "app/widgets/message_line.h"

#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

namespace nettare {

namespace {

/// The screen on the sample, with a folder for tables, and a table of three foods beside it.
class ImportDesk {
public:
    ImportDesk() {
        auto sample = openSample();
        REQUIRE(sample);
        const TablePlaces places{NETTARE_STARTER_TABLE, path("tables").toStdString()};
        session_ = std::make_unique<KitchenSession>(std::move(*sample), places, true);
        screen_ = std::make_unique<ImportScreen>(
            *session_,
            ImportScreen::Asker{[](QWidget*, bool) { return QString{}; },
                                [this](QWidget*, bool) { return path("columns.json"); }});
        showReady(*screen_, {1280, 700});
    }
    [[nodiscard]] QString path(const char* name) const {
        return folder_.filePath(QString::fromLatin1(name));
    }
    void write(const char* name, const QByteArray& text) {
        QFile file{path(name)};
        REQUIRE(file.open(QIODevice::WriteOnly));
        file.write(text);
    }
    void chooseCsv(const QByteArray& text) {
        write("market.csv", text);
        auto& kinds = child<BasisSwitch>(*screen_, "importKind");
        kinds.setIndex(2);
        emit kinds.chosen(2);
        screen_->setPath(path("market.csv"));
        settle();
    }
    void name(const char* field, const QString& text) {
        auto& edit = child<QLineEdit>(*screen_, field);
        edit.clear();
        QTest::keyClicks(&edit, text);
    }
    void nameTable() {
        name("tableName", QStringLiteral("market"));
        name("tableRelease", QStringLiteral("2026"));
        name("tableCitation", QStringLiteral("Invented for a test."));
    }
    void press(const char* button) {
        click(child<QPushButton>(*screen_, button));
        REQUIRE(waitUntil([&] { return !screen_->busy(); }));
        settle();
    }
    QString report() { return child<QLabel>(*screen_, "importReport").text(); }
    QString message() { return screen_->findChild<MessageLine*>()->text(); }
    ImportScreen& screen() { return *screen_; }
    KitchenSession& session() { return *session_; }
    QAbstractItemModel& columns() { return *child<QTableView>(*screen_, "columnRoles").model(); }

private:
    QTemporaryDir folder_;
    std::unique_ptr<KitchenSession> session_;
    std::unique_ptr<ImportScreen> screen_;
};

constexpr auto kMarket =
    "code,name,Energy (kcal),Protein (g),Sodium (mg)\n"
    "M1,plum tomato,20,0.9,4\n"
    "M2,smoked trout,142,22.4,\n"
    "M3,broken,twelve,1,1\n";

}  // namespace

TEST_CASE("a table is looked at, then brought in, and its foods are found") {
    ImportDesk desk;
    desk.chooseCsv(kMarket);
    CHECK(desk.columns().rowCount() == 5);
    CHECK(child<QTableWidget>(desk.screen(), "previewRows").rowCount() == 3);
    CHECK_FALSE(child<QPushButton>(desk.screen(), "bringIn").isEnabled());
    CHECK(desk.message().startsWith(QStringLiteral("Name the table")));
    desk.nameTable();
    auto& columns = desk.columns();
    const auto use = [&](int row, int choice) {
        const QModelIndex cell = columns.index(row, ColumnModel::Use);
        const QStringList choices = cell.data(ColumnModel::kChoicesRole).toStringList();
        REQUIRE(columns.setData(cell, choices.at(choice), Qt::EditRole));
    };
    use(0, static_cast<int>(ColumnUse::Number));
    use(1, static_cast<int>(ColumnUse::Name));
    REQUIRE(child<QPushButton>(desk.screen(), "bringIn").isEnabled());
    keepPicture(desk.screen(), QStringLiteral("import-mapping"));
    desk.press("lookOnly");
    CHECK(desk.report().contains(QStringLiteral("Nothing was written")));
    CHECK_FALSE(QDir{desk.path("tables")}.exists(QStringLiteral("market_2026.table")));
    const std::size_t before = desk.session().tables()->size();
    const QSignalSpy brought{&desk.screen(), &ImportScreen::broughtIn};
    desk.press("bringIn");
    keepPicture(desk.screen(), QStringLiteral("import-done"));
    CHECK(brought.size() == 1);
    CHECK(desk.report().contains(QStringLiteral("The table is in the pantry.")));
    CHECK(desk.session().tables()->size() > before);
    const auto hits = desk.session().findFoods(QStringLiteral("smoked trout"), 5);
    REQUIRE_FALSE(hits.empty());
    CHECK(std::ranges::any_of(hits, [](const FoodHit& hit) { return hit.row.table == "market"; }));
    CHECK(child<QTableWidget>(desk.screen(), "rejectedRows").rowCount() >= 1);
}

TEST_CASE("a unit is never guessed: the cook chooses it") {
    ImportDesk desk;
    desk.chooseCsv("code,name,salty part\nM1,plum tomato,20\n");
    desk.nameTable();
    auto& columns = desk.columns();
    const auto choose = [&](int row, int column, const QString& text) {
        REQUIRE(columns.setData(columns.index(row, column), text, Qt::EditRole));
    };
    choose(0, ColumnModel::Use, QStringLiteral("number of the food"));
    choose(1, ColumnModel::Use, QStringLiteral("name"));
    choose(2, ColumnModel::Use, QStringLiteral("Sodium (NA)"));
    CHECK(desk.message() == QStringLiteral("Choose the unit of “salty part”."));
    CHECK_FALSE(child<QPushButton>(desk.screen(), "bringIn").isEnabled());
    choose(2, ColumnModel::Unit, QStringLiteral("mg"));
    CHECK(child<QPushButton>(desk.screen(), "bringIn").isEnabled());
}

TEST_CASE("a mapping is saved and used again") {
    ImportDesk desk;
    desk.chooseCsv(kMarket);
    desk.nameTable();
    click(child<QPushButton>(desk.screen(), "saveMapping"));
    CHECK(desk.message().contains(QStringLiteral("columns.json")));
    ImportDesk other;
    other.chooseCsv(kMarket);
    QFile::copy(desk.path("columns.json"), other.path("columns.json"));
    click(child<QPushButton>(other.screen(), "useMapping"));
    CHECK(child<QLineEdit>(other.screen(), "tableName").text() == QStringLiteral("market"));
}

TEST_CASE("a path without a table says what is wrong, and nothing changes") {
    ImportDesk desk;
    desk.screen().setPath(desk.path("absent.zip"));
    desk.press("bringIn");
    CHECK(desk.message().contains(QStringLiteral("absent.zip")));
    CHECK(desk.report().isEmpty());
    CHECK_FALSE(QDir{desk.path("tables")}.exists(QStringLiteral("usda-sr_28.table")));
    keepPicture(desk.screen(), QStringLiteral("import-absent"));
}

}  // namespace nettare
