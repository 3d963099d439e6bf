#include "app/bench/bench_words.h"
#include "app/bench/equipment_entry.h"
#include "app/bench/equipment_words.h"
#include "app/gui/support/gui.h"

namespace nettare {

namespace {

BenchEquipment oneScale() {
    BenchEquipment equipment;
    equipment.scales.push_back({"counter", "g", Decimal{1, -1}, Decimal{3000, 0}, {}});
    return equipment;
}

QString refusalOf(const TypedScale& typed) {
    return readScale(typed, oneScale()).refusal;
}

}  // namespace

TEST_CASE("a scale is known by its name, unit, readability and the most that it takes") {
    const auto read = readScale({QStringLiteral(" fine  scale "), QStringLiteral("g"),
                                 QStringLiteral("0.01"), QStringLiteral("200")},
                                oneScale());
    REQUIRE(read.value);
    CHECK(read.value->name == "fine scale");
    CHECK(read.value->readability.text() == "0.01");
    CHECK(read.value->capacity->text() == "200");
}

TEST_CASE("what cannot be a scale is refused in one sentence") {
    const QString g = QStringLiteral("g"), name = QStringLiteral("fine");
    CHECK(refusalOf({{}, g, QStringLiteral("0.1"), {}}) ==
          QStringLiteral("The scale has no name; type one, such as “counter”."));
    CHECK(refusalOf({QStringLiteral("Counter"), g, QStringLiteral("0.1"), {}}) ==
          QStringLiteral("There is a scale “Counter” already; give this one another name."));
    CHECK(refusalOf({name, g, {}, {}}) ==
          QStringLiteral("The readability is missing; type it as a number."));
    CHECK(refusalOf({name, g, QStringLiteral("0"), {}}) ==
          QStringLiteral("The readability is the least step that the scale shows; type a number "
                         "above zero, such as 0.1."));
    CHECK(refusalOf({name, g, QStringLiteral("fine"), {}})
              .startsWith(QStringLiteral("The readability: “fine” is no decimal number;")));
    CHECK(refusalOf({name, g, QStringLiteral("1"), QStringLiteral("0.5")}) ==
          QStringLiteral("The most that it takes is not above its least step; look for “Max” on "
                         "the plate of the scale."));
}

TEST_CASE("a check needs a known mass and a number that the scale can show") {
    const KnownScale scale = oneScale().scales.front();
    const QString mass = QStringLiteral("200");
    const auto read = readCheck(mass, QStringLiteral("199.9"), scale);
    REQUIRE(read.value);
    CHECK(read.value->shown.text() == "199.9");
    CHECK(readCheck({}, mass, scale).refusal ==
          QStringLiteral("The known mass is missing; type it as a number."));
    CHECK(readCheck(QStringLiteral("-5"), mass, scale).refusal ==
          QStringLiteral("The known mass is not above zero; type what is stamped on it, such as "
                         "200."));
    CHECK(
        readCheck(QStringLiteral("5000"), mass, scale).refusal ==
        QStringLiteral("The scale takes 3000 g at most, and 5000 g is more; weigh in two parts."));
    CHECK(readCheck(mass, QStringLiteral("199.95"), scale).refusal ==
          QStringLiteral("The scale shows steps of 0.1 g, and 199.95 g is none; type what it "
                         "showed."));
}

TEST_CASE("a vessel needs a scale, a name and a tare above zero") {
    const KnownScale scale = oneScale().scales.front();
    const QString bowl = QStringLiteral("steel bowl"), tare = QStringLiteral("212.2");
    CHECK(readTare(bowl, tare, &scale).value == Decimal{2122, -1});
    CHECK(readTare(bowl, tare, nullptr).refusal ==
          QStringLiteral("No scale is known yet; add the one that it stands on."));
    CHECK(readTare(QStringLiteral("  "), tare, &scale).refusal ==
          QStringLiteral("The vessel has no name; type one, such as “steel bowl”."));
    CHECK(readTare(bowl, QStringLiteral("0"), &scale).refusal ==
          QStringLiteral("An empty vessel weighs more than zero; zero the scale first, then put "
                         "the vessel on it."));
}

TEST_CASE("a failed check says which readings are in doubt and what to do") {
    KnownScale scale = oneScale().scales.front();
    CHECK(checkText(scale) == QStringLiteral("Never checked with a known mass"));
    CHECK(failedCheckText(scale).isEmpty());
    scale.lastCheck =
        ScaleCheck{"2026-05-23T17:51:20+02:00", 7, Decimal{200, 0}, Decimal{1987, -1}, "g", false};
    CHECK_THAT(checkText(scale).toStdString(),
               Catch::StartsWith("Failed: showed 198.7 g for 200 g, 23 May 2026") ||
                   Catch::StartsWith("Failed: showed 198.7 g for 200 g, May 23, 2026"));
    // Declared anew, it was still checked in grams.
    scale.unit = "oz";
    CHECK_THAT(checkText(scale).toStdString(),
               Catch::StartsWith("Failed: showed 198.7 g for 200 g, "));
    CHECK_THAT(scaleWords(&scale).check.toStdString(),
               Catch::EndsWith(": shows 198.7 g for 200 g"));
    CHECK_THAT(failedCheckText(scale).toStdString(), Catch::Contains("since its last good check") &&
                                                         Catch::Contains("calibration service"));
}

}  // namespace nettare
