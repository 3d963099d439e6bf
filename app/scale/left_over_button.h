#pragma once

#include <QPushButton>

#include "app/scale/left_over.h"

namespace nettare {

class KitchenSession;
class LeftOverPopup;

/// Says what is left over: opens the choice above itself and keeps what was chosen. Until the cook
/// has chosen it follows what the recipe suggests.
class LeftOverButton : public QPushButton {
    Q_OBJECT

public:
    explicit LeftOverButton(KitchenSession& kitchen, QWidget* parent = nullptr);

    [[nodiscard]] const LeftOver& choice() const { return choice_; }
    /// Another recipe: nothing is chosen.
    void forget();
    /// The draft or the line under the cursor changed.
    void follow(const std::string& line);
    void choose(const LeftOver& left);
    void openPopup();
    /// The row of the table that a weighing of it brings into the recipe; nothing for none.
    [[nodiscard]] std::optional<TableFood> brings() const;
    /// What will be computed of it, in a sentence, which the popup shows too. `grams` are those of
    /// the weighing; nothing while none is typed.
    [[nodiscard]] QString explain(std::optional<double> grams);
    /// More would be left than there was; empty where it is not.
    [[nodiscard]] QString caution(double grams) const;

signals:
    void chosen();
    /// The popup was closed.
    void done();

private:
    [[nodiscard]] std::optional<double> there() const;

    KitchenSession& kitchen_;
    LeftOverPopup* popup_;
    LeftOver choice_;
    bool byCook_ = false;
};

}  // namespace nettare
