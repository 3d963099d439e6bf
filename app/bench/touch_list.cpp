#include "app/bench/touch_list.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/bench/bench_type.h"
#include "app/bench/two_line_button.h"
#include "app/theme/spacing.h"
#include "app/widgets/scrolling.h"

namespace nettare {

TouchList::TouchList(const QString& heading, Leave leave, QWidget* parent)
    : Pane{heading, Role::Raised, parent},
      heading_{new QLabel{heading}},
      none_{new QLabel},
      leave_{benchButton(tr("Back"), "leaveList")},
      column_{new QVBoxLayout} {
    heading_->setFont(benchFont(Weight::Semibold));
    heading_->setTextFormat(Qt::PlainText);
    heading_->setWordWrap(true);
    none_->setFont(benchFont());
    none_->setTextFormat(Qt::PlainText);
    none_->setProperty("tone", QStringLiteral("secondary"));
    none_->setWordWrap(true);
    leave_->setVisible(leave == Leave::ByButton);
    connect(leave_, &QPushButton::clicked, this, &TouchList::left);

    auto* head = new QHBoxLayout;
    head->addWidget(heading_, 1);
    head->addWidget(leave_);
    auto* page = new QWidget;
    auto* inner = new QVBoxLayout{page};
    inner->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(kSpace2Px);
    inner->addWidget(none_);
    inner->addLayout(column_);
    inner->addStretch(1);
    auto* outer = new QVBoxLayout{this};
    outer->setContentsMargins(kSpace4Px, kSpace2Px, kSpace4Px, kSpace2Px);
    outer->setSpacing(kSpace2Px);
    outer->addLayout(head);
    outer->addWidget(scrolling(page), 1);
    none_->hide();
}

void TouchList::setHeading(const QString& heading) {
    heading_->setText(heading);
    setAccessibleName(heading);
}

void TouchList::clear() {
    while (QLayoutItem* item = column_->takeAt(0)) {
        // Its own press may have asked for the new choices.
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
}

void TouchList::setChoices(const std::vector<TouchChoice>& choices, const QString& none) {
    none_->setText(none);
    none_->setVisible(choices.empty() && !none.isEmpty());
    if (choices == choices_) return;
    choices_ = choices;
    clear();
    for (std::size_t i = 0; i < choices.size(); ++i) {
        auto* button = new TwoLineButton;
        button->setObjectName(QStringLiteral("choice%1").arg(i));
        button->setTexts(choices[i].text, choices[i].detail);
        button->setEnabled(choices[i].enabled);
        connect(button, &QPushButton::clicked, this,
                [this, i] { emit chosen(static_cast<int>(i)); });
        column_->addWidget(button);
    }
}

}  // namespace nettare
