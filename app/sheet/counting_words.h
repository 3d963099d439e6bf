#pragma once

#include <QString>

#include <string>
#include <vector>

#include "app/session/draft_session.h"
#include "core/edit/counting_edits.h"

namespace nettare {

/// One way in which a rule may count.
struct CountingOption {
    std::string word;  ///< as documents write it
    QString text;      ///< "to taste left out"
    QString offer;     ///< the same where it is chosen: "left out"
};

/// A rule of the recipe that matters for it.
struct ShownRule {
    CountingRule rule;
    QString name;  ///< "To taste"
    std::vector<CountingOption> options;
    std::size_t current = 0;  ///< index of the option that holds
};

/// The rules that leave something open in this recipe: it has a line to taste, an optional line, an
/// amount that is a range, a range of pieces.
[[nodiscard]] std::vector<ShownRule> rulesShown(const DraftSession& draft);

}  // namespace nettare
