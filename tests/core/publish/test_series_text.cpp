#include "core/publish/series_text.h"

#include <catch2/catch.hpp>

#include "core/nutrition/judged_series.h"
#include "core/publish/against_table_text.h"
#include "core/publish/within_text.h"

using namespace nettare;

namespace {

const SeriesKey kPrawn{"prawn meat", SeriesKind::PerPiece, "prawn"};
const SeriesKey kLime{"lime juice", SeriesKind::PerPiece, "lime"};
const SeriesKey kEar{"corn kernels", SeriesKind::PerPiece, "ear"};
const SeriesKey kBulb{"fennel", SeriesKind::Ratio, "edible / bought"};

SeriesQuestion plainQuestion() {
    SeriesQuestion question;
    question.assumed = {0.14, 8};
    return question;
}

SeriesTexts textsOf(const SeriesKey& key, const std::vector<double>& grams,
                    const SeriesQuestion& question) {
    std::vector<SeriesReading> readings;
    readings.reserve(grams.size());
    for (const double each : grams) readings.push_back({each, 1, 0});
    return seriesTexts(key, *judgedSeries(readings, question), question);
}

const std::vector<double> kSixPrawns{9.8, 9.6, 10.1, 9.7, 9.9, 9.8};

}  // namespace

TEST_CASE("six prawns are told in words", "[publish]") {
    SeriesQuestion question = plainQuestion();
    question.others = 36;
    question.published = PublishedMean{"a table", 10.6, 8, 0.3};
    const SeriesTexts texts = textsOf(kPrawn, kSixPrawns, question);
    CHECK(texts.summary == "6 readings · mean 9.82 g · s 0.17 g");
    CHECK(texts.next == "One more prawn will weigh 9.3 to 10.3 g (95 %).");
    CHECK(texts.others == "Thirty-six others: 353 ± 7 g.");
    CHECK(texts.against ==
          "Your prawns are lighter than the table's 10.6 g, and the difference is real (t = −6.16, "
          "11 degrees of freedom).");
    CHECK(texts.spread.empty());
    CHECK(texts.more.empty());
    CHECK(texts.drift.empty());
}

TEST_CASE("a series that its table cannot weigh says what the table has", "[publish]") {
    CHECK(notInTableText(kEar, {}, {"large ear", "medium ear", "small ear", "cup", "can"}) ==
          "The table has no weight of one ear; it has large ear, medium ear, small ear, cup and 1 "
          "more.");
    CHECK(notInTableText({"limes", SeriesKind::PerPiece, "limes"}, {}, {}) ==
          "The table has no weight of one lime.");
    CHECK(notInTableText(kEar, {"ear, large", "ear, small"}, {"ear"}) ==
          "The table has several weights of one ear: ear, large; ear, small. Tag the readings by "
          "the one that is meant to hold them against it.");
}

TEST_CASE("limes against the table are told apart with four and not with one", "[publish]") {
    SeriesQuestion question = plainQuestion();
    question.published = PublishedMean{"usda-sr 28 09160, 1 lime yields", 44, 12, 11.031};
    CHECK(textsOf(kLime, {30, 33, 29, 34}, question).against ==
          "Your limes are lighter than the table's 44 g, and the difference is real (t = −3.68, 13 "
          "degrees of freedom).");
    CHECK(
        textsOf(kLime, {36}, question).against ==
        "With one reading no difference from the table's 44 g can be told; 6 more weighings would "
        "show one of 8 g.");
    CHECK(textsOf(kLime, {43, 47, 39, 46}, question)
              .against.starts_with("No difference from the table's 44 g shows (t = "));
}

TEST_CASE("a table without a spread can be told nothing against", "[publish]") {
    SeriesQuestion question = plainQuestion();
    question.published = PublishedMean{"a cup", 154, 0, {}};
    CHECK(textsOf(kEar, {152}, question).against ==
          "With one reading no difference from the table's 154 g can be told; 437 more weighings "
          "would show one of 2 g if that figure were exact.");
    CHECK(textsOf(kEar, {150, 160, 155, 148}, question)
              .against.starts_with("Whether your ears differ from the table's 154 g cannot be "
                                   "told, since no spread is "
                                   "published with it; "));
    CHECK(textsOf(kEar, {120, 121, 122, 121}, question).against ==
          "Whether your ears differ from the table's 154 g cannot be told, since no spread is "
          "published with it; the interval of their mean leaves that figure out.");
    question.published->mean = 152.001;
    CHECK(textsOf(kEar, {152}, question).against ==
          "With one reading no difference from the table's 152 g can be told; not even 1000 more "
          "weighings would show one of 0.001 g if that figure were exact.");
}

TEST_CASE("few readings say why their interval is wide", "[publish]") {
    CHECK(textsOf(kPrawn, {10}, plainQuestion()).spread ==
          "One reading shows no spread, 14 % is assumed; from four readings on the spread is their "
          "own.");
    CHECK(textsOf(kPrawn, {10}, plainQuestion()).summary ==
          "1 reading · mean 10.0 g · s 1.4 g, assumed");
    const SeriesTexts two = textsOf(kPrawn, {10, 12}, plainQuestion());
    CHECK(two.spread ==
          "With two readings the spread is hardly known, and the interval is 12.7 standard "
          "uncertainties wide to each side; weigh two more, or pool with an earlier or the usual "
          "spread.");
    // 11 ± 22: no prawn weighs less than nothing.
    CHECK(two.next == "One more prawn will weigh 0 to 34 g (95 %).");
    CHECK(textsOf(kPrawn, {10, 12, 11}, plainQuestion()).spread ==
          "With three readings the interval is 4.3 standard uncertainties wide to each side; weigh "
          "one more, or pool with an earlier or the usual "
          "spread.");
    SeriesQuestion pool = plainQuestion();
    pool.poolAssumed = true;
    const SeriesTexts pooledTexts = textsOf(kPrawn, {10, 12}, pool);
    CHECK(pooledTexts.summary == "2 readings · mean 11.0 g · s 1.5 g, pooled");
    CHECK(pooledTexts.spread ==
          "The spread of 1.5 g is pooled with the usual one of 14 % (9 degrees of freedom).");
}

TEST_CASE("how many more weighings are enough is told, or that none are", "[publish]") {
    SeriesQuestion question = plainQuestion();
    question.others = 36;
    question.wanted = 5;
    // By hand: 2.262 s sqrt(36^2/10 + 36) = 5.01 g, 2.228 s sqrt(36^2/11 + 36) = 4.76 g.
    CHECK(textsOf(kPrawn, kSixPrawns, question).more ==
          "5 more weighings bring thirty-six others to ± 5 g.");
    question.wanted = 8;
    CHECK(textsOf(kPrawn, kSixPrawns, question).more ==
          "Thirty-six others are known to ± 8 g already.");
    question.wanted = 2;
    CHECK(textsOf(kPrawn, kSixPrawns, question).more ==
          "No number of weighings is enough for ± 2 g: thirty-six others scatter by ± 2.02 g "
          "themselves.");
    question.wanted = 2.027;
    CHECK(textsOf(kPrawn, kSixPrawns, question).more ==
          "It would take more than a thousand weighings to bring thirty-six others to ± 2.03 g.");
}

TEST_CASE("pieces and measures are called by what they are of", "[publish]") {
    CHECK(seriesPlural({"squid", SeriesKind::PerPiece, "piece"}) == "pieces of squid");
    CHECK(seriesPlural({"blueberries", SeriesKind::PerMeasure, "cup"}) == "cups of blueberries");
    CHECK(seriesPlural({"honey", SeriesKind::PerMeasure, "tbsp"}) == "tbsp of honey");
    CHECK(seriesPlural({"garlic", SeriesKind::PerPiece, "clove"}) == "cloves");
}

TEST_CASE("a drift names its conditions, and an odd reading is a question", "[publish]") {
    // Slope -1.01, residuals -.06 .05 .06 -.03 -.02: s = sqrt(0.011/3), u = s/sqrt(10),
    // t(3) = 3.182.
    CHECK(textsOf(kPrawn, {14, 13.1, 12.1, 11, 10}, plainQuestion()).drift ==
          "From reading to reading they grow lighter by 1.01 ± 0.06 g (3 degrees of freedom); see "
          "whether "
          "size, season or supplier has changed, and tag the readings by it.");
    CHECK(outlierQuestion("14 g") ==
          "Is 14 g as weighed? It lies further from the others than chance explains (one in "
          "twenty). Leave it out only for a cause that you know.");
}

TEST_CASE("a ratio is told in per cent", "[publish]") {
    const auto ratio = judgedRatios({{200, 160, 0}, {300, 246, 0}, {100, 82, 0}}, plainQuestion());
    const SeriesTexts texts = ratioTexts(kBulb, *ratio, plainQuestion());
    CHECK(texts.summary == "3 readings · edible / bought 81 ± 3 %");
    CHECK(texts.next == "One more lot of 200 g will give 75 to 88 % (95 %).");
    CHECK(texts.spread ==
          "With three readings the interval is 4.3 standard uncertainties wide to each side; weigh "
          "one more, or pool with an earlier or the usual spread.");
    const SeriesTexts one =
        ratioTexts(kBulb, *judgedRatios({{200, 160, 0}}, plainQuestion()), plainQuestion());
    CHECK(one.next.empty());
    CHECK(one.spread ==
          "One reading shows no spread; the lost share is assumed to vary as pieces do. From four "
          "readings on the spread is their own.");
}

TEST_CASE("an earlier series is named with its readings and its spread", "[publish]") {
    SeriesQuestion question = plainQuestion();
    question.earlier = EarlierSpread{{0.3, 5}, "prawn meat, 2025", 6};
    // By hand: s^2 = (5 x 0.09 + 1 x 2) / 6.
    CHECK(textsOf(kPrawn, {10, 12}, question).spread ==
          "The spread of 0.64 g is pooled with that of prawn meat, 2025 (6 readings, s 0.30 g); 6 "
          "degrees of freedom.");
    CHECK(textsOf(kPrawn, {10}, question).spread ==
          "One reading shows no spread; that of prawn meat, 2025 (6 readings, s 0.30 g) stands for "
          "it.");
}

TEST_CASE("a pooled ratio is told in per cent of the lot", "[publish]") {
    const std::vector<RatioReading> pairs{{200, 165, 0}, {200, 135, 0}};
    SeriesQuestion question = plainQuestion();
    question.poolAssumed = true;
    const SeriesTexts usual = ratioTexts(kBulb, *judgedRatios(pairs, question), question);
    CHECK(usual.summary == "2 readings · edible / bought 75 ± 8 %, pooled");
    CHECK(usual.spread ==
          "The spread of 4.8 % is pooled with the usual one of 3.5 % (9 degrees of freedom).");
    question.earlier = EarlierSpread{{0.03, 4}, "fennel, 2025", 5};
    const SeriesTexts earlier = ratioTexts(kBulb, *judgedRatios(pairs, question), question);
    CHECK(earlier.spread ==
          "The spread of 5.4 % is pooled with that of fennel, 2025 (5 readings, s 3.0 %); 5 "
          "degrees of freedom.");
}

TEST_CASE("intervals are printed outwards with the digits that they deserve", "[publish]") {
    CHECK(rangeText({9.8167, 0.4782}) == "9.3 to 10.3");
    CHECK(rangeText({9.8, 0.14}) == "9.66 to 9.94");
    CHECK(rangeText({152, 69.4}) == "82 to 222");
    CHECK(withinText({353.4, 7.03}) == "353 ± 7");
    CHECK(withinText({353.4, 1.26}) == "353.4 ± 1.3");
    CHECK(decimalsOfWithin(0.05) == 2);
    CHECK(decimalsOfWithin(19) == 0);
    CHECK(decimalsOfWithin(0) == 1);
    CHECK(decimalsOfSpread(0.172) == 2);
    CHECK(decimalsOfSpread(21) == 0);
    CHECK(countInWords(36) == "thirty-six");
    CHECK(countInWords(40) == "forty");
    CHECK(countInWords(120) == "120");
    CHECK(countInWords(2.5) == "2.5");
}
