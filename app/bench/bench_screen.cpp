#include "app/bench/bench_screen.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/bench/bench_header.h"
#include "app/bench/bench_keys.h"
#include "app/bench/bench_type.h"
#include "app/bench/equipment_panel.h"
#include "app/bench/food_form.h"
#include "app/bench/ledger_list.h"
#include "app/bench/ledger_output.h"
#include "app/bench/series_card.h"
#include "app/bench/touch_list.h"
#include "app/bench/weigh_pane.h"
#include "app/session/kitchen_session.h"
#include "app/sheet/document_texts.h"
#include "app/theme/spacing.h"
#include "app/widgets/scrolling.h"

namespace nettare {

namespace {

/// From here on everything stands side by side, px.
constexpr int kTall_px = 760;
/// From here on the digits can be larger, px.
constexpr int kRoomy_px = 900;
constexpr int kLedgerTab = 0, kSeriesTab = 1, kTodoTab = 2;

bool isEnterKey(const QKeyEvent& event) {
    return event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
}

/// The next reading of a series, of its row, and with the tags that it is shown split by.
FreeSubject nextOf(const BenchDesk& desk, const SeriesSummary& series) {
    FreeSubject subject = subjectOf(series);
    const BenchSeries* const shown = desk.series();
    if (shown != nullptr && sameSeries(shown->key, series.key)) {
        subject.row = shown->row;
        subject.series->tags = shown->tags;
        return subject;
    }
    for (const LedgerReading& reading : desk.ledger()) {
        const auto key = seriesKeyOf(reading.entry());
        if (!key || reading.entry().row.empty() || !sameSeries(*key, series.key)) continue;
        subject.row = reading.entry().row;
        break;
    }
    return subject;
}

}  // namespace

BenchScreen::BenchScreen(KitchenSession& kitchen, PathAsker& paths, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      desk_{kitchen},
      weigh_{new WeighPane{desk_, kitchen}},
      ledger_{new LedgerList{desk_}},
      series_{new SeriesCard{desk_}},
      output_{new LedgerOutput{kitchen, paths}},
      todo_{new TouchList{tr("Still to weigh for this recipe"), TouchList::Leave::Never}},
      todoTab_{new TouchList{tr("Still to weigh for this recipe"), TouchList::Leave::Never}},
      subjects_{new TouchList{tr("What is it?"), TouchList::Leave::ByButton}},
      tares_{new TouchList{tr("What is under it?"), TouchList::Leave::ByButton}},
      lines_{new TouchList{tr("Which line does it weigh?"), TouchList::Leave::ByButton}},
      food_{new FoodForm{kitchen}},
      keys_{new BenchKeys{weigh_->number(), this}},
      pages_{new QStackedWidget},
      tabRow_{new QWidget} {
    setObjectName(QStringLiteral("benchScreen"));
    todo_->setObjectName(QStringLiteral("stillToWeigh"));
    build();
    connectParts();
    followRecipe();
}

void BenchScreen::build() {
    auto* header = new BenchHeader{desk_, weigh_->feedback()};
    connect(header, &BenchHeader::equipmentAsked, this, [this] { showPage(Page::Equipment); });
    connect(header, &BenchHeader::printAsked, output_, &LedgerOutput::print);
    connect(header, &BenchHeader::saveAsked, output_, &LedgerOutput::saveCsv);
    connect(output_, &LedgerOutput::chainChecked, &desk_, &BenchDesk::setChain);
    connect(header, &BenchHeader::sheetWanted, this, &BenchScreen::sheetWanted);
    auto* equipment = new EquipmentPanel{desk_};
    connect(equipment, &EquipmentPanel::left, this, [this] { showPage(Page::Overview); });
    pages_->addWidget(buildOverview());
    pages_->addWidget(subjects_);
    pages_->addWidget(food_);
    pages_->addWidget(tares_);
    pages_->addWidget(equipmentPage(equipment));
    pages_->addWidget(lines_);

    // They give way when the window gets low, so that it can become too low for both.
    for (QWidget* part : {static_cast<QWidget*>(todo_), static_cast<QWidget*>(ledger_)})
        part->setMinimumHeight(1);
    auto* left = new QVBoxLayout;
    left->setSpacing(kSpace3Px);
    left->addWidget(weigh_);
    left->addWidget(todo_, 1);
    auto* body = new QHBoxLayout;
    body->setContentsMargins(kSpace3Px, kSpace1Px, kSpace3Px, kSpace1Px);
    body->setSpacing(kSpace3Px);
    body->addLayout(left, 9);
    body->addWidget(pages_, 10);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(header);
    column->addWidget(output_);
    column->addLayout(body, 1);
}

QWidget* BenchScreen::equipmentPage(QWidget* equipment) {
    QPushButton* back = benchButton(tr("Back"), "leaveEquipment");
    connect(back, &QPushButton::clicked, this, [this] { showPage(Page::Overview); });
    auto* page = new QWidget;
    auto* column = new QVBoxLayout{page};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kSpace2Px);
    column->addWidget(equipment, 1);
    column->addWidget(back);
    return page;
}

// Side by side where there is room, else one at a time.
QWidget* BenchScreen::buildOverview() {
    auto* row = new QHBoxLayout{tabRow_};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(kSpace2Px);
    const QStringList names{tr("Ledger"), tr("Series"), tr("To weigh")};
    for (int i = 0; i < names.size(); ++i) {
        QPushButton* button = benchButton(names[i], "benchTab");
        button->setObjectName(QStringLiteral("benchTab%1").arg(i));
        button->setCheckable(true);
        connect(button, &QPushButton::clicked, this, [this, i] { showTab(i); });
        row->addWidget(button, 1);
        tabButtons_.push_back(button);
    }
    seriesPlace_ = scrolling(series_);
    auto* overview = new QWidget;
    auto* column = new QVBoxLayout{overview};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kSpace2Px);
    column->addWidget(tabRow_);
    column->addWidget(seriesPlace_, 5);
    column->addWidget(ledger_, 6);
    column->addWidget(todoTab_, 1);
    return overview;
}

void BenchScreen::connectParts() {
    keys_->watch(&ledger_->view());
    connect(keys_, &BenchKeys::recordAsked, weigh_, &WeighPane::record);
    connect(keys_, &BenchKeys::takeBackAsked, weigh_, &WeighPane::takeBackLast);
    connect(weigh_, &WeighPane::subjectAsked, this, [this] { showPage(Page::Subjects); });
    connect(weigh_, &WeighPane::taresAsked, this, [this] { showPage(Page::Tares); });
    connect(&desk_, &BenchDesk::recorded, this, [this](const ChainedEntry& entry) {
        if (const auto key = seriesKeyOf(entry.entry)) desk_.showSeriesAsSplit(*key);
        followRecipe();
    });
    for (TouchList* list : {todo_, todoTab_})
        connect(list, &TouchList::chosen, this, [this](int index) {
            const ToWeigh& chosen = toWeigh_[static_cast<std::size_t>(index)];
            weigh_->weigh(chosen.purpose, chosen.grams);
        });
    connect(&desk_, &BenchDesk::equipmentChanged, this, [this] {
        // Nothing can be weighed before there is a scale.
        if (desk_.scale() == nullptr && isVisible()) showPage(Page::Equipment);
    });
    connect(subjects_, &TouchList::chosen, this, &BenchScreen::takeSubject);
    connect(tares_, &TouchList::chosen, this, &BenchScreen::takeTare);
    connect(lines_, &TouchList::chosen, this, &BenchScreen::takeLine);
    connect(food_, &FoodForm::said, this, [this](const FreeSubject& subject) {
        weigh_->weigh(subject);
        showSeriesOf(subject);
        showPage(Page::Overview);
    });
    for (TouchList* list : {subjects_, tares_, lines_})
        connect(list, &TouchList::left, this, [this] { showPage(Page::Overview); });
    connect(food_, &FoodForm::left, this, [this] { showPage(Page::Overview); });
    connect(ledger_, &LedgerList::bindAsked, this, &BenchScreen::askLine);
    connect(&kitchen_, &KitchenSession::draftOpened, this, &BenchScreen::followRecipe);
}

std::vector<Pane*> BenchScreen::panes() const {
    return {weigh_, todo_, ledger_, todoTab_, subjects_, food_, tares_, lines_};
}

void BenchScreen::begin() {
    weigh_->number().setFocus(Qt::ShortcutFocusReason);
}

void BenchScreen::followRecipe() {
    DraftSession* const draft = kitchen_.draft();
    if (draft != nullptr)
        connect(draft, &DraftSession::evaluationChanged, this, &BenchScreen::followRecipe,
                Qt::UniqueConnection);
    toWeigh_ = draft == nullptr ? std::vector<ToWeigh>{} : stillToWeigh(*draft);
    std::vector<TouchChoice> choices;
    choices.reserve(toWeigh_.size());
    for (const ToWeigh& each : toWeigh_) choices.push_back({each.what, each.why, true});
    const QString none = draft == nullptr ? tr("No recipe is open; any food can be weighed.")
                                          : tr("Everything of it was weighed.");
    todo_->setChoices(choices, none);
    todoTab_->setChoices(choices, none);
}

void BenchScreen::showPage(Page page) {
    if (page == Page::Subjects) fillSubjects();
    if (page == Page::Tares) fillTares();
    pages_->setCurrentIndex(static_cast<int>(page));
    if (page == Page::Overview) return begin();
    if (page == Page::Food) return food_->begin();
    if (auto* pane = qobject_cast<Pane*>(pages_->currentWidget())) pane->enter();
}

// Series and ledger share the right side where it is tall; else one of the tabs has it.
void BenchScreen::showTab(int tab) {
    const bool tall = height() >= kTall_px;
    tab_ = tab;
    weigh_->setRoomy(height() >= kRoomy_px);
    tabRow_->setVisible(!tall);
    todo_->setVisible(tall);
    ledger_->setVisible(tall || tab == kLedgerTab);
    seriesPlace_->setVisible(tall || tab == kSeriesTab);
    todoTab_->setVisible(!tall && tab == kTodoTab);
    for (std::size_t i = 0; i < tabButtons_.size(); ++i)
        tabButtons_[i]->setChecked(static_cast<int>(i) == tab);
}

void BenchScreen::fillSubjects() {
    const DraftSession* const draft = kitchen_.draft();
    offered_.clear();
    std::vector<TouchChoice> choices{{tr("Another food …"), tr("with or without a series"), true}};
    const auto offer = [&](WeighSubject subject) {
        const SubjectWords words = subjectWords(subject, draft);
        choices.push_back({words.what, words.why, true});
        offered_.push_back(std::move(subject));
    };
    if (draft != nullptr && !draft->readOnly())
        for (Purpose& purpose : recipeSubjects(*draft)) offer(std::move(purpose));
    for (const SeriesSummary& series : desk_.seriesKept()) offer(nextOf(desk_, series));
    subjects_->setChoices(choices);
}

void BenchScreen::takeSubject(int index) {
    if (index == 0) return showPage(Page::Food);
    const WeighSubject subject = offered_[static_cast<std::size_t>(index) - 1];
    weigh_->weigh(subject);
    showSeriesOf(subject);
    showPage(Page::Overview);
}

void BenchScreen::showSeriesOf(const WeighSubject& subject) {
    const auto* const free = std::get_if<FreeSubject>(&subject);
    if (free == nullptr) return;
    const auto key = seriesOf(*free);
    if (!key) return;
    for (const SeriesSummary& kept : desk_.seriesKept())
        if (sameSeries(kept.key, *key)) desk_.showSeriesAsSplit(kept.key);
}

void BenchScreen::fillTares() {
    const auto shown = weigh_->typed();
    const WeighState& state = weigh_->state();
    const QString mass = shown ? benchMass(*shown, state.scale.unit) : tr("the number typed");
    std::vector<TouchChoice> choices;
    choices.push_back({tr("Use %1 as the tare").arg(mass), {}, shown.has_value()});
    choices.push_back(
        {shown || !state.wanted ? tr("Weigh out %1").arg(mass) : tr("Weigh out no certain weight"),
         {},
         shown.has_value() || state.wanted.has_value()});
    for (const BenchTare& tare : weigh_->tares())
        choices.push_back({tareWords(tare, state.scale.unit), {}, true});
    tares_->setChoices(choices);
}

void BenchScreen::takeTare(int index) {
    if (index == 0)
        weigh_->useAsTare();
    else if (index == 1)
        weigh_->countDown();
    else
        weigh_->chooseTare(index - 2);
    showPage(Page::Overview);
}

void BenchScreen::askLine(const QString& reading) {
    if (!desk_.canBind()) return;
    binding_ = reading.toStdString();
    lineIds_.clear();
    std::vector<TouchChoice> choices;
    const Json& document = kitchen_.draft()->document();
    for (const Json& line : entriesIn(document, "lines")) {
        lineIds_.push_back(memberText(&line, "id"));
        choices.push_back({lineName(document, lineIds_.back()), {}, true});
    }
    lines_->setChoices(choices, tr("The recipe has no line yet."));
    showPage(Page::Lines);
}

void BenchScreen::takeLine(int index) {
    desk_.bind(binding_, lineIds_[static_cast<std::size_t>(index)]);
    showPage(Page::Overview);
}

void BenchScreen::keyPressEvent(QKeyEvent* event) {
    // Other fields are their own.
    const auto* const field = qobject_cast<QLineEdit*>(focusWidget());
    const bool ours = field == nullptr || field == &weigh_->number();
    if (event->key() == Qt::Key_Escape)
        return pages_->currentIndex() == static_cast<int>(Page::Overview) ? emit sheetWanted()
                                                                          : showPage(
                                                                                Page::Overview);
    const bool overview = pages_->currentIndex() == static_cast<int>(Page::Overview);
    if (ours && (overview || field != nullptr) && keys_->take(event)) return;
    // On another page Enter answers what that asks.
    if (!overview && isEnterKey(*event))
        if (auto* const button = qobject_cast<QPushButton*>(focusWidget())) {
            if (!event->isAutoRepeat()) button->animateClick();
            return;
        }
    QWidget::keyPressEvent(event);
}

void BenchScreen::keyReleaseEvent(QKeyEvent* event) {
    if (!keys_->takeRelease(event)) QWidget::keyReleaseEvent(event);
}

void BenchScreen::resizeEvent(QResizeEvent*) {
    showTab(tab_);
}

void BenchScreen::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    desk_.reload();
    begin();
}

}  // namespace nettare
