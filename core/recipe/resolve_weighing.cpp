#include "core/recipe/dossier_builder.h"
#include "core/support/json.h"

namespace nettare {

namespace {

/// The unit a reading is in: that of the scale of its gross.
const Unit& unitOf(const Dossier& dossier, const Reading& reading) {
    return *dossier.scales[dossier.indications[reading.gross].scale].unit;
}

/// The tare as shown, of the vessel or of the other indication.
Decimal shownTare(const Dossier& dossier, const Reading& reading) {
    if (const auto* vessel = std::get_if<Reading::KnownTare>(&reading.tare))
        return dossier.vessels[vessel->vessel].tare;
    return dossier.indications[std::get<Reading::ShownTare>(reading.tare).indication].shown;
}

/// The scale that showed the tare; its unit must be that of the gross.
std::size_t tareScale(const Dossier& dossier, const Reading& reading) {
    if (const auto* vessel = std::get_if<Reading::KnownTare>(&reading.tare))
        return dossier.vessels[vessel->vessel].scale;
    return dossier.indications[std::get<Reading::ShownTare>(reading.tare).indication].scale;
}

}  // namespace

// Subtracted as decimals first: 271.1 - 212.2 is 58.9, which two doubles miss.
double netGrams(const Dossier& dossier, const Reading& reading) {
    const Decimal net = dossier.indications[reading.gross].shown.minus(shownTare(dossier, reading));
    return massOf(net.value(), unitOf(dossier, reading)).grams();
}

void DossierBuilder::addScales(Scope& scope) {
    const RecipeDocument& document = scope.loaded.document;
    for (std::size_t i = 0; i < document.scales.size(); ++i) {
        const ScaleEntry& entry = document.scales[i];
        const std::string pointer = pointerTo("/scales", i);
        const Unit* unit = findUnit(entry.unit, document.measures);
        if (unit == nullptr || !isShownByScales(*unit))
            note(Error{ErrorCode::UnitNotOfKind}.with("found", entry.unit).at(pointer + "/unit"));
        const std::size_t place =
            weighing_.add(Scale{entry.id, entry.name, unit, entry.readability,
                                entry.calibration ? entry.calibration->value() : 0});
        name(scope.names.scales, entry.id, place, pointer);
    }
    for (std::size_t i = 0; i < document.vessels.size(); ++i) {
        const VesselEntry& entry = document.vessels[i];
        const std::string pointer = pointerTo("/vessels", i);
        const std::size_t scale = find(scope.names.scales, entry.scale, pointer + "/scale");
        const std::size_t place = weighing_.add(Vessel{entry.id, entry.name, scale, entry.tare});
        name(scope.names.vessels, entry.id, place, pointer);
    }
}

void DossierBuilder::addIndications(Scope& scope) {
    const RecipeDocument& document = scope.loaded.document;
    for (std::size_t i = 0; i < document.indications.size(); ++i) {
        const IndicationEntry& entry = document.indications[i];
        const std::string pointer = pointerTo("/indications", i);
        const std::size_t scale = find(scope.names.scales, entry.scale, pointer + "/scale");
        const std::size_t place =
            weighing_.add(Indication{entry.id, scale, entry.shown, entry.state, entry.at});
        name(scope.names.indications, entry.id, place, pointer);
    }
}

// A net below zero is a slip of tare and gross; a net of zero is a bowl scraped clean.
void DossierBuilder::checkReading(const Reading& reading, const std::string& pointer) {
    if (failure_) return;
    const Scale& tareOn = dossier_.scales[tareScale(dossier_, reading)];
    if (unitOf(dossier_, reading).symbol != tareOn.unit->symbol) {
        note(Error{ErrorCode::ReadingUnitsDiffer}.with("found", reading.id).at(pointer));
        return;
    }
    const Decimal gross = dossier_.indications[reading.gross].shown;
    const Decimal tare = shownTare(dossier_, reading);
    if (gross < tare)
        note(Error{ErrorCode::NetNegative}
                 .with("found", reading.id)
                 .with("gross", gross.text())
                 .with("tare", tare.text())
                 .at(pointer));
}

void DossierBuilder::addReadings(Scope& scope) {
    const RecipeDocument& document = scope.loaded.document;
    for (std::size_t i = 0; i < document.readings.size(); ++i) {
        const ReadingEntry& entry = document.readings[i];
        const std::string pointer = pointerTo("/readings", i);
        Reading reading;
        reading.id = entry.id;
        reading.gross = find(scope.names.indications, entry.gross, pointer + "/gross");
        if (entry.vessel)
            reading.tare =
                Reading::KnownTare{find(scope.names.vessels, *entry.vessel, pointer + "/vessel")};
        else if (entry.tare)
            reading.tare =
                Reading::ShownTare{find(scope.names.indications, *entry.tare, pointer + "/tare")};
        reading.pieces = entry.pieces;
        checkReading(reading, pointer);
        name(scope.names.readings, entry.id, weighing_.add(reading), pointer);
    }
}

void DossierBuilder::checkSeries(const SeriesData& series, const std::string& pointer) {
    if (failure_) return;
    const auto check = [&](std::size_t reading, const std::string& place) {
        if (netGrams(dossier_, dossier_.readings[reading]) <= 0)
            note(Error{ErrorCode::NothingWeighed}
                     .with("found", dossier_.readings[reading].id)
                     .at(place));
    };
    for (std::size_t i = 0; i < series.readings.size(); ++i)
        check(series.readings[i], pointerTo(pointer + "/readings", i));
    for (std::size_t i = 0; i < series.pairs.size(); ++i)
        check(series.pairs[i].first, pointerTo(pointer + "/pairs", i) + "/before");
}

void DossierBuilder::addSeries(Scope& scope) {
    const RecipeDocument& document = scope.loaded.document;
    for (std::size_t i = 0; i < document.series.size(); ++i) {
        const SeriesEntry& entry = document.series[i];
        const std::string pointer = pointerTo("/series", i);
        SeriesData series{entry.id, entry.name,   entry.kind,    entry.of,   {},
                          {},       entry.pooled, entry.earlier, entry.bench};
        series.readings = findAll(scope.names.readings, entry.readings, pointer + "/readings");
        for (std::size_t p = 0; p < entry.pairs.size(); ++p) {
            const std::string place = pointerTo(pointer + "/pairs", p);
            series.pairs.emplace_back(
                find(scope.names.readings, entry.pairs[p].before, place + "/before"),
                find(scope.names.readings, entry.pairs[p].after, place + "/after"));
        }
        checkSeries(series, pointer);
        if (failure_) return;
        name(scope.names.series, entry.id, weighing_.add(std::move(series)), pointer);
    }
}

}  // namespace nettare
