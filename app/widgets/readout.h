#pragma once

#include <QWidget>

namespace nettare {

/// What shows a value and takes no input. A screen reader hears its accessible name and the value.
class Readout : public QWidget {
    Q_OBJECT

public:
    explicit Readout(QWidget* parent = nullptr);

    /// The value as a sentence would say it, in the user's language.
    [[nodiscard]] virtual QString spokenValue() const = 0;

protected:
    /// To be called when the value became another.
    void valueChanged();
};

}  // namespace nettare
