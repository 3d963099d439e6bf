#include "app/window/keys_page.h"

#include <QLabel>
#include <QMenu>
#include <QMenuBar>

#include "app/window/action_words.h"

namespace nettare {

namespace {

QString keysRow(const QString& keys, const QString& words) {
    return QStringLiteral("<tr><td style=\"padding-right:24px\">%1</td><td>%2</td></tr>")
        .arg(keys.toHtmlEscaped(), words.toHtmlEscaped());
}

}  // namespace

KeysPage::KeysPage(QMenuBar& menus, QWidget* parent)
    : Page{tr("Keys"), parent}, menus_{menus}, keys_{new QLabel} {
    keys_->setTextFormat(Qt::RichText);
    keys_->setFocusPolicy(Qt::TabFocus);
    column().addWidget(keys_);
}

void KeysPage::list(const QMenu& menu, QString& rows) const {
    for (const QAction* action : menu.actions()) {
        if (action->menu() != nullptr)
            list(*action->menu(), rows);
        else if (!action->shortcut().isEmpty())
            rows += keysRow(action->shortcut().toString(QKeySequence::NativeText),
                            actionWords(*action));
    }
}

void KeysPage::showEvent(QShowEvent* event) {
    QString rows;
    for (const QAction* menu : menus_.actions())
        if (menu->menu() != nullptr) list(*menu->menu(), rows);
    rows += keysRow(tr("Tab, Shift+Tab"), tr("next or previous place"));
    rows += keysRow(tr("F2 or typing"), tr("edit the cell of the table"));
    rows += keysRow(tr("Left, Right"), tr("on the switch: what figures are per"));
    rows += keysRow(tr("Enter"), tr("on a figure: where it comes from; on its path: to the line"));
    rows += keysRow(tr("Esc"), tr("on a path: end a simulation, or back to the sheet"));
    rows += keysRow(tr("Enter"), tr("on the scale strip: record the reading"));
    rows += keysRow(tr("Enter"), tr("on a label: to the next field"));
    rows += keysRow(tr("Ctrl+S"), tr("on a label: save it"));
    rows += keysRow(tr("F2"), tr("on a label: the other rules"));
    rows += keysRow(tr("F9, Shift+F9"), tr("on a label: take the likely slip; it is as printed"));
    rows += keysRow(tr("Esc"), tr("on a label: leave it; what was typed stays"));
    keys_->setText(QStringLiteral("<table>%1</table>").arg(rows));
    keys_->setAccessibleName(tr("Keys"));
    Page::showEvent(event);
}

}  // namespace nettare
