#include "core/publish/source_match.h"

#include <fmt/core.h>

#include <algorithm>

#include "core/support/json.h"

namespace nettare {

namespace {

using Facts = std::set<std::string>;
using ReadingIndices = std::vector<std::size_t>;

std::string factOf(const Dossier& dossier, std::size_t indication) {
    const Indication& shown = dossier.indications[indication];
    return fmt::format("{}\n{}\n{}", shown.id, shown.shown.text(), shown.at);
}

void addGross(const Dossier& dossier, const ReadingIndices& readings, Facts& facts) {
    for (const std::size_t reading : readings)
        facts.insert(factOf(dossier, dossier.readings[reading].gross));
}

/// What was weighed of the batch itself; a series speaks of other pieces.
Facts batchOf(const Dossier& dossier) {
    const Recipe& recipe = dossier.main();
    Facts facts;
    for (const Line& line : recipe.lines) addGross(dossier, line.weighed, facts);
    for (const Residue& residue : recipe.residues) addGross(dossier, residue.readings, facts);
    addGross(dossier, recipe.cooked, facts);
    addGross(dossier, recipe.notEaten, facts);
    return facts;
}

Facts factsOfSeries(const Dossier& dossier, const SeriesData& series) {
    Facts facts;
    addGross(dossier, series.readings, facts);
    for (const auto& [before, after] : series.pairs) addGross(dossier, {before, after}, facts);
    return facts;
}

/// One is among the other.
bool nested(const Facts& a, const Facts& b) {
    return std::ranges::includes(a, b) || std::ranges::includes(b, a);
}

/// A batch is known by what was weighed of it.
bool areOneBatch(const Facts& a, const Facts& b) {
    return !a.empty() && !b.empty() && nested(a, b);
}

/// Names of the series of which one side's readings are among the other's.
std::set<std::string> seriesOfBoth(const Dossier& a, const Dossier& b) {
    std::set<std::string> names;
    for (const SeriesData& one : a.series)
        for (const SeriesData& other : b.series)
            if (one.name == other.name && nested(factsOfSeries(a, one), factsOfSeries(b, other)))
                names.insert(one.name);
    return names;
}

const Line& lineNumbered(const Dossier& dossier, std::uint32_t number) {
    return dossier.recipes[number / 65536].lines[number % 65536];
}

/// Another value, or anything else on its label, is another source by the same name.
std::string valueFactOf(const SourceKey& key, const ComparedState& state) {
    const auto component = static_cast<Component>(key.second);
    const ComponentAmount& amount = state.cooked.compositions[key.first][component];
    return amount.origin == Origin::Label ? state.dossier.foods[key.first].identity
                                          : numberText(amount.perGram);
}

/// The fact that a source rests on beside its name; empty where the name says all.
std::string factOf(const SourceKey& key, const ComparedState& state) {
    switch (key.kind) {
        case SourceKind::Rounding:
            return factOf(state.dossier, key.first);
        case SourceKind::VesselTare:
            return state.dossier.vessels[key.first].tare.text();
        case SourceKind::Composition:
            return valueFactOf(key, state);
        case SourceKind::Written:
        case SourceKind::AmountRange:
        case SourceKind::PackContent:
            return lineNumbered(state.dossier, key.second).amount.text();
        default:
            return {};
    }
}

bool isOfOneBatch(SourceKind kind) {
    return kind == SourceKind::SeriesScatter || kind == SourceKind::RatioScatter ||
           kind == SourceKind::MeasureScatter || kind == SourceKind::CookedMean ||
           kind == SourceKind::ResidueMean;
}

bool isOfSeries(SourceKind kind) {
    return kind == SourceKind::SeriesMean || kind == SourceKind::RatioMean;
}

}  // namespace

SourceMatch::SourceMatch(const ComparedState& before, const ComparedState& after, Batches batches)
    : before_{before},
      after_{after},
      batches_{batches},
      sameBatch_{batches == Batches::One ||
                 areOneBatch(batchOf(before.dossier), batchOf(after.dossier))},
      sharedSeries_{seriesOfBoth(before.dossier, after.dossier)} {}

std::string SourceMatch::nameOf(const Source& source, bool isAfter) const {
    const ComparedState& state = isAfter ? after_ : before_;
    const SourceKind kind = source.key.kind;
    const std::string name = nettare::nameOf(source, state.dossier);
    const auto ofOneSide = [&] {
        return fmt::format("{}\n{}", name, isAfter ? "after" : "before");
    };
    if (kind == SourceKind::PieceShare) return batches_ == Batches::One ? name : ofOneSide();
    // Another number of pieces is no record of the same batch.
    if (isOfOneBatch(kind))
        return sameBatch_ ? fmt::format("{}\n{}", name, numberText(source.u)) : ofOneSide();
    if (isOfSeries(kind) && !sharedSeries_.contains(state.dossier.series[source.key.first].name))
        return ofOneSide();
    const std::string fact = factOf(source.key, state);
    return fact.empty() ? name : fmt::format("{}\n{}", name, fact);
}

}  // namespace nettare
