#include "app/gui/bench/bench_day.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTest>

#include <algorithm>

#include "app/bench/feedback.h"
#include "app/files/read_file.h"
#include "app/gui/session/demo_kitchen.h"
#include "app/gui/support/gui.h"
#include "app/window/saved_text.h"
#include "core/support/json.h"

namespace nettare {

namespace {

constexpr int kSecondsApart = 17;
constexpr int kBowl_dg = 2122;

QString shownText(int tenths) {
    return QStringLiteral("%1.%2").arg(tenths / 10).arg(tenths % 10);
}

Kitchen kitchenWithRecipes(const std::string& path, std::vector<std::string>& recipes) {
    auto kitchen = Kitchen::create(path, now());
    REQUIRE(kitchen);
    for (const char* name : {"prawn-fennel-skewers", "barley-beetroot-patties"}) {
        const auto text = readFile(std::string{NETTARE_RESOURCES} + "/demo/" + name + ".json");
        REQUIRE(text);
        const auto recipe = kitchen->addRecipe(*parseJson(*text), now());
        REQUIRE(recipe);
        recipes.push_back(*recipe);
    }
    return std::move(*kitchen);
}

}  // namespace

BenchDay::BenchDay()
    : moment_{QDateTime::fromString(QStringLiteral("2026-05-23T08:00:00+02:00"), Qt::ISODate)},
      clock_{[this] { return moment_; }},
      theme_{QDBusConnection{QStringLiteral("no bus")}},
      kitchen_{std::make_unique<KitchenSession>(kitchenWithRecipes(path(), recipes_),
                                                starterTable(), false)},
      window_{std::make_unique<MainWindow>(*kitchen_, theme_)} {
    showReady(*window_, {1280, 800});
    bench_ = &child<BenchScreen>(*window_, "benchScreen");
    pane().feedback().setTone([] {});
    QObject::connect(kitchen_.get(), &KitchenSession::failed, window_.get(),
                     [this] { ++failures_; });
    QObject::connect(&bench_->desk(), &BenchDesk::failed, window_.get(), [this] { ++failures_; });
    open(0);
    pressKey(*window_, Qt::Key_5, Qt::ControlModifier);
    bench_->desk().keepScale({"counter", "g", Decimal{1, -1}, Decimal{3000, 0}, {}});
    ++entries_;
    rest();
}

BenchDay::~BenchDay() = default;

std::string BenchDay::path() const {
    return folder_.filePath(QStringLiteral("day.nettare")).toStdString();
}

void BenchDay::close() {
    window_->close();
    window_.reset();
    kitchen_.reset();
}

// What the ledger answers is bound to the recipe, which then has something to write itself.
void BenchDay::rest() {
    kitchen_->settle();
    kitchen_->settle();
    settle();
}

void BenchDay::open(int recipe) {
    kitchen_->openRecipe(QString::fromStdString(recipes_[static_cast<std::size_t>(recipe)]));
    rest();
    REQUIRE(kitchen_->draft() != nullptr);
}

void BenchDay::food(const std::string& what, const std::optional<SeriesMark>& series) {
    FreeSubject subject;
    subject.what = what;
    subject.series = series;
    pane().weigh(subject);
}

void BenchDay::line(const std::string& id) {
    pane().weigh(Purpose{PurposeKind::Line, id, {}});
}

void BenchDay::take(TareKind kind) {
    const auto& tares = pane().tares();
    const auto found = std::ranges::find(tares, kind, &BenchTare::kind);
    REQUIRE(found != tares.end());
    pane().chooseTare(static_cast<int>(found - tares.begin()));
}

void BenchDay::type(int shown_dg) {
    pane().number().clear();
    typeText(pane().number(), shownText(shown_dg));
}

void BenchDay::record(int shown_dg, int entries, std::optional<int> net_dg) {
    turnClock(kSecondsApart);
    type(shown_dg);
    pressKey(pane().number(), Qt::Key_Return);
    rest();
    if (!pane().feedback().text().startsWith(QStringLiteral("Recorded ")))
        FAIL("at " << now() << ": " << pane().feedback().text().toStdString());
    if (net_dg) readings_.push_back({*net_dg});
    ++weighings_;
    entries_ += entries;
}

void BenchDay::takeLastBack() {
    turnClock(kSecondsApart);
    click(child<QPushButton>(*bench_, "takeBackLast"));
    rest();
    REQUIRE(pane().feedback().kind() == FeedbackKind::TakenBack);
    readings_.back().takenBack = true;
    ++entries_;
}

void BenchDay::holdBackspace() {
    food("cumin");
    take(TareKind::Zeroed);
    record(112, 2, 112);
    QTest::keyPress(&pane().number(), Qt::Key_Backspace);
    REQUIRE(waitUntil([this] { return pane().feedback().kind() == FeedbackKind::TakenBack; }));
    QTest::keyRelease(&pane().number(), Qt::Key_Backspace);
    rest();
    readings_.back().takenBack = true;
    ++entries_;
}

// Butter, garlic and salt into the bowl, each the difference of two readings; cream over a tare
// that the scale showed.
void BenchDay::fillBowl() {
    food("butter");
    take(TareKind::Vessel);
    const int butter = 400 + round_ % 50;
    record(kBowl_dg + butter, 1, butter);
    food("garlic");
    take(TareKind::SameBowl);
    record(kBowl_dg + butter + 124, 1, 124);
    food("salt");
    record(kBowl_dg + butter + 155, 1, 31);
    takeLastBack();
    record(kBowl_dg + butter + 154, 1, 30);
    food("cream");
    type(953);
    REQUIRE(pane().useAsTare());
    record(2453, 2, 1500);
    record(2503, 1, 1550);
}

void BenchDay::clickRow(const char* button, bool reason) {
    turnClock(kSecondsApart);
    auto& view = child<QListView>(*bench_, "ledgerView");
    view.setCurrentIndex(view.model()->index(0, 0));
    click(child<QPushButton>(*bench_, button));
    if (reason) click(child<QPushButton>(*bench_, "usualReason"));
    rest();
    ++entries_;
}

// Of a fresh lot each hour. Some days one of a round does not belong, and once it does after all.
void BenchDay::weighPrawns() {
    food("prawn meat, lot " + std::to_string(hour_),
         SeriesMark{SeriesKind::PerPiece, "prawn", {"peeled"}, {}});
    take(TareKind::Zeroed);
    for (int i = 0; i < 8; ++i)
        record(95 + (round_ * 8 + i * 3) % 11, 2, 95 + (round_ * 8 + i * 3) % 11);
    record(140, 2, 140);
    clickRow("leaveOutRow", true);
    readings_.back().leftOut = true;
    if (round_ % 3 != 0) return;
    clickRow("takeInRow", false);
    readings_.back().leftOut = false;
}

void BenchDay::takeFromJar() {
    food("honey");
    take(TareKind::Jar);
    record(5234, 1, {});
    record(4812, 1, 422);
    record(4700, 1, 112);
}

void BenchDay::trimFennel() {
    food("fennel", SeriesMark{SeriesKind::Ratio, "edible / bought", {}, {}});
    take(TareKind::Zeroed);
    record(4860 + round_, 2, 4860 + round_);
    record(3820 + round_, 2, 3820 + round_);
}

void BenchDay::weighLines() {
    const bool skewers = hour_ % 2 == 1;
    line(skewers ? "oil" : "beetroot");
    take(TareKind::Zeroed);
    record(390 + round_ % 9, 2, 390 + round_ % 9);
    take(TareKind::SameBowl);
    record(432 + round_ % 9, 1, 42);
    for (QAction* const action : {window_->commands().undo, window_->commands().undo,
                                  window_->commands().redo, window_->commands().redo}) {
        REQUIRE(action->isEnabled());
        action->trigger();
        rest();
    }
    takeLastBack();
}

// By the countdown to a wanted weight.
void BenchDay::weighOut() {
    food("lemon juice");
    take(TareKind::Zeroed);
    type(210);
    REQUIRE(pane().countDown());
    type(87);
    record(211, 2, 211);
}

void BenchDay::doRound() {
    fillBowl();
    weighPrawns();
    takeFromJar();
    trimFennel();
    weighLines();
    weighOut();
    ++round_;
}

void BenchDay::beginHour() {
    ++hour_;
    bench_->desk().checkScale(QStringLiteral("counter"), Decimal{500, 0}, Decimal{5001, -1});
    bench_->desk().keepVessel(QStringLiteral("steel bowl"), Decimal{kBowl_dg, -1});
    entries_ += 2;
    rest();
    if (hour_ > 1) {
        kitchen_->keep(QStringLiteral("as weighed until %1").arg(moment_.toString(Qt::ISODate)));
        ++revisions_;
        rest();
    }
    open((hour_ + 1) % 2);
}

QString BenchDay::stateAfter(int seconds) {
    for (int i = 0; i < 2 && window_->screens().current() == QStringLiteral("bench"); ++i)
        pressKey(*QApplication::focusWidget(), Qt::Key_Escape);
    REQUIRE(window_->screens().current() == QStringLiteral("sheet"));
    rest();
    turnClock(seconds);
    QString said = savedText(*kitchen_);
    // The bar looks at the clock each second.
    REQUIRE(waitUntil([&] {
        const auto labels = window_->findChildren<QLabel*>();
        return std::ranges::any_of(labels, [&](const QLabel* label) {
            return label->isVisible() && label->text() == said;
        });
    }));
    pressKey(*window_, Qt::Key_5, Qt::ControlModifier);
    rest();
    return said;
}

}  // namespace nettare
