#include "app/compare/change_cards.h"

#include "app/theme/spacing.h"

#include <QGridLayout>
#include <QStringList>

#include <algorithm>

namespace nettare {

namespace {

constexpr int kMostColumns = 6;

}  // namespace

ChangeCards::ChangeCards(QWidget* parent)
    : FocusGroup{tr("What changed"), parent}, grid_{new QGridLayout{this}} {
    grid_->setContentsMargins(0, ringRoomPx(), 0, ringRoomPx());
    grid_->setSpacing(kSpace3Px);
}

void ChangeCards::show(const std::vector<CardWords>& cards) {
    while (cards_.size() > cards.size()) {
        delete cards_.back();
        cards_.pop_back();
    }
    const int columns = std::clamp(static_cast<int>(cards.size()), 1, kMostColumns);
    QStringList spoken;
    for (std::size_t i = 0; i < cards.size(); ++i) {
        if (i == cards_.size()) cards_.push_back(new ChangeCard{this});
        const int place = static_cast<int>(i);
        grid_->addWidget(cards_[i], place / columns, place % columns);
        cards_[i]->show(cards[i]);
        cards_[i]->QWidget::show();
        spoken << cards[i].spoken;
    }
    for (int i = 0; i < kMostColumns; ++i) grid_->setColumnStretch(i, i < columns ? 1 : 0);
    setSpoken(spoken.join(u' '));
}

}  // namespace nettare
