#include "app/limits/limit_entry.h"

#include <QHBoxLayout>

#include "app/figures/figure_words.h"
#include "app/limits/limit_key.h"
#include "app/sheet/draft_sentence.h"
#include "app/sheet/flow_layout.h"
#include "app/theme/spacing.h"
#include "core/support/text.h"

namespace nettare {

namespace {

constexpr int kTypedWidth = 80;

QComboBox* box(const QString& name, const QString& spoken) {
    auto* combo = new QComboBox;
    combo->setObjectName(name);
    combo->setAccessibleName(spoken);
    return combo;
}

}  // namespace

LimitEntry::LimitEntry(QWidget* parent)
    : QWidget{parent},
      component_{box(QStringLiteral("limitComponent"), tr("Component of the new limit"))},
      end_{box(QStringLiteral("limitEnd"), tr("Ceiling or floor"))},
      per_{box(QStringLiteral("limitPer"), tr("What the new limit is per"))},
      number_{new QLineEdit},
      unit_{new QLabel},
      add_{new QPushButton{tr("&Set")}} {
    for (const ComponentFacts& facts : allComponents())
        component_->addItem(componentName(facts.component), static_cast<int>(facts.component));
    for (const TargetEnd end : {TargetEnd::AtMost, TargetEnd::AtLeast})
        end_->addItem(limitEnd(end), static_cast<int>(end));
    for (const Basis per : {Basis::Piece, Basis::Portion, Basis::Hundred, Basis::Batch})
        per_->addItem(limitBasis(per), static_cast<int>(per));
    per_->setCurrentIndex(1);
    number_->setObjectName(QStringLiteral("limitNumber"));
    number_->setAccessibleName(tr("Number of the new limit"));
    number_->setFixedWidth(kTypedWidth);
    number_->setAlignment(Qt::AlignRight);
    add_->setObjectName(QStringLiteral("setLimit"));
    unit_->setMinimumSize(kSpace6Px, kControlHeightPx);
    component_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    component_->setMinimumContentsLength(14);
    auto* flow = new FlowLayout{kSpace2Px, kSpace2Px, this};
    for (QWidget* part : {static_cast<QWidget*>(component_), static_cast<QWidget*>(end_),
                          static_cast<QWidget*>(number_), static_cast<QWidget*>(unit_),
                          static_cast<QWidget*>(per_), static_cast<QWidget*>(add_)})
        flow->addWidget(part);
    const auto sayUnit = [this] {
        const auto unit = factsOf(static_cast<Component>(component_->currentData().toInt())).unit;
        unit_->setText(QString::fromUtf8(unit.data(), static_cast<qsizetype>(unit.size())));
    };
    connect(component_, &QComboBox::currentIndexChanged, this, sayUnit);
    sayUnit();
    connect(add_, &QPushButton::clicked, this, &LimitEntry::add);
    connect(number_, &QLineEdit::returnPressed, this, &LimitEntry::add);
    connect(number_, &QLineEdit::textEdited, this, [this] { emit refused({}); });
}

void LimitEntry::setDraft(DraftSession* draft) {
    draft_ = draft;
    setEnabled(draft != nullptr && !draft->readOnly());
}

void LimitEntry::add() {
    if (draft_ == nullptr) return;
    const std::string typed{trimmed(number_->text().toStdString())};
    if (typed.empty()) return number_->setFocus();
    const auto edit =
        setTarget(draft_->document(), static_cast<Component>(component_->currentData().toInt()),
                  static_cast<Basis>(per_->currentData().toInt()),
                  static_cast<TargetEnd>(end_->currentData().toInt()), typed);
    if (!edit) return emit refused(draftSentence(draft_->document(), edit.error()));
    draft_->endTyping();
    if (const auto done = draft_->apply(*edit); !done)
        return emit refused(draftSentence(draft_->document(), done.error()));
    draft_->endTyping();
    number_->clear();
    emit refused({});
}

}  // namespace nettare
