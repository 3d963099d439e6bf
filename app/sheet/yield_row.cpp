#include "app/sheet/yield_row.h"

#include <QHBoxLayout>
#include <QLabel>

#include <algorithm>

#include "app/sheet/counting_choice.h"
#include "app/sheet/draft_field.h"
#include "app/sheet/flow_layout.h"
#include "app/sheet/refusal_line.h"
#include "app/sheet/yield_edits.h"
#include "app/sheet/yield_residue.h"
#include "app/sheet/yield_texts.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "core/edit/residue_edits.h"

namespace nettare {

YieldRow::YieldRow(RefusalLine& refusal, QWidget* parent)
    : QWidget{parent},
      refusal_{refusal},
      flow_{new FlowLayout{kSpace4Px, kSpace1Px, this}},
      makes_{addField(tr("Makes"), DraftMember{makesShown, makesEdit, concernsPointer("/makes")})},
      portion_{addField(tr("Portion"),
                        DraftMember{portionShown, portionEdit, concernsPointer("/portion")})},
      ceiling_{nullptr},
      cooked_{addWeight(tr("Cooked weight"))} {
    (void)residueAt(0);
    ceiling_ = addField(tr("Ceiling"),
                        DraftMember{ceilingShown, ceilingEdit, concernsPointer("/targets")});
    makes_->setObjectName(QStringLiteral("makes"));
    portion_->setObjectName(QStringLiteral("portion"));
    ceiling_->setObjectName(QStringLiteral("ceiling"));
    cooked_->setObjectName(QStringLiteral("cookedWeight"));
    ceiling_->setPlaceholderText(tr("none"));
    connect(cooked_, &QPushButton::clicked, this,
            [this] { emit weighAsked({PurposeKind::Cooked}); });
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
    followResidues(editable);
    followCounting(editable);
}

// Those that there are already stay, so that a button with the focus keeps it.
YieldResidue* YieldRow::residueAt(std::size_t index) {
    if (index < residues_.size()) return residues_[index];
    auto* residue = new YieldResidue;
    residue->weighButton()->setObjectName(index == 0 ? QStringLiteral("leftInBowl")
                                                     : QStringLiteral("left-%1").arg(index));
    residue->removeButton()->setObjectName(QStringLiteral("takeOffLeft-%1").arg(index));
    QWidget* before = index == 0 ? static_cast<QWidget*>(cooked_) : residues_.back();
    flow_->insertWidget(flow_->indexOf(before == cooked_ ? before->parentWidget() : before) + 1,
                        residue);
    if (index > 0) {
        setTabOrder(residues_.back()->removeButton(), residue->weighButton());
        setTabOrder(residue->weighButton(), residue->removeButton());
    }
    residues_.push_back(residue);
    connect(residue, &YieldResidue::weighAsked, this, [this, residue] {
        const auto& shown = residue->residue();
        emit weighAsked(
            {PurposeKind::LeftOver, {}, shown ? std::optional{shown->left} : std::nullopt});
    });
    connect(residue, &YieldResidue::removeAsked, this, [this, index] { removeResidue(index); });
    return residue;
}

void YieldRow::followResidues(bool editable) {
    const std::vector<ShownResidue> shown = residuesShown(*draft_);
    const bool bowl =
        shown.empty() || (shown.size() == 1 && shown.front().left.kind == ResidueKind::Mixture);
    for (std::size_t i = 0; i < std::max<std::size_t>(shown.size(), 1); ++i) {
        YieldResidue* residue = residueAt(i);
        residue->setResidue(i < shown.size() ? std::optional{shown[i]} : std::nullopt, editable);
        residue->setLabel(i > 0 ? QString{} : bowl ? tr("Left in the bowl") : tr("Left over"));
        residue->show();
    }
    for (std::size_t i = std::max<std::size_t>(shown.size(), 1); i < residues_.size(); ++i)
        residues_[i]->hide();
}

void YieldRow::removeResidue(std::size_t index) {
    if (draft_ == nullptr) return;
    residues_.front()->weighButton()->setFocus(Qt::OtherFocusReason);
    run(nettare::removeResidue(draft_->document(), index));
}

void YieldRow::followCounting(bool editable) {
    const std::vector<ShownRule> rules = rulesShown(*draft_);
    for (std::size_t i = 0; i < rules.size(); ++i) {
        if (i == counting_.size()) {
            auto* choice = new CountingChoice;
            choice->button()->setObjectName(QStringLiteral("counts-%1").arg(i));
            connect(choice, &CountingChoice::chosen, this,
                    [this](CountingRule rule, const QString& word) {
                        run(setCounting(draft_->document(), rule, word.toStdString()));
                    });
            flow_->addWidget(choice);
            counting_.push_back(choice);
        }
        counting_[i]->setRule(rules[i], i == 0, editable);
        counting_[i]->show();
    }
    for (std::size_t i = rules.size(); i < counting_.size(); ++i) counting_[i]->hide();
}

void YieldRow::run(const Result<Edit>& edit) {
    if (!edit) {
        emit failed(edit.error());
        return;
    }
    if (const auto done = draft_->apply(*edit); !done) emit failed(done.error());
    draft_->endTyping();
}

}  // namespace nettare
