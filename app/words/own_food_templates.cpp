#include "app/words/own_food_templates.h"

namespace nettare {

std::string_view ownFoodTemplateFor(ErrorCode code) {
    using enum ErrorCode;
    switch (code) {
        case OwnFoodNotFound:
            return "this kitchen has no own food {found}; choose one from the pantry.";
        case OwnFoodIntoItself:
            return "“{food}” cannot be merged with itself or with a food that was merged into it; "
                   "choose another one.";
        case OwnFoodMergedBefore:
            return "“{food}” was merged with another own food; part them first, or change the one "
                   "that stayed.";
        case OwnFoodChanged:
            return "the own food {found} is not what was saved; compare it with a backup.";
        default:
            return {};
    }
}

}  // namespace nettare
