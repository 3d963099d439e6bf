#include "app/pantry/label_form.h"

#include <QLabel>
#include <QPushButton>

#include "app/pantry/entry_words.h"
#include "app/pantry/label_line_fields.h"
#include "app/pantry/label_memory.h"
#include "app/pantry/label_pack_fields.h"
#include "app/pantry/label_rest_fields.h"
#include "app/pantry/photo_field.h"
#include "app/session/kitchen_session.h"

// How a label is saved, refused or dropped, and what stays of one that is not saved.

namespace nettare {

bool LabelForm::resume() {
    const auto kept = unfinishedLabel(kitchen_.path());
    const OwnFoodRecord* const record =
        kept && !kept->food.empty() ? kitchen_.ownFoods().record(kept->food) : nullptr;
    if (!kept || kitchen_.path().isEmpty() || (record == nullptr && !kept->food.empty()))
        return false;
    start_ = kept->correction ? LabelStart::Correction : LabelStart::NewPack;
    before_ = OwnFood{};
    before_.food.row.table = kOwnTable;
    if (record != nullptr) before_ = record->current;
    show(usualLabel());
    begun_ = typed();
    LabelTyped typed = kept->typed;
    if (kept->samePhoto && before_.food.label) typed.photo = before_.food.label->photo;
    show(typed);
    if (!kept->photoPath.isEmpty()) takePhoto(kept->photoPath);
    look();
    followEdit();
    return true;
}

// The sample is gone with its window; all of it is.
void LabelForm::keepTyped() const {
    if (kitchen_.path().isEmpty()) return;
    if (!isChanged()) return forgetUnfinished(kitchen_.path());
    const LabelTyped now = typed();
    const bool samePhoto =
        now.photo && before_.food.label && now.photo == before_.food.label->photo;
    keepUnfinished(kitchen_.path(), {before_.food.row.number, now, start_ == LabelStart::Correction,
                                     samePhoto, samePhoto ? QString{} : photo_->path()});
}

void LabelForm::save() {
    if (waiting_) return;
    saveWhenRead_ = false;
    look();
    if (!findings_.empty()) {
        tell(
            tr("Nothing is lost: first take what was likely meant, correct it, or "
               "say that it is as printed."));
        if (QWidget* const field = questionedField()) field->setFocus(Qt::TabFocusReason);
        return;
    }
    const LabelTyped saving = typed();
    auto own = labelledFoodFrom(saving, before_);
    if (!own) return refuse(own.error());
    if (photo_->isReading()) {
        saveWhenRead_ = true;
        return tell(tr("The photograph is still being read; the label is saved as soon as it is "
                       "there."),
                    "secondary");
    }
    refusal_->hide();
    waiting_ = true;
    rememberLabel(saving);
    const std::string bytes = photo_->photo() ? photo_->photo()->bytes : std::string{};
    kitchen_.ownFoods().saveWithPhoto(*own, bytes, this, [this, own = *own, saving](TableRow row) {
        before_ = own;
        before_.food.row = std::move(row);
        wasSaved(saving);
    });
}

// What was typed while it was written is not in that version.
void LabelForm::wasSaved(const LabelTyped& version) {
    waiting_ = false;
    begun_ = version;
    if (typed().photo == version.photo) photo_->setKept();
    keepTyped();
    keepTimer_.stop();
    if (!isChanged()) return emit saved(before_.food.row);
    start_ = LabelStart::Correction;
    drop_->show();
    sayTitle();
    tell(tr("Version %1 is saved. What was typed since then is not.")
             .arg(QString::fromStdString(before_.food.row.release)),
         "secondary");
}

void LabelForm::drop() {
    begin(before_, start_);
    emit left();
}

void LabelForm::refuse(const Error& error) {
    tell(entrySentence(error));
    if (QWidget* const wrong = error.pointer.empty() ? nullptr : fieldAt(error.pointer))
        wrong->setFocus(Qt::TabFocusReason);
}

QWidget* LabelForm::fieldAt(const std::string& pointer) const {
    const QStringList steps = QString::fromStdString(pointer).split(u'/');
    const QString list = steps.value(1), member = steps.value(2);
    if (list == QStringLiteral("name")) return pack_->nameField();
    if (member == QStringLiteral("declares")) {
        if (const auto line = labelLineNamed(steps.value(3).toStdString()))
            return lines_->field(*line);
        return lines_->firstField();
    }
    if (QLineEdit* const field = pack_->field(member)) return field;
    return rest_->field(list, member);
}

}  // namespace nettare
