#include "core/recipe/counted_amount.h"

namespace nettare {

Amount counted(const Amount& amount, RangeRule rule) {
    switch (rule) {
        case RangeRule::Middle:
            break;
        case RangeRule::Least:
            return {amount.low(), amount.low(), amount.text()};
        case RangeRule::Most:
            return {amount.high(), amount.high(), amount.text()};
    }
    return amount;
}

}  // namespace nettare
