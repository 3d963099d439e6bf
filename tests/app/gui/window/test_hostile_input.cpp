#include "app/gui/support/gui.h"
#include "app/gui/window/demo_window.h"

#include <QApplication>
#include <QClipboard>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTableView>

namespace nettare {

namespace {

QString hostile(std::initializer_list<char16_t> letters) {
    return QString::fromUtf16(letters.begin(), static_cast<qsizetype>(letters.size()));
}

std::vector<QString> hostileTexts() {
    return {QString{50'000, QLatin1Char{'x'}},
            QString{200'000, QLatin1Char{'9'}},
            QString{5'000, QLatin1Char{'W'}},
            QStringLiteral("a\nb\r\nc\td"),
            hostile({0x202E, u'1', 0x200F, u'g', 0x2066}),
            hostile({0x0000, 0x0007, 0x001B, u'[', u'2', u'J', 0x009B}),
            hostile({0xD83C, 0xDF64, 0xD83C, 0xDF64}),
            hostile({0xD83C}),
            QStringLiteral("1,500"),
            QStringLiteral("1e9"),
            QStringLiteral("-3"),
            QStringLiteral("½½"),
            QStringLiteral("0"),
            QStringLiteral("99999999"),
            QStringLiteral("1/0"),
            QStringLiteral("5-3 g"),
            QStringLiteral("\"'; DROP TABLE draft; -- %s %n {found} <b>&amp;</b>"),
            QStringLiteral(" "),
            QString{}};
}

void paste(QWidget& field, const QString& text) {
    QApplication::clipboard()->setText(text);
    field.setFocus();
    pressKey(field, Qt::Key_A, Qt::ControlModifier);
    pressKey(field, Qt::Key_V, Qt::ControlModifier);
    settle();
}

std::string documentIn(DemoWindow& demo) {
    return writeJson(demo.draft().document());
}

/// What was done is on the undo stack, whole; nothing opened a box that stops the window.
void takeAllBack(DemoWindow& demo, const std::string& before) {
    CHECK(QApplication::activeModalWidget() == nullptr);
    CHECK(parseJson(documentIn(demo)).has_value());
    for (int i = 0; i < 500 && demo.draft().undoStack().canUndo(); ++i)
        demo.window().commands().undo->trigger();
    demo.window().commands().undo->trigger();
    CHECK(documentIn(demo) == before);
    settle();
}

}  // namespace

TEST_CASE("whatever is pasted into a field, the window stays and undo takes it back") {
    DemoWindow demo;
    const std::string before = documentIn(demo);
    const char* name =
        GENERATE("title", "makes", "portion", "ceiling", "cookedWeight", "leftInBowl", "newLine",
                 "newStep", "gross", "pieces", "note", "findRecipeField", "revisionNote");
    auto* field = &child(demo.window(), name);
    // Enter keeps a revision there, and here opens the first recipe that was found.
    const bool enters = field->objectName() != QStringLiteral("revisionNote") &&
                        field->objectName() != QStringLiteral("findRecipeField");
    if (QString::fromLatin1(name) == QStringLiteral("revisionNote"))
        demo.window().commands().keep->trigger();
    for (const QString& text : hostileTexts()) {
        INFO(name << ": " << text.left(40).toStdString());
        if (!field->isVisible() || !field->isEnabled()) continue;
        paste(*field, text);
        if (enters) pressKey(*field, Qt::Key_Return);
        settle();
        if (enters) pressKey(*field, Qt::Key_Escape);
        takeAllBack(demo, before);
    }
    CHECK(demo.window().width() == 1280);
    CHECK(demo.window().height() == 800);
}

TEST_CASE("whatever is pasted into a cell, the window stays and undo takes it back") {
    DemoWindow demo;
    const std::string before = documentIn(demo);
    const int column = GENERATE(0, 1);
    for (const QString& text : hostileTexts()) {
        INFO(column << ": " << text.left(40).toStdString());
        QWidget& cell = demo.edit(2, column);
        paste(cell, text);
        pressKey(cell, Qt::Key_Return);
        settle();
        takeAllBack(demo, before);
    }
}

TEST_CASE("a method of two hundred steps is shown and can be taken back") {
    DemoWindow demo;
    const std::string before = documentIn(demo);
    auto& entry = child<QLineEdit>(demo.window(), "newStep");
    for (int i = 0; i < 200; ++i) {
        entry.setFocus();
        entry.setText(QStringLiteral("Stir once more."));
        pressKey(entry, Qt::Key_Return);
    }
    settle();
    CHECK(demo.draft().document().find("steps")->items()->size() <= 203);
    CHECK(picture(demo.window()).size() == QSize{1280, 800});
    takeAllBack(demo, before);
}

}  // namespace nettare
