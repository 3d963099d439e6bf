#include "app/sheet/method_list.h"

#include <QLabel>

#include "app/session/draft_session.h"
#include "app/sheet/document_texts.h"
#include "app/sheet/draft_text.h"
#include "app/sheet/entry_line.h"
#include "app/sheet/refusal_line.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "core/edit/step_edits.h"

namespace nettare {

namespace {

constexpr int kNumberWidth = 28;

/// The text of a step, empty where there is none.
QString stepText(const DraftSession& draft, std::size_t step) {
    const Json::Array& steps = entriesIn(draft.document(), "steps");
    return step < steps.size() ? QString::fromStdString(memberText(&steps[step], "text"))
                               : QString{};
}

/// Puts a new widget before another one in the order of Tab.
void tabBefore(QWidget* added, QWidget* next) {
    QWidget* before = next->previousInFocusChain();
    while (before != next && (before == added || before->focusPolicy() == Qt::NoFocus))
        before = before->previousInFocusChain();
    if (before != next) QWidget::setTabOrder(before, added);
    QWidget::setTabOrder(added, next);
}

}  // namespace

MethodList::MethodList(QWidget* parent)
    : QWidget{parent},
      rows_{new QVBoxLayout},
      entry_{new EntryLine{tr("Add a step"), tr("Add a step…")}},
      refusal_{new RefusalLine} {
    entry_->setObjectName(QStringLiteral("newStep"));
    auto* heading = new QLabel{tr("Method")};
    heading->setFont(typeFont(TypeSize::Body, Weight::Semibold));
    heading->setProperty("tone", QStringLiteral("secondary"));
    rows_->setSpacing(0);
    auto* entryRow = new QHBoxLayout;
    entryRow->setContentsMargins(kNumberWidth - kSpace2Px - 3, 0, 0, 0);
    entryRow->addWidget(entry_);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kSpace2Px);
    column->addWidget(heading);
    column->addLayout(rows_);
    column->addLayout(entryRow);
    column->addWidget(refusal_);
    connect(entry_, &EntryLine::entered, this, &MethodList::enter);
}

void MethodList::setDraft(DraftSession* draft) {
    if (draft_ != nullptr) draft_->disconnect(this);
    draft_ = draft;
    for (const Row& row : steps_) delete row.whole;
    steps_.clear();
    if (draft != nullptr)
        connect(draft, &DraftSession::evaluationChanged, this, &MethodList::follow);
    entry_->setVisible(draft != nullptr && !draft->readOnly());
    follow();
}

std::size_t MethodList::stepCount() const {
    return draft_ == nullptr ? 0 : entriesIn(draft_->document(), "steps").size();
}

void MethodList::follow() {
    while (steps_.size() > stepCount()) {
        steps_.back().whole->deleteLater();
        steps_.back().whole->hide();
        steps_.pop_back();
    }
    while (steps_.size() < stepCount()) addRow();
}

void MethodList::addRow() {
    const std::size_t step = steps_.size();
    DraftMember member{[step](const DraftSession& draft) { return stepText(draft, step); },
                       [step](const Json& document, const std::string& text) {
                           return nettare::changeStep(document, step, text);
                       }};
    auto* whole = new QWidget;
    auto* number = new QLabel{tr("%1.").arg(step + 1)};
    number->setFont(figureFont(TypeSize::Body));
    number->setAlignment(Qt::AlignRight | Qt::AlignTop);
    number->setMinimumWidth(kNumberWidth - kSpace2Px);
    number->setContentsMargins(0, 5, 0, 0);
    auto* text = new DraftText{tr("Step %1").arg(step + 1), std::move(member)};
    auto* row = new QHBoxLayout{whole};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(kSpace1Px);
    row->addWidget(number);
    row->addWidget(text, 1);
    rows_->addWidget(whole);
    steps_.push_back({whole, text});
    tabBefore(text, entry_);
    refusal_->watch(text);
    connect(text, &DraftText::enterPressed, this, [this, step] {
        if (step + 1 < steps_.size())
            focusStep(step + 1);
        else
            addStep();
    });
    connect(text, &DraftText::emptied, this, [this, step] { removeStep(step); });
    text->setDraft(draft_);
}

void MethodList::enter(const QString& text) {
    if (draft_ == nullptr) return;
    const auto edit = nettare::addStep(draft_->document(), stepCount(), text.toStdString());
    const Result<void> done = edit ? draft_->apply(*edit) : fail(edit.error());
    entry_->setRefused(!done);
    if (!done) return emit failed(done.error());
    draft_->endTyping();
    entry_->clear();
}

void MethodList::addStep() {
    entry_->setFocus(Qt::ShortcutFocusReason);
}

std::optional<std::size_t> MethodList::focusedStep() const {
    for (std::size_t i = 0; i < steps_.size(); ++i)
        if (steps_[i].text->hasFocus()) return i;
    return {};
}

void MethodList::focusStep(std::size_t step) {
    if (step < steps_.size()) steps_[step].text->setFocus(Qt::TabFocusReason);
}

void MethodList::removeStep(std::size_t step) {
    if (draft_ == nullptr || draft_->readOnly() || step >= stepCount()) return;
    draft_->endTyping();
    const auto edit = nettare::removeStep(draft_->document(), step);
    if (!edit) return emit failed(edit.error());
    if (const auto done = draft_->apply(*edit); !done) return emit failed(done.error());
    if (steps_.empty())
        addStep();
    else
        focusStep(std::min(step, steps_.size() - 1));
}

void MethodList::moveStep(std::size_t step, bool up) {
    const std::size_t to = up ? step - 1 : step + 1;
    if (draft_ == nullptr || draft_->readOnly() || (up && step == 0) || to >= stepCount()) return;
    draft_->endTyping();
    const auto edit = nettare::moveStep(draft_->document(), step, to);
    if (!edit) return emit failed(edit.error());
    if (const auto done = draft_->apply(*edit); !done) return emit failed(done.error());
    focusStep(to);
}

}  // namespace nettare
