#include "app/pantry/pantry_screen.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QShowEvent>
#include <QStackedWidget>

#include <algorithm>

#include "app/pantry/food_browser.h"
#include "app/pantry/food_card.h"
#include "app/pantry/food_words.h"
#include "app/pantry/foods_side_by_side.h"
#include "app/pantry/label_form.h"
#include "app/pantry/label_memory.h"
#include "app/pantry/own_food_form.h"
#include "app/session/kitchen_session.h"
#include "app/theme/spacing.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/screen_header.h"
#include "app/widgets/scrolling.h"
#include "core/food/own_food_entry.h"

namespace nettare {

namespace {

constexpr int kBrowserWidth = 440;
constexpr int kWidestMiddle = 860;
/// Least of the food that is read beside a label, and least and most of that.
constexpr int kLeastMiddle = 520, kLeastLabel = 420, kMostLabel = 860;

/// The tables with their foods, files of one table together.
std::vector<TableCount> countsOf(const FoodTables* tables) {
    std::vector<TableCount> counts;
    if (tables == nullptr) return counts;
    for (const FoodTable& table : tables->tables()) {
        const QString name = sourceName({table.table(), table.release(), {}});
        const auto known = std::ranges::find(counts, name, &TableCount::name);
        if (known == counts.end())
            counts.push_back({name, table.size()});
        else
            known->foods = std::max(known->foods, table.size());
    }
    return counts;
}

QWidget* pageOf(QWidget* content) {
    auto* page = new QWidget;
    auto* row = new QHBoxLayout{page};
    row->setContentsMargins(0, 0, 0, 0);
    content->setMaximumWidth(kWidestMiddle);
    row->addWidget(content, 1);
    row->addStretch(0);
    return scrolling(page);
}

}  // namespace

PantryScreen::PantryScreen(KitchenSession& kitchen, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      header_{new ScreenHeader{tr("Pantry")}},
      browser_{new FoodBrowser{kitchen}},
      middle_{new Pane{tr("Food"), Role::Paper}},
      stack_{new QStackedWidget},
      empty_{new EmptyState},
      card_{new FoodCard{kitchen}},
      sideBySide_{new FoodsSideBySide},
      labelPane_{new Pane{tr("Label"), Role::Raised}},
      newLabel_{new QPushButton} {
    buildHeader();
    browser_->setFixedWidth(kBrowserWidth);
    labelPane_->setHairlines(Qt::LeftEdge);
    labelPane_->hide();
    auto* row = new QHBoxLayout;
    row->setSpacing(0);
    row->addWidget(browser_);
    row->addWidget(buildMiddle(), 1);
    row->addWidget(labelPane_);
    row_ = row;
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(header_);
    column->addLayout(row, 1);
    connectParts();
    arrange();
    sayCounts();
}

void PantryScreen::buildHeader() {
    auto* make = new QPushButton{tr("New own food")};
    make->setObjectName(QStringLiteral("newOwnFood"));
    auto* bring = new QPushButton{tr("Bring in a table…")};
    bring->setObjectName(QStringLiteral("bringInTable"));
    newLabel_->setObjectName(QStringLiteral("newLabel"));
    for (QPushButton* button : {newLabel_, make, bring}) header_->addAction(button);
    const auto followRights = [this, make] {
        for (QPushButton* button : {newLabel_, make}) button->setEnabled(kitchen_.writable());
    };
    followRights();
    connect(&kitchen_, &KitchenSession::kitchenMoved, make, followRights);
    connect(newLabel_, &QPushButton::clicked, this, &PantryScreen::newLabel);
    connect(make, &QPushButton::clicked, this, &PantryScreen::makeNew);
    connect(bring, &QPushButton::clicked, this, &PantryScreen::bringInTableAsked);
}

QWidget* PantryScreen::buildMiddle() {
    empty_->show(tr("Choose a food at the left"),
                 tr("Its values stand here with where each comes from, its kitchen measures, and "
                    "the recipes that use it. Space takes a food of the list among those to "
                    "compare."));
    cardPage_ = pageOf(card_);
    comparePage_ = pageOf(sideBySide_);
    for (QWidget* page : {static_cast<QWidget*>(empty_), cardPage_, comparePage_})
        stack_->addWidget(page);
    auto* column = new QVBoxLayout{middle_};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(stack_);
    return middle_;
}

void PantryScreen::connectParts() {
    connect(browser_, &FoodBrowser::foodChosen, this, &PantryScreen::showFood);
    connect(browser_, &FoodBrowser::compareAsked, this, &PantryScreen::compare);
    connect(browser_, &FoodBrowser::comparedChanged, this, [this] {
        if (card_->food())
            card_->setCompared(std::ranges::find(browser_->compared(), card_->food()->row) !=
                               browser_->compared().end());
        if (browser_->compared().size() < 2 && stack_->currentWidget() == comparePage_)
            backToCard();
        else if (stack_->currentWidget() == comparePage_)
            compare();
    });
    connect(card_, &FoodCard::compareToggled, this, [this] {
        if (card_->food()) browser_->toggleCompared(card_->food()->row);
    });
    connect(card_, &FoodCard::adjustAsked, this, &PantryScreen::copyOrChange);
    connect(card_, &FoodCard::correctAsked, this, &PantryScreen::correctLabel);
    connect(card_, &FoodCard::recipeAsked, this, &PantryScreen::recipeAsked);
    connect(sideBySide_, &FoodsSideBySide::left, this, &PantryScreen::backToCard);
    connect(&kitchen_, &KitchenSession::tablesChanged, this, &PantryScreen::sayCounts);
    connect(&kitchen_.ownFoods(), &OwnFoods::changed, this, &PantryScreen::sayCounts);
    connect(&kitchen_.ownFoods(), &OwnFoods::changed, this, &PantryScreen::resumeLabel);
}

std::vector<Pane*> PantryScreen::panes() const {
    return {browser_, middle_, labelPane_};
}

void PantryScreen::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (event->spontaneous()) return;
    kitchen_.ownFoods().load();
    if (!labelPane_->isHidden())
        labelForm_->enter();
    else if (stack_->currentWidget() != formPage_)
        browser_->focusField();
}

void PantryScreen::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void PantryScreen::find() {
    browser_->focusField();
}

void PantryScreen::sayCounts() {
    std::size_t labels = 0, own = 0;
    for (const OwnFoodRecord& record : kitchen_.ownFoods().all())
        if (record.inUse()) ++(record.current.food.label ? labels : own);
    header_->setSubject(pantryCounts(countsOf(kitchen_.tables()), labels, own));
}

void PantryScreen::showFood(const TableRow& row) {
    card_->show(row);
    card_->setCompared(std::ranges::find(browser_->compared(), row) != browser_->compared().end());
    const QWidget* const focus = QApplication::focusWidget();
    if (middle_->isHidden() && (focus == nullptr || !labelPane_->isAncestorOf(focus)))
        hideLabelPane();
    if (stack_->currentWidget() != formPage_ || !form_->isChanged()) {
        stack_->setCurrentWidget(cardPage_);
        static_cast<QScrollArea*>(cardPage_)->verticalScrollBar()->setValue(0);
    }
}

void PantryScreen::compare() {
    std::vector<TableFood> foods;
    for (const TableRow& row : browser_->compared())
        if (auto food = kitchen_.food(row)) foods.push_back(std::move(*food));
    if (foods.size() < 2) return;
    sideBySide_->show(std::move(foods));
    stack_->setCurrentWidget(comparePage_);
}

void PantryScreen::copyOrChange() {
    if (!card_->food()) return;
    const TableRow& row = card_->food()->row;
    const OwnFoodRecord* const record =
        isOwn(row) ? kitchen_.ownFoods().record(row.number) : nullptr;
    if (record != nullptr && record->current.food.label)
        return beginLabel(record->current, LabelStart::NewPack);
    beginForm(record != nullptr ? record->current : copyOf(*card_->food()));
}

void PantryScreen::correctLabel() {
    if (!card_->food()) return;
    const OwnFoodRecord* const record = kitchen_.ownFoods().record(card_->food()->row.number);
    if (record != nullptr && record->current.food.label)
        beginLabel(record->current, LabelStart::Correction);
}

void PantryScreen::makeNew() {
    OwnFood nothing;
    nothing.food.row.table = kOwnTable;
    beginForm(nothing);
}

OwnFoodForm& PantryScreen::form() {
    if (form_ != nullptr) return *form_;
    form_ = new OwnFoodForm{kitchen_};
    formPage_ = pageOf(form_);
    stack_->addWidget(formPage_);
    connect(form_, &OwnFoodForm::saved, this, &PantryScreen::formDone);
    connect(form_, &OwnFoodForm::left, this, &PantryScreen::backToCard);
    return *form_;
}

void PantryScreen::beginForm(const OwnFood& before) {
    OwnFoodForm& shown = form();
    stack_->setCurrentWidget(formPage_);
    if (shown.isChanged()) return shown.leave();
    shown.begin(before);
}

void PantryScreen::formDone(const TableRow& row) {
    card_->show(row);
    browser_->select(row);
    stack_->setCurrentWidget(cardPage_);
}

LabelForm& PantryScreen::labelForm() {
    if (labelForm_ != nullptr) return *labelForm_;
    labelForm_ = new LabelForm{kitchen_};
    auto* column = new QVBoxLayout{labelPane_};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(labelForm_);
    connect(labelForm_, &LabelForm::saved, this, &PantryScreen::labelDone);
    connect(labelForm_, &LabelForm::left, this, &PantryScreen::leaveLabel);
    connect(labelForm_, &LabelForm::photoAsked, this, &PantryScreen::photoAsked);
    return *labelForm_;
}

void PantryScreen::takePhoto(const QString& path) {
    labelForm().takePhoto(path);
}

void PantryScreen::newLabel() {
    if (labelForm_ != nullptr && labelPane_->isHidden() && labelForm_->isChanged()) {
        showLabelPane();
        return labelForm_->enter();
    }
    OwnFood nothing;
    nothing.food.row.table = kOwnTable;
    beginLabel(nothing, LabelStart::NewPack);
}

// A label that is not saved yet comes before another one.
void PantryScreen::beginLabel(const OwnFood& before, LabelStart start) {
    const bool fresh = labelForm_ == nullptr;
    LabelForm& shown = labelForm();
    showLabelPane();
    if (fresh || !shown.isChanged()) return shown.begin(before, start);
    shown.sayUnfinished();
}

void PantryScreen::showLabelPane() {
    labelPane_->show();
    arrange();
}

// Once the own foods are known, since it may be a pack of one of them.
void PantryScreen::resumeLabel() {
    if (resumed_) return;
    resumed_ = true;
    if (!kitchen_.writable() || kitchen_.path().isEmpty() || !unfinishedLabel(kitchen_.path()))
        return;
    if (!labelForm().isChanged()) labelForm().resume();
    arrange();
}

void PantryScreen::labelDone(const TableRow& row) {
    leaveLabel();
    formDone(row);
    if (row.release != "1") card_->lookForMoved(row);
}

void PantryScreen::hideLabelPane() {
    labelPane_->hide();
    arrange();
}

void PantryScreen::leaveLabel() {
    hideLabelPane();
    browser_->focusField();
}

void PantryScreen::arrange() {
    const bool labels = !labelPane_->isHidden();
    const int room = width() - kBrowserWidth;
    const bool beside = room >= kLeastMiddle + kLeastLabel;
    middle_->setVisible(!labels || beside);
    const int wanted = beside ? std::min(kMostLabel, room - kLeastMiddle) : 1;
    row_->setStretchFactor(middle_, beside ? room - wanted : 1);
    row_->setStretchFactor(labelPane_, wanted);
    const bool goesOn = !labels && labelForm_ != nullptr && labelForm_->isChanged();
    newLabel_->setText(goesOn ? tr("Go on with the label") : tr("New label"));
}

void PantryScreen::backToCard() {
    stack_->setCurrentWidget(card_->food() ? cardPage_ : empty_);
}

}  // namespace nettare
