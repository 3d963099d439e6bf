#pragma once

#include <QLineEdit>

#include "app/sheet/draft_member.h"

namespace nettare {

/// A field of one line for one thing of the draft. What is typed reaches the draft at each
/// keystroke; undo inside the field is undo of the draft. A refused text stays, outlined as wrong,
/// and refused() says why.
class DraftField : public QLineEdit {
    Q_OBJECT

public:
    /// `name` is its label for screen readers.
    DraftField(const QString& name, DraftMember member, QWidget* parent = nullptr);

    void setDraft(DraftSession* draft);
    /// Looks like text until it is pointed at or focused, and is as wide as its text.
    void setAsText(bool asText);
    [[nodiscard]] const std::optional<Error>& refusal() const { return member_.refusal(); }

    /// Leaves the draft as it was before the field was entered.
    void takeBack();

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    /// The refused text's sentence; empty once the field is fine.
    void refused(const QString& sentence);

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

private:
    void typed(const QString& text);
    void follow();
    void showRefusal();

    DraftMember member_;
    bool asText_ = false;
};

}  // namespace nettare
