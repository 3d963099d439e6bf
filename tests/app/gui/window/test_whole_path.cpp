#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTemporaryDir>

#include <sstream>

#include "app/command_line/run.h"
#include "app/compare/compare_screen.h"
#include "app/files/read_file.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/panel_screen/panel_screen.h"
#include "app/window/main_window.h"
#include "app/words/error_sentence.h"
#include "core/label/us_rounding.h"
#include "support/run_tool.h"

namespace nettare {

namespace {

/// Answers every question for a file from one folder.
class InFolder : public PathAsker {
public:
    explicit InFolder(const QTemporaryDir& folder) : folder_{folder} {}

    [[nodiscard]] QString kitchenToOpen(QWidget*) override { return {}; }
    [[nodiscard]] QString newKitchen(QWidget*, const QString&) override {
        return folder_.filePath(QStringLiteral("spring.nettare"));
    }
    [[nodiscard]] QString panelPdf(QWidget*, const QString&) override {
        return folder_.filePath(QStringLiteral("window.pdf"));
    }
    [[nodiscard]] QString foodTable(QWidget*, bool) override { return {}; }
    [[nodiscard]] QString mappingFile(QWidget*, bool) override { return {}; }
    [[nodiscard]] QString photograph(QWidget*) override { return {}; }
    [[nodiscard]] QString ledgerCsv(QWidget*, const QString&) override { return {}; }
    [[nodiscard]] bool printer(QWidget*, QPrinter&) override { return false; }

private:
    const QTemporaryDir& folder_;
};

/// The window on the sample, used as a cook uses it.
class Cook {
public:
    Cook() : window_{*kitchen_, theme_, std::make_unique<InFolder>(folder_)} {
        showReady(window_, {1280, 800});
    }

    MainWindow& window() { return window_; }
    KitchenSession& kitchen() { return *kitchen_; }
    std::string path(const char* name) const {
        return folder_.filePath(QString::fromLatin1(name)).toStdString();
    }

    void keepKitchen() {
        window_.commands().keepKitchen->trigger();
        REQUIRE(waitUntil([&] { return !kitchen_->isSample(); }));
        kitchen_->settle();
        settle();
    }
    void typeAmount(int row, const QString& amount) {
        auto& view = child<QTableView>(window_, "lines");
        view.setFocus();
        view.setCurrentIndex(view.model()->index(row, 0));
        view.edit(view.currentIndex());
        auto* const editor = view.viewport()->findChild<QLineEdit*>();
        REQUIRE(editor != nullptr);
        editor->selectAll();
        typeText(*editor, amount);
        pressKey(*editor, Qt::Key_Return);
        settle();
    }
    void weigh(int row, const QString& shown) {
        auto& view = child<QTableView>(window_, "lines");
        view.setCurrentIndex(view.model()->index(row, 0));
        QSignalSpy recorded{kitchen_.get(), &KitchenSession::recorded};
        auto& gross = child<QLineEdit>(window_, "gross");
        typeText(gross, shown);
        pressKey(gross, Qt::Key_Return);
        REQUIRE(waitUntil([&] { return recorded.count() == 1; }));
    }
    void keep(const QString& note) {
        const auto before = kitchen_->revisions().size();
        window_.commands().keep->trigger();
        auto& field = child<QLineEdit>(window_, "revisionNote");
        typeText(field, note);
        pressKey(field, Qt::Key_Return);
        REQUIRE(waitUntil([&] { return kitchen_->revisions().size() == before + 1; }));
    }
    void exportPanel() {
        window_.showScreen(QStringLiteral("panel"));
        settle();
        click(child<QPushButton>(window_, "export"));
        auto& panel = *window_.findChild<PanelScreen*>();
        REQUIRE(waitUntil([&] { return !panel.report().isEmpty(); }));
    }
    /// What the command line says of the kitchen that this window holds.
    std::string command(std::vector<std::string> words) const {
        words.insert(words.begin(), {"--kitchen", path("spring.nettare")});
        std::ostringstream out, err;
        INFO(words[2]);
        const int code = runCommandLine(words, out, err);
        INFO(err.str());
        CHECK(err.str().empty());
        REQUIRE(code == 0);
        return out.str();
    }

private:
    QTemporaryDir folder_;
    Theme theme_{QDBusConnection{QStringLiteral("no bus")}};
    std::unique_ptr<KitchenSession> kitchen_ = sampleSession();
    MainWindow window_;
};

/// The unrounded figure of a component in what `figures --json` printed.
double figureIn(const Json& figures, Component component) {
    for (const Json& figure : *figures.find("figures")->items())
        if (*figure.find("component")->text() == factsOf(component).tagname)
            return *figure.find("value")->number();
    FAIL("no figure of " << factsOf(component).tagname);
    return 0;
}

}  // namespace

TEST_CASE("from the sample to a printed panel: edit, weigh, keep, compare, export") {
    Cook cook;
    cook.keepKitchen();
    const auto before = cook.kitchen().revisions().size();
    cook.typeAmount(2, QStringLiteral("2 tbsp"));
    cook.weigh(3, QStringLiteral("5.4"));
    cook.keep(QStringLiteral("less oil, garlic weighed"));
    cook.kitchen().settle();

    auto& compare = *cook.window().findChild<CompareScreen*>();
    cook.window().showScreen(QStringLiteral("compare"));
    const int newest = cook.kitchen().revisions().back().number;
    compare.compare(newest - 1, newest);
    REQUIRE(waitUntil([&] { return !compare.isBusy(); }));
    CHECK(cook.kitchen().revisions().size() == before + 1);

    cook.exportPanel();
    const std::string revision = std::to_string(newest);
    const auto figures = parseJson(cook.command({"figures", "charred", "--json"}));
    REQUIRE(figures);
    CHECK(cook.command({"figures", "charred", "--json", "--revision", revision}) ==
          cook.command({"figures", "charred", "--json"}));
    const std::string printed =
        printedByTool("poppler-utils", "pdftotext -layout '" + cook.path("window.pdf") + "' -");
    const auto line = [&](const char* name, Component component, const char* unit) {
        const auto text = usAmountText(component, figureIn(*figures, component));
        REQUIRE(text);
        const auto at = printed.find(name);
        INFO(printed);
        REQUIRE(at != std::string::npos);
        const std::string wanted = *text + unit;
        CHECK(printed.substr(at, printed.find('\n', at) - at).find(wanted) != std::string::npos);
    };
    line("Calories", Component::ENERC_KCAL, "");
    line("Total Fat", Component::FAT, "g");
    line("Saturated Fat", Component::FASAT, "g");
    line("Sodium", Component::NA, "mg");
    line("Total Carbohydrate", Component::CHOCDF, "g");
    line("Protein", Component::PROCNT, "g");

    (void)cook.command({"panel", "charred", "--out", cook.path("command.pdf")});
    CHECK(*readFile(cook.path("window.pdf")) == *readFile(cook.path("command.pdf")));
    (void)cook.command({"verify"});
}

}  // namespace nettare
