#include <QAbstractItemView>
#include <QApplication>
#include <QElapsedTimer>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <cstdio>
#include <functional>
#include <vector>

#include "app/files/read_file.h"
#include "app/files/share_folder.h"
#include "app/session/kitchen_session.h"
#include "app/session/now.h"
#include "app/support/quiet_start.h"
#include "app/window/main_window.h"

// From a key that is pressed in an amount to the figures that are painted, on a recipe of 40 lines;
// beside it a field whose text is shown in a label, which is what any window takes. The aim is a
// 99th percentile under 16 ms.

namespace nettare {

namespace {

constexpr int kKeys = 200;
constexpr int kLines = 40;

/// The skewers with their lines once more and once more, to forty; only the first ones are weighed.
Json longRecipe(Json document) {
    const Json::Array lines = *document.find("lines")->items();
    Json all = Json::array();
    for (std::size_t i = 0; i < kLines; ++i) {
        Json line = lines[i % lines.size()];
        if (i >= lines.size()) {
            line = Json::object();
            const Json& like = lines[i % lines.size()];
            line.set("id", Json{"line-" + std::to_string(i)});
            line.set("amount", Json{std::to_string(5 + i)}).set("unit", Json{"g"});
            line.set("food", *like.find("food"));
        }
        all.append(std::move(line));
    }
    return std::move(document.set("lines", std::move(all)));
}

struct Percentiles {
    double median_ms, p99_ms, most_ms;
};

Percentiles percentilesOf(std::vector<double> times_ms) {
    std::ranges::sort(times_ms);
    const auto at = [&](double share) {
        return times_ms[static_cast<std::size_t>(share * static_cast<double>(times_ms.size() - 1))];
    };
    return {at(0.5), at(0.99), times_ms.back()};
}

/// Presses digits and Backspace in turn; each time until nothing is left to paint.
Percentiles timeKeys(const std::function<QWidget*()>& field) {
    std::vector<double> times_ms;
    for (int i = 0; i < kKeys; ++i) {
        QElapsedTimer since;
        since.start();
        if (i % 2 == 0)
            QTest::keyClick(field(), static_cast<char>('1' + i / 2 % 9));
        else
            QTest::keyClick(field(), Qt::Key_Backspace);
        QApplication::sendPostedEvents();
        QApplication::processEvents();
        times_ms.push_back(static_cast<double>(since.nsecsElapsed()) / 1e6);
    }
    return percentilesOf(std::move(times_ms));
}

Percentiles bareWindow() {
    QWidget window;
    auto* const form = new QFormLayout{&window};
    auto* const field = new QLineEdit;
    auto* const label = new QLabel;
    form->addRow(field);
    form->addRow(label);
    QObject::connect(field, &QLineEdit::textChanged, label, &QLabel::setText);
    window.resize(1280, 800);
    window.show();
    field->setFocus();
    QTest::qWait(100);
    return timeKeys([field] { return field; });
}

Percentiles workbench() {
    const auto text = readFile(shareFolder() + "/demo/prawn-fennel-skewers.json");
    auto kitchen = Kitchen::inMemory(now());
    const auto recipe = kitchen->addRecipe(longRecipe(*parseJson(*text)), now());
    Theme theme;
    KitchenSession session{std::move(*kitchen), shareFolder() + "/starter.table", true};
    MainWindow window{session, theme};
    window.resize(1280, 800);
    window.show();
    session.openRecipe(QString::fromStdString(*recipe));
    QTest::qWait(500);
    auto* const table = window.findChild<QTableView*>(QStringLiteral("lines"));
    table->setFocus();
    table->setCurrentIndex(table->model()->index(3, 0));
    table->edit(table->currentIndex());
    return timeKeys([table]() -> QWidget* { return table->viewport()->findChild<QLineEdit*>(); });
}

void print(const char* what, const Percentiles& times) {
    std::printf("%-28s median %6.2f ms, 99th percentile %6.2f ms, most %6.2f ms\n", what,
                times.median_ms, times.p99_ms, times.most_ms);
}

}  // namespace

}  // namespace nettare

int main(int argc, char** argv) {
    const QTemporaryDir settings;
    qputenv("XDG_CONFIG_HOME", settings.path().toLocal8Bit());
    auto quiet = std::make_unique<nettare::QuietStart>();
    const QApplication application{argc, argv};
    quiet.reset();
    const auto bare = nettare::bareWindow();
    const auto own = nettare::workbench();
    nettare::print("field and label", bare);
    nettare::print("amount to painted figures", own);
    std::printf("ratio of the 99th percentiles %.1f; the aim is under 16 ms\n",
                own.p99_ms / bare.p99_ms);
    return 0;
}
