#pragma once

#include "app/compare/state_dot.h"

#include <QWidget>

#include <vector>

class QHBoxLayout;

namespace nettare {

/// One state on the strip.
struct StripState {
    QString text;    ///< "4", "draft"
    QString spoken;  ///< "Revision 4, 12 March, oilier, more garlic"
    bool draft = false;
};

/// Two states of a strip, by index, the earlier one left.
struct StatePair {
    int left = 0, right = 0;
    friend bool operator==(StatePair, StatePair) = default;
};

/// The states of a recipe in the order they came, two of them chosen. A click or Space on another
/// one takes it in place of the one that was chosen longer ago; so any pair is two clicks away.
/// Tab stops here once; Left, Right, Home and End go from dot to dot.
class StateStrip : public QWidget {
    Q_OBJECT

public:
    explicit StateStrip(QWidget* parent = nullptr);

    /// At least two states, and a pair of them.
    void show(const std::vector<StripState>& states, StatePair pair);
    void setPair(StatePair pair);
    [[nodiscard]] StatePair pair() const { return pair_; }
    [[nodiscard]] const std::vector<StateDot*>& dots() const { return dots_; }

signals:
    void pairChosen(nettare::StatePair pair);
    /// The dot has the focus now and should be in sight.
    void dotFocused(QWidget* dot);

protected:
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    void clear();
    void choose(int index);
    void markSides();
    void makeTabStop(int index);
    bool stepFrom(int index, int key);

    QHBoxLayout* row_;
    std::vector<StateDot*> dots_;
    StatePair pair_;
    int newest_ = 0;  ///< of the pair, the one chosen last
};

}  // namespace nettare
