#pragma once

#include <QLineEdit>
#include <QPointer>

#include <string>

#include "app/session/draft_session.h"
#include "app/window/inline_bar.h"

namespace nettare {

class RefusalLine;

/// Asks below the table for the grams that the cook assumes for a line: how many, within what, and
/// why. What is wrong is said there, and nothing is lost.
class AssumeBar : public QWidget {
    Q_OBJECT

public:
    explicit AssumeBar(QWidget* parent = nullptr);

    void ask(DraftSession& draft, const std::string& line);
    void leave();

signals:
    void assumed();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QLineEdit* addField(QLayout& row, const QString& label, const char* name, int width_px);
    void assume();

    QPointer<DraftSession> draft_;
    QPointer<QWidget> before_;
    std::string line_;
    QLineEdit *grams_, *within_, *reason_;
    RefusalLine* refusal_;
};

}  // namespace nettare
