#pragma once

#include <string>
#include <vector>

#include "core/food/own_food.h"
#include "core/label/check_label.h"
#include "core/support/json.h"

namespace nettare {

/// A label to show, with what a check of it finds.
struct LabelPage {
    OwnFood own;  ///< has a label
    std::vector<LabelFinding> findings;

    [[nodiscard]] const LabelFacts& label() const { return *own.food.label; }
    /// Findings that nobody has said are as printed.
    [[nodiscard]] bool hasOpen() const;
};

/// The label as a page of plain text: what it is of, each line with what it stands for and comes to
/// per 100 g, and the findings, each with how a document says that it is as printed.
[[nodiscard]] std::string labelText(const LabelPage& page);

/// The same for other programs.
[[nodiscard]] Json labelPageJson(const LabelPage& page);

}  // namespace nettare
