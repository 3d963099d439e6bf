#include "app/pantry/label_form.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QResizeEvent>
#include <QScrollArea>

#include "app/pantry/label_line_fields.h"
#include "app/pantry/label_pack_fields.h"
#include "app/pantry/label_rest_fields.h"
#include "app/pantry/photo_field.h"
#include "app/sheet/flow_layout.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/scrolling.h"

// How the form of a label is laid out.

namespace nettare {

namespace {

/// From this width on, lines stand beside what the package says before them.
constexpr int kTwoColumns = 760;

}  // namespace

void LabelForm::build() {
    title_->setFont(typeFont(TypeSize::Section, Weight::Bold));
    scroll_ = scrolling(buildBody());
    auto* head = new QVBoxLayout;
    head->setContentsMargins(kSpace4Px, kSpace3Px, kSpace4Px, kSpace2Px);
    head->setSpacing(2);
    head->addWidget(title_);
    head->addWidget(about_);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(head);
    column->addWidget(scroll_, 1);
    column->addWidget(buildFoot());
}

QWidget* LabelForm::buildBody() {
    auto* body = new QWidget;
    body_ = new QGridLayout{body};
    body_->setContentsMargins(kSpace4Px, kSpace1Px, kSpace4Px, kSpace3Px);
    body_->setHorizontalSpacing(kSpace6Px);
    body_->setVerticalSpacing(kSpace4Px);
    for (QWidget* part : {static_cast<QWidget*>(pack_), static_cast<QWidget*>(lines_),
                          static_cast<QWidget*>(rest_), static_cast<QWidget*>(photo_)})
        part->setParent(body);
    arrange(false);
    return body;
}

QWidget* LabelForm::buildFoot() {
    save_->setObjectName(QStringLiteral("saveLabel"));
    save_->setProperty("primary", true);
    leave_->setObjectName(QStringLiteral("leaveLabel"));
    drop_->setObjectName(QStringLiteral("dropLabel"));
    refusal_->hide();
    auto* foot = new QWidget;
    auto* column = new QVBoxLayout{foot};
    column->setContentsMargins(kSpace4Px, kSpace2Px, kSpace4Px, kSpace3Px);
    column->setSpacing(kSpace2Px);
    column->addWidget(bar_);
    column->addWidget(refusal_);
    auto* actions = new QWidget;
    auto* row = new FlowLayout{kSpace2Px, kSpace2Px, actions};
    for (QPushButton* button : {save_, leave_, drop_}) row->addWidget(button);
    column->addWidget(actions);
    return foot;
}

// Beside each other where there is room; the Tab key goes pack, lines, rest either way.
void LabelForm::arrange(bool wide) {
    wide_ = wide;
    for (QWidget* part : {static_cast<QWidget*>(pack_), static_cast<QWidget*>(lines_),
                          static_cast<QWidget*>(rest_), static_cast<QWidget*>(photo_)})
        body_->removeWidget(part);
    body_->addWidget(pack_, 0, 0, Qt::AlignTop);
    if (wide) {
        body_->addWidget(lines_, 0, 1, 4, 1, Qt::AlignTop);
        body_->addWidget(rest_, 1, 0, Qt::AlignTop);
        body_->addWidget(photo_, 2, 0, Qt::AlignTop);
    } else {
        body_->addWidget(lines_, 1, 0, Qt::AlignTop);
        body_->addWidget(rest_, 2, 0, Qt::AlignTop);
        body_->addWidget(photo_, 3, 0, Qt::AlignTop);
    }
    body_->setColumnStretch(0, wide ? 9 : 1);
    body_->setColumnStretch(1, wide ? 10 : 0);
    body_->setRowStretch(3, wide ? 1 : 0);
    body_->setRowStretch(4, wide ? 0 : 1);
}

void LabelForm::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (const bool wide = width() >= kTwoColumns; wide != wide_) arrange(wide);
}

}  // namespace nettare
