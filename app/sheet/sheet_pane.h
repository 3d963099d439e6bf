#pragma once

#include <QPointer>
#include <QVBoxLayout>

#include "app/scale/purpose.h"
#include "app/session/draft_session.h"
#include "app/window/pane.h"

namespace nettare {

class DraftText;
class KitchenSession;
class LineNote;
class LineTable;
class MethodList;
class RefusalLine;
class YieldRow;

/// The recipe as a page: title, what it makes, ingredients, method.
class SheetPane : public Pane {
    Q_OBJECT

public:
    explicit SheetPane(KitchenSession& kitchen, QWidget* parent = nullptr);

    [[nodiscard]] QString title() const;
    void editTitle();
    [[nodiscard]] QString currentLine() const;
    /// Puts cursor and focus on a line.
    void goToLine(const QString& line);
    void addLine();
    void addStep();
    void removeCurrent();
    void moveCurrent(bool up);
    /// What is said of the current line, and the other ways to its grams.
    [[nodiscard]] LineNote& note() { return *note_; }

signals:
    void failed(const nettare::Error& error);
    /// The line that the table's cursor is on; empty for none.
    void lineChosen(const QString& line);
    /// The cook wants to weigh something for this purpose.
    void weighAsked(const nettare::Purpose& purpose);

private:
    void build();
    void followDraft();

    KitchenSession& kitchen_;
    DraftText* title_;
    RefusalLine* refusal_;
    YieldRow* yields_;
    LineTable* lines_;
    LineNote* note_;
    MethodList* method_;
};

}  // namespace nettare
