#include "app/sheet/yield_residue.h"

#include <QHBoxLayout>

#include "app/icons/icon_engine.h"
#include "app/theme/type.h"
#include "app/widgets/plain_tip.h"

namespace nettare {

namespace {

constexpr int kCrossPx = 24;
constexpr int kCrossIconPx = 14;

}  // namespace

YieldResidue::YieldResidue(QWidget* parent)
    : QWidget{parent}, label_{new QLabel}, weigh_{new QPushButton}, remove_{new QToolButton} {
    label_->setProperty("tone", QStringLiteral("secondary"));
    label_->setBuddy(weigh_);
    weigh_->setFont(figureFont(TypeSize::Body, Weight::Bold));
    weigh_->setProperty("quiet", true);
    weigh_->setStyleSheet(
        QStringLiteral("QPushButton { padding: 0 3px; min-height: 22px; border-width: 2px; }"));
    remove_->setIcon(iconOf(Sign::Close, Role::Ink2));
    remove_->setIconSize({kCrossIconPx, kCrossIconPx});
    remove_->setFocusPolicy(Qt::StrongFocus);
    remove_->setStyleSheet(
        QStringLiteral("QToolButton { padding: 0; min-height: 20px; border-width: 2px; }"));
    remove_->setFixedSize(kCrossPx, kCrossPx);
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(2);
    row->addWidget(label_);
    row->addWidget(weigh_);
    row->addWidget(remove_);
    connect(weigh_, &QPushButton::clicked, this, &YieldResidue::weighAsked);
    connect(remove_, &QToolButton::clicked, this, &YieldResidue::removeAsked);
    setLabel({});
}

void YieldResidue::setLabel(const QString& label) {
    label_->setText(label);
    label_->setVisible(!label.isEmpty());
}

void YieldResidue::setResidue(const std::optional<ShownResidue>& residue, bool editable) {
    residue_ = residue;
    const QString text = residue ? residue->text : tr("not weighed");
    weigh_->setText(QString{text}.replace(QLatin1Char{'&'}, QStringLiteral("&&")));
    weigh_->setAccessibleName(tr("Left over: %1, weigh it").arg(text));
    const QString foods = residue ? residue->foods : QString{};
    weigh_->setToolTip(plainTip(foods));
    weigh_->setAccessibleDescription(foods);
    weigh_->setEnabled(editable);
    remove_->setAccessibleName(tr("Take %1 off the recipe").arg(text));
    remove_->setToolTip(tr("Take it off the recipe; the reading stays in the ledger"));
    remove_->setVisible(residue.has_value() && editable);
}

}  // namespace nettare
