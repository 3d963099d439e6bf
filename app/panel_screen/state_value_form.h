#pragma once

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <QWidget>

#include "app/session/draft_session.h"

namespace nettare {

/// Asks for the value that keeps a panel line from printing: the food, its value per 100 g, how far
/// it may be off, and where it comes from. Hidden where no food of this recipe can be asked.
class StateValueForm : public QWidget {
    Q_OBJECT

public:
    explicit StateValueForm(QWidget* parent = nullptr);

    /// Asks about the foods that an open panel line names; hides for any other error.
    void ask(DraftSession* draft, const Error& error);

private:
    void build();
    void state();

    QPointer<DraftSession> draft_;
    Component component_ = Component::ENERC_KCAL;
    std::vector<std::string> foods_;  ///< ids, as the box offers them
    QComboBox* food_;
    QLineEdit *value_, *within_, *reason_;
    QLabel *unit_, *refusal_;
    QPushButton* state_;
};

}  // namespace nettare
