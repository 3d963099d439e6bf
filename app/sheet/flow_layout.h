#pragma once

#include <QLayout>

#include <vector>

namespace nettare {

/// Items in a row, as wide as they want to be; those that do not fit begin another row.
class FlowLayout : public QLayout {
public:
    FlowLayout(int columnGap_px, int rowGap_px, QWidget* parent = nullptr);
    ~FlowLayout() override;

    /// The widget comes to stand at that index.
    void insertWidget(int index, QWidget* widget);
    void addItem(QLayoutItem* item) override { items_.push_back(item); }
    [[nodiscard]] int count() const override { return static_cast<int>(items_.size()); }
    [[nodiscard]] QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize minimumSize() const override;
    [[nodiscard]] QSize sizeHint() const override;
    void setGeometry(const QRect& rect) override;

private:
    /// Lays the items out in that width, or only tells the height.
    int arrange(const QRect& rect, bool place) const;

    std::vector<QLayoutItem*> items_;
    int columnGap_px_, rowGap_px_;
};

}  // namespace nettare
