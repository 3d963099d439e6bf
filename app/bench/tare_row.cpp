#include "app/bench/tare_row.h"

#include <QEvent>
#include <QPushButton>

#include <algorithm>

#include "app/bench/bench_type.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

/// A pressed or focused button has a border thicker by a pixel on each side.
constexpr int kRowHeight_px = kBenchTargetPx + kFocusRingPx;

/// With room for the thicker border of the one that is pressed.
int wideOf(const QPushButton& button) {
    button.ensurePolished();
    return button.sizeHint().width() + kFocusRingPx;
}

}  // namespace

TareRow::TareRow(QWidget* parent) : QWidget{parent}, more_{benchButton(tr("More"), "moreTares")} {
    more_->setParent(this);
    more_->setAccessibleName(tr("More tares, and what to weigh out"));
    connect(more_, &QPushButton::clicked, this, &TareRow::moreAsked);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void TareRow::setTares(const QStringList& texts, int chosen) {
    chosen_ = chosen;
    if (texts != texts_) {
        texts_ = texts;
        for (QPushButton* button : buttons_) {
            button->hide();
            button->deleteLater();
        }
        buttons_.clear();
        for (int i = 0; i < texts.size(); ++i) {
            QPushButton* button = benchButton(texts[i], "tare");
            button->setObjectName(QStringLiteral("tare%1").arg(i));
            button->setParent(this);
            button->setCheckable(true);
            connect(button, &QPushButton::clicked, this, [this, i] { emit this->chosen(i); });
            buttons_.push_back(button);
        }
        setTabOrder(buttons_.empty() ? more_ : buttons_.back(), more_);
    }
    for (std::size_t i = 0; i < buttons_.size(); ++i)
        buttons_[i]->setChecked(static_cast<int>(i) == chosen);
    arrange();
}

QSize TareRow::sizeHint() const {
    return {kBenchTargetPx * 5, kRowHeight_px};
}

QSize TareRow::minimumSizeHint() const {
    return {kBenchTargetPx * 4, kRowHeight_px};
}

void TareRow::resizeEvent(QResizeEvent*) {
    arrange();
}

bool TareRow::event(QEvent* event) {
    const bool done = QWidget::event(event);
    // A pressed button asks for more room than one that is not.
    if (event->type() == QEvent::LayoutRequest || event->type() == QEvent::Show) arrange();
    return done;
}

// The chosen one always has its place.
void TareRow::arrange() {
    const int moreWidth = wideOf(*more_);
    int room = width() - moreWidth;
    std::vector<bool> shown(buttons_.size(), false);
    const auto give = [&](std::size_t i) {
        const int wide = wideOf(*buttons_[i]) + kSpace2Px;
        if (shown[i] || wide > room) return;
        shown[i] = true;
        room -= wide;
    };
    if (chosen_ >= 0 && static_cast<std::size_t>(chosen_) < buttons_.size())
        give(static_cast<std::size_t>(chosen_));
    for (std::size_t i = 0; i < buttons_.size(); ++i) give(i);
    int left = 0;
    for (std::size_t i = 0; i < buttons_.size(); ++i) {
        buttons_[i]->setVisible(shown[i]);
        if (!shown[i]) continue;
        const int wide = wideOf(*buttons_[i]);
        buttons_[i]->setGeometry(left, 0, wide, kRowHeight_px);
        left += wide + kSpace2Px;
    }
    more_->setGeometry(left, 0, moreWidth, kRowHeight_px);
}

}  // namespace nettare
