#include <catch2/catch.hpp>

#include "core/label/label_interval.h"
#include "core/label/label_values.h"

#include "label_examples.h"

namespace nettare {

namespace {

using enum Component;
using FindingKinds = std::vector<LabelFindingKind>;
using Lines = std::vector<LabelLine>;

/// The kinds of all findings, in their order.
FindingKinds kindsFound(const LabelFacts& label, const std::optional<LikeDensity>& like = {}) {
    FindingKinds kinds;
    for (const LabelFinding& finding : checkLabel(label, like)) kinds.push_back(finding.kind);
    return kinds;
}

/// What the first finding takes for the package's figure; empty where it knows none.
std::string insteadOf(const LabelFacts& label) {
    const auto findings = checkLabel(label);
    REQUIRE_FALSE(findings.empty());
    return findings.front().slip ? findings.front().slip->instead : "";
}

}  // namespace

TEST_CASE("an honest label of either rules has no finding", "[label]") {
    CHECK(kindsFound(usBiscuit()).empty());
    CHECK(kindsFound(euBiscuit()).empty());
    CHECK(kindsFound(LabelFacts{}).empty());
}

TEST_CASE("carbohydrate with a point too many makes less energy than the label says", "[label]") {
    const auto findings = checkLabel(withLine(euBiscuit(), LabelOnly::CHOAVL, "6.6"));
    REQUIRE(findings.size() == 2);
    CHECK(findings[0].kind == LabelFindingKind::Energy);
    CHECK(findings[0].lines == Lines{LabelOnly::CHOAVL, ENERC_KCAL, ENERC_KJ, FAT, FIBTG, PROCNT});
    REQUIRE(findings[0].slip);
    CHECK(findings[0].slip->line == LabelLine{LabelOnly::CHOAVL});
    CHECK(findings[0].slip->instead == "66");
    CHECK(findings[0].about ==
          "ENERC_KCAL 445, ENERC_KJ 1870, FAT 16, CHOAVL 6.6, FIBTG 3.5, PROCNT 7.5");
    // The sugars are then more than the carbohydrate as well.
    CHECK(findings[1].kind == LabelFindingKind::CarbohydrateParts);
    CHECK(findings[1].slip->instead == "66");
}

TEST_CASE("parts of the fat, the carbohydrate and the sugars are not more than these", "[label]") {
    CHECK(kindsFound(withLine(usBiscuit(), FASAT, "25")) ==
          FindingKinds{LabelFindingKind::FatParts});
    CHECK(kindsFound(withLine(usBiscuit(), SUGAR, "71")) ==
          FindingKinds{LabelFindingKind::CarbohydrateParts});
    CHECK(kindsFound(withLine(usBiscuit(), SUGAD, "8")).empty());
    CHECK(kindsFound(withLine(usBiscuit(), SUGAD, "9")) ==
          FindingKinds{LabelFindingKind::AddedSugars});
    // From 6.5 g of sugars and 14.5 g of fibre on they are more than 20.5 g of carbohydrate.
    const LabelFacts brans = withLine(usBiscuit(), FIBTG, "15");
    REQUIRE(kindsFound(brans) == FindingKinds{LabelFindingKind::CarbohydrateParts});
    CHECK(checkLabel(brans).front().lines.size() == 3);
    CHECK(kindsFound(withLine(euBiscuit(), LabelOnly::STARCH, "47")) ==
          FindingKinds{LabelFindingKind::CarbohydrateParts});
    CHECK(kindsFound(withLine(euBiscuit(), LabelOnly::STARCH, "44")).empty());
}

TEST_CASE("salt is sodium times 2.5, both as far as they were rounded", "[label]") {
    // Regulation (EU) 1169/2011, Annex I, 11: 0.80 g of salt has 318 to 322 mg of sodium.
    CHECK(kindsFound(withLine(euBiscuit(), NA, "320")).empty());
    const LabelFacts slipped = withLine(euBiscuit(), NA, "230");
    REQUIRE(kindsFound(slipped) == FindingKinds{LabelFindingKind::SaltDiffers});
    CHECK(insteadOf(slipped) == "320");
}

TEST_CASE("what a serving contains weighs no more than the serving", "[label]") {
    const LabelFacts small = withServing(usBiscuit(), "3", "1", "biscuit");
    REQUIRE(kindsFound(small) == FindingKinds{LabelFindingKind::TooHeavy});
    const LabelFinding finding = checkLabel(small).front();
    CHECK(finding.serving);
    CHECK(finding.slip->line == std::nullopt);
    CHECK(withSlip(small, *finding.slip).servingSize > Decimal{20, 0});
    CHECK(kindsFound(withLine(euBiscuit(), PROCNT, "17")).front() == LabelFindingKind::Energy);
    CHECK(kindsFound(withLine(euBiscuit(), PROCNT, "75")).back() == LabelFindingKind::TooHeavy);
}

TEST_CASE("a line that alone weighs more than all of it cannot be as printed", "[label]") {
    const LabelFacts heavy = withServing(usBiscuit(), "14", "1", "biscuit");
    const auto findings = checkLabel(heavy);
    REQUIRE(kindsFound(heavy) == FindingKinds{LabelFindingKind::TooHeavy});
    CHECK(findings.front().impossible);
    CHECK(withAssent(heavy, findings.front()).assents.empty());
    LabelFacts said = heavy;
    said.assents = {{findings.front().kind, findings.front().about}};
    CHECK_FALSE(checkLabel(said).front().assented);
    // Together they weigh too much, and none of them alone.
    const LabelFacts packed = withServing(usBiscuit(), "24", "1", "biscuit");
    REQUIRE(kindsFound(packed) == FindingKinds{LabelFindingKind::TooHeavy});
    CHECK_FALSE(checkLabel(packed).front().impossible);
    CHECK(labelValues(withAssent(packed, checkLabel(packed).front())));
}

TEST_CASE("every amount that no recipe could use is found first, whatever line it is", "[label]") {
    LabelFacts bare = withServing(usBiscuit(), "14", "1", "biscuit");
    for (const LabelLine& line :
         {LabelLine{FAT}, LabelLine{FASAT}, LabelLine{CHOCDF}, LabelLine{FIBTG}, LabelLine{SUGAR},
          LabelLine{SUGAD}, LabelLine{LabelOnly::POLYL}, LabelLine{PROCNT}}) {
        INFO(tagnameOf(line));
        bare.amounts = {{line, "16"}};
        REQUIRE(checkLabel(bare).size() == 1);
        CHECK(checkLabel(bare).front().impossible);
        CHECK_FALSE(labelValues(bare));
        bare.amounts = {{line, "15"}};
        CHECK(kindsFound(bare).empty());
        CHECK(labelValues(bare));
    }
    // Saturates beside fat and mono-unsaturates: the parts say it, once.
    const LabelFacts parts = withLine(withServing(usBiscuit(), "28", "1", "oz"), FASAT, "30");
    REQUIRE(kindsFound(parts) == FindingKinds{LabelFindingKind::FatParts});
    CHECK(checkLabel(parts).front().impossible);
}

TEST_CASE("what 100 ml hold goes by the most that a millilitre may weigh", "[label]") {
    LabelFacts oil;
    oil.rules = LabelRules::Eu;
    oil.per = LabelPer::HundredMillilitres;
    oil.density = LabelDensity{Decimal{91, -2}, Decimal{5, -3}};
    // 92 stands for 91.5 to 92.5 g, and 100 ml are at most 91.5 g.
    oil.amounts = {{FAT, "92"}};
    CHECK(kindsFound(oil).empty());
    const auto values = labelValues(oil);
    REQUIRE(values);
    CHECK(values->front().value == 91);
    CHECK(values->front().low == 91);
    CHECK(values->front().high == 91);
    CHECK(labelProfile(oil)[FAT] == 100.0);
    oil.amounts = {{FAT, "93"}};
    CHECK(kindsFound(oil) == FindingKinds{LabelFindingKind::TooHeavy});
    CHECK(labelValues(oil).error().code == ErrorCode::LabelAmountImpossible);
    // A serving of 14 g may be one of 14.5 g: 21 CFR 101.9(b)(7).
    LabelFacts spoon;
    spoon.servingSize = Decimal{14, 0};
    spoon.amounts = {{FAT, "15"}};
    CHECK(kindsFound(spoon).empty());
    CHECK(labelProfile(spoon)[FAT] == 100.0);
}

TEST_CASE("a spoon of known size weighs what like foods weigh", "[label]") {
    const LikeDensity oils{0.9, 0.95, "3 measures of oil"};
    const LabelFacts spoon = withServing(usBiscuit(), "30", "2", "Tablespoons");
    CHECK(kindsFound(spoon).empty());
    // Half of the least to twice the most: the product may be whipped.
    CHECK(kindsFound(spoon, oils).empty());
    CHECK(kindsFound(withServing(usBiscuit(), "56", "2", "tbsp"), oils).empty());
    const LabelFacts heavy = withServing(usBiscuit(), "59", "2", "tbsp");
    CHECK(kindsFound(heavy).empty());
    REQUIRE(kindsFound(heavy, oils) == FindingKinds{LabelFindingKind::UnlikeMeasure});
    CHECK(checkLabel(heavy, oils).front().like == "3 measures of oil");
    // 14 g stand for 13.5 to 14.5, and a spoon holds 14.8 to 15 mL: 0.9 to 0.98 g per mL.
    CHECK(kindsFound(withServing(usBiscuit(), "28", "2", "tbsp"), oils).empty());
    CHECK(kindsFound(withServing(usBiscuit(), "300", "2", "tbsp")) ==
          FindingKinds{LabelFindingKind::UnlikeMeasure});
    CHECK(kindsFound(withServing(usBiscuit(), "30", "2", "slice"), oils).empty());
}

TEST_CASE("a cup of a label is 236 to 250 millilitres, an ounce 28 to 28.35 grams", "[label]") {
    LabelFacts drink = withServing(usBiscuit(), "240", "1", "cup");
    drink.servingInMillilitres = true;
    drink.density = LabelDensity{Decimal{1, 0}, Decimal{0, 0}};
    CHECK(kindsFound(drink).empty());
    CHECK(kindsFound(withServing(drink, "355", "12", "fl oz")).empty());
    const LabelFacts slipped = withServing(drink, "24", "1", "cup");
    CHECK(kindsFound(slipped) ==
          FindingKinds{LabelFindingKind::TooHeavy, LabelFindingKind::UnlikeMeasure});
    CHECK(kindsFound(withServing(usBiscuit(), "28", "1", "oz")).empty());
    CHECK(kindsFound(withServing(usBiscuit(), "82", "1", "oz")) ==
          FindingKinds{LabelFindingKind::UnlikeMeasure});
}

TEST_CASE("an amount that no rounding prints is found, with what it likely was", "[label]") {
    const LabelFacts label = withLine(usBiscuit(), ENERC_KCAL, "142");
    REQUIRE(kindsFound(label) == FindingKinds{LabelFindingKind::NotLawful});
    CHECK(insteadOf(label) == "140");
    CHECK(checkLabel(label).front().about == notLawfulAbout(label.amounts.front()));
    CHECK(insteadOf(withLine(usBiscuit(), CHOLE, "7")) == "5");
    CHECK(insteadOf(withLine(usBiscuit(), FAT, "5.8")) == "6");
    // The guidance of the EU is no law.
    CHECK(kindsFound(withLine(euBiscuit(), FASAT, "7.12")).empty());
}

TEST_CASE("kilojoules and kilocalories have each their own factors", "[label]") {
    CHECK(kindsFound(withLine(euBiscuit(), ENERC_KJ, "1970")) ==
          FindingKinds{LabelFindingKind::Energy, LabelFindingKind::KilojoulesDiffer});
    CHECK(insteadOf(withLine(euBiscuit(), ENERC_KJ, "1970")) == "1870");
    // Without a fibre line 25 g of fibre would make up for the kilocalories of 50 g instead of 66 g
    // of carbohydrate, but not for the kilojoules at the same time.
    const LabelFacts unsaid = withLine(withoutLine(euBiscuit(), FIBTG), LabelOnly::CHOAVL, "46");
    CHECK_FALSE(kindsFound(unsaid).empty());
    CHECK(kindsFound(withoutLine(euBiscuit(), FIBTG)).empty());
}

TEST_CASE("a label that is typed from top to bottom has no finding before it is whole", "[label]") {
    // Bran: 11 g of carbohydrate with 9 g of fibre, which follows it.
    const LabelFacts bran = withLine(
        withLine(withLine(withLine(usBiscuit(), ENERC_KCAL, "25"), FAT, "0.5"), CHOCDF, "11"),
        FIBTG, "9");
    for (const LabelFacts& whole :
         {usBiscuit(), euBiscuit(),
          withLine(withLine(withLine(bran, FASAT, "0"), SUGAR, "1"), SUGAD, "0")}) {
        LabelFacts typed = whole;
        typed.amounts.clear();
        for (const LabelAmount& amount : whole.amounts) {
            typed.amounts.push_back(amount);
            CAPTURE(tagnameOf(amount.line));
            CHECK(kindsFound(typed).empty());
        }
    }
}

TEST_CASE("as printed is remembered until one of the amounts changes", "[label]") {
    const LabelFacts label = withLine(usBiscuit(), CHOCDF, "70");
    const auto findings = checkLabel(label);
    REQUIRE(findings.size() == 2);
    CHECK_FALSE(findings[0].assented);
    const LabelFacts said = withAssent(label, findings[0]);
    CHECK(checkLabel(said)[0].assented);
    CHECK_FALSE(checkLabel(said)[1].assented);
    CHECK(withAssent(said, findings[0]).assents.size() == 1);
    CHECK_FALSE(checkLabel(withLine(said, CHOCDF, "80"))[0].assented);
    CHECK(checkLabel(withLine(said, NA, "100"))[0].assented);
}

TEST_CASE("taking the likely slip leaves a label without findings", "[label]") {
    const LabelFacts label = withLine(usBiscuit(), CHOCDF, "70");
    const LabelFacts right = withSlip(label, *checkLabel(label).front().slip);
    CHECK(checkLabel(right).empty());
}

}  // namespace nettare
