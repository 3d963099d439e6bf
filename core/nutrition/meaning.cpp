#include "core/nutrition/source.h"

namespace nettare {

std::string_view nameOf(Meaning meaning) {
    switch (meaning) {
        case Meaning::RecipeMean:
            return "recipe mean";
        case Meaning::ThisBatch:
            return "this batch";
        case Meaning::AnyPiece:
            return "any one piece";
    }
    return {};
}

}  // namespace nettare
