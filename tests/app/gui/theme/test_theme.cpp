#include "app/theme/theme.h"

#include "app/gui/support/gui.h"
#include "app/gui/support/private_bus.h"
#include "app/gui/theme/fake_portal.h"
#include "app/theme/dress.h"
#include "app/theme/user_settings.h"

#include <QApplication>
#include <QLineEdit>
#include <QSignalSpy>

namespace nettare {

namespace {

/// Every test begins and ends in light, with nothing chosen.
struct FreshLook {
    FreshLook() { userSettings()->clear(); }
    ~FreshLook() {
        userSettings()->clear();
        dress(*qApp, Shade::Light);
    }
    FreshLook(const FreshLook&) = delete;
    FreshLook& operator=(const FreshLook&) = delete;
};

constexpr unsigned kNoWish = 0;
constexpr unsigned kDark = 1;
constexpr unsigned kLight = 2;

}  // namespace

TEST_CASE("an open window follows the desktop from light to dark and back") {
    const FreshLook fresh;
    PrivateBus bus;
    FakePortal portal{bus.connection(QStringLiteral("desktop")), kLight};
    Theme theme{bus.connection(QStringLiteral("program"))};
    QSignalSpy changes{&theme, &Theme::changed};
    QLineEdit field;
    showReady(field, {200, 40});
    const auto wears = [&field](Shade shade) {
        return pixelsOf(picture(field), colour(Role::Raised, shade)) > 1000;
    };
    CHECK(wears(Shade::Light));

    portal.turnTo(kDark);
    REQUIRE(waitUntil([&] { return changes.count() == 1; }));
    CHECK(theme.shade() == Shade::Dark);
    CHECK(shadeOf(field.palette()) == Shade::Dark);
    CHECK(wears(Shade::Dark));

    portal.turnTo(kNoWish);
    REQUIRE(waitUntil([&] { return changes.count() == 2; }));
    CHECK(wears(Shade::Light));
}

TEST_CASE("a desktop that is dark already is asked at the start") {
    const FreshLook fresh;
    PrivateBus bus;
    const FakePortal portal{bus.connection(QStringLiteral("desktop")), kDark};
    const Theme theme{bus.connection(QStringLiteral("program"))};
    CHECK(waitUntil([&] { return theme.shade() == Shade::Dark; }));
}

TEST_CASE("without a bus or without a portal the program is light and silent") {
    const FreshLook fresh;
    CHECK_FALSE(busOfSession().isConnected());
    const Theme alone;
    CHECK(alone.shade() == Shade::Light);
    PrivateBus bus;
    const Theme withoutPortal{bus.connection(QStringLiteral("program"))};
    settle();
    CHECK(withoutPortal.shade() == Shade::Light);
}

TEST_CASE("the user's choice wins over the desktop and is kept") {
    const FreshLook fresh;
    PrivateBus bus;
    FakePortal portal{bus.connection(QStringLiteral("desktop")), kDark};
    {
        Theme theme{bus.connection(QStringLiteral("program"))};
        REQUIRE(waitUntil([&] { return theme.shade() == Shade::Dark; }));
        theme.choose(ShadeChoice::Light);
        CHECK(theme.shade() == Shade::Light);
        CHECK(shadeOf(QApplication::palette()) == Shade::Light);
    }
    Theme next{bus.connection(QStringLiteral("next start"))};
    CHECK(next.choice() == ShadeChoice::Light);
    next.choose(ShadeChoice::Dark);
    CHECK(next.shade() == Shade::Dark);
    portal.turnTo(kLight);
    next.choose(ShadeChoice::System);
    CHECK(waitUntil([&] { return next.shade() == Shade::Light; }));
}

}  // namespace nettare
