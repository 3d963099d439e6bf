#pragma once

#include <QActionGroup>
#include <QLabel>
#include <QMenu>
#include <QPushButton>

#include "app/sheet/counting_words.h"

namespace nettare {

/// One rule by which the recipe counts what it leaves open, in words; the list below it changes it
/// at once.
class CountingChoice : public QWidget {
    Q_OBJECT

public:
    explicit CountingChoice(QWidget* parent = nullptr);

    /// The first rule carries the label of all.
    void setRule(const ShownRule& rule, bool first, bool editable);
    [[nodiscard]] QPushButton* button() { return button_; }

signals:
    void chosen(nettare::CountingRule rule, const QString& word);

private:
    void fillMenu(const ShownRule& rule);

    QLabel* label_;
    QPushButton* button_;
    QMenu* menu_;
    QActionGroup* options_;
};

}  // namespace nettare
