#include "app/session/now.h"

#include <catch2/catch.hpp>

#include <QRegularExpression>

namespace nettare {

TEST_CASE("the time is written with seconds and the offset of the place") {
    static const QRegularExpression kForm{
        QStringLiteral("^\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(Z|[+-]\\d\\d:\\d\\d)$")};
    CHECK(kForm.match(QString::fromStdString(now())).hasMatch());
}

TEST_CASE("another clock tells the time and what has passed, for as long as it is there") {
    const auto noon =
        QDateTime::fromString(QStringLiteral("2026-05-23T12:00:00+02:00"), Qt::ISODate);
    QDateTime moment = noon;
    SinceThen since;
    CHECK_FALSE(since.seconds());
    {
        const ClockInstead clock{[&moment] { return moment; }};
        CHECK(now() == "2026-05-23T12:00:00+02:00");
        CHECK(today() == QDate{2026, 5, 23});
        since.start();
        CHECK(since.seconds() == 0);
        moment = noon.addSecs(8LL * 3600);
        CHECK(now() == "2026-05-23T20:00:00+02:00");
        CHECK(since.seconds() == 8 * 3600);
    }
    CHECK(now() != "2026-05-23T20:00:00+02:00");
    since.start();
    CHECK(since.seconds() == 0);
}

}  // namespace nettare
