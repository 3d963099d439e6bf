#include <catch2/catch.hpp>

#include "core/support/json.h"

#include <cstring>
#include <limits>
#include <random>

using namespace nettare;

namespace {

/// The canonical text of a JSON text that must be good.
std::string canonical(std::string_view text) {
    const auto json = parseJson(text);
    INFO("JSON: " << text);
    REQUIRE(json);
    return writeJson(*json);
}

Error refusal(std::string_view text) {
    const auto json = parseJson(text);
    INFO("JSON: " << text);
    REQUIRE_FALSE(json);
    return json.error();
}

std::string nested(std::size_t levels) {
    return std::string(levels, '[') + std::string(levels, ']');
}

std::string objectOf(std::size_t members) {
    std::string text = "{";
    for (std::size_t i = 0; i < members; ++i)
        text += (i == 0 ? "\"" : ",\"") + std::to_string(i) + "\":0";
    return text + "}";
}

double anyFinite(std::mt19937& random) {
    for (;;) {
        const std::uint64_t bits = (std::uint64_t{random()} << 32U) | random();
        double value = 0;
        std::memcpy(&value, &bits, sizeof value);
        if (value - value == 0) return value;
    }
}

std::string anyText(std::mt19937& random) {
    const std::string_view pieces[] = {"salt", "½", "\"", "\\", "\n", "\x01", "/", "🍋", ""};
    std::string text;
    for (unsigned i = random() % 4; i > 0; --i) text += pieces[random() % std::size(pieces)];
    return text;
}

Json anyJson(std::mt19937& random, int depth) {
    switch (random() % (depth > 0 ? 6 : 4)) {
        case 0:
            return Json{};
        case 1:
            return Json{random() % 2 == 0};
        case 2:
            return Json{anyFinite(random)};
        case 3:
            return Json{anyText(random)};
        case 4: {
            Json items = Json::array();
            for (unsigned i = random() % 4; i > 0; --i) items.append(anyJson(random, depth - 1));
            return items;
        }
        default: {
            Json object = Json::object();
            for (unsigned i = random() % 4; i > 0; --i)
                object.set(anyText(random), anyJson(random, depth - 1));
            return object;
        }
    }
}

}  // namespace

TEST_CASE("a JSON text is written canonically: sorted, without spaces", "[support]") {
    CHECK(canonical(R"( { "b" : [ 1 , true , null ] , "a" : "x" } )") ==
          R"({"a":"x","b":[1,true,null]})");
    CHECK(canonical("[]") == "[]");
    CHECK(canonical("{}") == "{}");
    CHECK(canonical(" false ") == "false");
    // Sorted by bytes: capitals before small letters, both before anything beyond ASCII.
    CHECK(canonical(R"({"é":1,"a":2,"Z":3,"":4})") == R"({"":4,"Z":3,"a":2,"é":1})");
}

TEST_CASE("numbers are written in their shortest form", "[support]") {
    CHECK(canonical("[0.1,1.50,1e2,12345678,-0.25,0.30000000000000004]") ==
          "[0.1,1.5,100,12345678,-0.25,0.30000000000000004]");
    CHECK(canonical("[9007199254740993]") == "[9007199254740992]");
    CHECK(canonical("[1e21,1e-7]") == "[1e+21,1e-07]");
    CHECK(numberText(212.2 / 100) == "2.122");
    CHECK(numberText(std::numeric_limits<double>::denorm_min()) == "5e-324");
}

TEST_CASE("minus zero is written 0", "[support]") {
    CHECK(canonical("[-0,-0.0,0,-0e5]") == "[0,0,0,0]");
    CHECK(numberText(-0.0) == "0");
    CHECK(writeJson(Json{-0.0}) == "0");
}

TEST_CASE("escapes are read in every form and written in one", "[support]") {
    CHECK(canonical(R"("\u00bd \/ \" \\ \n \t \r \b \f")") ==
          "\"½ / \\\" \\\\ \\n \\u0009 \\u000d \\u0008 \\u000c\"");
    CHECK(canonical(R"("\ud83c\udf4b")") == "\"🍋\"");
    CHECK(canonical(R"("\u0000")") == R"("\u0000")");
    CHECK(canonical("\"\x7f\"") == "\"\x7f\"");
    CHECK(refusal(R"("\ud83c")").code == ErrorCode::JsonSyntax);
    CHECK(refusal(R"("\x41")").code == ErrorCode::JsonSyntax);
    CHECK(refusal("\"a\nb\"").code == ErrorCode::JsonSyntax);
}

TEST_CASE("a key written twice is refused by its name and its object", "[support]") {
    const Error error = refusal(R"({"lines":[{"id":1},{"id":2,"food":3,"id":4}]})");
    CHECK(error.code == ErrorCode::JsonDuplicateKey);
    CHECK(error.pointer == "/lines/1");
    CHECK(error.value("key") == "id");
    CHECK(refusal("{\"a\":1,\"\\u0061\":2}").code == ErrorCode::JsonDuplicateKey);
    CHECK(canonical(R"({"a":{"a":1}})") == R"({"a":{"a":1}})");
}

TEST_CASE("nesting and members have a limit, and the limit itself is allowed", "[support]") {
    CHECK(canonical(nested(kJsonDepth)) == nested(kJsonDepth));
    const Error deep = refusal(nested(kJsonDepth + 1));
    CHECK(deep.code == ErrorCode::JsonTooDeep);
    CHECK(deep.value("most") == "64");
    CHECK(refusal(std::string(200000, '[')).code == ErrorCode::JsonTooDeep);

    CHECK(parseJson(objectOf(kJsonMembers))->members()->size() == kJsonMembers);
    const Error wide = refusal(R"({"foods":)" + objectOf(kJsonMembers + 1) + "}");
    CHECK(wide.code == ErrorCode::TooManyItems);
    CHECK(wide.pointer == "/foods");
    CHECK(wide.value("most") == "1000");
}

TEST_CASE("broken UTF-8 is refused with its line", "[support]") {
    const Error error = refusal("{\n\"name\":\n\"cr\xE8me\"}");
    CHECK(error.code == ErrorCode::JsonNotUtf8);
    CHECK(error.line == 3);
    CHECK(refusal("\"\xED\xA0\x80\"").code == ErrorCode::JsonNotUtf8);
    CHECK(refusal("\xFF").line == 1);
}

TEST_CASE("a slip in the text is refused with line and column", "[support]") {
    const Error error = refusal("{\n  \"é\": 1,\n  \"ü\": x\n}");
    CHECK(error.code == ErrorCode::JsonSyntax);
    CHECK(error.line == 3);
    CHECK(error.column == 8);
    for (const char* text : {"[1,]", "{\"a\":1,}", "[1] 2", "{a:1}", "'a'", "01", "+1", ".5",
                             "[1.]", "NaN", "Infinity", "[1 2]", "// note\n1", "[nul]"})
        CHECK(refusal(text).code == ErrorCode::JsonSyntax);
}

TEST_CASE("a slip is quoted with what leads to it on its line", "[support]") {
    CHECK(refusal("{\n  \"a\": NaN}").value("found") == "\"a\": NaN");
    CHECK(refusal("[\n1,\n]").value("found") == "]");
    CHECK(refusal("{\"crème\": \xC3\xA9}").value("found") == "{\"crème\": é");
    CHECK(refusal("[\"crème brûlée brûlée\" x]").value("found") == "brûlée brûlée\" x");
    const Error broken = refusal("[1,\n\"two\nlines\"]");
    CHECK(broken.line == 2);
    CHECK(broken.column == 5);
    CHECK(broken.value("found") == "\"two");
}

TEST_CASE("a text that ends early or holds nothing is told apart from a slip", "[support]") {
    for (const char* text : {"{", "[1,", "{\"a\"", "-", "nul", "\"open", "[\"a\\"})
        CHECK(refusal(text).code == ErrorCode::JsonEndsEarly);
    CHECK(refusal("[1,\n\n").line == 3);
    for (const char* text : {"", " ", "\n\t"}) CHECK(refusal(text).code == ErrorCode::JsonEmpty);
}

TEST_CASE("a NUL is the mark of another encoding", "[support]") {
    const Error error = refusal(std::string_view{"{\n\0}\0", 5});
    CHECK(error.code == ErrorCode::JsonNotUtf8);
    CHECK(error.line == 2);
}

TEST_CASE("keys written in falling order and many values cost no more than others", "[support]") {
    std::string object = "{";
    for (int i = 1999; i >= 1000; --i)
        object += (i == 1999 ? "\"" : ",\"") + std::to_string(i) + "\":0";
    object += "}";
    std::string all = "[" + object;
    for (int i = 0; i < 20; ++i) all += "," + object;
    const auto json = parseJson(all + "]");
    REQUIRE(json);
    CHECK(json->items()->front().members()->front().key == "1000");
    CHECK(json->items()->back().find("1500") != nullptr);

    std::string many = "[0";
    for (std::size_t i = 1; i < kJsonValues; ++i) many += ",0";
    CHECK(refusal(many + "]").code == ErrorCode::TooManyItems);
    // The list itself is a value too.
    CHECK(parseJson("[" + many.substr(3) + "]")->items()->size() == kJsonValues - 1);
}

TEST_CASE("a number beyond a double is refused, one below it is zero", "[support]") {
    const Error error = refusal("[\n1e999]");
    CHECK(error.code == ErrorCode::JsonNumberTooLarge);
    CHECK(error.line == 2);
    CHECK(refusal("-1e999").code == ErrorCode::JsonNumberTooLarge);
    CHECK(canonical("1e-999") == "0");
    CHECK(canonical("1.7976931348623157e308") == "1.7976931348623157e+308");
}

TEST_CASE("canonical text reads back as the same canonical text", "[support]") {
    std::mt19937 random{648};
    for (int i = 0; i < 500; ++i) {
        const std::string text = writeJson(anyJson(random, 4));
        CAPTURE(i);
        CHECK(canonical(text) == text);
    }
}

TEST_CASE("indented text is for people and means the same", "[support]") {
    const auto json = parseJson(R"({"b":[1,{}],"a":[]})");
    const std::string text = writeJsonIndented(*json);
    CHECK(text == "{\n  \"a\": [],\n  \"b\": [\n    1,\n    {}\n  ]\n}\n");
    CHECK(canonical(text) == writeJson(*json));
}

TEST_CASE("members are found by key and replaced by setting them again", "[support]") {
    Json food;
    food.set("name", Json{"flour"}).set("grams", Json{125.0}).set("name", Json{"rye flour"});
    REQUIRE(food.members()->size() == 2);
    CHECK(*food.find("name")->text() == "rye flour");
    CHECK(*food.find("grams")->number() == 125.0);
    CHECK(food.find("salt") == nullptr);
    CHECK(Json{true}.find("name") == nullptr);
    CHECK(Json{}.isNull());
}

TEST_CASE("a pointer escapes tilde and slash", "[support]") {
    // RFC 6901, section 5: "a/b" is /a~1b, "m~n" is /m~0n, "" is /.
    CHECK(pointerTo("", std::string_view{"a/b"}) == "/a~1b");
    CHECK(pointerTo("", std::string_view{"m~n"}) == "/m~0n");
    CHECK(pointerTo("", std::string_view{}) == "/");
    CHECK(pointerTo("/lines", std::size_t{2}) == "/lines/2");
}
