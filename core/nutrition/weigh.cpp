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

/// The rounding of one indication: its own source, whichever readings use it.
Source roundingSource(const Dossier& dossier, std::size_t indication) {
    const Scale& scale = dossier.scales[dossier.indications[indication].scale];
    return rectangle({SourceKind::Rounding, small(indication), 0}, roundingOf(scale));
}

/// A relative calibration moves a weight in proportion.
void dependOn(const Dossier& dossier, std::size_t scale, double grams, LinearForm& net) {
    const double calibration = dossier.scales[scale].calibrationRelative;
    if (calibration > 0)
        net.depend(ownSource({SourceKind::Calibration, small(scale), 0}, calibration), grams);
}

/// On one scale the calibration acts on the net; a tare from another scale has that scale's own.
void dependOnCalibration(const Dossier& dossier, const Reading& reading, LinearForm& net) {
    const Indication& gross = dossier.indications[reading.gross];
    const auto* known = std::get_if<Reading::KnownTare>(&reading.tare);
    const std::size_t tareScale =
        known != nullptr
            ? dossier.vessels[known->vessel].scale
            : dossier.indications[std::get<Reading::ShownTare>(reading.tare).indication].scale;
    if (tareScale == gross.scale) return dependOn(dossier, gross.scale, net.value(), net);
    const double whole = massOf(gross.shown.value(), *dossier.scales[gross.scale].unit).grams();
    dependOn(dossier, gross.scale, whole, net);
    dependOn(dossier, tareScale, net.value() - whole, net);
}

/// Standard uncertainty from rounding alone: a calibration is common to all readings of a scale and
/// no part of how they scatter.
double roundingIn(const LinearForm& form) {
    LinearForm rounding;
    for (const LinearForm::Term& term : form.terms())
        if (term.source.key.kind != SourceKind::Calibration)
            rounding.depend(term.source, term.sensitivity);
    return rounding.uncertainty();
}

/// With the spread that the series is pooled with; one reading has the assumed one already.
template <class Statistics>
Statistics pooledAsSaid(const Statistics& own, const SeriesData& series, AssumedSpread assumed) {
    if (series.earlier)
        return pooledWith(
            own, KnownSpread{series.earlier->spread.value(), series.earlier->freedom.value()});
    if (!series.pooled || own.spreadAssumed) return own;
    return pooledWith(own, assumedBeside(own, assumed));
}

}  // namespace

LinearForm weighed(const Dossier& dossier, std::size_t index) {
    const Reading& reading = dossier.readings[index];
    LinearForm net{netGrams(dossier, reading)};
    net.depend(roundingSource(dossier, reading.gross), 1);
    if (const auto* known = std::get_if<Reading::KnownTare>(&reading.tare)) {
        const Scale& scale = dossier.scales[dossier.vessels[known->vessel].scale];
        net.depend(rectangle({SourceKind::VesselTare, small(known->vessel), 0}, roundingOf(scale)),
                   -1);
    } else {
        const auto& shown = std::get<Reading::ShownTare>(reading.tare);
        net.depend(roundingSource(dossier, shown.indication), -1);
    }
    dependOnCalibration(dossier, reading, net);
    return net;
}

LinearForm weighed(const Dossier& dossier, const std::vector<std::size_t>& readings) {
    LinearForm total;
    for (const std::size_t reading : readings) total.add(weighed(dossier, reading));
    return total;
}

LinearForm commonPart(const Dossier& dossier, const std::vector<std::size_t>& readings) {
    const LinearForm sum = weighed(dossier, readings);
    LinearForm common{sum.value()};
    for (const LinearForm::Term& term : sum.terms())
        if (term.source.key.kind != SourceKind::Rounding || std::fabs(term.sensitivity) > 1)
            common.depend(term.source, term.sensitivity);
    return common;
}

// The gross says what was weighed; the tare is a bowl.
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
        readings.push_back({net.value(), dossier.readings[index].pieces, roundingIn(net)});
    }
    const Decimal relative =
        series.kind == SeriesKind::PerMeasure ? assumptions.volumeSpread : assumptions.pieceSpread;
    const AssumedSpread assumed{relative.value(), assumptions.spreadFreedom.value()};
    auto statistics = pieceStatistics(readings, assumed);
    if (!statistics) return statistics;
    return pooledAsSaid(*statistics, series, assumed);
}

Result<RatioStatistics> ratioOf(const Dossier& dossier, const SeriesData& series,
                                const Assumptions& assumptions) {
    LinearForm whole;
    LinearForm rest;
    for (const auto& [before, after] : series.pairs) {
        whole.add(weighed(dossier, before));
        rest.add(weighed(dossier, after));
    }
    const double ratio = whole.value() > 0 ? rest.value() / whole.value() : 0;
    std::vector<RatioReading> readings;
    for (const auto& [before, after] : series.pairs) {
        const LinearForm one = weighed(dossier, before);
        LinearForm residual = weighed(dossier, after);
        const double grams = residual.value();
        readings.push_back({one.value(), grams, roundingIn(residual.add(one, -ratio))});
    }
    const AssumedSpread assumed{assumptions.pieceSpread.value(), assumptions.spreadFreedom.value()};
    auto statistics = ratioStatistics(readings, assumed);
    if (!statistics) return statistics;
    return pooledAsSaid(*statistics, series, assumed);
}

}  // namespace nettare
