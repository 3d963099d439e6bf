#pragma once

#include <QPlainTextEdit>

#include "app/sheet/draft_member.h"

namespace nettare {

/// A text of the draft that wraps over as many lines as it needs but has no breaks of its own: the
/// title, a step. Behaves like DraftField; Enter asks to go on.
class DraftText : public QPlainTextEdit {
    Q_OBJECT

public:
    DraftText(const QString& name, DraftMember member, QWidget* parent = nullptr);

    void setDraft(DraftSession* draft);
    [[nodiscard]] const std::optional<Error>& refusal() const { return member_.refusal(); }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void refused(const QString& sentence);
    void enterPressed();
    /// Backspace in an empty text.
    void emptied();

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void insertFromMimeData(const QMimeData* source) override;

private:
    void typed();
    void follow();
    void fit();
    void showRefusal();
    [[nodiscard]] int heightForText() const;

    DraftMember member_;
    bool writing_ = false;
};

}  // namespace nettare
