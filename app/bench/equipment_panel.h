#pragma once

#include <QFrame>

#include <string>

#include "core/ledger/bench_equipment.h"
#include "core/support/error.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace nettare {

class BenchDesk;
class CheckForm;
class NewScaleForm;
class NewVesselForm;

/// The scales and vessels of the kitchen: what is known of each, checks with a known mass, and
/// what is added. Everything that it keeps is an entry of the ledger.
class EquipmentPanel : public QFrame {
    Q_OBJECT

public:
    explicit EquipmentPanel(BenchDesk& desk, QWidget* parent = nullptr);

signals:
    void left();  ///< Escape

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QWidget* buildPage();
    void follow();
    void showScales();
    void showVessels();
    QWidget* scaleRow(const KnownScale& scale);
    void openCheck(const std::string& name, bool open);
    void keepScale();
    void recordCheck(CheckForm& form, const std::string& name);
    void keepVessel();
    void tell(const Error& error);

    BenchDesk& desk_;
    QVBoxLayout *scales_, *vessels_;
    QLabel *noScale_, *noVessel_, *vesselScale_, *trouble_;
    QPushButton* addScale_;
    NewScaleForm* newScale_;
    NewVesselForm* newVessel_;
    std::string checking_;                         ///< the scale whose check form is open
    bool keptScale_ = false, keptVessel_ = false;  ///< on the way to the ledger
};

}  // namespace nettare
