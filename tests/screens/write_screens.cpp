#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QTemporaryDir>

#include <cstdio>
#include <memory>

#include "app/files/share_folder.h"
#include "app/kitchen/sample.h"
#include "app/path/path_screen.h"
#include "app/session/kitchen_session.h"
#include "app/session/now.h"
#include "app/support/quiet_start.h"
#include "app/theme/pseudo_translator.h"
#include "app/window/main_window.h"

// write_screens FOLDER: every screen of the workbench as a PNG, by day and by night, in two sizes,
// and once more with every text made longer as a translation may.

namespace nettare {

namespace {

/// Time for answers of the store and of tasks to come and be painted.
constexpr int kCalm_ms = 400;

void letItRest(KitchenSession& kitchen) {
    QElapsedTimer since;
    since.start();
    while (since.elapsed() < kCalm_ms) {
        kitchen.settle();
        QApplication::processEvents(QEventLoop::AllEvents, 20);
    }
}

struct Look {
    ShadeChoice choice;
    const char* name;
};

struct Shot {
    const char* kitchen;
    bool longer;
    Look look;
    QSize sizePx;
};

class Screens {
public:
    explicit Screens(QString folder) : folder_{std::move(folder)} {}

    bool write(Kitchen kitchen, const Shot& shot) {
        Theme theme;
        theme.choose(shot.look.choice);
        KitchenSession session{std::move(kitchen), shareFolder() + "/starter.table", true};
        MainWindow window{session, theme};
        window.resize(shot.sizePx);
        window.show();
        letItRest(session);
        bool all = true;
        for (const char* name : {"sheet", "compare", "panel", "pantry", "path", "trial", "limits",
                                 "rows", "import", "revisions", "keys", "about"}) {
            const QString screen = QString::fromLatin1(name);
            window.showScreen(screen);
            letItRest(session);
            all = save(window, screen, shot) && all;
        }
        window.showScreen(QStringLiteral("path"));
        window.findChild<PathScreen*>()->showPage(1);
        letItRest(session);
        return save(window, QStringLiteral("plots"), shot) && all;
    }

private:
    bool save(QWidget& window, const QString& screen, const Shot& shot) const {
        const QString path = QStringLiteral("%1/%2-%3-%4-%5x%6%7.png")
                                 .arg(folder_, QString::fromLatin1(shot.kitchen), screen,
                                      QString::fromLatin1(shot.look.name))
                                 .arg(shot.sizePx.width())
                                 .arg(shot.sizePx.height())
                                 .arg(shot.longer ? QStringLiteral("-long") : QString{});
        if (window.grab().save(path)) return true;
        std::fprintf(stderr, "%s could not be written.\n", qPrintable(path));
        return false;
    }

    QString folder_;
};

bool writeAll(const QString& folder) {
    Screens screens{folder};
    bool all = true;
    for (const bool longer : {false, true}) {
        PseudoTranslator longTexts;
        if (longer) QCoreApplication::installTranslator(&longTexts);
        for (const Look& look :
             {Look{ShadeChoice::Light, "light"}, Look{ShadeChoice::Dark, "dark"}})
            for (const QSize size : {QSize{1280, 800}, QSize{1920, 1080}}) {
                auto sample = openSample();
                auto empty = Kitchen::inMemory(now());
                if (!sample || !empty) return false;
                all = screens.write(std::move(*sample), {"sample", longer, look, size}) && all;
                all = screens.write(std::move(*empty), {"empty", longer, look, size}) && all;
            }
    }
    return all;
}

}  // namespace

}  // namespace nettare

int main(int argc, char** argv) {
    if (argc != 2) {
        std::fputs("write_screens: name one folder.\n", stderr);
        return 2;
    }
    const QTemporaryDir settings;
    qputenv("XDG_CONFIG_HOME", settings.path().toLocal8Bit());
    auto quiet = std::make_unique<nettare::QuietStart>();
    const QApplication application{argc, argv};
    quiet.reset();
    const QString folder = QString::fromLocal8Bit(argv[1]);
    return QDir{}.mkpath(folder) && nettare::writeAll(folder) ? 0 : 1;
}
