#include "app/shelf/shelf.h"

#include <QKeyEvent>
#include <QVBoxLayout>

#include "app/session/kitchen_session.h"
#include "app/shelf/shelf_delegate.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

/// A list on the paper of its pane.
QListView* makeList(QAbstractItemModel* model, QWidget* parent) {
    auto* list = new QListView{parent};
    list->setModel(model);
    list->setItemDelegate(new ShelfDelegate{list});
    list->setResizeMode(QListView::Adjust);
    list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    list->setMouseTracking(true);
    list->setFrameShape(QFrame::NoFrame);
    list->setStyleSheet(QStringLiteral("QListView { background: transparent; }"));
    return list;
}

}  // namespace

Shelf::Shelf(KitchenSession& kitchen, QWidget* parent)
    : Pane{tr("Shelf"), Role::Paper, parent},
      kitchen_{kitchen},
      words_{new QLineEdit},
      model_{new ShelfModel{this}},
      list_{makeList(model_, this)},
      empty_{new QWidget},
      emptyText_{new QLabel},
      newRecipe_{new QPushButton{tr("New recipe")}},
      showAll_{new QPushButton{tr("Show all recipes")}} {
    setHairlines(Qt::RightEdge);
    words_->setObjectName(QStringLiteral("findRecipeField"));
    list_->setObjectName(QStringLiteral("recipes"));
    words_->setPlaceholderText(tr("Find a recipe…"));
    words_->setAccessibleName(tr("Find a recipe"));
    words_->setClearButtonEnabled(false);
    words_->installEventFilter(this);
    list_->setAccessibleName(tr("Recipes"));
    setEntry(list_);
    buildEmpty();

    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(kSpace3Px, kSpace3Px, kSpace3Px, kSpace3Px);
    column->setSpacing(kSpace2Px);
    column->addWidget(words_);
    column->addWidget(list_, 1);
    column->addWidget(empty_, 1);

    connect(words_, &QLineEdit::textChanged, &kitchen_, &KitchenSession::findRecipes);
    connect(list_, &QListView::clicked, this, &Shelf::open);
    connect(list_, &QListView::activated, this, &Shelf::open);
    connect(&kitchen_, &KitchenSession::shelfChanged, this, &Shelf::follow);
    connect(&kitchen_, &KitchenSession::draftOpened, this, &Shelf::markOpenRecipe);
    connect(&kitchen_, &KitchenSession::kitchenMoved, this, &Shelf::follow);
    follow();
}

void Shelf::buildEmpty() {
    emptyText_->setWordWrap(true);
    emptyText_->setProperty("tone", QStringLiteral("secondary"));
    auto* column = new QVBoxLayout{empty_};
    column->setContentsMargins(0, kSpace3Px, 0, 0);
    column->setSpacing(kSpace3Px);
    column->addWidget(emptyText_);
    column->addWidget(newRecipe_, 0, Qt::AlignLeft);
    column->addWidget(showAll_, 0, Qt::AlignLeft);
    column->addStretch(1);
    connect(newRecipe_, &QPushButton::clicked, this, &Shelf::newRecipeAsked);
    connect(showAll_, &QPushButton::clicked, words_, &QLineEdit::clear);
}

void Shelf::find() {
    words_->setFocus(Qt::ShortcutFocusReason);
    words_->selectAll();
}

QString Shelf::firstRecipe() const {
    return model_->index(1).data(ShelfModel::RecipeRole).toString();
}

void Shelf::follow() {
    model_->show(kitchen_.shelf());
    const bool searching = isSearching();
    const bool nothing = kitchen_.shelf().empty();
    list_->setVisible(!nothing);
    empty_->setVisible(nothing);
    emptyText_->setText(searching ? tr("No recipe here holds all these words.")
                                  : tr("This kitchen has no recipe yet."));
    newRecipe_->setVisible(!searching && kitchen_.writable());
    showAll_->setVisible(searching);
    markOpenRecipe();
}

void Shelf::markOpenRecipe() {
    const QString id = kitchen_.draft() == nullptr ? QString{} : kitchen_.draft()->recipe();
    const QModelIndex index = model_->indexOfRecipe(id);
    if (index == list_->currentIndex() && index.isValid()) return;
    list_->selectionModel()->setCurrentIndex(index, QItemSelectionModel::ClearAndSelect);
}

void Shelf::open(const QModelIndex& index) {
    const QString id = index.data(ShelfModel::RecipeRole).toString();
    if (id.isEmpty()) return;
    if (kitchen_.draft() != nullptr && kitchen_.draft()->recipe() == id) return;
    kitchen_.openRecipe(id);
}

bool Shelf::eventFilter(QObject* object, QEvent* event) {
    if (object != words_ || event->type() != QEvent::KeyPress)
        return Pane::eventFilter(object, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool intoList = key == Qt::Key_Down || key == Qt::Key_Return || key == Qt::Key_Enter;
    if (intoList && list_->isVisible()) {
        list_->setFocus(Qt::TabFocusReason);
        if (!list_->currentIndex().isValid()) list_->setCurrentIndex(model_->index(1));
        if (key != Qt::Key_Down) open(list_->currentIndex());
        return true;
    }
    if (key == Qt::Key_Escape && !words_->text().isEmpty()) {
        words_->clear();
        return true;
    }
    return false;
}

}  // namespace nettare
