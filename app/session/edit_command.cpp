#include "app/session/edit_command.h"

#include <QCoreApplication>

#include <array>

namespace nettare {

namespace {

/// In the order of EditKind. %1 is what it was done to.
constexpr std::array kUndoTexts{
    QT_TRANSLATE_NOOP("EditCommand", "title"),
    QT_TRANSLATE_NOOP("EditCommand", "note"),
    QT_TRANSLATE_NOOP("EditCommand", "yield"),
    QT_TRANSLATE_NOOP("EditCommand", "portion"),
    QT_TRANSLATE_NOOP("EditCommand", "ceiling"),
    QT_TRANSLATE_NOOP("EditCommand", "amount of %1"),
    QT_TRANSLATE_NOOP("EditCommand", "food of %1"),
    QT_TRANSLATE_NOOP("EditCommand", "preparation of %1"),
    QT_TRANSLATE_NOOP("EditCommand", "new line %1"),
    QT_TRANSLATE_NOOP("EditCommand", "removal of %1"),
    QT_TRANSLATE_NOOP("EditCommand", "move of %1"),
    QT_TRANSLATE_NOOP("EditCommand", "way to grams of %1"),
    QT_TRANSLATE_NOOP("EditCommand", "new step"),
    QT_TRANSLATE_NOOP("EditCommand", "text of a step"),
    QT_TRANSLATE_NOOP("EditCommand", "removal of a step"),
    QT_TRANSLATE_NOOP("EditCommand", "move of a step"),
    QT_TRANSLATE_NOOP("EditCommand", "reading of %1"),
    QT_TRANSLATE_NOOP("EditCommand", "taking a reading off %1"),
    QT_TRANSLATE_NOOP("EditCommand", "assumption"),
    QT_TRANSLATE_NOOP("EditCommand", "what counts"),
    QT_TRANSLATE_NOOP("EditCommand", "whether %1 is optional"),
    QT_TRANSLATE_NOOP("EditCommand", "what is left over of %1"),
    QT_TRANSLATE_NOOP("EditCommand", "value of %1"),
    QT_TRANSLATE_NOOP("EditCommand", "table row of %1"),
    QT_TRANSLATE_NOOP("EditCommand", "bringing back %1"),
};
static_assert(kUndoTexts.size() == static_cast<std::size_t>(EditKind::BringBack) + 1);

}  // namespace

QString undoText(const Edit& edit) {
    const char* const text = kUndoTexts.at(static_cast<std::size_t>(edit.kind));
    return QCoreApplication::translate("EditCommand", text)
        .replace(
            QStringLiteral("%1"),
            QString::fromStdString(edit.subject).replace(QLatin1Char{'&'}, QStringLiteral("&&")));
}

EditCommand::EditCommand(Draft draft, Edit edit, Json after, int typing, Place place)
    : QUndoCommand{undoText(edit)},
      draft_{std::move(draft)},
      edit_{std::move(edit)},
      after_{std::move(after)},
      typing_{typing},
      place_{place} {}

// An edit that the stack holds fits the document that it left.
void EditCommand::change(const Edit& edit) {
    if (auto after = applied(draft_.document(), edit)) draft_.changeTo(std::move(*after));
}

void EditCommand::redo() {
    if (after_) {
        draft_.changeTo(std::move(*after_));
        after_.reset();
    } else {
        change(edit_);
    }
}

void EditCommand::undo() {
    change(inverseOf(edit_));
}

bool EditCommand::mergeWith(const QUndoCommand* other) {
    const auto& next = static_cast<const EditCommand&>(*other);
    if (next.place_ == Place::InItsStead) {
        edit_ = next.edit_;
    } else {
        auto both = next.typing_ == typing_ ? merged(edit_, next.edit_) : std::nullopt;
        if (!both) return false;
        edit_ = std::move(*both);
    }
    setObsolete(changesNothing(edit_));
    return true;
}

}  // namespace nettare
