#include "db/import/csv_reader.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cstring>
#include <random>

namespace nettare {

namespace {

using CsvRows = std::vector<std::vector<std::string>>;

/// Hands out a text in pieces of that size.
ReadBytes inPieces(std::string text, std::size_t size) {
    return [text = std::move(text), size,
            at = std::size_t{0}](std::span<char> into) mutable -> Result<std::size_t> {
        const std::size_t count = std::min({size, into.size(), text.size() - at});
        std::memcpy(into.data(), text.data() + at, count);
        at += count;
        return count;
    };
}

CsvReader readerOf(const std::string& text, char separator = ',', std::size_t piece = 1 << 20) {
    return {inPieces(text, piece), "foods.csv", separator};
}

CsvRows rowsOf(const std::string& text, char separator = ',', std::size_t piece = 1 << 20) {
    CsvReader reader = readerOf(text, separator, piece);
    CsvRows rows;
    while (true) {
        const auto there = reader.next();
        REQUIRE(there);
        if (!*there) return rows;
        REQUIRE_FALSE(reader.fault());
        rows.emplace_back(reader.fields().begin(), reader.fields().end());
    }
}

}  // namespace

TEST_CASE("a CSV row may hold separators, doubled quotes and line feeds between quotes",
          "[import]") {
    CHECK(rowsOf("a,b\n\"onion, raw\",\"3\"\" ring\"\n\"two\r\nlines\",x\n") ==
          CsvRows{{"a", "b"}, {"onion, raw", "3\" ring"}, {"two\r\nlines", "x"}});
    CHECK(rowsOf("\"\",\"\"\"\"\n") == CsvRows{{"", "\""}});
}

TEST_CASE("rows end by LF or CR LF, and the last one needs neither", "[import]") {
    const CsvRows expected{{"a", "b"}, {"1", ""}};
    CHECK(rowsOf("a,b\n1,\n") == expected);
    CHECK(rowsOf("a,b\r\n1,\r\n") == expected);
    CHECK(rowsOf("a,b\r\n1,") == expected);
    CHECK(rowsOf("a,b\n1,\"\"") == expected);
    CHECK(rowsOf("a,b\n1,\"\"\r\n") == expected);
}

TEST_CASE("a byte order mark and blank lines are passed over", "[import]") {
    CHECK(rowsOf("\xEF\xBB\xBFname\n\n\r\nleek\n\n") == CsvRows{{"name"}, {"leek"}});
    CHECK(rowsOf("\xEF\xBB\xBFname\n", ',', 1) == CsvRows{{"name"}});
    CHECK(rowsOf("").empty());
    CHECK(rowsOf("\xEF\xBB\xBF").empty());
}

TEST_CASE("semicolons and tabs part fields as well", "[import]") {
    CHECK(rowsOf("a;b,c\n", ';') == CsvRows{{"a", "b,c"}});
    CHECK(rowsOf("a\tb;c\n", '\t') == CsvRows{{"a", "b;c"}});
}

TEST_CASE("a quote inside an unquoted field is an inch mark", "[import]") {
    CHECK(rowsOf("plate 5\",x\n") == CsvRows{{"plate 5\"", "x"}});
}

TEST_CASE("text behind a closing quote spoils its row alone, and bytes that are not UTF-8 too",
          "[import]") {
    CsvReader reader = readerOf("\"a\"b,c\n\"Cr\xE8me\",d\ngood,e\n");
    REQUIRE(reader.next());
    CHECK(reader.fault() == ErrorCode::CsvTextAfterQuote);
    REQUIRE(reader.next());
    CHECK(reader.fault() == ErrorCode::CsvNotUtf8);
    CHECK(reader.line() == 2);
    REQUIRE(reader.next());
    CHECK_FALSE(reader.fault());
    CHECK(reader.fields()[0] == "good");
}

TEST_CASE("a row is named by the line it starts in, whatever lines its fields hold", "[import]") {
    CsvReader reader = readerOf("h\n\n\"a\nb\nc\"\nd\n");
    std::vector<int> lines;
    while (*reader.next()) lines.push_back(reader.line());
    CHECK(lines == std::vector<int>{1, 3, 6});
    CHECK(reader.bytesRead() == 13);
}

TEST_CASE("a quote that is never closed is an error at the row that opens it", "[import]") {
    CsvReader reader = readerOf("a\n\"open\nb\nc\n");
    REQUIRE(reader.next());
    const auto there = reader.next();
    REQUIRE_FALSE(there);
    CHECK(there.error().code == ErrorCode::CsvQuoteOpen);
    CHECK(there.error().line == 2);
    CHECK(there.error().file == "foods.csv");
}

TEST_CASE("a row of more than four mebibytes is no row of a table", "[import]") {
    CsvReader reader = readerOf("a\n\"" + std::string(kLongestCsvRow + 10, 'x') + "\"\n");
    REQUIRE(reader.next());
    const auto there = reader.next();
    REQUIRE_FALSE(there);
    CHECK(there.error().code == ErrorCode::CsvLineTooLong);
}

TEST_CASE("random rows read back as they were written, in pieces of any size", "[import]") {
    std::mt19937 random{20261126};
    const std::vector<std::string> alphabet{"a", ",", ";", "\"", "\n", "\r", "\xC3\xA9", " "};
    for (int round = 0; round < 60; ++round) {
        CsvRows rows;
        std::string text;
        for (int row = 0; row < 40; ++row) {
            std::vector<std::string> fields;
            for (int field = 0; field < 3; ++field) {
                std::string content;
                const auto length = random() % 6;
                for (unsigned i = 0; i < length; ++i) content += alphabet[random() % 8];
                std::string quoted = "\"";
                for (const char c : content) quoted += c == '"' ? "\"\"" : std::string{c};
                text += (field == 0 ? "" : ",") + quoted + "\"";
                fields.push_back(std::move(content));
            }
            text += random() % 2 == 0 ? "\n" : "\r\n";
            rows.push_back(std::move(fields));
        }
        CHECK(rowsOf(text, ',', 1 + random() % 50) == rows);
    }
}

TEST_CASE("any bytes are read to their end, or to a quote that is never closed", "[import]") {
    std::mt19937 random{7};
    const std::string often = ",,\"\"\n\r;a1";
    int ends = 0;
    for (int round = 0; round < 400; ++round) {
        std::string bytes;
        const auto length = random() % 300;
        for (unsigned i = 0; i < length; ++i)
            bytes += random() % 4 == 0 ? static_cast<char>(random() % 256)
                                       : often[random() % often.size()];
        CsvReader reader = readerOf(bytes, ',', 1 + random() % 40);
        Result<bool> there = true;
        while (there && *there) there = reader.next();
        if (there) ++ends;
        const bool whole = there ? reader.bytesRead() == bytes.size()
                                 : there.error().code == ErrorCode::CsvQuoteOpen;
        CHECK(whole);
    }
    CHECK(ends > 50);
}

}  // namespace nettare
