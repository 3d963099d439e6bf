#pragma once

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include "app/theme/palette.h"

namespace nettare {

/// A bar across the window that says one thing and offers what to do about it; part of the layout,
/// never above it.
class InlineBar : public QFrame {
    Q_OBJECT

public:
    /// `fill` is its ground; `stripe` the colour of its left edge.
    InlineBar(Role fill, Role stripe, QWidget* parent = nullptr);

    void setText(const QString& text);
    [[nodiscard]] QString text() const { return words_->text(); }
    QPushButton* addButton(const QString& text);
    /// Between the words and the buttons.
    void addField(QWidget* field);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Role fill_, stripe_;
    QLabel* words_;
    QHBoxLayout* row_;
};

}  // namespace nettare
