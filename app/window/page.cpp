#include "app/window/page.h"

#include <QLabel>

#include "app/theme/spacing.h"
#include "app/theme/type.h"

namespace nettare {

Page::Page(const QString& title, QWidget* parent) : QScrollArea{parent} {
    auto* content = new QWidget;
    column_ = new QVBoxLayout{content};
    column_->setContentsMargins(kSpace6Px, kSpace4Px, kSpace6Px, kSpace6Px);
    column_->setSpacing(kSpace3Px);
    column_->setAlignment(Qt::AlignTop);
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setAccessibleName(title);
    setWidget(content);
    content->setAutoFillBackground(false);
    auto* heading = new QLabel{title};
    heading->setFont(typeFont(TypeSize::PaneTitle, Weight::Bold));
    heading->setWordWrap(true);
    column_->addWidget(heading);
}

void Page::addText(const QString& text) {
    auto* label = new QLabel{text};
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setMaximumWidth(720);
    column_->addWidget(label);
}

void Page::addHeading(const QString& text) {
    auto* label = new QLabel{text};
    label->setFont(typeFont(TypeSize::Section, Weight::Semibold));
    label->setWordWrap(true);
    column_->addWidget(label);
}

}  // namespace nettare
