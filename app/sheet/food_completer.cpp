#include "app/sheet/food_completer.h"

#include <QAbstractItemView>

#include <algorithm>

#include "app/sheet/offer_delegate.h"

namespace nettare {

namespace {

constexpr int kLeastListWidth = 340;

}  // namespace

FoodCompleter::FoodCompleter(const KitchenSession& kitchen, QLineEdit& field, FoodWords foodWords)
    : QObject{&field},
      kitchen_{kitchen},
      field_{field},
      foodWords_{std::move(foodWords)},
      completer_{new QCompleter{this}},
      texts_{new QStringListModel{completer_}} {
    completer_->setModel(texts_);
    completer_->setWidget(&field);
    completer_->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
    completer_->popup()->setAccessibleName(tr("Foods that fit"));
    completer_->popup()->setProperty("offers", true);
    completer_->popup()->setItemDelegate(new OfferDelegate{completer_->popup()});
    connect(&field, &QLineEdit::textEdited, this, &FoodCompleter::offer);
    connect(completer_, qOverload<const QModelIndex&>(&QCompleter::activated), this,
            [this](const QModelIndex& index) {
                const auto row = static_cast<std::size_t>(index.row());
                if (index.isValid() && row < offers_.size()) emit chosen(offers_[row]);
            });
}

bool FoodCompleter::isOpen() const {
    return completer_->popup()->isVisible();
}

void FoodCompleter::close() {
    completer_->popup()->hide();
}

std::optional<FoodOffer> FoodCompleter::best() const {
    const auto offers = foodOffers(kitchen_, foodWords_(field_.text()));
    const bool fits = !offers.empty() && !offers.front().forgiven;
    return fits ? std::optional{offers.front()} : std::nullopt;
}

void FoodCompleter::offer(const QString& text) {
    offers_ = foodOffers(kitchen_, foodWords_(text));
    if (offers_.empty()) return close();
    QStringList texts;
    for (const FoodOffer& each : offers_) texts += each.text;
    texts_->setStringList(texts);
    const QRect below{0, 0, std::max(field_.width(), kLeastListWidth), field_.height()};
    completer_->complete(below);
    if (!offers_.front().forgiven)
        completer_->popup()->setCurrentIndex(completer_->completionModel()->index(0, 0));
}

}  // namespace nettare
