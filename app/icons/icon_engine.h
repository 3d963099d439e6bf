#pragma once

#include "app/theme/palette.h"

#include <QIconEngine>

#include <cstdint>

namespace nettare {

/// Our own drawings in resources/icons.
enum class Sign : std::uint8_t {
    Add,
    Remove,
    Up,
    Down,
    Undo,
    Redo,
    Search,
    Keep,
    Compare,
    Panel,
    Back,
    Close,
    More,
    Info,
    Warning,
    Error,
    Done,
    Nettare,  ///< the program's own
};

/// Draws a sign in the palette's ink, at the resolution of the screen. The shade is the program's
/// at the moment of painting, so icons follow a change by a repaint.
class IconEngine : public QIconEngine {
public:
    /// `ink` is the colour while enabled; disabled signs take the colour of outlines.
    explicit IconEngine(Sign sign, Role ink = Role::Ink) : sign_{sign}, ink_{ink} {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State state) override;
    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override;
    QPixmap scaledPixmap(const QSize& size, QIcon::Mode mode, QIcon::State state,
                         qreal scale) override;
    [[nodiscard]] QIconEngine* clone() const override;
    QString key() const override;

private:
    Sign sign_;
    Role ink_;
};

/// An icon for actions and buttons.
[[nodiscard]] QIcon iconOf(Sign sign, Role ink = Role::Ink);

/// One picture in one colour, for what paints itself. `sizePx` is logical.
[[nodiscard]] QPixmap signPixmap(Sign sign, const QColor& ink, int sizePx, qreal pixelRatio);

}  // namespace nettare
