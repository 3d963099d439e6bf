#include "core/quantity/interval.h"

namespace nettare {

DecimalInterval intersection(const DecimalInterval& a, const DecimalInterval& b) {
    // At a common end the stricter of the two counts: it is shared where both include it.
    DecimalInterval both = a;
    if (b.low > a.low || (b.low == a.low && !b.lowIncluded)) {
        both.low = b.low;
        both.lowIncluded = b.lowIncluded;
    }
    if (b.high < a.high || (b.high == a.high && !b.highIncluded)) {
        both.high = b.high;
        both.highIncluded = b.highIncluded;
    }
    return both;
}

}  // namespace nettare
