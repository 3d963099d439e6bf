#include "app/sheet/yield_row.h"

#include <QHBoxLayout>
#include <QLabel>

#include "app/sheet/draft_field.h"
#include "app/sheet/flow_layout.h"
#include "app/sheet/refusal_line.h"
#include "app/sheet/yield_edits.h"
#include "app/sheet/yield_texts.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"

namespace nettare {

YieldRow::YieldRow(RefusalLine& refusal, QWidget* parent)
    : QWidget{parent},
      refusal_{refusal},
      flow_{new FlowLayout{kSpace4Px, kSpace1Px, this}},
      makes_{addField(tr("Makes"), DraftMember{makesShown, makesEdit, concernsPointer("/makes")})},
      portion_{addField(tr("Portion"),
                        DraftMember{portionShown, portionEdit, concernsPointer("/portion")})},
      ceiling_{nullptr},
      cooked_{addWeight(tr("Cooked weight"))},
      left_{addWeight(tr("Left in the bowl"))} {
    ceiling_ = addField(tr("Ceiling"),
                        DraftMember{ceilingShown, ceilingEdit, concernsPointer("/targets")});
    makes_->setObjectName(QStringLiteral("makes"));
    portion_->setObjectName(QStringLiteral("portion"));
    ceiling_->setObjectName(QStringLiteral("ceiling"));
    cooked_->setObjectName(QStringLiteral("cookedWeight"));
    left_->setObjectName(QStringLiteral("leftInBowl"));
    ceiling_->setPlaceholderText(tr("none"));
    connect(cooked_, &QPushButton::clicked, this, &YieldRow::weighCookedAsked);
    connect(left_, &QPushButton::clicked, this, &YieldRow::weighLeftAsked);
}

QWidget* YieldRow::addPair(const QString& label, QWidget* value) {
    auto* pair = new QWidget{this};
    auto* words = new QLabel{label};
    words->setProperty("tone", QStringLiteral("secondary"));
    words->setBuddy(value);
    value->setFont(figureFont(TypeSize::Body, Weight::Bold));
    auto* row = new QHBoxLayout{pair};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(2);
    row->addWidget(words);
    row->addWidget(value);
    flow_->addWidget(pair);
    return pair;
}

DraftField* YieldRow::addField(const QString& label, DraftMember member) {
    auto* field = new DraftField{label, std::move(member)};
    field->setAsText(true);
    refusal_.watch(field);
    addPair(label, field);
    return field;
}

QPushButton* YieldRow::addWeight(const QString& label) {
    auto* button = new QPushButton;
    button->setProperty("quiet", true);
    button->setStyleSheet(
        QStringLiteral("QPushButton { padding: 0 3px; min-height: 22px; border-width: 2px; }"));
    addPair(label, button);
    return button;
}

void YieldRow::setDraft(DraftSession* draft) {
    if (draft_ != nullptr) draft_->disconnect(this);
    draft_ = draft;
    for (DraftField* field : {makes_, portion_, ceiling_}) field->setDraft(draft);
    if (draft != nullptr) connect(draft, &DraftSession::evaluationChanged, this, &YieldRow::follow);
    follow();
}

void YieldRow::follow() {
    if (draft_ == nullptr) return;
    const bool editable = !draft_->readOnly();
    const auto show = [editable](QPushButton& button, const QString& name, const QString& weight) {
        button.setText(weight.isEmpty() ? tr("not weighed") : weight);
        button.setAccessibleName(tr("%1: %2, weigh it").arg(name, button.text()));
        button.setEnabled(editable);
    };
    show(*cooked_, tr("Cooked weight"), cookedShown(*draft_));
    show(*left_, tr("Left in the bowl"), leftShown(*draft_));
}

}  // namespace nettare
