#pragma once

#include <stdexcept>
#include <string>
#include <vector>

#include "core/nutrition/figures.h"
#include "core/recipe/read_recipe.h"
#include "core/support/json.h"

namespace kitchen {

using namespace nettare;

/// Rows of USDA SR28 (September 2015) that tests use, with the values printed there.
inline TableFood row(const std::string& number, const std::string& name) {
    TableFood food;
    food.row = {"usda-sr", "28", number};
    food.name = name;
    return food;
}

inline void set(TableFood& food, Component component, double per100g) {
    food.profile.per100g[indexOf(component)] = per100g;
}

/// 11957 fennel bulb, raw: 31 kcal, 234 g a bulb, 87 g a cup sliced; factors 2.44, 8.37, 3.57.
inline TableFood fennel() {
    using enum Component;
    TableFood food = row("11957", "fennel bulb, raw");
    const std::pair<Component, double> values[] = {
        {ENERC_KCAL, 31}, {ENERC_KJ, 129}, {WATER, 90.21}, {ASH, 1.05}, {PROCNT, 1.24}, {FAT, 0.20},
        {CHOCDF, 7.30},   {FIBTG, 3.1},    {SUGAR, 3.93},  {NA, 52},    {ALC, 0}};
    for (const auto& [component, value] : values) set(food, component, value);
    food.factors = {6.25, 2.44, 8.37, 3.57};
    food.refusePercent = 28;
    food.plant = true;
    food.measures = {{1, "cup", "sliced", 87, 0, {}}, {1, "bulb", "", 234, 0, {}}};
    return food;
}

/// 04053 olive oil: 884 kcal, tbsp 13.5 g, cup 216 g; fat factor 8.84; no trans fat value.
inline TableFood oliveOil() {
    using enum Component;
    TableFood food = row("04053", "olive oil");
    const std::pair<Component, double> values[] = {
        {ENERC_KCAL, 884}, {ENERC_KJ, 3699}, {WATER, 0},     {ASH, 0},       {PROCNT, 0},
        {FAT, 100},        {FASAT, 13.808},  {FAMS, 72.961}, {FAPU, 10.523}, {CHOCDF, 0},
        {FIBTG, 0},        {SUGAR, 0},       {NA, 2},        {ALC, 0}};
    for (const auto& [component, value] : values) set(food, component, value);
    food.factors = {0.0, {}, 8.84, {}};
    food.refusePercent = 0;
    food.measures = {
        {1, "tbsp", "", 13.5, 0, {}}, {1, "cup", "", 216, 0, {}}, {1, "tsp", "", 4.5, 0, {}}};
    return food;
}

/// 19335 granulated sugar, shortened: all of its sugars are added.
inline TableFood sugar() {
    using enum Component;
    TableFood food = row("19335", "sugar");
    set(food, ENERC_KCAL, 387);
    set(food, CHOCDF, 99.98);
    set(food, SUGAR, 99.80);
    food.profile.spread[indexOf(SUGAR)] = {0.1, 4, {}};
    food.addedSugars = {AddedSugarKind::AllOfItsSugars, 0, "it is sugar"};
    food.measures = {{1, "tsp", "", 4.2, 10, 0.3}};
    return food;
}

/// A document put together member by member; invented readings.
class Kitchen {
public:
    Kitchen() {
        document_.set("format", Json{kRecipeFormat}).set("version", Json{1.0});
        document_.set("title", Json{"Test dish"}).set("measures", Json{"us"});
        json("makes", R"({"pieces":"10","piece":"piece","plural":"pieces"})");
        json("portion", R"({"pieces":"2"})");
        append("scales", R"({"id":"scale","name":"scale","unit":"g","readability":"1"})");
        append("scales", R"({"id":"fine","name":"fine scale","unit":"g","readability":"0.1"})");
        append("indications", R"({"id":"zero","scale":"scale","shown":"0","state":"empty"})");
        append("indications", R"({"id":"fine-zero","scale":"fine","shown":"0.0","state":"empty"})");
        tableFood("fennel", "11957").tableFood("oil", "04053").tableFood("sugar", "19335");
    }

    Kitchen& json(const std::string& key, const std::string& text) {
        document_.set(key, *parseJson(text));
        return *this;
    }
    Kitchen& append(const std::string& key, const std::string& text) {
        Json list = document_.find(key) != nullptr ? *document_.find(key) : Json::array();
        list.append(*parseJson(text));
        document_.set(key, std::move(list));
        return *this;
    }
    Kitchen& tableFood(const std::string& id, const std::string& number) {
        return append("foods", R"({"id":")" + id + R"(","name":")" + id +
                                   R"(","table":{"table":"usda-sr","release":"28","number":")" +
                                   number + R"("}})");
    }
    Kitchen& line(const std::string& text) { return append("lines", text); }
    /// A reading of that net on an empty scale; its gross indication has the same id.
    Kitchen& reading(const std::string& id, const std::string& net, const std::string& more = "",
                     const std::string& state = "edible portion",
                     const std::string& scale = "scale") {
        append("indications", R"({"id":")" + id + R"(","scale":")" + scale + R"(","shown":")" +
                                  net + R"(","state":")" + state + R"("})");
        const std::string zero = scale == "fine" ? "fine-zero" : "zero";
        return append("readings", R"({"id":")" + id + R"(","gross":")" + id + R"(","tare":")" +
                                      zero + "\"" + more + "}");
    }

    /// A row of the table beside those above, and the food of that id that it is.
    Kitchen& row(const std::string& id, TableFood food) {
        const std::string number = food.row.number;
        rows_.push_back(std::move(food));
        return tableFood(id, number);
    }

    /// Other documents that this one's foods may name as kept recipes.
    Kitchen& kept(const std::string& file, const Kitchen& other) {
        kept_.emplace_back(file, other.document_);
        return *this;
    }

    /// Those that another kitchen may name, too.
    Kitchen& keptOf(const Kitchen& other) {
        kept_.insert(kept_.end(), other.kept_.begin(), other.kept_.end());
        return *this;
    }

    [[nodiscard]] const Json& document() const { return document_; }

    [[nodiscard]] Result<Dossier> dossier() const {
        auto read = readRecipe(document_);
        if (!read) return fail(read.error());
        const FoodLookup foods =
            [this](const TableRow& wanted) -> Result<std::optional<TableFood>> {
            for (const TableFood& food : {fennel(), oliveOil(), sugar()})
                if (food.row == wanted) return std::optional{food};
            for (const TableFood& food : rows_)
                if (food.row == wanted) return std::optional{food};
            return std::optional<TableFood>{};
        };
        const RecipeLookup recipes = [this](const std::string& reference,
                                            const std::string&) -> Result<LoadedRecipe> {
            for (const auto& [file, json] : kept_)
                if (file == reference) return LoadedRecipe{file, *readRecipe(json)};
            return fail(Error{ErrorCode::FileNotReadable}.with("found", reference));
        };
        return makeDossier({"main", std::move(*read)}, foods, recipes);
    }

private:
    Json document_;
    std::vector<std::pair<std::string, Json>> kept_;
    std::vector<TableFood> rows_;
};

/// What a test looks at; throws with the error's code where the kitchen is wrong.
struct Served {
    Dossier dossier;
    Cooked cooked;

    explicit Served(const Kitchen& kitchen)
        : dossier{orThrow(kitchen.dossier())}, cooked{orThrow(cook(dossier))} {}

    [[nodiscard]] Figure figure(Basis basis, Component component) const {
        return orThrow(figuresPer(basis, dossier, cooked))[component];
    }
    [[nodiscard]] const OpenWay& way(std::size_t line) const {
        return cooked.lines[line].ways.way();
    }

    template <class T>
    static T orThrow(Result<T> result) {
        if (!result)
            throw std::runtime_error("error " +
                                     std::to_string(static_cast<int>(result.error().code)) +
                                     " at " + result.error().pointer);
        return std::move(*result);
    }
};

}  // namespace kitchen
