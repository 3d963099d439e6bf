#pragma once

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <QWidget>

#include "app/session/draft_session.h"

namespace nettare {

/// Says of each food of the draft what part of its sugars is added, and asks for another answer
/// with its reason. Hidden where nothing can be answered: without foods, or in a draft to read.
class AddedSugarsForm : public QWidget {
    Q_OBJECT

public:
    explicit AddedSugarsForm(QWidget* parent = nullptr);

    /// Shows the foods of the draft; the one that was chosen stays where it is still there.
    void follow(DraftSession* draft);
    /// The same with foods of these names alone; hides where the draft has none of them, since
    /// those of a kept recipe are answered there.
    void ask(DraftSession* draft, const std::vector<std::string>& names);

private:
    void build();
    void fill(const std::vector<std::string>* names);
    void sayNow();
    void followKind();
    void answer();
    /// Of the food that is chosen; empty where there is none.
    [[nodiscard]] std::string chosen() const;

    QPointer<DraftSession> draft_;
    std::vector<std::string> foods_;  ///< ids, as the box offers them
    QComboBox *food_, *kind_;
    QLineEdit *amount_, *reason_;
    QLabel *now_, *refusal_;
    QPushButton* answer_;
};

}  // namespace nettare
