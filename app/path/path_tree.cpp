#include "app/path/path_tree.h"

#include <QGuiApplication>
#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>

#include "app/path/step_delegate.h"
#include "app/theme/palette.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

constexpr int kIndentPx = 28;
/// A path of more steps opens down to its lines only.
constexpr int kCalmSteps = 24;

/// An angle that points right while folded and down while open.
QPainterPath foldAngle(QPointF middle, bool open) {
    constexpr double kReach = 4.0, kDepth = 2.5;
    QPainterPath path;
    if (open) {
        path.moveTo(middle + QPointF{-kReach, -kDepth});
        path.lineTo(middle + QPointF{0, kDepth});
        path.lineTo(middle + QPointF{kReach, -kDepth});
    } else {
        path.moveTo(middle + QPointF{-kDepth, -kReach});
        path.lineTo(middle + QPointF{kDepth, 0});
        path.lineTo(middle + QPointF{-kDepth, kReach});
    }
    return path;
}

bool opensByItself(PathKind kind) {
    return kind == PathKind::Figure || kind == PathKind::Division || kind == PathKind::Batch;
}

}  // namespace

PathTree::PathTree(QWidget* parent)
    : QTreeView{parent}, model_{new PathModel{this}}, delegate_{new StepDelegate{*model_, this}} {
    setModel(model_);
    setItemDelegate(delegate_);
    setObjectName(QStringLiteral("path"));
    setAccessibleName(tr("Path of the figure"));
    setHeaderHidden(true);
    setFrameShape(QFrame::NoFrame);
    setIndentation(kIndentPx);
    setAnimated(false);
    setExpandsOnDoubleClick(false);
    setTabKeyNavigation(false);
    setUniformRowHeights(false);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    // Cards stand on the paper of the screen.
    setProperty("onPaper", true);
    connect(this, &QTreeView::doubleClicked, this, &PathTree::open);
}

void PathTree::show(PathStep path) {
    const auto rows = PathModel::rowsTo(currentIndex());
    model_->show(std::move(path));
    layOut();
    unfold();
    const QModelIndex before = model_->at(rows);
    setCurrentIndex(before.isValid() ? before : model_->index(0, 0));
}

void PathTree::clear() {
    model_->clear();
}

void PathTree::setInterval(const QString& interval) {
    model_->setInterval(interval);
    layOut();
}

void PathTree::unfold() {
    if (model_->size() <= kCalmSteps) return expandAll();
    for (QModelIndex index = model_->index(0, 0);
         index.isValid() && opensByItself(model_->step(index).kind);
         index = model_->index(0, 0, index))
        expand(index);
}

void PathTree::layOut() {
    delegate_->measureNumbers();
    delegate_->setRoom(viewport()->width(), kIndentPx);
    scheduleDelayedItemsLayout();
}

void PathTree::open(const QModelIndex& index) {
    if (!index.isValid()) return;
    if (const auto line = model_->step(index).line)
        emit lineWanted(*line);
    else
        setExpanded(index, !isExpanded(index));
}

void PathTree::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        return open(currentIndex());
    if (event->matches(QKeySequence::Copy)) return emit copyWanted();
    QTreeView::keyPressEvent(event);
}

void PathTree::resizeEvent(QResizeEvent* event) {
    QTreeView::resizeEvent(event);
    layOut();
}

void PathTree::drawRow(QPainter* painter, const QStyleOptionViewItem& option,
                       const QModelIndex& index) const {
    QStyleOptionViewItem own = option;
    own.rect = visualRect(index);
    own.state.setFlag(QStyle::State_Selected, index == currentIndex());
    own.state.setFlag(QStyle::State_HasFocus, hasFocus());
    delegate_->paint(painter, own, index);
    if (model_->rowCount(index) == 0) return;
    const QPointF middle{own.rect.left() - kIndentPx / 2.0, own.rect.top() + kSpace6Px - 1.0};
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen{colour(Role::Outline, shadeOf(QGuiApplication::palette())), 1.5});
    painter->drawPath(foldAngle(middle, isExpanded(index)));
    painter->restore();
}

void PathTree::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTreeView::currentChanged(current, previous);
    viewport()->update();
}

void PathTree::focusInEvent(QFocusEvent* event) {
    QTreeView::focusInEvent(event);
    viewport()->update();
}

void PathTree::focusOutEvent(QFocusEvent* event) {
    QTreeView::focusOutEvent(event);
    viewport()->update();
}

}  // namespace nettare
