#include "app/compare/compare_screen.h"
#include "app/gui/support/cut_texts.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/panel_screen/panel_screen.h"
#include "app/revisions/revision_screen.h"
#include "app/theme/pseudo_translator.h"

#include <QApplication>
#include <QPushButton>

namespace nettare {

namespace {

/// While it lives, all texts are some 40 % longer.
class LongTexts {
public:
    LongTexts() { QCoreApplication::installTranslator(&translator_); }
    ~LongTexts() { QCoreApplication::removeTranslator(&translator_); }
    LongTexts(const LongTexts&) = delete;
    LongTexts& operator=(const LongTexts&) = delete;

private:
    PseudoTranslator translator_;
};

std::string cutIn(const QWidget& screen) {
    return cutTexts(screen).join(u'\n').toStdString();
}

}  // namespace

TEST_CASE("the panel's screen has room for longer languages at 1280x800") {
    const LongTexts longer;
    const auto kitchen = sampleSession();
    PanelScreen screen{*kitchen, [](QWidget*, const QString&) { return QString{}; }};
    showReady(screen, {1280, 800});
    settle();
    CHECK(cutIn(screen).empty());
    keepPicture(screen, QStringLiteral("panel-longer"));
}

TEST_CASE("the revision list has room for longer languages at 1280x800") {
    const LongTexts longer;
    const auto kitchen = sampleSession();
    RevisionScreen screen{*kitchen};
    showReady(screen, {1280, 800});
    kitchen->settle();
    settle();
    CHECK(cutIn(screen).empty());
    click(child<QPushButton>(screen, "bringBack"));
    settle();
    CHECK(cutIn(screen).empty());
    keepPicture(screen, QStringLiteral("revisions-longer"));
}

TEST_CASE("the comparison has room for longer languages at 1280x800") {
    const LongTexts longer;
    const auto kitchen = sampleSession();
    CompareScreen screen{*kitchen};
    showReady(screen, {1280, 800});
    screen.compare(1, 3);
    REQUIRE(waitUntil([&] { return !screen.isBusy(); }));
    settle();
    CHECK(cutIn(screen).empty());
    keepPicture(screen, QStringLiteral("compare-longer"));
}

}  // namespace nettare
