#include <catch2/catch.hpp>

#include "core/publish/path.h"
#include "kitchen.h"

using namespace nettare;
using enum nettare::Component;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

PathStep pathFor(const Kitchen& kitchen, Component component, Basis basis,
                 Meaning meaning = Meaning::ThisBatch) {
    const Dossier dossier = Served::orThrow(kitchen.dossier());
    const Cooked cooked = Served::orThrow(cook(dossier, meaning));
    return pathOf(component, Served::orThrow(figuresPer(basis, dossier, cooked)), dossier, cooked);
}

std::string textFor(const Kitchen& kitchen, Component component, Basis basis,
                    Meaning meaning = Meaning::ThisBatch) {
    return pathText(pathFor(kitchen, component, basis, meaning));
}

/// Whether the text has that row, wherever it stands.
bool hasRow(const std::string& text, const std::string& row) {
    const std::size_t at = text.find(" " + row + "\n");
    return at != std::string::npos || text.find("\n" + row + "\n") != std::string::npos;
}

Kitchen marinated() {
    Kitchen kitchen;
    kitchen.append("foods", R"({"id":"paste","name":"paste","label":{"rules":"us",
        "serving_grams":"14","serving":{"amount":"1","unit":"tbsp"},"declares":[
        {"component":"ENERC_KCAL","printed":"120"}]}})");
    kitchen.reading("oil", "41").reading("left", "12.5", "", "residue", "fine");
    kitchen.line(R"({"id":"oil","amount":"3","unit":"tbsp","food":"oil","weighed":["oil"]})");
    kitchen.line(R"({"id":"paste","amount":"2","unit":"tbsp","food":"paste"})");
    return kitchen.json("residues", R"([{"mixture":["oil","paste"],"called":"marinade",)"
                                    R"("readings":["left"]}])");
}

}  // namespace

TEST_CASE("a path goes from the portion down to what the scale showed", "[publish][path]") {
    CHECK(textFor(marinated(), ENERC_KCAL, Basis::Portion) ==
          R"(Where 99 kcal comes from
energy per portion of 2 pieces of Test dish, this batch; ± is 95 %

99 kcal ± 2 = 49.3 kcal × 2 pieces  per portion of 2 pieces, rounded once, here
    49.3 kcal = 493.3 kcal / 10 pieces  a piece, the batch divided
        493.3 kcal ± 11.8 = sum of the 2 steps below  in the batch, all lines together
            296.8 kcal ± 6.7 = 33.57 g × 884 kcal / 100 g  oil
                33.57 g ± 0.8 = sum of the 2 steps below  eaten: as used, less what was left over
                    41 g ± 0.8 = 41 g − 0 g  weighed on “scale”, readability 1 g
                      (or 40.5 g by table, −1.2 %)
                    −7.43 g ± 0.1 = −41 g × 12.5 g / 69 g  its share of the 12.5 g of marinade that stayed; it is 59 % of the mixture
                        12.5 g ± 0.1 = 12.5 g − 0.0 g  marinade: weighed on “fine scale”, readability 0.1 g
                884 kcal per 100 g  oil: usda-sr 28 04053, edible portion
                  (its spread follows from its parts (closure))
            196.5 kcal ± 9.3 = 22.93 g / 14 g × 120 kcal  paste
                22.93 g ± 1.0 = sum of the 2 steps below  eaten: as used, less what was left over
                    28.0 g ± 1.1 = 2 × 14 g  2 tbsp × 14 g (label: 1 tbsp = 14 g)
                    −5.07 g ± 0.1 = −28 g × 12.5 g / 69 g  its share of the 12.5 g of marinade that stayed; it is 41 % of the mixture
                        12.5 g ± 0.1 = 12.5 g − 0.0 g  marinade: weighed on “fine scale”, readability 0.1 g
                120 kcal per 14 g ± 5.7  paste: its label, in 1 tbsp (14 g)
                  (“120” stands for 115 to 125 kcal)
)");
}

TEST_CASE("a series is its count times the mean of its readings", "[publish][path]") {
    Kitchen kitchen;
    kitchen.reading("a", "9.7", "", "edible portion", "fine");
    kitchen.reading("b", "10.0", "", "edible portion", "fine");
    kitchen.reading("c", "9.8", "", "edible portion", "fine");
    kitchen.append("series", R"({"id":"s","name":"my bulbs","kind":"per piece","of":"bulb",
        "readings":["a","b","c"]})");
    kitchen.line(R"({"id":"f","amount":"36","piece":"bulb","food":"fennel",
        "series":{"id":"s","use":"others"}})");
    const std::string text = textFor(kitchen, ENERC_KCAL, Basis::Batch);
    CHECK(hasRow(text, "110 kcal ± 4 = 109.7 kcal  per batch of 10 pieces, rounded once, here"));
    CHECK(hasRow(text, "109.7 kcal ± 3.9 = the step below  in the batch, all lines together"));
    CHECK(hasRow(text, "109.7 kcal ± 3.9 = 354.0 g × 31 kcal / 100 g  fennel"));
    CHECK(hasRow(text,
                 "354.0 g ± 12.7 = 36 × 9.833 g  36 bulbs × 9.83 g (my bulbs: 3 readings of "
                 "3, s = 0.153 g)"));
    CHECK(text.find("(variance 36² s² / 3 + 36 s²; or 8424.0 g by table") != std::string::npos);
    CHECK(hasRow(text,
                 "9.833 g = (9.7 g + 10 g + 9.8 g) / 3  my bulbs: 3 readings of 3, s = "
                 "0.153 g"));
}

TEST_CASE("a series that is pooled with an earlier one says so", "[publish][path]") {
    Kitchen kitchen;
    kitchen.reading("a", "9.7", "", "edible portion", "fine");
    kitchen.reading("b", "10.0", "", "edible portion", "fine");
    kitchen.append("series", R"({"id":"s","name":"my bulbs","kind":"per piece","of":"bulb",
        "pooled_with":{"name":"bulbs, 2025","s":"0.3","nu":"5"},"readings":["a","b"]})");
    kitchen.line(R"({"id":"f","amount":"36","piece":"bulb","food":"fennel",
        "series":{"id":"s","use":"others"}})");
    // By hand: (5 x 0.09 + 1 x 0.045)/6 = 0.0825.
    CHECK(hasRow(textFor(kitchen, ENERC_KCAL, Basis::Batch),
                 "9.850 g = (9.7 g + 10 g) / 2  my bulbs: 2 readings of 2, s = 0.287 g pooled with "
                 "that of bulbs, 2025"));
}

TEST_CASE("what has no data shows between which ends the figure lies", "[publish][path]") {
    Kitchen kitchen;
    kitchen.line(R"({"id":"o","amount":"50","unit":"g","food":"oil"})");
    kitchen.line(R"({"id":"f","amount":"50","unit":"g","food":"fennel"})");
    const std::string text = textFor(kitchen, FATRN, Basis::Piece);
    CHECK(
        text.starts_with("Where at least 0.0 g comes from\ntrans fat per piece of Test dish, "
                         "this batch; ± is 95 %\n\n"
                         "at least 0.0 g  at most 0.2 g, known for 50 % of the weight\n"));
    CHECK(hasRow(text,
                 "0.0 g = 0.00 g / 10 pieces, rounded down  at least: what has no data at "
                 "its least"));
    CHECK(hasRow(text,
                 "0.2 g = 1.35 g / 10 pieces, rounded up  at most: what has no data at its "
                 "most"));
    CHECK(hasRow(text, "1.35 g = 50 g × 2.708 g / 100 g  oil"));
    CHECK(hasRow(text, "2.708 g per 100 g  oil: no data; between 0 and 2.71 g by its other parts"));
    CHECK(hasRow(text, "0 g per 100 g  fennel: zero by its kind"));
}

TEST_CASE("a kept recipe is its share of its own batch, with its revision", "[publish][path]") {
    Kitchen sauce;
    sauce.json("title", R"("Sauce")");
    sauce.json("makes", R"({"pieces":"3","piece":"spoon","plural":"spoons"})");
    sauce.line(R"({"id":"o","amount":"60","unit":"g","food":"oil"})");
    sauce.reading("done", "55", "", "cooked").json("cooked", R"({"readings":["done"]})");
    Kitchen kitchen;
    kitchen.append("foods", R"({"id":"sauce","name":"sauce","recipe":"sauce#3"})");
    kitchen.line(R"({"id":"s","amount":"1","piece":"spoon","food":"sauce"})");
    kitchen.line(R"({"id":"f","amount":"100","unit":"g","food":"fennel"})");
    kitchen.kept("sauce#3", sauce);
    const std::string text = textFor(kitchen, WATER, Basis::Hundred);
    CHECK(hasRow(text,
                 "74.8 g ± 0.2 = 88.54 g × 100 g / 118.3 g  per 100 g before cooking, "
                 "rounded once, here"));
    CHECK(hasRow(text, "−1.67 g = 18.33 g × −5.00 g / 55 g  sauce"));
    CHECK(hasRow(text, "18.33 g ± 0.3 = 55 g × 1 / 3  1 spoon of Sauce"));
    CHECK(hasRow(text, "−5.00 g = sum of the 2 steps below  Sauce, revision 3: its batch"));
    CHECK(hasRow(text,
                 "−5.00 g = 55 g − 60.0 g  what the dish lost or gained in cooking is "
                 "water"));
}

TEST_CASE("an optional line between none and all counts half", "[publish][path]") {
    Kitchen kitchen;
    kitchen.line(R"({"id":"o","amount":"1/3","unit":"cup","food":"oil","optional":true})");
    kitchen.line(R"({"id":"f","amount":"1","piece":"bulb","food":"fennel"})");
    kitchen.line(R"({"id":"g","amount":"0.5","unit":"kg","food":"fennel","as_purchased":true})");
    kitchen.line(R"({"id":"u","to_taste":true,"food":"sugar"})");
    kitchen.json("makes", R"({"pieces":"4-6","piece":"cake","plural":"cakes"})");
    kitchen.json("counting", R"({"to_taste":"left out","optional":"between"})");
    const std::string text = textFor(kitchen, FAT, Basis::Piece);
    CHECK(hasRow(text,
                 "7.4 g ± 8.4 = 37.19 g / 5 cakes  per cake, rounded once, here; divided by "
                 "4-6 cakes, counted as 5"));
    CHECK(hasRow(text,
                 "37.19 g ± 41.04 = sum of the 3 steps below  in the batch, all lines "
                 "together; without: sugar (to taste)"));
    CHECK(hasRow(text, "36.0 g ± 41.0 = 72.0 g / 2  optional: between none and all, half"));
    CHECK(text.find("72.0 g ± 11.6 = 1 / 3 × 216 g  1/3 cup") != std::string::npos);
    CHECK(text.find("360.0 g ± 40.8 = 500.0 g × (100 − 28) / 100  0.5 kg as written") !=
          std::string::npos);
    CHECK(hasRow(text, "500.0 g = 0.5 kg × 1000 g"));
}

TEST_CASE("the mean of the recipe takes the mean of its test cooks", "[publish][path]") {
    Kitchen kitchen;
    kitchen.reading("a", "90", "", "cooked").reading("b", "95", "", "cooked");
    kitchen.line(R"({"id":"o","amount":"100","unit":"g","food":"oil"})");
    kitchen.json("cooked", R"({"readings":["a"],"other_cooks":[{"readings":["b"]}]})");
    const std::string text = textFor(kitchen, FAT, Basis::Hundred, Meaning::RecipeMean);
    CHECK(text.find("\nfat per 100 g of Test dish, recipe mean; ± is 95 %\n") != std::string::npos);
    CHECK(
        hasRow(text, "108.1 g ± 35.4 = 100.00 g × 100 g / 92.5 g  per 100 g, rounded once, here"));
    CHECK(hasRow(text,
                 "92.5 g = (90 g + 95 g) / 2  mean of 2 test cooks, cooked and less what is "
                 "not eaten"));
}

TEST_CASE("a sum that its rounded parts miss gets one decimal more", "[publish][path]") {
    Kitchen kitchen;
    for (const char* id : {"a", "b", "c"})
        kitchen.line(R"({"id":")" + std::string{id} +
                     R"(","amount":"7.5","unit":"g","food":"fennel"})");
    const std::string text = textFor(kitchen, FAT, Basis::Batch);
    // 0.045 is no 0.05, and three times 0.02 are no 0.045.
    CHECK(hasRow(text, "0.0 g ± 0.1 = 0.045 g  per batch of 10 pieces, rounded once, here"));
    CHECK(hasRow(text,
                 "0.045 g ± 0.01 = sum of the 3 steps below  in the batch, all lines "
                 "together"));
    CHECK(hasRow(text, "0.015 g ± 0.01 = 7.5 g × 0.2 g / 100 g  fennel"));
}

TEST_CASE("steps of the main recipe's lines say of which, and by what way", "[publish][path]") {
    const PathStep path = pathFor(marinated(), ENERC_KCAL, Basis::Batch);
    CHECK(path.kind == PathKind::Figure);
    CHECK_FALSE(path.line);
    const PathStep& batch = path.below.front();
    CHECK(batch.kind == PathKind::Batch);
    const PathStep& paste = batch.below[1];
    CHECK(paste.kind == PathKind::Line);
    CHECK(paste.line == 1);
    CHECK(paste.way == Way::Label);
    CHECK(paste.below.front().kind == PathKind::Grams);
    CHECK(paste.below.back().kind == PathKind::Value);
    CHECK(batch.below[0].way == Way::Weighed);
    CHECK(batch.below[0].below[0].below[0].kind == PathKind::Reading);
}

TEST_CASE("a path for other programs has its steps as objects", "[publish][path]") {
    const Json json = pathJson(pathFor(marinated(), ENERC_KCAL, Basis::Portion));
    CHECK(*json.find("kind")->text() == "figure");
    CHECK(*json.find("value")->text() == "99");
    CHECK(*json.find("unit")->text() == "kcal");
    CHECK(*json.find("plus_minus")->text() == "2");
    CHECK(*json.find("formula")->text() == "49.3 kcal × 2 pieces");
    CHECK(*json.find("more")->text() == "energy per portion of 2 pieces of Test dish, this batch");
    const Json& batch = (*(*json.find("below")->items())[0].find("below")->items())[0];
    CHECK(*batch.find("kind")->text() == "batch");
    CHECK(batch.find("way") == nullptr);
    const Json& oil = (*batch.find("below")->items())[0];
    CHECK(*oil.find("kind")->text() == "line");
    CHECK(*oil.find("way")->text() == "weighed");
    CHECK(*oil.find("words")->text() == "oil");
}
