#pragma once

#include "app/widgets/readout.h"

namespace nettare {

/// The one number of the screen: large, with its unit on the same line of text.
class EnergyReadout : public Readout {
    Q_OBJECT

public:
    explicit EnergyReadout(QWidget* parent = nullptr);

    /// `before` is what stands small in front: "at least". A dimmed one is not of the text as it
    /// stands.
    void show(const QString& number, const QString& unit, const QString& before, bool dimmed);

    [[nodiscard]] QString spokenValue() const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

signals:
    void clicked();

protected:
    void mouseReleaseEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    QString number_, unit_, before_;
    bool dimmed_ = false;
};

}  // namespace nettare
