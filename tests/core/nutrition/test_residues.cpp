#include "core/nutrition/residues.h"

#include <fmt/core.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "kitchen.h"

using namespace nettare;
using enum nettare::Component;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

Kitchen& indication(Kitchen& kitchen, const std::string& id, const std::string& shown) {
    return kitchen.append(
        "indications",
        fmt::format(R"({{"id":"{}","scale":"scale","shown":"{}","state":"edible portion"}})", id,
                    shown));
}

/// A reading between two indications, each of which others may use as well.
Kitchen& between(Kitchen& kitchen, const std::string& id, const std::string& gross,
                 const std::string& tare) {
    return kitchen.append("readings", R"({"id":")" + id + R"(","gross":")" + gross +
                                          R"(","tare":")" + tare + R"("})");
}

/// A food with stated values, each exact: {"NA":"100"}.
Kitchen& stated(Kitchen& kitchen, const std::string& id,
                const std::vector<std::pair<std::string, std::string>>& values) {
    std::string all;
    for (const auto& [tagname, value] : values)
        all += fmt::format(
            R"({}{{"component":"{}","per_100g":"{}","within":"0","reason":"invented"}})",
            all.empty() ? "" : ",", tagname, value);
    return kitchen.append("foods",
                          fmt::format(R"({{"id":"{0}","name":"{0}","stated":[{1}]}})", id, all));
}

/// A line weighed at that net; line, food and reading have one id.
Kitchen& weighedLine(Kitchen& kitchen, const std::string& id, const std::string& net) {
    kitchen.reading(id, net);
    return kitchen.line(R"({"id":")" + id + R"(","amount":"1","piece":"lot","food":")" + id +
                        R"(","weighed":[")" + id + R"("]})");
}

Kitchen& left(Kitchen& kitchen, const std::string& id, const std::string& net,
              const std::string& what) {
    kitchen.reading(id, net, "", "residue");
    return kitchen.append("residues", "{" + what + R"(,"readings":[")" + id + R"("]})");
}

Error errorOf(const Kitchen& kitchen) {
    const auto cooked = cook(Served::orThrow(kitchen.dossier()));
    REQUIRE_FALSE(cooked);
    return cooked.error();
}

double sensitivityTo(const Served& served, const LinearForm& form, const std::string& indication) {
    for (const LinearForm::Term& term : form.terms())
        if (nameOf(term.source, served.dossier) == "rounding of " + indication)
            return term.sensitivity;
    return 0;
}

/// One bowl on a scale of 1 g, four additions one after the other, and the bowl again when the
/// marinade was used. Invented readings.
Kitchen marinade() {
    Kitchen kitchen;
    stated(kitchen, "lemon", {{"WATER", "92"}});
    stated(kitchen, "garlic", {{"WATER", "59"}});
    stated(kitchen, "salt", {{"NA", "38758"}});
    const std::vector<std::pair<std::string, std::string>> additions{
        {"oil", "253"}, {"lemon", "283"}, {"garlic", "295"}, {"salt", "301"}};
    std::string before = "bowl";
    indication(kitchen, before, "212");
    for (const auto& [id, shown] : additions) {
        indication(kitchen, "with-" + id, shown);
        between(kitchen, id, "with-" + id, before);
        kitchen.line(fmt::format(
            R"({{"id":"{0}","amount":"1","piece":"lot","food":"{0}","weighed":["{0}"]}})", id));
        before = "with-" + id;
    }
    indication(kitchen, "bowl-after", "224");
    between(kitchen, "left", "bowl-after", "bowl");
    return kitchen.json("residues",
                        R"([{"mixture":["oil","lemon","garlic","salt"],"readings":["left"]}])");
}

}  // namespace

// The scale showed
//     B = 212 (bowl), I1 = 253 (+ oil), I2 = 283 (+ lemon), I3 = 295 (+ garlic), I4 = 301 (+ salt),
//     R = 224 (the bowl after use),
// each rounded to 1 g: u = 1/sqrt(12) g, and no other uncertainty.
//
// Nets: oil n1 = I1 - B = 41, lemon n2 = I2 - I1 = 30, garlic n3 = 12, salt n4 = 6; together
// N = I4 - B = 89: the indications between cancel. u(N) = sqrt(2/12) = 0.408 g, that of two
// indications; four independent nets would have sqrt(8/12) = 0.816 g.
// Left over L = R - B = 12. Each line loses the share L/N = 12/89 = 0.1348 of itself, so 77/89 of
// each are eaten: oil 35.472, lemon 25.955, garlic 10.382, salt 5.191 g; together 77 = I4 - R,
// where the bowl cancels as well: u = sqrt(2/12) again.
//
// Oil eaten: E = n1 (1 - L/N). Its sensitivities:
//     to I1:  1 - L/N                              =  77/89        =  0.865169
//     to I4:  n1 L/N^2                             =  41 x 12/7921 =  0.062113
//     to R:   -n1/N                                = -41/89        = -0.460674
//     to B:   -(1 - L/N) + n1 (N - L)/N^2          = -0.865169 + 41 x 77/7921 = -0.466608
// u(E)^2 = (0.865169^2 + 0.062113^2 + 0.460674^2 + 0.466608^2)/12 = 1.182319/12, u = 0.31389 g.
TEST_CASE("a marinade weighed step by step into one bowl", "[nutrition]") {
    const Served served{marinade()};
    LinearForm used;
    for (const LineReport& line : served.cooked.lines) used.add(line.asUsed);
    CHECK(used.value() == Approx(89).epsilon(1e-14));
    CHECK(used.uncertainty() == Approx(std::sqrt(2.0 / 12)));
    const double nets[] = {41, 30, 12, 6};
    for (std::size_t i = 0; i < 4; ++i)
        CHECK(served.cooked.lines[i].eaten.value() == Approx(nets[i] * 77 / 89));
    CHECK(served.cooked.eaten.used.value() == Approx(77));
    CHECK(served.cooked.eaten.used.uncertainty() == Approx(std::sqrt(2.0 / 12)));
    const LinearForm& oil = served.cooked.lines[0].eaten;
    CHECK(sensitivityTo(served, oil, "with-oil") == Approx(77.0 / 89));
    CHECK(sensitivityTo(served, oil, "with-salt") == Approx(41 * 12 / 7921.0));
    CHECK(sensitivityTo(served, oil, "bowl-after") == Approx(-41.0 / 89));
    CHECK(sensitivityTo(served, oil, "bowl") == Approx(-77.0 / 89 + 41 * 77 / 7921.0));
    CHECK(oil.uncertainty() == Approx(0.31389).epsilon(1e-5));
    // Salt: 6 x 77/89 g of 387.58 mg sodium; oil has 2 mg in 100 g.
    CHECK(served.figure(Basis::Batch, NA).value ==
          Approx((6 * 387.58 + 41 * 0.02) * 77 / 89).epsilon(1e-12));
}

// The pan with oil before and after frying: 1700 - 1662 = 38 g went into the food, and the pan's
// own 1200 g cancels: u = sqrt(2/12).
TEST_CASE("frying oil taken up is the oil before less the oil after", "[nutrition]") {
    Kitchen kitchen;
    indication(kitchen, "pan", "1200");
    indication(kitchen, "pan-with-oil", "1700");
    indication(kitchen, "pan-after", "1662");
    between(kitchen, "before", "pan-with-oil", "pan");
    between(kitchen, "after", "pan-after", "pan");
    kitchen.line(R"({"id":"f","amount":"200","unit":"g","food":"fennel"})");
    kitchen.line(R"({"id":"oil","amount":"1/2","unit":"l","food":"oil","weighed":["before"]})");
    kitchen.json("residues", R"([{"line":"oil","called":"frying oil","readings":["after"]}])");
    const Served served{kitchen};
    CHECK(served.cooked.lines[1].eaten.value() == Approx(38));
    CHECK(served.cooked.lines[1].eaten.uncertainty() == Approx(std::sqrt(2.0 / 12)));
    CHECK(served.figure(Basis::Batch, FAT).value == Approx(38 + 200 * 0.002));
}

// 500 g of water and 40 g of salt are brine; 486 g of it stay in the pot, so a tenth of both is
// taken up: 4 g of salt hold 4 x 387.58 mg of sodium.
TEST_CASE("brine is a mixture that is weighed before and after", "[nutrition]") {
    Kitchen kitchen;
    stated(kitchen, "water", {{"WATER", "100"}, {"NA", "0"}});
    stated(kitchen, "salt", {{"NA", "38758"}, {"WATER", "0"}});
    weighedLine(kitchen, "water", "500");
    weighedLine(kitchen, "salt", "40");
    left(kitchen, "pot", "486", R"("mixture":["water","salt"],"called":"brine")");
    const Served served{kitchen};
    CHECK(served.cooked.lines[0].eaten.value() == Approx(50));
    CHECK(served.figure(Basis::Batch, NA).value == Approx(4 * 387.58));
    CHECK(served.figure(Basis::Batch, WATER).value == Approx(50));
}

// 2/3 of 60 g of oil are mixed with 20 g of sugar: 60 g. 12 g stay, a fifth: 8 g of oil and 4 g of
// sugar; the last third of the oil loses nothing.
TEST_CASE("of a divided line only the share that was mixed is left over", "[nutrition]") {
    Kitchen kitchen;
    weighedLine(kitchen, "oil", "60");
    weighedLine(kitchen, "sugar", "20");
    left(kitchen, "bowl", "12",
         R"("mixture":["oil","sugar"],"shares":[{"line":"oil","share":"2/3"}])");
    const Served served{kitchen};
    CHECK(served.cooked.lines[0].eaten.value() == Approx(52));
    CHECK(served.cooked.lines[1].eaten.value() == Approx(16));
    Kitchen much = kitchen;
    left(much, "bottle", "53", R"("line":"oil")");
    const Error error = errorOf(much);
    CHECK(error.code == ErrorCode::ResidueTooLarge);
    CHECK(error.pointer == "/residues/1");
    CHECK(error.value("there") == "52.0");
}

// Bowl: 8 of 80 g are a tenth, 54 g of oil and 18 g of sugar go on. Pan: 20 of 54 + 18 + 128 g are
// a tenth of what came in.
TEST_CASE("a residue is of what the residues before it have left", "[nutrition]") {
    Kitchen kitchen;
    weighedLine(kitchen, "oil", "60");
    weighedLine(kitchen, "sugar", "20");
    weighedLine(kitchen, "fennel", "128");
    left(kitchen, "bowl", "8", R"("mixture":["oil","sugar"])");
    left(kitchen, "pan", "20", R"("mixture":["oil","sugar","fennel"])");
    const Served served{kitchen};
    CHECK(served.cooked.lines[0].eaten.value() == Approx(48.6));
    CHECK(served.cooked.lines[1].eaten.value() == Approx(16.2));
    CHECK(served.cooked.lines[2].eaten.value() == Approx(115.2));
}

TEST_CASE("a line that is left over as a whole leaves exactly nothing", "[nutrition]") {
    Kitchen kitchen;
    weighedLine(kitchen, "oil", "41");
    weighedLine(kitchen, "fennel", "382");
    left(kitchen, "bowl", "10", R"("line":"oil")");
    left(kitchen, "again", "31", R"("line":"oil")");
    const Served served{kitchen};
    CHECK(served.cooked.lines[0].eaten.value() == 0);
    CHECK(served.figure(Basis::Batch, FAT).value == Approx(0.764));
}

TEST_CASE("cooking water carries nothing but water", "[nutrition]") {
    Kitchen kitchen;
    stated(kitchen, "water", {{"WATER", "100"}});
    weighedLine(kitchen, "fennel", "200");
    weighedLine(kitchen, "water", "1000");
    Kitchen poured = kitchen;
    left(poured, "sink", "900", R"("water":true)");
    const Served before{kitchen};
    const Served after{poured};
    CHECK(after.figure(Basis::Batch, WATER).value == Approx(200 * 0.9021 + 1000 - 900));
    // The empty scale, which all three weighings share, cancels between the water's two.
    CHECK(after.figure(Basis::Batch, WATER).u == Approx(std::sqrt((2 * 0.9021 * 0.9021 + 2) / 12)));
    for (const Component component : {ENERC_KCAL, PROCNT, NA, CHOCDF})
        CHECK(after.figure(Basis::Batch, component).value ==
              before.figure(Basis::Batch, component).value);
    CHECK(after.cooked.eaten.used.value() == Approx(300));
    CHECK(after.figure(Basis::Hundred, ENERC_KCAL).value == Approx(62.0 / 3));
    Kitchen much = kitchen;
    left(much, "sink", "1190", R"("water":true)");
    const Error error = errorOf(much);
    CHECK(error.code == ErrorCode::ResidueTooLarge);
    CHECK(error.pointer == "/residues/0");
    CHECK(error.value("left") == "1190.0");
    CHECK(error.value("there") == "1180.4");
}

TEST_CASE("more fat cannot run off than the lines hold", "[nutrition]") {
    Kitchen kitchen;
    weighedLine(kitchen, "fennel", "382");
    weighedLine(kitchen, "oil", "5");
    left(kitchen, "dish", "12", R"("drip":"oil")");
    const Error error = errorOf(kitchen);
    CHECK(error.code == ErrorCode::DripTooLarge);
    CHECK(error.pointer == "/residues/0");
    CHECK(error.value("component") == factsOf(FAT).name);
    CHECK(error.value("left") == "12.0");
    CHECK(error.value("there") == "5.8");
}

// 500 g of meat hold 0.5 µg of vitamin D, 50 g of lard by its row 2.5 µg: what ran off was less
// rich than that row, by how much nobody knows.
TEST_CASE("a trace that the drip's food has more of is open, never below zero", "[nutrition]") {
    Kitchen kitchen;
    stated(kitchen, "meat", {{"FAT", "30"}, {"VITD", "0.1"}});
    stated(kitchen, "lard", {{"FAT", "100"}, {"VITD", "5"}});
    weighedLine(kitchen, "meat", "500");
    left(kitchen, "dish", "50", R"("drip":"lard")");
    const Served served{kitchen};
    CHECK(served.figure(Basis::Batch, FAT).value == Approx(100));
    CHECK(served.figure(Basis::Batch, FAT).complete());
    const Figure vitamin = served.figure(Basis::Batch, VITD);
    CHECK(vitamin.value == Approx(0.5));
    CHECK(vitamin.atLeast == 0);
    CHECK(*vitamin.atMost == Approx(0.5));
    // Of the meat's weight alone: 0.1 µg in 100 g, two indications of 1 g.
    CHECK(vitamin.u == Approx(0.001 * std::sqrt(2.0 / 12)));
    REQUIRE(vitamin.missingFoods.size() == 1);
    CHECK(served.dossier.foods[vitamin.missingFoods[0]].name == "lard");
}

// Saturated fat: 5 g in 100 g of the first; of the second, with 10 g of fat, at most 10 g. 20 g
// left over hold 0 to 2 g of it, so that 5 to 15 g become 3 to 15 g.
TEST_CASE("a missing value widens what an unknown residue may hold", "[nutrition]") {
    Kitchen kitchen;
    stated(kitchen, "first", {{"FASAT", "5"}, {"FAT", "8"}});
    stated(kitchen, "second", {{"FAT", "10"}});
    weighedLine(kitchen, "first", "100");
    weighedLine(kitchen, "second", "100");
    left(kitchen, "plate", "20", R"("unknown":true)");
    const Figure saturated = Served{kitchen}.figure(Basis::Batch, FASAT);
    CHECK(saturated.value == Approx(4));
    CHECK(saturated.atLeast == Approx(3));
    CHECK(*saturated.atMost == Approx(15));
    // Sodium is known of neither.
    const Figure sodium = Served{kitchen}.figure(Basis::Batch, NA);
    CHECK(sodium.atLeast == 0);
    CHECK_FALSE(sodium.atMost);
}

// 12 g of pure salt would be more than there is: 0.52 x 382 + 5 x 387.58 = 2136.54 mg of sodium.
// The residue holds 6.24 mg (all fennel) to 2136.54 mg: half of both.
TEST_CASE("an unknown residue takes no more than there is", "[nutrition]") {
    Kitchen kitchen;
    stated(kitchen, "salt", {{"NA", "38758"}});
    weighedLine(kitchen, "fennel", "382");
    weighedLine(kitchen, "salt", "5");
    left(kitchen, "plate", "12", R"("unknown":true)");
    const Figure sodium = Served{kitchen}.figure(Basis::Batch, NA);
    CHECK(sodium.value == Approx(2136.54 - (6.24 + 2136.54) / 2));
    CHECK(sodium.u >= (2136.54 - 6.24) / std::sqrt(12.0));
}

TEST_CASE("an unknown residue goes by its name in the budget", "[nutrition]") {
    Kitchen kitchen;
    weighedLine(kitchen, "fennel", "382");
    weighedLine(kitchen, "oil", "41");
    left(kitchen, "plate", "12", R"("unknown":true,"called":"scraps")");
    const Served served{kitchen};
    CHECK(nameOf(ownSource({SourceKind::ResidueMakeup, 0, 0}, 1), served.dossier) ==
          "scraps: its make-up");
}

// 100 g of fennel hold 90.21 g of water; of the paste nobody knows. 95 g less may be paste's too.
TEST_CASE("what the known parts cannot have lost was in the others", "[nutrition]") {
    Kitchen kitchen;
    stated(kitchen, "paste", {{"FAT", "10"}});
    weighedLine(kitchen, "fennel", "100");
    weighedLine(kitchen, "paste", "100");
    kitchen.reading("dish", "105", "", "cooked").json("cooked", R"({"readings":["dish"]})");
    const Figure water = Served{kitchen}.figure(Basis::Batch, WATER);
    CHECK(water.value == 0);
    CHECK(water.atLeast == 0);
    CHECK(*water.atMost == Approx(90.21 + 90 - 95));
}

// Fennel alone: 200 g become 150 g of sauce. 75 g of it are 100 g of fennel less 25 g of water.
TEST_CASE("a kept recipe's own cooking loss is water", "[nutrition]") {
    Kitchen sauce;
    weighedLine(sauce, "fennel", "200");
    sauce.reading("pot", "150", "", "cooked").json("cooked", R"({"readings":["pot"]})");
    Kitchen dish;
    dish.append("foods", R"({"id":"sauce","name":"sauce","recipe":"sauce"})").kept("sauce", sauce);
    Kitchen some = dish;
    some.line(R"({"id":"s","amount":"75","unit":"g","food":"sauce"})");
    const Served served{some};
    CHECK(served.figure(Basis::Batch, WATER).value == Approx(90.21 - 25));
    CHECK(served.figure(Basis::Batch, ENERC_KCAL).value == Approx(31));
    CHECK(served.cooked.eaten.used.value() == Approx(75));
    CHECK(served.figure(Basis::Hundred, ENERC_KCAL).value == Approx(31 / 0.75));
    Kitchen fried = some;
    fried.reading("fried", "70", "", "cooked").json("cooked", R"({"readings":["fried"]})");
    CHECK(Served{fried}.figure(Basis::Batch, WATER).value == Approx(90.21 - 25 - 5));
    Kitchen whole = dish;
    whole.line(R"({"id":"s","amount":"1","piece":"batch","food":"sauce"})");
    const Figure used = Served{whole}.figure(Basis::Batch, WATER);
    const Figure own = Served{sauce}.figure(Basis::Batch, WATER);
    CHECK(used.value == Approx(own.value));
    CHECK(used.u == Approx(own.u));
}

// Half of a sauce of 300 g of fennel and 600 g of water, of which 500 g were poured off and 10 g of
// bay leaves came out: 195 g with 100 g of water less.
TEST_CASE("a kept recipe's residues are its own, by the share that is used", "[nutrition]") {
    Kitchen sauce;
    stated(sauce, "water", {{"WATER", "100"}});
    weighedLine(sauce, "fennel", "300");
    weighedLine(sauce, "water", "600");
    left(sauce, "sink", "500", R"("water":true)");
    left(sauce, "leaves", "10", R"("not_eaten":true)");
    Kitchen dish;
    dish.append("foods", R"({"id":"sauce","name":"sauce","recipe":"sauce"})").kept("sauce", sauce);
    dish.line(R"({"id":"s","amount":"1/2","piece":"batch","food":"sauce"})");
    const Served served{dish};
    CHECK(served.cooked.lines[0].eaten.value() == Approx(195));
    CHECK(served.cooked.eaten.used.value() == Approx(195));
    CHECK(served.figure(Basis::Batch, WATER).value == Approx((300 * 0.9021 + 600 - 500) / 2));
    CHECK(served.figure(Basis::Batch, ENERC_KCAL).value == Approx(300 * 0.31 / 2));
}

// 50 + 350 + 600 g go in. Out go 40 g of the mixture, 10 g of dripped oil, 300 g of water and 5 g
// that carry nothing: 645 g before cooking. The cooked dish of 600 g holds sticks of 20 g.
TEST_CASE("per 100 g is what is eaten, in every combination", "[nutrition]") {
    const char* const residues[] = {R"("mixture":["oil","fennel"])", R"("drip":"oil")",
                                    R"("water":true)", R"("not_eaten":true)", R"("unknown":true)"};
    const char* const nets[] = {"40", "10", "300", "5", "20"};
    for (unsigned which = 0; which < 32; ++which)
        for (const int dish : {0, 1, 2}) {
            CAPTURE(which, dish);
            Kitchen kitchen;
            stated(kitchen, "water", {{"WATER", "100"}, {"ENERC_KCAL", "0"}});
            weighedLine(kitchen, "oil", "50");
            weighedLine(kitchen, "fennel", "350");
            weighedLine(kitchen, "water", "600");
            double eaten = 1000;
            for (unsigned i = 0; i < 5; ++i) {
                if ((which >> i & 1U) == 0) continue;
                left(kitchen, "left-" + std::to_string(i), nets[i], residues[i]);
                eaten -= std::stod(nets[i]);
            }
            kitchen.reading("dish", "600", "", "cooked").reading("sticks", "20", "", "residue");
            if (dish == 1) kitchen.json("cooked", R"({"readings":["dish"]})");
            if (dish == 2)
                kitchen.json("cooked", R"({"readings":["dish"],"not_eaten":["sticks"]})");
            if (dish != 0) eaten = dish == 1 ? 600 : 580;
            const Served served{kitchen};
            const auto figures = figuresPer(Basis::Hundred, served.dossier, served.cooked);
            CHECK(figures->beforeCooking == (dish == 0));
            const double batch = served.figure(Basis::Batch, ENERC_KCAL).value;
            CHECK((*figures)[ENERC_KCAL].value == Approx(100 * batch / eaten));
            CHECK(served.figure(Basis::Batch, WATER).value >= 0);
        }
}
