#pragma once

#include <QLineEdit>

#include <functional>

namespace nettare {

/// A field at the foot of a list that adds to it: Enter says added(text), Esc empties it.
class EntryLine : public QLineEdit {
    Q_OBJECT

public:
    /// `name` for screen readers, `prompt` as it stands there while empty.
    EntryLine(const QString& name, const QString& prompt, QWidget* parent = nullptr);

    void setRefused(bool refused);
    /// Tells whether a list of proposals is open; Enter and Esc are then the list's.
    void setListOpen(std::function<bool()> isOpen) { listIsOpen_ = std::move(isOpen); }

signals:
    void entered(const QString& text);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    std::function<bool()> listIsOpen_;
};

}  // namespace nettare
