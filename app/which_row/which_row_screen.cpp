#include "app/which_row/which_row_screen.h"

#include <QHeaderView>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

#include "app/figures/figure_words.h"
#include "app/session/draft_title.h"
#include "app/session/kitchen_session.h"
#include "app/sheet/draft_sentence.h"
#include "app/theme/spacing.h"
#include "app/which_row/row_model.h"
#include "app/widgets/basis_switch.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/message_line.h"
#include "app/widgets/screen_header.h"
#include "app/widgets/table_delegate.h"
#include "app/words/error_sentence.h"
#include "core/edit/edit_draft.h"

namespace nettare {

namespace {

constexpr std::array kRowBases{Basis::Piece, Basis::Portion, Basis::Hundred, Basis::Batch};
constexpr std::size_t kMostRowsOfThing = 12;

QString withCapital(const std::string& word) {
    QString text = QString::fromStdString(word);
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

/// As tall as its rows, and no taller; a long one scrolls.
void fitToRows(QTableView& table) {
    const QHeaderView& header = *table.horizontalHeader();
    const int head = std::max(header.height(), header.sizeHint().height());
    const int row = table.verticalHeader()->defaultSectionSize();
    table.setMaximumHeight(head + table.model()->rowCount() * row + 2);
}

}  // namespace

WhichRowScreen::WhichRowScreen(KitchenSession& kitchen, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      header_{new ScreenHeader{tr("Which row")}},
      stack_{new QStackedWidget},
      empty_{new EmptyState},
      foods_{new QComboBox},
      switch_{new BasisSwitch},
      model_{new RowModel{this}},
      table_{new QTableView},
      effect_{new QLabel},
      hint_{new QLabel{tr("Behind each figure stands how far it is from the row as it is now; "
                          "bold where its 95 % interval does not hold zero. How the grams were "
                          "found stays, so weigh the food in the state that the row describes.")}},
      message_{new MessageLine},
      take_{new QPushButton{tr("&Use this row")}} {
    build();
    connect(foods_, &QComboBox::activated, this, [this](int index) {
        food_ = questions_[static_cast<std::size_t>(index)].food;
        refresh();
    });
    connect(switch_, &BasisSwitch::chosen, this, [this](int index) {
        basis_ = kRowBases[static_cast<std::size_t>(index)];
        refresh();
    });
    connect(take_, &QPushButton::clicked, this, &WhichRowScreen::take);
    connect(table_, &QTableView::activated, this, &WhichRowScreen::take);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &WhichRowScreen::showEffect);
    connect(empty_, &EmptyState::actionChosen, this, &WhichRowScreen::sheetWanted);
    connect(&kitchen_, &KitchenSession::draftOpened, this, [this] {
        if (kitchen_.draft() != nullptr)
            connect(kitchen_.draft(), &DraftSession::evaluationChanged, this,
                    &WhichRowScreen::follow);
        follow();
    });
    connect(&kitchen_, &KitchenSession::tablesChanged, this, &WhichRowScreen::follow);
    follow();
}

void WhichRowScreen::build() {
    take_->setObjectName(QStringLiteral("useRow"));
    take_->setProperty("primary", true);
    header_->addAction(take_);
    foods_->setObjectName(QStringLiteral("rowFood"));
    foods_->setAccessibleName(tr("Food of the recipe"));
    foods_->setMinimumContentsLength(18);
    switch_->setObjectName(QStringLiteral("rowBasis"));
    switch_->setAccessibleName(tr("Figures per"));
    table_->setObjectName(QStringLiteral("rowOptions"));
    table_->setAccessibleName(tr("Rows that could be meant"));
    table_->setModel(model_);
    dressTable(*table_);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(RowModel::Name, QHeaderView::Stretch);
    effect_->setObjectName(QStringLiteral("rowEffect"));
    for (QLabel* label : {effect_, hint_}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
    }
    hint_->setProperty("tone", QStringLiteral("secondary"));

    auto* choices = new QHBoxLayout;
    choices->setSpacing(kSpace4Px);
    choices->addWidget(foods_);
    choices->addStretch(1);
    choices->addWidget(switch_);
    auto* page = new QWidget;
    auto* column = new QVBoxLayout{page};
    column->setContentsMargins(kSpace6Px, kSpace4Px, kSpace6Px, kSpace4Px);
    column->setSpacing(kSpace3Px);
    column->addLayout(choices);
    column->addWidget(table_, 1);
    column->addWidget(effect_);
    column->addWidget(message_);
    column->addWidget(hint_);
    column->addStretch(0);
    stack_->addWidget(page);
    stack_->addWidget(empty_);
    auto* whole = new QVBoxLayout{this};
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    whole->addWidget(header_);
    whole->addWidget(stack_, 1);
}

void WhichRowScreen::askAbout(const std::string& line) {
    const DraftSession* draft = kitchen_.draft();
    if (draft == nullptr) return;
    if (const auto entry = entryNamed(draft->document(), "lines", line))
        food_ = textAt(**entry, "food");
    follow();
}

void WhichRowScreen::follow() {
    stale_ = !isVisible();
    if (stale_) return;
    const DraftSession* draft = kitchen_.draft();
    header_->setSubject(draftTitle(draft));
    const bool figures = draft != nullptr && draft->evaluation() && !draft->failure();
    questions_ = draft != nullptr ? rowQuestions(draft->document()) : std::vector<RowQuestion>{};
    const bool any = figures && !questions_.empty() && kitchen_.tables() != nullptr;
    stack_->setCurrentIndex(any ? 0 : 1);
    take_->setVisible(any);
    if (any) {
        fillFoods();
        return refresh();
    }
    empty_->show(tr("There is no row to choose yet"),
                 draft != nullptr && draft->failure()
                     ? draftSentence(draft->document(), *draft->failure())
                     : tr("Open a recipe with figures and a food of a table, and the rows that "
                          "could be meant stand here side by side."),
                 tr("Go to the sheet"));
}

void WhichRowScreen::fillFoods() {
    if (question() == nullptr) food_ = questions_.front().food;
    foods_->clear();
    for (const RowQuestion& one : questions_) {
        foods_->addItem(QString::fromStdString(one.name));
        if (one.food == food_) foods_->setCurrentIndex(foods_->count() - 1);
    }
    const Recipe& recipe = kitchen_.draft()->evaluation()->dossier.main();
    switch_->setTexts({withCapital(recipe.pieceWord), tr("Portion"), tr("100 g"), tr("Batch")});
    switch_->setIndex(static_cast<int>(basis_));
}

const RowQuestion* WhichRowScreen::question() const {
    const auto found = std::ranges::find(questions_, food_, &RowQuestion::food);
    return found == questions_.end() ? nullptr : &*found;
}

void WhichRowScreen::refresh() {
    const DraftSession& draft = *kitchen_.draft();
    const RowQuestion* asked = question();
    if (asked == nullptr || !draft.evaluation()) return;
    message_->clear();
    const auto current = kitchen_.food(asked->row);
    if (!current) {
        model_->show({});
        return showEffect();
    }
    auto rows = rowsOfOneThing(*kitchen_.tables(), *current, asked->name, kMostRowsOfThing);
    if (!rows) {
        model_->show({});
        message_->say(MessageKind::Warning, QString::fromStdString(errorSentence(rows.error())));
        return showEffect();
    }
    model_->show(rowOptions(draft.document(), draft.closure(), *draft.evaluation(), *asked,
                            std::move(*rows), basis_));
    fitToRows(*table_);
    if (model_->rowCount() == 1)
        message_->say(MessageKind::Info, tr("The tables at hand have no other row of this food."));
    table_->selectRow(std::max(0, model_->currentRow()));
    showEffect();
}

void WhichRowScreen::showEffect() {
    const DraftSession* draft = kitchen_.draft();
    const RowOption* option = model_->at(table_->currentIndex().row());
    take_->setEnabled(option != nullptr && !option->current && draft != nullptr &&
                      !draft->readOnly());
    QStringList words;
    if (option != nullptr && option->failure)
        words += draftSentence(draft->document(), *option->failure);
    if (option != nullptr)
        for (const TargetVerdict& verdict : option->verdicts)
            words += verdictText(verdict, draft->evaluation()->dossier.main(), true);
    effect_->setText(words.join(QLatin1Char{'\n'}));
    effect_->setVisible(!words.isEmpty());
}

void WhichRowScreen::take() {
    DraftSession* const draft = kitchen_.draft();
    const RowOption* option = model_->at(table_->currentIndex().row());
    if (option == nullptr || option->current || draft == nullptr || draft->readOnly()) return;
    draft->endTyping();
    const RowOption chosen = *option;  // the figures that follow fill the model anew
    if (const auto done = draft->apply(chosen.edit, chosen.food); !done)
        return emit failed(done.error());
    draft->endTyping();
}

void WhichRowScreen::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) follow();
}

}  // namespace nettare
