#include "app/figures/figures_pane.h"

#include <QAction>
#include <QHeaderView>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

#include "app/figures/energy_readout.h"
#include "app/figures/energy_texts.h"
#include "app/figures/figure_words.h"
#include "app/figures/meaning_choice.h"
#include "app/session/kitchen_session.h"
#include "app/sheet/document_texts.h"
#include "app/sheet/draft_sentence.h"
#include "app/sheet/flow_layout.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/basis_switch.h"
#include "app/widgets/beam_gauge.h"
#include "app/widgets/message_line.h"
#include "app/widgets/scrolling.h"
#include "app/widgets/table_delegate.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

constexpr std::array kBases{Basis::Piece, Basis::Portion, Basis::Hundred, Basis::Batch};
constexpr int kLeastPaneWidth = 352;

QLabel* wrapping(TypeSize size, const char* tone) {
    auto* label = new QLabel;
    label->setFont(typeFont(size));
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setProperty("tone", QLatin1String{tone});
    return label;
}

QString capitalised(const std::string& word) {
    QString text = QString::fromStdString(word);
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

}  // namespace

FiguresPane::FiguresPane(KitchenSession& kitchen, QWidget* parent)
    : Pane{tr("Figures"), Role::Raised, parent},
      kitchen_{kitchen},
      switch_{new BasisSwitch},
      energy_{new EnergyReadout},
      basisText_{wrapping(TypeSize::Header, "secondary")},
      verdict_{wrapping(TypeSize::Body, "secondary")},
      targets_{wrapping(TypeSize::Header, "secondary")},
      partial_{wrapping(TypeSize::Caption, "secondary")},
      caution_{wrapping(TypeSize::Caption, "secondary")},
      meaning_{new MeaningChoice},
      gauge_{new BeamGauge},
      trouble_{new MessageLine},
      model_{new FiguresModel{this}},
      table_{makeTable()},
      allButton_{new QPushButton{tr("All components")}},
      shown_{new QWidget} {
    setHairlines(Qt::LeftEdge);
    switch_->setObjectName(QStringLiteral("basis"));
    energy_->setObjectName(QStringLiteral("energy"));
    trouble_->setObjectName(QStringLiteral("trouble"));
    verdict_->setObjectName(QStringLiteral("verdict"));
    table_->setObjectName(QStringLiteral("figures"));
    gauge_->setObjectName(QStringLiteral("gauge"));
    meaning_->setObjectName(QStringLiteral("meaning"));
    switch_->setAccessibleName(tr("Figures per"));
    gauge_->setAccessibleName(tr("Energy"));
    allButton_->setObjectName(QStringLiteral("allComponents"));
    allButton_->setCheckable(true);
    allButton_->setProperty("quiet", true);
    partial_->setText(
        tr("At least: not every food says it. The share beside it is that of the "
           "weight for which it is known."));
    caution_->setText(
        tr("Estimates from tables, labels and your own weighings; no laboratory "
           "analysis and no medical advice."));
    basisText_->setWordWrap(false);
    basisText_->setMinimumHeight(meaning_->sizeHint().height());
    build();
    askForPaths();
    connect(switch_, &BasisSwitch::chosen, this, [this](int index) {
        basis_ = kBases[static_cast<std::size_t>(index)];
        follow();
    });
    connect(meaning_, &MeaningChoice::chosen, this, [this](Meaning meaning) {
        if (kitchen_.draft() != nullptr) kitchen_.draft()->setMeaning(meaning);
    });
    connect(allButton_, &QPushButton::toggled, this, [this](bool all) {
        all_ = all;
        follow();
    });
    connect(&kitchen_, &KitchenSession::draftOpened, this, &FiguresPane::followDraft);
    followDraft();
}

QTableView* FiguresPane::makeTable() {
    auto* table = new QTableView;
    table->setModel(model_);
    dressTable(*table);
    table->setAccessibleName(tr("Figures"));
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table->horizontalHeader()->hide();
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::Interactive);
    return table;
}

// A click, Enter, or the menu of a row.
void FiguresPane::askForPaths() {
    const auto ask = [this](const QModelIndex& row) {
        emit pathAsked(model_->componentAt(row.row()));
    };
    const QString words = tr("Where it comes from");
    auto* of = new QAction{words, table_};
    table_->addAction(of);
    table_->setContextMenuPolicy(Qt::ActionsContextMenu);
    table_->setCursor(Qt::PointingHandCursor);
    table_->setToolTip(words);
    energy_->setToolTip(words);
    connect(of, &QAction::triggered, this, [this, ask] {
        if (const QModelIndex row = table_->currentIndex(); row.isValid()) ask(row);
    });
    connect(table_, &QTableView::clicked, this, ask);
    connect(table_, &QTableView::activated, this, ask);
    connect(energy_, &EnergyReadout::clicked, this,
            [this] { emit pathAsked(Component::ENERC_KCAL); });
}

std::optional<Component> FiguresPane::chosen() const {
    const QModelIndex row = table_->currentIndex();
    if (!table_->hasFocus() || !row.isValid()) return {};
    return model_->componentAt(row.row());
}

/// What leads from the figures to more of them.
QLayout* FiguresPane::buildLinks() {
    auto* trial = new QPushButton{tr("Try amounts")};
    auto* limits = new QPushButton{tr("Limits")};
    trial->setObjectName(QStringLiteral("toTrial"));
    limits->setObjectName(QStringLiteral("toLimits"));
    auto* links = new FlowLayout{kSpace2Px, kSpace1Px};
    links->addWidget(allButton_);
    for (QPushButton* link : {trial, limits}) {
        link->setProperty("quiet", true);
        link->setStyleSheet(QStringLiteral("QPushButton { padding: 0 6px; }"));
        links->addWidget(link);
    }
    connect(trial, &QPushButton::clicked, this, &FiguresPane::trialAsked);
    connect(limits, &QPushButton::clicked, this, &FiguresPane::limitsAsked);
    return links;
}

void FiguresPane::build() {
    auto* figures = new QVBoxLayout{shown_};
    figures->setContentsMargins(0, 0, 0, 0);
    figures->setSpacing(kSpace1Px);
    figures->addWidget(energy_);
    auto* of = new FlowLayout{kSpace1Px, 0};
    of->addWidget(basisText_);
    of->addWidget(meaning_);
    figures->addLayout(of);
    figures->addWidget(verdict_);
    figures->addWidget(gauge_);
    figures->addWidget(targets_);
    figures->addSpacing(kSpace1Px);
    figures->addWidget(table_);
    figures->addWidget(partial_);
    figures->addLayout(buildLinks());

    auto* page = new QWidget;
    auto* column = new QVBoxLayout{page};
    column->setContentsMargins(kSpace4Px, kSpace2Px, kSpace4Px, kSpace2Px);
    column->setSpacing(kSpace2Px);
    column->setAlignment(Qt::AlignTop);
    column->addWidget(switch_);
    column->addWidget(trouble_);
    column->addWidget(shown_);
    column->addWidget(caution_);
    column->addStretch(1);

    QScrollArea* scroll = scrolling(page);
    auto* whole = new QVBoxLayout{this};
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
}

void FiguresPane::followDraft() {
    if (kitchen_.draft() != nullptr)
        connect(kitchen_.draft(), &DraftSession::evaluationChanged, this, &FiguresPane::follow);
    follow();
}

void FiguresPane::follow() {
    const DraftSession* draft = kitchen_.draft();
    if (draft == nullptr) return;
    const auto& evaluation = draft->evaluation();
    shown_->setVisible(evaluation != nullptr);
    switch_->setVisible(evaluation != nullptr);
    showTrouble(*draft);
    if (!evaluation) return;
    const bool dimmed = draft->failure().has_value();
    meaning_->setMeaning(draft->meaning());
    showTexts(evaluation->dossier.main());
    showEnergy(*evaluation, dimmed);
    targets_->setText(otherTargets(*evaluation, basis_));
    targets_->setVisible(!targets_->text().isEmpty());
    model_->show((*evaluation)[basis_], all_, dimmed);
    fitTable();
}

void FiguresPane::showTexts(const Recipe& recipe) {
    switch_->setTexts({capitalised(recipe.pieceWord), tr("Portion"), tr("100 g"), tr("Batch")});
    switch_->setIndex(static_cast<int>(basis_));
}

void FiguresPane::showEnergy(const Evaluation& evaluation, bool dimmed) {
    const auto& figures = evaluation[basis_];
    const Recipe& recipe = evaluation.dossier.main();
    gauge_->setVisible(figures.has_value());
    basisText_->setText(figures && figures->beforeCooking ? tr("per 100 g before cooking")
                                                          : basisName(basis_, recipe));
    if (!figures) {
        energy_->show(QStringLiteral("–"), {}, {}, dimmed);
        verdict_->setText(tr("A portion in grams needs the weight of the cooked dish; weigh it."));
        return;
    }
    const Figure& energy = (*figures)[Component::ENERC_KCAL];
    const double value = energy.complete() ? energy.value : energy.atLeast;
    const Direction direction = energy.complete() ? Direction::Nearest : Direction::Floor;
    energy_->show(QString::fromStdString(numberAt(0, value, direction)), QStringLiteral("kcal"),
                  energy.complete() ? QString{} : tr("at least"), dimmed);
    verdict_->setText(energySentence(evaluation, energy, basis_));
    gauge_->setFigure(energyBeam(evaluation, energy, basis_));
}

void FiguresPane::showTrouble(const DraftSession& draft) {
    if (!draft.failure()) return trouble_->clear();
    if (entriesIn(draft.document(), "lines").empty())
        return trouble_->say(MessageKind::Info,
                             tr("Figures appear with the first line. Type it under “Add a line”."));
    const QString why = draftSentence(draft.document(), *draft.failure());
    trouble_->say(MessageKind::Warning,
                  draft.evaluation()
                      ? tr("These are the last figures that could be computed. %1").arg(why)
                      : why);
}

// As wide as the longest name, so that none is cut; it never shrinks, so that nothing jumps.
void FiguresPane::fitTable() {
    int columns = 0;
    for (int column = 0; column < FiguresModel::Columns; ++column) {
        table_->resizeColumnToContents(column);
        columns += table_->columnWidth(column);
    }
    const int around = 2 * kSpace4Px + 1;
    const int wide = std::max({kLeastPaneWidth, minimumWidth(), columns + around});
    setFixedWidth(wide);
    const int left = wide - around - columns;
    table_->setColumnWidth(FiguresModel::Name, table_->columnWidth(FiguresModel::Name) + left);
    bool partial = false;
    for (int row = 0; row < model_->rowCount(); ++row) partial = partial || model_->isPartial(row);
    partial_->setVisible(partial);
    table_->setFixedHeight(model_->rowCount() * table_->verticalHeader()->defaultSectionSize() + 1);
}

}  // namespace nettare
