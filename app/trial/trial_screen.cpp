#include "app/trial/trial_screen.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

#include "app/figures/figure_words.h"
#include "app/session/draft_title.h"
#include "app/session/kitchen_session.h"
#include "app/sheet/draft_sentence.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/trial/solve_row.h"
#include "app/trial/trial_figures_model.h"
#include "app/trial/trial_lines_model.h"
#include "app/widgets/basis_switch.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/message_line.h"
#include "app/widgets/screen_header.h"
#include "app/widgets/table_delegate.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

constexpr std::array kTrialBases{Basis::Piece, Basis::Portion, Basis::Hundred, Basis::Batch};
constexpr int kFiguresWidth = 450;
constexpr double kStep = 0.05;

QTableView* dressedTable(const QString& name, const QString& spoken, QAbstractItemModel* model) {
    auto* table = new QTableView;
    table->setObjectName(name);
    table->setAccessibleName(spoken);
    table->setModel(model);
    dressTable(*table);
    table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    return table;
}

QString sentenceCase(const std::string& word) {
    QString text = QString::fromStdString(word);
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

/// As tall as its rows, and no taller; a long one scrolls.
void fitTo(QTableView& table) {
    const int rows = table.model()->rowCount();
    const int header =
        std::max(table.horizontalHeader()->height(), table.horizontalHeader()->sizeHint().height());
    table.setMaximumHeight(header + rows * table.verticalHeader()->defaultSectionSize() + 2);
    table.setMinimumHeight(std::min(table.maximumHeight(), 12 * header));
}

}  // namespace

TrialScreen::TrialScreen(KitchenSession& kitchen, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      header_{new ScreenHeader{tr("Try amounts")}},
      stack_{new QStackedWidget},
      empty_{new EmptyState},
      lines_{new TrialLinesModel{trial_, this}},
      figures_{new TrialFiguresModel{this}},
      linesTable_{dressedTable(QStringLiteral("triedLines"), tr("Amounts that are tried"), lines_)},
      figuresTable_{
          dressedTable(QStringLiteral("triedFigures"), tr("Figures with them"), figures_)},
      switch_{new BasisSwitch},
      verdicts_{new QLabel},
      hint_{new QLabel{tr("Type an amount or a share such as 80 %. The keys + and − change the "
                          "line by 5 %. Nothing here touches the recipe until you use it.")}},
      message_{new MessageLine},
      solve_{new SolveRow},
      take_{new QPushButton{tr("&Use these amounts")}},
      again_{new QPushButton{tr("Start &again")}} {
    build();
    connect(lines_, &TrialLinesModel::tried, this, &TrialScreen::refresh);
    connect(lines_, &TrialLinesModel::refused, this, [this](const QString& sentence) {
        sentence.isEmpty() ? message_->clear() : message_->say(MessageKind::Warning, sentence);
    });
    connect(switch_, &BasisSwitch::chosen, this, [this](int index) {
        basis_ = kTrialBases[static_cast<std::size_t>(index)];
        refresh();
    });
    connect(solve_, &SolveRow::asked, this, &TrialScreen::solve);
    connect(take_, &QPushButton::clicked, this, &TrialScreen::takeOver);
    connect(again_, &QPushButton::clicked, this, &TrialScreen::startAgain);
    connect(empty_, &EmptyState::actionChosen, this, &TrialScreen::sheetWanted);
    connect(&kitchen_, &KitchenSession::draftOpened, this, &TrialScreen::followDraft);
    followDraft();
}

void TrialScreen::build() {
    take_->setObjectName(QStringLiteral("useTried"));
    take_->setProperty("primary", true);
    again_->setObjectName(QStringLiteral("tryAgain"));
    switch_->setObjectName(QStringLiteral("trialBasis"));
    switch_->setAccessibleName(tr("Figures per"));
    hint_->setWordWrap(true);
    hint_->setProperty("tone", QStringLiteral("secondary"));
    header_->addAction(again_);
    header_->addAction(take_);
    linesTable_->setEditTriggers(QAbstractItemView::DoubleClicked |
                                 QAbstractItemView::EditKeyPressed |
                                 QAbstractItemView::AnyKeyPressed);
    linesTable_->installEventFilter(this);
    linesTable_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    linesTable_->horizontalHeader()->setSectionResizeMode(TrialLinesModel::Food,
                                                          QHeaderView::Stretch);

    auto* left = new QVBoxLayout;
    left->setSpacing(kSpace2Px);
    left->addWidget(linesTable_, 1);
    left->addWidget(hint_);
    left->addSpacing(kSpace2Px);
    left->addWidget(solve_);
    left->addWidget(message_);
    left->addStretch(0);
    auto* page = new QWidget;
    auto* row = new QHBoxLayout{page};
    row->setContentsMargins(kSpace6Px, kSpace4Px, kSpace6Px, kSpace4Px);
    row->setSpacing(kSpace6Px);
    row->addLayout(left, 1);
    row->addWidget(buildFigures());
    stack_->addWidget(page);
    stack_->addWidget(empty_);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(header_);
    column->addWidget(stack_, 1);
}

QWidget* TrialScreen::buildFigures() {
    figuresTable_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    figuresTable_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    figuresTable_->horizontalHeader()->setSectionResizeMode(TrialFiguresModel::Name,
                                                            QHeaderView::Stretch);
    verdicts_->setObjectName(QStringLiteral("triedVerdicts"));
    verdicts_->setWordWrap(true);
    verdicts_->setTextFormat(Qt::PlainText);
    verdicts_->setFont(typeFont(TypeSize::Header));
    auto* figures = new QWidget;
    figures->setFixedWidth(kFiguresWidth);
    auto* column = new QVBoxLayout{figures};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kSpace3Px);
    column->addWidget(switch_);
    column->addWidget(figuresTable_);
    column->addWidget(verdicts_);
    column->addStretch(1);
    return figures;
}

void TrialScreen::followDraft() {
    trial_.start(nullptr);
    lines_->reset();
    if (kitchen_.draft() != nullptr)
        connect(kitchen_.draft(), &DraftSession::evaluationChanged, this, &TrialScreen::follow);
    follow();
}

// What is tried goes on with what was typed on the sheet meanwhile.
void TrialScreen::follow() {
    stale_ = !isVisible();
    if (stale_) return;
    const DraftSession* const draft = kitchen_.draft();
    header_->setSubject(draftTitle(draft));
    const bool any = draft != nullptr && draft->evaluation() && !draft->failure();
    stack_->setCurrentIndex(any ? 0 : 1);
    take_->setEnabled(false);
    again_->setEnabled(false);
    if (!any)
        return empty_->show(
            tr("There is nothing to try yet"),
            draft != nullptr && draft->failure()
                ? draftSentence(draft->document(), *draft->failure())
                : tr("Open a recipe with figures, and its amounts can be tried here."),
            tr("Go to the sheet"));
    trial_.follow(draft->evaluation());
    lines_->reset();
    const Recipe& recipe = draft->evaluation()->dossier.main();
    switch_->setTexts({sentenceCase(recipe.pieceWord), tr("Portion"), tr("100 g"), tr("Batch")});
    switch_->setIndex(static_cast<int>(basis_));
    solve_->offer(*draft->evaluation());
    refresh();
}

void TrialScreen::refresh() {
    const auto tried = trial_.figures(basis_);
    const bool any = !trial_.changes().empty();
    take_->setEnabled(any && tried && !kitchen_.draft()->readOnly());
    again_->setEnabled(any);
    figuresTable_->setEnabled(tried.has_value());
    if (!tried) {
        lines_->setTried(nullptr);
        return message_->say(MessageKind::Warning,
                             draftSentence(kitchen_.draft()->document(), tried.error()));
    }
    message_->clear();
    lines_->setTried(&tried->cooked);
    fitTo(*linesTable_);
    figures_->show(tried->differences);
    fitTo(*figuresTable_);
    showVerdicts(*tried);
}

void TrialScreen::showVerdicts(const TriedFigures& tried) {
    QStringList words;
    for (const TargetVerdict& verdict : tried.verdicts)
        words += verdictText(verdict, tried.dossier.main(), true);
    verdicts_->setText(words.join(QLatin1Char{'\n'}));
    verdicts_->setVisible(!words.isEmpty());
}

void TrialScreen::solve(std::size_t line, const TargetEntry& target) {
    const auto& now = *trial_.evaluation();
    const auto solved =
        solvedAmount(now.dossier, target, line, trial_.changes(), now.cooked.meaning);
    if (!solved) {
        refresh();
        return message_->say(MessageKind::Warning,
                             draftSentence(kitchen_.draft()->document(), solved.error()));
    }
    trial_.setFactor(line, solved->factor, target.atMost ? Direction::Floor : Direction::Ceiling);
    refresh();
    const Line& changed = now.dossier.main().lines[line];
    message_->say(MessageKind::Done,
                  tr("%1: with %2 it is met.")
                      .arg(QString::fromStdString(changed.name),
                           QString::fromStdString(triedAmount(changed, solved->factor))));
}

void TrialScreen::takeOver() {
    DraftSession* const draft = kitchen_.draft();
    const auto edit = takeOverAmounts(draft->document(), trial_.amounts());
    if (!edit) return emit failed(edit.error());
    // Started anew before the figures follow, or the factors would count twice.
    trial_.start(trial_.evaluation());
    draft->endTyping();
    if (const auto done = draft->apply(*edit); !done) return emit failed(done.error());
    draft->endTyping();
    emit sheetWanted();
}

void TrialScreen::startAgain() {
    trial_.start(trial_.evaluation());
    lines_->reset();
    refresh();
}

void TrialScreen::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) follow();
}

bool TrialScreen::eventFilter(QObject* watched, QEvent* event) {
    if (watched == linesTable_ && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const int row = linesTable_->currentIndex().row();
        const double by = key->key() == Qt::Key_Plus    ? 1 + kStep
                          : key->key() == Qt::Key_Minus ? 1 - kStep
                                                        : 1;
        if (by != 1 && row >= 0) {
            lines_->multiply(row, by);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace nettare
