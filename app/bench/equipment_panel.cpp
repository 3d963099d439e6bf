#include "app/bench/equipment_panel.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

#include "app/bench/bench_desk.h"
#include "app/bench/bench_fields.h"
#include "app/bench/equipment_forms.h"
#include "app/bench/equipment_words.h"
#include "app/sheet/flow_layout.h"
#include "app/theme/spacing.h"
#include "app/widgets/scrolling.h"
#include "app/words/error_sentence.h"

namespace nettare {

namespace {

void emptyColumn(QVBoxLayout& column) {
    while (QLayoutItem* const item = column.takeAt(0)) {
        // A form of it may be what asks for this.
        if (item->widget() != nullptr) {
            item->widget()->hide();
            item->widget()->deleteLater();
        }
        delete item;
    }
}

QLabel* headingOf(const QString& text) {
    QLabel* const label = benchLabel(Weight::Bold);
    label->setText(text);
    return label;
}

QVBoxLayout* plainColumn() {
    auto* const column = new QVBoxLayout;
    column->setSpacing(kSpace3Px);
    return column;
}

}  // namespace

EquipmentPanel::EquipmentPanel(BenchDesk& desk, QWidget* parent)
    : QFrame{parent},
      desk_{desk},
      scales_{plainColumn()},
      vessels_{plainColumn()},
      noScale_{benchNote()},
      noVessel_{benchNote()},
      vesselScale_{benchNote()},
      trouble_{benchNote()},
      addScale_{benchButton(tr("Add a scale…"), "addScale")},
      newScale_{new NewScaleForm},
      newVessel_{new NewVesselForm} {
    setAccessibleName(tr("Scales and vessels"));
    setProperty("pane", QStringLiteral("raised"));
    trouble_->setObjectName(QStringLiteral("equipmentTrouble"));
    trouble_->setProperty("tone", QStringLiteral("error"));
    trouble_->hide();
    noScale_->setText(
        tr("No scale yet. Its name and readability stand beside every reading, so "
           "add it first: both are on its plate or in its papers."));
    noVessel_->setText(
        tr("No vessel yet. Put an empty one on the scale and keep it: its tare is "
           "then a touch away."));
    auto* const column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(scrolling(buildPage()));
    addScale_->setCheckable(true);
    connect(addScale_, &QPushButton::toggled, newScale_, &QWidget::setVisible);
    connect(newScale_, &EquipmentForm::wanted, this, &EquipmentPanel::keepScale);
    connect(newVessel_, &EquipmentForm::wanted, this, &EquipmentPanel::keepVessel);
    connect(&desk_, &BenchDesk::equipmentChanged, this, &EquipmentPanel::follow);
    connect(&desk_, &BenchDesk::failed, this, &EquipmentPanel::tell);
    follow();
}

QWidget* EquipmentPanel::buildPage() {
    auto* const page = new QWidget;
    auto* const both = new QHBoxLayout{page};
    both->setContentsMargins(kSpace4Px, kSpace4Px, kSpace4Px, kSpace4Px);
    both->setSpacing(kSpace6Px);
    const auto side = [both](const QString& heading) {
        auto* const column = new QVBoxLayout;
        column->setSpacing(kSpace3Px);
        column->addWidget(headingOf(heading));
        both->addLayout(column, 1);
        return column;
    };
    auto* const scales = side(tr("Scales"));
    scales->addWidget(trouble_);
    scales->addWidget(noScale_);
    scales->addLayout(scales_);
    scales->addWidget(addScale_, 0, Qt::AlignLeft);
    scales->addWidget(newScale_);
    scales->addStretch(1);
    auto* const vessels = side(tr("Vessels"));
    vessels->addWidget(noVessel_);
    vessels->addLayout(vessels_);
    vessels->addWidget(headingOf(tr("Another vessel")));
    vessels->addWidget(vesselScale_);
    vessels->addWidget(newVessel_);
    vessels->addStretch(1);
    return page;
}

void EquipmentPanel::follow() {
    trouble_->hide();
    // What was typed stays until it is in the ledger.
    if (std::exchange(keptScale_, false)) {
        newScale_->clear();
        addScale_->setChecked(false);
    }
    if (std::exchange(keptVessel_, false)) newVessel_->clear();
    showScales();
    showVessels();
    const KnownScale* const scale = desk_.scale();
    vesselScale_->setText(
        scale == nullptr
            ? tr("Add a scale first.")
            : tr("On “%1”, in %2; a name that is there already gets the new tare from now on.")
                  .arg(QString::fromStdString(scale->name), QString::fromStdString(scale->unit)));
    newVessel_->setEnabled(scale != nullptr);
}

void EquipmentPanel::showScales() {
    emptyColumn(*scales_);
    const auto& known = desk_.equipment().scales;
    for (const KnownScale& scale : known) scales_->addWidget(scaleRow(scale));
    noScale_->setVisible(known.empty());
    // The first one is asked for at once.
    addScale_->setVisible(!known.empty());
    newScale_->setVisible(known.empty() || addScale_->isChecked());
}

QWidget* EquipmentPanel::scaleRow(const KnownScale& scale) {
    auto* const row = new QWidget;
    auto* const column = new QVBoxLayout{row};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kSpace1Px);
    const QString name = QString::fromStdString(scale.name);
    const bool here = desk_.scale() != nullptr && desk_.scale()->name == scale.name;
    QLabel* const title = benchLabel(Weight::Semibold);
    title->setText(here ? tr("%1 · weighed on now").arg(name) : name);
    const auto say = [column](const QString& text, const char* tone) {
        if (text.isEmpty()) return;
        QLabel* const label = benchNote();
        label->setText(text);
        label->setProperty("tone", QLatin1String{tone});
        column->addWidget(label);
    };
    column->addWidget(title);
    say(scaleText(scale), "secondary");
    const bool failed = scale.lastCheck && !scale.lastCheck->good;
    say(checkText(scale), failed ? "error" : "secondary");
    say(failedCheckText(scale), "error");
    auto* const buttons = new FlowLayout{kSpace2Px, kSpace2Px};
    auto* const use = benchButton(tr("Weigh on it"), "weighOn");
    use->setAccessibleName(tr("Weigh on “%1”").arg(name));
    use->setEnabled(!here);
    auto* const check = benchButton(tr("Check with a known mass…"), "checkOpen");
    check->setAccessibleName(tr("Check “%1” with a known mass").arg(name));
    check->setCheckable(true);
    check->setChecked(checking_ == scale.name);
    buttons->addWidget(use);
    buttons->addWidget(check);
    column->addLayout(buttons);
    connect(use, &QPushButton::clicked, this, [this, name] { desk_.chooseScale(name); });
    connect(check, &QPushButton::clicked, this,
            [this, name = scale.name](bool open) { openCheck(name, open); });
    if (checking_ != scale.name) return row;
    auto* const form = new CheckForm{scale};
    column->addWidget(form);
    connect(form, &EquipmentForm::wanted, this,
            [this, form, name = scale.name] { recordCheck(*form, name); });
    return row;
}

void EquipmentPanel::showVessels() {
    emptyColumn(*vessels_);
    const auto& known = desk_.equipment().vessels;
    for (const KnownVessel& vessel : known) {
        QLabel* const title = benchLabel(Weight::Semibold);
        title->setText(QString::fromStdString(vessel.name));
        QLabel* const words = benchNote();
        words->setText(vesselText(vessel));
        vessels_->addWidget(title);
        vessels_->addWidget(words);
    }
    noVessel_->setVisible(known.empty());
}

void EquipmentPanel::openCheck(const std::string& name, bool open) {
    checking_ = open ? name : std::string{};
    follow();
    if (auto* const form = findChild<CheckForm*>(); open && form != nullptr)
        if (auto* const mass = form->findChild<QWidget*>(QStringLiteral("checkMass")))
            mass->setFocus(Qt::OtherFocusReason);
}

void EquipmentPanel::keepScale() {
    const auto read = readScale(newScale_->typed(), desk_.equipment());
    newScale_->refuse(read.refusal);
    if (!read.value) return;
    keptScale_ = true;
    desk_.keepScale(*read.value);
}

void EquipmentPanel::recordCheck(CheckForm& form, const std::string& name) {
    const auto& scales = desk_.equipment().scales;
    const auto scale = std::ranges::find(scales, name, &KnownScale::name);
    if (scale == scales.end()) return;
    const auto read = readCheck(form.mass(), form.shown(), *scale);
    form.refuse(read.refusal);
    if (!read.value) return;
    checking_.clear();
    desk_.checkScale(QString::fromStdString(name), read.value->mass, read.value->shown);
}

void EquipmentPanel::keepVessel() {
    const auto read = readTare(newVessel_->name(), newVessel_->tare(), desk_.scale());
    newVessel_->refuse(read.refusal);
    if (!read.value) return;
    keptVessel_ = true;
    desk_.keepVessel(newVessel_->name(), *read.value);
}

void EquipmentPanel::tell(const Error& error) {
    keptScale_ = keptVessel_ = false;
    trouble_->setText(QString::fromStdString(errorSentence(error)));
    trouble_->show();
}

void EquipmentPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape) return QFrame::keyPressEvent(event);
    if (checking_.empty())
        emit left();
    else
        openCheck({}, false);
}

}  // namespace nettare
