#pragma once

#include "app/panel_screen/ask_for_pdf.h"
#include "app/panel_screen/panel_view.h"
#include "app/work/task_runner.h"

#include <QWidget>

#include <optional>

#include "core/label/panel.h"
#include "core/support/result.h"

class QButtonGroup;
class QLabel;
class QPushButton;
class QStackedLayout;

namespace nettare {

class AddedSugarsForm;
class CheckBar;
class EmptyState;
class KitchenSession;
class MessageLine;
class ScreenHeader;
class StateValueForm;

/// The nutrition panel of the draft as it will print, at its true size, and its way out as a PDF.
/// Follows the draft while it is in sight. Where there is no panel it says why and what to do.
class PanelScreen : public QWidget {
    Q_OBJECT

public:
    explicit PanelScreen(KitchenSession& kitchen, AskForPdf ask = &askForPdfByDialog,
                         QWidget* parent = nullptr);

    /// Asks where to, then writes the panel as it stands. Nothing happens without a panel.
    void exportPdf();
    /// What was said of the last export; empty before one.
    [[nodiscard]] QString report() const;

signals:
    /// The cook wants to mend what keeps the panel from printing.
    void sheetWanted();

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* buildHeader();
    QWidget* buildBody();
    QWidget* buildNotes();
    void followDraft();
    void refresh();
    void lookAtDraft();
    void showPanel(const Panel& panel);
    void showTrouble(const Error& error);
    void askFor(const Error& error);
    void sayScale();

    KitchenSession& kitchen_;
    AskForPdf ask_;
    ScreenHeader* header_;
    QButtonGroup* zooms_;
    QPushButton* export_;
    QStackedLayout* stack_;
    PanelView* view_;
    CheckBar* bar_;
    QLabel* scaleNote_;
    MessageLine* report_;
    EmptyState* trouble_;
    StateValueForm* form_;
    AddedSugarsForm *sugars_, *askedSugars_;  ///< beside the panel, and where they keep it back
    QPushButton* showSugars_;
    std::optional<Panel> panel_;
    bool stale_ = true;
    TaskRunner tasks_;
};

}  // namespace nettare
