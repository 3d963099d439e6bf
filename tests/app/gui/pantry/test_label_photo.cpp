#include "app/gui/pantry/label_typing.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/pantry/label_form.h"
#include "app/pantry/photo_view.h"
#include "app/theme/user_settings.h"

#include <QCoreApplication>
#include <QDropEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPainter>
#include <QPushButton>
#include <QTemporaryDir>

namespace nettare {

namespace {

/// A picture of a package that we drew.
QString drawnPackage(const QTemporaryDir& folder, const QString& name) {
    QImage image{1200, 1600, QImage::Format_RGB32};
    image.fill(Qt::white);
    QPainter painter{&image};
    painter.fillRect(100, 100, 1000, 1400, QColor{214, 226, 240});
    painter.setPen(QPen{Qt::black, 12});
    painter.drawRect(250, 600, 700, 800);
    for (int line = 0; line < 9; ++line)
        painter.drawLine(300, 680 + 75 * line, 300 + 60 * (1 + line % 5), 680 + 75 * line);
    painter.end();
    QString path = folder.filePath(name);
    REQUIRE(image.save(path));
    return path;
}

void waitForPhoto(PantryWindow& pantry) {
    pantry.rest();
    auto& words = child<QLabel>(pantry.screen(), "photoWords");
    REQUIRE(waitUntil([&] { return words.text() != QStringLiteral("reading…"); }));
}

}  // namespace

TEST_CASE("a photograph of the package is kept with its label, and shown with it") {
    userSettings()->clear();
    const QTemporaryDir folder;
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.writeYoghurt(QStringLiteral("6"));
    pantry.screen().takePhoto(drawnPackage(folder, QStringLiteral("yoghurt.jpg")));
    waitForPhoto(pantry);
    auto& words = child<QLabel>(pantry.screen(), "photoWords");
    CHECK(words.text().contains(QStringLiteral("yoghurt.jpg")));
    keepScreenPictures(pantry.demo().window(), QStringLiteral("label-photo"));
    typing.save();
    pantry.rest();
    pantry.rest();
    REQUIRE(pantry.kitchen().ownFoods().all().size() == 1);
    const auto& photo = pantry.kitchen().ownFoods().all().front().current.food.label->photo;
    REQUIRE(photo);
    CHECK(photo->fileName == "yoghurt.jpg");
    CHECK(photo->sha256.size() == 64);
    PhotoView* shown = nullptr;
    for (auto* view : pantry.screen().findChildren<PhotoView*>())
        if (view->isVisible()) shown = view;
    REQUIRE(shown != nullptr);
    const int small = shown->height();
    click(*shown);
    CHECK(shown->height() > 3 * small);
    keepScreenPictures(pantry.demo().window(), QStringLiteral("label-card-photo"));
    click(*shown);
    CHECK(shown->height() == small);
    // The next pack begins without it: it shows the pack before.
    click(child<QPushButton>(pantry.screen(), "adjustFood"));
    CHECK(words.text().startsWith(QStringLiteral("Photograph: none yet")));
}

TEST_CASE("a label that is saved while its photograph is read waits for it") {
    userSettings()->clear();
    const QTemporaryDir folder;
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.writeYoghurt(QStringLiteral("6"));
    pantry.screen().takePhoto(drawnPackage(folder, QStringLiteral("yoghurt.jpg")));
    auto& note = child<QLineEdit>(pantry.screen(), "labelNote");
    pressKey(note, Qt::Key_S, Qt::ControlModifier);
    CHECK(child<QLabel>(pantry.screen(), "labelRefusal")
              .text()
              .startsWith(QStringLiteral("The photograph is still being read")));
    pantry.rest();
    pantry.rest();
    REQUIRE(pantry.kitchen().ownFoods().all().size() == 1);
    const auto& own = pantry.kitchen().ownFoods().all().front();
    CHECK(own.versions == 1);
    REQUIRE(own.current.food.label->photo);
    CHECK(own.current.food.label->photo->fileName == "yoghurt.jpg");
    CHECK_FALSE(note.isVisible());
}

TEST_CASE(
    "a label that is not saved when the window closes has its photograph when it is resumed") {
    userSettings()->clear();
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("mill lane.nettare"));
    {
        PantryWindow pantry;
        pantry.kitchen().keepKitchenAs(path);
        pantry.rest();
        LabelTyping typing{pantry};
        typing.openForm();
        pantry.screen().takePhoto(drawnPackage(folder, QStringLiteral("yoghurt.jpg")));
        waitForPhoto(pantry);
    }
    for (const bool there : {true, false}) {
        if (!there) REQUIRE(QFile::remove(folder.filePath(QStringLiteral("yoghurt.jpg"))));
        ReopenedPantry reopened{path};
        PantryScreen& screen = reopened.screen();
        auto& words = child<QLabel>(screen, "photoWords");
        CHECK(waitUntil([&] { return words.text().contains(QStringLiteral("yoghurt.jpg")); }) ==
              there);
        auto& refusal = child<QLabel>(screen, "labelRefusal");
        INFO(refusal.text().toStdString());
        CHECK(refusal.text().contains(QStringLiteral("yoghurt.jpg")) != there);
    }
}

TEST_CASE("a label that waits for a photograph is not saved where that is none") {
    userSettings()->clear();
    const QTemporaryDir folder;
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.writeYoghurt(QStringLiteral("6"));
    pantry.screen().takePhoto(folder.filePath(QStringLiteral("gone.jpg")));
    pressKey(child<QLineEdit>(pantry.screen(), "labelNote"), Qt::Key_S, Qt::ControlModifier);
    pantry.rest();
    pantry.rest();
    CHECK(pantry.kitchen().ownFoods().all().empty());
    CHECK(child<QLabel>(pantry.screen(), "labelRefusal").isVisible());
    typing.save();
    pantry.rest();
    CHECK(pantry.kitchen().ownFoods().all().size() == 1);
}

TEST_CASE("a slip in a label is corrected with the day and the photograph of its package") {
    userSettings()->clear();
    const QTemporaryDir folder;
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.writeYoghurt(QStringLiteral("6"));
    typing.put("labelDate", QStringLiteral("2026-05-16"));
    pantry.screen().takePhoto(drawnPackage(folder, QStringLiteral("yoghurt.jpg")));
    waitForPhoto(pantry);
    typing.save();
    pantry.rest();
    pantry.rest();
    REQUIRE(pantry.kitchen().ownFoods().all().size() == 1);
    const auto photo = pantry.kitchen().ownFoods().all().front().current.food.label->photo;
    auto& correct = child<QPushButton>(pantry.screen(), "correctLabel");
    CHECK(correct.text() == QStringLiteral("Correct…"));
    click(correct);
    pantry.rest();
    CHECK(child<QLabel>(pantry.screen(), "labelAbout").text() ==
          QStringLiteral("United States · corrected, version 2"));
    CHECK(child<QLineEdit>(pantry.screen(), "labelDate").text() == QStringLiteral("2026-05-16"));
    CHECK(child<QLabel>(pantry.screen(), "photoWords")
              .text()
              .contains(QStringLiteral("yoghurt.jpg")));
    keepScreenPictures(pantry.demo().window(), QStringLiteral("label-correct"));
    typing.put("label_PROCNT", QStringLiteral("17"));
    typing.save();
    pantry.rest();
    pantry.rest();
    const auto& own = pantry.kitchen().ownFoods().all().front();
    CHECK(own.versions == 2);
    CHECK(*own.current.food.label->printed(Component::PROCNT) == "17");
    CHECK(own.current.origin.date == "2026-05-16");
    CHECK(own.current.food.label->photo == photo);
}

TEST_CASE("a photograph is dropped on the label's form") {
    userSettings()->clear();
    const QTemporaryDir folder;
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    QMimeData dragged;
    dragged.setUrls({QUrl::fromLocalFile(drawnPackage(folder, QStringLiteral("dropped.png")))});
    auto* const form = pantry.screen().findChild<LabelForm*>();
    REQUIRE(form != nullptr);
    QDragEnterEvent enter{form->rect().center(), Qt::CopyAction, &dragged, Qt::LeftButton,
                          Qt::NoModifier};
    QCoreApplication::sendEvent(form, &enter);
    CHECK(enter.isAccepted());
    QDropEvent drop{QPointF{form->rect().center()}, Qt::CopyAction, &dragged, Qt::LeftButton,
                    Qt::NoModifier};
    QCoreApplication::sendEvent(form, &drop);
    waitForPhoto(pantry);
    CHECK(child<QLabel>(pantry.screen(), "photoWords")
              .text()
              .contains(QStringLiteral("dropped.png")));
    click(child<QPushButton>(pantry.screen(), "removePhoto"));
    CHECK(child<QLabel>(pantry.screen(), "photoWords")
              .text()
              .startsWith(QStringLiteral("Photograph: none yet")));
}

TEST_CASE("a file that is no photograph is refused where it was chosen") {
    userSettings()->clear();
    const QTemporaryDir folder;
    QFile text{folder.filePath(QStringLiteral("notes.jpg"))};
    REQUIRE(text.open(QIODevice::WriteOnly));
    text.write("not a photograph");
    text.close();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    pantry.screen().takePhoto(text.fileName());
    waitForPhoto(pantry);
    auto& refusal = child<QLabel>(pantry.screen(), "labelRefusal");
    CHECK(refusal.text() ==
          QStringLiteral("the photograph is neither a JPEG nor a PNG file; choose one of these."));
    pantry.screen().takePhoto(folder.filePath(QStringLiteral("gone.jpg")));
    waitForPhoto(pantry);
    CHECK(refusal.isVisible());
    CHECK(child<QLabel>(pantry.screen(), "photoWords")
              .text()
              .startsWith(QStringLiteral("Photograph: none yet")));
}

}  // namespace nettare
