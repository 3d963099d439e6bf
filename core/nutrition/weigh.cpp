#include "core/nutrition/weigh.h"

#include <cmath>

#include "core/weighing/judgement.h"

namespace nettare {

namespace {

/// Standard uncertainty, in grams, of one displayed value of that scale.
double roundingOf(const Scale& scale) {
    return massOf(rectangular(scale.readability.value()), *scale.unit).grams();
}

std::uint32_t small(std::size_t index) {
    return static_cast<std::uint32_t>(index);
}

Source roundingSource(const Dossier& dossier, std::size_t indication) {
    const Scale& scale = dossier.scales[dossier.indications[indication].scale];
    return ownSource({SourceKind::Rounding, small(indication), 0}, roundingOf(scale));
}

}  // namespace

LinearForm weighed(const Dossier& dossier, std::size_t index) {
    const Reading& reading = dossier.readings[index];
    LinearForm net{netGrams(dossier, reading)};
    net.depend(roundingSource(dossier, reading.gross), 1);
    if (const auto* known = std::get_if<Reading::KnownTare>(&reading.tare)) {
        const Scale& scale = dossier.scales[dossier.vessels[known->vessel].scale];
        net.depend(ownSource({SourceKind::VesselTare, small(known->vessel), 0}, roundingOf(scale)),
                   -1);
    } else {
        const auto& shown = std::get<Reading::ShownTare>(reading.tare);
        net.depend(roundingSource(dossier, shown.indication), -1);
    }
    const std::size_t scale = dossier.indications[reading.gross].scale;
    const double calibration = dossier.scales[scale].calibrationRelative;
    if (calibration > 0)
        net.depend(ownSource({SourceKind::Calibration, small(scale), 0}, calibration), net.value());
    return net;
}

LinearForm weighed(const Dossier& dossier, const std::vector<std::size_t>& readings) {
    LinearForm total;
    for (const std::size_t reading : readings) total.add(weighed(dossier, reading));
    return total;
}

WeighedState stateOf(const Dossier& dossier, std::size_t reading) {
    return dossier.indications[dossier.readings[reading].gross].state;
}

std::optional<double> coarseShareOf(const Dossier& dossier, std::size_t reading) {
    const Scale& scale = dossier.scales[dossier.indications[dossier.readings[reading].gross].scale];
    return coarseShare(netGrams(dossier, dossier.readings[reading]),
                       massOf(scale.readability.value(), *scale.unit).grams());
}

Result<PieceStatistics> statisticsOf(const Dossier& dossier, const SeriesData& series,
                                     const Assumptions& assumptions) {
    std::vector<SeriesReading> readings;
    for (const std::size_t index : series.readings) {
        const LinearForm net = weighed(dossier, index);
        readings.push_back({net.value(), dossier.readings[index].pieces, net.uncertainty()});
    }
    const Decimal relative =
        series.kind == SeriesKind::PerMeasure ? assumptions.volumeSpread : assumptions.pieceSpread;
    return pieceStatistics(readings, {relative.value(), assumptions.spreadFreedom.value()});
}

Result<RatioStatistics> ratioOf(const Dossier& dossier, const SeriesData& series,
                                const Assumptions& assumptions) {
    std::vector<RatioReading> readings;
    for (const auto& [before, after] : series.pairs) {
        const LinearForm whole = weighed(dossier, before);
        const LinearForm rest = weighed(dossier, after);
        const double rounding = std::sqrt(whole.uncertainty() * whole.uncertainty() +
                                          rest.uncertainty() * rest.uncertainty());
        readings.push_back({whole.value(), rest.value(), rounding});
    }
    return ratioStatistics(readings,
                           {assumptions.pieceSpread.value(), assumptions.spreadFreedom.value()});
}

}  // namespace nettare
