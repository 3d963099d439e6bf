#include "app/path/path_screen.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPrinter>
#include <QPushButton>
#include <QStackedLayout>

#include "app/figures/figure_words.h"
#include "app/path/figure_plots.h"
#include "app/path/path_side.h"
#include "app/path/path_texts.h"
#include "app/path/path_tree.h"
#include "app/path/simulation_card.h"
#include "app/path/simulation_texts.h"
#include "app/path/working_sheet.h"
#include "app/session/draft_title.h"
#include "app/sheet/draft_sentence.h"
#include "app/theme/spacing.h"
#include "app/widgets/basis_switch.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/message_line.h"
#include "app/widgets/screen_header.h"
#include "app/words/error_sentence.h"

namespace nettare {

namespace {

constexpr int kSidePx = 380;
constexpr int kPathPage = 0, kPlotsPage = 1, kEmptyPage = 2;
const QString kNextLane = QStringLiteral("next"), kSimulationLane = QStringLiteral("simulation");

QString asSentence(QString text) {
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

QString asEnding(QString text) {
    if (!text.isEmpty()) text[0] = text[0].toLower();
    return text;
}

}  // namespace

PathScreen::PathScreen(KitchenSession& kitchen, AskForPrinter ask, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      ask_{std::move(ask)},
      header_{new ScreenHeader{tr("Where it comes from")}},
      pages_{new BasisSwitch},
      copy_{new QPushButton{tr("Copy")}},
      print_{new QPushButton{tr("Print working sheet…")}},
      report_{new MessageLine},
      trouble_{new MessageLine},
      tree_{new PathTree},
      side_{new PathSide},
      plots_{new FigurePlots},
      empty_{new EmptyState} {
    auto* const column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    report_->setObjectName(QStringLiteral("pathReport"));
    trouble_->setObjectName(QStringLiteral("pathTrouble"));
    buildHeader();
    column->addWidget(header_);
    column->addWidget(report_);
    column->addWidget(trouble_);
    column->addWidget(buildBody(), 1);
    connect(tree_, &PathTree::lineWanted, this, &PathScreen::goToLine);
    connect(tree_, &PathTree::copyWanted, this, &PathScreen::copyPath);
    connect(empty_, &EmptyState::actionChosen, this, &PathScreen::sheetWanted);
    connect(&side_->simulation(), &SimulationCard::runWanted, this, &PathScreen::simulateNow);
    connect(&side_->simulation(), &SimulationCard::cancelWanted, this,
            &PathScreen::cancelSimulation);
    connect(&tasks_, &TaskRunner::progressed, this,
            [this](const QString& name, const QString&, double share) {
                if (name == tr("Simulating")) side_->simulation().setProgress(share);
            });
    connect(&kitchen_, &KitchenSession::draftOpened, this, &PathScreen::followDraft);
    followDraft();
}

PathScreen::~PathScreen() = default;

void PathScreen::buildHeader() {
    pages_->setObjectName(QStringLiteral("pathPages"));
    pages_->setAccessibleName(tr("Path or plots"));
    pages_->setTexts({tr("Path"), tr("Plots")});
    copy_->setObjectName(QStringLiteral("copyPath"));
    print_->setObjectName(QStringLiteral("printPath"));
    header_->addAction(pages_);
    header_->addAction(copy_);
    header_->addAction(print_);
    connect(pages_, &BasisSwitch::chosen, this, &PathScreen::showPage);
    connect(copy_, &QPushButton::clicked, this, &PathScreen::copyPath);
    connect(print_, &QPushButton::clicked, this, &PathScreen::printSheet);
}

QWidget* PathScreen::buildBody() {
    side_->setFixedWidth(kSidePx);
    auto* const both = new QWidget;
    auto* const row = new QHBoxLayout{both};
    row->setContentsMargins(0, kSpace4Px, kSpace4Px, 0);
    row->setSpacing(kSpace4Px);
    row->addWidget(tree_, 1);
    row->addWidget(side_);
    auto* const body = new QWidget;
    stack_ = new QStackedLayout{body};
    stack_->addWidget(both);
    stack_->addWidget(plots_);
    stack_->addWidget(empty_);
    return body;
}

const Figures& PathScreen::figures() const {
    return *(*evaluation_)[question_.basis];
}

void PathScreen::showFigure(PathQuestion question) {
    question_ = question;
    report_->clear();
    pages_->setIndex(kPathPage);
    evaluation_.reset();
    refresh();
    tree_->setFocus(Qt::OtherFocusReason);
}

void PathScreen::showPage(int page) {
    if (!evaluation_) return;
    pages_->setIndex(page);
    stack_->setCurrentIndex(page);
    if (page == kPlotsPage) showPlots();
}

void PathScreen::setTrials(std::uint64_t trials) {
    trials_ = trials;
    side_->simulation().setTrials(trials);
}

void PathScreen::followDraft() {
    report_->clear();
    question_.component = Component::ENERC_KCAL;
    if (const DraftSession* const draft = kitchen_.draft())
        connect(draft, &DraftSession::evaluationChanged, this, &PathScreen::refresh);
    refresh();
}

void PathScreen::refresh() {
    stale_ = !isVisible();
    if (!stale_) lookAtDraft();
}

void PathScreen::lookAtDraft() {
    const DraftSession* const draft = kitchen_.draft();
    trouble_->clear();
    if (draft == nullptr)
        return showEmpty(
            tr("No recipe is open"),
            tr("Open a recipe from the shelf; then choose a figure to see where it comes from."),
            true);
    if (!draft->evaluation()) {
        const QString why =
            draft->failure() ? draftSentence(draft->document(), *draft->failure()) : QString{};
        return showEmpty(tr("There are no figures yet"),
                         why + u'\n' + tr("Figures, and their paths, appear with the first line."),
                         true);
    }
    showTrouble(*draft);
    if (!(*draft->evaluation())[question_.basis])
        return showEmpty(
            tr("This figure has no path yet"),
            tr("A portion in grams needs the weight of the cooked dish; weigh it at the scale."),
            true);
    if (draft->evaluation() != evaluation_) showEvaluation(draft->evaluation());
}

void PathScreen::showTrouble(const DraftSession& draft) {
    if (!draft.failure()) return;
    trouble_->say(MessageKind::Warning,
                  tr("This is the path of the last figures that could be computed. %1")
                      .arg(draftSentence(draft.document(), *draft.failure())));
}

void PathScreen::showEmpty(const QString& headline, const QString& words, bool offerSheet) {
    tasks_.cancelAll();
    evaluation_.reset();
    tree_->clear();
    header_->setName(tr("Where it comes from"));
    header_->setSubject(draftTitle(kitchen_.draft()));
    for (QWidget* each : {static_cast<QWidget*>(pages_), static_cast<QWidget*>(copy_),
                          static_cast<QWidget*>(print_)})
        each->setEnabled(false);
    empty_->show(headline, words, offerSheet ? tr("Go to the sheet") : QString{});
    stack_->setCurrentIndex(kEmptyPage);
}

void PathScreen::showEvaluation(const Evaluated& evaluation) {
    tasks_.cancelAll();
    evaluation_ = evaluation;
    const DraftSession& draft = *kitchen_.draft();
    header_->setName(pathTitle(figure()));
    header_->setSubject(
        tr("%1 · %2, %3")
            .arg(figureInWords(question_.component, figures(), evaluation->dossier.main()),
                 draftTitle(&draft), draftInWords(draft)));
    for (QWidget* each : {static_cast<QWidget*>(pages_), static_cast<QWidget*>(copy_),
                          static_cast<QWidget*>(print_)})
        each->setEnabled(true);
    path_ = pathOf(question_.component, figures(), evaluation->dossier, evaluation->cooked);
    shares_ = budgetShares(question_.component, figures(), evaluation->dossier, evaluation->cooked);
    tree_->show(path_);
    side_->showShares(figureSpread(figure()), shares_);
    stack_->setCurrentIndex(pages_->index() == kPlotsPage ? kPlotsPage : kPathPage);
    findNext();
    offerSimulation();
    if (pages_->index() == kPlotsPage) showPlots();
    fetchLedgerHead();
}

void PathScreen::findNext() {
    nextAct_.clear();
    nextOutcome_.clear();
    side_->showTrying();
    struct Found {
        QString act, outcome;
    };
    tasks_.run(
        tr("Trying out what to weigh"), *this,
        [evaluation = evaluation_, question = question_](const Progress&) {
            const auto next = nextAct(question.component, question.basis, evaluation->dossier,
                                      evaluation->cooked);
            if (!next) return Found{{}, QString::fromStdString(errorSentence(next.error()))};
            const ActOutcome* const best = next->best();
            const QString outcome = QString::fromStdString(outcomeText(question.component, *next));
            if (best == nullptr) return Found{{}, asSentence(outcome)};
            const std::string act = actText(best->act, evaluation->dossier);
            return Found{asEnding(QString::fromStdString(act)), outcome};
        },
        [this](const Found& found) {
            nextAct_ = found.act;
            nextOutcome_ = found.outcome;
            side_->showNext(nextAct_, nextOutcome_);
        },
        kNextLane);
}

const Simulation* PathScreen::simulation() const {
    const bool here =
        simulated_ && simulated_->of == evaluation_ && simulated_->question == question_;
    return here ? &simulated_->result : nullptr;
}

void PathScreen::offerSimulation() {
    if (simulation() != nullptr) return showSimulation();
    const auto reason = reasonToSimulate(question_.component, figures(), evaluation_->cooked);
    if (reason) return simulateNow();
    side_->simulation().offer(
        tr("Draws every reading, label and table value anew, and multiplies them as they are "
           "instead of to first order."));
}

void PathScreen::simulateNow() {
    if (!evaluation_) return;
    const auto reason = reasonToSimulate(question_.component, figures(), evaluation_->cooked);
    side_->simulation().showRunning(
        reason ? tr("Simulating by itself, since %1.").arg(reasonText(*reason))
               : tr("Simulating. Escape or Cancel ends it; nothing else changes."));
    tasks_.run(
        tr("Simulating"), *this,
        [evaluation = evaluation_, question = question_,
         trials = trials_](const Progress& progress) {
            SimulationPlan plan;
            plan.trials = trials;
            plan.goOn = [progress, trials](std::uint64_t done) {
                progress.step({}, static_cast<double>(done) / static_cast<double>(trials));
                return !progress.cancelled();
            };
            const Figures& figures = *(*evaluation)[question.basis];
            return simulate(plan, figureModel(question.component, figures, evaluation->dossier,
                                              evaluation->cooked));
        },
        [this, evaluation = evaluation_,
         question = question_](std::optional<Simulation> simulation) {
            if (!simulation || evaluation != evaluation_) return;
            simulated_ = Simulated{evaluation, question, std::move(*simulation)};
            showSimulation();
        },
        kSimulationLane);
}

void PathScreen::cancelSimulation() {
    tasks_.cancel(kSimulationLane);
    side_->simulation().offer(
        tr("Cancelled. The interval at the top is that of the law of "
           "propagation."));
}

void PathScreen::showSimulation() {
    const auto shown =
        reasonToShow(question_.component, figures(), evaluation_->cooked, *simulation());
    side_->simulation().showResult(
        simulationText(figure(), figures().block.meaning, *simulation(), shown));
    tree_->setInterval(shown ? endsText(question_.component, intervalOf(figure(), *simulation()))
                             : QString{});
    if (stack_->currentIndex() == kPlotsPage) showPlots();
}

void PathScreen::showPlots() {
    plots_->show(figurePlotOf(question_, *evaluation_, path_, shares_, simulation()));
}

void PathScreen::goToLine(std::size_t line) {
    const auto& lines = evaluation_->dossier.main().lines;
    if (line < lines.size()) emit lineWanted(QString::fromStdString(lines[line].id));
}

// As it ends now: what the draft has weighed since its revision is in it too.
void PathScreen::fetchLedgerHead() {
    kitchen_.askKitchen(this, [this](const Kitchen& kitchen) {
        const auto end = kitchen.ledgerEnd();
        return std::function<void()>{[this, end = end ? *end : LedgerEnd{}] { ledgerEnd_ = end; }};
    });
}

bool PathScreen::copyPath() {
    if (stale_) lookAtDraft();
    if (!evaluation_) return false;
    QGuiApplication::clipboard()->setText(QString::fromStdString(pathText(path_)));
    report_->say(MessageKind::Done, tr("The path is on the clipboard, as text."));
    return true;
}

void PathScreen::printSheet() {
    if (stale_) lookAtDraft();
    if (!evaluation_) return;
    QPrinter printer{QPrinter::HighResolution};
    printer.setDocName(draftTitle(kitchen_.draft()));
    printer.setCreator(QStringLiteral("Nettare"));
    if (!ask_(this, printer)) return;
    // The dialog let events in, and the draft may have changed.
    if (!evaluation_) return;
    WorkingSheet sheet = workingSheetOf(question_, *evaluation_, path_, shares_);
    sheet.title = draftTitle(kitchen_.draft());
    sheet.state = draftInWords(*kitchen_.draft());
    sheet.ledgerHead = QString::fromStdString(ledgerEnd_.hash);
    sheet.ledgerEntries = ledgerEnd_.sequence;
    sheet.next = nextAct_;
    sheet.nextOutcome = nextOutcome_;
    if (simulation() != nullptr) sheet.simulation = side_->simulation().text();
    if (printWorkingSheet(sheet, printer))
        report_->say(MessageKind::Done, tr("The working sheet is printed."));
    else
        report_->say(MessageKind::Error, tr("The working sheet could not be printed: the printer "
                                            "or the file takes nothing. Choose another one."));
}

void PathScreen::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
}

void PathScreen::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    // A window that is only out of sight goes on.
    if (!event->spontaneous() && side_->simulation().isRunning()) cancelSimulation();
}

void PathScreen::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape) return QWidget::keyPressEvent(event);
    if (side_->simulation().isRunning())
        cancelSimulation();
    else
        emit sheetWanted();
}

}  // namespace nettare
