#pragma once

#include <QTreeView>

#include "app/path/path_model.h"

namespace nettare {

class StepDelegate;

/// The path of a figure as cards, each indented under what follows from it. Arrows walk and fold;
/// Enter or a double click on what is of a line asks for that line, on anything else it folds.
class PathTree : public QTreeView {
    Q_OBJECT

public:
    explicit PathTree(QWidget* parent = nullptr);

    /// Opens as much as stays calm: everything of a short path, the lines of a long one. The step
    /// at the place of the current one stays current.
    void show(PathStep path);
    void clear();
    /// Shown in place of the half-width of the figure; empty: its half-width.
    void setInterval(const QString& interval);
    [[nodiscard]] const PathModel& steps() const { return *model_; }

signals:
    /// The cook wants to see that line of the recipe.
    void lineWanted(std::size_t line);
    void copyWanted();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void drawRow(QPainter* painter, const QStyleOptionViewItem& option,
                 const QModelIndex& index) const override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void open(const QModelIndex& index);
    void layOut();
    void unfold();

    PathModel* model_;
    StepDelegate* delegate_;
};

}  // namespace nettare
