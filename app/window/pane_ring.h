#pragma once

#include <QObject>
#include <QPointer>

#include <vector>

#include "app/window/pane.h"

namespace nettare {

/// The panes of a window in the order of F6. Marks the one that holds the focus as active.
class PaneRing : public QObject {
    Q_OBJECT

public:
    explicit PaneRing(QObject* parent = nullptr);

    void add(Pane* pane);
    /// The next pane (or the one before) that is visible and takes the focus.
    void step(bool forward);
    /// Null where the focus is in none.
    [[nodiscard]] Pane* active() const { return active_; }

private:
    void follow(QWidget* focus);

    std::vector<QPointer<Pane>> panes_;
    QPointer<Pane> active_;
};

}  // namespace nettare
