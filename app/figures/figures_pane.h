#pragma once

#include <QLabel>
#include <QPushButton>
#include <QTableView>

#include "app/figures/figures_model.h"
#include "app/window/pane.h"

namespace nettare {

class BasisSwitch;
class BeamGauge;
class DraftSession;
class EnergyReadout;
class KitchenSession;
class MeaningChoice;
class MessageLine;

/// The figures of the open draft, at its right; they follow every keystroke. Where the text as it
/// stands has none, the last ones stay, dimmed, with the reason.
class FiguresPane : public Pane {
    Q_OBJECT

public:
    explicit FiguresPane(KitchenSession& kitchen, QWidget* parent = nullptr);

    [[nodiscard]] Basis basis() const { return basis_; }
    /// The component that the table's cursor is on while the focus is there.
    [[nodiscard]] std::optional<Component> chosen() const;

signals:
    /// Where does that figure come from?
    void pathAsked(nettare::Component component);
    /// The cook wants to try other amounts, or to see limits and assumptions.
    void trialAsked();
    void limitsAsked();

private:
    void build();
    QTableView* makeTable();
    void askForPaths();
    QLayout* buildLinks();
    void followDraft();
    void follow();
    void showTexts(const Recipe& recipe);
    void showEnergy(const Evaluation& evaluation, bool dimmed);
    void showTrouble(const DraftSession& draft);
    void fitTable();

    KitchenSession& kitchen_;
    Basis basis_ = Basis::Portion;
    bool all_ = false;
    BasisSwitch* switch_;
    EnergyReadout* energy_;
    QLabel *basisText_, *verdict_, *targets_, *partial_, *caution_;
    MeaningChoice* meaning_;
    BeamGauge* gauge_;
    MessageLine* trouble_;
    FiguresModel* model_;
    QTableView* table_;
    QPushButton* allButton_;
    QWidget* shown_;  ///< all that is hidden where there are no figures yet
};

}  // namespace nettare
