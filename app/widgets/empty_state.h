#pragma once

#include <QWidget>

class QLabel;
class QPushButton;

namespace nettare {

/// In place of what a screen cannot show yet: what belongs here, and one action.
class EmptyState : public QWidget {
    Q_OBJECT

public:
    explicit EmptyState(QWidget* parent = nullptr);

    /// A headline, a sentence or two, and the button's text; no button without one.
    void show(const QString& headline, const QString& words, const QString& action = {});
    [[nodiscard]] QString text() const;
    /// Something to fill in at once, below the action. Takes it over.
    void setBelow(QWidget* widget);

signals:
    void actionChosen();

private:
    QLabel *headline_, *words_;
    QPushButton* action_;
};

}  // namespace nettare
