#include "app/pantry/compared_foods.h"

#include <QCoreApplication>

#include <algorithm>

#include "app/figures/figure_words.h"
#include "app/pantry/food_values.h"

namespace nettare {

namespace {

struct ComparedWords {
    Q_DECLARE_TR_FUNCTIONS(ComparedFoods)
};

/// The values of one component, with what is known of each.
struct Side {
    std::optional<double> value;
    std::optional<double> halfWidth;
};

std::vector<Side> sidesOf(const std::vector<TableFood>& foods, Component component) {
    std::vector<Side> sides;
    sides.reserve(foods.size());
    for (const TableFood& food : foods)
        sides.push_back({food.profile[component], halfWidthOf(food.profile, component)});
    return sides;
}

/// Whether all intervals share a point, as far as each is known.
bool allOverlap(const std::vector<Side>& sides) {
    double low = -1, high = -1;
    for (const Side& side : sides) {
        if (!side.value) continue;
        if (!side.halfWidth) return false;
        const double from = *side.value - *side.halfWidth, to = *side.value + *side.halfWidth;
        low = low < 0 ? from : std::max(low, from);
        high = high < 0 ? to : std::min(high, to);
    }
    return low <= high;
}

QString unitText(const ComponentFacts& facts) {
    return QString::fromUtf8(facts.unit.data(), static_cast<qsizetype>(facts.unit.size()));
}

struct ValueEnds {
    double least, most;
};

ValueEnds endsOf(const std::vector<Side>& sides) {
    ValueEnds ends{0, 0};
    bool first = true;
    for (const Side& side : sides) {
        if (!side.value) continue;
        ends.least = first ? *side.value : std::min(ends.least, *side.value);
        ends.most = first ? *side.value : std::max(ends.most, *side.value);
        first = false;
    }
    return ends;
}

Cell valueCell(const Side& side, const ValueEnds& ends, bool differs) {
    if (!side.value) return noDataCell();
    Cell cell = numberCell(numberAsPrinted(*side.value));
    if (!differs) return cell;
    if (*side.value >= ends.most) cell.before = QString{QChar{0x2191}};
    if (*side.value <= ends.least) cell.before = QString{QChar{0x2193}};
    cell.strong = !cell.before.isEmpty();
    return cell;
}

ComparedComponent comparedOf(const ComponentFacts& facts, const std::vector<Side>& sides) {
    ComparedComponent row{componentName(facts.component), unitText(facts), {}, {}, false};
    const auto known =
        std::ranges::count_if(sides, [](const Side& side) { return side.value.has_value(); });
    const auto all = static_cast<std::ptrdiff_t>(sides.size());
    const ValueEnds ends = endsOf(sides);
    row.same = known == all && ends.least == ends.most;
    const bool within = known >= 2 && allOverlap(sides);
    const bool differs = known >= 2 && ends.least != ends.most && !within;
    for (const Side& side : sides) row.values.push_back(valueCell(side, ends, differs));
    QStringList parts;
    if (known >= 2 && ends.least == ends.most)
        parts += ComparedWords::tr("same");
    else if (differs)
        parts += ComparedWords::tr("%1 to %2 %3")
                     .arg(numberAsPrinted(ends.least), numberAsPrinted(ends.most), unitText(facts));
    else if (known >= 2)
        parts += ComparedWords::tr("within ±");
    if (known < all) parts += ComparedWords::tr("no data for %1 of %2").arg(all - known).arg(all);
    row.differs = textCell(parts.join(QStringLiteral(", ")));
    row.differs.strong = differs;
    row.differs.ink = differs ? Role::Ink : Role::Ink2;
    return row;
}

}  // namespace

std::vector<ComparedComponent> comparedComponents(const std::vector<TableFood>& foods) {
    std::vector<ComparedComponent> rows;
    for (const ComponentFacts& facts : allComponents()) {
        const auto sides = sidesOf(foods, facts.component);
        if (std::ranges::any_of(sides, [](const Side& side) { return side.value.has_value(); }))
            rows.push_back(comparedOf(facts, sides));
    }
    return rows;
}

}  // namespace nettare
