#include "app/window/screen_stack.h"

namespace nettare {

ScreenStack::ScreenStack(QWidget* parent) : QStackedWidget{parent}, group_{nullptr} {
    group_.setExclusive(true);
}

void ScreenStack::addScreen(const QString& name, QAction* action, QWidget* widget) {
    add(name, action, widget);
    actions_.append(action);
    emit screenAdded(action);
}

void ScreenStack::addQuietScreen(const QString& name, QAction* action, QWidget* widget) {
    add(name, action, widget);
}

void ScreenStack::add(const QString& name, QAction* action, QWidget* widget) {
    screens_.push_back({name, action, widget});
    action->setCheckable(true);
    action->setChecked(screens_.size() == 1);
    group_.addAction(action);
    addWidget(widget);
    connect(action, &QAction::triggered, this, [this, name] { show(name); });
}

void ScreenStack::show(const QString& name) {
    for (const Screen& screen : screens_) {
        if (screen.name != name) continue;
        screen.action->setChecked(true);
        if (currentWidget() == screen.widget) return;
        setCurrentWidget(screen.widget);
        emit screenShown(name);
        return;
    }
}

QString ScreenStack::current() const {
    for (const Screen& screen : screens_)
        if (screen.widget == currentWidget()) return screen.name;
    return {};
}

}  // namespace nettare
