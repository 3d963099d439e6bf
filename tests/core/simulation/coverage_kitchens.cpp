#include "coverage_kitchens.h"

#include <cmath>

#include "core/label/us_rounding.h"
#include "kitchen.h"

namespace nettare {

namespace {

constexpr int kPods = 6;
constexpr int kLots = 8;           ///< that the table's mean is of
constexpr double kPodGrams = 40;   ///< mean of all pods there are
constexpr double kSodium = 250;    ///< mg per 100 g, mean of all lots
constexpr double kFineStep = 0.1;  ///< grams, of the scale

struct Spreads {
    double pod, lot;  ///< relative
};

Spreads spreadsOf(Dominated dominated) {
    switch (dominated) {
        case Dominated::BySeries:
            return {0.12, 0.01};
        case Dominated::ByTable:
            return {0.02, 0.12};
        case Dominated::ByLabel:
            return {0.02, 0.02};
    }
    return {};
}

Decimal shownOn(double grams) {
    return roundedToStep(Decimal::fromDouble(grams), {1, -1});
}

kitchen::Kitchen kitchenOf(Dominated dominated, int readings) {
    kitchen::Kitchen kitchen;
    TableFood pods = kitchen::row("1", "pods");
    kitchen::set(pods, Component::NA, kSodium);
    kitchen.row("pods", pods);
    std::string ids;
    for (int i = 0; i < readings; ++i) {
        const std::string id = "pod-" + std::to_string(i);
        kitchen.reading(id, "40.0", "", "edible portion", "fine");
        ids += (i == 0 ? "\"" : ",\"") + id + "\"";
    }
    kitchen.append("series", R"({"id":"pods","name":"pods","kind":"per piece","of":"pod",)"
                             R"("readings":[)" +
                                 ids + "]}");
    kitchen.line(R"({"id":"pods","amount":"6","piece":"pod","food":"pods",)"
                 R"("series":{"id":"pods","use":"others"}})");
    if (dominated != Dominated::ByLabel) return kitchen;
    kitchen.append("foods", R"({"id":"paste","name":"paste","label":{"rules":"us",
        "serving_grams":"15","serving":{"amount":"1","unit":"tbsp"},"declares":[
        {"component":"NA","printed":"150"}]}})");
    kitchen.reading("paste", "150.0", "", "edible portion", "fine");
    return kitchen.line(
        R"({"id":"paste","amount":"1","piece":"lot","food":"paste","weighed":["paste"]})");
}

}  // namespace

std::string nameOf(Dominated dominated) {
    switch (dominated) {
        case Dominated::BySeries:
            return "series";
        case Dominated::ByTable:
            return "table";
        case Dominated::ByLabel:
            return "label";
    }
    return {};
}

CoverageKitchens::CoverageKitchens(Dominated dominated, int readings, std::uint32_t seed)
    : dominated_{dominated},
      readings_{readings},
      draws_{seed,
             static_cast<std::uint64_t>(readings) * 3 + static_cast<std::uint64_t>(dominated)},
      dossier_{*kitchenOf(dominated, readings).dossier()} {}

double CoverageKitchens::normal(double mean, double deviation) {
    double value = 0;
    draws_.normals({&value, 1});
    return mean + deviation * value;
}

double CoverageKitchens::uniform(double low, double high) {
    double value = 0;
    draws_.uniforms({&value, 1});
    return low + (high - low) * value;
}

/// Shows the pods of the series on a scale that shows nothing as 0; true grams of the others.
double CoverageKitchens::drawPods() {
    const double spread = kPodGrams * spreadsOf(dominated_).pod;
    const double empty = uniform(-kFineStep / 2, kFineStep / 2);
    for (const std::size_t reading : dossier_.series.front().readings)
        dossier_.indications[dossier_.readings[reading].gross].shown =
            shownOn(normal(kPodGrams, spread) + empty);
    double others = 0;
    for (int pod = 0; pod < kPods; ++pod) others += normal(kPodGrams, spread);
    return others;
}

/// Publishes mean and standard error of some lots; true mg per gram of the lot that is cooked.
double CoverageKitchens::drawTable() {
    const double spread = kSodium * spreadsOf(dominated_).lot;
    std::vector<double> lots(kLots);
    for (double& lot : lots) lot = normal(kSodium, spread);
    const MeanAndDeviation published = meanAndDeviation(lots);
    Profile& profile = dossier_.foods[3].table->profile;
    profile.per100g[indexOf(Component::NA)] = published.mean;
    profile.spread[indexOf(Component::NA)] = {
        *published.deviation / std::sqrt(static_cast<double>(kLots)), kLots, {}};
    return normal(kSodium, spread) / 100;
}

/// Prints a true label; true mg of the paste that was weighed. The bounds are those of steps of the
/// law, so that all of a printed amount's interval is drawn alike: 10 mg above 140 (21 CFR
/// 101.9(c)(4)), whole grams of a serving.
double CoverageKitchens::drawLabel() {
    const double sodium = uniform(145, 195);
    const double serving = uniform(14.5, 20.5);
    LabelFacts& label = *dossier_.foods[4].label;
    label.amounts.front().printed = *usAmountText(Component::NA, sodium);
    label.servingSize = roundedToStep(Decimal::fromDouble(serving), {1, 0});
    const double shown = netGrams(dossier_, dossier_.readings.back());
    const double grams =
        shown + uniform(-kFineStep / 2, kFineStep / 2) - uniform(-kFineStep / 2, kFineStep / 2);
    return grams * sodium / serving;
}

const Dossier& CoverageKitchens::next() {
    const double pods = drawPods();
    truth_ = pods * drawTable();
    if (dominated_ == Dominated::ByLabel) truth_ += drawLabel();
    return dossier_;
}

}  // namespace nettare
