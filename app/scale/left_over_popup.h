#pragma once

#include <QButtonGroup>
#include <QComboBox>
#include <QFrame>
#include <QLabel>
#include <QLineEdit>
#include <QStackedWidget>

#include "app/scale/left_over.h"

namespace nettare {

class FoodCompleter;
struct FoodOffer;
class KitchenSession;
class MixturePanel;

/// What is left over, chosen in place above the button that opens it. Every choice holds at once;
/// Enter and Esc close.
class LeftOverPopup : public QFrame {
    Q_OBJECT

public:
    LeftOverPopup(KitchenSession& kitchen, QWidget* parent);

    /// Shows that choice above the widget.
    void open(const LeftOver& left, const QWidget& above);
    /// What will be computed.
    void say(const QString& sentence);
    [[nodiscard]] LeftOver choice() const;

signals:
    void changed();
    void closed();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void build();
    QWidget* buildDrip();
    QLayout* buildFoot();
    void connectParts();
    void fill(const LeftOver& left);
    void fillLines(const std::string& chosen);
    void showPage();
    void chooseFood(const FoodOffer& offer);
    void typeFood(const QString& text);
    void tell();

    KitchenSession& kitchen_;
    QButtonGroup* kinds_;
    QStackedWidget* pages_;
    MixturePanel* mixture_;
    QComboBox* line_;
    QLineEdit *food_, *called_;
    FoodCompleter* foods_;
    QLabel* sentence_;
    std::vector<std::string> lines_;  ///< those that the box of lines offers
    FoodChoice drip_;
    std::vector<ShareEntry> shares_;
    bool filling_ = false;
};

}  // namespace nettare
