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
    CHECK(cutIn(bench.screen().weighing()) == std::string{});
    CHECK(cutIn(child<QWidget>(bench.screen(), "ledgerList")) == std::string{});
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
        checkWhole(bench);
    }
}

TEST_CASE("the bench has room for longer languages") {
    PseudoTranslator longer;
    QCoreApplication::installTranslator(&longer);
    {
        BenchWindow bench{{1280, 800}};
        weighSome(bench);
