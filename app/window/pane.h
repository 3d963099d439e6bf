#pragma once

#include <QFrame>
#include <QPointer>

#include "app/theme/palette.h"

namespace nettare {

/// A part of the window that F6 stops at. The cobalt rim above it says that it is the active one.
class Pane : public QFrame {
    Q_OBJECT

public:
    /// `name` is what screen readers call it; `ground` its colour.
    Pane(const QString& name, Role ground, QWidget* parent = nullptr);

    /// Which sides carry a hairline against the neighbour.
    void setHairlines(Qt::Edges edges);
    [[nodiscard]] bool isActive() const { return active_; }
    void setActive(bool active);
    /// Gives the focus to where it last was in here, else to the first place that takes it.
    /// False where nothing does.
    bool enter();
    /// The focus is now on `widget`, which is in here.
    void remember(QWidget* widget) { last_ = widget; }
    /// Where enter() goes first.
    void setEntry(QWidget* widget) { entry_ = widget; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Role ground_;
    Qt::Edges hairlines_;
    bool active_ = false;
    QPointer<QWidget> last_, entry_;
};

}  // namespace nettare
