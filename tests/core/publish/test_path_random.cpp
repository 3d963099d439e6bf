#include <array>
#include <catch2/catch.hpp>
#include <random>

#include "core/publish/number_text.h"
#include "core/publish/path.h"
#include "path_parser.h"
#include "random_recipe.h"

using namespace nettare;
using enum nettare::Component;
using kitchen::Served;

namespace {

constexpr int kPathRecipes = 1000;
constexpr std::array kComponents{ENERC_KCAL, ENERC_KJ, FAT, FATRN, WATER, SUGAD, NA, CHOCDF};
constexpr std::array kBases{Basis::Piece, Basis::Portion, Basis::Hundred, Basis::Batch};

/// The next recipe that has figures.
Served nextServed(RandomRecipes& recipes) {
    while (true) {
        try {
            return Served{recipes.next()};
        } catch (const std::runtime_error&) {
            continue;
        }
    }
}

/// Paths that were read back from their text, and the first that does not give its numbers.
struct Reread {
    int paths = 0, formulas = 0, given = 0;
    std::string wrong;
};

/// Steps that stand above others without a formula: only what is cut off at none.
int withoutFormula(const PathStep& step) {
    const bool computed = !step.below.empty() && step.formula.empty() &&
                          !step.value.starts_with("at least") &&
                          step.words.find("less than none counts as none") == std::string::npos;
    int count = computed ? 1 : 0;
    for (const PathStep& below : step.below) count += withoutFormula(below);
    return count;
}

void reread(const PathStep& path, const Figure& figure, Reread& all) {
    const std::string text = pathText(path);
    const std::string wrong = path_parser::firstWrongRow(path_parser::readPath(text), all.formulas);
    if (!wrong.empty() && all.wrong.empty()) all.wrong = wrong + "\n" + text;
    const int given = withoutFormula(path);
    if (given > 0) {
        printf("%s\n", text.c_str());
    }
    all.given += given;
    const std::string printed = path.value + " " + path.unit;
    if (!figureText(figure).starts_with(printed) && all.wrong.empty())
        all.wrong = "another figure: " + text;
    ++all.paths;
}

/// A row of the path whose number follows from others, as many as there are before it.
path_parser::Row* computedRow(path_parser::Row& row, int& before) {
    if (!row.formula.empty() && before-- == 0) return &row;
    for (path_parser::Row& below : row.below)
        if (path_parser::Row* found = computedRow(below, before)) return found;
    return nullptr;
}

}  // namespace

TEST_CASE("paths of 1,000 random recipes, read back, give their numbers", "[publish][path]") {
    RandomRecipes recipes{20261126, RandomRecipes::Draw::AllWays};
    Reread all;
    for (int i = 0; i < kPathRecipes; ++i) {
        const Served served = nextServed(recipes);
        const auto at = static_cast<std::size_t>(i);
        for (const Basis basis : {kBases[at % 4]}) {
            const auto figures = figuresPer(basis, served.dossier, served.cooked);
            REQUIRE(figures);
            for (const Component component : {kComponents[at / 4 % 8], kComponents[at / 2 % 8]})
                reread(pathOf(component, *figures, served.dossier, served.cooked),
                       (*figures)[component], all);
        }
    }
    INFO(all.wrong);
    CHECK(all.wrong.empty());
    CHECK(all.given == 0);
    CHECK(all.paths == 2 * kPathRecipes);
    CHECK(all.formulas > 20 * all.paths);
}

TEST_CASE("one wrong digit anywhere in a path is found", "[publish][path]") {
    RandomRecipes recipes{20261127, RandomRecipes::Draw::AllWays};
    std::mt19937 random{5};
    int planted = 0;
    for (int i = 0; i < 50; ++i) {
        const Served served = nextServed(recipes);
        const auto figures = figuresPer(Basis::Batch, served.dossier, served.cooked);
        REQUIRE(figures);
        const std::string text =
            pathText(pathOf(ENERC_KCAL, *figures, served.dossier, served.cooked));
        path_parser::Row path = path_parser::readPath(text);
        int formulas = 0;
        CHECK(path_parser::firstWrongRow(path, formulas).empty());
        for (int digit = 0; digit < 5; ++digit) {
            path_parser::Row wrong = path;
            int before = static_cast<int>(random() % static_cast<unsigned>(formulas));
            path_parser::Row* row = computedRow(wrong, before);
            REQUIRE(row != nullptr);
            path_parser::Rational step = 1;
            for (int d = 0; d < row->value.decimals; ++d) step /= 10;
            row->value.value += step;
            int counted = 0;
            CHECK_FALSE(path_parser::firstWrongRow(wrong, counted).empty());
            ++planted;
        }
    }
    CHECK(planted == 250);
}

TEST_CASE("the reader of paths computes what is printed", "[publish][path]") {
    using path_parser::evaluated;
    using path_parser::Rational;
    CHECK(evaluated("353.4 g × 85.0 kcal / 100 g") == Rational(30039, 100));
    CHECK(evaluated("13\u202F503.2 kJ / 10 little cakes") == Rational(135032, 100));
    CHECK(evaluated("−(1.2 g + 3.4 g) / 2") == Rational(-23, 10));
    CHECK(evaluated("500 g × (100 − 28) / 100") == 360);
    CHECK(evaluated("1.35 g/ml × 2 us pint, rounded up") == Rational(27, 10));
    CHECK_THROWS(evaluated("12 g × "));
    CHECK_THROWS(evaluated("(1 + 2"));
}
