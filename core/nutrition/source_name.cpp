#include <fmt/core.h>

#include "core/label/label_values.h"
#include "core/nutrition/source.h"

namespace nettare {

namespace {

/// "recipe file: line id" is needed only where kept recipes bring lines of their own.
std::string lineName(const Dossier& dossier, std::uint32_t number) {
    const Recipe& recipe = dossier.recipes[number / 65536];
    const std::string& id = recipe.lines[number % 65536].id;
    return number < 65536 ? id : recipe.title + ", " + id;
}

/// "residue 0", "frying oil".
std::string residueName(const Dossier& dossier, std::uint32_t number) {
    const Recipe& recipe = dossier.recipes[number / 65536];
    const std::string& called = recipe.residues[number % 65536].called;
    const std::string name = called.empty() ? fmt::format("residue {}", number % 65536) : called;
    return number < 65536 ? name : recipe.title + ", " + name;
}

/// Names where a value comes from in the order in which sources win: stated, label, table.
std::string compositionName(const Food& food, Component component) {
    const std::string_view tagname = factsOf(component).tagname;
    for (const StatedValue& stated : food.stated)
        if (stated.component == component) return fmt::format("{}, {} stated", food.name, tagname);
    if (food.label && labelGives(*food.label, component))
        return fmt::format("{}, {} by its label", food.name, tagname);
    const bool assumed = !food.table->profile.spread[indexOf(component)].standardError;
    return fmt::format("{}, {} by {}{}", food.name, tagname, food.table->row.text(),
                       assumed ? ", spread assumed" : "");
}

/// "fennel, cup sliced of usda-sr 28 11957"
std::string measureName(const Dossier& dossier, const SourceKey& key) {
    const Food& food = dossier.foods[key.first];
    const HouseholdMeasure& measure = food.table->measures[key.second];
    return fmt::format("{}, {}{}{} of {}", food.name, measure.unit,
                       measure.qualifier.empty() ? "" : " ", measure.qualifier,
                       food.table->row.text());
}

}  // namespace

std::string nameOf(const Source& source, const Dossier& dossier) {
    const SourceKey& key = source.key;
    const auto series = [&] { return dossier.series[key.first].name; };
    const auto food = [&] { return dossier.foods[key.first].name; };
    const auto line = [&] { return lineName(dossier, key.second); };
    switch (key.kind) {
        case SourceKind::Rounding:
            return fmt::format("rounding of {}", dossier.indications[key.first].id);
        case SourceKind::VesselTare:
            return fmt::format("tare of {}", dossier.vessels[key.first].name);
        case SourceKind::Calibration:
            return fmt::format("calibration of {}", dossier.scales[key.first].name);
        case SourceKind::SeriesMean:
            return fmt::format("mean of {}", series());
        case SourceKind::SeriesScatter:
            return fmt::format("{}: scatter of the pieces of {}", line(), series());
        case SourceKind::RatioMean:
            return fmt::format("ratio of {}", series());
        case SourceKind::RatioScatter:
            return fmt::format("{}: scatter of {}", line(), series());
        case SourceKind::PackContent:
            return fmt::format("{}: last digit of the declared content", line());
        case SourceKind::PackDeclared:
            return fmt::format("{}: content against declaration", line());
        case SourceKind::LabelServing:
            return fmt::format("{}, serving of its label", food());
        case SourceKind::LabelDensity:
            return fmt::format("{}, density of its label", food());
        case SourceKind::MeasureMean:
            return "mean of " + measureName(dossier, key);
        case SourceKind::MeasureScatter:
            return fmt::format("{}: scatter of its measures", line());
        case SourceKind::MeasureAssumed:
            return "assumed spread of " + measureName(dossier, key);
        case SourceKind::SizeNotSaid:
            return fmt::format("{}: size not said", line());
        case SourceKind::Filling:
            return fmt::format("{}: how spoon or cup is filled", line());
        case SourceKind::VagueUnit:
            return fmt::format("{}: vague measure", line());
        case SourceKind::DensityStated:
            return fmt::format("{}: density stated", line());
        case SourceKind::AmountRange:
            return fmt::format("{}: range of the amount", line());
        case SourceKind::Written:
            return fmt::format("{}: last digit as written", line());
        case SourceKind::Assumed:
            return fmt::format("{}: grams assumed", line());
        case SourceKind::Refuse:
            return fmt::format("{}, refuse by its table", food());
        case SourceKind::YieldStated:
            return fmt::format("{}: yield stated", line());
        case SourceKind::ResidueMakeup:
            return residueName(dossier, key.second) + ": its make-up";
        case SourceKind::Pinch:
            return "how much a pinch is";
        case SourceKind::OptionalLine:
            return fmt::format("{}: optional, between none and all", line());
        case SourceKind::PiecesRange:
            return fmt::format("pieces of {}: range", dossier.recipes[key.first].title);
        case SourceKind::CookedMean:
            return fmt::format("test cooks of {}: cooked weight", dossier.recipes[key.first].title);
        case SourceKind::ResidueMean:
            return residueName(dossier, key.second) + ": mean of test cooks";
        case SourceKind::PieceShare:
            return dossier.main().pieceSeries ? "share of one piece by its series"
                                              : "share of one piece, spread assumed";
        case SourceKind::Composition:
            return compositionName(dossier.foods[key.first], static_cast<Component>(key.second));
        case SourceKind::Declaration:
            return fmt::format("{}, {}: product against declaration", food(),
                               factsOf(static_cast<Component>(key.second)).tagname);
    }
    return {};
}

}  // namespace nettare
