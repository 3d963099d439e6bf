#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <vector>

#include "app/scale/scale_choices.h"
#include "app/window/pane.h"

namespace nettare {

class KitchenSession;
class LeftOverButton;
class VesselEntries;

/// The scale at the foot of the sheet: what it shows is typed here, less the tare it is the net,
/// and Enter records it for what was chosen.
class ScaleStrip : public Pane {
    Q_OBJECT

public:
    explicit ScaleStrip(KitchenSession& kitchen, QWidget* parent = nullptr);

    /// The focus goes to the number.
    void begin();
    /// The same, with what it is for.
    void weighFor(const Purpose& purpose);
    /// The line that the table's cursor is on.
    void setLine(const QString& line);

protected:
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    void build();
    void connectFields();
    void followDraft();
    void follow();
    void fillScales();
    void fillTares();
    void fillPurposes();
    void showNet();
    void showAddTo();
    [[nodiscard]] QString cautionOf(const Weighing& weighing) const;
    [[nodiscard]] QString noteBefore() const;
    [[nodiscard]] bool isOfLeftOver() const { return purpose().kind == PurposeKind::LeftOver; }
    /// False while it is not said what is left over.
    [[nodiscard]] bool isSaid() const;
    /// What will be computed of what is left over; empty for another purpose.
    [[nodiscard]] QString leftOverNote(const std::optional<Weighing>& weighing) const;
    /// Grams for the purpose after the weighing.
    [[nodiscard]] double gramsWith(const Weighing& weighing) const;
    void showNote(const QString& words, const char* tone);
    void useAsTare();
    void record();
    void takeOff();
    /// What is typed, or nothing and why; no reason while the number is still empty.
    [[nodiscard]] std::optional<Weighing> typed(QString& refusal) const;
    [[nodiscard]] Purpose purpose() const;

    KitchenSession& kitchen_;
    std::string line_;
    PurposeKind wanted_ = PurposeKind::Line;
    std::vector<ScaleChoice> scales_;
    std::vector<Tare> tares_;
    std::vector<Purpose> purposes_;
    std::optional<ShownTare> shownTare_;
    std::string recorded_;  ///< id of the reading that was recorded last
    QString replaced_;      ///< what it took the place of, "382 g"; empty for nothing
    int recordedStep_ = 0;  ///< index of the undo stack after it
    QComboBox *scale_, *tare_, *for_;
    QLineEdit *gross_, *pieces_;
    QLabel *net_, *piecesLabel_, *note_;
    QCheckBox* addTo_;
    LeftOverButton* leftOver_;
    VesselEntries* vessels_;
    QPushButton *useAsTare_, *takeOff_, *record_;
};

}  // namespace nettare
