#include <catch2/catch.hpp>

#include "house/text_rules.h"

using namespace nettare;

using Sentences = std::vector<std::string>;

TEST_CASE("a tidy source and a tidy script break no rule", "[house]") {
    CHECK(brokenRules({"core/a.cpp", "int a;\n", false}).empty());
    CHECK(brokenRules({"packaging/run.sh", "#!/bin/sh\n", true}).empty());
    CHECK(brokenRules({"db/CMakeLists.txt", "", false}).empty());
}

TEST_CASE("each broken rule of text is named with its line", "[house]") {
    CHECK(brokenRules({"core/a.cpp", "int a;\nint b;\r\n", false}) ==
          Sentences{"core/a.cpp:2 has a carriage return; lines end in a line feed alone."});
    CHECK(brokenRules({"README.md", "one\n\ntwo \n", false}) ==
          Sentences{"README.md:3 ends in a blank; take it away."});
    CHECK(brokenRules({"core/a.h", "{\n\tint a;\n", false}) ==
          Sentences{"core/a.h:2 has a tab; sources are indented by spaces."});
    CHECK(brokenRules({"core/a.h", "int a;\nint b;", false}) ==
          Sentences{"core/a.h:2 is the last line and lacks its line feed."});
    CHECK(brokenRules({"core/a.h", "a; \r\n\tb;", false}).size() == 4);
}

TEST_CASE("a source of more than 600 lines is refused", "[house]") {
    std::string text;
    for (int i = 0; i < 600; ++i) text += "//\n";
    CHECK(brokenRules({"core/a.cpp", text, false}).empty());
    CHECK(brokenRules({"LICENSE", text + "x\n", false}).empty());
    CHECK(
        brokenRules({"core/a.cpp", text + "//\n", false}) ==
        Sentences{"core/a.cpp has 601 lines; more than 600 want to be two files, one idea each."});
}

TEST_CASE("scripts, and only scripts, may be executed", "[house]") {
    CHECK(brokenRules({"core/a.cpp", "int a;\n", true}) ==
          Sentences{"core/a.cpp may be executed but is no script; take the bit away."});
    CHECK(brokenRules({".ci/run", "#!/bin/sh\n", false}) ==
          Sentences{".ci/run is a script but may not be executed; set the bit."});
    CHECK(brokenRules({"tests/data/panel.txt", "", true}).size() == 1);
}

TEST_CASE("data and pictures keep the bytes that they need", "[house]") {
    CHECK(brokenRules({"tests/data/scale/line.txt", "ST,+00123.4  g\r\n", false}).empty());
    CHECK(brokenRules({"resources/icon.png", "\x89PNG\r\n", false}).empty());
    CHECK(brokenRules({"resources/table", std::string{"a\0b\t ", 5}, false}).empty());
    CHECK(brokenRules({"resources/foods.tsv", "1\tsalt\n", false}).empty());
}
