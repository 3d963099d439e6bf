#include "app/bench/series_card.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QStackedLayout>

#include <algorithm>

#include "app/bench/bench_desk.h"
#include "app/bench/bench_fields.h"
#include "app/bench/left_out_list.h"
#include "app/bench/outlier_question.h"
#include "app/bench/recipe_promise.h"
#include "app/bench/series_plot_view.h"
#include "app/bench/series_words.h"
#include "app/scale/shown_number.h"
#include "app/sheet/flow_layout.h"
#include "app/theme/palette.h"
#include "app/theme/spacing.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/scrolling.h"

namespace nettare {

namespace {

constexpr double kMostAsked = 1e6;
constexpr int kNumberFieldPx = 110;
constexpr int kPoolMostPx = 560;

QString fieldText(double number) {
    return number > 0 ? QString::fromStdString(Decimal::fromDouble(number).text()) : QString{};
}

}  // namespace

SeriesCard::SeriesCard(BenchDesk& desk, QWidget* parent)
    : QFrame{parent},
      desk_{desk},
      stack_{new QStackedLayout{this}},
      empty_{new EmptyState},
      heading_{benchLabel(Weight::Bold)},
      summary_{benchNote()},
      sentence_{benchLabel()},
      more_{benchNote()},
      note_{benchNote()},
      refusal_{benchNote()},
      choice_{benchBox(tr("Which series"), "seriesChoice")},
      pool_{benchBox(tr("What its spread is pooled with"), "seriesPool")},
      tags_{new QWidget},
      tagRow_{new FlowLayout{kSpace2Px, kSpace2Px, tags_}},
      plot_{new SeriesPlotView},
      question_{new OutlierQuestion},
      leftOut_{new LeftOutList},
      promise_{new RecipePromise{desk, this}},
      promised_{benchNote()},
      others_{benchField(tr("How many others"), "seriesOthers")},
      enough_{benchField(tr("Near enough, in grams"), "seriesEnough")},
      inTime_{benchButton(tr("As weighed in time"), "seriesInTime")} {
    setAccessibleName(tr("Yield series"));
    heading_->setObjectName(QStringLiteral("seriesHeading"));
    summary_->setObjectName(QStringLiteral("seriesSummary"));
    sentence_->setObjectName(QStringLiteral("seriesSentence"));
    more_->setObjectName(QStringLiteral("seriesMore"));
    promised_->setObjectName(QStringLiteral("seriesPromise"));
    refusal_->setObjectName(QStringLiteral("seriesRefusal"));
    stack_->setContentsMargins(1, 1, 1, 1);
    buildPage();
    empty_->show(tr("No series yet"),
                 tr("Weigh a piece, a cup or what is left of what was bought, and say what it is "
                    "of. Its mean and spread then stand here, and your recipes can count by it."));
    stack_->addWidget(empty_);
    stack_->setCurrentWidget(empty_);
    connect(&desk_, &BenchDesk::ledgerChanged, this, &SeriesCard::followList);
    connect(&desk_, &BenchDesk::seriesChanged, this, &SeriesCard::followSeries);
    promised_->hide();
    connect(promise_, &RecipePromise::changed, this, &SeriesCard::showPromise);
    connect(&desk_, &BenchDesk::notRecorded, this, &SeriesCard::askAboutOutlier);
    connect(choice_, &QComboBox::activated, this, &SeriesCard::choose);
    connect(others_, &QLineEdit::editingFinished, this, &SeriesCard::takeOthers);
    connect(enough_, &QLineEdit::editingFinished, this, &SeriesCard::takeEnough);
    connect(pool_, &QComboBox::activated, this, &SeriesCard::pool);
    connect(inTime_, &QPushButton::toggled, this, &SeriesCard::showPlot);
    connect(question_, &OutlierQuestion::leftOut, this, [this](const QString& cause) {
        if (const auto* series = desk_.series(); series != nullptr)
            if (const LedgerReading* const reading = outlierOf(*series))
                desk_.leaveOut(reading->entry().id, cause);
    });
    connect(question_, &OutlierQuestion::asWeighed, this, [this] {
        if (const auto* series = desk_.series(); series != nullptr)
            if (const LedgerReading* const reading = outlierOf(*series))
                desk_.sayAsWeighed(reading->entry().id, tr("it is as weighed"));
        question_->ask({});  // the answer is on its way to the ledger
    });
    connect(leftOut_, &LeftOutList::takenIn, this,
            [this](const QString& id) { desk_.takeIn(id.toStdString(), tr("counts after all")); });
    followList();
    followSeries();
}

// A field that goes with the focus says that it was edited, after the card itself is gone.
SeriesCard::~SeriesCard() {
    for (QLineEdit* const field : {others_, enough_}) field->disconnect(this);
}

void SeriesCard::buildPage() {
    auto* const page = new QWidget;
    column_ = new QVBoxLayout{page};
    column_->setContentsMargins(kSpace4Px, kSpace3Px, kSpace4Px, kSpace3Px);
    column_->setSpacing(kSpace2Px);
    auto* const head = new QHBoxLayout;
    head->setSpacing(kSpace3Px);
    auto* const words = new QVBoxLayout;
    words->setSpacing(0);
    words->addWidget(heading_);
    words->addWidget(summary_);
    head->addLayout(words, 1);
    head->addWidget(choice_, 0, Qt::AlignTop);
    column_->addLayout(head);
    for (QWidget* each :
         {static_cast<QWidget*>(tags_), static_cast<QWidget*>(plot_), static_cast<QWidget*>(note_),
          static_cast<QWidget*>(sentence_), static_cast<QWidget*>(more_),
          static_cast<QWidget*>(promised_), static_cast<QWidget*>(question_), buildControls(),
          static_cast<QWidget*>(pool_), static_cast<QWidget*>(refusal_),
          static_cast<QWidget*>(leftOut_)})
        column_->addWidget(each);
    column_->addStretch(1);
    refusal_->setProperty("tone", QStringLiteral("error"));
    refusal_->hide();
    pool_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    pool_->setMaximumWidth(kPoolMostPx);
    stack_->addWidget(scrolling(page));
}

QWidget* SeriesCard::buildControls() {
    auto* const controls = new QWidget;
    auto* const row = new FlowLayout{kSpace2Px, kSpace2Px, controls};
    auto* const forOthers = new QWidget;
    auto* const pair = new FlowLayout{kSpace2Px, kSpace2Px, forOthers};
    const auto word = [pair](const QString& text) {
        QLabel* const label = benchNote();
        label->setText(text);
        label->setWordWrap(false);
        label->setMinimumHeight(kBenchTargetPx);
        pair->addWidget(label);
    };
    for (QLineEdit* const field : {others_, enough_}) {
        field->setFixedWidth(kNumberFieldPx);
        field->setMaxLength(9);
    }
    word(tr("for"));
    pair->addWidget(others_);
    word(tr("others, to ±"));
    pair->addWidget(enough_);
    word(tr("g"));
    inTime_->setCheckable(true);
    row->addWidget(forOthers);
    row->addWidget(inTime_);
    return controls;
}

void SeriesCard::followList() {
    const auto& kept = desk_.seriesKept();
    const QSignalBlocker quiet{choice_};
    choice_->clear();
    for (const SeriesSummary& series : kept) choice_->addItem(seriesChoice(series));
    choice_->setVisible(kept.size() > 1);
    if (desk_.series() == nullptr) {
        if (kept.empty()) return;
        const auto newest = std::ranges::max_element(kept, {}, &SeriesSummary::lastAt);
        desk_.showSeries(newest->key);
        return;
    }
    const auto shown = std::ranges::find_if(kept, [this](const SeriesSummary& each) {
        return sameSeries(each.key, desk_.series()->key);
    });
    choice_->setCurrentIndex(shown == kept.end() ? -1 : static_cast<int>(shown - kept.begin()));
}

void SeriesCard::followSeries() {
    const BenchSeries* const series = desk_.series();
    stack_->setCurrentIndex(series == nullptr ? 1 : 0);
    if (series == nullptr) return;
    followList();
    heading_->setText(seriesHeading(series->key));
    summary_->setText(seriesSummary(*series));
    showTags();
    showPlot();
    showSentences();
    askAboutOutlier();
    leftOut_->show(series->readings);
    const bool ratio = series->key.kind == SeriesKind::Ratio;
    others_->parentWidget()->setVisible(!ratio);
    if (!others_->hasFocus()) others_->setText(fieldText(series->others));
    if (!enough_->hasFocus()) enough_->setText(fieldText(series->enough));
    showPool();
}

// What was chosen stays offered where its readings are gone, and the sentence says so.
void SeriesCard::showPool() {
    const BenchSeries& series = *desk_.series();
    pools_ = {{}, {true, {}}};
    std::vector<int> readings{0, 0};
    for (EarlierOffer& offer : earlierOffers(series, desk_.seriesKept())) {
        pools_.push_back({false, std::move(offer.series)});
        readings.push_back(offer.readings);
    }
    auto chosen = std::ranges::find(pools_, series.pool);
    if (chosen == pools_.end()) {
        readings.push_back(0);
        chosen = pools_.insert(chosen, series.pool);
    }
    const auto place = static_cast<int>(chosen - pools_.begin());
    const QSignalBlocker quiet{pool_};
    pool_->clear();
    for (std::size_t i = 0; i < pools_.size(); ++i)
        pool_->addItem(readings[i] == 0 ? poolText(pools_[i])
                                        : tr("%1 · %2").arg(poolText(pools_[i])).arg(readings[i]));
    pool_->setCurrentIndex(place);
}

void SeriesCard::pool(int place) {
    if (place >= 0 && static_cast<std::size_t>(place) < pools_.size())
        desk_.setPool(pools_[static_cast<std::size_t>(place)]);
}

void SeriesCard::showTags() {
    const BenchSeries& series = *desk_.series();
    QStringList known;
    for (const std::string& tag : series.knownTags) known << QString::fromStdString(tag);
    QStringList there;
    for (auto* each : tags_->findChildren<QPushButton*>()) there << each->text();
    if (known != there) {
        while (QLayoutItem* const item = tagRow_->takeAt(0)) {
            delete item->widget();
            delete item;
        }
        for (const QString& tag : known) {
            auto* const button = benchButton(tag, "seriesTag");
            button->setCheckable(true);
            button->setAccessibleName(tr("Only those with: %1").arg(tag));
            tagRow_->addWidget(button);
            connect(button, &QPushButton::clicked, this, &SeriesCard::splitByTags);
        }
    }
    tags_->setVisible(!known.isEmpty());
    for (auto* each : tags_->findChildren<QPushButton*>())
        each->setChecked(std::ranges::find(series.tags, each->text().toStdString()) !=
                         series.tags.end());
}

void SeriesCard::splitByTags() {
    if (desk_.series() == nullptr) return;
    std::vector<std::string> tags;
    for (const auto* each : tags_->findChildren<QPushButton*>())
        if (each->isChecked()) tags.push_back(each->text().toStdString());
    std::ranges::sort(tags);
    desk_.showSeries(desk_.series()->key, tags);
}

void SeriesCard::showPlot() {
    if (desk_.series() == nullptr) return;
    const SeriesPlot plot = seriesPlotOf(
        *desk_.series(), inTime_->isChecked() ? PlotOrder::InTime : PlotOrder::ByWeight);
    plot_->show(plot);
    const QString note = plotNote(plot);
    note_->setText(note);
    note_->setVisible(!note.isEmpty());
}

void SeriesCard::showSentences() {
    QStringList sentences = seriesSentences(*desk_.series());
    sentence_->setText(sentences.isEmpty() ? QString{} : sentences.takeFirst());
    sentence_->setVisible(!sentence_->text().isEmpty());
    more_->setText(sentences.join(u'\n'));
    more_->setVisible(!sentences.isEmpty());
}

void SeriesCard::showPromise() {
    promised_->setText(promise_->sentences().join(u'\n'));
    promised_->setVisible(!promise_->sentences().isEmpty());
}

void SeriesCard::showEvent(QShowEvent* event) {
    QFrame::showEvent(event);
    promise_->look(true);
}

void SeriesCard::hideEvent(QHideEvent* event) {
    QFrame::hideEvent(event);
    promise_->look(false);
}

void SeriesCard::askAboutOutlier() {
    const BenchSeries* const series = desk_.series();
    question_->ask(series == nullptr ? QString{} : outlierQuestion(*series));
}

void SeriesCard::choose(int place) {
    const auto& kept = desk_.seriesKept();
    if (place < 0 || static_cast<std::size_t>(place) >= kept.size()) return;
    desk_.showSeries(kept[static_cast<std::size_t>(place)].key);
}

std::optional<double> SeriesCard::numberIn(QLineEdit& field, const QString& refusal) {
    const QString text = field.text().trimmed();
    const auto number = readShown(text.toStdString(), groupMarkHere());
    const bool fine =
        text.isEmpty() || (number && *number > Decimal{} && number->value() <= kMostAsked);
    refusal_->setText(fine ? QString{} : refusal);
    refusal_->setVisible(!fine);
    if (!fine) return {};
    return text.isEmpty() ? 0 : number->value();
}

void SeriesCard::takeOthers() {
    if (const auto number =
            numberIn(*others_, tr("Say how many others in a number above zero, such as 36.")))
        desk_.setOthers(*number);
}

void SeriesCard::takeEnough() {
    if (const auto number = numberIn(*enough_, tr("Say in grams above zero how near is near "
                                                  "enough for all the others, such as 5.")))
        desk_.setEnough(*number);
}

void SeriesCard::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) update();
}

void SeriesCard::paintEvent(QPaintEvent*) {
    const Shade shade = shadeOf(palette());
    QPainter painter{this};
    painter.fillRect(rect(), colour(Role::Raised, shade));
    painter.setPen(colour(Role::Hairline, shade));
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

}  // namespace nettare
