#include "app/pantry/food_browser.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollBar>
#include <QStackedLayout>
#include <QVBoxLayout>

#include <algorithm>
#include <memory>

#include "app/pantry/browse_rows.h"
#include "app/pantry/food_list_delegate.h"
#include "app/pantry/food_words.h"
#include "app/session/kitchen_session.h"
#include "app/sheet/field_undo.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/empty_state.h"

namespace nettare {

namespace {

constexpr std::size_t kMostBrowsed = 100;
constexpr std::size_t kPage = 100;
constexpr int kScrollBarPx = 12;  ///< as the style sheet has it

QLabel* smallLabel(const QString& text = {}) {
    auto* label = new QLabel{text};
    label->setFont(typeFont(TypeSize::Header));
    label->setProperty("tone", QStringLiteral("secondary"));
    label->setTextFormat(Qt::PlainText);
    return label;
}

}  // namespace

FoodBrowser::FoodBrowser(KitchenSession& kitchen, QWidget* parent)
    : Pane{tr("Foods"), Role::Paper, parent},
      kitchen_{kitchen},
      field_{new QLineEdit},
      slip_{smallLabel()},
      place_{new QWidget},
      back_{new QPushButton{tr("All groups")}},
      placeName_{new QLabel},
      model_{new FoodListModel{this}},
      list_{new QListView},
      empty_{new EmptyState},
      foot_{new QWidget},
      chosen_{new QLabel},
      compare_{new QPushButton{tr("Compare")}},
      clear_{new QPushButton{tr("Choose none")}} {
    setHairlines(Qt::RightEdge);
    build();
    connect(field_, &QLineEdit::textChanged, this, &FoodBrowser::follow);
    connect(back_, &QPushButton::clicked, this, &FoodBrowser::leaveGroup);
    connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &FoodBrowser::choose);
    connect(list_, &QListView::activated, this, &FoodBrowser::open);
    connect(list_, &QListView::clicked, this, &FoodBrowser::open);
    connect(compare_, &QPushButton::clicked, this, &FoodBrowser::compareAsked);
    connect(clear_, &QPushButton::clicked, this, &FoodBrowser::clearCompared);
    connect(empty_, &EmptyState::actionChosen, field_, &QLineEdit::clear);
    connect(&kitchen_.ownFoods(), &OwnFoods::changed, this, &FoodBrowser::follow);
    const auto askGroups = [this] {
        kitchen_.askGroups(this, [this](std::vector<FoodGroup> groups) {
            groups_ = std::move(groups);
            follow();
        });
    };
    connect(&kitchen_, &KitchenSession::tablesChanged, this, askGroups);
    askGroups();
    follow();
}

void FoodBrowser::build() {
    field_->setObjectName(QStringLiteral("foodSearch"));
    field_->setAccessibleName(tr("Find a food"));
    field_->setPlaceholderText(tr("Find a food…"));
    field_->installEventFilter(this);
    list_->setObjectName(QStringLiteral("foods"));
    list_->setAccessibleName(tr("Foods found"));
    list_->setModel(model_);
    list_->setItemDelegate(new FoodListDelegate{list_});
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    list_->setMouseTracking(true);
    list_->setFrameShape(QFrame::NoFrame);
    list_->installEventFilter(this);
    setEntry(field_);
    auto* found = new QWidget;
    auto* rows = new QVBoxLayout{found};
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    rows->addWidget(buildHead());
    rows->addWidget(list_, 1);
    auto* body = new QWidget;
    stack_ = new QStackedLayout{body};
    stack_->addWidget(found);
    stack_->addWidget(empty_);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(kSpace4Px, kSpace4Px, kSpace4Px, kSpace3Px);
    column->setSpacing(kSpace2Px);
    slip_->setWordWrap(true);
    slip_->setObjectName(QStringLiteral("forgivenSlip"));
    column->addWidget(field_);
    column->addWidget(slip_);
    column->addWidget(place_);
    column->addWidget(body, 1);
    column->addWidget(buildFoot());
    slip_->hide();
    place_->hide();
}

// The words above the list stand over the columns that the rows are painted in.
QWidget* FoodBrowser::buildHead() {
    back_->setObjectName(QStringLiteral("allGroups"));
    placeName_->setFont(typeFont(TypeSize::Body, Weight::Semibold));
    placeName_->setTextFormat(Qt::PlainText);
    placeName_->setWordWrap(true);
    auto* place = new QHBoxLayout{place_};
    place->setContentsMargins(0, 0, 0, 0);
    place->addWidget(placeName_, 1);
    place->addWidget(back_);

    auto* head = new QWidget;
    auto* row = new QHBoxLayout{head};
    row->setSpacing(0);
    const auto alongside = [row](int /*lowest*/, int highest) {
        row->setContentsMargins(kSpace3Px, 0, kSpace3Px + (highest > 0 ? kScrollBarPx : 0),
                                kSpace1Px);
    };
    alongside(0, 0);
    connect(list_->verticalScrollBar(), &QScrollBar::rangeChanged, head, alongside);
    auto* energy = smallLabel(FoodListModel::tr("kcal/100 g"));
    auto* known = smallLabel(FoodListModel::tr("Known"));
    for (QLabel* label : {energy, known}) label->setAlignment(Qt::AlignRight);
    energy->setFixedWidth(FoodListDelegate::energyWidthPx());
    known->setFixedWidth(FoodListDelegate::knownWidthPx());
    row->addWidget(smallLabel(tr("Food and where it is from")), 1);
    row->addWidget(energy);
    row->addWidget(known);
    return head;
}

QWidget* FoodBrowser::buildFoot() {
    compare_->setObjectName(QStringLiteral("compareFoods"));
    clear_->setObjectName(QStringLiteral("clearCompared"));
    clear_->setProperty("quiet", true);
    chosen_->setTextFormat(Qt::PlainText);
    chosen_->setWordWrap(true);
    auto* row = new QHBoxLayout{foot_};
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(chosen_, 1);
    row->addWidget(clear_);
    row->addWidget(compare_);
    foot_->hide();
    return foot_;
}

void FoodBrowser::focusField() {
    field_->setFocus(Qt::ShortcutFocusReason);
    field_->selectAll();
}

void FoodBrowser::follow() {
    if (!field_->text().trimmed().isEmpty())
        search();
    else if (group_)
        browseGroup(*group_);
    else
        browse();
}

void FoodBrowser::search() {
    place_->hide();
    FoodSearch found = kitchen_.searchFoods(field_->text(), kMostBrowsed);
    const QString slip = slipText(found.slips);
    slip_->setText(slip);
    slip_->setVisible(!slip.isEmpty());
    std::vector<FoodListRow> rows;
    for (FoodHit& hit : found.hits) rows.push_back(foodRow(std::move(hit)));
    if (rows.empty())
        empty_->show(tr("No food holds all these words"),
                     tr("Write fewer of them or only how they begin, bring in another table, or "
                        "make a food of your own."),
                     tr("Show all foods"));
    fill(std::move(rows));
}

void FoodBrowser::browse() {
    slip_->hide();
    place_->hide();
    auto rows = browseRows(kitchen_.ownFoods(), kitchen_.tables(), groups_);
    if (rows.empty())
        empty_->show(tr("There is no food here yet"),
                     tr("No table of foods could be opened. Bring in a table, or make a food of "
                        "your own."));
    fill(std::move(rows));
}

void FoodBrowser::browseGroup(const FoodGroup& group) {
    slip_->hide();
    placeName_->setText(
        tr("%1 · %2 foods").arg(QString::fromStdString(group.name), groupedCount(group.foods)));
    place_->show();
    auto page = std::make_shared<GroupPage>();
    const auto next = [this, group, page]() -> std::vector<FoodListRow> {
        std::vector<FoodListRow> rows;
        const FoodTables* const tables = kitchen_.tables();
        if (page->last || tables == nullptr) return rows;
        if (auto more = tables->page(group, page->next, kPage))
            *page = std::move(*more);
        else
            page->last = true;
        for (FoodHit& hit : page->hits) rows.push_back(foodRow(std::move(hit)));
        page->hits.clear();
        return rows;
    };
    auto rows = next();
    fill(std::move(rows), next);
}

void FoodBrowser::leaveGroup() {
    group_.reset();
    follow();
    list_->setFocus(Qt::TabFocusReason);
    list_->setCurrentIndex(model_->first());
}

void FoodBrowser::fill(std::vector<FoodListRow> rows, FoodListModel::NextPage next) {
    stack_->setCurrentIndex(rows.empty() ? 1 : 0);
    const QSignalBlocker quiet{list_->selectionModel()};
    std::set<std::string> labelled;
    for (const OwnFoodRecord& own : kitchen_.ownFoods().all())
        if (own.current.food.label) labelled.insert(own.id());
    model_->setLabelled(std::move(labelled));
    model_->show(std::move(rows), usesAsListed(kitchen_.ownFoods()), std::move(next));
    if (!field_->text().trimmed().isEmpty() && field_->hasFocus()) {
        list_->setCurrentIndex(model_->first());
        list_->scrollToTop();
        choose(list_->currentIndex());
    } else if (selected_) {
        list_->setCurrentIndex(model_->indexOfFood(*selected_));
    }
}

void FoodBrowser::choose(const QModelIndex& index) {
    const FoodListRow* const row = model_->row(index);
    if (row == nullptr || row->kind != FoodListRow::Kind::Food) return;
    selected_ = row->hit.row;
    emit foodChosen(*selected_);
}

void FoodBrowser::open(const QModelIndex& index) {
    const FoodListRow* const row = model_->row(index);
    if (row == nullptr) return;
    if (row->kind == FoodListRow::Kind::Food) return choose(index);
    group_ = row->group;
    follow();
    list_->scrollToTop();
    list_->setFocus(Qt::TabFocusReason);
    list_->setCurrentIndex(model_->first());
}

void FoodBrowser::select(const TableRow& row) {
    selected_ = row;
    const QSignalBlocker quiet{list_->selectionModel()};
    list_->setCurrentIndex(model_->indexOfFood(row));
    list_->viewport()->update();
}

void FoodBrowser::toggleCompared(const TableRow& row) {
    const auto found = std::ranges::find(compared_, row);
    if (found != compared_.end())
        compared_.erase(found);
    else if (compared_.size() < kMostCompared)
        compared_.push_back(row);
    sayCompared();
}

void FoodBrowser::clearCompared() {
    compared_.clear();
    sayCompared();
}

void FoodBrowser::sayCompared() {
    std::set<std::string> marked;
    for (const TableRow& row : compared_) marked.insert(row.text());
    model_->setMarked(std::move(marked));
    const auto count = static_cast<int>(compared_.size());
    const bool full = compared_.size() == kMostCompared;
    chosen_->setText(full         ? tr("4 foods chosen, the most there is room for")
                     : count == 1 ? tr("1 food chosen to compare")
                                  : tr("%n foods chosen to compare", nullptr, count));
    compare_->setEnabled(count >= 2);
    foot_->setVisible(count > 0);
    emit comparedChanged();
}

bool FoodBrowser::keyInField(int key) {
    const bool intoList = key == Qt::Key_Down || key == Qt::Key_Return || key == Qt::Key_Enter;
    if (intoList && stack_->currentIndex() == 0) {
        list_->setFocus(Qt::TabFocusReason);
        if (!list_->currentIndex().isValid()) list_->setCurrentIndex(model_->first());
        return true;
    }
    if (key != Qt::Key_Escape) return false;
    if (!field_->text().isEmpty()) {
        field_->clear();
        return true;
    }
    if (group_) leaveGroup();
    return group_.has_value();
}

bool FoodBrowser::keyInList(int key) {
    const FoodListRow* const row = model_->row(list_->currentIndex());
    if (key == Qt::Key_Space && row != nullptr && row->kind == FoodListRow::Kind::Food) {
        toggleCompared(row->hit.row);
        return true;
    }
    const bool leaves = key == Qt::Key_Escape || key == Qt::Key_Backspace || key == Qt::Key_Left;
    if (leaves && group_ && field_->text().trimmed().isEmpty()) {
        leaveGroup();
        return true;
    }
    if (key == Qt::Key_Right && row != nullptr && row->kind == FoodListRow::Kind::Group) {
        open(list_->currentIndex());
        return true;
    }
    if (key == Qt::Key_Up && list_->currentIndex() == model_->first()) {
        focusField();
        return true;
    }
    return false;
}

bool FoodBrowser::eventFilter(QObject* object, QEvent* event) {
    if (object == field_ && isUndoOverride(*event)) {
        event->ignore();
        return true;
    }
    if (event->type() != QEvent::KeyPress) return Pane::eventFilter(object, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (object == field_ && keyInField(key)) return true;
    if (object == list_ && keyInList(key)) return true;
    return Pane::eventFilter(object, event);
}

}  // namespace nettare
