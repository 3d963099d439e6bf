#pragma once

#include <QActionGroup>
#include <QMenu>
#include <QPushButton>

#include "core/nutrition/source.h"

namespace nettare {

/// What the figures are of, in words; the list below it changes it at once.
class MeaningChoice : public QPushButton {
    Q_OBJECT

public:
    explicit MeaningChoice(QWidget* parent = nullptr);

    /// Emits nothing.
    void setMeaning(Meaning meaning);

signals:
    void chosen(nettare::Meaning meaning);

private:
    QMenu* menu_;
    QActionGroup* options_;
};

/// "this batch", in the user's language.
[[nodiscard]] QString meaningText(Meaning meaning);

}  // namespace nettare
