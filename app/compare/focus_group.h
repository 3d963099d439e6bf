#pragma once

#include <QWidget>

namespace nettare {

/// A part of a page that is read, not operated. Tab stops at it, so that keys alone bring it into
/// sight and a screen reader reads it as one; a ring says so.
class FocusGroup : public QWidget {
    Q_OBJECT

public:
    /// `name` is for screen readers; what it says goes into setSpoken().
    explicit FocusGroup(const QString& name, QWidget* parent = nullptr);

    void setSpoken(const QString& text) { setAccessibleDescription(text); }
    /// Room that the ring needs above and below.
    [[nodiscard]] static int ringRoomPx();

protected:
    void paintEvent(QPaintEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
};

}  // namespace nettare
