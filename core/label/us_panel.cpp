#include "core/label/us_panel.h"

#include "core/label/us_percent.h"
#include "core/label/us_rounding.h"
#include "core/label/us_serving.h"
#include "core/support/text.h"

#include <array>
#include <span>

namespace nettare {

namespace {

using enum Component;

/// How one line stands on the panel, whatever its amount.
struct LineShape {
    Component component;
    std::string_view name;
    int indent;
    bool bold;
    bool percent;
    bool voluntary = false;  ///< printed only where the cook asks for it
    bool includes = false;   ///< reads "Includes 10g Added Sugars"
};

/// (d)(1) and (d)(7), vertical format; order, indents and weight from memory. Protein has a percent
/// only beside a protein claim, from an amount corrected for digestibility.
constexpr std::array kLineShapes{
    LineShape{FAT, "Total Fat", 0, true, true},
    LineShape{FASAT, "Saturated Fat", 1, false, true},
    LineShape{FATRN, "Trans Fat", 1, false, false},
    LineShape{FAPU, "Polyunsaturated Fat", 1, false, false, true},
    LineShape{FAMS, "Monounsaturated Fat", 1, false, false, true},
    LineShape{CHOLE, "Cholesterol", 0, true, true},
    LineShape{NA, "Sodium", 0, true, true},
    LineShape{CHOCDF, "Total Carbohydrate", 0, true, true},
    LineShape{FIBTG, "Dietary Fiber", 1, false, true},
    LineShape{SUGAR, "Total Sugars", 1, false, false},
    LineShape{SUGAD, "Added Sugars", 2, false, true, false, true},
    LineShape{PROCNT, "Protein", 0, true, false},
};

/// The four that (c)(8)(ii) makes mandatory, in its order.
constexpr std::array kVitaminShapes{
    LineShape{VITD, "Vitamin D", 0, false, true},
    LineShape{CA, "Calcium", 0, false, true},
    LineShape{FE, "Iron", 0, false, true},
    LineShape{K, "Potassium", 0, false, true},
};

constexpr LineShape kCaloriesShape{ENERC_KCAL, "Calories", 0, true, false};

/// Wording prescribed by (d)(9).
constexpr std::string_view kFootnote =
    "*The % Daily Value tells you how much a nutrient in a serving of food contributes to a daily "
    "diet. 2,000 calories a day is used for general nutrition advice.";
constexpr std::string_view kCaution = "Calculated from recipe data. Not a compliance statement.";

/// What one end of an amount prints as.
struct LinePrint {
    std::string amount;
    std::optional<std::string> percent;

    friend bool operator==(const LinePrint&, const LinePrint&) = default;
};

/// Calories stand without a unit; the microgram is written mcg, from memory.
std::string unitOnPanel(Component component) {
    const std::string_view unit = factsOf(component).unit;
    if (component == ENERC_KCAL) return "";
    return unit == "µg" ? "mcg" : std::string{unit};
}

Result<LinePrint> linePrint(const LineShape& shape, double amount) {
    const auto text = usAmountText(shape.component, amount);
    if (!text) return fail(text.error());
    LinePrint print{*text + unitOnPanel(shape.component), std::nullopt};
    if (!shape.percent) return print;
    const auto percent = usPercentText(shape.component, amount);
    if (!percent) return fail(percent.error());
    print.percent = *percent;
    return print;
}

/// Names every food that leaves the line open, so that the cook can fill all of them at once.
Error openLine(const LineShape& shape, const OpenAmount& amount) {
    const auto written = [](double end) { return Decimal::fromDouble(end).text(); };
    Error error = Error{ErrorCode::PanelLineOpen}
                      .with("line", shape.name)
                      .with("component", factsOf(shape.component).tagname)
                      .with("at_least", written(amount.atLeast))
                      .with("at_most", amount.atMost ? written(*amount.atMost) : "unknown")
                      .with("unit", factsOf(shape.component).unit);
    for (const std::string& food : amount.missingIn) error = error.with("food", food);
    return error;
}

/// One line, from both ends of its amount. A number that no line can print is told before a gap.
Result<PanelLine> panelLine(const LineShape& shape, const PerComponent<OpenAmount>& perServing) {
    const OpenAmount& amount = perServing[indexOf(shape.component)];
    const auto low = linePrint(shape, amount.atLeast);
    if (!low) return fail(low.error());
    if (!amount.atMost) return fail(openLine(shape, amount));
    const auto high = linePrint(shape, *amount.atMost);
    if (!high) return fail(high.error());
    if (*amount.atMost < amount.atLeast)
        return fail(Error{ErrorCode::RangeReversed}.with("line", shape.name));
    if (*low != *high) return fail(openLine(shape, amount));
    return PanelLine{
        shape.component, std::string{shape.name}, low->amount, low->percent, shape.indent,
        shape.bold,      shape.includes};
}

Result<std::vector<PanelLine>> panelLines(std::span<const LineShape> shapes,
                                          const UsPanelInput& input) {
    std::vector<PanelLine> lines;
    for (const LineShape& shape : shapes) {
        if (shape.voluntary && !input.polyAndMono) continue;
        auto line = panelLine(shape, input.perServing);
        if (!line) return fail(line.error());
        lines.push_back(std::move(*line));
    }
    return lines;
}

/// The texts above the first line of the panel, calories left out.
Result<Panel> panelHead(const UsPanelInput& input) {
    if (trimmed(input.household).empty())
        return fail(Error{ErrorCode::EmptyText}.with("line", "Serving size"));
    const auto servings = usServingsText(input.servings);
    if (!servings) return fail(servings.error().with("line", "servings per container"));
    const auto grams = usServingMetricText(input.servingGrams);
    if (!grams) return fail(grams.error().with("line", "Serving size"));
    Panel panel;
    panel.title = "Nutrition Facts";
    const bool single = *servings == "1" || *servings == "about 1";
    panel.servings = *servings + (single ? " serving" : " servings") + " per container";
    panel.servingSizeHead = "Serving size";
    panel.servingHousehold = trimmed(input.household);
    panel.servingMetric = "(" + *grams + "g)";
    panel.amountHead = "Amount per serving";
    panel.percentHead = "% Daily Value*";
    panel.footnote = kFootnote;
    panel.caution = kCaution;
    return panel;
}

}  // namespace

Result<Panel> usPanel(const UsPanelInput& input) {
    auto panel = panelHead(input);
    if (!panel) return panel;
    const auto calories = panelLine(kCaloriesShape, input.perServing);
    if (!calories) return fail(calories.error());
    auto lines = panelLines(kLineShapes, input);
    if (!lines) return fail(lines.error());
    auto vitamins = panelLines(kVitaminShapes, input);
    if (!vitamins) return fail(vitamins.error());
    panel->caloriesName = calories->name;
    panel->calories = calories->amount;
    panel->lines = std::move(*lines);
    panel->vitamins = std::move(*vitamins);
    return panel;
}

}  // namespace nettare
