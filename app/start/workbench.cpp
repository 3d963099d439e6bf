#include "app/start/workbench.h"

#include <QApplication>
#include <QTimer>

#include "app/files/share_folder.h"
#include "app/files/table_places.h"
#include "app/kitchen/sample.h"
#include "app/session/now.h"
#include "app/theme/user_settings.h"
#include "app/words/error_sentence.h"

namespace nettare {

namespace {

const QString kLastKitchen = QStringLiteral("kitchen/last");

/// Ends the program once its window was painted for the first time.
class AfterFirstPaint : public QObject {
public:
    explicit AfterFirstPaint(QObject* window) : QObject{window} {
        window->installEventFilter(this);
    }

protected:
    bool eventFilter(QObject* window, QEvent* event) override {
        if (event->type() == QEvent::Paint) QTimer::singleShot(0, qApp, &QApplication::quit);
        return QObject::eventFilter(window, event);
    }
};

}  // namespace

Workbench::Workbench() = default;

Workbench::~Workbench() {
    // The window looks at the kitchen to its end.
    window_.reset();
}

Result<void> Workbench::start(const WindowStart& start) {
    Result<void> opened;
    const QString last = userSettings()->value(kLastKitchen).toString();
    if (!start.kitchen.empty()) {
        opened = open(QString::fromStdString(start.kitchen));
    } else if (!last.isEmpty()) {
        opened = open(last);
        if (!opened) opened = openTheSample(QString::fromStdString(errorSentence(opened.error())));
    } else {
        opened = openTheSample({});
    }
    if (opened && start.exitAfterFirstPaint) new AfterFirstPaint{window_.get()};
    return opened;
}

Result<void> Workbench::open(const QString& path) {
    auto kitchen = Kitchen::open(path.toStdString(), KitchenAccess::Write);
    if (!kitchen) return fail(kitchen.error());
    userSettings()->setValue(kLastKitchen, path);
    show(std::move(*kitchen), false);
    return {};
}

Result<void> Workbench::openTheSample(const QString& message) {
    auto kitchen = openSample();
    QString all = message;
    if (!kitchen) {
        // Without the sample an empty kitchen is better than no window.
        if (all.isEmpty()) all = QString::fromStdString(errorSentence(kitchen.error()));
        kitchen = Kitchen::inMemory(now());
    }
    if (!kitchen) return fail(kitchen.error());
    show(std::move(*kitchen), true);
    if (!all.isEmpty()) window_->say(all);
    return {};
}

void Workbench::show(Kitchen kitchen, bool sample) {
    window_.reset();
    kitchen_ = std::make_unique<KitchenSession>(std::move(kitchen), tablePlaces(), sample);
    window_ = std::make_unique<MainWindow>(*kitchen_, theme_);
    connect(kitchen_.get(), &KitchenSession::kitchenMoved, this,
            [this] { userSettings()->setValue(kLastKitchen, kitchen_->path()); });
    // Not from within the window's own signal: it will be gone.
    connect(
        window_.get(), &MainWindow::kitchenAsked, this,
        [this](const QString& path) {
            if (auto opened = open(path); !opened)
                window_->say(QString::fromStdString(errorSentence(opened.error())));
        },
        Qt::QueuedConnection);
    window_->show();
}

}  // namespace nettare
