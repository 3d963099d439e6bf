#include "app/window/inline_bar.h"

#include <QPainter>

#include "app/theme/spacing.h"

namespace nettare {

InlineBar::InlineBar(Role fill, Role stripe, QWidget* parent)
    : QFrame{parent},
      fill_{fill},
      stripe_{stripe},
      words_{new QLabel},
      row_{new QHBoxLayout{this}} {
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    row_->setContentsMargins(kSpace4Px + kRimPx, kSpace1Px, kSpace4Px, kSpace1Px);
    row_->setSpacing(kSpace3Px);
    row_->addWidget(words_, 1);
}

void InlineBar::setText(const QString& text) {
    words_->setText(text);
    setAccessibleName(text);
}

QPushButton* InlineBar::addButton(const QString& text) {
    auto* button = new QPushButton{text};
    button->setAutoDefault(false);
    row_->addWidget(button);
    return button;
}

void InlineBar::addField(QWidget* field) {
    row_->setStretch(0, 0);
    row_->addWidget(field, 1);
}

void InlineBar::paintEvent(QPaintEvent*) {
    const Shade shade = shadeOf(palette());
    QPainter painter{this};
    painter.fillRect(rect(), colour(fill_, shade));
    painter.fillRect(0, 0, kRimPx, height(), colour(stripe_, shade));
}

}  // namespace nettare
