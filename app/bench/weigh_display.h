#pragma once

#include "app/theme/type.h"
#include "app/widgets/readout.h"

namespace nettare {

/// The one figure of the bench, in big digits, with a unit and a note above the unit.
class WeighDisplay : public Readout {
    Q_OBJECT

public:
    explicit WeighDisplay(QWidget* parent = nullptr);

    /// "58.9", "g ± 0.1", "net". Without a number a dash stands for it.
    void show(const QString& number, const QString& unit, const QString& note);
    /// Digits of 120 px instead of 72.
    void setDigits(bool large);
    [[nodiscard]] const QString& number() const { return number_; }
    [[nodiscard]] const QString& unit() const { return unit_; }
    [[nodiscard]] const QString& note() const { return note_; }
    [[nodiscard]] QString spokenValue() const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString number_, unit_, note_;
    int digits_px_ = static_cast<int>(TypeSize::Reading);
};

}  // namespace nettare
