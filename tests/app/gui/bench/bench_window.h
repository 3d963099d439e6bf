#pragma once

#include <QSize>

#include <memory>
#include <string>

#include "app/bench/bench_screen.h"
#include "app/bench/feedback.h"
#include "app/bench/weigh_pane.h"
#include "app/session/kitchen_session.h"
#include "app/window/path_asker.h"

namespace nettare {

/// The bench on a kitchen in memory, with a scale "counter" of 0.1 g and a steel bowl of 212.2 g;
/// the skewers are open where asked for. No tone sounds; how many would have is counted.
class BenchWindow {
public:
    explicit BenchWindow(QSize size = {1280, 800}, bool withRecipe = true, bool withScale = true);

    [[nodiscard]] KitchenSession& kitchen() { return *kitchen_; }
    [[nodiscard]] BenchScreen& screen() { return *screen_; }
    [[nodiscard]] BenchDesk& desk() { return screen_->desk(); }
    [[nodiscard]] Feedback& feedback() { return screen_->weighing().feedback(); }
    [[nodiscard]] std::string said() { return feedback().text().toStdString(); }
    /// The big digits and what stands beside them: "58.9 g ± 0.1".
    [[nodiscard]] std::string shown();
    [[nodiscard]] int tones() const { return *tones_; }
    /// Weighs prawn meat of the kitchen's own series from now on.
    void weighPrawnMeat();
    /// Types what the scale shows, presses Enter, and waits for the ledger.
    void record(const QString& shown);
    void rest();
    /// Entries of the ledger.
    [[nodiscard]] std::vector<ChainedEntry> ledger();

private:
    std::unique_ptr<KitchenSession> kitchen_;
    DialogPathAsker paths_;  ///< never asked here
    std::unique_ptr<BenchScreen> screen_;
    std::shared_ptr<int> tones_ = std::make_shared<int>(0);
};

}  // namespace nettare
