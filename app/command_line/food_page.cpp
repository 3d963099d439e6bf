#include "app/command_line/food_page.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "app/command_line/value_spread.h"
#include "core/nutrition/student_t.h"
#include "core/publish/measure_text.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

/// A member with the text, where there is one.
void setText(Json& json, const char* key, const std::string& text) {
    if (!text.empty()) json.set(key, Json{text});
}

void setNumber(Json& json, const char* key, const std::optional<double>& number) {
    if (number) json.set(key, Json{*number});
}

/// Decimals that show three significant digits, six at most.
int decimalsOf(double value) {
    int decimals = 0;
    constexpr double kThreeDigits = 100;
    constexpr int kMost = 6;
    for (double scaled = std::fabs(value); scaled > 0 && scaled < kThreeDigits && decimals < kMost;
         scaled *= 10)
        ++decimals;
    return decimals;
}

int decimalsOf(const FoodValue& value) {
    const auto component = componentNamed(value.tagname);
    const int own = component ? factsOf(*component).decimals : 0;
    return value.per100g == 0 ? own : std::max(own, decimalsOf(value.per100g));
}

std::string countText(int n) {
    return n > 0 ? fmt::format("n {}", n) : std::string{};
}

std::string refuseText(const TableFood& food) {
    if (!food.refusePercent) return "no data";
    const std::string note = food.refuseNote.empty() ? "" : ": " + food.refuseNote;
    return shortNumber(*food.refusePercent) + " %" + note;
}

std::string factorText(const std::optional<double>& factor) {
    return factor ? numberText(*factor) : std::string{"no data"};
}

std::string factorsText(const ConversionFactors& factors) {
    return fmt::format("nitrogen to protein {}; kcal per g of protein {}, fat {}, carbohydrate {}",
                       factorText(factors.nitrogen), factorText(factors.protein),
                       factorText(factors.fat), factorText(factors.carbohydrate));
}

std::string measureRow(const HouseholdMeasure& measure) {
    std::string row = "  " + measureText(measure);
    if (measure.standardDeviation && measure.n >= 2) {
        const double half = coverageFactor(measure.n - 1.0) * *measure.standardDeviation;
        row += " " + halfWidthText(measure.grams < 10 ? 1 : 0, half);
    }
    if (measure.n > 0) row += "  " + countText(measure.n);
    return row + '\n';
}

std::string howKnown(const FoodValue& value) {
    if (value.derivation.empty() || value.source.empty()) return value.derivation + value.source;
    return value.derivation + "; " + value.source;
}

std::string valueRow(const FoodValue& value, const Profile& profile) {
    const int decimals = decimalsOf(value);
    const auto spread = spreadOf(value, profile);
    const std::string within =
        spread ? halfWidthText(decimals, spread->halfWidth()) : std::string{};
    std::string row = fmt::format("  {:<11}{:<38}{:>9} {:<5}{:<11}{:<9}{:<7}{}", value.tagname,
                                  value.name, numberAt(decimals, value.per100g), value.unit, within,
                                  spread && spread->assumed ? "assumed" : "", countText(value.n),
                                  howKnown(value));
    row.erase(row.find_last_not_of(' ') + 1);
    return row + '\n';
}

/// The program's components that the row has no value of.
std::vector<ComponentFacts> missing(const Profile& profile) {
    std::vector<ComponentFacts> without;
    for (const ComponentFacts& facts : allComponents())
        if (!profile[facts.component]) without.push_back(facts);
    return without;
}

Json measureJson(const HouseholdMeasure& measure) {
    Json json = Json::object();
    json.set("amount", Json{measure.amount}).set("unit", Json{measure.unit});
    setText(json, "qualifier", measure.qualifier);
    json.set("grams", Json{measure.grams});
    if (measure.n > 0) json.set("n", Json{static_cast<double>(measure.n)});
    setNumber(json, "standard_deviation_g", measure.standardDeviation);
    return json;
}

Json valueJson(const FoodValue& value, const Profile& profile) {
    Json json = Json::object();
    setText(json, "tagname", value.tagname);
    setText(json, "number", value.number);
    json.set("name", Json{value.name}).set("unit", Json{value.unit});
    json.set("per_100g", Json{value.per100g});
    setNumber(json, "standard_error", value.standardError);
    if (value.n > 0) json.set("n", Json{static_cast<double>(value.n)});
    if (const auto spread = spreadOf(value, profile)) {
        json.set("u", Json{spread->u}).set("nu", Json{spread->freedom});
        if (spread->assumed) json.set("assumed", Json{true});
    }
    setText(json, "derivation", value.derivation);
    setText(json, "source", value.source);
    return json;
}

}  // namespace

std::string foodText(const FoodPage& page) {
    const TableFood& food = page.food;
    std::string text = fmt::format("{}\n", food.name);
    text += fmt::format("{:<9}{}, {}\n", "from", food.row.text(), page.citation);
    text += fmt::format("{:<9}{}\n", "group", food.group);
    for (const std::string& name : food.otherNames) text += fmt::format("{:<9}{}\n", "also", name);
    text += fmt::format("{:<9}{}\n", "refuse", refuseText(food));
    text += fmt::format("{:<9}{}\n", "factors", factorsText(food.factors));
    text += food.measures.empty() ? "No household measure.\n" : "Measures\n";
    for (const HouseholdMeasure& measure : food.measures) text += measureRow(measure);
    text += "Per 100 g edible portion, ± for 95 % of single lots\n";
    for (const FoodValue& value : page.values) text += valueRow(value, food.profile);
    const auto without = missing(food.profile);
    if (without.empty()) return text;
    std::string names;
    for (const ComponentFacts& facts : without)
        names += fmt::format("{}{}", names.empty() ? "" : ", ", facts.name);
    return text + "No data: " + names + ".\n";
}

Json foodJson(const FoodPage& page) {
    const TableFood& food = page.food;
    Json row = Json::object();
    row.set("table", Json{food.row.table}).set("release", Json{food.row.release});
    row.set("number", Json{food.row.number});
    Json factors = Json::object();
    setNumber(factors, "nitrogen", food.factors.nitrogen);
    setNumber(factors, "protein_kcal_per_g", food.factors.protein);
    setNumber(factors, "fat_kcal_per_g", food.factors.fat);
    setNumber(factors, "carbohydrate_kcal_per_g", food.factors.carbohydrate);
    Json names = Json::array(), measures = Json::array(), values = Json::array();
    for (const std::string& name : food.otherNames) names.append(Json{name});
    for (const HouseholdMeasure& measure : food.measures) measures.append(measureJson(measure));
    for (const FoodValue& value : page.values) values.append(valueJson(value, food.profile));
    Json noData = Json::array();
    for (const ComponentFacts& facts : missing(food.profile))
        noData.append(Json{std::string{facts.tagname}});
    Json json = Json::object();
    json.set("row", std::move(row)).set("name", Json{food.name}).set("group", Json{food.group});
    json.set("other_names", std::move(names)).set("citation", Json{page.citation});
    setNumber(json, "refuse_percent", food.refusePercent);
    setText(json, "refuse_note", food.refuseNote);
    json.set("factors", std::move(factors)).set("measures", std::move(measures));
    return json.set("values", std::move(values)).set("no_data", std::move(noData));
}

}  // namespace nettare
