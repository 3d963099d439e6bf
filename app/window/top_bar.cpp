#include "app/window/top_bar.h"

#include <QToolButton>

#include <algorithm>

#include "app/session/kitchen_session.h"
#include "app/sheet/document_texts.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/window/action_button.h"
#include "app/window/action_words.h"
#include "app/window/saved_text.h"

namespace nettare {

namespace {

constexpr int kWidestTitle = 440;

}  // namespace

TopBar::TopBar(KitchenSession& kitchen, QAction* undo, QAction* redo, QAction* keep,
               QWidget* parent)
    : Pane{tr("Top bar"), Role::Raised, parent},
      kitchen_{kitchen},
      title_{new QLabel},
      state_{new QLabel},
      screens_{new QHBoxLayout},
      keep_{actionButton(keep)} {
    setHairlines(Qt::BottomEdge);
    title_->setFont(typeFont(TypeSize::Body, Weight::Bold));
    title_->setWordWrap(true);
    title_->setTextFormat(Qt::PlainText);
    state_->setProperty("tone", QStringLiteral("secondary"));
    state_->setWordWrap(true);
    keep_->setProperty("primary", true);
    screens_->setSpacing(kSpace3Px);

    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(kSpace4Px, kSpace1Px, kSpace4Px, kSpace2Px);
    row->setSpacing(kSpace4Px);
    row->addWidget(title_);
    row->addWidget(state_, 1);
    row->addWidget(makeIconButton(undo));
    row->addWidget(makeIconButton(redo));
    row->addLayout(screens_);
    row->addWidget(keep_);

    clock_.setInterval(1000);
    connect(&clock_, &QTimer::timeout, this, &TopBar::showState);
    clock_.start();
    connect(&kitchen_, &KitchenSession::saveStateChanged, this, &TopBar::showState);
    connect(&kitchen_, &KitchenSession::kitchenMoved, this, &TopBar::showState);
    connect(&kitchen_, &KitchenSession::revisionsChanged, this, &TopBar::showState);
    connect(&kitchen_, &KitchenSession::draftOpened, this, [this] {
        connect(kitchen_.draft(), &DraftSession::documentChanged, this, &TopBar::showTitle);
        connect(kitchen_.draft(), &DraftSession::baseRevisionChanged, this, &TopBar::showState);
        showTitle();
        showState();
    });
    showTitle();
    showState();
}

QWidget* TopBar::makeIconButton(QAction* action) {
    auto* button = new QToolButton;
    button->setDefaultAction(action);
    button->setFocusPolicy(Qt::TabFocus);
    button->setToolButtonStyle(Qt::ToolButtonIconOnly);
    // The action's words tell what would be undone; an icon alone has no name.
    const auto name = [button, action] { button->setAccessibleName(actionWords(*action)); };
    connect(action, &QAction::changed, button, name);
    name();
    return button;
}

// One screen needs no button to reach it.
void TopBar::addScreenButton(QAction* action) {
    QPushButton* button = actionButton(action);
    screens_->addWidget(button);
    if (screens_->count() == 1) button->hide();
    if (screens_->count() == 2) screens_->itemAt(0)->widget()->show();
}

// As wide as its text where there is room; a longer one wraps.
void TopBar::showTitle() {
    const QString title =
        kitchen_.draft() == nullptr ? QString{} : documentTitle(kitchen_.draft()->document());
    title_->setText(title);
    const int advance = title_->fontMetrics().horizontalAdvance(title) + kSpace1Px;
    title_->setFixedWidth(std::min(advance, kWidestTitle));
}

void TopBar::showState() {
    const QString text = savedText(kitchen_);
    if (text != state_->text()) state_->setText(text);
    title_->setVisible(kitchen_.draft() != nullptr);
}

}  // namespace nettare
