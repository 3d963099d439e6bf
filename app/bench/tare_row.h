#pragma once

#include <QWidget>

#include <vector>

class QPushButton;

namespace nettare {

/// Tares side by side, the chosen one pressed. Those that have no room are behind "more".
class TareRow : public QWidget {
    Q_OBJECT

public:
    explicit TareRow(QWidget* parent = nullptr);

    void setTares(const QStringList& texts, int chosen);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void chosen(int index);
    void moreAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

private:
    void arrange();

    std::vector<QPushButton*> buttons_;
    QStringList texts_;
    int chosen_ = 0;
    QPushButton* more_;
};

}  // namespace nettare
