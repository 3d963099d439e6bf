#include "app/gui/support/sample_session.h"

#include <QApplication>

#include <algorithm>

#include "app/files/share_folder.h"
#include "app/gui/support/gui.h"
#include "app/kitchen/sample.h"
#include "app/theme/dress.h"
#include "app/words/error_sentence.h"

namespace nettare {

std::unique_ptr<KitchenSession> sampleSession(const char* title) {
    auto sample = openSample();
    if (!sample) FAIL(errorSentence(sample.error()));
    auto session = std::make_unique<KitchenSession>(std::move(*sample),
                                                    shareFolder() + "/starter.table", true);
    session->settle();
    const auto& shelf = session->shelf();
    const auto recipe = std::find_if(shelf.begin(), shelf.end(), [&](const ShelvedRecipe& each) {
        return each.title.starts_with(title);
    });
    REQUIRE(recipe != shelf.end());
    session->openRecipe(QString::fromStdString(recipe->id));
    session->settle();
    REQUIRE(session->draft() != nullptr);
    return session;
}

void waitForRevision(KitchenSession& kitchen, int number) {
    kitchen.settle();
    const auto there = [&] {
        const auto& revisions = kitchen.revisions();
        return std::any_of(revisions.begin(), revisions.end(),
                           [&](const RevisionSummary& each) { return each.number == number; });
    };
    REQUIRE(waitUntil(there));
}

QStringList unnamedFocusables(QWidget& root) {
    QStringList unnamed;
    for (QWidget* const widget : root.findChildren<QWidget*>()) {
        const bool reached = (widget->focusPolicy() & Qt::TabFocus) != 0 && widget->isVisible() &&
                             widget->isEnabled() && widget->focusProxy() == nullptr;
        if (reached && spokenOf(*widget).name.isEmpty())
            unnamed << QLatin1String{widget->metaObject()->className()} + u' ' +
                           widget->objectName();
    }
    return unnamed;
}

void keepScreenPictures(QWidget& screen, const QString& name) {
    if (qEnvironmentVariableIsEmpty("NETTARE_PICTURES")) return;
    auto& application = *qobject_cast<QApplication*>(QCoreApplication::instance());
    for (const Shade shade : {Shade::Dark, Shade::Light}) {
        dress(application, shade);
        for (const QSize size : {QSize{1280, 800}, QSize{1920, 1080}}) {
            screen.resize(size);
            settle();
            keepPicture(screen, QStringLiteral("%1-%2-%3")
                                    .arg(name, shade == Shade::Dark ? QStringLiteral("dark")
                                                                    : QStringLiteral("light"))
                                    .arg(size.width()));
        }
    }
}

}  // namespace nettare
