#include "core/food/label_facts.h"

namespace nettare {

const std::string* LabelFacts::printed(const LabelLine& line) const {
    for (const LabelAmount& amount : amounts)
        if (amount.line == line) return &amount.printed;
    return nullptr;
}

}  // namespace nettare
