#include "core/nutrition/share_subject.h"

namespace nettare {

namespace {

using ReadingList = std::vector<std::size_t>;

constexpr ShareSubject kCommon{};

std::uint32_t shortIndex(std::size_t index) {
    return static_cast<std::uint32_t>(index);
}

/// Calls visit(readings, subject) for all that was weighed.
template <class Visit>
void visitWeighed(const Dossier& dossier, Visit visit) {
    for (std::size_t r = 0; r < dossier.recipes.size(); ++r) {
        const Recipe& recipe = dossier.recipes[r];
        for (std::size_t i = 0; i < recipe.lines.size(); ++i)
            visit(recipe.lines[i].weighed, {SubjectOf::LineReadings, numberOf(r, i)});
        for (std::size_t i = 0; i < recipe.residues.size(); ++i) {
            const ShareSubject residue{SubjectOf::Residue, numberOf(r, i)};
            visit(recipe.residues[i].readings, residue);
            for (const OtherCook& cook : recipe.residues[i].otherCooks)
                visit(cook.readings, residue);
        }
        const ShareSubject dish{SubjectOf::Dish, shortIndex(r)};
        visit(recipe.cooked, dish);
        visit(recipe.notEaten, dish);
        for (const OtherCook& cook : recipe.otherCooks) {
            visit(cook.readings, dish);
            visit(cook.notEaten, dish);
        }
    }
    for (std::size_t s = 0; s < dossier.series.size(); ++s) {
        const ShareSubject series{SubjectOf::Series, shortIndex(s)};
        visit(dossier.series[s].readings, series);
        for (const auto& [before, after] : dossier.series[s].pairs) visit({before, after}, series);
    }
}

/// A table's values are known by their mean and spread, a label's and stated ones by an interval.
SubjectOf ofComposition(const Source& source, const Cooked& cooked) {
    if (source.law == Law::Normal) return SubjectOf::FoodTable;
    const auto component = static_cast<Component>(source.key.second);
    const Origin origin = cooked.compositions[source.key.first][component].origin;
    return origin == Origin::Stated ? SubjectOf::FoodStated : SubjectOf::FoodLabel;
}

}  // namespace

std::vector<ShareSubject> subjectsOfIndications(const Dossier& dossier) {
    std::vector<std::optional<ShareSubject>> found(dossier.indications.size());
    visitWeighed(dossier, [&](const ReadingList& readings, const ShareSubject& subject) {
        for (const std::size_t reading : readings) {
            auto& gross = found[dossier.readings[reading].gross];
            if (!gross) gross = subject;
        }
    });
    const auto byGross = found;
    visitWeighed(dossier, [&](const ReadingList& readings, const ShareSubject& subject) {
        for (const std::size_t reading : readings) {
            const auto* shown = std::get_if<Reading::ShownTare>(&dossier.readings[reading].tare);
            if (shown == nullptr || byGross[shown->indication]) continue;
            auto& tare = found[shown->indication];
            tare = !tare || *tare == subject ? subject : kCommon;
        }
    });
    std::vector<ShareSubject> subjects;
    subjects.reserve(found.size());
    for (const auto& one : found) subjects.push_back(one.value_or(kCommon));
    return subjects;
}

ShareSubject subjectOf(const Source& source, const Cooked& cooked,
                       const std::vector<ShareSubject>& ofIndications) {
    const auto& [kind, first, second] = source.key;
    switch (kind) {
        case SourceKind::Rounding:
            return ofIndications[first];
        case SourceKind::VesselTare:
            return {SubjectOf::Vessel, first};
        case SourceKind::Calibration:
            return {SubjectOf::Scale, first};
        case SourceKind::SeriesMean:
        case SourceKind::SeriesScatter:
        case SourceKind::RatioMean:
        case SourceKind::RatioScatter:
            return {SubjectOf::Series, first};
        case SourceKind::LabelServing:
        case SourceKind::LabelDensity:
        case SourceKind::Declaration:
            return {SubjectOf::FoodLabel, first};
        case SourceKind::MeasureMean:
        case SourceKind::MeasureScatter:
        case SourceKind::MeasureAssumed:
            return {SubjectOf::FoodMeasure, first};
        case SourceKind::Refuse:
            return {SubjectOf::FoodRefuse, first};
        case SourceKind::ResidueMakeup:
            return {SubjectOf::MakeUp, second};
        case SourceKind::Composition:
            return {ofComposition(source, cooked), first};
        case SourceKind::Pinch:
            return {SubjectOf::Pinch};
        case SourceKind::PiecesRange:
            return {SubjectOf::PiecesMade, first};
        case SourceKind::CookedMean:
            return {SubjectOf::Dish, first};
        case SourceKind::ResidueMean:
            return {SubjectOf::Residue, second};
        case SourceKind::PieceShare:
            return {SubjectOf::ShareOfPiece};
        case SourceKind::PackContent:
        case SourceKind::PackDeclared:
            return {SubjectOf::Line, second, SourceKind::PackContent};
        case SourceKind::SizeNotSaid:
        case SourceKind::Filling:
        case SourceKind::VagueUnit:
        case SourceKind::DensityStated:
        case SourceKind::AmountRange:
        case SourceKind::Written:
        case SourceKind::Assumed:
        case SourceKind::YieldStated:
        case SourceKind::OptionalLine:
            return {SubjectOf::Line, second, kind};
    }
    return kCommon;
}

ShareKind kindOf(const ShareSubject& subject) {
    switch (subject.of) {
        case SubjectOf::LineReadings:
        case SubjectOf::CommonReadings:
        case SubjectOf::Vessel:
        case SubjectOf::Scale:
        case SubjectOf::Residue:
        case SubjectOf::Dish:
            return ShareKind::Weighing;
        case SubjectOf::Series:
            return ShareKind::Series;
        case SubjectOf::FoodLabel:
            return ShareKind::Label;
        case SubjectOf::FoodTable:
        case SubjectOf::FoodRefuse:
            return ShareKind::Table;
        case SubjectOf::FoodStated:
            return ShareKind::Stated;
        case SubjectOf::FoodMeasure:
            return ShareKind::Measure;
        case SubjectOf::Line:
            if (subject.aspect == SourceKind::PackContent) return ShareKind::Label;
            if (subject.aspect == SourceKind::DensityStated) return ShareKind::Measure;
            return subject.aspect == SourceKind::YieldStated ? ShareKind::Stated
                                                             : ShareKind::Assumption;
        case SubjectOf::MakeUp:
        case SubjectOf::Pinch:
        case SubjectOf::PiecesMade:
            return ShareKind::Assumption;
        case SubjectOf::ShareOfPiece:
            return ShareKind::Share;
    }
    return ShareKind::Assumption;
}

}  // namespace nettare
