#include "app/path/side_card.h"

#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

#include "app/theme/palette.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"

namespace nettare {

SideCard::SideCard(const QString& heading, QWidget* parent)
    : QFrame{parent}, column_{new QVBoxLayout{this}}, heading_{new QLabel}, text_{new QLabel} {
    column_->setContentsMargins(kSpace4Px, kSpace3Px, kSpace4Px, kSpace3Px);
    column_->setSpacing(kSpace1Px);
    heading_->setFont(typeFont(TypeSize::Body, Weight::Bold));
    text_->setProperty("tone", QStringLiteral("secondary"));
    for (QLabel* label : {heading_, text_}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
        column_->addWidget(label);
    }
    setHeading(heading);
    setText({});
}

void SideCard::setHeading(const QString& heading) {
    heading_->setText(heading);
    setAccessibleName(heading);
}

void SideCard::setText(const QString& text) {
    text_->setText(text);
    text_->setVisible(!text.isEmpty());
    setAccessibleDescription(text);
}

QString SideCard::heading() const {
    return heading_->text();
}

QString SideCard::text() const {
    return text_->text();
}

void SideCard::setStriped(bool striped) {
    striped_ = striped;
    update();
}

void SideCard::paintEvent(QPaintEvent*) {
    const Shade shade = shadeOf(palette());
    QPainter painter{this};
    painter.fillRect(rect(), colour(Role::Raised, shade));
    painter.setPen(colour(Role::Hairline, shade));
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
    if (striped_) painter.fillRect(0, 0, kRimPx, height(), colour(Role::Warning, shade));
}

}  // namespace nettare
