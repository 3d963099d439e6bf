#pragma once

#include "app/window/inline_bar.h"

namespace nettare {

class KitchenSession;

/// Says what is special about the open kitchen: a sample that is saved nowhere yet, or one that
/// shows read-only. Hidden where nothing is.
class KitchenBanner : public InlineBar {
    Q_OBJECT

public:
    explicit KitchenBanner(KitchenSession& kitchen, QWidget* parent = nullptr);

signals:
    void keepKitchenAsked();

private:
    void follow();

    KitchenSession& kitchen_;
    QPushButton* keep_;
};

}  // namespace nettare
