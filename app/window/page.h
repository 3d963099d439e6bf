#pragma once

#include <QScrollArea>
#include <QVBoxLayout>

namespace nettare {

/// A screen that is read: a heading and what follows it, in a column that scrolls.
class Page : public QScrollArea {
    Q_OBJECT

public:
    explicit Page(const QString& title, QWidget* parent = nullptr);

    /// Where the content goes.
    [[nodiscard]] QVBoxLayout& column() { return *column_; }
    /// A paragraph that wraps, can be selected and read out.
    void addText(const QString& text);
    void addHeading(const QString& text);

private:
    QVBoxLayout* column_;
};

}  // namespace nettare
