#include <catch2/catch.hpp>

#include "db/match_quality.h"

namespace nettare {

namespace {

Match matched(const char* words, const char* name, const char* otherNames) {
    const std::vector<AskedWord> asked = askedWords(words);
    return Matcher{asked}.of(name, otherNames);
}

MatchQuality qualityOf(const char* words, const char* name, const char* otherNames = "") {
    return matched(words, name, otherNames).quality;
}

int beyond(const char* words, const char* name, const char* otherNames = "") {
    return matched(words, name, otherNames).beyond;
}

}  // namespace

TEST_CASE("what is asked for comes before what only mentions it", "[search]") {
    CHECK(qualityOf("butter", "butter, salted") == MatchQuality::Named);
    CHECK(qualityOf("butter", "peanut butter, smooth, unsalted") == MatchQuality::Named);
    CHECK(qualityOf("butter", "butter lettuce") == MatchQuality::Whole);
    CHECK(qualityOf("butter", "butternut squash, raw") == MatchQuality::Start);
    CHECK(qualityOf("butter", "butternuts, dried") == MatchQuality::Begun);
}

TEST_CASE("the head word of a name stands before in, with, bracket and comma", "[search]") {
    CHECK(qualityOf("tomatoes", "canned tomatoes in juice") == MatchQuality::Named);
    CHECK(qualityOf("juice", "canned tomatoes in juice") == MatchQuality::Whole);
    CHECK(qualityOf("steak", "strip steak, raw", "sirloin steak (UK)") == MatchQuality::Named);
    CHECK(qualityOf("sauerkraut", "sauerkraut with its liquid, canned") == MatchQuality::Named);
}

TEST_CASE("behind the class that a table puts first stands the thing", "[search]") {
    CHECK(qualityOf("halibut", "Fish, halibut, Atlantic and Pacific, raw") == MatchQuality::Named);
    CHECK(qualityOf("tenderloin", "Pork, fresh, loin, tenderloin, raw") == MatchQuality::Named);
    CHECK(qualityOf("brisket", "Beef, brisket, flat half, raw") == MatchQuality::Named);
    CHECK(qualityOf("raw", "Beef, brisket, flat half, raw") == MatchQuality::Whole);
    CHECK(qualityOf("celery", "Spices, celery seed") == MatchQuality::Whole);
    // A kind names no thing by itself.
    CHECK(qualityOf("sweet", "Peppers, sweet, green, raw") == MatchQuality::Whole);
    CHECK(qualityOf("celery", "celery stalks, raw") == MatchQuality::Named);
}

TEST_CASE("another name names the food as well as its own", "[search]") {
    CHECK(qualityOf("prawn", "shrimp, raw", "prawns") == MatchQuality::Named);
    CHECK(qualityOf("raw prawn", "shrimp, raw", "prawns") == MatchQuality::Whole);
    CHECK(qualityOf("praw", "shrimp, raw", "gambas\nprawns") == MatchQuality::Begun);
}

TEST_CASE("words alike are the word", "[search]") {
    CHECK(qualityOf("tinned tomatoes", "Tomatoes, red, ripe, canned") == MatchQuality::Named);
    CHECK(qualityOf("tinn tomatoes", "Tomatoes, red, ripe, canned") == MatchQuality::Begun);
    CHECK(qualityOf("tomatos", "tomatoes, ripe") == MatchQuality::Named);
}

TEST_CASE("a name that says less beyond the words is nearer to them", "[search]") {
    CHECK(beyond("onion", "Onions, raw") == 0);
    CHECK(beyond("onion", "Onions, sweet, raw") > 0);
    CHECK(beyond("onion", "Onion rings, raw") > beyond("onion", "Onions, sweet, raw"));
    CHECK(beyond("halibut", "Fish, halibut, raw") < beyond("halibut", "Soup, halibut"));
    // By another name, what its own name says counts.
    CHECK(beyond("crisps", "Snacks, potato chips, plain", "crisps") <
          beyond("crisps", "Snacks, potato chips, barbecue-flavor", "crisps"));
}

}  // namespace nettare
