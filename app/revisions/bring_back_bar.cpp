#include "app/revisions/bring_back_bar.h"

#include "app/session/kitchen_session.h"
#include "app/theme/palette.h"
#include "app/theme/spacing.h"
#include "app/words/error_sentence.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>

#include <algorithm>

namespace nettare {

BringBackBar::BringBackBar(KitchenSession& kitchen, QWidget* parent)
    : QFrame{parent},
      kitchen_{kitchen},
      words_{new QLabel},
      bring_{new QPushButton{tr("Bring back")}},
      cancel_{new QPushButton} {
    auto* const row = new QHBoxLayout{this};
    row->setContentsMargins(kSpace6Px, kSpace2Px, kSpace6Px, kSpace2Px);
    row->setSpacing(kSpace2Px);
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    bring_->setObjectName(QStringLiteral("bringBackNow"));
    bring_->setProperty("primary", true);
    cancel_->setObjectName(QStringLiteral("bringBackLeave"));
    row->addWidget(words_, 1);
    row->addWidget(bring_);
    row->addWidget(cancel_);
    connect(bring_, &QPushButton::clicked, this, &BringBackBar::bring);
    connect(cancel_, &QPushButton::clicked, this, &BringBackBar::leave);
    connect(&kitchen_, &KitchenSession::revisionsChanged, this, &BringBackBar::followRevisions);
    connect(&kitchen_, &KitchenSession::failed, this, &BringBackBar::followFailure);
    connect(&kitchen_, &KitchenSession::draftOpened, this, [this] {
        waitingSince_.reset();
        hide();
    });
    hide();
}

QString BringBackBar::hindrance(const KitchenSession& kitchen) {
    if (kitchen.writable()) return {};
    if (kitchen.heldBy().isEmpty())
        return tr("This kitchen is open for reading only, so nothing can be brought back.");
    return tr("This kitchen is open for reading only, since %1 works in it; nothing can be "
              "brought back here.")
        .arg(kitchen.heldBy());
}

int BringBackBar::newest() const {
    int number = 0;
    for (const RevisionSummary& each : kitchen_.revisions()) number = std::max(number, each.number);
    return number;
}

QString BringBackBar::text() const {
    return words_->text();
}

void BringBackBar::say(const QString& text, bool asking) {
    words_->setText(text);
    setAccessibleName(text);
    bring_->setVisible(asking);
    cancel_->setText(asking ? tr("Cancel") : tr("Close"));
    cancel_->setEnabled(!waitingSince_);
    show();
}

void BringBackBar::ask(int revision) {
    if (const QString why = hindrance(kitchen_); !why.isEmpty()) return say(why, false);
    revision_ = revision;
    say(tr("Bring back revision %1? Its text takes the place of the draft's and is kept as "
           "revision %2. Undo gives the draft's text back.")
            .arg(revision)
            .arg(newest() + 1),
        true);
    bring_->setFocus(Qt::OtherFocusReason);
}

void BringBackBar::bring() {
    waitingSince_ = newest();
    say(tr("Bringing back revision %1 …").arg(revision_), false);
    kitchen_.bringBack(revision_);
}

void BringBackBar::followRevisions() {
    if (!waitingSince_ || newest() <= *waitingSince_) return;
    waitingSince_.reset();
    const int number = newest();
    say(tr("Revision %1 is back: its text is the draft now and is kept as revision %2.")
            .arg(revision_)
            .arg(number),
        false);
    emit broughtBack(number);
}

void BringBackBar::followFailure(const Error& error) {
    if (!waitingSince_) return;
    waitingSince_.reset();
    say(tr("Revision %1 was not brought back: %2")
            .arg(revision_)
            .arg(QString::fromStdString(errorSentence(error))),
        false);
}

void BringBackBar::leave() {
    hide();
    emit left();
}

void BringBackBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && !waitingSince_)
        leave();
    else
        QFrame::keyPressEvent(event);
}

void BringBackBar::paintEvent(QPaintEvent*) {
    const Shade shade = shadeOf(palette());
    QPainter painter{this};
    painter.fillRect(rect(), colour(Role::Selection, shade));
    painter.fillRect(0, 0, kRimPx, height(), colour(Role::Cobalt, shade));
}

}  // namespace nettare
