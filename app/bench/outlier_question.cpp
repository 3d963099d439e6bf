#include "app/bench/outlier_question.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/bench/bench_fields.h"
#include "app/sheet/flow_layout.h"
#include "app/theme/palette.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

QStringList commonCauses() {
    return {OutlierQuestion::tr("another size"), OutlierQuestion::tr("counted wrong"),
            OutlierQuestion::tr("still wet"), OutlierQuestion::tr("something else on the scale"),
            OutlierQuestion::tr("slip of the hand")};
}

}  // namespace

OutlierQuestion::OutlierQuestion(QWidget* parent)
    : QFrame{parent},
      question_{benchLabel()},
      refusal_{benchNote()},
      leaveOut_{benchButton(tr("Leave it out, because…"), "leaveOut")},
      asWeighed_{benchButton(tr("It is as weighed"), "asWeighed")},
      causes_{new QWidget},
      own_{benchField(tr("Another cause"), "ownCause")} {
    own_->setPlaceholderText(tr("another cause, then Enter"));
    own_->setMaxLength(200);
    own_->setMinimumWidth(280);
    refusal_->setObjectName(QStringLiteral("causeRefusal"));
    refusal_->setProperty("tone", QStringLiteral("error"));
    refusal_->hide();
    auto* const buttons = new FlowLayout{kSpace2Px, kSpace2Px};
    buttons->addWidget(leaveOut_);
    buttons->addWidget(asWeighed_);
    auto* const causes = new FlowLayout{kSpace2Px, kSpace2Px, causes_};
    for (const QString& cause : commonCauses()) {
        auto* const button = benchButton(cause, "cause");
        causes->addWidget(button);
        connect(button, &QPushButton::clicked, this, [this, cause] { emit leftOut(cause); });
    }
    causes->addWidget(own_);
    auto* const column = new QVBoxLayout{this};
    column->setContentsMargins(kSpace3Px + kRimPx, kSpace3Px, kSpace3Px, kSpace3Px);
    column->setSpacing(kSpace2Px);
    column->addWidget(question_);
    column->addLayout(buttons);
    column->addWidget(causes_);
    column->addWidget(refusal_);
    leaveOut_->setCheckable(true);
    connect(leaveOut_, &QPushButton::toggled, this, &OutlierQuestion::showCauses);
    connect(asWeighed_, &QPushButton::clicked, this, &OutlierQuestion::asWeighed);
    connect(own_, &QLineEdit::returnPressed, this, &OutlierQuestion::tellOwnCause);
    causes_->hide();
    hide();
}

void OutlierQuestion::ask(const QString& question) {
    if (question == question_->text()) return;
    question_->setText(question);
    setAccessibleName(question);
    own_->clear();
    refusal_->hide();
    leaveOut_->setChecked(false);
    setVisible(!question.isEmpty());
}

QString OutlierQuestion::text() const {
    return question_->text();
}

void OutlierQuestion::showCauses(bool shown) {
    causes_->setVisible(shown);
    refusal_->hide();
}

void OutlierQuestion::tellOwnCause() {
    const QString cause = own_->text().trimmed();
    if (!cause.isEmpty()) {
        emit leftOut(cause);
        return;
    }
    refusal_->setText(tr("Say why it is left out: whoever reads the series later will ask."));
    refusal_->show();
}

void OutlierQuestion::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && causes_->isVisible()) {
        leaveOut_->setChecked(false);
        leaveOut_->setFocus(Qt::OtherFocusReason);
        return;
    }
    QFrame::keyPressEvent(event);
}

void OutlierQuestion::paintEvent(QPaintEvent*) {
    const Shade shade = shadeOf(palette());
    QPainter painter{this};
    painter.fillRect(rect(), colour(Role::WarningFill, shade));
    painter.fillRect(0, 0, kRimPx, height(), colour(Role::Warning, shade));
}

}  // namespace nettare
