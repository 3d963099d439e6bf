#include "app/window/action_button.h"

namespace nettare {

namespace {

void follow(QPushButton& button, const QAction& action) {
    button.setText(action.iconText());
    button.setEnabled(action.isEnabled());
    button.setCheckable(action.isCheckable());
    button.setChecked(action.isChecked());
    const QString keys = action.shortcut().toString(QKeySequence::NativeText);
    button.setToolTip(keys.isEmpty() ? QString{} : keys);
}

}  // namespace

QPushButton* actionButton(QAction* action, QWidget* parent) {
    auto* button = new QPushButton{parent};
    button->setAutoDefault(false);
    follow(*button, *action);
    QObject::connect(action, &QAction::changed, button,
                     [button, action] { follow(*button, *action); });
    QObject::connect(action, &QAction::toggled, button, &QPushButton::setChecked);
    QObject::connect(button, &QPushButton::clicked, action, [button, action] {
        action->trigger();
        // A click on the one that is on already leaves it on.
        button->setChecked(action->isChecked());
    });
    return button;
}

}  // namespace nettare
