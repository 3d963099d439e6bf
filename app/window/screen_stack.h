#pragma once

#include <QAction>
#include <QActionGroup>
#include <QStackedWidget>

#include <vector>

namespace nettare {

/// The screens of the window, one visible at a time. Each has a name and an action that shows it;
/// whoever builds a screen adds it here and touches nothing else.
class ScreenStack : public QStackedWidget {
    Q_OBJECT

public:
    explicit ScreenStack(QWidget* parent = nullptr);

    /// Takes the widget over. The action becomes checkable, one of a group, and shows the screen;
    /// the first screen added is the one to come back to.
    void addScreen(const QString& name, QAction* action, QWidget* widget);
    /// The same without a place among actions(): reached by its own action only.
    void addQuietScreen(const QString& name, QAction* action, QWidget* widget);
    /// Does nothing for a name that was not added.
    void show(const QString& name);
    [[nodiscard]] QString current() const;
    /// In the order they were added.
    [[nodiscard]] QList<QAction*> actions() const { return actions_; }

signals:
    void screenAdded(QAction* action);
    void screenShown(const QString& name);

private:
    struct Screen {
        QString name;
        QAction* action;
        QWidget* widget;
    };
    void add(const QString& name, QAction* action, QWidget* widget);

    std::vector<Screen> screens_;
    QList<QAction*> actions_;
    QActionGroup group_;
};

}  // namespace nettare
