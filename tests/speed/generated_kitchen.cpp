#include "generated_kitchen.h"

#include <fmt/core.h>

#include <cstdlib>
#include <map>
#include <random>
#include <string>

#include "core/recipe/read_recipe.h"

namespace nettare {

namespace {

constexpr std::size_t kFoods = 40;

enum class LineKind { Bowl, Own, Series, Label, Table, Density, Written, Count };

LineKind kindOf(std::size_t line) {
    return static_cast<LineKind>(line % kFoods % static_cast<std::size_t>(LineKind::Count));
}

TableFood generatedFood(const TableRow& row) {
    TableFood food;
    food.row = row;
    food.name = "food " + row.number;
    std::mt19937 random{static_cast<std::mt19937::result_type>(std::stoul(row.number))};
    for (const ComponentFacts& facts : allComponents()) {
        const double value = 0.5 + static_cast<double>(random() % 10000) / 1000;
        food.profile.per100g[indexOf(facts.component)] = value;
        food.profile.spread[indexOf(facts.component)] = {value / 20, 4, {}};
    }
    food.factors = {6.25, 2.44, 8.37, 3.57};
    food.measures = {{1, "cup", "", 120, 6, 8.0}, {1, "piece", "large", 35, 0, {}}};
    return food;
}

/// Puts a document together list by list; a scale of 1 g that is off by a thousandth at most.
class DocumentText {
public:
    void line(std::size_t i) {
        std::string how;
        switch (kindOf(i)) {
            case LineKind::Bowl:
                how = R"("amount":"1","piece":"piece",)" + weighedInBowl(i);
                break;
            case LineKind::Own:
                reading(fmt::format("own-{}", i), 40 + i, "zero");
                how = fmt::format(R"("amount":"1","piece":"piece","weighed":["own-{}"])", i);
                break;
            case LineKind::Series:
                how = R"("amount":"4","piece":"piece",)" + series(i);
                break;
            case LineKind::Label:
                how = R"("amount":"2","unit":"tbsp")";
                break;
            case LineKind::Table:
                how = R"("amount":"1/2","unit":"cup")";
                break;
            case LineKind::Density:
                how = R"("amount":"80","unit":"ml")";
                break;
            default:
                how = R"("amount":"75","unit":"g")";
        }
        append(lines_, fmt::format(R"({{"id":"l{0}","food":"f{1}",{2}}})", i, i % kFoods, how));
        if (i % 5 == 0) append(mixture_, fmt::format(R"("l{}")", i));
    }

    void food(std::size_t i) {
        const char* label =
            kindOf(i) == LineKind::Label
                ? R"(,"label":{"rules":"us","serving_grams":"15","serving":{"amount":"1","unit":"tbsp"},"declares":[{"component":"ENERC_KCAL","printed":"60"},{"component":"FAT","printed":"3"}]})"
                : "";
        append(foods_, fmt::format(R"({{"id":"f{0}","name":"food {0}","table":)"
                                   R"({{"table":"invented","release":"1","number":"{0}"}}{1}}})",
                                   i, label));
    }

    /// A line that is a kept recipe.
    void kept(const std::string& name, const std::string& amount) {
        append(foods_, fmt::format(R"({{"id":"{0}","name":"{0}","recipe":"{0}"}})", name));
        append(lines_, fmt::format(R"({{"id":"{0}","food":"{0}",{1}}})", name, amount));
    }

    /// Without grams the dish was not weighed.
    [[nodiscard]] std::string text(std::size_t dishGrams) {
        reading("left", 24, "zero");
        if (dishGrams > 0) reading("dish", dishGrams, "zero");
        return fmt::format(
            R"({{"format":"nettare recipe","version":1,"title":"Generated","measures":"us",)"
            R"("makes":{{"pieces":"12","piece":"piece","plural":"pieces"}},)"
            R"("portion":{{"pieces":"2"}},"scales":[{{"id":"scale","name":"scale","unit":"g",)"
            R"("readability":"1","calibration":"0.001"}}],"indications":[{}],"readings":[{}],)"
            R"("series":[{}],"foods":[{}],"lines":[{}],"residues":[{{"mixture":[{}],)"
            R"("readings":["left"]}}]{}}})",
            indications_, readings_, series_, foods_, lines_, mixture_,
            dishGrams > 0 ? R"(,"cooked":{"readings":["dish"]})" : "");
    }

private:
    static void append(std::string& list, const std::string& item) {
        (list += list.empty() ? "" : ",") += item;
    }

    void indication(const std::string& id, std::size_t shown) {
        append(indications_,
               fmt::format(R"({{"id":"{}","scale":"scale","shown":"{}","state":"edible portion"}})",
                           id, shown));
    }

    void reading(const std::string& id, std::size_t shown, const std::string& tare) {
        indication(id, shown);
        append(readings_, fmt::format(R"({{"id":"{0}","gross":"{0}","tare":"{1}"}})", id, tare));
    }

    /// Each net is what came into the bowl since the line before.
    std::string weighedInBowl(std::size_t i) {
        const std::string before = bowl_;
        bowl_ = fmt::format("bowl-{}", i);
        bowlShown_ += 60 + i;
        reading(bowl_, bowlShown_, before);
        return fmt::format(R"("weighed":["{}"])", bowl_);
    }

    std::string series(std::size_t i) {
        std::string ids;
        for (std::size_t n = 0; n < 5; ++n) {
            const std::string id = fmt::format("series-{}-{}", i, n);
            reading(id, 20 + i + n, "zero");
            append(ids, '"' + id + '"');
        }
        append(series_, fmt::format(R"({{"id":"series-{0}","name":"series {0}","of":"piece",)"
                                    R"("kind":"per piece","readings":[{1}]}})",
                                    i, ids));
        return fmt::format(R"("series":{{"id":"series-{}","use":"others"}})", i);
    }

    std::string indications_ = R"({"id":"zero","scale":"scale","shown":"0","state":"empty"},)"
                               R"({"id":"bowl","scale":"scale","shown":"300","state":"empty"})";
    std::string readings_, series_, foods_, lines_, mixture_;
    std::string bowl_ = "bowl";
    std::size_t bowlShown_ = 300;
};

[[noreturn]] void giveUp(const Error& error) {
    fmt::print(stderr, "the generated recipe is wrong at {}\n", error.pointer);
    std::exit(1);
}

RecipeDocument documentOf(const std::string& text) {
    auto document = readRecipeText(text);
    if (!document) giveUp(document.error());
    return std::move(*document);
}

/// So many lines from a number on, with their foods.
DocumentText linesOf(std::size_t first, std::size_t count) {
    DocumentText document;
    for (std::size_t i = first; i < first + count; ++i) {
        document.food(i % kFoods);
        document.line(i);
    }
    return document;
}

Dossier resolved(const std::string& text, const std::map<std::string, std::string>& kept) {
    const FoodLookup foods = [](const TableRow& row) -> Result<std::optional<TableFood>> {
        return std::optional{generatedFood(row)};
    };
    const RecipeLookup recipes = [&](const std::string& name, const std::string&) {
        return Result<LoadedRecipe>{LoadedRecipe{name, documentOf(kept.at(name))}};
    };
    auto dossier = makeDossier({"generated", documentOf(text)}, foods, recipes);
    if (!dossier) giveUp(dossier.error());
    return std::move(*dossier);
}

}  // namespace

Dossier generatedDossier(std::size_t lines) {
    DocumentText document;
    for (std::size_t i = 0; i < kFoods; ++i) document.food(i);
    for (std::size_t i = 0; i < lines; ++i) document.line(i);
    return resolved(document.text(1900), {});
}

Dossier nestedDossier(bool weighed) {
    constexpr auto kWhole = R"("amount":"1","piece":"batch")";
    constexpr auto kByWeight = R"("amount":"250","unit":"g")";
    const auto grams = [&](std::size_t dish) { return weighed ? dish : 0; };
    DocumentText dish = linesOf(0, 10);
    DocumentText sauce = linesOf(10, 10);
    DocumentText filling = linesOf(20, 10);
    DocumentText stock = linesOf(30, 15);
    DocumentText paste = linesOf(45, 15);
    dish.kept("sauce", kByWeight);
    dish.kept("filling", kWhole);
    sauce.kept("stock", kWhole);
    filling.kept("paste", kByWeight);
    return resolved(dish.text(grams(1300)), {{"sauce", sauce.text(grams(900))},
                                             {"filling", filling.text(grams(600))},
                                             {"stock", stock.text(grams(550))},
                                             {"paste", paste.text(grams(600))}});
}

}  // namespace nettare
