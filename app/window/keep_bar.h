#pragma once

#include <QLineEdit>
#include <QPointer>

#include "app/window/inline_bar.h"

namespace nettare {

class KitchenSession;

/// Asks for the note of a revision, inside the window. Enter keeps, Esc leaves all as it was.
class KeepBar : public InlineBar {
    Q_OBJECT

public:
    explicit KeepBar(KitchenSession& kitchen, QWidget* parent = nullptr);

    /// Shows itself with an empty note, unless the draft has no figures: failed() then says why.
    void ask();

signals:
    /// A sentence why the draft cannot be kept.
    void refused(const QString& sentence);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void keep();
    void leave();

    KitchenSession& kitchen_;
    QLineEdit* note_;
    QPointer<QWidget> before_;  ///< had the focus
};

}  // namespace nettare
