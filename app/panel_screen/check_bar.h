#pragma once

#include <QWidget>

namespace nettare {

/// A bar that is 50 mm long on the glass if the panel is at its true size: hold a ruler to it.
class CheckBar : public QWidget {
    Q_OBJECT

public:
    explicit CheckBar(QWidget* parent = nullptr);

    /// Logical pixels for one point at true size.
    void setScale(double pxPerPoint);
    [[nodiscard]] double lengthPx() const;
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double pxPerPoint_ = 1;
};

}  // namespace nettare
