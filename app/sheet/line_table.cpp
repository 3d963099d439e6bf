#include "app/sheet/line_table.h"

#include <QApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QVBoxLayout>

#include "app/session/kitchen_session.h"
#include "app/sheet/draft_sentence.h"
#include "app/sheet/entry_line.h"
#include "app/sheet/food_completer.h"
#include "app/sheet/line_delegate.h"
#include "app/sheet/line_text.h"
#include "app/sheet/meaning_question.h"
#include "app/sheet/refusal_line.h"
#include "app/theme/spacing.h"
#include "core/edit/written_line.h"
#include "core/wording/line_meanings.h"

namespace nettare {

namespace {

/// What a column gets of the width that is left, and never less than so many pixels.
struct ColumnShare {
    LineColumn column;
    int least_px, share;
};
constexpr ColumnShare kColumns[] = {
    {LineColumn::Amount, 86, 3}, {LineColumn::Ingredient, 180, 10}, {LineColumn::Grams, 62, 1},
    {LineColumn::Spread, 50, 1}, {LineColumn::Way, 112, 4},         {LineColumn::Energy, 54, 1},
    {LineColumn::Share, 56, 3},  {LineColumn::Margin, 32, 0},
};

/// A unit in full where its symbol alone would ask the same question again.
QString meaningAnswer(const LineReading& meaning) {
    QString text = QString::fromStdString(meaningText(meaning));
    const auto& units =
        meaning.units.empty() && !meaning.each.empty() ? meaning.each.front().units : meaning.units;
    if (units.size() != 1) return text;
    if (units.front() == "oz") return LineTable::tr("%1 by weight").arg(text);
    if (units.front() == "fl oz") return LineTable::tr("%1 by volume").arg(text);
    return text;
}

QString foodWords(const KitchenSession& kitchen, const QString& text) {
    const auto isFood = [&kitchen](const QString& words) { return isFoodAsTyped(kitchen, words); };
    return QString::fromStdString(readNewLine(text, isFood).food);
}

}  // namespace

LineTable::LineTable(KitchenSession& kitchen, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      model_{new LinesModel{this}},
      view_{new QTableView{this}},
      entry_{new EntryLine{tr("Add a line"), tr("Add a line… such as “3 tbsp olive oil”")}},
      completer_{new FoodCompleter{
          kitchen, *entry_, [this](const QString& text) { return foodWords(kitchen_, text); }}},
      question_{new MeaningQuestion},
      refusal_{new RefusalLine} {
    build();
    connect(question_, &MeaningQuestion::left, this,
            [this] { entry_->setFocus(Qt::OtherFocusReason); });
    entry_->setListOpen([this] { return completer_->isOpen(); });
    connect(entry_, &EntryLine::entered, this,
            [this](const QString& text) { add(text, std::nullopt); });
    connect(completer_, &FoodCompleter::chosen, this,
            [this](const FoodOffer& offer) { add(entry_->text(), offer); });
    connect(entry_, &QLineEdit::textEdited, this, [this] {
        question_->hide();
        refuseNew({});
    });
    connect(model_, &QAbstractItemModel::modelReset, this, &LineTable::follow);
    connect(model_, &QAbstractItemModel::dataChanged, this, [this] {
        fitRows();
        showFailure();
    });
}

void LineTable::build() {
    view_->setObjectName(QStringLiteral("lines"));
    entry_->setObjectName(QStringLiteral("newLine"));
    view_->setModel(model_);
    dressTable(*view_);
    view_->setItemDelegate(new LineDelegate{kitchen_, *refusal_, view_});
    view_->setAccessibleName(tr("Ingredients"));
    view_->setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::EditKeyPressed |
                           QAbstractItemView::DoubleClicked | QAbstractItemView::SelectedClicked);
    view_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    view_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    view_->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    view_->horizontalHeader()->setMinimumSectionSize(kSpace8Px);
    view_->installEventFilter(this);
    connect(view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        const QModelIndex index = view_->currentIndex();
        if (index.isValid()) current_ = model_->row(index.row()).id;
        emit lineChosen(QString::fromStdString(currentLine()));
    });
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(view_);
    column->addWidget(entry_);
    column->addWidget(question_);
    column->addWidget(refusal_);
}

void LineTable::setDraft(DraftSession* draft) {
    current_.clear();
    model_->setDraft(draft);
    entry_->clear();
    question_->hide();
    refuseNew({});
    entry_->setVisible(draft != nullptr && !draft->readOnly());
    if (model_->rowCount() > 0) choose(model_->row(0).id);
}

// After a reset the cursor goes back to its line, or to the one at its place.
void LineTable::follow() {
    const int row = model_->rowOf(current_);
    if (row >= 0) view_->setCurrentIndex(model_->index(row, static_cast<int>(LineColumn::Amount)));
    view_->setVisible(model_->rowCount() > 0);
    fit();
    showFailure();
}

void LineTable::showFailure() {
    const DraftSession* draft = model_->draft();
    const bool here = draft != nullptr && failingLine(*draft);
    refusal_->tell(model_, here ? draftSentence(draft->document(), *draft->failure()) : QString{});
}

void LineTable::fit() {
    const QHeaderView& header = *view_->horizontalHeader();
    const auto leastOf = [&header](const ColumnShare& each) {
        return std::max(each.least_px, header.sectionSizeHint(static_cast<int>(each.column)));
    };
    int least = 0, shares = 0;
    for (const ColumnShare& each : kColumns) {
        least += leastOf(each);
        shares += each.share;
    }
    const int left = std::max(0, width() - least);
    int used = 0;
    for (const ColumnShare& each : kColumns) {
        const int wide = leastOf(each) + left * each.share / shares;
        view_->setColumnWidth(static_cast<int>(each.column), wide);
        used += wide;
    }
    // What the shares left over by rounding.
    const int share = static_cast<int>(LineColumn::Share);
    if (used < width()) view_->setColumnWidth(share, view_->columnWidth(share) + width() - used);
    fitRows();
}

// A row whose second text does not fit beside the first is taller; nothing is cut.
void LineTable::fitRows() {
    const QHeaderView& header = *view_->horizontalHeader();
    int height = std::max(header.minimumHeight(), header.sizeHint().height());
    for (int row = 0; row < model_->rowCount(); ++row) {
        int tall = 0;
        for (const LineColumn column : {LineColumn::Ingredient, LineColumn::Way}) {
            const int at = static_cast<int>(column);
            tall =
                std::max(tall, LineDelegate::rowHeightFor(model_->row(row).cells[at],
                                                          view_->columnWidth(at), view_->font()));
        }
        if (view_->rowHeight(row) != tall) view_->setRowHeight(row, tall);
        height += tall;
    }
    view_->setFixedHeight(height);
}

void LineTable::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit();
}

void LineTable::paintEvent(QPaintEvent*) {
    QPainter{this}.fillRect(QRect{0, 0, width(), entry_->geometry().bottom() + 1},
                            colour(Role::Raised, shadeOf(palette())));
}

bool LineTable::eventFilter(QObject* object, QEvent* event) {
    if (object != view_ || event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(object, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Delete && key->modifiers() == Qt::NoModifier) {
        removeCurrent();
        return true;
    }
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    // An editor lets its Enter go on to the view.
    if (enter && view_->isAncestorOf(QApplication::focusWidget())) return true;
    if (enter && view_->currentIndex().isValid()) {
        const int column =
            std::min(view_->currentIndex().column(), static_cast<int>(LineColumn::Ingredient));
        const QModelIndex index = view_->currentIndex().siblingAtColumn(column);
        view_->setCurrentIndex(index);
        view_->edit(index);
        return true;
    }
    return false;
}

std::string LineTable::currentLine() const {
    const QModelIndex index = view_->currentIndex();
    return index.isValid() ? model_->row(index.row()).id : std::string{};
}

void LineTable::choose(const std::string& line) {
    const int row = model_->rowOf(line);
    if (row < 0) return;
    view_->setCurrentIndex(model_->index(row, static_cast<int>(LineColumn::Amount)));
}

void LineTable::addLine() {
    entry_->setFocus(Qt::ShortcutFocusReason);
}

void LineTable::refuseNew(const QString& sentence) {
    entry_->setRefused(!sentence.isEmpty());
    refusal_->tell(entry_, sentence);
}

void LineTable::add(const QString& text, const std::optional<FoodOffer>& chosen) {
    if (kitchen_.draft() == nullptr) return;
    const auto isFood = [this](const QString& words) { return isFoodAsTyped(kitchen_, words); };
    const LineReading reading = readNewLine(text, isFood);
    if (reading.food.empty())
        return refuseNew(
            tr("The line names no food; write an amount and a food, such as “3 tbsp olive oil”."));
    const auto offer = chosen ? chosen : completer_->best();
    if (!offer)
        return refuseNew(
            tr("No food is called “%1”; type another name and choose from the list, or "
               "read its label in the pantry.")
                .arg(QString::fromStdString(reading.food)));
    addSettled(reading, *offer);
}

// What may mean two things is asked, one question after the other.
void LineTable::addSettled(const LineReading& reading, const FoodOffer& offer) {
    const auto meanings = meaningsOf(reading);
    if (meanings.size() == 1) return addRead(reading, offer);
    std::vector<MeaningQuestion::Answer> answers;
    answers.reserve(meanings.size());
    for (const LineReading& meaning : meanings)
        answers.push_back({meaningAnswer(meaning), [this, meaning, offer] {
                               entry_->setFocus(Qt::OtherFocusReason);
                               addSettled(meaning, offer);
                           }});
    question_->ask(tr("“%1” can be read in two ways. Which one is it?").arg(entry_->text()),
                   std::move(answers));
}

void LineTable::addRead(const LineReading& reading, const FoodOffer& offer) {
    DraftSession* draft = kitchen_.draft();
    const auto edit = addWrittenLine(
        draft->document(), static_cast<std::size_t>(model_->rowCount()), reading, offer.choice);
    if (!edit) return refuseNew(draftSentence(draft->document(), edit.error()));
    draft->endTyping();
    applyOffer(kitchen_, edit->edit, offer,
               [guard = QPointer<LineTable>{this}, line = edit->line](const Result<void>& done) {
                   if (guard) guard->added(line, done);
               });
}

void LineTable::added(const std::string& line, const Result<void>& done) {
    DraftSession* draft = kitchen_.draft();
    if (!done) return refuseNew(draftSentence(draft->document(), done.error()));
    draft->endTyping();
    entry_->clear();
    choose(line);
}

void LineTable::run(const Result<LineEdit>& edit) {
    DraftSession* draft = kitchen_.draft();
    if (!edit) return emit failed(edit.error());
    draft->endTyping();
    if (const auto done = draft->apply(edit->edit); !done) emit failed(done.error());
    draft->endTyping();
}

void LineTable::removeCurrent() {
    const std::string line = currentLine();
    DraftSession* draft = kitchen_.draft();
    if (line.empty() || draft == nullptr || draft->readOnly()) return;
    const int row = model_->rowOf(line);
    run(nettare::removeLine(draft->document(), line));
    if (model_->rowCount() > 0) choose(model_->row(std::min(row, model_->rowCount() - 1)).id);
}

void LineTable::moveCurrent(bool up) {
    const std::string line = currentLine();
    DraftSession* draft = kitchen_.draft();
    const int to = model_->rowOf(line) + (up ? -1 : 1);
    if (line.empty() || draft == nullptr || draft->readOnly()) return;
    if (to < 0 || to >= model_->rowCount()) return;
    run(nettare::moveLine(draft->document(), line, static_cast<std::size_t>(to)));
    choose(line);
}

}  // namespace nettare
