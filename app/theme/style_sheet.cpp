#include "app/theme/style_sheet.h"

#include "app/theme/spacing.h"

#include <array>

namespace nettare {

namespace {

// A role in braces stands for its colour, a measure in braces for its pixels.

constexpr auto kButtonRules = R"(
QPushButton, QToolButton {
  background: {raised}; color: {ink}; border: 1px solid {outline}; border-radius: {corner};
  padding: 0 12px; min-height: {inner};
}
QPushButton, QToolButton { outline: none; }
QToolButton { padding: 0 6px; }
QToolButton::menu-indicator { width: 0; height: 0; }
QPushButton:hover, QToolButton:hover { background: {alt}; }
QPushButton:pressed, QToolButton:pressed, QToolButton:checked, QPushButton:checked {
  background: {selection};
}
QPushButton:focus, QToolButton:focus { border: {ring} solid {cobalt}; padding: 0 11px; }
QToolButton:focus { padding: 0 5px; }
QPushButton:disabled, QToolButton:disabled {
  background: {paper}; color: {outline}; border-color: {hairline};
}
QPushButton[primary="true"] {
  background: {cobalt}; color: {onCobalt}; border-color: {cobalt};
}
QPushButton[primary="true"]:hover { border-color: {ink}; }
QPushButton[primary="true"]:focus { border: {ring} solid {ink}; }
QPushButton[primary="true"]:disabled {
  background: {alt}; color: {outline}; border-color: {hairline};
}
QPushButton[quiet="true"], QToolButton { border-color: transparent; background: transparent; }
QPushButton[quiet="true"]:hover, QToolButton:hover { background: {alt}; }
QPushButton[quiet="true"]:focus, QToolButton:focus { border-color: {cobalt}; }
QPushButton[quiet="true"]:disabled, QToolButton:disabled {
  background: transparent; border-color: transparent;
}
)";

constexpr auto kSegmentRules = R"(
QPushButton[segment="true"] { border-radius: 0; padding: 0 12px; }
QPushButton[segment="true"][joined="true"]:!focus { border-left-width: 0; }
QPushButton[segment="true"]:checked {
  background: {cobalt}; color: {onCobalt}; border-color: {cobalt};
}
QPushButton[segment="true"]:focus { padding: 0 11px; border: {ring} solid {cobalt}; }
QPushButton[segment="true"]:checked:focus { border: {ring} solid {ink}; }
QPushButton[touch="true"] { min-height: {touch}; padding: 0 14px; }
QPushButton[touch="true"]:focus { padding: 0 13px; }
QPushButton[touch="true"]:checked { border: {ring} solid {cobalt}; background: {selection}; }
)";

// No `color`: Qt 6.4 would make placeholders half transparent of it.
constexpr auto kFieldRules = R"(
QLineEdit, QPlainTextEdit, QTextEdit {
  background: {raised}; border: 1px solid {outline}; border-radius: {corner};
  selection-background-color: {selection}; selection-color: {ink};
}
QLineEdit { padding: 0 8px; min-height: {inner}; }
QPlainTextEdit, QTextEdit { padding: 4px; }
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus { border: {ring} solid {cobalt}; }
QLineEdit:focus { padding: 0 7px; }
QPlainTextEdit:focus, QTextEdit:focus { padding: 3px; }
QLineEdit:disabled, QPlainTextEdit:disabled, QTextEdit:disabled {
  background: {paper}; border-color: {hairline};
}
QLineEdit > QToolButton { min-height: 0; padding: 0; border: none; background: transparent; }
QLineEdit[touch="true"] { min-height: {touch}; }
QLineEdit[refused="true"] { border: {ring} solid {error}; }
QAbstractSpinBox { min-height: {spin}; }
QComboBox QLineEdit, QAbstractSpinBox QLineEdit {
  border: none; padding: 0; min-height: 0; background: transparent;
}
QTableView QLineEdit, QTreeView QLineEdit, QListView QLineEdit {
  border: {ring} solid {cobalt}; border-radius: 0; padding: 0 4px; min-height: 0;
}
)";

constexpr auto kViewRules = R"(
QTableView, QTreeView, QListView {
  background: {raised}; color: {ink}; border: none; outline: none;
  selection-background-color: {selection}; selection-color: {ink};
}
QTreeView[onPaper="true"], QGraphicsView[onPaper="true"] { background: transparent; border: none; }
QListView[offers="true"], QComboBox QListView { border: 1px solid {outline}; }
QHeaderView { background: {raised}; border: none; }
QHeaderView::section {
  background: {raised}; color: {ink2}; border: none; border-bottom: 1px solid {outline};
  padding: 0 8px;
}
QTableCornerButton::section { background: {raised}; border: none; }
QToolTip { background: {raised}; color: {ink}; border: 1px solid {outline}; padding: 4px; }
QMenu { background: {raised}; color: {ink}; border: 1px solid {outline}; }
QMenu::item { padding: 6px 24px 6px 12px; }
QMenu::icon { padding-left: 8px; }
QMenu::item:selected { background: {selection}; }
QMenu::item:disabled { color: {outline}; }
QMenu::separator { height: 1px; background: {hairline}; margin: 4px 0; }
QMenuBar { background: {raised}; color: {ink}; border-bottom: 1px solid {hairline}; }
QMenuBar::item { padding: 6px 10px; background: transparent; }
QMenuBar::item:selected { background: {selection}; }
QSplitter::handle { background: {hairline}; }
QScrollArea { border: none; background: transparent; }
)";

constexpr auto kScrollRules = R"(
QScrollBar { background: transparent; border: none; margin: 0; }
QScrollBar:vertical { width: 12px; }
QScrollBar:horizontal { height: 12px; }
QScrollBar::handle { background: {outline}; border-radius: 3px; margin: 3px; }
QScrollBar::handle:vertical { min-height: 24px; }
QScrollBar::handle:horizontal { min-width: 24px; }
QScrollBar::handle:hover { background: {ink2}; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
)";

constexpr auto kOwnRules = R"(
QLabel { background: transparent; }
QLabel[tone="secondary"] { color: {ink2}; }
QLabel[tone="warning"] { color: {warning}; }
QLabel[tone="error"] { color: {error}; }
QLabel[tone="done"] { color: {done}; }
QLabel[tone="accent"] { color: {cobalt}; }
QFrame[popup="true"] { background: {raised}; border: 1px solid {outline}; }
QFrame[pane="paper"] { background: {paper}; border: none; }
QFrame[pane="raised"] { background: {raised}; border: none; }
QFrame[pane="paper"][rim="false"], QFrame[pane="raised"][rim="false"] {
  border-top: {rim} solid transparent;
}
QFrame[pane="paper"][rim="true"], QFrame[pane="raised"][rim="true"] {
  border-top: {rim} solid {cobalt};
}
)";

struct NamedRole {
    const char* name;
    Role role;
};

constexpr std::array kNamedRoles{
    NamedRole{"paper", Role::Paper},     NamedRole{"raised", Role::Raised},
    NamedRole{"alt", Role::Alt},         NamedRole{"selection", Role::Selection},
    NamedRole{"ink", Role::Ink},         NamedRole{"ink2", Role::Ink2},
    NamedRole{"cobalt", Role::Cobalt},   NamedRole{"onCobalt", Role::OnCobalt},
    NamedRole{"outline", Role::Outline}, NamedRole{"hairline", Role::Hairline},
    NamedRole{"warning", Role::Warning}, NamedRole{"error", Role::Error},
    NamedRole{"done", Role::Done},
};

void put(QString& sheet, const char* name, const QString& value) {
    sheet.replace(QStringLiteral("{%1}").arg(QLatin1String{name}), value);
}

void putPixels(QString& sheet, const char* name, int px) {
    put(sheet, name, QStringLiteral("%1px").arg(px));
}

}  // namespace

QString styleSheet(Shade shade) {
    QString sheet;
    for (const char* rules :
         {kButtonRules, kSegmentRules, kFieldRules, kViewRules, kScrollRules, kOwnRules})
        sheet += QLatin1String{rules};
    for (const NamedRole& each : kNamedRoles)
        put(sheet, each.name, colour(each.role, shade).name());
    putPixels(sheet, "corner", kCornerPx);
    putPixels(sheet, "ring", kFocusRingPx);
    putPixels(sheet, "rim", kRimPx);
    putPixels(sheet, "spin", kControlHeightPx - 6);
    putPixels(sheet, "inner", kControlHeightPx - 2);
    putPixels(sheet, "touch", kBenchTargetPx - 2);
    return sheet;
}

}  // namespace nettare
