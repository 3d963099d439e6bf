#pragma once

#include <QComboBox>
#include <QPointer>

#include <string>
#include <vector>

#include "app/session/draft_session.h"
#include "app/sheet/bind_offers.h"

class QLabel;
class QPushButton;

namespace nettare {

class KitchenSession;
class RefusalLine;

/// Asks below the table where the grams of a line come from: a series of the ledger, one reading of
/// it, or a weighing of its own now. One step of undo brings back what was bound before.
class BindBar : public QWidget {
    Q_OBJECT

public:
    explicit BindBar(KitchenSession& kitchen, QWidget* parent = nullptr);

    void ask(DraftSession& draft, const std::string& line);
    void leave();

signals:
    void bound();
    /// The line is to be weighed now, on the scale.
    void weighAsked();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void show(const Result<std::vector<BindOffer>>& offers);
    void bind();

    KitchenSession& kitchen_;
    QPointer<DraftSession> draft_;
    QPointer<QWidget> before_;
    std::string line_;
    int asked_ = 0;  ///< counts, so that only the newest answer shows
    std::vector<BindOffer> offers_;
    QComboBox* offer_;
    QPushButton* take_;
    QLabel* none_;
    RefusalLine* refusal_;
};

}  // namespace nettare
