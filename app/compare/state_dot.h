#pragma once

#include <QPushButton>

namespace nettare {

/// How a state stands in a comparison.
enum class DotSide { None, Left, Right };

/// One state of a recipe on the strip: a ring for a revision, a broken ring for the draft; filled
/// where the state is one of the two compared.
class StateDot : public QPushButton {
    Q_OBJECT

public:
    /// `text` stands beside the dot, `spoken` is its name for screen readers and its tool tip.
    StateDot(const QString& text, const QString& spoken, bool draft, QWidget* parent = nullptr);

    void setSide(DotSide side);
    [[nodiscard]] DotSide side() const { return side_; }
    /// Where the dot itself is, in the widget.
    [[nodiscard]] static int dotRightPx();
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintDot(QPainter& painter) const;

    QString spoken_;
    bool draft_;
    DotSide side_ = DotSide::None;
};

}  // namespace nettare
