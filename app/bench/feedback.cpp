#include "app/bench/feedback.h"

#include <QAccessible>
#include <QApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

#include "app/bench/bench_type.h"
#include "app/theme/palette.h"
#include "app/theme/spacing.h"
#include "app/theme/user_settings.h"

namespace nettare {

namespace {

constexpr int kShape_px = 24;
constexpr int kFlash_ms = 900;
constexpr int kSecondTone_ms = 180;
constexpr int kFeedbackLines = 2;

QString soundKey() {
    return QStringLiteral("bench/silent");
}

Role inkOf(FeedbackKind kind) {
    switch (kind) {
        case FeedbackKind::Recorded:
            return Role::Weighed;
        case FeedbackKind::Caution:
            return Role::Warning;
        case FeedbackKind::Refused:
            return Role::Error;
        default:
            return Role::Ink2;
    }
}

void drawCross(QPainter& painter, const QRectF& place) {
    painter.drawLine(place.topLeft(), place.bottomRight());
    painter.drawLine(place.topRight(), place.bottomLeft());
}

void drawShape(QPainter& painter, FeedbackKind kind, const QRectF& place, const QColor& ink) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{ink, 3});
    switch (kind) {
        case FeedbackKind::Hint:
            break;
        case FeedbackKind::Recorded:
            painter.fillRect(place, ink);
            break;
        case FeedbackKind::TakenBack:
            painter.drawRect(place);
            painter.drawLine(place.topLeft(), place.bottomRight());
            break;
        case FeedbackKind::Caution:
            painter.drawPolygon(QPolygonF{{QPointF{place.center().x(), place.top()},
                                           place.bottomRight(), place.bottomLeft()}});
            break;
        case FeedbackKind::Refused:
            drawCross(painter, place);
            break;
    }
}

}  // namespace

Feedback::Feedback(QWidget* parent)
    : QFrame{parent},
      text_{new QLabel},
      tone_{[] { QApplication::beep(); }},
      muted_{userSettings()->value(soundKey()).toBool()} {
    setObjectName(QStringLiteral("feedback"));
    text_->setFont(benchFont());
    text_->setWordWrap(true);
    text_->setTextFormat(Qt::PlainText);
    text_->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    text_->setMinimumHeight(kFeedbackLines * QFontMetrics{benchFont()}.height());
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(kSpace2Px + kShape_px + kSpace3Px, 0, kSpace2Px, 0);
    row->addWidget(text_);
    flash_.setSingleShot(true);
    flash_.setInterval(kFlash_ms);
    connect(&flash_, &QTimer::timeout, this, qOverload<>(&QWidget::update));
}

QString Feedback::text() const {
    return text_->text();
}

void Feedback::say(FeedbackKind kind, const QString& text) {
    const bool news = kind != FeedbackKind::Hint && kind != FeedbackKind::Caution;
    if (kind == kind_ && text == text_->text() && !news) return;
    kind_ = kind;
    text_->setText(text);
    setAccessibleName(text);
    if (!news) flash_.stop();
    if (news) {
        flash_.start();
        sound(kind);
    }
    if (QAccessible::isActive()) {
        QAccessibleEvent event{this, news ? QAccessible::Alert : QAccessible::NameChanged};
        QAccessible::updateAccessibility(&event);
    }
    update();
}

void Feedback::setMuted(bool muted) {
    muted_ = muted;
    userSettings()->setValue(soundKey(), muted);
}

// One tone says yes, two say no.
void Feedback::sound(FeedbackKind kind) {
    if (muted_) return;
    tone_();
    if (kind == FeedbackKind::Refused)
        QTimer::singleShot(kSecondTone_ms, this, [this] { tone_(); });
}

void Feedback::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Shade shade = shadeOf(palette());
    const QColor ink = colour(inkOf(kind_), shade);
    if (flash_.isActive()) {
        constexpr int kFrame_px = 3;
        painter.setPen(QPen{ink, kFrame_px});
        painter.drawRect(rect().adjusted(1, 1, -2, -2));
    }
    drawShape(painter, kind_,
              {double{kSpace2Px}, (height() - kShape_px) / 2.0, kShape_px, kShape_px}, ink);
}

}  // namespace nettare
