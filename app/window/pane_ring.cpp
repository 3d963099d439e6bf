#include "app/window/pane_ring.h"

#include <QApplication>

#include <algorithm>

namespace nettare {

PaneRing::PaneRing(QObject* parent) : QObject{parent} {
    connect(qApp, &QApplication::focusChanged, this,
            [this](QWidget*, QWidget* now) { follow(now); });
}

void PaneRing::add(Pane* pane) {
    panes_.emplace_back(pane);
}

void PaneRing::step(bool forward) {
    std::erase_if(panes_, [](const QPointer<Pane>& pane) { return pane.isNull(); });
    if (panes_.empty()) return;
    const auto found = std::ranges::find(panes_, active_);
    const std::size_t count = panes_.size();
    std::size_t at = found == panes_.end() ? (forward ? count - 1 : 0)
                                           : static_cast<std::size_t>(found - panes_.begin());
    for (std::size_t tried = 0; tried < count; ++tried) {
        at = (at + (forward ? 1 : count - 1)) % count;
        if (panes_[at]->isVisible() && panes_[at]->enter()) return;
    }
}

void PaneRing::follow(QWidget* focus) {
    // A menu or another window takes the focus for a moment; the pane stays the active one.
    if (focus == nullptr) return;
    for (const QPointer<Pane>& pane : panes_) {
        if (pane.isNull() || !pane->isAncestorOf(focus)) continue;
        if (active_ != nullptr && active_ != pane) active_->setActive(false);
        active_ = pane;
        pane->remember(focus);
        pane->setActive(true);
        return;
    }
}

}  // namespace nettare
