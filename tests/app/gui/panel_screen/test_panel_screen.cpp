#include "app/panel_screen/panel_screen.h"

#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/widgets/empty_state.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>

#include <sstream>

#include "app/command_line/run.h"
#include "app/files/read_file.h"
#include "app/files/share_folder.h"
#include "core/edit/food_edits.h"

namespace nettare {

namespace {

/// Answers the question for a path without a dialog.
AskForPdf answer(const QString& path) {
    return [path](QWidget*, const QString&) { return path; };
}

std::string bytesOf(const QString& path) {
    const auto bytes = readFile(path.toStdString());
    REQUIRE(bytes);
    return *bytes;
}

Edit dropMember(const DraftSession& draft, const char* place) {
    const Json* const before = draft.document().find(std::string_view{place}.substr(1));
    REQUIRE(before != nullptr);
    Edit edit;
    edit.kind = EditKind::Assumption;
    edit.changes.push_back(SetMember{place, *before, std::nullopt});
    return edit;
}

}  // namespace

TEST_CASE("a panel exported from the window is byte for byte that of the command line") {
    const QTemporaryDir folder;
    const QString byWindow = folder.filePath(QStringLiteral("window.pdf"));
    const QString byCommand = folder.filePath(QStringLiteral("command.pdf"));
    const auto kitchen = sampleSession();
    PanelScreen screen{*kitchen, answer(byWindow)};
    showReady(screen, {1280, 800});
    click(child<QPushButton>(screen, "export"));
    REQUIRE(waitUntil([&] { return !screen.report().isEmpty(); }));
    CHECK(screen.report() == QStringLiteral("Panel written to %1").arg(byWindow));
    keepScreenPictures(screen, QStringLiteral("panel"));
    std::ostringstream out, err;
    const std::string document = shareFolder() + "/demo/prawn-fennel-skewers.json";
    REQUIRE(runCommandLine({"panel", document, "--rules", "us", "--out", byCommand.toStdString()},
                           out, err) == 0);
    CHECK(bytesOf(byWindow) == bytesOf(byCommand));
}

TEST_CASE("the name that a panel is offered under is its recipe's") {
    const auto kitchen = sampleSession();
    QString offered;
    PanelScreen screen{*kitchen, [&](QWidget*, const QString& name) {
                           offered = name;
                           return QString{};
                       }};
    showReady(screen, {1280, 800});
    pressKey(child<QPushButton>(screen, "export"), Qt::Key_Space);
    CHECK(offered == kitchen->draft()->recipe() + QStringLiteral(".pdf"));
    CHECK(screen.report().isEmpty());
}

TEST_CASE("a panel that cannot be written says why in place") {
    const auto kitchen = sampleSession();
    PanelScreen screen{*kitchen, answer(QStringLiteral("/no/such/folder/panel.pdf"))};
    showReady(screen, {1280, 800});
    click(child<QPushButton>(screen, "export"));
    REQUIRE(waitUntil([&] { return !screen.report().isEmpty(); }));
    CHECK(screen.report().contains(QStringLiteral("the folder does not exist")));
}

TEST_CASE("without a cooked weight the panel's place says what to do, and undo brings it back") {
    const auto kitchen = sampleSession();
    PanelScreen screen{*kitchen, answer({})};
    showReady(screen, {1280, 800});
    auto& exportButton = child<QPushButton>(screen, "export");
    auto& empty = *screen.findChild<EmptyState*>();
    CHECK(exportButton.isEnabled());
    REQUIRE(kitchen->draft()->apply(dropMember(*kitchen->draft(), "/cooked")));
    CHECK_FALSE(exportButton.isEnabled());
    CHECK(empty.isVisible());
    CHECK(empty.text().contains(QStringLiteral("the cooked dish was not weighed")));
    keepScreenPictures(screen, QStringLiteral("panel-trouble"));
    QSignalSpy wanted{&screen, &PanelScreen::sheetWanted};
    settle();
    click(child<QPushButton>(screen, "emptyAction"));
    CHECK(wanted.size() == 1);
    kitchen->draft()->undoStack().undo();
    CHECK(exportButton.isEnabled());
    CHECK_FALSE(empty.isVisible());
}

TEST_CASE("the panel follows the draft while it is in sight, and catches up when it comes back") {
    const auto kitchen = sampleSession();
    PanelScreen screen{*kitchen, answer({})};
    showReady(screen, {1280, 800});
    screen.hide();
    REQUIRE(kitchen->draft()->apply(dropMember(*kitchen->draft(), "/cooked")));
    screen.show();
    CHECK_FALSE(child<QPushButton>(screen, "export").isEnabled());
}

TEST_CASE("every control of the panel's screen has a name and is reached by Tab") {
    const auto kitchen = sampleSession();
    PanelScreen screen{*kitchen, answer({})};
    showReady(screen, {1280, 800});
    CHECK(unnamedFocusables(screen).join(u'\n').toStdString().empty());
    child<QPushButton>(screen, "trueSize").setFocus();
    QStringList reached;
    for (int i = 0; i < 3; ++i) {
        reached << spokenOf(*QApplication::focusWidget()).name;
        pressKey(*QApplication::focusWidget(), Qt::Key_Tab);
    }
    CHECK(reached.join(u'\n').toStdString() ==
          "True size, 100 percent\nExport as PDF…\nNutrition panel");
}

TEST_CASE("a value that keeps the panel from printing is stated where it is asked for") {
    const auto kitchen = sampleSession();
    DraftSession& draft = *kitchen->draft();
    Edit edit;
    edit.kind = EditKind::Food;
    for (const Json& food : *draft.document().find("foods")->items())
        if (*food.find("id")->text() == "prawns")
            edit.changes.push_back(
                SetMember{"/foods/prawns/stated", *food.find("stated"), std::nullopt});
    REQUIRE(draft.apply(edit));
    PanelScreen screen{*kitchen};
    showReady(screen, {1280, 800});
    auto& form = child<QWidget>(screen, "stateValueForm");
    REQUIRE(form.isVisible());
    keepScreenPictures(screen, QStringLiteral("state-value"));
    typeText(child<QLineEdit>(screen, "statedValue"), QStringLiteral("0.1"));
    click(child<QPushButton>(screen, "stateValue"));
    CHECK(form.isVisible());
    typeText(child<QLineEdit>(screen, "statedReason"), QStringLiteral("supplier's sheet"));
    click(child<QPushButton>(screen, "stateValue"));
    CHECK_FALSE(form.isVisible());
    const auto& stated = draft.evaluation()->document.foods.front().stated;
    REQUIRE(stated.size() == 1);
    CHECK(stated.front().reason == "supplier's sheet");
}

TEST_CASE("what keeps added sugars from printing is answered in place, and can be changed later") {
    const auto kitchen = sampleSession();
    DraftSession& draft = *kitchen->draft();
    const auto unsaid =
        setAddedSugars(draft.document(), "fennel", AddedSugarKind::Stated, "40", "guess");
    REQUIRE(unsaid);
    REQUIRE_FALSE(draft.failure());
    REQUIRE(draft.apply(*unsaid));
    REQUIRE(draft.failure());
    CHECK(draft.failure()->code == ErrorCode::AddedSugarsAboveSugars);
    PanelScreen screen{*kitchen};
    showReady(screen, {1280, 800});
    auto forms = screen.findChildren<QWidget*>(QStringLiteral("addedSugarsForm"));
    REQUIRE(forms.size() == 2);
    QWidget* asked = forms.front()->isVisible() ? forms.front() : forms.back();
    REQUIRE(asked->isVisible());
    CHECK(child<QComboBox>(*asked, "sugarsFood").currentText().toStdString() == "fennel");
    keepScreenPictures(screen, QStringLiteral("added-sugars-asked"));
    child<QComboBox>(*asked, "sugarsKind").setCurrentIndex(1);
    click(child<QPushButton>(*asked, "saySugars"));  // without a reason
    CHECK(asked->isVisible());
    typeText(child<QLineEdit>(*asked, "sugarsReason"), QStringLiteral("only <b>fennel</b>"));
    click(child<QPushButton>(*asked, "saySugars"));
    CHECK_FALSE(draft.failure());
    CHECK_FALSE(asked->isVisible());
    click(child<QPushButton>(screen, "showSugars"));
    forms.removeOne(asked);
    REQUIRE(forms.front()->isVisible());
    child<QComboBox>(*forms.front(), "sugarsFood").setCurrentText(QStringLiteral("fennel"));
    CHECK(child<QLabel>(*forms.front(), "sugarsNow").text().toStdString() ==
          "Now, per 100 g: none (only <b>fennel</b>)");
    keepScreenPictures(screen, QStringLiteral("added-sugars"));
    draft.undoStack().undo();
    CHECK(draft.failure());
}

}  // namespace nettare
