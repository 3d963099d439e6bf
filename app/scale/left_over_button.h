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
    /// What will be computed, for the popup while it is open.
    void say(const QString& sentence);

signals:
    void chosen();
    /// The popup was closed.
    void done();

private:
    KitchenSession& kitchen_;
    LeftOverPopup* popup_;
    LeftOver choice_;
    bool byCook_ = false;
};

}  // namespace nettare
