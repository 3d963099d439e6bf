#pragma once

#include "core/food/component.h"

#include <optional>
#include <string>
#include <vector>

namespace nettare {

/// One line of a panel as text, without any layout.
struct PanelLine {
    Component component;                 ///< of which the line speaks
    std::string name;                    ///< "Total Fat"
    std::string amount;                  ///< with its unit: "8g", "less than 1g"
    std::optional<std::string> percent;  ///< "10%"; nothing where the line has no percent
    int indent = 0;                      ///< 0, 1 or 2
    bool bold = false;                   ///< the name; amounts are plain
    bool includes = false;               ///< reads "Includes 10g Added Sugars"

    /// Name and amount in the order they are read: "Total Fat 8g".
    [[nodiscard]] std::string text() const {
        return includes ? "Includes " + amount + " " + name : name + " " + amount;
    }
};

/// A nutrition panel as its texts, in the order they are printed. Where they stand, how large they
/// are and which rules part them is the painter's.
struct Panel {
    std::string title;             ///< "Nutrition Facts"
    std::string servings;          ///< "about 4 servings per container"
    std::string servingSizeHead;   ///< "Serving size"
    std::string servingHousehold;  ///< "2 skewers"
    std::string servingMetric;     ///< "(55g)"
    std::string amountHead;        ///< "Amount per serving"
    std::string caloriesName;      ///< "Calories"
    std::string calories;          ///< "230"
    std::string percentHead;       ///< "% Daily Value*"
    std::vector<PanelLine> lines;
    std::vector<PanelLine> vitamins;  ///< vitamins and minerals, below their own bar
    std::string footnote;             ///< what a percent Daily Value means, as the law words it
    std::string caution;              ///< what the panel is not; stands outside its box
};

}  // namespace nettare
