#include "app/pantry/moved_list.h"

#include <QLabel>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>

#include "app/figures/figure_words.h"
#include "app/kitchen/moved_figures.h"
#include "app/pantry/cells_model.h"
#include "app/pantry/whole_table.h"
#include "app/session/kitchen_session.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/words/error_sentence.h"

namespace nettare {

namespace {

CellsModel::Row recipeRow(const MovedRevision& moved) {
    Cell title = textCell(QString::fromStdString(moved.title),
                          MovedList::tr("revision %1").arg(moved.revision));
    title.strong = true;
    return {title, textCell({}), textCell({})};
}

CellsModel::Row figureRow(const MovedRevision& moved, std::size_t at) {
    const MovedFigure& figure = moved.figures[at];
    const QString name = MovedList::tr("%1 %2").arg(componentName(figure.component),
                                                    QString::fromStdString(moved.places[at]));
    return {textCell(name), textCell(QString::fromStdString(figure.before)),
            textCell(QString::fromStdString(figure.after))};
}

CellsModel::Row failureRow(const Error& failure) {
    Cell why = textCell(QString::fromStdString(errorSentence(failure)));
    why.ink = Role::Error;
    return {why, textCell({}), textCell({})};
}

}  // namespace

MovedList::MovedList(KitchenSession& kitchen, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      head_{new QLabel{tr("Published figures that would move")}},
      words_{new QLabel},
      look_{new QPushButton},
      rows_{new CellsModel{{tr("Figure"), tr("Before"), tr("With this pack")}, {}, this}},
      table_{new WholeTable{0}} {
    head_->setFont(typeFont(TypeSize::Body, Weight::Bold));
    words_->setObjectName(QStringLiteral("movedWords"));
    words_->setTextFormat(Qt::PlainText);
    words_->setWordWrap(true);
    words_->setMinimumWidth(1);
    words_->setProperty("tone", QStringLiteral("secondary"));
    look_->setObjectName(QStringLiteral("lookMoved"));
    table_->setObjectName(QStringLiteral("movedFigures"));
    table_->setAccessibleName(tr("Published figures that would move; Enter opens the recipe"));
    table_->setModel(rows_);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kSpace2Px);
    column->addWidget(head_);
    column->addWidget(words_);
    column->addWidget(look_, 0, Qt::AlignLeft);
    column->addWidget(table_);
    connect(look_, &QPushButton::clicked, this, &MovedList::look);
    connect(&kitchen_, &KitchenSession::revisionsChanged, this, [this] { stale_ = true; });
    const auto open = [this](const QModelIndex& index) {
        if (const auto at = static_cast<std::size_t>(index.row()); at < recipes_.size())
            emit recipeAsked(QString::fromStdString(recipes_[at]));
    };
    connect(table_, &QTableView::activated, this, open);
    connect(table_, &QTableView::clicked, this, open);
    hide();
}

void MovedList::setFood(const TableFood& food, bool hasOlder) {
    setVisible(hasOlder);
    if (food.row.text() == row_.text()) {
        if (looked_ && stale_) look();
        return;
    }
    row_ = food.row;
    ++asked_;
    looked_ = false;
    recipes_.clear();
    rows_->show({});
    table_->hide();
    head_->hide();
    words_->hide();
    offer(tr("Look for published figures that would move"));
}

void MovedList::look() {
    head_->show();
    tell(tr("looking…"), "secondary");
    look_->hide();
    stale_ = false;
    kitchen_.ownFoods().askMoved(
        row_.number, this,
        [this, asked = ++asked_](const Result<std::vector<MovedRevision>>& moved) {
            if (asked == asked_) answer(moved);
        });
}

void MovedList::answer(const Result<std::vector<MovedRevision>>& moved) {
    looked_ = moved.has_value();
    if (moved) {
        show(*moved);
    } else {
        recipes_.clear();
        rows_->show({});
        table_->hide();
        tell(QString::fromStdString(errorSentence(moved.error())), "error");
    }
    offer(tr("Look again"));
}

void MovedList::tell(const QString& words, const char* tone) {
    words_->setText(words);
    words_->setProperty("tone", QLatin1String{tone});
    words_->style()->unpolish(words_);
    words_->style()->polish(words_);
    words_->show();
}

void MovedList::offer(const QString& words) {
    look_->setText(words);
    look_->show();
}

void MovedList::show(const std::vector<MovedRevision>& moved) {
    std::vector<CellsModel::Row> rows;
    recipes_.clear();
    for (const MovedRevision& each : moved) {
        rows.push_back(recipeRow(each));
        for (std::size_t at = 0; at < each.figures.size(); ++at)
            rows.push_back(figureRow(each, at));
        if (each.failure) rows.push_back(failureRow(*each.failure));
        recipes_.resize(rows.size(), each.recipe);
    }
    tell(rows.empty()
             ? tr("None: no kept revision has a figure that leaves its rounding.")
             : tr("By more than their rounding, in the newest kept revision of each recipe. "
                  "“Before” is computed anew, with the version of the pack that the revision was "
                  "kept with. Revisions stay as they were kept."),
         "secondary");
    table_->setVisible(!rows.empty());
    rows_->show(std::move(rows));
    table_->fit();
}

}  // namespace nettare
