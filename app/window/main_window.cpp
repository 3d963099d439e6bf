#include "app/window/main_window.h"

#include <QCloseEvent>
#include <QMenuBar>
#include <QVBoxLayout>

#include "app/bench/bench_screen.h"
#include "app/compare/compare_screen.h"
#include "app/figures/figures_pane.h"
#include "app/import_table/import_screen.h"
#include "app/limits/limits_screen.h"
#include "app/panel_screen/panel_screen.h"
#include "app/pantry/pantry_screen.h"
#include "app/path/path_screen.h"
#include "app/revisions/revision_screen.h"
#include "app/session/followed_series.h"
#include "app/session/kitchen_session.h"
#include "app/sheet/draft_sentence.h"
#include "app/sheet/sheet_screen.h"
#include "app/trial/trial_screen.h"
#include "app/which_row/which_row_screen.h"
#include "app/window/about_page.h"
#include "app/window/keep_bar.h"
#include "app/window/keys_page.h"
#include "app/window/kitchen_banner.h"
#include "app/window/menus.h"
#include "app/window/pane_ring.h"
#include "app/window/saved_text.h"
#include "app/window/top_bar.h"
#include "app/window/window_place.h"
#include "app/words/error_sentence.h"

namespace nettare {

MainWindow::MainWindow(KitchenSession& kitchen, Theme& theme, std::unique_ptr<PathAsker> paths)
    : kitchen_{kitchen},
      theme_{theme},
      paths_{paths ? std::move(paths) : std::make_unique<DialogPathAsker>()},
      commands_{undo_, this},
      panes_{new PaneRing{this}},
      screens_{new ScreenStack},
      top_{new TopBar{kitchen, commands_.undo, commands_.redo, commands_.keep}},
      message_{new InlineBar{Role::ErrorFill, Role::Error}},
      keep_{new KeepBar{kitchen}},
      sheet_{new SheetScreen{kitchen}} {
    build();
    connectKitchenCommands();
    connectRecipeCommands();
    connectViewCommands();
    addOwnScreens();
    followDraft();
    restorePlace(*this);
}

MainWindow::~MainWindow() {
    // The session outlives the window; its answers must not reach half a window.
    kitchen_.disconnect(this);
}

void MainWindow::build() {
    auto* banner = new KitchenBanner{kitchen_};
    connect(banner, &KitchenBanner::keepKitchenAsked, this, &MainWindow::keepKitchen);
    connect(message_->addButton(tr("Close")), &QPushButton::clicked, message_, &QWidget::hide);
    message_->hide();

    auto* whole = new QWidget;
    auto* column = new QVBoxLayout{whole};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(top_);
    for (QWidget* bar : {static_cast<QWidget*>(banner), static_cast<QWidget*>(message_),
                         static_cast<QWidget*>(keep_)})
        column->addWidget(bar);
    column->addWidget(screens_, 1);
    setCentralWidget(whole);
    buildMenus(*menuBar(), commands_, *screens_);

    panes_->add(top_);
    for (Pane* pane : sheet_->panes()) panes_->add(pane);
    connect(screens_, &ScreenStack::screenAdded, top_, &TopBar::addScreenButton);
}

void MainWindow::connectKitchenCommands() {
    const Commands& c = commands_;
    connect(c.newRecipe, &QAction::triggered, this, [this] {
        showScreen(QStringLiteral("sheet"));
        kitchen_.newRecipe(tr("New recipe"));
        sheet_->titleNext();
    });
    connect(c.openKitchen, &QAction::triggered, this, [this] {
        const QString path = paths_->kitchenToOpen(this);
        if (!path.isEmpty() && mayLeave()) emit kitchenAsked(path);
    });
    connect(c.keepKitchen, &QAction::triggered, this, &MainWindow::keepKitchen);
    connect(c.backUp, &QAction::triggered, this, [this] {
        const QString path = paths_->newKitchen(this, tr("Back up"));
        if (!path.isEmpty()) kitchen_.backUp(path);
    });
    connect(c.quit, &QAction::triggered, this, &QWidget::close);
    new FollowedSeries{kitchen_, this};
    connect(&kitchen_, &KitchenSession::failed, this, &MainWindow::tell);
    connect(&kitchen_, &KitchenSession::saveStateChanged, this, [this] {
        if (kitchen_.saveState() != SaveState::Failed) toldUnwritten_ = false;
    });
    connect(&kitchen_, &KitchenSession::draftOpened, this, &MainWindow::followDraft);
    connect(&kitchen_, &KitchenSession::revisionsChanged, this, &MainWindow::followRights);
    connect(&kitchen_, &KitchenSession::kitchenMoved, this, &MainWindow::followRights);
}

void MainWindow::connectRecipeCommands() {
    const Commands& c = commands_;
    connect(c.addLine, &QAction::triggered, sheet_, &SheetScreen::addLine);
    connect(c.addStep, &QAction::triggered, sheet_, &SheetScreen::addStep);
    connect(c.removeLine, &QAction::triggered, sheet_, &SheetScreen::removeCurrent);
    connect(c.moveUp, &QAction::triggered, sheet_, [this] { sheet_->moveCurrent(true); });
    connect(c.moveDown, &QAction::triggered, sheet_, [this] { sheet_->moveCurrent(false); });
    connect(c.optionalLine, &QAction::triggered, sheet_, &SheetScreen::toggleOptional);
    connect(c.keep, &QAction::triggered, keep_, &KeepBar::ask);
    connect(keep_, &KeepBar::refused, this, &MainWindow::say);
    connect(c.nextWay, &QAction::triggered, sheet_, [this] { sheet_->takeNextWay(false); });
    connect(c.wayBefore, &QAction::triggered, sheet_, [this] { sheet_->takeNextWay(true); });
    connect(c.betterWay, &QAction::triggered, sheet_, &SheetScreen::takeBetterWay);
    connect(c.assume, &QAction::triggered, sheet_, &SheetScreen::assumeGrams);
    connect(c.fromLedger, &QAction::triggered, sheet_, &SheetScreen::bindLine);
    connect(c.weigh, &QAction::triggered, this, [this] {
        showScreen(QStringLiteral("sheet"));
        sheet_->weigh();
    });
    connect(sheet_, &SheetScreen::newRecipeAsked, c.newRecipe, &QAction::trigger);
    connect(sheet_, &SheetScreen::failed, this, &MainWindow::tell);
    connect(&sheet_->figures(), &FiguresPane::trialAsked, c.tryAmounts, &QAction::trigger);
    connect(&sheet_->figures(), &FiguresPane::limitsAsked, c.limits, &QAction::trigger);
}

void MainWindow::connectViewCommands() {
    const Commands& c = commands_;
    connect(c.findRecipe, &QAction::triggered, this, [this] {
        showScreen(QStringLiteral("sheet"));
        sheet_->findRecipe();
    });
    connect(c.nextPane, &QAction::triggered, panes_, [this] { panes_->step(true); });
    connect(c.paneBefore, &QAction::triggered, panes_, [this] { panes_->step(false); });
    const auto choose = [this](QAction* action, ShadeChoice choice) {
        action->setChecked(theme_.choice() == choice);
        connect(action, &QAction::triggered, &theme_, [this, choice] { theme_.choose(choice); });
    };
    choose(c.followSystem, ShadeChoice::System);
    choose(c.light, ShadeChoice::Light);
    choose(c.dark, ShadeChoice::Dark);
}

void MainWindow::addOwnScreens() {
    addScreen(QStringLiteral("sheet"), new QAction{tr("&Sheet")}, sheet_);
    auto* compare = new CompareScreen{kitchen_};
    addScreen(QStringLiteral("compare"), new QAction{tr("Com&pare")}, compare);
    auto* panel = new PanelScreen{kitchen_, [this](QWidget* window, const QString& name) {
                                      return paths_->panelPdf(window, name);
                                  }};
    addScreen(QStringLiteral("panel"), new QAction{tr("Pane&l")}, panel);
    addPantry();
    addBench();
    auto* revisions = new RevisionScreen{kitchen_};
    screens_->addQuietScreen(QStringLiteral("revisions"), commands_.revisions, revisions);
    addPathScreen();
    auto* trial = new TrialScreen{kitchen_};
    screens_->addQuietScreen(QStringLiteral("trial"), commands_.tryAmounts, trial);
    addRowScreen();
    addImportScreen();
    auto* limits = new LimitsScreen{kitchen_};
    screens_->addQuietScreen(QStringLiteral("limits"), commands_.limits, limits);
    screens_->addQuietScreen(QStringLiteral("keys"), commands_.keys, new KeysPage{*menuBar()});
    screens_->addQuietScreen(QStringLiteral("about"), commands_.about, new AboutPage);

    const auto toSheet = [this] { showScreen(QStringLiteral("sheet")); };
    connect(compare, &CompareScreen::sheetWanted, this, toSheet);
    connect(panel, &PanelScreen::sheetWanted, this, toSheet);
    connect(trial, &TrialScreen::sheetWanted, this, toSheet);
    connect(trial, &TrialScreen::failed, this, &MainWindow::tell);
    connect(limits, &LimitsScreen::sheetWanted, this, toSheet);
    connect(limits, &LimitsScreen::failed, this, &MainWindow::tell);
    connect(compare, &CompareScreen::keepAsked, keep_, &KeepBar::ask);
    connect(revisions, &RevisionScreen::keepAsked, keep_, &KeepBar::ask);
    connect(revisions, &RevisionScreen::compareAsked, this,
            [this, compare](int revision, std::optional<int> other) {
                compare->compare(revision, other);
                showScreen(QStringLiteral("compare"));
            });
}

// At the bench the whole window is for what is read at a metre.
void MainWindow::addBench() {
    auto* bench = new BenchScreen{kitchen_, *paths_};
    addScreen(QStringLiteral("bench"), new QAction{tr("&Bench")}, bench);
    for (Pane* pane : bench->panes()) panes_->add(pane);
    connect(bench, &BenchScreen::sheetWanted, this,
            [this] { showScreen(QStringLiteral("sheet")); });
    connect(screens_, &ScreenStack::screenShown, top_,
            [this](const QString& name) { top_->setVisible(name != QStringLiteral("bench")); });
}

void MainWindow::addImportScreen() {
    auto* import = new ImportScreen{
        kitchen_,
        {[this](QWidget* window, bool folder) { return paths_->foodTable(window, folder); },
         [this](QWidget* window, bool write) { return paths_->mappingFile(window, write); }}};
    screens_->addQuietScreen(QStringLiteral("import"), commands_.bringInTable, import);
}

void MainWindow::addRowScreen() {
    auto* rows = new WhichRowScreen{kitchen_};
    // Before the stack shows the screen: which food is meant is told by the sheet.
    connect(commands_.whichRow, &QAction::triggered, this, [this, rows] {
        if (screens_->current() == QStringLiteral("sheet")) rows->askAbout(sheet_->currentLine());
    });
    screens_->addQuietScreen(QStringLiteral("rows"), commands_.whichRow, rows);
    connect(sheet_, &SheetScreen::rowsAsked, commands_.whichRow, &QAction::trigger);
    connect(rows, &WhichRowScreen::sheetWanted, this,
            [this] { showScreen(QStringLiteral("sheet")); });
    connect(rows, &WhichRowScreen::failed, this, &MainWindow::tell);
}

// Escape leads back to where the figure was asked about.
void MainWindow::addPathScreen() {
    const Commands& c = commands_;
    path_ = new PathScreen{kitchen_, [this](QWidget* window, QPrinter& printer) {
                               return paths_->printer(window, printer);
                           }};
    // Before the stack shows the screen: which figure is chosen is told by the focus.
    connect(c.path, &QAction::triggered, this, &MainWindow::needPath);
    screens_->addQuietScreen(QStringLiteral("path"), c.path, path_);
    connect(&sheet_->figures(), &FiguresPane::pathAsked, this, &MainWindow::showPath);
    connect(c.copyPath, &QAction::triggered, this, [this] {
        needPath();
        path_->copyPath();
    });
    connect(c.printPath, &QAction::triggered, this, [this] {
        needPath();
        path_->printSheet();
    });
    connect(path_, &PathScreen::sheetWanted, this, [this] {
        showScreen(QStringLiteral("sheet"));
        sheet_->figures().enter();
    });
    connect(path_, &PathScreen::lineWanted, this, [this](const QString& line) {
        showScreen(QStringLiteral("sheet"));
        sheet_->goToLine(line);
    });
}

void MainWindow::addPantry() {
    pantry_ = new PantryScreen{kitchen_};
    addScreen(QStringLiteral("pantry"), new QAction{tr("P&antry")}, pantry_);
    for (Pane* pane : pantry_->panes()) panes_->add(pane);
    undo_.addStack(&kitchen_.ownFoods().undoStack());
    connect(screens_, &ScreenStack::screenShown, this, &MainWindow::followUndo);
    connect(commands_.findFood, &QAction::triggered, this, [this] {
        showScreen(QStringLiteral("pantry"));
        pantry_->find();
    });
    connect(commands_.newLabel, &QAction::triggered, this, [this] {
        showScreen(QStringLiteral("pantry"));
        pantry_->newLabel();
    });
    connect(pantry_, &PantryScreen::photoAsked, this, [this] {
        const QString path = paths_->photograph(this);
        if (!path.isEmpty()) pantry_->takePhoto(path);
    });
    connect(pantry_, &PantryScreen::bringInTableAsked, commands_.bringInTable, &QAction::trigger);
    connect(pantry_, &PantryScreen::recipeAsked, this, [this](const QString& id) {
        showScreen(QStringLiteral("sheet"));
        if (kitchen_.draft() == nullptr || kitchen_.draft()->recipe() != id)
            kitchen_.openRecipe(id);
    });
}

void MainWindow::followUndo() {
    DraftSession* const draft = kitchen_.draft();
    if (screens_->current() == QStringLiteral("pantry"))
        undo_.setActiveStack(&kitchen_.ownFoods().undoStack());
    else if (draft != nullptr)
        undo_.setActiveStack(&draft->undoStack());
    else
        undo_.setActiveStack(nullptr);
}

void MainWindow::showPath(Component component) {
    showScreen(QStringLiteral("path"));
    path_->showFigure({component, sheet_->figures().basis()});
}

void MainWindow::needPath() {
    if (screens_->current() == QStringLiteral("path")) return;
    showPath(sheet_->figures().chosen().value_or(path_->question().component));
}

void MainWindow::addScreen(const QString& name, QAction* action, QWidget* screen) {
    const auto place = screens_->actions().size() + 1;
    action->setParent(this);
    action->setObjectName(name);
    if (action->shortcut().isEmpty() && place <= 9)
        action->setShortcut(QKeySequence{QStringLiteral("Ctrl+%1").arg(place)});
    addAction(action);
    screens_->addScreen(name, action, screen);
}

void MainWindow::followDraft() {
    DraftSession* draft = kitchen_.draft();
    if (draft != nullptr) {
        undo_.addStack(&draft->undoStack());
        connect(draft, &DraftSession::documentChanged, this, [this] {
            message_->hide();
            showTitle();
        });
    }
    followUndo();
    showTitle();
    followRights();
}

void MainWindow::showTitle() {
    const QString title = sheet_->title();
    setWindowTitle(title.isEmpty() ? tr("Nettare") : tr("%1 – Nettare").arg(title));
}

void MainWindow::followRights() {
    const Commands& c = commands_;
    const bool open = kitchen_.draft() != nullptr;
    const bool editable = open && !kitchen_.draft()->readOnly();
    for (QAction* action : {c.newRecipe, c.newLabel}) action->setEnabled(kitchen_.writable());
    c.keepKitchen->setEnabled(kitchen_.isSample());
    for (QAction* action :
         {c.addLine, c.addStep, c.removeLine, c.moveUp, c.moveDown, c.optionalLine, c.keep, c.weigh,
          c.nextWay, c.wayBefore, c.betterWay, c.assume, c.fromLedger})
        action->setEnabled(editable);
    for (QAction* action :
         {c.revisions, c.tryAmounts, c.limits, c.whichRow, c.path, c.copyPath, c.printPath})
        action->setEnabled(open);
    c.keep->setText(editable ? tr("&Keep as revision %1…").arg(nextRevision(kitchen_))
                             : tr("&Keep as revision…"));
}

void MainWindow::keepKitchen() {
    const QString path = paths_->newKitchen(this, tr("Keep this kitchen"));
    if (!path.isEmpty()) kitchen_.keepKitchenAs(path);
}

bool MainWindow::mayLeave() {
    kitchen_.settle();
    if (kitchen_.saveState() != SaveState::Failed || toldUnwritten_) return true;
    toldUnwritten_ = true;
    say(tr("%1 Put that right and try again: they are written first. If they still cannot be, "
           "leaving loses them.")
            .arg(message_->text()));
    return false;
}

void MainWindow::tell(const Error& error) {
    const DraftSession* draft = kitchen_.draft();
    const QString sentence = draft == nullptr ? QString::fromStdString(errorSentence(error))
                                              : draftSentence(draft->document(), error);
    say(kitchen_.saveState() == SaveState::Failed
            ? tr("%1 The last changes are not in the kitchen yet; no other recipe is opened "
                 "before they are.")
                  .arg(sentence)
            : sentence);
}

void MainWindow::say(const QString& sentence) {
    message_->setText(sentence);
    message_->show();
}

void MainWindow::closeEvent(QCloseEvent* event) {
    rememberPlace(*this);
    event->setAccepted(mayLeave());
}

}  // namespace nettare
