#include "app/window/kitchen_banner.h"

#include <QFileInfo>

#include "app/session/kitchen_session.h"

namespace nettare {

KitchenBanner::KitchenBanner(KitchenSession& kitchen, QWidget* parent)
    : InlineBar{Role::WarningFill, Role::Warning, parent},
      kitchen_{kitchen},
      keep_{addButton(tr("Keep this kitchen…"))} {
    connect(keep_, &QPushButton::clicked, this, &KitchenBanner::keepKitchenAsked);
    connect(&kitchen_, &KitchenSession::kitchenMoved, this, &KitchenBanner::follow);
    follow();
}

void KitchenBanner::follow() {
    const QString name = QFileInfo{kitchen_.path()}.fileName();
    keep_->setVisible(kitchen_.isSample());
    if (kitchen_.isSample())
        setText(
            tr("Sample, not saved. Try anything; what you do here is gone when the window "
               "closes."));
    else if (!kitchen_.writable() && !kitchen_.heldBy().isEmpty())
        setText(tr("%1 is open in another window (%2); this one shows it read-only.")
                    .arg(name, kitchen_.heldBy()));
    else if (!kitchen_.writable())
        setText(tr("%1 cannot be written; this window shows it read-only.").arg(name));
    // Shown without a parent it would be a window of its own.
    const bool needed = kitchen_.isSample() || !kitchen_.writable();
    if (!needed || parentWidget() != nullptr) setVisible(needed);
}

}  // namespace nettare
