#include "app/sheet/meaning_question.h"

#include <QHBoxLayout>
#include <QKeyEvent>

#include <algorithm>

#include "app/theme/spacing.h"

namespace nettare {

MeaningQuestion::MeaningQuestion(QWidget* parent) : QFrame{parent}, question_{new QLabel} {
    setObjectName(QStringLiteral("meaningQuestion"));
    question_->setWordWrap(true);
    question_->setTextFormat(Qt::PlainText);
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(kSpace2Px, kSpace1Px, kSpace2Px, kSpace1Px);
    row->setSpacing(kSpace2Px);
    row->addWidget(question_, 1);
    row_ = row;
    hide();
}

void MeaningQuestion::ask(const QString& question, std::vector<Answer> answers) {
    for (QPushButton* button : buttons_) button->deleteLater();
    buttons_.clear();
    question_->setText(question);
    setAccessibleName(question);
    for (Answer& answer : answers) {
        auto* button = new QPushButton{answer.text};
        button->setAutoDefault(true);
        button->setAccessibleDescription(question);
        button->installEventFilter(this);
        connect(button, &QPushButton::clicked, this, [this, take = std::move(answer.take)] {
            hide();
            take();
        });
        row_->addWidget(button);
        buttons_.push_back(button);
    }
    show();
    if (!buttons_.empty()) buttons_.front()->setFocus(Qt::OtherFocusReason);
}

void MeaningQuestion::leave() {
    if (isHidden()) return;
    hide();
    emit left();
}

// Buttons take the arrow keys for themselves.
bool MeaningQuestion::eventFilter(QObject* object, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return QFrame::eventFilter(object, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    const auto here = std::ranges::find(buttons_, object);
    if (key == Qt::Key_Escape) {
        leave();
        return true;
    }
    if ((key != Qt::Key_Right && key != Qt::Key_Left) || here == buttons_.end())
        return QFrame::eventFilter(object, event);
    const auto count = buttons_.size();
    const auto at = static_cast<std::size_t>(here - buttons_.begin());
    const std::size_t next = (at + (key == Qt::Key_Right ? 1 : count - 1)) % count;
    buttons_[next]->setFocus(Qt::TabFocusReason);
    return true;
}

}  // namespace nettare
