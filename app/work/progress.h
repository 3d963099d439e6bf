#pragma once

#include <QString>

#include <atomic>
#include <functional>
#include <memory>
#include <mutex>

namespace nettare {

/// Where long work stands.
struct Step {
    QString name;      ///< "reading the foods"
    double share = 0;  ///< of the whole work, 0 to 1
};

/// What long work holds on to: it says its steps and asks whether it is still wanted. Safe from any
/// thread; the copies are one.
class Progress {
public:
    /// `tell` runs in the thread of the work, never twice before the step was taken.
    explicit Progress(std::function<void()> tell);

    /// To be asked often; work that hears yes returns soon, with anything.
    [[nodiscard]] bool cancelled() const { return shared_->cancelled; }
    void cancel() const { shared_->cancelled = true; }

    /// Cheap: of steps that come faster than the window can show, it shows the last.
    void step(const QString& name, double share) const;

    /// The last step said.
    [[nodiscard]] Step takenStep() const;

private:
    struct Shared {
        std::atomic<bool> cancelled = false;
        std::mutex guard;
        Step last;
        bool waits = false;
        std::function<void()> tell;
    };
    std::shared_ptr<Shared> shared_;
};

}  // namespace nettare
