#include "app/widgets/message_line.h"

#include "app/gui/support/gui.h"
#include "app/theme/dress.h"
#include "app/theme/palette.h"

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QVBoxLayout>

#include <tuple>

namespace nettare {

TEST_CASE("a message takes no room until it has something to say") {
    MessageLine line;
    CHECK(line.isHidden());
    line.say(MessageKind::Warning, QStringLiteral("Step 5 says 220 °C, step 3 says 230 °C."));
    CHECK_FALSE(line.isHidden());
    CHECK(spokenOf(line).name ==
          QStringLiteral("Warning: Step 5 says 220 °C, step 3 says 230 °C."));
    CHECK(child<QPushButton>(line, "messageAction").isHidden());
    line.clear();
    CHECK(line.isHidden());
    CHECK(line.text().isEmpty());
}

TEST_CASE("a long message wraps and keeps every word in view") {
    QWidget page;
    auto* const column = new QVBoxLayout{&page};
    auto* const line = new MessageLine;
    column->addWidget(line);
    column->addStretch();
    line->say(MessageKind::Error,
              QStringLiteral("The kitchen could not be saved: the disk is full. Nothing is lost; "
                             "the draft stays here. Free some room and try again."),
              QStringLiteral("Try again"));
    showReady(page, {320, 300});
    const auto& text = child<QLabel>(page, "messageText");
    CHECK(text.height() >= text.heightForWidth(text.width()));
    CHECK(text.height() > 2 * text.fontMetrics().height());
    CHECK(page.height() >= line->height());
}

TEST_CASE("the action of a message is reached by key and by mouse") {
    MessageLine line;
    QSignalSpy actions{&line, &MessageLine::actionTriggered};
    line.say(MessageKind::Info, QStringLiteral("Revision 8 was kept."), QStringLiteral("Compare"));
    showReady(line, {400, 60});
    auto& button = child<QPushButton>(line, "messageAction");
    click(button);
    CHECK(actions.count() == 1);
    button.setFocus();
    pressKey(button, Qt::Key_Space);
    CHECK(actions.count() == 2);
}

TEST_CASE("each kind of message has its own sign and ground, by day and night") {
    MessageLine line;
    showReady(line, {400, 60});
    for (const Shade shade : {Shade::Light, Shade::Dark}) {
        dress(*qApp, shade);
        for (const auto& [kind, ink, ground] :
             {std::tuple{MessageKind::Info, Role::Cobalt, Role::Alt},
              std::tuple{MessageKind::Warning, Role::Warning, Role::WarningFill},
              std::tuple{MessageKind::Error, Role::Error, Role::ErrorFill},
              std::tuple{MessageKind::Done, Role::Done, Role::DoneFill}}) {
            line.say(kind, QStringLiteral("Saved."));
            settle();
            const QImage image = picture(line);
            CHECK(image.pixelColor(0, 0) == colour(ink, shade));
            CHECK(image.pixelColor(399, 2) == colour(ground, shade));
            CHECK(pixelsOf(image.copy(6, 0, 40, 60), colour(ink, shade)) > 4);
        }
    }
    dress(*qApp, Shade::Light);
}

}  // namespace nettare
