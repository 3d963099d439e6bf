#include "app/panel/start_painting.h"

#include "app/support/quiet_start.h"

#include <QGuiApplication>

#include <array>

namespace nettare {

namespace {

QGuiApplication* offscreenApplication() {
    static std::array<char, 8> program{"nettare"};
    static std::array<char, 10> option{"-platform"};
    static std::array<char, 10> platform{"offscreen"};
    static std::array<char*, 4> words{program.data(), option.data(), platform.data(), nullptr};
    static int count = 3;
    const QuietStart quiet;
    // Never destroyed: its destructor needs statics of Qt that are gone when ours go.
    return new QGuiApplication{count, words.data()};
}

}  // namespace

void startPainting() {
    if (QCoreApplication::instance() != nullptr) return;
    [[maybe_unused]] static const QGuiApplication* const kApplication = offscreenApplication();
}

}  // namespace nettare
