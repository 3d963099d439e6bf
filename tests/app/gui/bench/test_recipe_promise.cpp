#include "app/bench/recipe_promise.h"

#include <catch2/catch.hpp>

#include <QLabel>
#include <QTest>

#include "app/bench/bench_desk.h"
#include "app/bench/series_card.h"
#include "app/gui/session/demo_kitchen.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/scale/weighing.h"
#include "app/session/ledger_series.h"
#include "core/edit/edit_draft.h"

namespace nettare {

namespace {

const SeriesKey kPrawns{"prawn meat", SeriesKind::PerPiece, "prawn"};

/// The skewers, with their prawns by a series of the ledger that was weighed at the bench.
struct PromisedSkewers {
    PromisedSkewers() : desk{*kitchen} {
        std::vector<LedgerEntry> entries;
        for (const int tenths : {92, 97, 105}) entries.push_back(prawn(Decimal{tenths, -1}));
        desk.record(entries);
        rest(*kitchen);
        desk.showSeries(kPrawns);
        rest(*kitchen);
    }

    static LedgerEntry prawn(Decimal shown) {
        LedgerEntry entry;
        entry.id = freshUuid();
        entry.indication = entry.id;
        entry.at = "2026-05-23T08:00:00+02:00";
        entry.shown = shown;
        entry.unit = "g";
        entry.readability = Decimal{1, -1};
        entry.scale = "counter";
        entry.what = kPrawns.what;
        entry.vesselTare = Decimal{0, 0};
        entry.series = SeriesMark{kPrawns.kind, kPrawns.of, {}, {}};
        return entry;
    }

    void bindPrawns() {
        Result<SeriesToBind> series = fail(Error{ErrorCode::SeriesEmpty});
        kitchen->askKitchen(&desk, [&series](const Kitchen& file) -> std::function<void()> {
            series = seriesToBind(file, kPrawns, {});
            return [] {};
        });
        rest(*kitchen);
        REQUIRE(series);
        const Json& document = kitchen->draft()->document();
        const auto edit = bindToSeries(document, "prawns", *series, SeriesUse::Others);
        REQUIRE(edit);
        REQUIRE(kitchen->draft()->apply(*edit));
    }

    void promise(const char* kcal) {
        EditDraft edit{kitchen->draft()->document(), EditKind::Target, "energy"};
        edit.set("/targets/0/at_most", Json{kcal});
        REQUIRE(kitchen->draft()->apply(edit.take()));
    }

    std::unique_ptr<KitchenSession> kitchen = skewersSession();
    BenchDesk desk;
};

bool says(const RecipePromise& promise, const char* words) {
    return QTest::qWaitFor([&] {
        return promise.sentences()
            .join(u'\n')
            .replace(QChar{0x00A0}, u' ')
            .contains(QLatin1String{words});
    });
}

}  // namespace

TEST_CASE("the series says how many more weighings keep the recipe's ceiling") {
    PromisedSkewers skewers;
    RecipePromise promise{skewers.desk};
    promise.look(true);
    QTest::qWait(300);
    CHECK(promise.sentences().isEmpty());
    skewers.bindPrawns();
    REQUIRE(says(promise, "at most 150 kcal energy per portion"));
    skewers.promise("400");
    CHECK(says(promise, "what is weighed is enough"));
    skewers.promise("100");
    CHECK(says(promise, "no weighing mends that"));
    skewers.kitchen->draft()->undoStack().setIndex(0);
    CHECK(QTest::qWaitFor([&] { return promise.sentences().isEmpty(); }));
}

TEST_CASE("the card shows the promise while it is looked at") {
    PromisedSkewers skewers;
    skewers.bindPrawns();
    SeriesCard card{skewers.desk};
    showReady(card, {760, 860});
    auto& shown = child<QLabel>(card, "seriesPromise");
    REQUIRE(QTest::qWaitFor([&] { return shown.isVisible(); }));
    CHECK_THAT(shown.text().toStdString(), Catch::Contains("energy per portion"));
    keepScreenPictures(card, QStringLiteral("series-promise"));
}

TEST_CASE("of changes that come one upon the other the last is answered") {
    PromisedSkewers skewers;
    RecipePromise promise{skewers.desk};
    skewers.bindPrawns();
    promise.look(true);
    for (const char* kcal : {"150", "400", "150", "100", "400"}) {
        skewers.promise(kcal);
        QTest::qWait(230);  // just past the pause, while the one before is still computed
    }
    CHECK(says(promise, "at most 400 kcal"));
    QTest::qWait(500);
    CHECK(says(promise, "at most 400 kcal"));
}

TEST_CASE("nobody is asked while nobody looks") {
    PromisedSkewers skewers;
    RecipePromise promise{skewers.desk};
    skewers.bindPrawns();
    QTest::qWait(300);
    CHECK(promise.sentences().isEmpty());
    promise.look(true);
    CHECK(says(promise, "energy per portion"));
}

}  // namespace nettare
