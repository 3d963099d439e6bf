#include "app/bench/bench_screen.h"

#include <QAbstractButton>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QTest>

#include "app/bench/bench_type.h"
#include "app/gui/bench/bench_window.h"
#include "app/gui/support/cut_texts.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/theme/dress.h"
#include "app/theme/pseudo_translator.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

/// What a cook a metre away reads and touches: the left side, the head and the ledger.
void checkSizes(QWidget& root) {
    for (const QLabel* label : root.findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty()) continue;
        INFO(label->text().toStdString());
        CHECK(label->font().pixelSize() >= kBenchTextPx);
    }
    for (const QAbstractButton* button : root.findChildren<QAbstractButton*>()) {
        if (!button->isVisible()) continue;
        INFO(button->objectName().toStdString());
        CHECK(button->height() >= kBenchTargetPx);
        CHECK(button->width() >= kBenchTargetPx);
        CHECK(button->font().pixelSize() >= kBenchTextPx);
    }
    for (const QLineEdit* field : root.findChildren<QLineEdit*>()) {
        if (!field->isVisible()) continue;
        CHECK(field->height() >= kBenchTargetPx);
        CHECK(field->font().pixelSize() >= kBenchTextPx);
    }
}

std::string cutIn(const QWidget& part) {
    return cutTexts(part).join(u'\n').toStdString();
}

void checkWhole(BenchWindow& bench) {
    checkSizes(bench.screen().weighing());
    checkSizes(child<QWidget>(bench.screen(), "ledgerList"));
    CHECK(cutIn(bench.screen().weighing()).empty());
    CHECK(cutIn(child<QWidget>(bench.screen(), "ledgerList")).empty());
    CHECK(bench.screen().minimumSizeHint().width() <= bench.screen().width());
    CHECK(bench.screen().minimumSizeHint().height() <= bench.screen().height());
}

void weighSome(BenchWindow& bench) {
    bench.weighPrawnMeat();
    bench.screen().weighing().chooseTare(1);
    for (const char* shown : {"222.0", "221.9", "222.1", "217.1"})
        bench.record(QLatin1String{shown});
    bench.screen().weighing().takeBackLast();
    bench.rest();
    bench.screen().weighing().setPieces(6);
    bench.record(QStringLiteral("271.1"));
}

void keepBenchPictures(BenchWindow& bench, const QString& name) {
    if (qEnvironmentVariableIsEmpty("NETTARE_PICTURES")) return;
    auto& application = *qobject_cast<QApplication*>(QCoreApplication::instance());
    for (const Shade shade : {Shade::Dark, Shade::Light}) {
        dress(application, shade);
        for (const QSize size : {QSize{1024, 600}, QSize{1280, 800}, QSize{1920, 1080}}) {
            bench.screen().resize(size);
            settle();
            keepPicture(bench.screen(),
                        QStringLiteral("%1-%2-%3")
                            .arg(name, shade == Shade::Dark ? QStringLiteral("dark")
                                                            : QStringLiteral("light"))
                            .arg(size.width()));
        }
    }
}

}  // namespace

TEST_CASE("the bench is whole and readable at a metre, also on 1024 by 600") {
    for (const QSize size : {QSize{1024, 548}, QSize{1280, 800}, QSize{1920, 1080}}) {
        INFO(size.width() << " x " << size.height());
        BenchWindow bench{size};
        weighSome(bench);
        checkWhole(bench);
        CHECK(bench.screen().height() == size.height());
        typeText(bench.screen().weighing().number(), QStringLiteral("213.1"));
        settle();
        checkWhole(bench);
        keepPicture(bench.screen(), QStringLiteral("bench-caution-%1").arg(size.width()));
    }
}

TEST_CASE("the bench has room for longer languages") {
    PseudoTranslator longer;
    QCoreApplication::installTranslator(&longer);
    {
        BenchWindow bench{{1280, 800}};
        weighSome(bench);
        checkWhole(bench);
        keepPicture(bench.screen(), QStringLiteral("bench-longer"));
    }
    QCoreApplication::removeTranslator(&longer);
}

TEST_CASE("everything of the bench that takes the focus has a name") {
    BenchWindow bench;
    weighSome(bench);
    CHECK(unnamedFocusables(bench.screen()).join(u'\n').toStdString().empty());
    for (const char* page : {"benchSubject", "moreTares", "benchScale"}) {
        click(child<QPushButton>(bench.screen(), page));
        settle();
        INFO(page);
        CHECK(unnamedFocusables(bench.screen()).join(u'\n').toStdString().empty());
        pressKey(bench.screen(), Qt::Key_Escape);
    }
}

TEST_CASE("a reading is told by words, a shape, a frame and a tone; the tone can be silenced") {
    BenchWindow bench;
    bench.weighPrawnMeat();
    bench.record(QStringLiteral("58.9"));
    CHECK(bench.tones() == 1);
    CHECK(bench.feedback().isFlashing());
    CHECK(bench.feedback().kind() == FeedbackKind::Recorded);
    CHECK(spokenOf(bench.feedback()).name.toStdString() == bench.said());
    // The shape is there without its colour: the square is filled, the cross is not.
    CHECK(pixelsOf(picture(bench.feedback()), colour(Role::Weighed, Shade::Light)) > 400);
    auto& sound = child<QPushButton>(bench.screen(), "benchSound");
    click(sound);
    CHECK(bench.feedback().isMuted());
    bench.record(QStringLiteral("57.9"));
    CHECK(bench.tones() == 1);
    CHECK_THAT(bench.said(), Catch::StartsWith("Recorded 57.9 g"));
    CHECK(Feedback{}.isMuted());
    click(sound);
    CHECK_FALSE(Feedback{}.isMuted());
    bench.record(QStringLiteral("12.34"));
    REQUIRE(waitUntil([&] { return bench.tones() == 3; }));
}

TEST_CASE("the head of the bench tells the scale and its last check, also one that failed") {
    BenchWindow bench;
    auto& head = child<QPushButton>(bench.screen(), "benchScale");
    CHECK(head.accessibleName() == QStringLiteral("“counter”, readability 0.1 g, not checked yet"));
    bench.desk().checkScale(QStringLiteral("counter"), Decimal{2000, -1}, Decimal{2000, -1});
    bench.rest();
    CHECK_THAT(head.accessibleName().toStdString(),
               Catch::Contains("0.1 g, checked ") && Catch::EndsWith(" with 200.0 g"));
    bench.desk().checkScale(QStringLiteral("counter"), Decimal{2000, -1}, Decimal{1991, -1});
    bench.rest();
    CHECK_THAT(head.accessibleName().toStdString(),
               Catch::Contains("check failed ") && Catch::EndsWith(": shows 199.1 g for 200.0 g"));
}

TEST_CASE("a kitchen without a scale offers to add one, and one without readings says so") {
    BenchWindow bench{{1280, 800}, false, false};
    CHECK(bench.said() == "Add a scale to begin.");
    CHECK(child<QPushButton>(bench.screen(), "benchScale").accessibleName() ==
          QStringLiteral("No scale yet, press to add one"));
    CHECK_FALSE(child<QPushButton>(bench.screen(), "recordReading").isEnabled());
    keepPicture(bench.screen(), QStringLiteral("bench-empty"));
}

TEST_CASE("pictures of the bench") {
    BenchWindow bench;
    weighSome(bench);
    typeText(bench.screen().weighing().number(), QStringLiteral("271.1"));
    keepBenchPictures(bench, QStringLiteral("bench"));
    click(child<QPushButton>(bench.screen(), "benchSubject"));
    keepBenchPictures(bench, QStringLiteral("bench-subjects"));
    CHECK(bench.shown() == "58.9 g ± 0.1");
}

}  // namespace nettare
