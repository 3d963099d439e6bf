#include "app/gui/bench/bench_window.h"

#include <catch2/catch.hpp>

#include <QLineEdit>

#include "app/bench/weigh_display.h"
#include "app/gui/session/demo_kitchen.h"
#include "app/gui/support/gui.h"
#include "app/session/now.h"

namespace nettare {

BenchWindow::BenchWindow(QSize size, bool withRecipe, bool withScale) {
    if (withRecipe) {
        kitchen_ = skewersSession();
    } else {
        auto kitchen = Kitchen::inMemory(now());
        REQUIRE(kitchen);
        kitchen_ = std::make_unique<KitchenSession>(std::move(*kitchen), starterTable(), true);
    }
    screen_ = std::make_unique<BenchScreen>(*kitchen_, paths_);
    feedback().setTone([tones = tones_] { ++*tones; });
    if (withScale) {
        desk().keepScale({"counter", "g", Decimal{1, -1}, Decimal{3000, 0}, {}});
        rest();
        desk().keepVessel(QStringLiteral("steel bowl"), Decimal{2122, -1});
    }
    showReady(*screen_, size);
    rest();
}

std::string BenchWindow::shown() {
    const auto& display = child<WeighDisplay>(*screen_, "netDisplay");
    return (display.number() + u' ' + display.unit()).toStdString();
}

void BenchWindow::weighPrawnMeat() {
    FreeSubject prawns;
    prawns.what = "prawn meat";
    prawns.series = SeriesMark{SeriesKind::PerPiece, "prawn", {}, {}};
    screen_->weighing().weigh(prawns);
}

void BenchWindow::record(const QString& shown) {
    auto& number = screen_->weighing().number();
    number.clear();
    typeText(number, shown);
    pressKey(number, Qt::Key_Return);
    rest();
}

void BenchWindow::rest() {
    for (int i = 0; i < 3; ++i) nettare::rest(*kitchen_);
    settle();
}

std::vector<ChainedEntry> BenchWindow::ledger() {
    std::vector<ChainedEntry> entries;
    kitchen_->askKitchen(screen_.get(), [&entries](Kitchen& kitchen) -> std::function<void()> {
        auto read = kitchen.ledger();
        if (read) entries = std::move(*read);
        return [] {};
    });
    rest();
    return entries;
}

}  // namespace nettare
