#pragma once

#include "app/window/page.h"

namespace nettare {

/// What the program is, what its figures are worth, and under which licence it comes.
class AboutPage : public Page {
    Q_OBJECT

public:
    explicit AboutPage(QWidget* parent = nullptr);
};

}  // namespace nettare
