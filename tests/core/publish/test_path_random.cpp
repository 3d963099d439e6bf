#include <catch2/catch.hpp>

#include "core/publish/number_text.h"
#include "core/publish/path.h"
#include "path_parser.h"
#include "random_recipe.h"

using namespace nettare;
using enum nettare::Component;
using kitchen::Served;

namespace {

constexpr int kRecipes = 1000;
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

}  // namespace

TEST_CASE("paths of 1,000 random recipes, read back, give their numbers", "[publish][path]") {
    RandomRecipes recipes{20261126};
    Reread all;
    for (int i = 0; i < kRecipes; ++i) {
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
    CHECK(all.paths == 2 * kRecipes);
    CHECK(all.formulas > 20 * all.paths);
}
