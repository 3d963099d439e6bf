#pragma once

#include "app/panel/panel_items.h"

#include <QWidget>

namespace nettare {

/// A laid out panel as it leaves the printer: black on white in every shade. Takes the focus, so
/// that a screen reader can read its lines and keys can scroll it.
class PanelPaper : public QWidget {
    Q_OBJECT

public:
    explicit PanelPaper(QWidget* parent = nullptr);

    void show(PanelLayout layout);
    /// Logical pixels for one point; > 0.
    void setScale(double pxPerPoint);
    [[nodiscard]] double scale() const { return pxPerPoint_; }
    /// Of the page alone, in points.
    [[nodiscard]] QSizeF pagePt() const;
    /// Around the page, for the ring of the focus.
    [[nodiscard]] static int marginPx();
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    PanelLayout layout_;
    double pxPerPoint_ = 1;
};

}  // namespace nettare
