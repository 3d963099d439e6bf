#pragma once

#include <optional>
#include <string>

#include "core/food/label_json.h"
#include "core/food/own_food.h"

namespace nettare {

/// The form that this program writes and the newest that it reads.
inline constexpr std::string_view kLabelFormat = "nettare label";
inline constexpr int kLabelVersion = 1;

/// A label document: a package with its name, before what belongs together is checked.
struct LabelDocument {
    std::string name, group;
    LabelEntry label;
    std::optional<AddedSugars> addedSugars;
    std::optional<bool> plant;
    std::string source, note;
};

/// Reads the shape of a label document; accepts exactly what resources/schema/label.schema.json
/// accepts. Fails like readRecipe() and readLabel() do, with a pointer; WrongFormat,
/// NewerFormat.
[[nodiscard]] Result<LabelDocument> readLabelShape(const Json& json);

/// The food of a document, of the table of own foods and without version and number: its label,
/// what it comes to, and the package as where it comes from. Fails like labelFrom(), as
/// labelRefusal() and addedSugarsRefusal() say, and NotADate for a day that there is not.
[[nodiscard]] Result<OwnFood> labelledFood(const LabelDocument& document);

/// The next pack of a food: what the document does not state stays as it was before, but for the
/// photograph, which is of the old pack. Fails as the other does.
[[nodiscard]] Result<OwnFood> labelledFood(const LabelDocument& document, const OwnFood& before);

/// Both. Fails as they do.
[[nodiscard]] Result<OwnFood> readLabelDocument(const Json& json);

/// The document of a food that has a label.
[[nodiscard]] Json labelDocumentJson(const OwnFood& own);

}  // namespace nettare
