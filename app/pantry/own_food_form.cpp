#include "app/pantry/own_food_form.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/figures/figure_words.h"
#include "app/pantry/entry_words.h"
#include "app/pantry/food_words.h"
#include "app/pantry/measure_fields.h"
#include "app/session/kitchen_session.h"
#include "app/session/now.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"

namespace nettare {

namespace {

constexpr int kNumberField = 104;
constexpr int kFormNameColumn = 200;
constexpr std::array<AddedSugarKind, 4> kKinds{AddedSugarKind::BetweenNoneAndAll,
                                               AddedSugarKind::None, AddedSugarKind::AllOfItsSugars,
                                               AddedSugarKind::Stated};

QLabel* formLabel(const QString& text, bool section = false) {
    auto* label = new QLabel{text};
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    if (section)
        label->setFont(typeFont(TypeSize::Body, Weight::Bold));
    else
        label->setProperty("tone", QStringLiteral("secondary"));
    return label;
}

QString unitName(const ComponentFacts& facts) {
    return QString::fromUtf8(facts.unit.data(), static_cast<qsizetype>(facts.unit.size()));
}

QString tagOf(const ComponentFacts& facts) {
    return QString::fromLatin1(facts.tagname.data(), static_cast<qsizetype>(facts.tagname.size()));
}

bool sameEntry(const OwnFoodEntry& a, const OwnFoodEntry& b) {
    return a.name == b.name && a.refusePercent == b.refusePercent && a.per100g == b.per100g &&
           a.plant == b.plant && a.addedSugars == b.addedSugars &&
           a.addedSugarsPer100g == b.addedSugarsPer100g &&
           a.addedSugarsReason == b.addedSugarsReason && a.measures == b.measures &&
           a.source == b.source && a.date == b.date && a.note == b.note;
}

PerComponent<std::optional<double>> usualSpreadOf(const FoodTables* tables) {
    if (tables == nullptr || tables->tables().empty()) return {};
    return tables->tables().front().usualSpread().value_or(PerComponent<std::optional<double>>{});
}

}  // namespace

OwnFoodForm::OwnFoodForm(KitchenSession& kitchen, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      title_{new QLabel},
      from_{formLabel({})},
      name_{field(QStringLiteral("ownName"), tr("Name of the food"))},
      source_{field(QStringLiteral("ownSource"), tr("Where the values come from"))},
      date_{field(QStringLiteral("ownDate"), tr("Date of the source"), kNumberField)},
      note_{field(QStringLiteral("ownNote"), tr("Note on the food"))},
      refuse_{field(QStringLiteral("ownRefuse"), tr("Refuse, percent as purchased"), kNumberField)},
      plant_{new QCheckBox{tr("Plant food, not hydrogenated: trans fat is zero by kind")}},
      addedKind_{new QComboBox},
      addedAmount_{
          field(QStringLiteral("ownAddedSugars"), tr("Added sugars, g per 100 g"), kNumberField)},
      addedReason_{field(QStringLiteral("ownAddedReason"), tr("Why, for added sugars"))},
      measures_{new MeasureFields},
      refusal_{new QLabel},
      save_{new QPushButton},
      leave_{new QPushButton{tr("Leave")}},
      drop_{new QPushButton{tr("Drop what was typed")}} {
    build();
    connect(addedKind_, &QComboBox::currentIndexChanged, this, &OwnFoodForm::followSugars);
    connect(save_, &QPushButton::clicked, this, &OwnFoodForm::save);
    connect(leave_, &QPushButton::clicked, this, &OwnFoodForm::leave);
    connect(drop_, &QPushButton::clicked, this, [this] {
        begin(before_);
        emit left();
    });
    connect(&kitchen_.ownFoods(), &OwnFoods::failed, this, [this](const Error& error) {
        if (waiting_) refuse(error);
        waiting_ = false;
    });
}

QLineEdit* OwnFoodForm::field(const QString& name, const QString& spoken, int width) {
    auto* made = new QLineEdit;
    made->setObjectName(name);
    made->setAccessibleName(spoken);
    if (width > 0) {
        made->setFixedWidth(width);
        made->setAlignment(Qt::AlignRight);
    }
    return made;
}

void OwnFoodForm::build() {
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(kSpace6Px, kSpace4Px, kSpace6Px, kSpace6Px);
    column->setSpacing(kSpace3Px);
    buildHead(*column);
    buildComponents(*column);
    buildRest(*column);
    buildFoot(*column);
    column->addStretch(1);
}

void OwnFoodForm::buildHead(QVBoxLayout& column) {
    title_->setFont(typeFont(TypeSize::PaneTitle, Weight::Bold));
    title_->setTextFormat(Qt::PlainText);
    title_->setWordWrap(true);
    title_->setMinimumWidth(1);
    from_->setMinimumWidth(1);
    source_->setPlaceholderText(tr("such as a laboratory's report, a maker's sheet, a book"));
    date_->setPlaceholderText(QStringLiteral("2026-05-16"));
    auto* head = new QGridLayout;
    head->setHorizontalSpacing(kSpace3Px);
    head->setVerticalSpacing(kSpace1Px);
    head->addWidget(formLabel(tr("Name")), 0, 0);
    head->addWidget(name_, 0, 1);
    head->addWidget(formLabel(tr("Source")), 1, 0);
    auto* source = new QHBoxLayout;
    source->setSpacing(kSpace2Px);
    source->addWidget(source_, 1);
    source->addWidget(formLabel(tr("of")));
    source->addWidget(date_);
    head->addLayout(source, 1, 1);
    head->addWidget(formLabel(tr("Note")), 2, 0);
    head->addWidget(note_, 2, 1);
    column.addWidget(title_);
    column.addWidget(from_);
    column.addLayout(head);
}

void OwnFoodForm::buildComponents(QVBoxLayout& column) {
    column.addWidget(formLabel(tr("Per 100 g edible portion"), true));
    column.addWidget(formLabel(
        tr("An empty field means no data, which never counts as zero. Where one of the two "
           "energies is changed, the other is converted from it.")));
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(kSpace2Px);
    grid->setVerticalSpacing(kSpace1Px);
    grid->setColumnStretch(3, 1);
    grid->setColumnMinimumWidth(0, kFormNameColumn);
    int row = 0;
    for (const ComponentFacts& facts : allComponents()) {
        if (facts.component == Component::SUGAD) continue;
        const std::size_t at = indexOf(facts.component);
        const QString name = componentName(facts.component);
        components_[at] = field(QStringLiteral("own_") + tagOf(facts),
                                tr("%1, %2 per 100 g").arg(name, unitName(facts)), kNumberField);
        was_[at] = formLabel({});
        was_[at]->setMinimumWidth(kNumberField);
        auto* label = new QLabel{name};
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
        grid->addWidget(label, row, 0);
        grid->addWidget(components_[at], row, 1);
        grid->addWidget(formLabel(unitName(facts)), row, 2);
        grid->addWidget(was_[at], row++, 3);
        connect(components_[at], &QLineEdit::textChanged, this, [this, at](const QString& text) {
            const QString was = QString::fromStdString(begun_.per100g[at]);
            const bool changed = text.trimmed() != was && before_.origin.copiedFrom;
            was_[at]->setText(!changed        ? QString{}
                              : was.isEmpty() ? tr("was no data")
                                              : tr("was %1").arg(was));
        });
    }
    column.addLayout(grid);
}

void OwnFoodForm::buildRest(QVBoxLayout& column) {
    addedKind_->setObjectName(QStringLiteral("ownAddedKind"));
    addedKind_->setAccessibleName(tr("Added sugars"));
    plant_->setObjectName(QStringLiteral("ownPlant"));
    for (const AddedSugarKind kind : kKinds) addedKind_->addItem(addedSugarsName(kind));
    addedReason_->setPlaceholderText(tr("why, such as: plain single food"));
    auto* sugars = new QHBoxLayout;
    sugars->setSpacing(kSpace2Px);
    sugars->addWidget(addedKind_);
    sugars->addWidget(addedAmount_);
    sugars->addWidget(addedReason_, 1);
    column.addWidget(formLabel(tr("Added sugars"), true));
    column.addLayout(sugars);
    column.addWidget(formLabel(tr("Kitchen measures"), true));
    column.addWidget(measures_);
    auto* refuse = new QHBoxLayout;
    refuse->addWidget(formLabel(tr("Refuse, % of the weight as purchased")), 0);
    refuse->addWidget(refuse_);
    refuse->addStretch(1);
    column.addWidget(formLabel(tr("As purchased"), true));
    column.addLayout(refuse);
    column.addWidget(plant_);
}

void OwnFoodForm::buildFoot(QVBoxLayout& column) {
    refusal_->setObjectName(QStringLiteral("ownRefusal"));
    refusal_->setTextFormat(Qt::PlainText);
    refusal_->setWordWrap(true);
    refusal_->setProperty("tone", QStringLiteral("error"));
    refusal_->hide();
    save_->setObjectName(QStringLiteral("saveOwnFood"));
    save_->setProperty("primary", true);
    leave_->setObjectName(QStringLiteral("leaveOwnFood"));
    drop_->setObjectName(QStringLiteral("dropOwnFood"));
    auto* row = new QHBoxLayout;
    row->setSpacing(kSpace2Px);
    row->addWidget(save_);
    row->addWidget(leave_);
    row->addWidget(drop_);
    row->addStretch(1);
    column.addWidget(refusal_);
    column.addLayout(row);
}

void OwnFoodForm::begin(const OwnFood& before) {
    before_ = before;
    begun_ = entryOf(before);
    const bool known = !before.food.row.number.empty();
    if (begun_.date.empty()) begun_.date = today().toString(Qt::ISODate).toStdString();
    title_->setText(known ? tr("Change %1").arg(QString::fromStdString(before.food.name))
                          : tr("New own food"));
    from_->setText(before.origin.copiedFrom
                       ? tr("Copied from %1, %2 %3. What you leave stays as it is there.")
                             .arg(QString::fromStdString(before.origin.copiedName),
                                  sourceName(*before.origin.copiedFrom),
                                  QString::fromStdString(before.origin.copiedFrom->number))
                       : tr("Made from nothing: write what you know, with its source."));
    const auto put = [](QLineEdit* target, const std::string& text) {
        target->setText(QString::fromStdString(text));
    };
    put(name_, begun_.name);
    put(source_, begun_.source);
    put(date_, begun_.date);
    put(note_, begun_.note);
    put(refuse_, begun_.refusePercent);
    put(addedAmount_, begun_.addedSugarsPer100g);
    put(addedReason_, begun_.addedSugarsReason);
    for (std::size_t at = 0; at < kComponentCount; ++at)
        if (components_[at] != nullptr) put(components_[at], begun_.per100g[at]);
    plant_->setChecked(begun_.plant);
    const auto kind = std::ranges::find(kKinds, begun_.addedSugars);
    addedKind_->setCurrentIndex(static_cast<int>(kind - kKinds.begin()));
    measures_->show(begun_.measures);
    const int next = known ? std::stoi(before.food.row.release) + 1 : 1;
    const OwnFoodRecord* const record = kitchen_.ownFoods().record(before.food.row.number);
    save_->setText(tr("Save version %1").arg(record != nullptr ? record->versions + 1 : next));
    refusal_->hide();
    drop_->hide();
    followSugars();
    begun_ = entry();
    (name_->text().isEmpty() ? name_ : source_)->setFocus(Qt::TabFocusReason);
}

OwnFoodEntry OwnFoodForm::entry() const {
    OwnFoodEntry typed;
    typed.name = name_->text().toStdString();
    typed.source = source_->text().toStdString();
    typed.date = date_->text().toStdString();
    typed.note = note_->text().toStdString();
    typed.refusePercent = refuse_->text().toStdString();
    typed.plant = plant_->isChecked();
    // Added sugars are told below; a row that had a value keeps it.
    typed.per100g[indexOf(Component::SUGAD)] = entryOf(before_).per100g[indexOf(Component::SUGAD)];
    for (std::size_t at = 0; at < kComponentCount; ++at)
        if (components_[at] != nullptr) typed.per100g[at] = components_[at]->text().toStdString();
    typed.addedSugars = kKinds.at(static_cast<std::size_t>(addedKind_->currentIndex()));
    typed.addedSugarsPer100g = addedAmount_->text().toStdString();
    typed.addedSugarsReason = addedReason_->text().toStdString();
    typed.measures = measures_->entries();
    return typed;
}

bool OwnFoodForm::isChanged() const {
    return !sameEntry(entry(), begun_);
}

void OwnFoodForm::followSugars() {
    const auto at = static_cast<std::size_t>(std::max(0, addedKind_->currentIndex()));
    addedAmount_->setVisible(kKinds.at(at) == AddedSugarKind::Stated);
}

void OwnFoodForm::save() {
    if (waiting_) return;
    const auto own = ownFoodFrom(entry(), before_, usualSpreadOf(kitchen_.tables()));
    if (!own) return refuse(own.error());
    refusal_->hide();
    waiting_ = true;
    kitchen_.ownFoods().save(*own, this, [this](const TableRow& row) {
        waiting_ = false;
        begun_ = entry();
        drop_->hide();
        emit saved(row);
    });
}

// What was typed stays until it is saved or dropped.
void OwnFoodForm::leave() {
    if (!isChanged()) return emit left();
    refusal_->setText(tr("This is not saved yet: save it, or drop what was typed."));
    refusal_->show();
    drop_->show();
    drop_->setFocus(Qt::TabFocusReason);
}

QWidget* OwnFoodForm::fieldAt(const std::string& pointer) const {
    const QStringList steps = QString::fromStdString(pointer).split(u'/');
    const QString list = steps.value(1), member = steps.value(2);
    if (list == QStringLiteral("components"))
        return findChild<QLineEdit*>(QStringLiteral("own_") + member);
    if (list == QStringLiteral("measures"))
        return measures_->field(member.toUInt(), steps.value(3).toStdString());
    if (list == QStringLiteral("refuse_percent")) return refuse_;
    if (list == QStringLiteral("added_sugars"))
        return member == QStringLiteral("reason") ? addedReason_ : addedAmount_;
    if (list == QStringLiteral("name")) return name_;
    if (member == QStringLiteral("date")) return date_;
    return member == QStringLiteral("note") ? note_ : source_;
}

void OwnFoodForm::refuse(const Error& error) {
    refusal_->setText(entrySentence(error));
    refusal_->show();
    if (QWidget* const wrong = error.pointer.empty() ? nullptr : fieldAt(error.pointer))
        wrong->setFocus(Qt::OtherFocusReason);
}

}  // namespace nettare
