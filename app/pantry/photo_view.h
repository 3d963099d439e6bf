#pragma once

#include <QAbstractButton>
#include <QImage>

namespace nettare {

/// A photograph, small; pressed it is as large as there is room for, and small again. Hidden where
/// there is none.
class PhotoView : public QAbstractButton {
    Q_OBJECT

public:
    explicit PhotoView(QWidget* parent = nullptr);

    /// A null image hides it.
    void show(const QImage& image);
    [[nodiscard]] const QImage& image() const { return image_; }

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fit();
    [[nodiscard]] QSize shownSize() const;

    QImage image_;
};

}  // namespace nettare
