#include "app/gui/support/gui.h"
#include "app/session/kitchen_session.h"
#include "app/theme/theme.h"
#include "app/window/kitchen_banner.h"
#include "app/window/main_window.h"
#include "core/edit/edit_draft.h"
#include "small_disk.h"

#include <QLineEdit>
#include <QSignalSpy>
#include <QTableView>
#include <QTemporaryDir>

namespace nettare {

namespace {

constexpr auto kFileAt = "2026-05-23T12:00:00+02:00";

/// Answers what the test says, as a cook would in the desktop's dialog.
class GivenPath : public PathAsker {
public:
    explicit GivenPath(QString path) : path_{std::move(path)} {}
    QString kitchenToOpen(QWidget*) override { return path_; }
    QString newKitchen(QWidget*, const QString&) override { return path_; }
    [[nodiscard]] QString panelPdf(QWidget*, const QString&) override { return {}; }
    [[nodiscard]] QString foodTable(QWidget*, bool) override { return {}; }
    [[nodiscard]] QString mappingFile(QWidget*, bool) override { return {}; }
    [[nodiscard]] QString photograph(QWidget*) override { return {}; }
    [[nodiscard]] QString ledgerCsv(QWidget*, const QString&) override { return {}; }
    [[nodiscard]] bool printer(QWidget*, QPrinter&) override { return false; }

private:
    QString path_;
};

/// A window with its session.
struct FileWindow {
    FileWindow(Kitchen kitchen, bool sample, const QString& path)
        : theme{QDBusConnection{QStringLiteral("no bus")}},
          session{std::move(kitchen), TablePlaces{NETTARE_STARTER_TABLE}, sample},
          window{session, theme, std::make_unique<GivenPath>(path)} {
        showReady(window, {1280, 800});
    }
    Theme theme;
    KitchenSession session;
    MainWindow window;
};

}  // namespace

TEST_CASE("a sample is kept in a file of its own, and the window goes on in it") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("mine.nettare"));
    auto kitchen = Kitchen::inMemory(kFileAt);
    REQUIRE(kitchen);
    FileWindow open{std::move(*kitchen), true, path};
    auto& banner = *open.window.findChild<KitchenBanner*>();
    CHECK(banner.isVisible());
    QSignalSpy moved{&open.session, &KitchenSession::kitchenMoved};
    open.window.commands().keepKitchen->trigger();
    REQUIRE(waitUntil([&] { return moved.count() == 1; }));
    CHECK(QFile::exists(path));
    CHECK_FALSE(banner.isVisible());
    CHECK_FALSE(open.window.commands().keepKitchen->isEnabled());
}

TEST_CASE("a kitchen that another window holds is shown read-only, with who holds it") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("held.nettare"));
    auto first = Kitchen::create(path.toStdString(), kFileAt);
    REQUIRE(first);
    FileWindow holding{std::move(*first), false, path};
    holding.session.newRecipe(QStringLiteral("Broth"));
    REQUIRE(waitUntil([&] { return holding.session.draft() != nullptr; }));
    holding.session.settle();

    auto second = Kitchen::open(path.toStdString(), KitchenAccess::Write);
    REQUIRE(second);
    FileWindow reading{std::move(*second), false, path};
    auto& banner = *reading.window.findChild<KitchenBanner*>();
    CHECK(banner.isVisible());
    CHECK(banner.text().startsWith(QStringLiteral("held.nettare is open in another window (")));
    CHECK_FALSE(reading.window.commands().newRecipe->isEnabled());
    REQUIRE(waitUntil([&] { return reading.session.draft() != nullptr; }));
    settle();
    CHECK(child<QLineEdit>(reading.window, "makes").isReadOnly());
    CHECK_FALSE(child<QLineEdit>(reading.window, "newLine").isVisible());
    CHECK_FALSE(reading.window.commands().keep->isEnabled());
}

TEST_CASE("a copy of the kitchen is written where the cook says") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("copy.nettare"));
    auto kitchen = Kitchen::inMemory(kFileAt);
    REQUIRE(kitchen);
    FileWindow open{std::move(*kitchen), true, path};
    open.window.commands().backUp->trigger();
    CHECK(waitUntil([&] { return QFile::exists(path); }));
    CHECK(open.session.isSample());
    QSignalSpy asked{&open.window, &MainWindow::kitchenAsked};
    open.window.commands().openKitchen->trigger();
    REQUIRE(asked.count() == 1);
    CHECK(asked.first().first().toString() == path);
}

namespace {

/// A window on a kitchen in a file, with a new recipe open.
struct BrothWindow {
    BrothWindow() {
        open.session.newRecipe(QStringLiteral("Broth"));
        REQUIRE(waitUntil([&] { return open.session.draft() != nullptr; }));
        open.session.settle();
    }
    void rename(const char* title) {
        EditDraft edit{open.session.draft()->document(), EditKind::Title, "title"};
        edit.set("/title", Json{title});
        REQUIRE(open.session.draft()->apply(edit.take()));
    }
    [[nodiscard]] std::vector<std::string> titlesOnDisk() const {
        const auto kitchen = Kitchen::open(path.toStdString(), KitchenAccess::Read);
        const auto recipes = kitchen->recipes();
        std::vector<std::string> titles;
        for (const ShelvedRecipe& recipe : *recipes) titles.push_back(recipe.title);
        return titles;
    }
    [[nodiscard]] QString message() {
        for (const InlineBar* bar : open.window.findChildren<InlineBar*>())
            if (bar->isVisible()) return bar->text();
        return {};
    }

    QTemporaryDir folder;
    QString path = folder.filePath(QStringLiteral("broth.nettare"));
    FileWindow open{std::move(*Kitchen::create(path.toStdString(), kFileAt)), false,
                    folder.filePath(QStringLiteral("other.nettare"))};
};

}  // namespace

TEST_CASE("a window whose changes cannot be written says so and stays, and writes them then") {
    BrothWindow broth;
    QSignalSpy asked{&broth.open.window, &MainWindow::kitchenAsked};
    {
        const SmallDisk disk{1};
        broth.rename("Clear broth");
        broth.open.window.commands().openKitchen->trigger();
        CHECK(asked.count() == 0);
        CHECK(broth.open.session.saveState() == SaveState::Failed);
        CHECK_THAT(broth.message().toStdString(), Catch::Contains("not in the kitchen yet"));
        CHECK_THAT(broth.message().toStdString(), Catch::Contains("broth.nettare"));
    }
    CHECK(broth.open.window.close());
    CHECK(broth.titlesOnDisk() == std::vector<std::string>{"Clear broth"});
}

TEST_CASE("a window whose changes cannot be written is closed by asking twice") {
    BrothWindow broth;
    const SmallDisk disk{1};
    broth.rename("Clear broth");
    CHECK_FALSE(broth.open.window.close());
    CHECK(broth.open.window.isVisible());
    broth.rename("Clear light broth");
    CHECK_FALSE(broth.open.window.close());
    CHECK_THAT(broth.message().toStdString(), Catch::Contains("leaving loses them"));
    CHECK(broth.open.window.close());
}

TEST_CASE("no other recipe takes the place of one whose changes cannot be written") {
    BrothWindow broth;
    KitchenSession& session = broth.open.session;
    const QString clear = session.draft()->recipe();
    session.newRecipe(QStringLiteral("Stew"));
    REQUIRE(waitUntil([&] { return session.draft()->recipe() != clear; }));
    const QString stew = session.draft()->recipe();
    {
        const SmallDisk disk{1};
        broth.rename("Thick stew");
        session.openRecipe(clear);
        session.settle();
        CHECK(session.draft()->recipe() == stew);
        CHECK(session.saveState() == SaveState::Failed);
    }
    session.openRecipe(clear);
    session.settle();
    CHECK(session.draft()->recipe() == clear);
    CHECK_THAT(broth.titlesOnDisk(), Catch::VectorContains(std::string{"Thick stew"}));
}

}  // namespace nettare
