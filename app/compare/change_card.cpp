#include "app/compare/change_card.h"

#include "app/theme/palette.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"

#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

namespace nettare {

ChangeCard::ChangeCard(QWidget* parent)
    : QFrame{parent}, subject_{new QLabel}, change_{new QLabel}, detail_{new QLabel} {
    auto* const column = new QVBoxLayout{this};
    column->setContentsMargins(kSpace4Px, kSpace3Px, kSpace4Px, kSpace3Px);
    column->setSpacing(2);
    subject_->setFont(typeFont(TypeSize::Header));
    change_->setFont(figureFont(TypeSize::PaneTitle, Weight::Bold));
    detail_->setFont(figureFont(TypeSize::Header));
    subject_->setProperty("tone", QStringLiteral("secondary"));
    detail_->setProperty("tone", QStringLiteral("secondary"));
    for (QLabel* label : {subject_, change_, detail_}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
        column->addWidget(label);
    }
    column->addStretch(1);
    setFocusPolicy(Qt::NoFocus);
}

void ChangeCard::show(const CardWords& words) {
    words_ = words;
    subject_->setText(words.subject);
    change_->setText(words.change);
    detail_->setText(words.detail);
    setAccessibleName(words.spoken);
}

void ChangeCard::paintEvent(QPaintEvent*) {
    const Shade shade = shadeOf(palette());
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(colour(Role::Hairline, shade));
    painter.setBrush(colour(Role::Raised, shade));
    painter.drawRoundedRect(QRectF{rect()}.adjusted(0.5, 0.5, -0.5, -0.5), kCornerPx, kCornerPx);
}

}  // namespace nettare
