#include "app/pantry/label_finding_bar.h"

#include <QAccessible>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/icons/icon_engine.h"
#include "app/pantry/label_words.h"
#include "app/sheet/flow_layout.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "core/publish/label_sentence.h"

namespace nettare {

namespace {

constexpr int kFindingSignPx = 20;

}  // namespace

LabelFindingBar::LabelFindingBar(QWidget* parent)
    : QFrame{parent},
      title_{new QLabel},
      sentence_{new QLabel},
      take_{new QPushButton},
      asPrinted_{new QPushButton{tr("It is as printed (Shift+F9)")}} {
    setObjectName(QStringLiteral("labelFinding"));
    title_->setObjectName(QStringLiteral("findingTitle"));
    title_->setFont(typeFont(TypeSize::Body, Weight::Bold));
    sentence_->setObjectName(QStringLiteral("findingSentence"));
    take_->setObjectName(QStringLiteral("takeSlip"));
    take_->setProperty("primary", true);
    asPrinted_->setObjectName(QStringLiteral("asPrinted"));
    for (QLabel* label : {title_, sentence_}) {
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
    }
    auto* actions = new QWidget;
    auto* row = new FlowLayout{kSpace2Px, kSpace2Px, actions};
    row->addWidget(take_);
    row->addWidget(asPrinted_);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(kRimPx + kSpace3Px + kFindingSignPx + kSpace2Px, kSpace2Px,
                               kSpace2Px, kSpace2Px);
    column->setSpacing(kSpace1Px);
    column->addWidget(title_);
    column->addWidget(sentence_);
    column->addSpacing(kSpace1Px);
    column->addWidget(actions);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    connect(take_, &QPushButton::clicked, this, &LabelFindingBar::slipTaken);
    connect(asPrinted_, &QPushButton::clicked, this, &LabelFindingBar::asPrinted);
    hide();
}

void LabelFindingBar::show(const LabelFacts& label, const std::vector<LabelFinding>& findings) {
    const std::string about = finding_ ? finding_->about : std::string{};
    finding_ = findings.empty() ? std::nullopt : std::optional{findings.front()};
    setVisible(finding_.has_value());
    if (!finding_) return;
    const QString title = findingTitle(finding_->kind);
    title_->setText(findings.size() == 1 ? title
                                         : tr("%1 · 1 of %2").arg(title).arg(findings.size()));
    sentence_->setText(QString::fromStdString(findingSentence(label, *finding_)));
    take_->setVisible(finding_->slip.has_value());
    asPrinted_->setVisible(!finding_->impossible);
    if (finding_->slip) take_->setText(tr("%1 (F9)").arg(slipAction(label, *finding_->slip)));
    setAccessibleName(tr("Question: %1. %2").arg(title, sentence_->text()));
    if (about == finding_->about) return;
    QAccessibleEvent event{this, QAccessible::Alert};
    QAccessible::updateAccessibility(&event);
}

void LabelFindingBar::paintEvent(QPaintEvent*) {
    const Shade shade = shadeOf(palette());
    QPainter painter{this};
    painter.fillRect(rect(), colour(Role::ErrorFill, shade));
    painter.fillRect(0, 0, kRimPx, height(), colour(Role::Error, shade));
    painter.drawPixmap(
        kRimPx + kSpace3Px, title_->y() + (title_->height() - kFindingSignPx) / 2,
        signPixmap(Sign::Error, colour(Role::Error, shade), kFindingSignPx, devicePixelRatioF()));
}

}  // namespace nettare
