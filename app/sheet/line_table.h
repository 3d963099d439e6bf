#pragma once

#include <QTableView>
#include <QWidget>

#include "app/sheet/food_offers.h"
#include "app/sheet/lines_model.h"
#include "core/wording/line_reading.h"

namespace nettare {

class EntryLine;
class FoodCompleter;
class KitchenSession;
class MeaningQuestion;
class RefusalLine;

/// The ingredient table with the field below it that adds a line.
class LineTable : public QWidget {
    Q_OBJECT

public:
    explicit LineTable(KitchenSession& kitchen, QWidget* parent = nullptr);

    void setDraft(DraftSession* draft);
    /// Where the focus goes first.
    [[nodiscard]] QWidget* entry() const { return view_; }
    void addLine();
    /// Puts the cursor on a line; does nothing where there is none of that id.
    void choose(const std::string& line);
    void removeCurrent();
    /// The line that the cursor is on; empty for none.
    [[nodiscard]] std::string currentLine() const;
    void moveCurrent(bool up);

signals:
    void failed(const nettare::Error& error);
    void lineChosen(const QString& line);

protected:
    bool eventFilter(QObject* object, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    void follow();
    void showFailure();
    void fit();
    void fitRows();
    void add(const QString& text, const std::optional<FoodOffer>& chosen);
    void addSettled(const LineReading& reading, const FoodOffer& offer);
    void addRead(const LineReading& reading, const FoodOffer& offer);
    void added(const std::string& line, const Result<void>& done);
    void refuseNew(const QString& sentence);
    void run(const Result<LineEdit>& edit);

    KitchenSession& kitchen_;
    LinesModel* model_;
    QTableView* view_;
    EntryLine* entry_;
    FoodCompleter* completer_;
    MeaningQuestion* question_;
    RefusalLine* refusal_;
    std::string current_;  ///< id of the line that has the cursor
};

}  // namespace nettare
