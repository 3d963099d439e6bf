#include "layering/include_rules.h"

#include <algorithm>
#include <fstream>
#include <regex>

namespace nettare {

namespace {

/// Files whose path matches `files` may not include a name that matches `denied`.
struct IncludeRule {
    std::regex files, denied;
    const char* reason;
};

constexpr auto kQt = "Q[A-Za-z].*|q[a-z_]+\\.h";
/// What db shows to others.
constexpr auto kPublicDb =
    "db/(food_groups|food_tables?|food_search|food_value|is_database|like_density|measure_spreads|"
    "own_matches|"
    "import/import_table|import/csv_mapping|"
    "kitchen/kitchen|kitchen/own_food_record|kitchen/uuid)\\.h";
constexpr auto kSqlite = "sqlite3.*|SQLiteCpp/.*";

std::vector<IncludeRule> coreRules() {
    const std::regex core{"core/.*"};
    return {
        {core, std::regex{kQt},
         "core knows no Qt, so that figures can be computed without a desktop"},
        {core, std::regex{kSqlite},
         "core knows no SQLite, so that figures can be recomputed without a file"},
        {core, std::regex{"db/.*"},
         "core knows no db, so that figures do not depend on how a kitchen is stored"},
        {core, std::regex{"app/.*"},
         "core knows no app, so that figures are the same in every window and script"},
        {core, std::regex{"fstream|filesystem"},
         "core knows no files, so that figures depend on nothing but what is handed in"},
        {core, std::regex{"chrono|ctime|time\\.h"},
         "core knows no clock, so that a revision gives the same figures in ten years"},
        {std::regex{"core/wording/.*"},
         std::regex{"core/(?!(wording|support|quantity)/|food/piece_word\\.h$).*"},
         "core/wording knows words and numbers alone, so that a line reads the same in every "
         "recipe"},
    };
}

std::vector<IncludeRule> outerRules() {
    return {
        {std::regex{"db/.*"}, std::regex{kQt},
         "db knows no Qt, so that a kitchen can be read without a desktop"},
        {std::regex{"db/.*"}, std::regex{"app/.*"},
         "db knows no app, so that a kitchen can be read by any program"},
        {std::regex{"app/.*"}, std::regex{kSqlite},
         "app knows no SQLite, so that another store can stand behind db"},
        {std::regex{"app/.*"}, std::regex{std::string{"(?!"} + kPublicDb + "$)db/.*"},
         "app knows db by its public headers, so that another store can stand behind them"},
        {std::regex{kPublicDb}, std::regex{kSqlite},
         "public headers of db name no SQLite type, so that another store can stand behind them"},
        {std::regex{"tests/core/.*"},
         std::regex{std::string{"db/.*|app/.*|"} + kQt + "|" + kSqlite},
         "tests of core know core alone, so that they prove that core needs nothing else"},
        {std::regex{"tests/db/.*"}, std::regex{std::string{"app/.*|"} + kQt},
         "tests of db know no app and no Qt, so that they prove that db needs neither"},
        {std::regex{"(core|db|app)/.*"}, std::regex{"catch2/.*"},
         "only tests know Catch2, so that the program ships without its tests"},
    };
}

std::vector<IncludeRule> rulesForAll() {
    return {
        {std::regex{".*"}, std::regex{"(.*/)?\\.\\./.*"},
         "an include names its path from the layer down, so that a file can be moved and found"},
        // The test of the published schema asks a second reader on purpose.
        {std::regex{"(?!core/support/json_parse\\.cpp$|tests/support/published_schema\\.cpp$).*"},
         std::regex{"(nlohmann|valijson)/.*"},
         "only core/support/json_parse.cpp knows nlohmann, so that no other file reads JSON that "
         "lets duplicate keys pass"},
        // The second reading of a path counts in exact fractions of its own.
        {std::regex{"(?!core/nutrition/student_t\\.cpp$|tests/core/publish/path_parser\\.h$).*"},
         std::regex{"boost/(?!random/).*"},
         "only core/nutrition/student_t.cpp knows Boost.Math, so that quantiles come from one "
         "place"},
        {std::regex{"(?!core/simulation/draws\\.cpp$).*"}, std::regex{"boost/random/.*"},
         "only core/simulation/draws.cpp knows Boost.Random, so that draws come from one place"},
        {std::regex{"(?!core/support/sha256\\.cpp$).*"}, std::regex{"openssl/.*"},
         "only core/support/sha256.cpp knows OpenSSL, so that hashes come from one place"},
        {std::regex{"(?!db/import/zip_archive\\.cpp$).*"}, std::regex{"zip\\.h"},
         "only db/import/zip_archive.cpp knows libzip, so that downloads are unpacked in one "
         "place"},
        {std::regex{"(?!core/publish/word_script\\.cpp$).*"}, std::regex{"dtl/.*"},
         "only core/publish/word_script.cpp knows dtl, so that differences are found in one place"},
        {std::regex{"(?!app/command_line/(bench_)?arguments\\.cpp$).*"}, std::regex{"CLI/.*"},
         "only arguments.cpp and bench_arguments.cpp of app/command_line know CLI11, so that the "
         "command line stands in one "
         "place"},
        {std::regex{"(?!app/icons/|tests/app/).*"}, std::regex{"(QtSvg/?|QSvg).*"},
         "only app/icons knows QtSvg, so that every drawing is coloured by the palette"},
        {std::regex{"(?!app/path/|app/bench/series_chart\\.).*"},
         std::regex{"(QtCharts/?|QChart).*"},
         "only app/path and app/bench/series_chart know QtCharts, so that every plot is dressed in "
         "the palette"},
        {std::regex{"(?!app/theme/|tests/app/gui/).*"}, std::regex{"(QtDBus/?|QDBus).*"},
         "only app/theme knows D-Bus, so that all else runs the same without a desktop"},
        {std::regex{"(?!tests/).*|tests/app/(?!gui/).*"},
         std::regex{"(QtTest/?|QTest|QSignalSpy).*"},
         "only tests/app/gui knows QtTest, so that all else is tested without a window"},
    };
}

std::vector<IncludeRule> allRules() {
    std::vector<IncludeRule> rules = coreRules();
    for (const auto& more : {outerRules(), rulesForAll()})
        rules.insert(rules.end(), more.begin(), more.end());
    return rules;
}

std::vector<std::string> sourcesBelow(const std::filesystem::path& root) {
    std::vector<std::string> names;
    for (const char* layer : {"core", "db", "app", "tests"}) {
        if (!std::filesystem::is_directory(root / layer)) continue;
        for (const auto& entry : std::filesystem::recursive_directory_iterator{root / layer}) {
            const std::string name = entry.path().lexically_relative(root).generic_string();
            const bool source = name.ends_with(".h") || name.ends_with(".cpp");
            if (source && !name.starts_with("tests/layering/planted/")) names.push_back(name);
        }
    }
    std::ranges::sort(names);
    return names;
}

void judge(const std::string& name, std::istream& source, const std::vector<IncludeRule>& rules,
           std::vector<std::string>& found) {
    const std::regex include{R"(^\s*#\s*include\s*([<"]([^>"]+)[>"]).*)"};
    std::string text;
    for (int line = 1; std::getline(source, text); ++line) {
        std::smatch match;
        if (text.find("include") == std::string::npos || !std::regex_match(text, match, include))
            continue;
        for (const IncludeRule& rule : rules)
            if (std::regex_match(name, rule.files) && std::regex_match(match[2].str(), rule.denied))
                found.push_back(name + ":" + std::to_string(line) + " includes " + match[1].str() +
                                ": " + rule.reason + ".");
    }
}

}  // namespace

std::vector<std::string> forbiddenIncludes(const std::filesystem::path& root) {
    const std::vector<IncludeRule> rules = allRules();
    std::vector<std::string> found;
    for (const std::string& name : sourcesBelow(root)) {
        std::ifstream source{root / name};
        judge(name, source, rules, found);
    }
    return found;
}

}  // namespace nettare
