#include "app/words/error_sentence.h"

#include <catch2/catch.hpp>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <set>

#include "app/words/error_templates.h"
#include "core/support/text.h"

using namespace nettare;

namespace {

const std::string kRoot = NETTARE_RESOURCES "/..";

std::string textOf(const std::filesystem::path& path) {
    std::ifstream stream{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{stream}, std::istreambuf_iterator<char>{}};
}

/// The names of the error codes in their order, read from the header that defines them.
std::vector<std::string> codeNames() {
    const std::string header = textOf(kRoot + "/core/support/error.h");
    const std::size_t start = header.find("enum class ErrorCode");
    const std::string body = header.substr(start, header.find("};", start) - start);
    const std::regex name{"\n    ([A-Z][A-Za-z0-9]+),"};
    std::vector<std::string> names;
    for (std::sregex_iterator at{body.begin(), body.end(), name}; at != std::sregex_iterator{};
         ++at)
        names.push_back((*at)[1]);
    return names;
}

/// The sources of core, db and app that may create errors; the words of app only read them.
std::vector<std::string> creators() {
    std::vector<std::string> texts;
    for (const char* layer : {"/core", "/db", "/app"})
        for (const auto& entry : std::filesystem::recursive_directory_iterator{kRoot + layer}) {
            const std::string path = entry.path().generic_string();
            const bool source = path.ends_with(".cpp") || path.ends_with(".h");
            const bool reads =
                path.find("/app/words/") != std::string::npos || path.ends_with("_sentence.cpp");
            if (source && !reads) texts.push_back(textOf(entry.path()));
        }
    return texts;
}

bool creates(const std::string& source, const std::string& code) {
    const std::string name = "ErrorCode::" + code;
    for (std::size_t at = source.find(name); at != std::string::npos;
         at = source.find(name, at + 1))
        if (std::isalnum(static_cast<unsigned char>(source[at + name.size()])) == 0) return true;
    return false;
}

std::set<std::string> gapsOf(std::string_view text) {
    std::set<std::string> gaps;
    while (text.find('{') != std::string_view::npos) {
        text.remove_prefix(text.find('{') + 1);
        gaps.emplace(text.substr(0, text.find('}')));
    }
    return gaps;
}

}  // namespace

TEST_CASE("every error code has one sentence that ends with a full stop", "[words]") {
    const auto names = codeNames();
    REQUIRE(names.size() == static_cast<std::size_t>(ErrorCode::NotATable) + 1);
    for (std::size_t i = 0; i < names.size(); ++i) {
        INFO(names[i]);
        const std::string text{templateFor(static_cast<ErrorCode>(i))};
        REQUIRE_FALSE(text.empty());
        CHECK(text.ends_with('.'));
        CHECK(isPlainLine(text));
        CHECK_FALSE(std::regex_search(text, std::regex{"\\b([A-Za-z]+) \\1\\b|  "}));
        // What is wrong, then what to do; the one list of keys is both.
        const bool saysWhatToDo = text.find(';') != std::string::npos || names[i] == "OneOfNeeded";
        CHECK(saysWhatToDo);
    }
}

TEST_CASE("every error code is created, and its sentence names only values it carries", "[words]") {
    const auto names = codeNames();
    const auto sources = creators();
    REQUIRE_FALSE(sources.empty());
    for (std::size_t i = 0; i < names.size(); ++i) {
        INFO(names[i]);
        std::string all;
        for (const std::string& source : sources)
            if (creates(source, names[i])) all += source;
        CHECK_FALSE(all.empty());
        // Where a helper adds the value, the helper's file stands for its callers.
        for (const std::string& source : sources)
            if (source.find("void ObjectReader::note") != std::string::npos ||
                source.find("Error placed(") != std::string::npos ||
                source.find("compositionsOf(") != std::string::npos)
                all += source;
        for (const std::string& gap : gapsOf(templateFor(static_cast<ErrorCode>(i)))) {
            INFO(gap);
            CHECK(all.find('"' + gap + '"') != std::string::npos);
        }
    }
}

TEST_CASE("a sentence tells the file, the line and column or the pointer, and who uses it",
          "[words]") {
    Error error{ErrorCode::JsonEndsEarly};
    error.file = "pie.json";
    error.line = 3;
    error.column = 7;
    CHECK(errorSentence(error).starts_with("pie.json, line 3, column 7: the document ends"));
    const Error kept = Error{ErrorCode::EmptyText}.at("/title").with("used_by", "menu.json");
    CHECK(errorSentence(kept) ==
          "/title (used by menu.json): the text is empty; write what is meant.");
    CHECK(errorSentence(Error{ErrorCode::EmptyText}) == "the text is empty; write what is meant.");
}

TEST_CASE("whatever a sentence quotes, it stays one plain line", "[words]") {
    Error error = Error{ErrorCode::UnknownKey}.with("key", "a\u202eb\nc\x1b[2J\xff");
    error.file = "a\r\nb\u2028.json";
    error.pointer = "/\u0085" + std::string(10000, 'k');
    const std::string sentence = errorSentence(error);
    CHECK(isPlainLine(sentence));
    CHECK(sentence.ends_with(
        "…: the key “a b c [2J\uFFFD” is not known here; correct or remove it."));
    CHECK(sentence.size() < 300);
}
