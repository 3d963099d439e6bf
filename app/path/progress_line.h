#pragma once

#include "app/widgets/readout.h"

namespace nettare {

/// How far long work is, as a flat bar.
class ProgressLine : public Readout {
    Q_OBJECT

public:
    explicit ProgressLine(QWidget* parent = nullptr);

    /// 0 to 1.
    void setShare(double share);
    [[nodiscard]] double share() const { return share_; }
    [[nodiscard]] QString spokenValue() const override;
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double share_ = 0;
};

}  // namespace nettare
