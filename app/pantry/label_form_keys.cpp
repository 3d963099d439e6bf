#include "app/pantry/label_form.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>

#include <algorithm>

#include "app/pantry/label_line_fields.h"
#include "app/pantry/label_pack_fields.h"

// How the form of a label is gone through by keys.

namespace nettare {

namespace {

/// What the form itself does with a key; nothing for all others.
enum class FormKey { None, Save, OtherRules, TakeSlip, AsPrinted, Next, Leave };

FormKey formKeyOf(const QKeyEvent& event) {
    const auto modifiers = event.modifiers() & ~Qt::KeypadModifier;
    const bool plain = modifiers == Qt::NoModifier;
    const bool enter = event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
    if (modifiers == Qt::ControlModifier && (enter || event.key() == Qt::Key_S))
        return FormKey::Save;
    if (plain && enter) return FormKey::Next;
    if (plain && event.key() == Qt::Key_F2) return FormKey::OtherRules;
    if (plain && event.key() == Qt::Key_F9) return FormKey::TakeSlip;
    if (modifiers == Qt::ShiftModifier && event.key() == Qt::Key_F9) return FormKey::AsPrinted;
    if (plain && event.key() == Qt::Key_Escape) return FormKey::Leave;
    return FormKey::None;
}

}  // namespace

void LabelForm::enter() {
    for (QWidget* stop : stops()) {
        auto* const field = qobject_cast<QLineEdit*>(stop);
        if (field != nullptr && !field->text().isEmpty()) continue;
        stop->setFocus(Qt::TabFocusReason);
        return;
    }
}

std::vector<QWidget*> LabelForm::stops() const {
    std::vector<QWidget*> all = pack_->stops();
    for (QWidget* field : lines_->stops()) all.push_back(field);
    all.push_back(save_);
    return all;
}

void LabelForm::advance() {
    const auto all = stops();
    QWidget* at = QApplication::focusWidget();
    if (at == nullptr || !isAncestorOf(at)) return;
    // From a field that is no stop on, the Tab key leads to the next one that is.
    for (QWidget* const begun = at; std::ranges::find(all, at) == all.end();) {
        at = at->nextInFocusChain();
        if (at == begun) return;
        if (std::ranges::find(all, at) != all.end()) return at->setFocus(Qt::TabFocusReason);
    }
    const auto here = std::ranges::find(all, at);
    if (here + 1 != all.end()) (*(here + 1))->setFocus(Qt::TabFocusReason);
}

bool LabelForm::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride &&
        formKeyOf(*static_cast<QKeyEvent*>(event)) != FormKey::None) {
        event->accept();
        return true;
    }
    return QWidget::event(event);
}

void LabelForm::keyPressEvent(QKeyEvent* event) {
    auto* const button = qobject_cast<QPushButton*>(QApplication::focusWidget());
    const bool pushes = button != nullptr && !button->isCheckable();
    switch (formKeyOf(*event)) {
        case FormKey::None:
            return QWidget::keyPressEvent(event);
        case FormKey::Save:
            return save();
        case FormKey::OtherRules:
            return pack_->toggleRules();
        case FormKey::TakeSlip:
            return takeSlip();
        case FormKey::AsPrinted:
            return sayAsPrinted();
        case FormKey::Next:
            return pushes ? button->click() : advance();
        case FormKey::Leave:
            emit left();
    }
}

}  // namespace nettare
