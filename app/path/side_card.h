#pragma once

#include <QFrame>

class QLabel;
class QVBoxLayout;

namespace nettare {

/// A card beside the path: a heading, a text, and what stands below them.
class SideCard : public QFrame {
    Q_OBJECT

public:
    explicit SideCard(const QString& heading, QWidget* parent = nullptr);

    void setHeading(const QString& heading);
    /// Empty hides it.
    void setText(const QString& text);
    [[nodiscard]] QString heading() const;
    [[nodiscard]] QString text() const;
    /// With a stripe at its left: something to do.
    void setStriped(bool striped);
    /// Where more goes.
    [[nodiscard]] QVBoxLayout& column() { return *column_; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QVBoxLayout* column_;
    QLabel *heading_, *text_;
    bool striped_ = false;
};

}  // namespace nettare
