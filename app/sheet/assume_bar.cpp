#include "app/sheet/assume_bar.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/sheet/document_texts.h"
#include "app/sheet/draft_sentence.h"
#include "app/sheet/refusal_line.h"
#include "app/theme/spacing.h"
#include "core/edit/place.h"
#include "core/edit/way_edits.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

constexpr int kGramsFieldPx = 72;
constexpr int kReasonPx = 90;

/// What to say of a field that was left empty; nothing for other errors.
std::optional<QString> missing(const Error& error) {
    const bool open = error.code == ErrorCode::EmptyText || error.code == ErrorCode::NotADecimal;
    if (error.code == ErrorCode::EmptyText && error.pointer.ends_with("/reason"))
        return AssumeBar::tr("Say why: what is assumed without a reason cannot be defended.");
    if (open && error.pointer.ends_with("/within"))
        return AssumeBar::tr("Say within how many grams it is right, such as 5.");
    if (open && error.pointer.ends_with("/grams"))
        return AssumeBar::tr("Say how many grams, such as 30.");
    return {};
}

/// What is assumed already, else the grams that count now.
QString gramsNow(const DraftSession& draft, const std::string& line) {
    if (!draft.evaluation()) return {};
    const Evaluation& now = *draft.evaluation();
    const auto& lines = now.dossier.main().lines;
    for (std::size_t i = 0; i < lines.size(); ++i)
        if (lines[i].id == line) {
            const double grams = now.cooked.lines[i].asUsed.value();
            return QString::fromStdString(numberAt(grams < 10 ? 1 : 0, grams));
        }
    return {};
}

}  // namespace

AssumeBar::AssumeBar(QWidget* parent) : QWidget{parent}, refusal_{new RefusalLine} {
    auto* row = new QHBoxLayout;
    row->setSpacing(kSpace2Px);
    grams_ = addField(*row, tr("Assume"), "assumedGrams", kGramsFieldPx);
    within_ = addField(*row, tr("g ±"), "assumedWithin", kGramsFieldPx);
    reason_ = addField(*row, tr("g, because"), "assumedReason", kReasonPx);
    row->setStretchFactor(reason_, 1);
    auto* take = new QPushButton{tr("Assume")};
    auto* cancel = new QPushButton{tr("Cancel")};
    take->setObjectName(QStringLiteral("assume"));
    row->addWidget(take);
    row->addWidget(cancel);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, kSpace1Px, 0, 0);
    column->setSpacing(kSpace1Px);
    column->addLayout(row);
    column->addWidget(refusal_);
    connect(take, &QPushButton::clicked, this, &AssumeBar::assume);
    connect(cancel, &QPushButton::clicked, this, &AssumeBar::leave);
    hide();
}

QLineEdit* AssumeBar::addField(QLayout& row, const QString& label, const char* name, int width_px) {
    auto* words = new QLabel{label};
    auto* field = new QLineEdit;
    field->setObjectName(QLatin1String{name});
    field->setMinimumWidth(width_px);
    if (width_px == kGramsFieldPx) field->setMaximumWidth(width_px);
    words->setBuddy(field);
    row.addWidget(words);
    row.addWidget(field);
    connect(field, &QLineEdit::returnPressed, this, &AssumeBar::assume);
    connect(field, &QLineEdit::textEdited, this, [this] { refusal_->tell(this, {}); });
    return field;
}

void AssumeBar::ask(DraftSession& draft, const std::string& line) {
    draft_ = &draft;
    line_ = line;
    const Json* assumed = valueAt(draft.document(), "/lines/" + line + "/assumed");
    const QString grams = QString::fromStdString(memberText(assumed, "grams"));
    grams_->setText(grams.isEmpty() ? gramsNow(draft, line) : grams);
    within_->setText(QString::fromStdString(memberText(assumed, "within")));
    reason_->setText(QString::fromStdString(memberText(assumed, "reason")));
    reason_->setPlaceholderText(tr("by eye, by hand, as the butcher said"));
    grams_->setAccessibleName(tr("Grams assumed for %1").arg(lineName(draft.document(), line)));
    within_->setAccessibleName(tr("Within how many grams"));
    reason_->setAccessibleName(tr("Reason"));
    refusal_->tell(this, {});
    before_ = QApplication::focusWidget();
    show();
    grams_->setFocus(Qt::ShortcutFocusReason);
    grams_->selectAll();
}

void AssumeBar::assume() {
    if (draft_ == nullptr) return;
    const std::string grams = grams_->text().toStdString();
    const std::string within = within_->text().toStdString();
    const std::string reason = reason_->text().toStdString();
    const auto edit = setAssumed(draft_->document(), line_, {grams, within, reason});
    const auto refuse = [this](const Error& error) {
        refusal_->tell(this, missing(error).value_or(draftSentence(draft_->document(), error)));
    };
    if (!edit) return refuse(edit.error());
    draft_->endTyping();
    if (const auto done = draft_->apply(edit->edit); !done) return refuse(done.error());
    draft_->endTyping();
    leave();
    emit assumed();
}

void AssumeBar::leave() {
    if (isHidden()) return;
    hide();
    if (before_ != nullptr && before_->isVisible()) before_->setFocus(Qt::OtherFocusReason);
}

void AssumeBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        leave();
    else
        QWidget::keyPressEvent(event);
}

}  // namespace nettare
