#include "app/pantry/label_rest_fields.h"

#include <QGridLayout>
#include <QLabel>

#include <algorithm>
#include <array>

#include "app/pantry/entry_words.h"
#include "app/pantry/label_pack_fields.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

constexpr int kRestNumber = 128;
constexpr std::array<AddedSugarKind, 4> kLabelSugars{
    AddedSugarKind::BetweenNoneAndAll, AddedSugarKind::None, AddedSugarKind::AllOfItsSugars,
    AddedSugarKind::Stated};

QLabel* restLabel(const QString& text) {
    auto* label = new QLabel{text};
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setProperty("tone", QStringLiteral("secondary"));
    label->setFixedWidth(LabelPackFields::kWordsPx);
    return label;
}

}  // namespace

LabelRestFields::LabelRestFields(QWidget* parent)
    : QWidget{parent},
      addedKind_{new QComboBox},
      addedAmount_{addField("labelAdded", tr("Added sugars, g per 100 g"), kRestNumber)},
      addedReason_{addField("labelAddedReason", tr("Why, for added sugars"))},
      spread_{addField("labelSpread", tr("Declaration spread, percent"))},
      date_{addField("labelDate", tr("Day the package was read"), kRestNumber)},
      note_{addField("labelNote", tr("Note on the package"))},
      plant_{new QCheckBox{tr("Plant food, not hydrogenated")}} {
    build();
    connect(addedKind_, &QComboBox::currentIndexChanged, this, [this] {
        follow();
        emit edited();
    });
    connect(plant_, &QCheckBox::toggled, this, &LabelRestFields::edited);
}

QLineEdit* LabelRestFields::addField(const char* name, const QString& spoken, int width) {
    auto* made = new QLineEdit;
    made->setObjectName(QLatin1String{name});
    made->setAccessibleName(spoken);
    if (width > 0) made->setFixedWidth(width);
    connect(made, &QLineEdit::textEdited, this, &LabelRestFields::edited);
    return made;
}

void LabelRestFields::build() {
    addedKind_->setObjectName(QStringLiteral("labelAddedKind"));
    addedKind_->setAccessibleName(tr("Added sugars"));
    for (const AddedSugarKind kind : kLabelSugars)
        addedKind_->addItem(kind == AddedSugarKind::BetweenNoneAndAll
                                ? tr("cannot be told, none to all")
                                : addedSugarsName(kind));
    addedReason_->setPlaceholderText(tr("why, such as: no sugar in the list"));
    plant_->setObjectName(QStringLiteral("labelPlant"));
    plant_->setToolTip(tr("Trans fat that is not printed is then zero by kind"));
    for (QLineEdit* number : {addedAmount_, spread_}) number->setAlignment(Qt::AlignRight);
    spread_->setPlaceholderText(tr("rounding only"));
    date_->setPlaceholderText(QStringLiteral("2026-05-16"));
    auto* grid = new QGridLayout{this};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(kSpace3Px);
    grid->setVerticalSpacing(kSpace1Px);
    grid->setColumnStretch(1, 1);
    auto* percent = new QLabel{QStringLiteral("%")};
    percent->setProperty("tone", QStringLiteral("secondary"));
    auto* spread = new QHBoxLayout;
    spread->setSpacing(kSpace2Px);
    spread->addWidget(spread_, 1);
    spread->addWidget(percent);
    grid->addWidget(restLabel(tr("Added sugars")), 0, 0);
    grid->addWidget(addedKind_, 0, 1);
    grid->addWidget(addedAmount_, 1, 1);
    grid->addWidget(addedReason_, 2, 1);
    grid->addWidget(plant_, 3, 1);
    grid->addWidget(restLabel(tr("Declaration spread, ±")), 4, 0);
    grid->addLayout(spread, 4, 1);
    grid->addWidget(restLabel(tr("Read on")), 5, 0);
    grid->addWidget(date_, 5, 1);
    grid->addWidget(restLabel(tr("Note")), 6, 0);
    grid->addWidget(note_, 6, 1);
    follow();
}

void LabelRestFields::show(const LabelTyped& typed) {
    const auto kind = std::ranges::find(kLabelSugars, typed.addedSugars);
    addedKind_->setCurrentIndex(static_cast<int>(kind - kLabelSugars.begin()));
    addedAmount_->setText(QString::fromStdString(typed.addedSugarsPer100g));
    addedReason_->setText(QString::fromStdString(typed.addedSugarsReason));
    plant_->setChecked(typed.plant);
    spread_->setText(QString::fromStdString(typed.declarationSpreadPercent));
    date_->setText(QString::fromStdString(typed.date));
    note_->setText(QString::fromStdString(typed.note));
    follow();
}

void LabelRestFields::readInto(LabelTyped& typed) const {
    typed.addedSugars =
        kLabelSugars.at(static_cast<std::size_t>(std::max(0, addedKind_->currentIndex())));
    typed.addedSugarsPer100g = addedAmount_->text().toStdString();
    typed.addedSugarsReason = addedReason_->text().toStdString();
    typed.plant = plant_->isChecked();
    typed.declarationSpreadPercent = spread_->text().toStdString();
    typed.date = date_->text().toStdString();
    typed.note = note_->text().toStdString();
}

void LabelRestFields::setSugarsPrinted(bool printed) {
    if (printed == printed_) return;
    printed_ = printed;
    addedKind_->setItemText(0, printed ? tr("as printed") : tr("cannot be told, none to all"));
    follow();
}

void LabelRestFields::follow() {
    const int at = addedKind_->currentIndex();
    addedAmount_->setVisible(at == 3);
    addedReason_->setVisible(at > 0 || !addedReason_->text().isEmpty());
}

QLineEdit* LabelRestFields::field(const QString& list, const QString& member) const {
    if (list == QStringLiteral("added_sugars"))
        return member == QStringLiteral("reason") ? addedReason_ : addedAmount_;
    if (list == QStringLiteral("date") || member == QStringLiteral("date")) return date_;
    if (list == QStringLiteral("note")) return note_;
    return member == QStringLiteral("declaration_spread") ? spread_ : nullptr;
}

}  // namespace nettare
