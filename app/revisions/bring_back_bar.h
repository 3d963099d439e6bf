#pragma once

#include <QFrame>

#include <optional>

#include "core/support/error.h"

class QLabel;
class QPushButton;

namespace nettare {

class KitchenSession;

/// Asks before a revision is brought back, in place, and says what came of it. Escape thinks
/// better of it.
class BringBackBar : public QFrame {
    Q_OBJECT

public:
    explicit BringBackBar(KitchenSession& kitchen, QWidget* parent = nullptr);

    /// Why nothing can be brought back now; empty where it can.
    [[nodiscard]] static QString hindrance(const KitchenSession& kitchen);

    void ask(int revision);
    [[nodiscard]] QString text() const;

signals:
    /// The revision's text is kept as the newest one, of that number.
    void broughtBack(int newest);
    /// The bar gives the focus back.
    void left();

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void bring();
    void leave();
    void followRevisions();
    void followFailure(const Error& error);
    void say(const QString& text, bool asking);
    [[nodiscard]] int newest() const;

    KitchenSession& kitchen_;
    QLabel* words_;
    QPushButton *bring_, *cancel_;
    int revision_ = 0;
    std::optional<int> waitingSince_;  ///< the newest revision when it was told to bring one back
};

}  // namespace nettare
