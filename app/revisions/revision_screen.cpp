#include "app/revisions/revision_screen.h"

#include "app/revisions/bring_back_bar.h"
#include "app/revisions/revision_figures.h"
#include "app/revisions/revision_model.h"
#include "app/revisions/revision_words.h"
#include "app/session/draft_title.h"
#include "app/session/kitchen_session.h"
#include "app/theme/spacing.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/plain_tip.h"
#include "app/widgets/screen_header.h"
#include "app/widgets/table_delegate.h"

#include <QHeaderView>
#include <QItemSelectionModel>
#include <QKeyEvent>
#include <QLabel>
#include <QPointer>
#include <QPushButton>
#include <QStackedLayout>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace nettare {

RevisionScreen::RevisionScreen(KitchenSession& kitchen, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      header_{new ScreenHeader{tr("Revisions")}},
      withDraft_{new QPushButton{tr("Compare with draft")}},
      two_{new QPushButton{tr("Compare two")}},
      bringBack_{new QPushButton{tr("Bring back…")}},
      bar_{new BringBackBar{kitchen}},
      model_{new RevisionModel{this}},
      table_{new QTableView},
      empty_{new EmptyState},
      detail_{new QLabel} {
    auto* const column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    buildHeader();
    buildTable();
    column->addWidget(header_);
    column->addWidget(bar_);
    column->addWidget(buildBody(), 1);
    connect(empty_, &EmptyState::actionChosen, this, &RevisionScreen::keepAsked);
    connect(bar_, &BringBackBar::left, table_, qOverload<>(&QWidget::setFocus));
    connect(&kitchen_, &KitchenSession::draftOpened, this, &RevisionScreen::follow);
    connect(&kitchen_, &KitchenSession::revisionsChanged, this, &RevisionScreen::follow);
    connect(&kitchen_, &KitchenSession::failed, this, [this] { loading_ = false; });
    follow();
}

void RevisionScreen::buildHeader() {
    withDraft_->setObjectName(QStringLiteral("compareWithDraft"));
    two_->setObjectName(QStringLiteral("compareTwo"));
    two_->setToolTip(tr("Select two revisions: Shift or Ctrl with a click or an arrow key."));
    bringBack_->setObjectName(QStringLiteral("bringBack"));
    for (QPushButton* button : {withDraft_, two_, bringBack_}) header_->addAction(button);
    connect(withDraft_, &QPushButton::clicked, this, &RevisionScreen::compareWithDraft);
    connect(two_, &QPushButton::clicked, this, &RevisionScreen::compareTwo);
    connect(bringBack_, &QPushButton::clicked, this, [this] {
        if (const auto chosen = selected(); chosen.size() == 1) bar_->ask(chosen.front());
    });
}

void RevisionScreen::buildTable() {
    table_->setObjectName(QStringLiteral("revisions"));
    dressTable(*table_);
    table_->setAccessibleName(tr("Revisions, newest first"));
    table_->setModel(model_);
    table_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    QHeaderView* const header = table_->horizontalHeader();
    header->setSectionResizeMode(RevisionModel::Note, QHeaderView::Stretch);
    table_->installEventFilter(this);
    connect(table_->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            &RevisionScreen::followSelection);
    connect(model_, &RevisionModel::dataChanged, this, &RevisionScreen::fitColumns);
    connect(table_, &QTableView::doubleClicked, this, &RevisionScreen::compareWithDraft);
}

// Notes are long, and a row shows their beginning: the chosen one stands below in full.
QWidget* RevisionScreen::buildBody() {
    detail_->setObjectName(QStringLiteral("detail"));
    detail_->setWordWrap(true);
    detail_->setTextFormat(Qt::PlainText);
    detail_->setContentsMargins(kSpace6Px, kSpace3Px, kSpace6Px, kSpace4Px);
    auto* const list = new QWidget;
    auto* const column = new QVBoxLayout{list};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(table_, 1);
    column->addWidget(detail_);
    auto* const body = new QWidget;
    stack_ = new QStackedLayout{body};
    stack_->addWidget(list);
    stack_->addWidget(empty_);
    return body;
}

void RevisionScreen::fitColumns() {
    for (int column = 0; column < RevisionModel::ColumnCount; ++column)
        if (column != RevisionModel::Note) table_->resizeColumnToContents(column);
}

std::vector<int> RevisionScreen::selected() const {
    std::vector<int> numbers;
    for (const QModelIndex& row : table_->selectionModel()->selectedRows())
        numbers.push_back(model_->at(row.row()).number);
    std::sort(numbers.begin(), numbers.end());
    return numbers;
}

void RevisionScreen::follow() {
    const DraftSession* const draft = kitchen_.draft();
    const auto before = selected();
    header_->setSubject(draftTitle(draft));
    model_->show(draft == nullptr ? QString{} : draft->recipe(), kitchen_.revisions());
    const bool any = model_->rowCount() > 0;
    if (any) {
        fitColumns();
        const int row = before.empty() ? 0 : std::max(0, model_->rowOf(before.front()));
        table_->selectRow(row);
    } else {
        showEmpty();
    }
    stack_->setCurrentIndex(any ? 0 : 1);
    followSelection();
    if (isVisible()) loadFigures();
}

void RevisionScreen::showEmpty() {
    const DraftSession* const draft = kitchen_.draft();
    if (draft == nullptr)
        return empty_->show(tr("No recipe is open"),
                            tr("Open a recipe from the shelf, and its revisions appear here."));
    empty_->show(tr("No revision kept yet"),
                 tr("A revision is the recipe as it is now, kept for good with its readings, its "
                    "foods and its figures. Later ones can be compared with it."),
                 kitchen_.writable() ? tr("Keep as revision 1") : QString{});
}

void RevisionScreen::followSelection() {
    const auto chosen = selected();
    const std::size_t count = chosen.size();
    QStringList titles;
    for (const int number : chosen) titles << revisionTitle(model_->at(model_->rowOf(number)));
    detail_->setText(count > 2 ? QString{} : titles.join(u'\n'));
    withDraft_->setEnabled(count == 1);
    two_->setEnabled(count == 2);
    const QString hindrance = BringBackBar::hindrance(kitchen_);
    bringBack_->setEnabled(count == 1 && hindrance.isEmpty());
    bringBack_->setToolTip(plainTip(hindrance));
}

// One at a time: between two of them the journal gets its turn.
void RevisionScreen::loadFigures() {
    if (loading_ || kitchen_.draft() == nullptr) return;
    for (int row = 0; row < model_->rowCount(); ++row) {
        const int number = model_->at(row).number;
        if (model_->knows(number)) continue;
        loading_ = true;
        return kitchen_.openRevision(
            number, [this, number, recipe = kitchen_.draft()->recipe(),
                     guard = QPointer<RevisionScreen>{this}](const OpenedRevision& opened) {
                if (!guard) return;
                loading_ = false;
                const DraftSession* const draft = kitchen_.draft();
                if (draft != nullptr && draft->recipe() == recipe)
                    model_->setFigures(number, revisionFiguresOf(opened));
                loadFigures();
            });
    }
}

void RevisionScreen::compareWithDraft() {
    if (const auto chosen = selected(); chosen.size() == 1)
        emit compareAsked(chosen.front(), std::nullopt);
}

void RevisionScreen::compareTwo() {
    if (const auto chosen = selected(); chosen.size() == 2)
        emit compareAsked(chosen.front(), chosen.back());
}

void RevisionScreen::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    header_->setSubject(draftTitle(kitchen_.draft()));
    loadFigures();
}

bool RevisionScreen::eventFilter(QObject* object, QEvent* event) {
    if (object == table_ && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            if (selected().size() == 2)
                compareTwo();
            else
                compareWithDraft();
            return true;
        }
    }
    return QWidget::eventFilter(object, event);
}

}  // namespace nettare
