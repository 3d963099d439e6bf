#include "honest_labels.h"

#include <catch2/catch.hpp>

#include "core/label/us_serving.h"
#include "core/support/text.h"

#include "lawful_eu_prints.h"
#include "lawful_prints.h"

#include <charconv>
#include <cmath>
#include <fstream>
#include <map>

namespace nettare {

namespace {

using StarterRows = std::map<std::string, std::map<std::string, std::string>>;

/// A table of the starter by its number and the names in its header.
StarterRows starterRows(const std::string& fileName) {
    std::ifstream file{NETTARE_RESOURCES "/starter/" + fileName};
    StarterRows rows;
    std::vector<std::string> header;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line.front() == '#') continue;
        const auto fields = split(line, '|');
        if (header.empty()) {
            header.assign(fields.begin(), fields.end());
            continue;
        }
        REQUIRE(fields.size() == header.size());
        for (std::size_t i = 0; i < fields.size(); ++i)
            rows[std::string{fields.front()}][header[i]] = fields[i];
    }
    REQUIRE(rows.size() > 500);
    return rows;
}

/// NaN where the table has a dash.
double published(const std::map<std::string, std::string>& row, const std::string& column) {
    const std::string& text = row.at(column);
    double value = std::nan("");
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

/// Some part is missing where this is NaN; trans fat and alcohol then count as none.
FoodMakeup compositionOf(const std::map<std::string, std::string>& food,
                         const std::map<std::string, std::string>& values) {
    const auto value = [&](const char* tagname) { return published(values, tagname); };
    const auto orNone = [](double number) { return std::isnan(number) ? 0 : number; };
    FoodMakeup made;
    made.name = food.at("name");
    made.protein = value("PROCNT");
    made.fat = value("FAT");
    made.saturates = value("FASAT");
    made.trans = orNone(value("FATRN"));
    // A label counts the cis acids alone; the table has trans ones among the others.
    made.mono = std::max(value("FAMS") - made.trans, 0.0);
    made.poly = value("FAPU");
    made.carbohydrate = value("CHOCDF");
    made.fibre = value("FIBTG");
    made.sugars = value("SUGAR");
    made.alcohol = orNone(value("ALC"));
    made.cholesterol = value("CHOLE");
    made.sodium = value("NA");
    made.ownEnergy = published(food, "protein_kcal_per_g") * made.protein +
                     published(food, "fat_kcal_per_g") * made.fat +
                     published(food, "carbohydrate_kcal_per_g") * made.carbohydrate +
                     6.93 * made.alcohol;
    return made;
}

bool isComplete(const FoodMakeup& made) {
    return !std::isnan(made.ownEnergy + made.saturates + made.mono + made.poly + made.fibre +
                       made.sugars + made.cholesterol + made.sodium);
}

bool partsFit(const FoodMakeup& made) {
    return made.sugars + made.fibre <= made.carbohydrate &&
           made.saturates + made.trans + made.mono + made.poly <= made.fat;
}

/// From 0 up to, and not including, 1.
double share(std::mt19937& random) {
    return static_cast<double>(random()) / 4294967296.0;
}

std::string oneOf(const std::set<std::string>& texts, std::mt19937& random) {
    REQUIRE_FALSE(texts.empty());
    return *std::next(texts.begin(), static_cast<std::ptrdiff_t>(random() % texts.size()));
}

std::string usPrint(Component component, double amount, std::mt19937& random) {
    return oneOf(lawfulPrints(component, std::llround(amount * 1e3)), random);
}

std::string euPrint(const LabelLine& line, double amount, std::mt19937& random) {
    return oneOf(lawfulEuPrints(line, std::llround(amount * 1e6)), random);
}

}  // namespace

FoodMakeup FoodMakeup::times(double factor) const {
    FoodMakeup made = *this;
    for (double* part : {&made.protein, &made.fat, &made.saturates, &made.trans, &made.mono,
                         &made.poly, &made.carbohydrate, &made.fibre, &made.sugars, &made.alcohol,
                         &made.cholesterol, &made.sodium, &made.ownEnergy})
        *part *= factor;
    return made;
}

const std::vector<FoodMakeup>& starterMakeups() {
    static const std::vector<FoodMakeup> all = [] {
        const StarterRows foods = starterRows("foods.txt");
        const StarterRows values = starterRows("components.txt");
        std::vector<FoodMakeup> made;
        for (const auto& [number, food] : foods) {
            const FoodMakeup row = compositionOf(food, values.at(number));
            const bool powder = row.name.starts_with("baking powder");
            if (isComplete(row) && partsFit(row) && !powder) made.push_back(row);
        }
        return made;
    }();
    return all;
}

FoodMakeup randomMakeup(std::mt19937& random) {
    const auto& all = starterMakeups();
    FoodMakeup mixture;
    const auto ingredients = 1 + random() % 3;
    double rest = 1;
    for (std::size_t i = 0; i < ingredients; ++i) {
        const double part = i + 1 == ingredients ? rest : rest * share(random);
        const FoodMakeup one = all[random() % all.size()].times(part);
        rest -= part;
        mixture.name += (i == 0 ? "" : " + ") + one.name;
        mixture.protein += one.protein;
        mixture.fat += one.fat;
        mixture.saturates += one.saturates;
        mixture.trans += one.trans;
        mixture.mono += one.mono;
        mixture.poly += one.poly;
        mixture.carbohydrate += one.carbohydrate;
        mixture.fibre += one.fibre;
        mixture.sugars += one.sugars;
        mixture.alcohol += one.alcohol;
        mixture.cholesterol += one.cholesterol;
        mixture.sodium += one.sodium;
        mixture.ownEnergy += one.ownEnergy;
    }
    return mixture;
}

double energyOf(const FoodMakeup& food, EnergyMethod method, std::mt19937& random) {
    const double alcohol = 7 * food.alcohol;
    switch (method) {
        case EnergyMethod::OwnFactors:
            return food.ownEnergy;
        case EnergyMethod::FourFourNine:
            return 4 * food.protein + 4 * food.carbohydrate + 9 * food.fat + alcohol;
        case EnergyMethod::WithoutFibre:
            return 4 * food.protein + 4 * (food.carbohydrate - food.fibre) +
                   2 * share(random) * food.fibre + 9 * food.fat + alcohol;
        case EnergyMethod::Bomb:
            return (5.65 - 1.25) * food.protein + 4.15 * food.carbohydrate + 9.4 * food.fat +
                   alcohol;
    }
    return 0;
}

LabelFacts honestUsLabel(const FoodMakeup& per100g, double grams, EnergyMethod method,
                         std::mt19937& random) {
    const FoodMakeup food = per100g.times(grams / 100);
    using enum Component;
    LabelFacts label;
    label.servingSize = Decimal::read(*usServingMetricText(grams));
    const auto add = [&](Component component, double amount) {
        label.amounts.push_back({component, usPrint(component, amount, random)});
    };
    add(ENERC_KCAL, energyOf(food, method, random));
    add(FAT, food.fat);
    add(FASAT, food.saturates);
    add(FATRN, food.trans);
    if (random() % 2 == 0) {
        add(FAPU, food.poly);
        add(FAMS, food.mono);
    }
    add(CHOLE, food.cholesterol);
    add(NA, food.sodium);
    add(CHOCDF, food.carbohydrate);
    // From 1 g on the law asks for the line.
    if (food.fibre >= 1 || random() % 2 == 0) add(FIBTG, food.fibre);
    add(SUGAR, food.sugars);
    add(SUGAD, food.sugars * share(random));
    add(PROCNT, food.protein);
    if (food.alcohol > 0) label.amounts.push_back({ALC, std::to_string(std::lround(food.alcohol))});
    return label;
}

namespace {

/// A drink of 1 g a millilitre.
void setInMillilitres(LabelFacts& label) {
    label.per = LabelPer::HundredMillilitres;
    label.density = LabelDensity{Decimal{1, 0}, Decimal{}};
}

}  // namespace

LabelFacts honestEuLabel(const FoodMakeup& food, bool withFibre, std::mt19937& random) {
    using enum Component;
    const double available = food.carbohydrate - food.fibre;
    LabelFacts label;
    label.rules = LabelRules::Eu;
    label.per = LabelPer::HundredGrams;
    const auto add = [&](const LabelLine& line, double amount) {
        label.amounts.push_back({line, euPrint(line, amount, random)});
    };
    add(ENERC_KJ,
        37 * food.fat + 17 * available + 8 * food.fibre + 17 * food.protein + 29 * food.alcohol);
    add(ENERC_KCAL,
        9 * food.fat + 4 * available + 2 * food.fibre + 4 * food.protein + 7 * food.alcohol);
    add(FAT, food.fat);
    add(FASAT, food.saturates);
    add(LabelOnly::CHOAVL, available);
    add(SUGAR, food.sugars);
    if (withFibre) add(FIBTG, food.fibre);
    add(PROCNT, food.protein);
    add(LabelOnly::NACL, food.sodium * 2.5 / 1000);
    if (random() % 2 == 0) add(NA, food.sodium);
    if (food.alcohol <= 0) return label;
    // No law asks for the line: half of them leave it out, as drinks do.
    if (random() % 2 == 0)
        label.amounts.push_back({ALC, Decimal{std::lround(food.alcohol * 10), -1}.text()});
    else if (food.fat >= 0.9 || food.protein >= 0.9)
        setInMillilitres(label);
    return label;
}

}  // namespace nettare
