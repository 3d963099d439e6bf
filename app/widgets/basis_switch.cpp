#include "app/widgets/basis_switch.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>

#include <algorithm>

namespace nettare {

BasisSwitch::BasisSwitch(QWidget* parent) : QWidget{parent}, group_{new QButtonGroup{this}} {
    auto* const row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    group_->setExclusive(true);
    connect(group_, &QButtonGroup::idClicked, this, [this](int index) {
        setIndex(index);
        emit chosen(index);
    });
}

void BasisSwitch::setTexts(const QStringList& texts) {
    const int held =
        std::clamp(index(), 0, static_cast<int>(std::max<qsizetype>(texts.size(), 1)) - 1);
    const auto before = group_->buttons();
    for (qsizetype i = before.size(); i < texts.size(); ++i) {
        auto* const button = new QPushButton;
        button->setCheckable(true);
        button->setProperty("segment", true);
        button->setProperty("joined", i > 0);
        button->installEventFilter(this);
        group_->addButton(button, static_cast<int>(i));
        layout()->addWidget(button);
    }
    for (qsizetype i = texts.size(); i < before.size(); ++i) delete before[i];
    // Made after their neighbours, the buttons would come last on the way of the Tab key.
    setFocusProxy(nullptr);
    setFocusPolicy(Qt::TabFocus);
    QWidget* last = this;
    for (int i = 0; i < texts.size(); ++i) {
        buttonAt(i)->setText(texts[i]);
        setTabOrder(last, buttonAt(i));
        last = buttonAt(i);
    }
    setFocusPolicy(Qt::NoFocus);
    if (!texts.isEmpty()) setIndex(held);
}

int BasisSwitch::index() const {
    return group_->checkedId();
}

void BasisSwitch::setIndex(int index) {
    QPushButton* const button = buttonAt(index);
    if (button == nullptr) return;
    button->setChecked(true);
    for (QAbstractButton* each : group_->buttons())
        each->setFocusPolicy(each == button ? Qt::StrongFocus : Qt::ClickFocus);
    setFocusProxy(button);
}

void BasisSwitch::choose(int index) {
    if (buttonAt(index) == nullptr || index == this->index()) return;
    setIndex(index);
    buttonAt(index)->setFocus(Qt::TabFocusReason);
    emit chosen(index);
}

QPushButton* BasisSwitch::buttonAt(int index) const {
    return qobject_cast<QPushButton*>(group_->button(index));
}

bool BasisSwitch::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    const int forward = layoutDirection() == Qt::RightToLeft ? Qt::Key_Left : Qt::Key_Right;
    const int back = layoutDirection() == Qt::RightToLeft ? Qt::Key_Right : Qt::Key_Left;
    if (key == forward || key == Qt::Key_Down)
        choose(index() + 1);
    else if (key == back || key == Qt::Key_Up)
        choose(index() - 1);
    else
        return QWidget::eventFilter(watched, event);
    return true;
}

}  // namespace nettare
