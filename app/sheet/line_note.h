#pragma once

#include <QFrame>
#include <QLabel>
#include <QPointer>
#include <QPushButton>

#include <functional>
#include <string>
#include <vector>

#include "app/sheet/line_note_texts.h"
#include "app/widgets/message_line.h"
#include "core/edit/line_edits.h"

namespace nettare {

class AssumeBar;
class BindBar;
class FlowLayout;
class KitchenSession;
class WayMark;

/// Below the ingredient table: how the grams of the current line were found, the other ways with
/// their numbers, and what is odd about it with the better way one key away.
class LineNote : public QFrame {
    Q_OBJECT

public:
    explicit LineNote(KitchenSession& kitchen, QWidget* parent = nullptr);

    void setDraft(DraftSession* draft);
    void setLine(const std::string& line);
    [[nodiscard]] const std::string& line() const { return line_; }
    /// The next open way counts, or the one before.
    void takeNext(bool back);
    /// The way that the first finding names.
    void takeBetter();
    /// Asks for grams that the cook assumes.
    void assume();
    /// Asks which series or reading of the ledger the line's weight comes from.
    void bind();

signals:
    void failed(const nettare::Error& error);
    /// Something was asked of the note by a key: it should be in sight.
    void touched();
    /// Which rows of the tables the line's food could be.
    void rowsAsked();
    /// The line is to be weighed now.
    void weighAsked();

private:
    void follow();
    void showOthers(const std::vector<OtherWay>& others);
    void showFindings(const std::vector<FindingText>& findings);
    void showDensity();
    void takeDensity();
    void take(Way way);
    void run(const Result<LineEdit>& edit);

    KitchenSession& kitchen_;
    QPointer<DraftSession> draft_;
    std::string line_;
    WayMark* mark_;
    QLabel *sentence_, *othersLabel_;
    QWidget* others_;
    FlowLayout* flow_;
    QPushButton *density_, *assume_, *bind_, *rows_;
    MessageLine* finding_;
    AssumeBar* bar_;
    BindBar* binding_;
    std::vector<QPushButton*> buttons_;
    std::optional<Way> better_;
};

}  // namespace nettare
