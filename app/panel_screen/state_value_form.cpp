#include "app/panel_screen/state_value_form.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "app/sheet/document_texts.h"
#include "app/sheet/draft_sentence.h"
#include "app/sheet/flow_layout.h"
#include "app/theme/spacing.h"
#include "core/edit/food_edits.h"

namespace nettare {

namespace {

constexpr int kAmountWidth = 112;
constexpr int kReasonWidth = 320;

QLineEdit* formField(const QString& name, const QString& spoken, const QString& prompt, int width) {
    auto* field = new QLineEdit;
    field->setObjectName(name);
    field->setAccessibleName(spoken);
    field->setPlaceholderText(prompt);
    field->setFixedWidth(width);
    return field;
}

}  // namespace

StateValueForm::StateValueForm(QWidget* parent)
    : QWidget{parent},
      food_{new QComboBox},
      value_{formField(QStringLiteral("statedValue"), tr("Value per 100 g"), tr("value"),
                       kAmountWidth)},
      within_{formField(QStringLiteral("statedWithin"), tr("Give or take"), tr("give or take"),
                        kAmountWidth)},
      reason_{formField(QStringLiteral("statedReason"), tr("Where the value comes from"),
                        tr("reason, such as the supplier's sheet"), kReasonWidth)},
      unit_{new QLabel},
      refusal_{new QLabel},
      state_{new QPushButton{tr("&State it")}} {
    setObjectName(QStringLiteral("stateValueForm"));
    build();
    connect(state_, &QPushButton::clicked, this, &StateValueForm::state);
    for (QLineEdit* field : {value_, within_, reason_})
        connect(field, &QLineEdit::returnPressed, this, &StateValueForm::state);
    hide();
}

void StateValueForm::build() {
    food_->setObjectName(QStringLiteral("statedFood"));
    food_->setAccessibleName(tr("The food without a value"));
    unit_->setMinimumHeight(kControlHeightPx);
    state_->setObjectName(QStringLiteral("stateValue"));
    state_->setProperty("primary", true);
    refusal_->setWordWrap(true);
    refusal_->setTextFormat(Qt::PlainText);
    refusal_->setProperty("tone", QStringLiteral("error"));
    refusal_->hide();
    auto* fields = new FlowLayout{kSpace2Px, kSpace2Px};
    for (QWidget* part : {static_cast<QWidget*>(food_), static_cast<QWidget*>(value_),
                          static_cast<QWidget*>(unit_), static_cast<QWidget*>(within_),
                          static_cast<QWidget*>(reason_), static_cast<QWidget*>(state_)})
        fields->addWidget(part);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, kSpace4Px, 0, 0);
    column->addLayout(fields);
    column->addWidget(refusal_);
}

void StateValueForm::ask(DraftSession* draft, const Error& error) {
    draft_ = draft;
    const auto component = componentNamed(error.value("component"));
    foods_.clear();
    food_->clear();
    refusal_->hide();
    if (draft != nullptr && component && error.code == ErrorCode::PanelLineOpen)
        for (const ErrorValue& value : error.values)
            for (const Json& food : entriesIn(draft->document(), "foods")) {
                if (value.name != "food" || memberText(&food, "name") != value.text) continue;
                foods_.push_back(memberText(&food, "id"));
                food_->addItem(QString::fromStdString(value.text));
            }
    setVisible(!foods_.empty() && !draft->readOnly());
    if (!component) return;
    component_ = *component;
    const auto unit = factsOf(component_).unit;
    unit_->setText(tr("%1 per 100 g")
                       .arg(QString::fromUtf8(unit.data(), static_cast<qsizetype>(unit.size()))));
}

void StateValueForm::state() {
    const auto index = static_cast<std::size_t>(food_->currentIndex());
    if (draft_ == nullptr || index >= foods_.size()) return;
    const std::string value = value_->text().toStdString();
    const std::string within = within_->text().toStdString();
    const std::string reason = reason_->text().toStdString();
    const auto edit =
        setStatedValue(draft_->document(), foods_[index], component_, {value, within, reason});
    draft_->endTyping();
    const auto done = edit ? draft_->apply(*edit) : fail(edit.error());
    if (!done) {
        refusal_->setText(draftSentence(draft_->document(), done.error()));
        return refusal_->show();
    }
    draft_->endTyping();
    for (QLineEdit* field : {value_, within_, reason_}) field->clear();
}

}  // namespace nettare
