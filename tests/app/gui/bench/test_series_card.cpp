#include "app/bench/outlier_question.h"
#include "app/bench/series_card.h"
#include "app/bench/series_plot_view.h"
#include "app/gui/bench/bench_kitchen.h"
#include "app/gui/support/cut_texts.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <cmath>
#include <memory>

namespace nettare {

namespace {

/// The card on a kitchen, shown.
struct ShownCard {
    explicit ShownCard(QSize size = {760, 760}) : card{kitchen.desk()} { showReady(card, size); }

    /// With plain spaces, as one would read it aloud.
    QString text(const char* name) {
        return child<QLabel>(card, name).text().replace(QChar{0x00A0}, u' ');
    }
    const SeriesPlot& plot() { return card.findChild<SeriesPlotView*>()->plot(); }
    void press(const char* name) {
        child<QPushButton>(card, name).click();
        kitchen.rest();
    }

    QStringList pools() {
        const auto& box = child<QComboBox>(card, "seriesPool");
        QStringList texts;
        for (int i = 0; i < box.count(); ++i) texts << box.itemText(i);
        return texts;
    }
    void pool(int place) {
        auto& box = child<QComboBox>(card, "seriesPool");
        box.setCurrentIndex(place);
        emit box.activated(place);
        kitchen.rest();
    }
    /// Presses or releases a condition.
    void split(const char* tag) {
        for (auto* button : card.findChildren<QPushButton*>(QStringLiteral("seriesTag")))
            if (button->text() == QString::fromLatin1(tag)) button->click();
        kitchen.rest();
    }

    BenchKitchen kitchen;
    SeriesCard card;
};

const std::vector<const char*> kSixPrawns{"9.6", "9.8", "9.7", "9.8", "9.9", "10.1"};
const std::vector<const char*> kOddPrawns{"9.6", "9.8", "9.7", "9.8", "9.9", "10.1", "9.8", "14.2"};

}  // namespace

TEST_CASE("before anything was weighed the card says what to do") {
    ShownCard shown;
    CHECK(shown.card.findChild<QLabel*>(QStringLiteral("seriesHeading"))->isVisible() == false);
    bool said = false;
    for (const auto* label : shown.card.findChildren<QLabel*>())
        said = said || (label->isVisible() && label->text() == QStringLiteral("No series yet"));
    CHECK(said);
    keepPicture(shown.card, QStringLiteral("series-none"));
}

TEST_CASE("the card shows the series weighed last, with its mean and what one more will weigh") {
    ShownCard shown;
    shown.kitchen.weighPrawns(kSixPrawns);
    CHECK(shown.text("seriesHeading") == QStringLiteral("Prawn meat per prawn"));
    CHECK(shown.text("seriesSummary") == QStringLiteral("6 readings · mean 9.82 g · s 0.17 g"));
    CHECK_THAT(shown.text("seriesSentence").toStdString(),
               Catch::StartsWith("One more prawn will weigh 9.3 to 10.3 g (95 %)."));
    CHECK(shown.plot().dots.size() == 6);
    keepScreenPictures(shown.card, QStringLiteral("series-card"));
}

TEST_CASE("the card says what so many others weigh") {
    ShownCard shown;
    shown.kitchen.weighPrawns(kSixPrawns);
    auto& others = child<QLineEdit>(shown.card, "seriesOthers");
    typeText(others, QStringLiteral("36"));
    pressKey(others, Qt::Key_Return);
    shown.kitchen.rest();
    CHECK_THAT(shown.text("seriesSentence").toStdString(),
               Catch::EndsWith("Thirty-six others: 353 ± 7 g."));
    typeText(others, QStringLiteral(" many"));
    pressKey(others, Qt::Key_Return);
    CHECK(shown.text("seriesRefusal") ==
          QStringLiteral("Say how many others in a number above zero, such as 36."));
}

TEST_CASE("the card says how many more weighings are near enough, or that none are") {
    ShownCard shown;
    shown.kitchen.weighPrawns(kSixPrawns);
    const auto ask = [&shown](const char* field, const char* number) {
        auto& edit = child<QLineEdit>(shown.card, field);
        edit.clear();
        typeText(edit, QString::fromLatin1(number));
        pressKey(edit, Qt::Key_Return);
        shown.kitchen.rest();
    };
    ask("seriesOthers", "36");
    ask("seriesEnough", "5");
    CHECK_THAT(shown.text("seriesMore").toStdString(),
               Catch::Contains("thirty-six others to ± 5 g."));
    ask("seriesEnough", "1");
    CHECK_THAT(shown.text("seriesMore").toStdString(),
               Catch::Contains("No number of weighings is enough for ± 1 g"));
}

TEST_CASE("an odd reading is a question, and is left out only with a cause") {
    ShownCard shown;
    shown.kitchen.weighPrawns(kOddPrawns);
    auto& question = *shown.card.findChild<OutlierQuestion*>();
    REQUIRE(question.isVisible());
    CHECK_THAT(question.text().toStdString(), Catch::Contains("14.2 g"));
    shown.press("leaveOut");
    auto& own = child<QLineEdit>(question, "ownCause");
    pressKey(own, Qt::Key_Return);
    CHECK(child<QLabel>(question, "causeRefusal").isVisible());
    CHECK(shown.kitchen.desk().series()->counted.size() == 8);
    keepScreenPictures(shown.card, QStringLiteral("series-odd"));
    typeText(own, QStringLiteral("with its head"));
    pressKey(own, Qt::Key_Return);
    shown.kitchen.rest();
    CHECK(shown.kitchen.desk().series()->counted.size() == 7);
    CHECK_FALSE(question.isVisible());
    CHECK(shown.plot().leftOut == 1);
    bool listed = false;
    for (const auto* label : shown.card.findChildren<QLabel*>())
        listed = listed || label->text() == QStringLiteral("Left out: 14.2 g, with its head");
    CHECK(listed);
    keepScreenPictures(shown.card, QStringLiteral("series-left-out"));
    shown.press("takeIn");
    CHECK(shown.kitchen.desk().series()->counted.size() == 8);
    CHECK(question.isVisible());
}

TEST_CASE("an odd reading that is as weighed is not asked about again") {
    ShownCard shown;
    shown.kitchen.weighPrawns(kOddPrawns);
    shown.press("asWeighed");
    CHECK_FALSE(shown.card.findChild<OutlierQuestion*>()->isVisible());
    shown.kitchen.weighPrawns({"9.7"});
    CHECK_FALSE(shown.card.findChild<OutlierQuestion*>()->isVisible());
    CHECK(shown.kitchen.desk().series()->counted.size() == 9);
    // Nor by a card that never asked, since the answer is in the ledger.
    SeriesCard later{shown.kitchen.desk()};
    showReady(later, {760, 760});
    shown.kitchen.rest();
    CHECK_FALSE(later.findChild<OutlierQuestion*>()->isVisible());
    CHECK(shown.kitchen.desk().end().sequence ==
          shown.kitchen.desk().ledger().front().chained.sequence);
}

TEST_CASE("a card that goes while its field has the focus asks for nothing") {
    BenchKitchen kitchen;
    kitchen.weighPrawns(kSixPrawns);
    auto card = std::make_unique<SeriesCard>(kitchen.desk());
    showReady(*card, {760, 760});
    kitchen.rest();
    auto& others = child<QLineEdit>(*card, "seriesOthers");
    typeText(others, QStringLiteral("36"));
    REQUIRE(others.hasFocus());
    card.reset();
    kitchen.rest();
    CHECK(kitchen.desk().series()->others == 0);
}

TEST_CASE("a condition splits the series") {
    ShownCard shown;
    shown.kitchen.weighPrawns({"9.6", "9.8", "9.7"}, {"size 16/20"});
    shown.kitchen.weighPrawns({"14.1", "14.4"}, {"size 8/12"});
    CHECK(shown.plot().dots.size() == 5);
    for (auto* button : shown.card.findChildren<QPushButton*>(QStringLiteral("seriesTag")))
        if (button->text() == QStringLiteral("size 8/12")) button->click();
    shown.kitchen.rest();
    CHECK(shown.plot().dots.size() == 2);
    CHECK_THAT(shown.text("seriesSummary").toStdString(), Catch::StartsWith("2 readings"));
    keepScreenPictures(shown.card, QStringLiteral("series-two"));
}

TEST_CASE("few readings are pooled with the usual spread on request") {
    ShownCard shown;
    shown.kitchen.weighPrawns({"8.6", "11.8"});
    const double alone = shown.kitchen.desk().series()->report->next.within;
    CHECK(shown.pools() == QStringList{QStringLiteral("Pooled with nothing"),
                                       QStringLiteral("Pooled with the usual spread")});
    shown.pool(1);
    CHECK(shown.kitchen.desk().series()->report->next.within < alone);
    CHECK(shown.kitchen.desk().series()->report->basis == SpreadBasis::Pooled);
    CHECK_THAT(shown.text("seriesMore").toStdString(),
               Catch::Contains("is pooled with the usual one of 14 %"));
    shown.pool(0);
    CHECK(shown.kitchen.desk().series()->report->next.within == alone);
}

TEST_CASE("a series that is split is pooled with its other readings") {
    ShownCard shown;
    shown.kitchen.weighPrawns({"9.6", "9.8", "9.7", "9.9"}, {"2025"});
    shown.kitchen.weighPrawns({"9.0"}, {"2024"});
    shown.kitchen.weighPrawns({"10.4", "10.8"}, {"2026"});
    shown.split("2026");
    const QStringList offers{QStringLiteral("Pooled with nothing"),
                             QStringLiteral("Pooled with the usual spread"),
                             QStringLiteral("Pooled with prawn meat without 2026 · 5"),
                             QStringLiteral("Pooled with prawn meat, 2025 · 4")};
    CHECK(shown.pools() == offers);
    shown.pool(3);
    // By hand: 9.6 to 9.9 have s^2 = 0.05/3, 10.4 and 10.8 have 0.08; (0.05 + 0.08)/4.
    const SeriesReport& report = *shown.kitchen.desk().series()->report;
    CHECK(report.statistics.spread == Approx(std::sqrt(0.0325)));
    CHECK(report.statistics.freedom == 4);
    CHECK_THAT(shown.text("seriesMore").toStdString(),
               Catch::Contains("The spread of 0.18 g is pooled with that of prawn meat, 2025 (4 "
                               "readings, s 0.13 g); 4 degrees of freedom."));
    keepScreenPictures(shown.card, QStringLiteral("series-pooled"));
    // The choice is that of this part of the series, and waits for it.
    shown.split("2026");
    CHECK(shown.kitchen.desk().series()->report->basis == SpreadBasis::Own);
    shown.split("2026");
    CHECK(shown.kitchen.desk().series()->report->basis == SpreadBasis::Pooled);
    CHECK(child<QComboBox>(shown.card, "seriesPool").currentIndex() == 3);
}

TEST_CASE("a series is pooled with another one of the same piece") {
    ShownCard shown;
    shown.kitchen.weighPrawns({"10.4"});
    shown.kitchen.weighPrawns({"9.6", "9.8", "9.7"}, {}, "wild prawn meat");
    CHECK(shown.kitchen.desk().series()->report->basis == SpreadBasis::Assumed);
    CHECK(shown.pools().last() == QStringLiteral("Pooled with wild prawn meat · 3"));
    shown.pool(2);
    CHECK(shown.kitchen.desk().series()->report->statistics.spread == Approx(0.1));
    CHECK_THAT(shown.text("seriesMore").toStdString(),
               Catch::Contains("One reading shows no spread; that of wild prawn meat"));
    // Two of the three are left out: what is left shows no spread.
    shown.kitchen.leaveOut("wild prawn meat", 2);
    CHECK(shown.kitchen.desk().series()->report->basis == SpreadBasis::Assumed);
    CHECK_THAT(shown.text("seriesMore").toStdString(),
               Catch::Contains("Fewer than two readings of wild prawn meat count"));
}

TEST_CASE("the plot of a series shows the order in time on request") {
    ShownCard shown;
    shown.kitchen.weighPrawns(kSixPrawns);
    shown.press("seriesInTime");
    CHECK(shown.plot().order == PlotOrder::InTime);
    CHECK(shown.plot().dots[5].level == 6);
    keepScreenPictures(shown.card, QStringLiteral("series-in-time"));
}

TEST_CASE("everything on the card has a name, room for its text and room for a wet finger") {
    ShownCard shown{{560, 520}};
    shown.kitchen.weighPrawns(kOddPrawns, {"size 16/20", "with head"});
    shown.press("leaveOut");
    CHECK(unnamedFocusables(shown.card).isEmpty());
    CHECK(cutTexts(shown.card).isEmpty());
    for (const auto* button : shown.card.findChildren<QPushButton*>()) {
        INFO(button->text().toStdString());
        if (button->isVisible()) CHECK(button->height() >= 64);
    }
    CHECK(child<QLineEdit>(shown.card, "seriesOthers").height() >= 64);
    CHECK(child<QComboBox>(shown.card, "seriesPool").height() >= 64);
    const auto& view = *shown.card.findChild<SeriesPlotView*>();
    CHECK(view.accessibleDescription() == spokenPlot(shown.plot()));
    keepPicture(shown.card, QStringLiteral("series-narrow"));
}

}  // namespace nettare
