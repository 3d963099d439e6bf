#pragma once

#include <QPushButton>

namespace nettare {

/// A big button with a main text and a second line in grey; what is too long for it is cut with
/// dots, and a tool tip has it whole.
class TwoLineButton : public QPushButton {
    Q_OBJECT

public:
    explicit TwoLineButton(QWidget* parent = nullptr);

    /// No second line without `detail`.
    void setTexts(const QString& main, const QString& detail);
    [[nodiscard]] const QString& mainText() const { return main_; }
    [[nodiscard]] const QString& detail() const { return detail_; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] int textHeight_px() const;

    QString main_, detail_;
};

}  // namespace nettare
