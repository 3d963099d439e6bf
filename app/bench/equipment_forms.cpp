#include "app/bench/equipment_forms.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/bench/bench_fields.h"
#include "app/theme/spacing.h"
#include "core/quantity/unit.h"

namespace nettare {

EquipmentForm::EquipmentForm(const QString& button, const char* name, QWidget* parent)
    : QFrame{parent},
      form_{new QVBoxLayout},
      refusal_{benchNote()},
      button_{benchButton(button, name)} {
    setObjectName(QLatin1String{name});
    form_->setSpacing(kSpace1Px);
    button_->setObjectName(QLatin1String{name} + QStringLiteral("Button"));
    button_->setProperty("primary", true);
    refusal_->setObjectName(QLatin1String{name} + QStringLiteral("Refusal"));
    refusal_->setProperty("tone", QStringLiteral("error"));
    refusal_->hide();
    auto* const column = new QVBoxLayout{this};
    column->setContentsMargins(0, kSpace2Px, 0, kSpace3Px);
    column->setSpacing(kSpace2Px);
    column->addLayout(form_);
    column->addWidget(refusal_);
    column->addWidget(button_, 0, Qt::AlignLeft);
    connect(button_, &QPushButton::clicked, this, &EquipmentForm::wanted);
}

void EquipmentForm::refuse(const QString& sentence) {
    refusal_->setText(sentence);
    refusal_->setVisible(!sentence.isEmpty());
}

void EquipmentForm::clear() {
    for (auto* field : findChildren<QLineEdit*>()) field->clear();
    refuse({});
}

QLineEdit* EquipmentForm::addField(const QString& label, const char* name, const QString& hint) {
    auto* const field = benchField(label, name);
    field->setPlaceholderText(hint);
    field->setMaxLength(200);
    addRow(label, field);
    connect(field, &QLineEdit::returnPressed, this, &EquipmentForm::wanted);
    return field;
}

void EquipmentForm::addRow(const QString& label, QWidget* field) {
    QLabel* const words = benchNote();
    words->setText(label);
    words->setBuddy(field);
    form_->addWidget(words);
    form_->addWidget(field);
}

NewScaleForm::NewScaleForm(QWidget* parent)
    : EquipmentForm{tr("Keep this scale"), "newScale", parent},
      name_{addField(tr("Name of the scale"), "newScaleName", tr("such as counter"))},
      readability_{nullptr},
      capacity_{nullptr},
      unit_{benchBox(tr("Unit that it shows"), "newScaleUnit")} {
    for (const char* const symbol : {"g", "kg", "oz", "lb"}) unit_->addItem(QLatin1String{symbol});
    addRow(tr("Unit that it shows"), unit_);
    readability_ = addField(tr("Readability: the least step that it shows"), "newScaleStep",
                            tr("such as 0.1"));
    capacity_ =
        addField(tr("The most that it takes (may stay empty)"), "newScaleMost", tr("such as 3000"));
}

TypedScale NewScaleForm::typed() const {
    return {name_->text(), unit_->currentText(), readability_->text(), capacity_->text()};
}

CheckForm::CheckForm(const KnownScale& scale, QWidget* parent)
    : EquipmentForm{tr("Record this check"), "checkScale", parent},
      mass_{addField(tr("Known mass, in %1").arg(QString::fromStdString(scale.unit)), "checkMass",
                     tr("such as 200"))},
      shown_{addField(tr("What the scale shows for it"), "checkShown")} {}

QString CheckForm::mass() const {
    return mass_->text();
}

QString CheckForm::shown() const {
    return shown_->text();
}

NewVesselForm::NewVesselForm(QWidget* parent)
    : EquipmentForm{tr("Keep this vessel"), "newVessel", parent},
      name_{addField(tr("Name of the vessel"), "newVesselName", tr("such as steel bowl"))},
      tare_{addField(tr("What the scale shows for it, empty"), "newVesselTare")} {}

QString NewVesselForm::name() const {
    return name_->text().simplified();
}

QString NewVesselForm::tare() const {
    return tare_->text();
}

}  // namespace nettare
