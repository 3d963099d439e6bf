#include "core/publish/figures_text.h"

#include <fmt/core.h>

#include <algorithm>

#include "core/nutrition/student_t.h"
#include "core/nutrition/weigh.h"
#include "core/publish/basis_text.h"
#include "core/publish/left_out.h"
#include "core/publish/number_text.h"
#include "core/publish/residue_rows.h"
#include "core/publish/target_row.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// Text padded to a number of code points, since "µ" and "±" are two bytes and one column; longer
/// text stays whole.
std::string padded(std::string_view text, std::size_t width, bool right = false) {
    const std::size_t length = codePoints(text);
    const std::string space(length < width ? width - length : 0, ' ');
    return right ? space + std::string{text} : std::string{text} + space;
}

/// A figure with missing parts shows its bounds in place of an interval.
std::string componentRow(const Figure& figure) {
    const ComponentFacts& facts = factsOf(figure.component);
    if (!figure.complete())
        return fmt::format("  {} {}; {}\n", padded(facts.name, 22), figureText(figure),
                           knownShareText(figure));
    return fmt::format("  {} {} {} {}\n", padded(facts.name, 22),
                       padded(numberAt(facts.decimals, figure.value), 8, true),
                       padded(facts.unit, 4),
                       halfWidthText(facts.decimals, intervalOf(figure).halfWidth));
}

/// 95 % half-width in grams.
double halfWidthOf(const LinearForm& grams) {
    const Uncertainty uncertainty = uncertaintyOf(grams);
    return uncertainty.u == 0 ? 0 : coverageFactor(uncertainty.freedom) * uncertainty.u;
}

/// "weighed", "table, size not said", "series, spread assumed".
std::string wayText(const OpenWay& way) {
    std::string text{nameOf(way.way)};
    if (way.readings > 0) text += fmt::format(" of {}", way.readings);
    // t is 12.7 and 4.3: the cook sees why so few readings leave so wide an interval.
    if (way.readings == 2 || way.readings == 3)
        text += fmt::format(" (t = {}, weigh more)", numberAt(1, coverageFactor(way.readings - 1)));
    if (way.scaled) text += ", scaled";
    if (way.trimmed) text += ", trimmed";
    if (way.sizeNotSaid) text += ", size not said";
    if (way.way == Way::Assumed)
        text += way.spreadAssumed ? "" : ", as written";
    else if (way.spreadAssumed)
        text += ", spread assumed";
    return text;
}

/// "3 tbsp", "2-3 × clove", "to taste".
std::string amountText(const Line& line) {
    if (line.toTaste) return "to taste";
    return line.amount.text() + " " +
           (line.unit != nullptr ? std::string{line.unit->symbol} : "× " + line.piece);
}

/// How a line's grams were found, and whether they count.
std::string foundText(const Line& line, const LineReport& report) {
    if (isLeftOut(report.counting)) return fmt::format("left out: {}", reasonOf(report.counting));
    std::string text =
        report.ways.ways.empty() ? std::string{"kept recipe"} : wayText(report.ways.way());
    if (line.toTaste && report.ways.ways.size() == 1 && line.weighed.empty() && !line.assumed)
        text += ", a pinch a portion";
    if (report.counting == LineCounting::Between)
        text += fmt::format(", {}", reasonOf(report.counting));
    return text;
}

/// The way that counts; below it what was not eaten, and the other ways with how far they are
/// apart.
std::string lineRow(const Line& line, const LineReport& report) {
    std::string row = fmt::format(
        "  {} {} {} g {}  {}\n", padded(amountText(line), 14), padded(line.name, 18),
        padded(numberAt(1, report.eaten.value()), 7, true),
        padded(halfWidthText(1, halfWidthOf(report.eaten)), 7), foundText(line, report));
    if (report.ways.ways.empty() || isLeftOut(report.counting)) return row;
    const double left = report.asUsed.value() - report.eaten.value();
    // 33 blanks set what follows under the grams of the first row.
    if (left > 0)
        row += fmt::format("  {} of {} g used, {} g are not eaten\n", padded("", 33),
                           numberAt(1, report.asUsed.value()), numberAt(1, left));
    const OpenWay& chosen = report.ways.way();
    for (const OpenWay& way : report.ways.ways) {
        if (&way == &chosen) continue;
        const Disagreement apart = disagreement(chosen, way);
        row += fmt::format("  {} or {} g by {}, {} %{}\n", padded("", 33),
                           numberAt(1, way.grams.value()), nameOf(way.way),
                           numberAt(1, 100 * apart.relative),
                           apart.beyondUncertainty ? ", more than their uncertainty" : "");
    }
    return row;
}

/// One row for each reading of the recipe that is coarse for its scale.
std::string coarseRows(const Dossier& dossier) {
    const Recipe& recipe = dossier.main();
    std::vector<std::size_t> readings;
    const auto take = [&](const std::vector<std::size_t>& more) {
        for (const std::size_t reading : more)
            if (std::ranges::find(readings, reading) == readings.end()) readings.push_back(reading);
    };
    for (const Line& line : recipe.lines) {
        take(line.weighed);
        if (line.series) take(dossier.series[line.series->series].readings);
    }
    for (const Residue& residue : recipe.residues) take(residue.readings);
    take(recipe.cooked);
    take(recipe.notEaten);
    std::string rows;
    for (const std::size_t reading : readings)
        if (const auto share = coarseShareOf(dossier, reading))
            rows +=
                fmt::format("  {} is under 20 steps of its scale: rounding alone is {} % of it\n",
                            dossier.readings[reading].id, numberAt(1, 100 * *share));
    return rows;
}

}  // namespace

std::string figuresPage(const Figures& figures, const Dossier& dossier, const Cooked& cooked,
                        const std::vector<TargetVerdict>& verdicts) {
    const Recipe& recipe = dossier.main();
    std::string page = fmt::format("{}\n{}, {}; ± is 95 %\n\n", recipe.title,
                                   basisText(figures, recipe), nameOf(cooked.meaning));
    if (const std::string without = withoutText(uncountedLines(dossier, cooked)); !without.empty())
        page += without + "\n\n";
    for (const Figure& figure : figures.figures) page += componentRow(figure);
    page += "\nGrams eaten, of the whole batch\n";
    // In the cook's own order; figuresJson() sorts.
    for (std::size_t i = 0; i < recipe.lines.size(); ++i)
        page += lineRow(recipe.lines[i], cooked.lines[i]);
    page += residueRows(dossier);
    page += coarseRows(dossier);
    if (!verdicts.empty())
        page += fmt::format("\nCeilings and floors, {}\n", nameOf(cooked.meaning));
    for (const TargetVerdict& verdict : verdicts) page += "  " + targetRow(verdict, recipe) + "\n";
    return page;
}

}  // namespace nettare
