#pragma once

#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <QWidget>

#include "app/sheet/yield_texts.h"

namespace nettare {

/// One thing left over, in the row below the title: its weight leads to the scale, the cross takes
/// it off the recipe.
class YieldResidue : public QWidget {
    Q_OBJECT

public:
    explicit YieldResidue(QWidget* parent = nullptr);

    /// What stands before it; empty for nothing.
    void setLabel(const QString& label);
    /// Nothing: it was not weighed yet.
    void setResidue(const std::optional<ShownResidue>& residue, bool editable);
    [[nodiscard]] const std::optional<ShownResidue>& residue() const { return residue_; }
    [[nodiscard]] QPushButton* weighButton() { return weigh_; }
    [[nodiscard]] QToolButton* removeButton() { return remove_; }

signals:
    void weighAsked();
    void removeAsked();

private:
    QLabel* label_;
    QPushButton* weigh_;
    QToolButton* remove_;
    std::optional<ShownResidue> residue_;
};

}  // namespace nettare
