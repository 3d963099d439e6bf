#include "app/pantry/pantry_screen.h"

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
      sideBySide_{new FoodsSideBySide} {
    buildHeader();
    browser_->setFixedWidth(kBrowserWidth);
    auto* row = new QHBoxLayout;
    row->setSpacing(0);
    row->addWidget(browser_);
    row->addWidget(buildMiddle(), 1);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(header_);
    column->addLayout(row, 1);
    connectParts();
    sayCounts();
}

void PantryScreen::buildHeader() {
    auto* make = new QPushButton{tr("New own food")};
    make->setObjectName(QStringLiteral("newOwnFood"));
    auto* bring = new QPushButton{tr("Bring in a table…")};
    bring->setObjectName(QStringLiteral("bringInTable"));
    header_->addAction(make);
    header_->addAction(bring);
    make->setEnabled(kitchen_.writable());
    connect(&kitchen_, &KitchenSession::kitchenMoved, make,
            [this, make] { make->setEnabled(kitchen_.writable()); });
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
    connect(card_, &FoodCard::recipeAsked, this, &PantryScreen::recipeAsked);
    connect(sideBySide_, &FoodsSideBySide::left, this, &PantryScreen::backToCard);
    connect(&kitchen_, &KitchenSession::tablesChanged, this, &PantryScreen::sayCounts);
    connect(&kitchen_.ownFoods(), &OwnFoods::changed, this, &PantryScreen::sayCounts);
}

std::vector<Pane*> PantryScreen::panes() const {
    return {browser_, middle_};
}

void PantryScreen::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (event->spontaneous()) return;
    kitchen_.ownFoods().load();
    if (stack_->currentWidget() != formPage_) browser_->focusField();
}

void PantryScreen::find() {
    browser_->focusField();
}

void PantryScreen::sayCounts() {
    const auto own = std::ranges::count_if(kitchen_.ownFoods().all(), &OwnFoodRecord::inUse);
    header_->setSubject(pantryCounts(countsOf(kitchen_.tables()), static_cast<std::size_t>(own)));
}

void PantryScreen::showFood(const TableRow& row) {
    card_->show(row);
    card_->setCompared(std::ranges::find(browser_->compared(), row) != browser_->compared().end());
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
    beginForm(record != nullptr ? record->current : copyOf(*card_->food()));
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

void PantryScreen::backToCard() {
    stack_->setCurrentWidget(card_->food() ? cardPage_ : empty_);
}

}  // namespace nettare
