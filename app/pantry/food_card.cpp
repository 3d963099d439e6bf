#include "app/pantry/food_card.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

#include "app/pantry/cells_model.h"
#include "app/pantry/food_values.h"
#include "app/pantry/food_words.h"
#include "app/pantry/label_card.h"
#include "app/pantry/merge_bar.h"
#include "app/pantry/moved_list.h"
#include "app/pantry/whole_table.h"
#include "app/session/kitchen_session.h"
#include "app/sheet/flow_layout.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/message_line.h"
#include "core/publish/measure_text.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

QLabel* cardLabel(const char* tone) {
    auto* label = new QLabel;
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setMinimumWidth(1);  // a word without end makes no page wider
    label->setProperty("tone", QLatin1String{tone});
    return label;
}

QLabel* headLabel(const QString& text) {
    auto* label = cardLabel("secondary");
    label->setFont(typeFont(TypeSize::Header, Weight::Semibold));
    label->setText(text);
    return label;
}

/// "1 cup, sliced"
QString measureName(const HouseholdMeasure& measure) {
    const QString text = QString::fromStdString(measureText(measure));
    return text.left(text.lastIndexOf(QStringLiteral(" = ")));
}

CellsModel::Row measureRow(const HouseholdMeasure& measure, const QString& from) {
    Cell grams = numberCell(numberAsPrinted(measure.grams), QStringLiteral("g"));
    Cell spread;
    if (measure.standardDeviation) {
        spread = numberCell(numberAsPrinted(*measure.standardDeviation), QStringLiteral("g"));
        spread.ink = Role::Ink2;
    }
    QString how = from;
    if (measure.n == 1) how = FoodCard::tr("%1, 1 sample").arg(from);
    if (measure.n > 1) how = FoodCard::tr("%1, %2 samples").arg(from).arg(measure.n);
    return {textCell(measureName(measure)), grams, spread, wayCell(Mark::Table, how)};
}

/// What the cook weighed: the mean of a series, and the scatter of single pieces.
CellsModel::Row seriesRow(const FoodSeries& series) {
    const int decimals = series.grams.mean < 10 ? 2 : 1;
    const auto grams = [&](double value) {
        return numberCell(QString::fromStdString(numberAt(decimals, value)), QStringLiteral("g"));
    };
    Cell mean = grams(series.grams.mean);
    mean.strong = true;
    Cell scatter = grams(series.grams.spread);
    scatter.ink = Role::Ink2;
    const QString of = series.of.empty()
                           ? QString::fromStdString(series.name)
                           : FoodCard::tr("1 %1").arg(QString::fromStdString(series.of));
    return {textCell(of, QString::fromStdString(series.name)), mean, scatter,
            wayCell(Mark::Weighed, FoodCard::tr("your series, %1×, in %2")
                                       .arg(series.grams.readings)
                                       .arg(QString::fromStdString(series.recipe)))};
}

}  // namespace

FoodCard::FoodCard(KitchenSession& kitchen, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      name_{cardLabel("primary")},
      facts_{cardLabel("secondary")},
      origin_{cardLabel("secondary")},
      adjust_{new QPushButton},
      correct_{new QPushButton{tr("Correct…")}},
      compare_{new QPushButton},
      retire_{new QPushButton},
      merge_{new QPushButton{tr("Merge…")}},
      mergeBar_{new MergeBar{kitchen}},
      offer_{new MessageLine},
      moved_{new MovedList{kitchen}},
      label_{new LabelCard{kitchen}},
      values_{new CellsModel{
          {tr("Per 100 g edible portion"), tr("Value"), QStringLiteral("±"), tr("How known")},
          {1, 2},
          this}},
      measures_{new CellsModel{
          {tr("Measure"), tr("Weight"), tr("Scatter"), tr("How known")}, {1, 2}, this}},
      useRows_{new CellsModel{{tr("Recipe"), tr("Where")}, {}, this}},
      valueTable_{new WholeTable{3}},
      measureTable_{new WholeTable{3}},
      useTable_{new WholeTable{0}},
      measureHead_{headLabel(tr("Kitchen measures"))},
      useHead_{headLabel(tr("Used in"))} {
    build();
    setCompared(false);
    connect(adjust_, &QPushButton::clicked, this, &FoodCard::adjustAsked);
    connect(correct_, &QPushButton::clicked, this, &FoodCard::correctAsked);
    connect(compare_, &QPushButton::clicked, this, &FoodCard::compareToggled);
    connect(retire_, &QPushButton::clicked, this, [this] {
        const OwnFoodRecord* const record = own();
        if (record == nullptr) return;
        if (record->retired)
            kitchen_.ownFoods().takeBackIntoUse(record->id());
        else
            kitchen_.ownFoods().retire(record->id());
    });
    connect(merge_, &QPushButton::clicked, this, [this] {
        if (own() != nullptr) mergeBar_->ask(own()->id());
    });
    connect(mergeBar_, &MergeBar::merged, this, [this](const QString& stays) {
        if (const OwnFoodRecord* record = kitchen_.ownFoods().record(stays.toStdString()))
            show(record->current.food.row);
    });
    connect(moved_, &MovedList::recipeAsked, this, &FoodCard::recipeAsked);
    connect(offer_, &MessageLine::actionTriggered, this, &FoodCard::moveOn);
    connect(useTable_, &QTableView::activated, this,
            [this](const QModelIndex& index) { openUse(index.row()); });
    connect(&kitchen_.ownFoods(), &OwnFoods::changed, this, &FoodCard::refresh);
    connect(&kitchen_, &KitchenSession::tablesChanged, this, &FoodCard::refresh);
}

void FoodCard::build() {
    name_->setFont(typeFont(TypeSize::PaneTitle, Weight::Bold));
    name_->setObjectName(QStringLiteral("foodName"));
    facts_->setObjectName(QStringLiteral("foodFacts"));
    origin_->setObjectName(QStringLiteral("foodOrigin"));
    offer_->setObjectName(QStringLiteral("moveOffer"));
    valueTable_->setObjectName(QStringLiteral("foodValues"));
    valueTable_->setAccessibleName(tr("Values per 100 g edible portion"));
    valueTable_->setModel(values_);
    measureTable_->setObjectName(QStringLiteral("foodMeasures"));
    measureTable_->setAccessibleName(tr("Kitchen measures"));
    measureTable_->setModel(measures_);
    useTable_->setObjectName(QStringLiteral("foodUses"));
    useTable_->setAccessibleName(tr("Recipes that use it; Enter opens one"));
    useTable_->setModel(useRows_);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(kSpace6Px, kSpace4Px, kSpace6Px, kSpace6Px);
    column->setSpacing(kSpace2Px);
    for (QWidget* part : {static_cast<QWidget*>(name_), static_cast<QWidget*>(facts_),
                          static_cast<QWidget*>(origin_)})
        column->addWidget(part);
    column->addWidget(buildActions());
    column->addWidget(mergeBar_);
    column->addWidget(offer_);
    column->addWidget(moved_);
    column->addSpacing(kSpace2Px);
    column->addWidget(label_);
    column->addWidget(valueTable_);
    column->addSpacing(kSpace3Px);
    column->addWidget(measureHead_);
    column->addWidget(measureTable_);
    column->addSpacing(kSpace3Px);
    column->addWidget(useHead_);
    column->addWidget(useTable_);
    column->addStretch(1);
}

QWidget* FoodCard::buildActions() {
    adjust_->setObjectName(QStringLiteral("adjustFood"));
    correct_->setObjectName(QStringLiteral("correctLabel"));
    compare_->setObjectName(QStringLiteral("toggleCompared"));
    retire_->setObjectName(QStringLiteral("retireFood"));
    merge_->setObjectName(QStringLiteral("askMerge"));
    auto* actions = new QWidget;
    auto* row = new FlowLayout{kSpace2Px, kSpace2Px, actions};
    for (QPushButton* button : {adjust_, correct_, compare_, merge_, retire_})
        row->addWidget(button);
    return actions;
}

const OwnFoodRecord* FoodCard::own() const {
    if (!row_ || !isOwn(*row_)) return nullptr;
    return kitchen_.ownFoods().record(row_->number);
}

void FoodCard::show(const TableRow& row) {
    if (!row_ || row_->text() != row.text()) mergeBar_->hide();
    row_ = row;
    refresh();
    emit shown();
}

// An own food is shown in the version that counts, whichever was asked for.
void FoodCard::refresh() {
    if (!row_) return;
    const OwnFoodRecord* const record = own();
    if (record != nullptr) row_ = record->current.food.row;
    food_ = record != nullptr ? std::optional{record->current.food} : kitchen_.food(*row_);
    if (!food_) return;
    showHead();
    showValues();
    moved_->setFood(*food_, record != nullptr && record->versions > 1);
    if (lookFor_ && *lookFor_ == *row_) {
        lookFor_.reset();
        moved_->look();
    }
    showMeasures({});
    std::vector<TableRow> rows{*row_};
    if (record != nullptr)
        for (const std::string& id : kitchen_.ownFoods().idsOf(record->id()))
            if (id != record->id()) rows.push_back({row_->table, "1", id});
    kitchen_.ownFoods().askUses(rows, this, [this, asked = ++asked_](std::vector<FoodUse> uses) {
        if (asked == asked_) showUses(std::move(uses));
    });
}

void FoodCard::showHead() {
    const OwnFoodRecord* const record = own();
    name_->setText(QString::fromStdString(food_->name));
    facts_->setText(foodFacts(*food_, recipes_));
    facts_->setVisible(!facts_->text().isEmpty());
    const bool labelled = record != nullptr && food_->label;
    QString origin;
    if (labelled)
        origin = QString::fromStdString(record->current.origin.note);
    else if (record != nullptr)
        origin = originText(*record);
    if (record != nullptr && record->retired)
        origin = tr("Out of use: searches do not show it.\n%1").arg(origin);
    origin_->setText(origin);
    origin_->setVisible(!origin.isEmpty());
    adjust_->setText(labelled            ? tr("New pack…")
                     : record != nullptr ? tr("Change…")
                                         : tr("Copy and adjust…"));
    retire_->setText(record != nullptr && record->retired ? tr("Take into use again")
                                                          : tr("Out of use"));
    const bool writable = kitchen_.writable();
    adjust_->setEnabled(writable);
    correct_->setVisible(labelled && writable);
    retire_->setVisible(record != nullptr && writable);
    const auto others = std::ranges::count_if(kitchen_.ownFoods().all(), &OwnFoodRecord::inUse);
    merge_->setVisible(record != nullptr && writable && record->inUse() && others > 1);
}

void FoodCard::lookForMoved(const TableRow& row) {
    lookFor_ = row;
    if (row_ && *row_ == row) refresh();
}

void FoodCard::setCompared(bool compared) {
    compare_->setText(compared ? tr("Not to compare") : tr("Choose to compare"));
}

void FoodCard::showValues() {
    const OwnFoodRecord* const record = own();
    const FoodTables* const tables = kitchen_.tables();
    const std::optional<TableRow> published =
        record != nullptr ? record->current.origin.copiedFrom : food_->row;
    std::vector<FoodValue> values;
    if (tables != nullptr && published) values = tables->values(*published).value_or(values);
    const auto rows =
        record != nullptr ? valueRows(record->current, values) : valueRows(*food_, values);
    std::vector<CellsModel::Row> cells;
    for (const ValueRow& row : rows) {
        Cell how = textCell(row.how);
        how.ink = Role::Ink2;
        cells.push_back({textCell(row.name), row.value, row.spread, how});
    }
    values_->show(std::move(cells));
    valueTable_->fit();
    const bool labelled = record != nullptr && food_->label;
    label_->setVisible(labelled);
    valueTable_->setVisible(!labelled);
    if (labelled) label_->show(*record);
}

void FoodCard::showMeasures(const std::vector<FoodSeries>& series) {
    std::vector<CellsModel::Row> rows;
    rows.reserve(series.size());
    for (const FoodSeries& each : series) rows.push_back(seriesRow(each));
    const QString from = own() != nullptr ? tr("own food") : tr("table");
    for (const HouseholdMeasure& measure : food_->measures)
        rows.push_back(measureRow(measure, from));
    measureHead_->setText(rows.empty() ? tr("No kitchen measure is known")
                                       : tr("Kitchen measures"));
    measureHead_->setVisible(!rows.empty() || !food_->label);
    measureTable_->setVisible(!rows.empty());
    measures_->show(std::move(rows));
    measureTable_->fit();
}

void FoodCard::showUses(std::vector<FoodUse> uses) {
    uses_ = std::move(uses);
    recipes_ = static_cast<int>(uses_.size());
    std::vector<CellsModel::Row> rows;
    for (const FoodUse& use : uses_)
        rows.push_back({textCell(QString::fromStdString(use.title)), textCell(useText(use))});
    useHead_->setVisible(!rows.empty());
    useTable_->setVisible(!rows.empty());
    useRows_->show(std::move(rows));
    useTable_->fit();
    facts_->setText(foodFacts(*food_, recipes_));
    facts_->show();
    offerToMove();
    std::vector<std::string> drafts;
    for (const FoodUse& use : uses_)
        if (use.inDraft) drafts.push_back(use.recipe);
    if (drafts.empty()) return;
    kitchen_.askSeries(*row_, std::move(drafts), this,
                       [this, asked = asked_](const std::vector<FoodSeries>& series) {
                           if (asked == asked_) showMeasures(series);
                       });
}

// Drafts that use an earlier version, or a food that was merged into this one.
void FoodCard::offerToMove() {
    const OwnFoodRecord* const record = own();
    QStringList behind;
    for (const FoodUse& use : uses_)
        if (record != nullptr && record->inUse() && use.inDraft && use.draftRow != *row_)
            behind += QString::fromStdString(use.title);
    if (behind.isEmpty() || !kitchen_.writable()) return offer_->clear();
    const QString words =
        behind.size() == 1
            ? tr("One draft uses another version: %1. Kept revisions stay as they are.")
                  .arg(behind.front())
            : tr("%1 drafts use another version: %2. Kept revisions stay as they are.")
                  .arg(behind.size())
                  .arg(behind.join(QStringLiteral(", ")));
    offer_->say(MessageKind::Info, words,
                behind.size() == 1
                    ? tr("Move it to version %1").arg(QString::fromStdString(row_->release))
                    : tr("Move them to version %1").arg(QString::fromStdString(row_->release)));
}

void FoodCard::moveOn() {
    std::vector<std::string> recipes;
    for (const FoodUse& use : uses_)
        if (use.inDraft && use.draftRow != *row_) recipes.push_back(use.recipe);
    kitchen_.moveDrafts(recipes, kitchen_.ownFoods().idsOf(row_->number), *food_);
}

void FoodCard::openUse(int row) {
    if (row >= 0 && row < static_cast<int>(uses_.size()))
        emit recipeAsked(QString::fromStdString(uses_[static_cast<std::size_t>(row)].recipe));
}

}  // namespace nettare
