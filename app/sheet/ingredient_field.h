#pragma once

#include <QLineEdit>

#include <string>

#include "app/sheet/draft_member.h"
#include "app/sheet/food_completer.h"

namespace nettare {

class DraftSession;
class KitchenSession;

/// Edits food and preparation of one line as one text, "fennel · trimmed, in wedges". Another food
/// is taken from the list that opens while typing; the preparation goes into the draft as it is
/// typed.
class IngredientField : public QLineEdit {
    Q_OBJECT

public:
    IngredientField(KitchenSession& kitchen, std::string line, QWidget* parent = nullptr);

    /// Leaves the preparation as it was, and a food that was not chosen.
    void takeBack();

signals:
    /// Why the text is not in the draft; empty once it is.
    void refused(const QString& sentence);

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

private:
    void typed(const QString& text);
    void typePreparation(const QString& preparation);
    void choose(const FoodOffer& offer);
    void chose(const QString& preparation, const Result<void>& done);
    void follow();
    void refuse(const QString& sentence);
    /// True while the food words name another food than the line has.
    [[nodiscard]] bool isOpenQuestion() const;
    [[nodiscard]] QString shown() const;

    KitchenSession& kitchen_;
    std::string line_;
    DraftMember preparation_;
    FoodCompleter* completer_;
    QString name_;  ///< of the line's food
};

}  // namespace nettare
