#include "app/bench/weigh_pane.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <cmath>

#include "app/bench/to_weigh.h"
#include "app/gui/bench/bench_window.h"
#include "app/gui/support/gui.h"
#include "app/sheet/document_texts.h"

namespace nettare {

namespace {

int tareOf(BenchWindow& bench, TareKind kind) {
    const auto& tares = bench.screen().weighing().tares();
    const auto found = std::find_if(tares.begin(), tares.end(),
                                    [kind](const BenchTare& tare) { return tare.kind == kind; });
    REQUIRE(found != tares.end());
    return static_cast<int>(found - tares.begin());
}

void take(BenchWindow& bench, TareKind kind) {
    bench.screen().weighing().chooseTare(tareOf(bench, kind));
}

void food(BenchWindow& bench, const char* what) {
    FreeSubject subject;
    subject.what = what;
    bench.screen().weighing().weigh(subject);
}

void line(BenchWindow& bench, const char* id) {
    bench.screen().weighing().weigh(Purpose{PurposeKind::Line, id, {}});
}

/// Readings that a line of the open recipe is bound to.
std::size_t boundTo(BenchWindow& bench, const char* id) {
    const auto evaluation = bench.kitchen().draft()->evaluation();
    REQUIRE(evaluation);
    for (const LineEntry& each : evaluation->document.lines)
        if (each.id == id) return each.weighed.size();
    return 99;
}

const LedgerReading& newest(BenchWindow& bench) {
    REQUIRE_FALSE(bench.desk().ledger().empty());
    return bench.desk().ledger().front();
}

}  // namespace

TEST_CASE("a vessel with a known tare leaves the net") {
    BenchWindow bench;
    bench.weighPrawnMeat();
    take(bench, TareKind::Vessel);
    bench.screen().weighing().setPieces(6);
    typeText(bench.screen().weighing().number(), QStringLiteral("271.1"));
    CHECK(bench.shown() == "58.9 g ± 0.1");
    CHECK(child<QLabel>(bench.screen(), "benchSum").text() == QStringLiteral("− tare 212.2 g"));
    bench.record(QStringLiteral("271.1"));
    CHECK_THAT(bench.said(), Catch::StartsWith("Recorded 58.9 g, prawn meat, "));
    const LedgerEntry& entry = newest(bench).entry();
    CHECK(entry.pieces == 6);
    CHECK(entry.vessel == "steel bowl");
    CHECK(entry.tare == bench.desk().equipment().vessels.front().entry);
    CHECK(newest(bench).net == Decimal(589, -1));
    CHECK(entry.series->of == "prawn");
}

TEST_CASE(
    "a vessel weighed on another scale brings that scale's rounding, here and in the recipe") {
    BenchWindow bench;
    bench.weighPrawnMeat();
    KnownScale floor;
    floor.name = "floor scale";
    floor.unit = "g";
    floor.readability = Decimal{1, 0};
    bench.desk().keepScale(floor);
    bench.rest();
    line(bench, "garlic");
    take(bench, TareKind::Vessel);
    typeText(bench.screen().weighing().number(), QStringLiteral("222"));
    // 1.96 sqrt(1 + 0.01)/sqrt(12) = 0.57; the bowl was weighed in steps of 0.1 g.
    CHECK(bench.shown() == "9.8 g ± 0.6");
    bench.record(QStringLiteral("222"));
    const LedgerReading& reading = newest(bench);
    CHECK(reading.entry().scale == "floor scale");
    CHECK(reading.net == Decimal(98, -1));
    CHECK(roundingGrams(reading) == Approx(std::sqrt(1.01 / 12)));
    // The document has the bowl on the scale that weighed it; the reading is bound once.
    CHECK(boundTo(bench, "garlic") == 1);
    const Json& document = bench.kitchen().draft()->document();
    const Json vessel = entriesIn(document, "vessels").back();
    CHECK(memberText(&vessel, "name") == "steel bowl");
    std::string scale;
    for (const Json& each : entriesIn(document, "scales"))
        if (memberText(&each, "id") == memberText(&vessel, "scale"))
            scale = memberText(&each, "readability");
    CHECK(scale == "0.1");
    const std::size_t readings = entriesIn(document, "readings").size();
    bench.desk().bind(reading.entry().id, "garlic");
    bench.rest();
    CHECK(entriesIn(bench.kitchen().draft()->document(), "readings").size() == readings);
}

TEST_CASE("what goes into one bowl is each the difference of two readings") {
    BenchWindow bench;
    food(bench, "butter");
    take(bench, TareKind::Vessel);
    bench.record(QStringLiteral("262.2"));
    CHECK(newest(bench).net == Decimal(500, -1));
    food(bench, "garlic");
    take(bench, TareKind::SameBowl);
    bench.record(QStringLiteral("274.6"));
    CHECK(newest(bench).net == Decimal(124, -1));
    food(bench, "salt");
    bench.record(QStringLiteral("277.7"));
    CHECK(newest(bench).net == Decimal(31, -1));
    // Each tare is the entry before it.
    const auto ledger = bench.ledger();
    CHECK(ledger.back().entry.tare == ledger[ledger.size() - 2].entry.id);
}

TEST_CASE("taking the last addition back leaves the bowl as it was before") {
    BenchWindow bench;
    food(bench, "butter");
    take(bench, TareKind::Vessel);
    bench.record(QStringLiteral("262.2"));
    food(bench, "garlic");
    take(bench, TareKind::SameBowl);
    bench.record(QStringLiteral("274.6"));
    bench.screen().weighing().takeBackLast();
    bench.rest();
    bench.record(QStringLiteral("270.0"));
    CHECK(newest(bench).net == Decimal(78, -1));
}

TEST_CASE("what is taken from a jar is what it showed before less what it shows now") {
    BenchWindow bench;
    food(bench, "honey");
    take(bench, TareKind::Jar);
    bench.record(QStringLiteral("523.4"));
    CHECK(bench.shown() == " g ± 0.1");
    typeText(bench.screen().weighing().number(), QStringLiteral("481.2"));
    CHECK(bench.shown() == "42.2 g ± 0.1");
    bench.record(QStringLiteral("481.2"));
    CHECK(newest(bench).net == Decimal(422, -1));
    CHECK(newest(bench).entry().what == "honey");
    // And again from the same jar.
    bench.record(QStringLiteral("470.0"));
    CHECK(newest(bench).net == Decimal(112, -1));
    typeText(bench.screen().weighing().number(), QStringLiteral("480"));
    CHECK(bench.said() == "The jar shows more than before; type it again.");
}

TEST_CASE("a jar's net reaches the recipe and can be taken back") {
    BenchWindow bench;
    bench.screen().weighing().weigh(Purpose{PurposeKind::Line, "oil", {}});
    take(bench, TareKind::Jar);
    bench.record(QStringLiteral("523.4"));
    bench.record(QStringLiteral("484.4"));
    const auto grams = [&] {
        const auto& evaluation = bench.kitchen().draft()->evaluation();
        for (const LineEntry& line : evaluation->document.lines)
            if (line.id == "oil") return line.weighed.size();
        return std::size_t{99};
    };
    CHECK(grams() == 1);
    const Json* const line = entryIn(bench.kitchen().draft()->document(), "lines", "oil");
    REQUIRE(line != nullptr);
    CHECK_THAT(writeJson(*line), Catch::Contains(bench.ledger().end()[-2].entry.id));
    bench.screen().weighing().takeBackLast();
    bench.rest();
    CHECK(grams() == 0);
}

TEST_CASE("a weight is weighed out by a countdown, and too much is said") {
    BenchWindow bench;
    food(bench, "lemon juice");
    auto& number = bench.screen().weighing().number();
    typeText(number, QStringLiteral("21"));
    CHECK(bench.screen().weighing().countDown());
    CHECK(bench.shown() == "21.0 g to go");
    typeText(number, QStringLiteral("8.7"));
    CHECK(bench.shown() == "12.3 g to go");
    number.clear();
    typeText(number, QStringLiteral("21.4"));
    CHECK(bench.shown() == "0.4 g over");
    number.clear();
    typeText(number, QStringLiteral("21"));
    CHECK(bench.shown() == "0.0 g, there");
    bench.record(QStringLiteral("21"));
    CHECK(newest(bench).net == Decimal(210, -1));
    CHECK(bench.shown() == " g ± 0.1");
}

TEST_CASE("what the recipe only assumes is offered to be weighed, and counts down to its amount") {
    BenchWindow bench;
    const auto list = stillToWeigh(*bench.kitchen().draft());
    REQUIRE(list.size() == 1);
    CHECK(list[0].what == QStringLiteral("lemon juice"));
    CHECK_THAT(list[0].why.toStdString(), Catch::StartsWith("assumed, "));
    REQUIRE(list[0].grams);
    click(child<QPushButton>(child<QWidget>(bench.screen(), "stillToWeigh"), "choice0"));
    CHECK_THAT(bench.shown(), Catch::EndsWith(" g to go"));
    bench.record(QStringLiteral("20.4"));
    CHECK(newest(bench).entry().what == "lemon juice");
    CHECK(stillToWeigh(*bench.kitchen().draft()).empty());
    bench.kitchen().draft()->undoStack().undo();
    CHECK(stillToWeigh(*bench.kitchen().draft()).size() == 1);
}

TEST_CASE("a food is weighed as bought and trimmed, as a pair of its ratio series") {
    BenchWindow bench;
    FreeSubject fennel;
    fennel.what = "fennel";
    fennel.series = SeriesMark{SeriesKind::Ratio, "edible / bought", {}, {}};
    bench.screen().weighing().weigh(fennel);
    bench.record(QStringLiteral("486.0"));
    bench.record(QStringLiteral("382.0"));
    const LedgerReading& after = newest(bench);
    CHECK(after.entry().series->of == "edible / bought");
    CHECK(after.before == Decimal(4860, -1));
    REQUIRE(bench.desk().series() != nullptr);
    REQUIRE(bench.desk().series()->ratio);
    CHECK(bench.desk().series()->ratio->ratio.value == Approx(382.0 / 486.0));
    // The next pair begins with the food as bought.
    CHECK(bench.screen().weighing().state().before.empty());
}

TEST_CASE("the bench refuses what the scale cannot show, in one sentence") {
    BenchWindow bench;
    food(bench, "salt");
    auto& number = bench.screen().weighing().number();
    const auto record = [&](const char* shown) {
        number.clear();
        typeText(number, QLatin1String{shown});
        pressKey(number, Qt::Key_Return);
        bench.rest();
        return bench.said();
    };
    const auto before = bench.ledger().size();
    CHECK_THAT(record("12.34"), Catch::Contains("shows steps of 0.1 g, and 12.34 g is none"));
    CHECK(bench.feedback().kind() == FeedbackKind::Refused);
    CHECK_THAT(record("4000"), Catch::Contains("takes 3000 g at most, and 4000 g is more"));
    CHECK(record("0") == "Nothing lies on the scale: the net is zero.");
    CHECK(bench.ledger().size() == before);
    take(bench, TareKind::Vessel);
    CHECK(record("200") == "The tare is more than that; choose another tare or type it again.");
    bench.weighPrawnMeat();
    child<QLineEdit>(bench.screen(), "benchPieces").setText(QStringLiteral("0"));
    CHECK(record("271.1") == "Count the pieces: 1 to 9999.");
    CHECK(bench.ledger().size() == before);
}

TEST_CASE("a net under twenty steps is recorded with a caution that shows the figure") {
    BenchWindow bench;
    food(bench, "saffron");
    typeText(bench.screen().weighing().number(), QStringLiteral("1.0"));
    CHECK(bench.said() == "Under 20 steps: rounding alone is 4.1 % of it.");
    CHECK(bench.feedback().kind() == FeedbackKind::Caution);
    bench.record(QStringLiteral("1.0"));
    CHECK(newest(bench).net == Decimal(10, -1));
}

TEST_CASE("a reading for the recipe stays recorded when another recipe is opened at once") {
    BenchWindow bench;
    bench.screen().weighing().weigh(Purpose{PurposeKind::Line, "oil", {}});
    auto& number = bench.screen().weighing().number();
    typeText(number, QStringLiteral("39.0"));
    pressKey(number, Qt::Key_Return);
    const QString skewers = bench.kitchen().draft()->recipe();
    bench.kitchen().newRecipe(QStringLiteral("Barley soup"));
    bench.rest();
    REQUIRE(bench.kitchen().draft()->recipe() != skewers);
    CHECK(newest(bench).net == Decimal(390, -1));
    CHECK(newest(bench).entry().recipe == skewers.toStdString());
    bench.kitchen().openRecipe(skewers);
    bench.rest();
    const Json* const line = entryIn(bench.kitchen().draft()->document(), "lines", "oil");
    REQUIRE(line != nullptr);
    CHECK_THAT(writeJson(*line), Catch::Contains(newest(bench).entry().id));
}

TEST_CASE("a number typed before there is a scale asks for one") {
    BenchWindow bench{{1280, 800}, false, false};
    food(bench, "salt");
    typeText(bench.screen().weighing().number(), QStringLiteral("5"));
    CHECK(bench.said() == "Add a scale to begin.");
    CHECK_FALSE(bench.screen().weighing().useAsTare());
}

TEST_CASE("another portion into the same bowl is added, a second try takes the first one's place") {
    BenchWindow bench;
    auto& add = child<QPushButton>(bench.screen(), "addToWeighed");
    line(bench, "oil");
    bench.record(QStringLiteral("39.0"));
    CHECK(add.text() == QStringLiteral("Add to 39.0 g"));
    CHECK_FALSE(add.isChecked());
    bench.record(QStringLiteral("39.2"));
    CHECK(boundTo(bench, "oil") == 1);
    take(bench, TareKind::SameBowl);
    CHECK(add.isChecked());
    CHECK(bench.said() == "39.2 g so far · the next is added");
    bench.record(QStringLiteral("43.2"));
    CHECK(boundTo(bench, "oil") == 2);
    CHECK(add.text() == QStringLiteral("Add to 43.2 g"));
    click(add);
    CHECK(bench.said() == "43.2 g so far · the next takes its place");
    bench.record(QStringLiteral("45.2"));
    CHECK(boundTo(bench, "oil") == 1);
}

TEST_CASE("taking the trimmed one back leaves the pair's first, and the bowl its known tare") {
    BenchWindow bench;
    FreeSubject fennel;
    fennel.what = "fennel";
    fennel.series = SeriesMark{SeriesKind::Ratio, "edible / bought", {}, {}};
    bench.screen().weighing().weigh(fennel);
    take(bench, TareKind::Vessel);
    bench.record(QStringLiteral("486.0"));
    const std::string first = newest(bench).entry().id;
    bench.record(QStringLiteral("400.0"));
    CHECK(bench.screen().weighing().state().before.empty());
    take(bench, TareKind::SameBowl);
    bench.screen().weighing().takeBackLast();
    bench.rest();
    CHECK(bench.screen().weighing().state().before == first);
    CHECK(bench.screen().weighing().state().tare.kind == TareKind::Vessel);
    CHECK(bench.screen().weighing().state().tare.vessel == "steel bowl");
}

TEST_CASE("the document says of a jar after the taking what the ledger says") {
    BenchWindow bench;
    line(bench, "oil");
    take(bench, TareKind::Jar);
    bench.record(QStringLiteral("523.4"));
    bench.record(QStringLiteral("484.4"));
    const LedgerEntry entry = newest(bench).entry();
    const Json* const shown = entryIn(bench.kitchen().draft()->document(), "indications", entry.id);
    REQUIRE(shown != nullptr);
    CHECK(entry.state == WeighedState::EdiblePortion);
    CHECK_THAT(writeJson(*shown), Catch::Contains("edible"));
}

TEST_CASE("a food's reading that a line was bound to later is taken off it when taken back") {
    BenchWindow bench;
    food(bench, "olive oil");
    bench.record(QStringLiteral("39.0"));
    const std::string id = newest(bench).entry().id;
    bench.desk().bind(id, "oil");
    bench.rest();
    CHECK(boundTo(bench, "oil") == 1);
    bench.screen().weighing().takeBackLast();
    bench.rest();
    CHECK(boundTo(bench, "oil") == 0);
}

TEST_CASE("another failure leaves the reading on its way to be told") {
    BenchWindow bench;
    food(bench, "salt");
    auto& number = bench.screen().weighing().number();
    typeText(number, QStringLiteral("12.3"));
    pressKey(number, Qt::Key_Return);
    CHECK(number.text().isEmpty());
    // Another request's failure is none of its matter.
    emit bench.desk().failed(Error{ErrorCode::ReadingOfNothing});
    CHECK(number.text().isEmpty());
    bench.rest();
    CHECK(newest(bench).net == Decimal(123, -1));
    CHECK_THAT(bench.said(), Catch::StartsWith("Recorded 12.3 g, salt, "));
}

TEST_CASE("the next of a series that is split by a tag bears that tag, and the split stays") {
    BenchWindow bench;
    FreeSubject prawns;
    prawns.what = "prawn meat";
    prawns.series = SeriesMark{SeriesKind::PerPiece, "prawn", {"large"}, {}};
    bench.screen().weighing().weigh(prawns);
    bench.record(QStringLiteral("12.3"));
    REQUIRE(bench.desk().series() != nullptr);
    bench.desk().showSeries(bench.desk().series()->key, {"large"});
    bench.rest();
    bench.record(QStringLiteral("12.5"));
    REQUIRE(bench.desk().series() != nullptr);
    CHECK(bench.desk().series()->tags == std::vector<std::string>{"large"});
}

TEST_CASE("any food can be weighed where no recipe is open") {
    BenchWindow bench{{1280, 800}, false};
    food(bench, "egg, without shell");
    bench.record(QStringLiteral("51.2"));
    CHECK(newest(bench).net == Decimal(512, -1));
    CHECK(newest(bench).entry().recipe.empty());
}

}  // namespace nettare
