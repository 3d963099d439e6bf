#include "app/limits/assumption_words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <array>

namespace nettare {

namespace {

struct AssumptionWords {
    Q_DECLARE_TR_FUNCTIONS(Assumptions)
};

bool counts(Assumption which, const Line& line, const LineReport& report) {
    if (report.ways.ways.empty() || isLeftOut(report.counting)) return false;
    const bool volume = line.unit != nullptr && line.unit->kind == UnitKind::Volume;
    if (!report.ways.way().spreadAssumed) return false;
    return which == Assumption::SpreadFreedom || (which == Assumption::VolumeSpread) == volume;
}

/// Whether a value that figures need has no standard error of its own.
bool hasNoSpread(const Profile& profile) {
    using enum Component;
    return std::ranges::any_of(std::array{PROCNT, FAT, WATER}, [&](Component part) {
        return profile[part].value_or(0) > 0 && !profile.spread[indexOf(part)].standardError;
    });
}

}  // namespace

std::vector<Assumption> allAssumptions() {
    using enum Assumption;
    return {PieceSpread, VolumeSpread, SpreadFreedom, CompositionSpread, DeclarationSpread};
}

std::string_view assumptionKey(Assumption which) {
    switch (which) {
        case Assumption::PieceSpread:
            return "piece_spread";
        case Assumption::VolumeSpread:
            return "volume_spread";
        case Assumption::SpreadFreedom:
            return "spread_freedom";
        case Assumption::DeclarationSpread:
            return "declaration_spread";
        case Assumption::CompositionSpread:
            return "composition_spread";
    }
    return {};
}

std::optional<Decimal> defaultOf(Assumption which) {
    const Assumptions usual;
    switch (which) {
        case Assumption::PieceSpread:
            return usual.pieceSpread;
        case Assumption::VolumeSpread:
            return usual.volumeSpread;
        case Assumption::SpreadFreedom:
            return usual.spreadFreedom;
        case Assumption::DeclarationSpread:
            return usual.declarationSpread;
        case Assumption::CompositionSpread:
            return usual.compositionSpread;
    }
    return {};
}

bool isShare(Assumption which) {
    return which != Assumption::SpreadFreedom;
}

QString assumptionName(Assumption which) {
    switch (which) {
        case Assumption::PieceSpread:
            return AssumptionWords::tr("Spread of single pieces");
        case Assumption::VolumeSpread:
            return AssumptionWords::tr("Spread of spoons and cups");
        case Assumption::SpreadFreedom:
            return AssumptionWords::tr("Degrees of freedom of an assumed spread");
        case Assumption::DeclarationSpread:
            return AssumptionWords::tr("Products against their declaration");
        case Assumption::CompositionSpread:
            return AssumptionWords::tr("Spread of a table's values");
    }
    return {};
}

QString assumptionSource(Assumption which) {
    switch (which) {
        case Assumption::PieceSpread:
            return AssumptionWords::tr(
                "Where a table or a single reading shows none. 14 % is the median of the table's "
                "own 85 measures of pieces that have one.");
        case Assumption::VolumeSpread:
            return AssumptionWords::tr(
                "Where a table shows none. 7 % is the median of the table's own 132 spoons and "
                "cups that have one.");
        case Assumption::SpreadFreedom:
            return AssumptionWords::tr(
                "How far the assumed spreads are trusted: 8 is known to about a quarter "
                "(JCGM 100:2008, G.4.2).");
        case Assumption::DeclarationSpread:
            return AssumptionWords::tr(
                "How far a product may be off what its label declares, beside the rounding. "
                "0 % counts the rounding only; the law tolerates up to 20 %.");
        case Assumption::CompositionSpread:
            return AssumptionWords::tr(
                "Of those values for which the table gives none. Empty takes the table's own "
                "median of each food's group.");
    }
    return {};
}

QString countsFor(Assumption which, const Evaluation& evaluation) {
    const Recipe& recipe = evaluation.dossier.main();
    QStringList names;
    for (std::size_t i = 0; i < recipe.lines.size(); ++i)
        if (counts(which, recipe.lines[i], evaluation.cooked.lines[i]))
            names += QString::fromStdString(recipe.lines[i].name);
    if (which == Assumption::DeclarationSpread)
        for (const Food& food : evaluation.dossier.foods)
            if (food.label) names += QString::fromStdString(food.name);
    if (which == Assumption::CompositionSpread)
        for (const Food& food : evaluation.dossier.foods)
            if (food.table && hasNoSpread(food.table->profile))
                names += QString::fromStdString(food.name);
    if (names.isEmpty()) return {};
    return AssumptionWords::tr("Counts now for: %1.").arg(names.join(QStringLiteral(", ")));
}

}  // namespace nettare
