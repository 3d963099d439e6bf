#include "app/compare/compare_screen.h"

#include "app/compare/comparison_page.h"
#include "app/revisions/bring_back_bar.h"
#include "app/session/draft_title.h"
#include "app/theme/spacing.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/plain_tip.h"
#include "app/widgets/screen_header.h"
#include "app/words/error_sentence.h"

#include <QHBoxLayout>
#include <QPointer>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace nettare {

namespace {

/// Evaluations of revisions kept at hand; they never change.
constexpr std::size_t kMostAtHand = 16;

}  // namespace

CompareScreen::CompareScreen(KitchenSession& kitchen, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      header_{new ScreenHeader{tr("Compare")}},
      bringBack_{new QPushButton},
      bar_{new BringBackBar{kitchen}},
      stripArea_{new QScrollArea},
      strip_{new StateStrip},
      page_{new ComparisonPage},
      empty_{new EmptyState} {
    auto* const column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    buildHeader();
    column->addWidget(header_);
    column->addWidget(bar_);
    column->addWidget(buildBody(), 1);
    connect(strip_, &StateStrip::pairChosen, this, &CompareScreen::choose);
    connect(strip_, &StateStrip::dotFocused, this,
            [this](QWidget* dot) { stripArea_->ensureWidgetVisible(dot); });
    connect(empty_, &EmptyState::actionChosen, this, [this] {
        if (choice_.count() == 1)
            emit keepAsked();
        else
            emit sheetWanted();
    });
    connect(&kitchen_, &KitchenSession::draftOpened, this, &CompareScreen::followRecipe);
    connect(&kitchen_, &KitchenSession::revisionsChanged, this, &CompareScreen::followRevisions);
    connect(&kitchen_, &KitchenSession::shelfChanged, this, &CompareScreen::followDraft);
    connect(&kitchen_, &KitchenSession::failed, this, &CompareScreen::showFailure);
    followRecipe();
}

void CompareScreen::buildHeader() {
    bringBack_->setObjectName(QStringLiteral("bringBack"));
    header_->addAction(bringBack_);
    connect(bringBack_, &QPushButton::clicked, this, &CompareScreen::askBringBack);
    connect(bar_, &BringBackBar::left, bringBack_, qOverload<>(&QWidget::setFocus));
}

QWidget* CompareScreen::buildBody() {
    stripArea_->setWidget(strip_);
    stripArea_->setWidgetResizable(true);
    stripArea_->setFrameShape(QFrame::NoFrame);
    stripArea_->setFocusPolicy(Qt::NoFocus);
    stripArea_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    stripArea_->setFixedHeight(kControlHeightPx + 2 * kSpace2Px);
    stripArea_->viewport()->setAutoFillBackground(false);
    strip_->setAutoFillBackground(false);
    auto* const both = new QWidget;
    auto* const column = new QVBoxLayout{both};
    column->setContentsMargins(0, kSpace2Px, 0, 0);
    column->setSpacing(0);
    auto* const inset = new QHBoxLayout;
    inset->setContentsMargins(kSpace4Px, 0, kSpace6Px, 0);
    inset->addWidget(stripArea_);
    column->addLayout(inset);
    column->addWidget(page_, 1);
    auto* const body = new QWidget;
    stack_ = new QStackedLayout{body};
    stack_->addWidget(both);
    stack_->addWidget(empty_);
    return body;
}

void CompareScreen::compare(StateOf left, StateOf right) {
    const int one = choice_.indexOf(left), other = choice_.indexOf(right);
    if (one < 0 || other < 0 || one == other) return;
    const StatePair pair{std::min(one, other), std::max(one, other)};
    strip_->setPair(pair);
    choose(pair);
}

void CompareScreen::followRecipe() {
    const DraftSession* const draft = kitchen_.draft();
    const QString recipe = draft == nullptr ? QString{} : draft->recipe();
    if (recipe != recipe_) {
        kept_.clear();
        chosen_ = false;
        recipe_ = recipe;
        page_->clear();
    }
    opening_.reset();
    if (draft != nullptr)
        connect(draft, &DraftSession::evaluationChanged, this, &CompareScreen::followDraft);
    followRevisions();
}

void CompareScreen::followRevisions() {
    choice_ = CompareChoice{kitchen_.revisions()};
    const bool there =
        chosen_ && choice_.indexOf(left_) >= 0 && choice_.indexOf(right_) > choice_.indexOf(left_);
    const StatePair pair = there ? StatePair{choice_.indexOf(left_), choice_.indexOf(right_)}
                                 : choice_.newest(draftTouched());
    left_ = choice_.stateAt(pair.left);
    right_ = choice_.stateAt(pair.right);
    if (choice_.count() > 1) strip_->show(choice_.strip(), pair);
    refresh();
}

void CompareScreen::followDraft() {
    if (!chosen_)
        followRevisions();
    else if (!left_ || !right_)
        refresh();
}

void CompareScreen::choose(StatePair pair) {
    chosen_ = true;
    left_ = choice_.stateAt(pair.left);
    right_ = choice_.stateAt(pair.right);
    refresh();
}

bool CompareScreen::draftTouched() const {
    const auto& shelf = kitchen_.shelf();
    const std::string recipe = recipe_.toStdString();
    const auto mine = std::find_if(shelf.begin(), shelf.end(),
                                   [&](const ShelvedRecipe& each) { return each.id == recipe; });
    return mine == shelf.end() || mine->inWork;
}

void CompareScreen::showEmpty() {
    bringBack_->hide();
    stack_->setCurrentIndex(1);
    if (kitchen_.draft() == nullptr)
        return empty_->show(tr("No recipe is open"),
                            tr("Open a recipe from the shelf to compare its states."));
    if (choice_.count() == 1)
        return empty_->show(tr("There is one state only: the draft"),
                            tr("Keep it as a revision. Whatever changes later can then be "
                               "compared with it."),
                            kitchen_.writable() ? tr("Keep as revision 1") : QString{});
    empty_->show(tr("There is one state only: revision 1"),
                 tr("The draft is the same as revision 1. Change it, and the two can be compared."),
                 tr("Go to the sheet"));
}

void CompareScreen::showNoFigures() {
    bringBack_->hide();
    stack_->setCurrentIndex(1);
    empty_->show(tr("The draft has no figures yet"),
                 QString::fromStdString(errorSentence(*kitchen_.draft()->failure())),
                 tr("Go to the sheet"));
}

void CompareScreen::showIncomparable(const Error& error) {
    stack_->setCurrentIndex(1);
    empty_->show(tr("These two states cannot be compared"),
                 QString::fromStdString(errorSentence(error)), tr("Go to the sheet"));
}

void CompareScreen::showFailure(const Error& error) {
    if (!opening_) return;
    const QString sentence = QString::fromStdString(errorSentence(error));
    bringBack_->hide();
    stack_->setCurrentIndex(1);
    empty_->show(tr("Revision %1 could not be opened").arg(*opening_), sentence);
    opening_.reset();
}

QString CompareScreen::titleOf(StateOf state) const {
    QString title = choice_.title(state);
    if (state || !kitchen_.draft()->failure()) return title;
    return tr("%1, with its last figures: as it stands it has none").arg(title);
}

std::shared_ptr<const Evaluation> CompareScreen::evaluationOf(StateOf state) {
    if (!state) return kitchen_.draft()->evaluation();
    if (const auto known = kept_.find(*state); known != kept_.end()) return known->second;
    if (!opening_) {
        opening_ = *state;
        kitchen_.openRevision(*state, [guard = QPointer<CompareScreen>{this}, number = *state,
                                       recipe = recipe_](const OpenedRevision& revision) {
            if (guard && guard->recipe_ == recipe) guard->opened(number, revision);
        });
    }
    return nullptr;
}

void CompareScreen::opened(int number, const OpenedRevision& revision) {
    opening_.reset();
    if (kept_.size() >= kMostAtHand) kept_.clear();
    kept_.insert_or_assign(number, revision.evaluation);
    refresh();
}

void CompareScreen::refresh() {
    stale_ = !isVisible();
    if (stale_) return;
    const DraftSession* const draft = kitchen_.draft();
    header_->setSubject(draftTitle(draft));
    if (draft == nullptr || choice_.count() == 1 || (choice_.count() == 2 && !draftTouched()))
        return showEmpty();
    if (!right_ && !draft->evaluation()) return showNoFigures();
    nameBringBack();
    stack_->setCurrentIndex(0);
    busy_ = true;
    const auto left = evaluationOf(left_), right = evaluationOf(right_);
    if (!left || !right) return;
    tasks_.run(
        tr("Comparing"), *this,
        [left, right, meaning = draft->meaning(),
         names = StateNames{stateInSentence(left_), stateInSentence(right_)}](
            const Progress&) -> Result<ComparisonWords> {
            const auto before = withMeaning(left, meaning);
            if (!before) return fail(before.error());
            const auto after = withMeaning(right, meaning);
            if (!after) return fail(after.error());
            return comparisonWords(**before, **after, names);
        },
        [this, leftTitle = titleOf(left_),
         rightTitle = titleOf(right_)](Result<ComparisonWords> words) {
            busy_ = false;
            if (words)
                page_->show(leftTitle, rightTitle, std::move(*words));
            else
                showIncomparable(words.error());
        },
        QStringLiteral("compare"));
}

void CompareScreen::nameBringBack() {
    bringBack_->setVisible(left_.has_value());
    if (left_) bringBack_->setText(tr("Bring back revision %1…").arg(*left_));
    const QString hindrance = BringBackBar::hindrance(kitchen_);
    bringBack_->setEnabled(hindrance.isEmpty());
    bringBack_->setToolTip(plainTip(hindrance));
}

void CompareScreen::askBringBack() {
    if (left_) bar_->ask(*left_);
}

void CompareScreen::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    header_->setSubject(draftTitle(kitchen_.draft()));
    if (stale_) refresh();
}

}  // namespace nettare
