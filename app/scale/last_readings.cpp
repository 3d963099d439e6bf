#include "app/scale/last_readings.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

#include "core/publish/number_text.h"

namespace nettare {

namespace {

constexpr std::size_t kShown = 5;

struct LastReadings {
    Q_DECLARE_TR_FUNCTIONS(LastReadings)
};

/// Indices of readings and whether they are of pieces.
struct Bound {
    std::vector<std::size_t> readings;
    bool perPiece = false;
};

const Line* lineOf(const Recipe& recipe, const std::string& id) {
    const auto found = std::ranges::find(recipe.lines, id, &Line::id);
    return found == recipe.lines.end() ? nullptr : &*found;
}

/// The readings of the residue that this is; document and dossier have them in one order.
std::vector<std::size_t> readingsOf(const Evaluation& evaluation, const LeftOver& left) {
    const auto& entries = evaluation.document.residues;
    for (std::size_t i = 0; i < entries.size(); ++i)
        if (isSame(entries[i], left)) return evaluation.dossier.main().residues[i].readings;
    return {};
}

Bound boundTo(const Evaluation& evaluation, const Purpose& purpose) {
    const Recipe& recipe = evaluation.dossier.main();
    const Line* line = lineOf(recipe, purpose.line);
    Bound bound;
    switch (purpose.kind) {
        case PurposeKind::Line:
            if (line != nullptr) bound.readings = line->weighed;
            break;
        case PurposeKind::Series:
            bound.perPiece = true;
            if (line != nullptr && line->series)
                bound.readings = evaluation.dossier.series[line->series->series].readings;
            break;
        case PurposeKind::Cooked:
            bound.readings = recipe.cooked;
            break;
        case PurposeKind::OtherCook:
            bound.perPiece = true;
            for (const OtherCook& cook : recipe.otherCooks)
                bound.readings.insert(bound.readings.end(), cook.readings.begin(),
                                      cook.readings.end());
            break;
        case PurposeKind::Finished:
            bound.perPiece = true;
            if (recipe.pieceSeries)
                bound.readings = evaluation.dossier.series[*recipe.pieceSeries].readings;
            break;
        case PurposeKind::NotEaten:
            bound.readings = recipe.notEaten;
            break;
        case PurposeKind::LeftOver:
            bound.readings = readingsOf(evaluation, purpose.leftOver.value_or(LeftOver{}));
            break;
    }
    return bound;
}

int decimalsOf(const Evaluation& evaluation, std::size_t index) {
    const Dossier& dossier = evaluation.dossier;
    return dossier.scales[dossier.indications[dossier.readings[index].gross].scale]
        .readability.decimals();
}

QString netText(const Evaluation& evaluation, std::size_t index, bool perPiece) {
    const Reading& reading = evaluation.dossier.readings[index];
    const double grams = netGrams(evaluation.dossier, reading) / (perPiece ? reading.pieces : 1);
    return QString::fromStdString(numberAt(decimalsOf(evaluation, index), grams));
}

}  // namespace

QString lastReadings(const Evaluation& evaluation, const Purpose& purpose) {
    const Bound bound = boundTo(evaluation, purpose);
    const std::size_t count = bound.readings.size();
    if (count == 0) return {};
    QStringList nets;
    for (std::size_t i = count - std::min(count, kShown); i < count; ++i)
        nets += netText(evaluation, bound.readings[i], bound.perPiece);
    const QString list = nets.join(QStringLiteral("  "));
    // Without a translation %n has one form only.
    const QString head = count == 1 ? LastReadings::tr("1 reading")
                                    : LastReadings::tr("%n readings", "", static_cast<int>(count));
    return bound.perPiece ? LastReadings::tr("%1 · last: %2 g each").arg(head, list)
                          : LastReadings::tr("%1 · last: %2 g").arg(head, list);
}

QString weighedBefore(const Evaluation& evaluation, const Purpose& purpose) {
    const Bound bound = boundTo(evaluation, purpose);
    if (bound.perPiece || bound.readings.empty()) return {};
    int decimals = 0;
    for (const std::size_t index : bound.readings)
        decimals = std::max(decimals, decimalsOf(evaluation, index));
    return LastReadings::tr("%1 g").arg(
        QString::fromStdString(numberAt(decimals, gramsBefore(evaluation, purpose))));
}

double gramsBefore(const Evaluation& evaluation, const Purpose& purpose) {
    const Bound bound = boundTo(evaluation, purpose);
    double grams = 0;
    if (bound.perPiece) return grams;
    for (const std::size_t index : bound.readings)
        grams += netGrams(evaluation.dossier, evaluation.dossier.readings[index]);
    return grams;
}

std::optional<double> gramsEachBefore(const Evaluation& evaluation, const Purpose& purpose) {
    const Bound bound = boundTo(evaluation, purpose);
    if (!bound.perPiece || bound.readings.empty()) return std::nullopt;
    double grams = 0, pieces = 0;
    for (const std::size_t index : bound.readings) {
        const Reading& reading = evaluation.dossier.readings[index];
        grams += netGrams(evaluation.dossier, reading);
        pieces += reading.pieces;
    }
    return grams / pieces;
}

}  // namespace nettare
