#include "app/compare/state_strip.h"

#include "app/theme/palette.h"
#include "app/theme/spacing.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>

#include <algorithm>

namespace nettare {

namespace {

constexpr int kLineLeastPx = kSpace3Px;
constexpr int kLineMostPx = 54;

}  // namespace

StateStrip::StateStrip(QWidget* parent) : QWidget{parent}, row_{new QHBoxLayout{this}} {
    row_->setContentsMargins(0, 0, 0, 0);
    row_->setSpacing(0);
    setAccessibleName(tr("States of the recipe"));
}

void StateStrip::clear() {
    for (StateDot* dot : dots_) delete dot;
    dots_.clear();
    while (QLayoutItem* item = row_->takeAt(0)) delete item;
}

void StateStrip::show(const std::vector<StripState>& states, StatePair pair) {
    clear();
    for (const StripState& state : states) {
        if (!dots_.empty())
            row_->addSpacerItem(new QSpacerItem{kLineMostPx, 0, QSizePolicy::Maximum});
        auto* const dot = new StateDot{state.text, state.spoken, state.draft, this};
        const int index = static_cast<int>(dots_.size());
        dot->setObjectName(QStringLiteral("state%1").arg(index));
        dot->installEventFilter(this);
        connect(dot, &QPushButton::clicked, this, [this, index] { choose(index); });
        row_->addWidget(dot);
        dots_.push_back(dot);
    }
    row_->addStretch(1);
    setMinimumWidth(0);
    int least = 0;
    for (const StateDot* dot : dots_) least += dot->sizeHint().width() + kLineLeastPx;
    setMinimumWidth(least - kLineLeastPx);
    setPair(pair);
}

void StateStrip::setPair(StatePair pair) {
    pair_ = pair;
    newest_ = pair.right;
    markSides();
    makeTabStop(pair.right);
}

void StateStrip::choose(int index) {
    if (index == pair_.left || index == pair_.right) {
        newest_ = index;
        return markSides();
    }
    const int stays = newest_;
    newest_ = index;
    pair_ = {std::min(stays, index), std::max(stays, index)};
    markSides();
    emit pairChosen(pair_);
}

void StateStrip::markSides() {
    for (int i = 0; i < static_cast<int>(dots_.size()); ++i)
        dots_[static_cast<std::size_t>(i)]->setSide(i == pair_.left    ? DotSide::Left
                                                    : i == pair_.right ? DotSide::Right
                                                                       : DotSide::None);
}

void StateStrip::makeTabStop(int index) {
    for (int i = 0; i < static_cast<int>(dots_.size()); ++i)
        dots_[static_cast<std::size_t>(i)]->setFocusPolicy(i == index ? Qt::StrongFocus
                                                                      : Qt::NoFocus);
}

bool StateStrip::stepFrom(int index, int key) {
    const int last = static_cast<int>(dots_.size()) - 1;
    int to = index;
    if (key == Qt::Key_Left) to = std::max(0, index - 1);
    if (key == Qt::Key_Right) to = std::min(last, index + 1);
    if (key == Qt::Key_Home) to = 0;
    if (key == Qt::Key_End) to = last;
    const bool ours =
        key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Home || key == Qt::Key_End;
    if (to != index) dots_[static_cast<std::size_t>(to)]->setFocus(Qt::OtherFocusReason);
    return ours;
}

bool StateStrip::eventFilter(QObject* object, QEvent* event) {
    const auto found = std::find(dots_.begin(), dots_.end(), object);
    if (found == dots_.end()) return QWidget::eventFilter(object, event);
    const int index = static_cast<int>(found - dots_.begin());
    if (event->type() == QEvent::FocusIn) {
        makeTabStop(index);
        emit dotFocused(*found);
    }
    if (event->type() == QEvent::MouseButtonPress) (*found)->setFocus(Qt::MouseFocusReason);
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            (*found)->click();
            return true;
        }
        return stepFrom(index, key);
    }
    return QWidget::eventFilter(object, event);
}

void StateStrip::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const QColor line = colour(Role::Hairline, shadeOf(palette()));
    for (std::size_t i = 1; i < dots_.size(); ++i) {
        const int from = dots_[i - 1]->geometry().right() + 1;
        painter.fillRect(from, height() / 2 - 1, dots_[i]->x() + kSpace1Px - from, 2, line);
    }
}

}  // namespace nettare
