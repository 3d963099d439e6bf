#include "app/limits/limits_screen.h"

#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/limits/assumption_fields.h"
#include "app/limits/limit_entry.h"
#include "app/limits/limit_rows.h"
#include "app/session/draft_title.h"
#include "app/session/kitchen_session.h"
#include "app/sheet/refusal_line.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/screen_header.h"
#include "app/widgets/scrolling.h"

namespace nettare {

namespace {

constexpr int kColumnWidth = 560;

QLabel* sectionLabel(const QString& text) {
    auto* label = new QLabel{text};
    label->setFont(typeFont(TypeSize::Section, Weight::Bold));
    return label;
}

QLabel* quietLabel(const QString& text) {
    auto* label = new QLabel{text};
    label->setWordWrap(true);
    label->setProperty("tone", QStringLiteral("secondary"));
    return label;
}

}  // namespace

LimitsScreen::LimitsScreen(KitchenSession& kitchen, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      header_{new ScreenHeader{tr("Limits")}},
      stack_{new QStackedWidget},
      empty_{new EmptyState},
      refusal_{new RefusalLine},
      rows_{new LimitRows{*refusal_}},
      entry_{new LimitEntry},
      assumptions_{new AssumptionFields{*refusal_}} {
    refusal_->watch(entry_);
    stack_->addWidget(buildPage());
    stack_->addWidget(empty_);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(header_);
    column->addWidget(stack_, 1);
    connect(rows_, &LimitRows::failed, this, &LimitsScreen::failed);
    connect(empty_, &EmptyState::actionChosen, this, &LimitsScreen::sheetWanted);
    connect(&kitchen_, &KitchenSession::draftOpened, this, &LimitsScreen::followDraft);
    followDraft();
}

QWidget* LimitsScreen::buildPage() {
    auto* limits = new QVBoxLayout;
    limits->setSpacing(kSpace3Px);
    limits->addWidget(sectionLabel(tr("Ceilings and floors")));
    limits->addWidget(
        quietLabel(tr("A ceiling is kept while the upper end of the interval stays below it, a "
                      "floor while the lower end stays above.")));
    limits->addWidget(rows_);
    limits->addWidget(entry_);
    limits->addWidget(refusal_);
    limits->addStretch(1);
    auto* assumed = new QVBoxLayout;
    assumed->setSpacing(kSpace3Px);
    assumed->addWidget(sectionLabel(tr("Assumptions")));
    assumed->addWidget(quietLabel(
        tr("They count only where nothing was weighed and no source says it. An empty field takes "
           "its default again.")));
    assumed->addWidget(assumptions_);
    assumed->addStretch(1);

    auto* page = new QWidget;
    auto* row = new QHBoxLayout{page};
    row->setContentsMargins(kSpace6Px, kSpace4Px, kSpace6Px, kSpace6Px);
    row->setSpacing(kSpace8Px);
    for (QVBoxLayout* column : {limits, assumed}) {
        auto* part = new QWidget;
        part->setMaximumWidth(kColumnWidth);
        column->setContentsMargins(0, 0, 0, 0);
        part->setLayout(column);
        row->addWidget(part, 1);
    }
    row->addStretch();
    return scrolling(page);
}

void LimitsScreen::followDraft() {
    DraftSession* const draft = kitchen_.draft();
    header_->setSubject(draftTitle(draft));
    stack_->setCurrentIndex(draft == nullptr ? 1 : 0);
    if (draft == nullptr)
        empty_->show(tr("No recipe is open"),
                     tr("Open a recipe from the shelf, and what it promises is set here."),
                     tr("Go to the sheet"));
    rows_->setDraft(draft);
    entry_->setDraft(draft);
    assumptions_->setDraft(draft);
}

}  // namespace nettare
