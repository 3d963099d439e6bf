#include <catch2/catch.hpp>

#include "core/support/json_reader.h"

#include "json_edit.h"

#include <functional>

using namespace nettare;

namespace {

enum class Heat { Low, High };

constexpr std::array<Word<Heat>, 2> kHeatWords{{{"low", Heat::Low}, {"high", Heat::High}}};
constexpr std::array<std::string_view, 2> kEither{"unit", "piece"};

using ReadMembers = std::function<void(ObjectReader&)>;

/// The first error where `read` asks an object, at /pan of a document, for its members.
std::optional<Error> failureOf(std::string_view text, const ReadMembers& read) {
    std::optional<Error> failure;
    const Json json = jsonOf(text);
    ObjectReader reader{json, "/pan", failure};
    read(reader);
    reader.finish();
    return failure;
}

struct ReaderCase {
    const char* json;
    ErrorCode code;
    const char* pointer;
};

void checkRefused(const std::vector<ReaderCase>& cases, const ReadMembers& read) {
    for (const ReaderCase& one : cases) {
        INFO("JSON: " << one.json);
        const auto failure = failureOf(one.json, read);
        REQUIRE(failure);
        CHECK(failure->code == one.code);
        CHECK(failure->pointer == one.pointer);
    }
}

template <class T>
T valueOf(std::string_view text, const std::function<T(ObjectReader&)>& read) {
    T value{};
    const auto failure = failureOf(text, [&](ObjectReader& reader) { value = read(reader); });
    INFO("JSON: " << text);
    CHECK_FALSE(failure);
    return value;
}

std::string quoted(const std::string& text) {
    return writeJson(Json{std::string_view{text}});
}

std::string repeatedText(std::string_view piece, int times) {
    std::string text;
    for (int i = 0; i < times; ++i) text += piece;
    return text;
}

ReadMembers wantDecimal(NumberSign sign) {
    return [sign](ObjectReader& reader) { static_cast<void>(reader.decimal("tare", sign)); };
}

}  // namespace

TEST_CASE("what is no object has no members", "[support]") {
    const ReadMembers nothing = [](ObjectReader&) {};
    checkRefused({{"null", ErrorCode::WrongKind, "/pan"},
                  {"[]", ErrorCode::WrongKind, "/pan"},
                  {R"("pan")", ErrorCode::WrongKind, "/pan"}},
                 nothing);
    CHECK(failureOf("7", nothing)->value("found") == "a number");
    CHECK(failureOf("7", nothing)->value("wanted") == "an object in curly brackets");
    CHECK_FALSE(failureOf("{}", nothing));
}

TEST_CASE("a text is there, is text, is not empty, not too long and clean", "[support]") {
    const ReadMembers name = [](ObjectReader& reader) {
        static_cast<void>(reader.text("name", 4));
    };
    checkRefused({{"{}", ErrorCode::MissingKey, "/pan"},
                  {R"({"name":null})", ErrorCode::WrongKind, "/pan/name"},
                  {R"({"name":5})", ErrorCode::WrongKind, "/pan/name"},
                  {R"({"name":""})", ErrorCode::EmptyText, "/pan/name"},
                  {R"({"name":"  "})", ErrorCode::EmptyText, "/pan/name"},
                  {R"({"name":"a\u202eb"})", ErrorCode::TextNotClean, "/pan/name"},
                  {R"({"name":"a\u009bb"})", ErrorCode::TextNotClean, "/pan/name"},
                  {R"({"name":"abcde"})", ErrorCode::TextTooLong, "/pan/name"},
                  {R"({"name":"a\nb"})", ErrorCode::TextNotClean, "/pan/name"},
                  {R"({"name":"\u0000"})", ErrorCode::TextNotClean, "/pan/name"},
                  {"{\"name\":\"\x7f\"}", ErrorCode::TextNotClean, "/pan/name"}},
                 name);
    CHECK(failureOf("{}", name)->value("key") == "name");
    CHECK(failureOf(R"({"name":true})", name)->value("found") == "true or false");
    CHECK(failureOf(R"({"name":[]})", name)->value("found") == "a list");
    CHECK(failureOf(R"({"name":{}})", name)->value("wanted") == "text in quotes");
    CHECK(failureOf(R"({"name":"abcde"})", name)->value("most") == "4");
}

TEST_CASE("the length of a text counts code points", "[support]") {
    const auto read = [](ObjectReader& reader) { return reader.text("name", 4); };
    CHECK(valueOf<std::string>(R"({"name":"🍋🍋🍋🍋"})", read) == "🍋🍋🍋🍋");
    CHECK(valueOf<std::string>(R"({"name":"½ a"})", read) == "½ a");
    CHECK(failureOf(R"({"name":"🍋🍋🍋🍋🍋"})", read)->code == ErrorCode::TextTooLong);
}

TEST_CASE("an optional member may be left out but not be null", "[support]") {
    using Maybe = std::optional<std::string>;
    const auto text = [](ObjectReader& reader) { return reader.optionalText("note", 9); };
    CHECK(valueOf<Maybe>("{}", text) == std::nullopt);
    CHECK(valueOf<Maybe>(R"({"note":"hot"})", text) == "hot");
    CHECK(failureOf(R"({"note":null})", text)->value("found") == "null");
    const auto id = [](ObjectReader& reader) { return reader.optionalId("scale"); };
    CHECK(valueOf<Maybe>("{}", id) == std::nullopt);
    CHECK(valueOf<Maybe>(R"({"scale":"pocket"})", id) == "pocket");
    const auto ids = [](ObjectReader& reader) { return reader.optionalIds("lines", 2); };
    CHECK(valueOf<std::vector<std::string>>("{}", ids).empty());
    CHECK(failureOf(R"({"lines":[]})", ids)->code == ErrorCode::TooFewItems);
}

TEST_CASE("an identifier is small letters, digits and hyphens", "[support]") {
    const std::string longest(64, 'a');
    for (const std::string& good : {std::string{"a"}, std::string{"9"}, std::string{"steel-bowl-2"},
                                    std::string{"a-"}, longest})
        CHECK(isIdentifier(good));
    for (const std::string& bad :
         {std::string{}, std::string{"-a"}, std::string{"A"}, std::string{"a b"},
          std::string{"a_b"}, std::string{"ü"}, longest + "a"})
        CHECK_FALSE(isIdentifier(bad));

    const ReadMembers id = [](ObjectReader& reader) { static_cast<void>(reader.id("id")); };
    const std::string tooLong = R"({"id":)" + quoted(longest + "a") + "}";
    checkRefused({{R"({"id":"Bowl"})", ErrorCode::NotAnIdentifier, "/pan/id"},
                  {R"({"id":""})", ErrorCode::EmptyText, "/pan/id"},
                  {R"({"id":3})", ErrorCode::WrongKind, "/pan/id"},
                  {tooLong.c_str(), ErrorCode::TextTooLong, "/pan/id"}},
                 id);
}

TEST_CASE("a list of identifiers names the item that is none", "[support]") {
    const auto ids = [](ObjectReader& reader) { return reader.ids("lines", 2); };
    CHECK(valueOf<std::vector<std::string>>(R"({"lines":["b","a"]})", ids) ==
          std::vector<std::string>{"b", "a"});
    checkRefused({{"{}", ErrorCode::MissingKey, "/pan"},
                  {R"({"lines":"a"})", ErrorCode::WrongKind, "/pan/lines"},
                  {R"({"lines":[]})", ErrorCode::TooFewItems, "/pan/lines"},
                  {R"({"lines":["a","b","c"]})", ErrorCode::TooManyItems, "/pan/lines"},
                  {R"({"lines":["a","B"]})", ErrorCode::NotAnIdentifier, "/pan/lines/1"},
                  {R"({"lines":[null]})", ErrorCode::WrongKind, "/pan/lines/0"}},
                 ids);
    CHECK(failureOf(R"({"lines":["a","b","c"]})", ids)->value("most") == "2");
}

TEST_CASE("a decimal is text of up to six digits and six decimals", "[support]") {
    const auto read = [](ObjectReader& reader) { return reader.decimal("tare", NumberSign::Any); };
    CHECK(valueOf<Decimal>(R"({"tare":"212.20"})", read).text() == "212.20");
    CHECK(valueOf<Decimal>(R"({"tare":"-0.1"})", read).text() == "-0.1");
    CHECK(valueOf<Decimal>(R"({"tare":"999999.999999"})", read).coefficient() == 999999999999);
    CHECK(valueOf<Decimal>(R"({"tare":"007"})", read) == Decimal{7, 0});
    for (const char* bad : {"1000000", "0.1234567", "1,5", "+1", "1.", ".5", "1e3", " 1", "1 ",
                            "1.2.3", "--1", "-", "one", "٣"}) {
        INFO(bad);
        const auto failure = failureOf(R"({"tare":)" + quoted(bad) + "}", read);
        REQUIRE(failure);
        CHECK(failure->code == ErrorCode::NotADecimal);
        CHECK(failure->pointer == "/pan/tare");
        CHECK(failure->value("found") == bad);
    }
    checkRefused({{R"({"tare":212.2})", ErrorCode::WrongKind, "/pan/tare"},
                  {R"({"tare":""})", ErrorCode::EmptyText, "/pan/tare"},
                  {"{}", ErrorCode::MissingKey, "/pan"}},
                 read);
    const std::string digits = R"({"tare":)" + quoted(repeatedText("1", 41)) + "}";
    CHECK(failureOf(digits, read)->code == ErrorCode::TextTooLong);
}

TEST_CASE("a weight that cannot be negative or zero is refused where it is", "[support]") {
    checkRefused({{R"({"tare":"-1"})", ErrorCode::NegativeMass, "/pan/tare"},
                  {R"({"tare":"-0"})", ErrorCode::NegativeMass, "/pan/tare"},
                  {R"({"tare":"-x"})", ErrorCode::NotADecimal, "/pan/tare"}},
                 wantDecimal(NumberSign::NotNegative));
    CHECK_FALSE(failureOf(R"({"tare":"0.0"})", wantDecimal(NumberSign::NotNegative)));
    checkRefused({{R"({"tare":"0.000"})", ErrorCode::NotPositive, "/pan/tare"},
                  {R"({"tare":"-2"})", ErrorCode::NegativeMass, "/pan/tare"}},
                 wantDecimal(NumberSign::Positive));
    CHECK_FALSE(failureOf(R"({"tare":"0.1"})", wantDecimal(NumberSign::Positive)));
    const auto optional = [](ObjectReader& reader) {
        return reader.optionalDecimal("tare", NumberSign::Positive);
    };
    CHECK(valueOf<std::optional<Decimal>>("{}", optional) == std::nullopt);
    CHECK(valueOf<std::optional<Decimal>>(R"({"tare":"2"})", optional) == Decimal{2, 0});
}

TEST_CASE("a flag is true or false, and false where it is left out", "[support]") {
    const auto flag = [](ObjectReader& reader) { return reader.optionalFlag("lid"); };
    CHECK_FALSE(valueOf<bool>("{}", flag));
    CHECK_FALSE(valueOf<bool>(R"({"lid":false})", flag));
    CHECK(valueOf<bool>(R"({"lid":true})", flag));
    checkRefused({{R"({"lid":"true"})", ErrorCode::WrongKind, "/pan/lid"},
                  {R"({"lid":1})", ErrorCode::WrongKind, "/pan/lid"},
                  {R"({"lid":null})", ErrorCode::WrongKind, "/pan/lid"}},
                 flag);
}

TEST_CASE("an unknown word is refused with the words that there are", "[support]") {
    const auto heat = [](ObjectReader& reader) { return reader.oneOf("heat", kHeatWords); };
    CHECK(valueOf<Heat>(R"({"heat":"high"})", heat) == Heat::High);
    const auto failure = failureOf(R"({"heat":"High"})", heat);
    REQUIRE(failure);
    CHECK(failure->code == ErrorCode::NotOneOf);
    CHECK(failure->pointer == "/pan/heat");
    CHECK(failure->value("found") == "High");
    CHECK(failure->value("known") == "low, high");
}

TEST_CASE("of two members that exclude each other exactly one is there", "[support]") {
    const auto which = [](ObjectReader& reader) { return reader.exactlyOneOf(kEither); };
    CHECK(valueOf<std::size_t>(R"({"unit":"g"})", which) == 0);
    CHECK(valueOf<std::size_t>(R"({"piece":"clove"})", which) == 1);
    checkRefused({{"{}", ErrorCode::OneOfNeeded, "/pan"},
                  {R"({"unit":"g","piece":"clove"})", ErrorCode::OneOfNeeded, "/pan"}},
                 which);
    CHECK(failureOf("{}", which)->value("known") == "unit, piece");
}

TEST_CASE("a list has its least and its most items, each with its place", "[support]") {
    const ReadMembers steps = [](ObjectReader& reader) {
        for (const auto& [json, pointer] : reader.items("steps", 1, 2)) {
            ObjectReader step{json, pointer, reader.failure()};
            static_cast<void>(step.text("text", 9));
            step.finish();
        }
    };
    CHECK_FALSE(failureOf(R"({"steps":[{"text":"fry"},{"text":"eat"}]})", steps));
    checkRefused(
        {{"{}", ErrorCode::MissingKey, "/pan"},
         {R"({"steps":{}})", ErrorCode::WrongKind, "/pan/steps"},
         {R"({"steps":[]})", ErrorCode::TooFewItems, "/pan/steps"},
         {R"({"steps":[1,2,3]})", ErrorCode::TooManyItems, "/pan/steps"},
         {R"({"steps":[1]})", ErrorCode::WrongKind, "/pan/steps/0"},
         {R"({"steps":[{"text":"fry"},{}]})", ErrorCode::MissingKey, "/pan/steps/1"},
         {R"({"steps":[{"text":"fry","min":2}]})", ErrorCode::UnknownKey, "/pan/steps/0/min"}},
        steps);
}

TEST_CASE("a member that nobody asked for is refused by its key", "[support]") {
    const ReadMembers name = [](ObjectReader& reader) {
        static_cast<void>(reader.text("name", 9));
    };
    const auto failure = failureOf(R"({"name":"pan","a/b":1})", name);
    REQUIRE(failure);
    CHECK(failure->code == ErrorCode::UnknownKey);
    CHECK(failure->pointer == "/pan/a~1b");
    CHECK(failure->value("found") == "a/b");
    CHECK(failureOf(R"({"name":"pan","":1})", name)->code == ErrorCode::EmptyKey);
}

TEST_CASE("an object inside an object is read at its own place", "[support]") {
    const ReadMembers lid = [](ObjectReader& reader) {
        ObjectReader inner = reader.object("lid");
        static_cast<void>(inner.id("id"));
        inner.finish();
    };
    CHECK_FALSE(failureOf(R"({"lid":{"id":"a"}})", lid));
    checkRefused({{"{}", ErrorCode::MissingKey, "/pan"},
                  {R"({"lid":"a"})", ErrorCode::WrongKind, "/pan/lid"},
                  {R"({"lid":{}})", ErrorCode::MissingKey, "/pan/lid"},
                  {R"({"lid":{"id":"A"}})", ErrorCode::NotAnIdentifier, "/pan/lid/id"}},
                 lid);
}

TEST_CASE("the first error stands, whatever is asked after it", "[support]") {
    const ReadMembers all = [](ObjectReader& reader) {
        static_cast<void>(reader.id("id"));
        static_cast<void>(reader.text("name", 2));
        static_cast<void>(reader.decimal("tare", NumberSign::Any));
        static_cast<void>(reader.optionalFlag("lid"));
        static_cast<void>(reader.oneOf("heat", kHeatWords));
        static_cast<void>(reader.ids("lines", 1));
        static_cast<void>(reader.object("inner").exactlyOneOf(kEither));
    };
    const auto failure = failureOf(R"({"id":"A","name":"long","surprise":1})", all);
    REQUIRE(failure);
    CHECK(failure->code == ErrorCode::NotAnIdentifier);
    CHECK(failure->pointer == "/pan/id");
}
