#include "db/kitchen/kitchen_store.h"

namespace nettare {

namespace {

/// Marks a store as long as it lives. What the store remembers of a draft and of the ledger may be
/// of changes that are taken back; it is forgotten unless they last.
class TogetherWhile {
public:
    explicit TogetherWhile(KitchenStore& store) : store_{store} { store_.together = true; }
    ~TogetherWhile() {
        store_.together = false;
        if (last_) return;
        store_.lastDraft.reset();
        store_.equipment = {};
    }
    TogetherWhile(const TogetherWhile&) = delete;
    TogetherWhile& operator=(const TogetherWhile&) = delete;

    void theyLast() { last_ = true; }

private:
    KitchenStore& store_;
    bool last_ = false;
};

}  // namespace

Result<void> checkWritable(const KitchenStore& store) {
    // What is written to a file without a name is gone when the window closes.
    if (!store.file.empty() && fileAt(store.file) != store.identity)
        return fail(store.error(ErrorCode::KitchenMissing));
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

Result<void> changeTogether(KitchenStore& store, const std::function<Result<void>()>& changes) {
    if (store.together) return changes();
    if (auto open = checkWritable(store); !open) return open;
    WriteTransaction transaction{store};
    TogetherWhile together{store};
    auto changed = changes();
    if (!changed) return changed;
    transaction.commit();
    together.theyLast();
    return changed;
}

}  // namespace nettare
