#include "app/scale/shown_number.h"

#include <catch2/catch.hpp>

#include <string>

namespace nettare {

namespace {

struct ShownCase {
    const char* typed;
    GroupMark group;
    const char* shown;  ///< empty: refused
    ErrorCode code;
};

constexpr ShownCase kShownCases[] = {
    {"271.1", GroupMark::Comma, "271.1", {}},
    {"271,1", GroupMark::Comma, "271.1", {}},
    {"271,10", GroupMark::Point, "271.10", {}},
    {" 340 ", GroupMark::Unknown, "340", {}},
    {"-1.5", GroupMark::Unknown, "-1.5", {}},
    {"−0,2", GroupMark::Unknown, "-0.2", {}},
    {".5", GroupMark::Unknown, "0.5", {}},
    {"0,125", GroupMark::Comma, "0.125", {}},
    {"1,500", GroupMark::Comma, "", ErrorCode::AmountAmbiguous},
    {"1.500", GroupMark::Point, "", ErrorCode::AmountAmbiguous},
    {"1.500", GroupMark::Comma, "1.500", {}},
    {"1.234,5", GroupMark::Point, "", ErrorCode::NotADecimal},
    {"12 g", GroupMark::Unknown, "", ErrorCode::NotADecimal},
    {"", GroupMark::Unknown, "", ErrorCode::EmptyText},
    {"-", GroupMark::Unknown, "", ErrorCode::NotADecimal},
    {"1234567890123", GroupMark::Unknown, "", ErrorCode::AmountTooLong},
};

}  // namespace

TEST_CASE("what a scale shows is read with a comma or a point, and nothing is guessed") {
    for (const ShownCase& each : kShownCases) {
        INFO(each.typed);
        const auto shown = readShown(each.typed, each.group);
        CHECK(shown.has_value() == (each.shown[0] != '\0'));
        if (shown)
            CHECK(shown->text() == each.shown);
        else
            CHECK(shown.error().code == each.code);
    }
}

}  // namespace nettare
