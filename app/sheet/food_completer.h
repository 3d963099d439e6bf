#pragma once

#include <QCompleter>
#include <QLineEdit>
#include <QStringListModel>

#include <functional>

#include "app/sheet/food_offers.h"

namespace nettare {

/// Shows, below a field, the foods that fit the food words in it. The best one is marked, so that
/// Enter or Tab takes it.
class FoodCompleter : public QObject {
    Q_OBJECT

public:
    /// The food words within what stands in the field; empty where it asks for no food.
    using FoodWords = std::function<QString(const QString& text)>;

    FoodCompleter(const KitchenSession& kitchen, QLineEdit& field, FoodWords foodWords);

    [[nodiscard]] bool isOpen() const;
    void close();
    /// The best offer for what stands in the field; nothing where none fits.
    [[nodiscard]] std::optional<FoodOffer> best() const;

signals:
    void chosen(const nettare::FoodOffer& offer);

private:
    void offer(const QString& text);

    const KitchenSession& kitchen_;
    QLineEdit& field_;
    FoodWords foodWords_;
    std::vector<FoodOffer> offers_;
    QCompleter* completer_;
    QStringListModel* texts_;
};

}  // namespace nettare
