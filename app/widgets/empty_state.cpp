#include "app/widgets/empty_state.h"

#include "app/theme/spacing.h"
#include "app/theme/type.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace nettare {

namespace {

constexpr int kMeasurePx = 520;

}  // namespace

EmptyState::EmptyState(QWidget* parent)
    : QWidget{parent}, headline_{new QLabel}, words_{new QLabel}, action_{new QPushButton} {
    auto* const column = new QVBoxLayout{this};
    column->setContentsMargins(kSpace6Px, kSpace8Px, kSpace6Px, kSpace8Px);
    column->setSpacing(kSpace3Px);
    headline_->setFont(typeFont(TypeSize::Section, Weight::Semibold));
    words_->setFont(typeFont(TypeSize::Body));
    words_->setProperty("tone", QStringLiteral("secondary"));
    for (QLabel* label : {headline_, words_}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
        label->setMaximumWidth(kMeasurePx);
        column->addWidget(label);
    }
    action_->setProperty("primary", true);
    action_->setObjectName(QStringLiteral("emptyAction"));
    column->addSpacing(kSpace2Px);
    column->addWidget(action_, 0, Qt::AlignLeft);
    column->addStretch(1);
    connect(action_, &QPushButton::clicked, this, &EmptyState::actionChosen);
}

void EmptyState::show(const QString& headline, const QString& words, const QString& action) {
    headline_->setText(headline);
    words_->setText(words);
    action_->setText(action);
    action_->setVisible(!action.isEmpty());
    setAccessibleName(headline);
    setAccessibleDescription(words);
}

void EmptyState::setBelow(QWidget* widget) {
    auto* const column = static_cast<QVBoxLayout*>(layout());
    column->insertWidget(column->count() - 1, widget);
}

QString EmptyState::text() const {
    return headline_->text() + u'\n' + words_->text();
}

}  // namespace nettare
