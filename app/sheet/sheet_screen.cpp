#include "app/sheet/sheet_screen.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/figures/figures_pane.h"
#include "app/scale/scale_strip.h"
#include "app/session/kitchen_session.h"
#include "app/sheet/line_note.h"
#include "app/sheet/optional_line.h"
#include "app/sheet/sheet_pane.h"
#include "app/shelf/shelf.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"

namespace nettare {

namespace {

constexpr int kShelfWidth = 224;

}  // namespace

SheetScreen::SheetScreen(KitchenSession& kitchen, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      shelf_{new Shelf{kitchen}},
      sheet_{new SheetPane{kitchen}},
      figures_{new FiguresPane{kitchen}},
      scale_{new ScaleStrip{kitchen}},
      middle_{new QStackedWidget} {
    shelf_->setFixedWidth(kShelfWidth);
    middle_->addWidget(makeEmpty());
    middle_->addWidget(sheet_);

    auto* row = new QHBoxLayout;
    row->setSpacing(0);
    row->addWidget(shelf_);
    row->addWidget(middle_, 1);
    row->addWidget(figures_);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(row, 1);
    column->addWidget(scale_);

    connect(shelf_, &Shelf::newRecipeAsked, this, &SheetScreen::newRecipeAsked);
    connect(sheet_, &SheetPane::failed, this, &SheetScreen::failed);
    connect(sheet_, &SheetPane::lineChosen, scale_, &ScaleStrip::setLine);
    connect(sheet_, &SheetPane::weighAsked, scale_, &ScaleStrip::weighFor);
    connect(&sheet_->note(), &LineNote::weighAsked, this, [this] {
        scale_->weighFor({PurposeKind::Line, sheet_->note().line(), {}});
    });
    connect(&sheet_->note(), &LineNote::rowsAsked, this, &SheetScreen::rowsAsked);
    connect(&kitchen_, &KitchenSession::draftOpened, this, &SheetScreen::followDraft);
    connect(&kitchen_, &KitchenSession::shelfChanged, this, &SheetScreen::openFirst);
    followDraft();
    openFirst();
}

QWidget* SheetScreen::makeEmpty() {
    auto* empty = new QWidget;
    auto* words = new QLabel{tr("No recipe is open. Choose one on the shelf or begin a new one.")};
    words->setWordWrap(true);
    words->setFont(typeFont(TypeSize::Section));
    auto* begin = new QPushButton{tr("New recipe")};
    if (!kitchen_.writable()) begin->hide();
    connect(begin, &QPushButton::clicked, this, &SheetScreen::newRecipeAsked);
    auto* column = new QVBoxLayout{empty};
    column->setContentsMargins(kSpace8Px, kSpace8Px, kSpace8Px, kSpace8Px);
    column->setSpacing(kSpace4Px);
    column->addWidget(words);
    column->addWidget(begin, 0, Qt::AlignLeft);
    column->addStretch(1);
    return empty;
}

std::vector<Pane*> SheetScreen::panes() const {
    return {shelf_, sheet_, figures_, scale_};
}

QString SheetScreen::title() const {
    return sheet_->title();
}

void SheetScreen::openFirst() {
    if (kitchen_.draft() == nullptr && !kitchen_.shelf().empty() && !shelf_->isSearching())
        kitchen_.openRecipe(shelf_->firstRecipe());
}

void SheetScreen::followDraft() {
    const bool open = kitchen_.draft() != nullptr;
    middle_->setCurrentIndex(open ? 1 : 0);
    figures_->setVisible(open);
    scale_->setVisible(open);
    scale_->setLine(sheet_->currentLine());
    // A window that has just opened begins on the page, not on a button above it.
    const QWidget* focused = window()->focusWidget();
    if (open && (focused == nullptr || !isAncestorOf(focused))) sheet_->enter();
    if (open && titleNext_) {
        titleNext_ = false;
        sheet_->editTitle();
    }
}

void SheetScreen::goToLine(const QString& line) {
    sheet_->goToLine(line);
}

void SheetScreen::addLine() {
    sheet_->addLine();
}

void SheetScreen::addStep() {
    sheet_->addStep();
}

void SheetScreen::removeCurrent() {
    sheet_->removeCurrent();
}

void SheetScreen::moveCurrent(bool up) {
    sheet_->moveCurrent(up);
}

void SheetScreen::toggleOptional() {
    if (kitchen_.draft() == nullptr) return;
    const std::string line = sheet_->currentLine().toStdString();
    if (auto done = nettare::toggleOptional(*kitchen_.draft(), line); !done)
        emit failed(done.error());
}

std::string SheetScreen::currentLine() const {
    return sheet_->note().line();
}

void SheetScreen::takeNextWay(bool back) {
    sheet_->note().takeNext(back);
}

void SheetScreen::takeBetterWay() {
    sheet_->note().takeBetter();
}

void SheetScreen::assumeGrams() {
    sheet_->note().assume();
}

void SheetScreen::bindLine() {
    sheet_->note().bind();
}

void SheetScreen::weigh() {
    scale_->begin();
}

void SheetScreen::findRecipe() {
    shelf_->find();
}

}  // namespace nettare
