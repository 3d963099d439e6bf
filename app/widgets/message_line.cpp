#include "app/widgets/message_line.h"

#include "app/icons/icon_engine.h"
#include "app/theme/spacing.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>

#include <algorithm>

namespace nettare {

namespace {

constexpr int kSignPx = 20;
constexpr int kTextLeftPx = kRimPx + kSpace3Px + kSignPx + kSpace2Px;

struct MessageLook {
    Sign sign;
    Role ink, ground;
};

MessageLook lookOf(MessageKind kind) {
    switch (kind) {
        case MessageKind::Warning:
            return {Sign::Warning, Role::Warning, Role::WarningFill};
        case MessageKind::Error:
            return {Sign::Error, Role::Error, Role::ErrorFill};
        case MessageKind::Done:
            return {Sign::Done, Role::Done, Role::DoneFill};
        case MessageKind::Info:
            break;
    }
    return {Sign::Info, Role::Cobalt, Role::Alt};
}

/// How a screen reader tells a kind that the eye has by its sign.
QString kindWord(MessageKind kind) {
    switch (kind) {
        case MessageKind::Warning:
            return MessageLine::tr("Warning: %1");
        case MessageKind::Error:
            return MessageLine::tr("Error: %1");
        case MessageKind::Done:
        case MessageKind::Info:
            break;
    }
    return QStringLiteral("%1");
}

}  // namespace

MessageLine::MessageLine(QWidget* parent)
    : QFrame{parent}, text_{new QLabel}, action_{new QPushButton} {
    text_->setWordWrap(true);
    text_->setTextFormat(Qt::PlainText);
    text_->setObjectName(QStringLiteral("messageText"));
    action_->setObjectName(QStringLiteral("messageAction"));
    auto* const row = new QHBoxLayout{this};
    row->setContentsMargins(kTextLeftPx, kSpace2Px, kSpace2Px, kSpace2Px);
    row->setSpacing(kSpace3Px);
    row->addWidget(text_, 1);
    row->addWidget(action_, 0, Qt::AlignVCenter);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    connect(action_, &QPushButton::clicked, this, &MessageLine::actionTriggered);
    hide();
}

void MessageLine::say(MessageKind kind, const QString& text, const QString& action) {
    kind_ = kind;
    text_->setText(text);
    action_->setText(action);
    action_->setVisible(!action.isEmpty());
    setAccessibleName(kindWord(kind).arg(text));
    show();
    update();
    QAccessibleEvent event{this, QAccessible::Alert};
    QAccessible::updateAccessibility(&event);
}

void MessageLine::clear() {
    text_->clear();
    setAccessibleName({});
    hide();
}

QString MessageLine::text() const {
    return text_->text();
}

void MessageLine::paintEvent(QPaintEvent*) {
    const MessageLook look = lookOf(kind_);
    const Shade shade = shadeOf(palette());
    QPainter painter{this};
    painter.fillRect(rect(), colour(look.ground, shade));
    painter.fillRect(0, 0, kRimPx, height(), colour(look.ink, shade));
    // The sign stands on the first line of the text, which the label centres.
    const int lineHeight = text_->fontMetrics().height();
    const int spare = text_->height() - text_->heightForWidth(text_->width());
    const int top = text_->y() + std::max(0, spare) / 2;
    painter.drawPixmap(
        kRimPx + kSpace3Px, top + (lineHeight - kSignPx) / 2,
        signPixmap(look.sign, colour(look.ink, shade), kSignPx, devicePixelRatioF()));
}

}  // namespace nettare
