#include "core/publish/compared_lines.h"

#include <algorithm>

#include "core/publish/number_text.h"

namespace nettare {

namespace {

using Partner = std::optional<std::size_t>;

/// What a line is made of, whatever it is called: the food's identity or the kept recipe's title.
const std::string& identityOf(const Dossier& dossier, const Line& line) {
    if (const auto* food = std::get_if<FoodIndex>(&line.what))
        return dossier.foods[food->index].identity;
    return dossier.recipes[std::get<RecipeIndex>(line.what).index].title;
}

/// For each line of the newer state the one of the older that it was.
std::vector<Partner> partnersOf(const Dossier& before, const Dossier& after) {
    const std::vector<Line>& older = before.main().lines;
    const std::vector<Line>& newer = after.main().lines;
    std::vector<Partner> partners(newer.size());
    std::vector<bool> taken(older.size(), false);
    const auto pair = [&](auto belong) {
        for (std::size_t n = 0; n < newer.size(); ++n)
            for (std::size_t o = 0; o < older.size() && !partners[n]; ++o)
                if (!taken[o] && belong(older[o], newer[n])) {
                    partners[n] = o;
                    taken[o] = true;
                }
    };
    pair([](const Line& a, const Line& b) { return a.id == b.id; });
    pair([&](const Line& a, const Line& b) {
        return identityOf(before, a) == identityOf(after, b);
    });
    return partners;
}

bool shows(double difference, int decimals) {
    return numberAt(decimals, difference) != numberAt(decimals, 0);
}

LineChange changeOf(const SheetLine& before, const SheetLine& after) {
    const bool same = before.amount == after.amount && before.name == after.name &&
                      before.preparation == after.preparation && before.way == after.way &&
                      !shows(after.grams - before.grams, 1) && !shows(after.kcal - before.kcal, 0);
    return same ? LineChange::Same : LineChange::Changed;
}

ComparedLine comparedLine(const SheetLine* before, const SheetLine* after) {
    ComparedLine line;
    if (before != nullptr) line.before = *before;
    if (after != nullptr) line.after = *after;
    line.change = before == nullptr  ? LineChange::Added
                  : after == nullptr ? LineChange::Removed
                                     : changeOf(*before, *after);
    const auto of = [](const SheetLine* side, double SheetLine::*value) {
        return side != nullptr ? side->*value : 0.0;
    };
    line.gramsDifference = of(after, &SheetLine::grams) - of(before, &SheetLine::grams);
    line.kcalDifference = of(after, &SheetLine::kcal) - of(before, &SheetLine::kcal);
    line.kcalComplete =
        (before == nullptr || before->kcalComplete) && (after == nullptr || after->kcalComplete);
    return line;
}

/// A row before it is filled: indices of the two lines.
struct Row {
    Partner before, after;
};

/// The newer order, each removed line behind the one that it followed.
std::vector<Row> rowsOf(const std::vector<Partner>& partners, std::size_t olderCount) {
    std::vector<Row> rows;
    for (std::size_t n = 0; n < partners.size(); ++n) rows.push_back({partners[n], n});
    const auto rowOf = [&](std::size_t older) {
        return std::ranges::find(rows, Partner{older}, &Row::before);
    };
    for (std::size_t o = 0; o < olderCount; ++o) {
        if (rowOf(o) != rows.end()) continue;
        const auto place = o == 0 ? rows.begin() : rowOf(o - 1) + 1;
        rows.insert(place, Row{o, std::nullopt});
    }
    return rows;
}

}  // namespace

std::vector<ComparedLine> comparedLines(const ComparedState& before, const ComparedState& after) {
    const auto older = sheetLines(before.document, before.dossier, before.cooked);
    const auto newer = sheetLines(after.document, after.dossier, after.cooked);
    std::vector<ComparedLine> lines;
    for (const Row& row : rowsOf(partnersOf(before.dossier, after.dossier), older.size()))
        lines.push_back(comparedLine(row.before ? &older[*row.before] : nullptr,
                                     row.after ? &newer[*row.after] : nullptr));
    return lines;
}

}  // namespace nettare
