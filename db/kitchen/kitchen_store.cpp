#include "db/kitchen/kitchen_store.h"

namespace nettare {

Result<void> checkWritable(const KitchenStore& store) {
    if (store.writable) return {};
    if (!store.heldBy.empty()) {
        Error error = store.error(ErrorCode::KitchenHeld);
        error.values.push_back({"holder", store.heldBy});
        return fail(error);
    }
    const bool wasAsked = store.access == KitchenAccess::Write;
    return fail(
        store.error(wasAsked ? ErrorCode::KitchenNotWritable : ErrorCode::KitchenOpenToRead));
}

}  // namespace nettare
