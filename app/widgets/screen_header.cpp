#include "app/widgets/screen_header.h"

#include "app/theme/palette.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

namespace nettare {

ScreenHeader::ScreenHeader(const QString& name, QWidget* parent)
    : QFrame{parent}, row_{new QHBoxLayout{this}}, name_{new QLabel{name}}, subject_{new QLabel} {
    row_->setContentsMargins(kSpace6Px, kSpace3Px, kSpace6Px, kSpace3Px);
    row_->setSpacing(kSpace2Px);
    name_->setTextFormat(Qt::PlainText);
    name_->setFont(typeFont(TypeSize::Body, Weight::Bold));
    subject_->setFont(typeFont(TypeSize::Body));
    subject_->setProperty("tone", QStringLiteral("secondary"));
    subject_->setTextFormat(Qt::PlainText);
    subject_->setWordWrap(true);
    row_->addWidget(name_);
    row_->addSpacing(kSpace3Px);
    row_->addWidget(subject_, 1);
}

void ScreenHeader::setName(const QString& name) {
    name_->setText(name);
}

void ScreenHeader::setSubject(const QString& subject) {
    subject_->setText(subject);
}

QString ScreenHeader::subject() const {
    return subject_->text();
}

void ScreenHeader::addAction(QWidget* button) {
    row_->addWidget(button);
}

void ScreenHeader::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Shade shade = shadeOf(palette());
    painter.fillRect(rect(), colour(Role::Raised, shade));
    painter.fillRect(0, height() - 1, width(), 1, colour(Role::Hairline, shade));
}

}  // namespace nettare
