#include <catch2/catch.hpp>

#include <algorithm>

#include "core/label/label_slip.h"

#include "label_examples.h"

namespace nettare {

namespace {

using enum Component;

bool canComeFrom(const char* meant, const char* typed) {
    const auto candidates = slipCandidates(*Decimal::read(typed));
    return std::ranges::any_of(candidates, [&](const SlipCandidate& candidate) {
        return candidate.figure == Decimal::read(meant);
    });
}

/// The slip that a label with one mistyped amount is taken for: "CHOAVL 66".
std::string slipIn(const LabelFacts& label, const LabelLine& line, const char* typed) {
    const auto findings = checkLabel(withLine(label, line, typed));
    REQUIRE_FALSE(findings.empty());
    const auto& slip = findings.front().slip;
    REQUIRE(slip);
    CHECK(slip->printed == typed);
    return std::string{tagnameOf(slip->line.value())} + " " + slip->instead;
}

}  // namespace

TEST_CASE("a figure comes from another by one slip of a digit or of the point", "[label]") {
    CHECK(canComeFrom("66", "26"));   // another digit
    CHECK(canComeFrom("66", "6"));    // one of two dropped
    CHECK(canComeFrom("120", "12"));  // a zero dropped
    CHECK(canComeFrom("66", "666"));  // typed twice
    CHECK(canComeFrom("16", "156"));  // one too many
    CHECK(canComeFrom("61", "16"));   // exchanged
    CHECK(canComeFrom("7.1", "71"));  // the point lost
    CHECK(canComeFrom("0.5", "5"));   // with the zero before it
    CHECK(canComeFrom("71", "7.1"));  // a point too many
    CHECK(canComeFrom("1.25", "12.5"));
    CHECK_FALSE(canComeFrom("66", "16.5"));
    CHECK_FALSE(canComeFrom("1234", "66"));
    for (const SlipCandidate& candidate : slipCandidates(*Decimal::read("10")))
        CHECK(candidate.figure != Decimal{10, 0});
}

TEST_CASE("the figure of the package is found behind each kind of slip", "[label]") {
    const LabelFacts biscuit = euBiscuit();
    CHECK(slipIn(biscuit, LabelOnly::CHOAVL, "26") == "CHOAVL 66");
    CHECK(slipIn(biscuit, LabelOnly::CHOAVL, "6") == "CHOAVL 66");
    CHECK(slipIn(biscuit, FAT, "61") == "FAT 16");
    CHECK(slipIn(biscuit, PROCNT, "75") == "PROCNT 7.5");
    CHECK(slipIn(biscuit, ENERC_KJ, "1780") == "ENERC_KJ 1870");
    CHECK(slipIn(biscuit, ENERC_KJ, "187") == "ENERC_KJ 1870");
    CHECK(slipIn(biscuit, ENERC_KCAL, "4445") == "ENERC_KCAL 445");
    CHECK(slipIn(usBiscuit(), ENERC_KCAL, "1400") == "ENERC_KCAL 140");
    CHECK(slipIn(usBiscuit(), FASAT, "25") == "FASAT 2.5");
}

TEST_CASE("a likely slip is a lawful print, settles its finding and raises no other", "[label]") {
    for (const char* typed : {"2", "10", "40", "70", "200", "220", "2.0"}) {
        const LabelFacts label = withLine(usBiscuit(), CHOCDF, typed);
        for (const LabelFinding& finding : checkLabel(label)) {
            CAPTURE(typed);
            if (!finding.slip) continue;
            const LabelFacts right = withSlip(label, *finding.slip);
            for (const LabelFinding& left : checkLabel(right)) {
                CHECK(left.kind != LabelFindingKind::NotLawful);
                CHECK(left.kind != finding.kind);
            }
        }
    }
}

}  // namespace nettare
