#pragma once

#include <string>
#include <string_view>

#include "core/food/label_facts.h"
#include "core/support/json_reader.h"
#include "core/support/result.h"

namespace nettare {

/// A label as documents hold it, before what belongs together is checked.
struct LabelEntry {
    LabelFacts facts;             ///< without the household amount
    std::string householdAmount;  ///< as written: "1", "3/4"; empty where there is none
    bool servingTwice = false;    ///< in grams and in millilitres
};

/// A label as documents hold it: the object of "label".
[[nodiscard]] Json labelJson(const LabelFacts& label);

/// Reads the members of such an object and finishes it. Amounts stay as printed; what they stand
/// for is the business of core/label. Notes beside what ObjectReader notes: ComponentUnknown,
/// NotAHash.
[[nodiscard]] LabelEntry readLabel(ObjectReader& label);

/// The name of a photograph's file as a label keeps it: a name of a file can be longer than the
/// texts of documents, and hold what none of them may.
[[nodiscard]] std::string photoName(std::string_view fileName);

/// The label of an entry. Fails: OneOfNeeded (a serving in grams and in millilitres), DuplicateId
/// (a line twice), NotADate, LabelNeedsServing, LabelNeedsDensity, OutOfRange (a declaration spread
/// above 1, a density not certain to be above 0), and like readAmount(); with the place below
/// `pointer`, which is that of the label.
[[nodiscard]] Result<LabelFacts> labelFrom(const LabelEntry& entry, const std::string& pointer);

}  // namespace nettare
