#pragma once

#include "core/support/error.h"

#include <QCoreApplication>
#include <QString>

namespace nettare {

/// Why there is no panel, in words for the screen: what is wrong, and what to do about it.
struct PanelTrouble {
    Q_DECLARE_TR_FUNCTIONS(PanelTrouble)

public:
    QString what, advice;

    /// Of an error of usPanelOf(), or of a document that has no figures.
    [[nodiscard]] static PanelTrouble of(const Error& error);
};

}  // namespace nettare
