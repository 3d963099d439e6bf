#include "app/sheet/sheet_pane.h"

#include <QScrollArea>

#include "app/session/kitchen_session.h"
#include "app/sheet/document_texts.h"
#include "app/sheet/draft_text.h"
#include "app/sheet/line_note.h"
#include "app/sheet/line_table.h"
#include "app/sheet/method_list.h"
#include "app/sheet/refusal_line.h"
#include "app/sheet/yield_row.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/scrolling.h"
#include "core/edit/heading_edits.h"

namespace nettare {

namespace {

constexpr int kTitlePx = 27;
constexpr int kTextFrame = 5;

QString shownTitle(const DraftSession& draft) {
    return documentTitle(draft.document());
}

}  // namespace

SheetPane::SheetPane(KitchenSession& kitchen, QWidget* parent)
    : Pane{tr("Sheet"), Role::Paper, parent},
      kitchen_{kitchen},
      title_{new DraftText{tr("Title"), DraftMember{shownTitle, setTitle}}},
      refusal_{new RefusalLine},
      yields_{new YieldRow{*refusal_}},
      lines_{new LineTable{kitchen}},
      note_{new LineNote{kitchen}},
      method_{new MethodList} {
    title_->setFont(resized(typeFont(TypeSize::PaneTitle, Weight::Bold), kTitlePx));
    title_->setObjectName(QStringLiteral("title"));
    build();
    refusal_->watch(title_);
    connect(lines_, &LineTable::failed, this, &SheetPane::failed);
    connect(lines_, &LineTable::lineChosen, this, &SheetPane::lineChosen);
    connect(lines_, &LineTable::lineChosen, note_,
            [this](const QString& line) { note_->setLine(line.toStdString()); });
    connect(note_, &LineNote::failed, this, &SheetPane::failed);
    connect(method_, &MethodList::failed, this, &SheetPane::failed);
    connect(yields_, &YieldRow::weighAsked, this, &SheetPane::weighAsked);
    connect(yields_, &YieldRow::failed, this, &SheetPane::failed);
    connect(&kitchen_, &KitchenSession::draftOpened, this, &SheetPane::followDraft);
    followDraft();
}

void SheetPane::build() {
    auto* page = new QWidget;
    auto* column = new QVBoxLayout{page};
    column->setContentsMargins(kSpace6Px - kTextFrame, kSpace3Px, kSpace6Px, kSpace6Px);
    column->setSpacing(0);
    column->setAlignment(Qt::AlignTop);
    // The title's frame, seen while it is edited, stands out so that its text does not.
    column->addWidget(title_);
    auto* inset = new QVBoxLayout;
    inset->setContentsMargins(kTextFrame, 0, 0, 0);
    inset->setSpacing(0);
    inset->addWidget(yields_);
    inset->addWidget(refusal_);
    inset->addSpacing(kSpace4Px);
    inset->addWidget(lines_);
    inset->addWidget(note_);
    inset->addSpacing(kSpace4Px);
    inset->addWidget(method_);
    column->addLayout(inset);
    column->addStretch(1);

    QScrollArea* scroll = scrolling(page);
    auto* whole = new QVBoxLayout{this};
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
    setEntry(lines_->entry());
    // Once what it is to say is laid out.
    connect(
        note_, &LineNote::touched, scroll,
        [this, scroll] { scroll->ensureWidgetVisible(note_, 0, kSpace2Px); }, Qt::QueuedConnection);
}

void SheetPane::followDraft() {
    DraftSession* draft = kitchen_.draft();
    title_->setDraft(draft);
    yields_->setDraft(draft);
    lines_->setDraft(draft);
    note_->setDraft(draft);
    method_->setDraft(draft);
}

QString SheetPane::title() const {
    return kitchen_.draft() == nullptr ? QString{} : shownTitle(*kitchen_.draft());
}

void SheetPane::editTitle() {
    title_->setFocus(Qt::OtherFocusReason);
    title_->selectAll();
}

QString SheetPane::currentLine() const {
    return QString::fromStdString(lines_->currentLine());
}

void SheetPane::goToLine(const QString& line) {
    lines_->choose(line.toStdString());
    lines_->entry()->setFocus(Qt::OtherFocusReason);
}

void SheetPane::addLine() {
    lines_->addLine();
}

void SheetPane::addStep() {
    method_->addStep();
}

// The same keys mean the line or the step, whichever has the focus.
void SheetPane::removeCurrent() {
    if (const auto step = method_->focusedStep())
        method_->removeStep(*step);
    else
        lines_->removeCurrent();
}

void SheetPane::moveCurrent(bool up) {
    if (const auto step = method_->focusedStep())
        method_->moveStep(*step, up);
    else
        lines_->moveCurrent(up);
}

}  // namespace nettare
