#pragma once

#include "app/window/page.h"

class QLabel;
class QMenu;
class QMenuBar;

namespace nettare {

/// Every command with its keys, read from the menus each time it is shown.
class KeysPage : public Page {
    Q_OBJECT

public:
    explicit KeysPage(QMenuBar& menus, QWidget* parent = nullptr);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void list(const QMenu& menu, QString& rows) const;

    QMenuBar& menus_;
    QLabel* keys_;
};

}  // namespace nettare
