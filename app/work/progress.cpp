#include "app/work/progress.h"

#include <utility>

namespace nettare {

Progress::Progress(std::function<void()> tell) : shared_{std::make_shared<Shared>()} {
    shared_->tell = std::move(tell);
}

void Progress::step(const QString& name, double share) const {
    {
        const std::lock_guard lock{shared_->guard};
        shared_->last = {name, share};
        if (std::exchange(shared_->waits, true)) return;
    }
    shared_->tell();
}

Step Progress::takenStep() const {
    const std::lock_guard lock{shared_->guard};
    shared_->waits = false;
    return shared_->last;
}

}  // namespace nettare
