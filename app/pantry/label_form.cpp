#include "app/pantry/label_form.h"

#include <QApplication>
#include <QDragEnterEvent>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QScrollArea>

#include <algorithm>

#include "app/pantry/entry_words.h"
#include "app/pantry/label_line_fields.h"
#include "app/pantry/label_memory.h"
#include "app/pantry/label_pack_fields.h"
#include "app/pantry/label_rest_fields.h"
#include "app/pantry/label_words.h"
#include "app/pantry/photo_field.h"
#include "app/session/kitchen_session.h"
#include "db/like_density.h"

namespace nettare {

namespace {

constexpr int kKeepAfter_ms = 1000;

QLabel* formText(const char* name, const char* tone) {
    auto* label = new QLabel;
    label->setObjectName(QLatin1String{name});
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setMinimumWidth(1);
    label->setProperty("tone", QLatin1String{tone});
    return label;
}

}  // namespace

LabelForm::LabelForm(KitchenSession& kitchen, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      title_{formText("labelTitle", "primary")},
      about_{formText("labelAbout", "secondary")},
      refusal_{formText("labelRefusal", "error")},
      pack_{new LabelPackFields},
      lines_{new LabelLineFields},
      rest_{new LabelRestFields},
      photo_{new PhotoField{kitchen}},
      bar_{new LabelFindingBar},
      save_{new QPushButton},
      leave_{new QPushButton{tr("Leave")}},
      drop_{new QPushButton{tr("Drop what was typed")}} {
    setAcceptDrops(true);
    keepTimer_.setSingleShot(true);
    keepTimer_.setInterval(kKeepAfter_ms);
    connect(&keepTimer_, &QTimer::timeout, this, &LabelForm::keepTyped);
    build();
    connectParts();
}

LabelForm::~LabelForm() {
    // Its own parts, and the session, may be half gone; the focus tells nothing any more.
    qApp->disconnect(this);
    if (keepTimer_.isActive()) keepTyped();
}

void LabelForm::connectParts() {
    connect(pack_, &LabelPackFields::edited, this, &LabelForm::followEdit);
    connect(pack_, &LabelPackFields::rulesChosen, this, &LabelForm::followRules);
    connect(lines_, &LabelLineFields::edited, this, &LabelForm::followEdit);
    connect(rest_, &LabelRestFields::edited, this, &LabelForm::followEdit);
    connect(photo_, &PhotoField::edited, this, &LabelForm::followEdit);
    connect(photo_, &PhotoField::asked, this, &LabelForm::photoAsked);
    connect(photo_, &PhotoField::failed, this, &LabelForm::refuse);
    connect(bar_, &LabelFindingBar::slipTaken, this, &LabelForm::takeSlip);
    connect(bar_, &LabelFindingBar::asPrinted, this, &LabelForm::sayAsPrinted);
    connect(save_, &QPushButton::clicked, this, &LabelForm::save);
    connect(leave_, &QPushButton::clicked, this, &LabelForm::left);
    connect(drop_, &QPushButton::clicked, this, &LabelForm::drop);
    connect(qApp, &QApplication::focusChanged, this, &LabelForm::followFocus);
    connect(&kitchen_.ownFoods(), &OwnFoods::failed, this, [this](const Error& error) {
        if (waiting_) refuse(error);
        waiting_ = false;
    });
}

// The photograph of the last pack stays with the last pack.
void LabelForm::begin(const OwnFood& before) {
    before_ = before;
    LabelTyped typed = usualLabel();
    if (before.food.label) {
        const std::string today = typed.date;
        typed = typedLabelOf(before);
        typed.date = today;
        typed.photo.reset();
    }
    show(typed);
    begun_ = this->typed();
    followEdit();
    look();
    scroll_->ensureVisible(0, 0);
    enter();
}

bool LabelForm::resume() {
    const auto kept = unfinishedLabel(kitchen_.path());
    const OwnFoodRecord* const record =
        kept && !kept->food.empty() ? kitchen_.ownFoods().record(kept->food) : nullptr;
    if (!kept || kitchen_.path().isEmpty() || (record == nullptr && !kept->food.empty()))
        return false;
    before_ = OwnFood{};
    before_.food.row.table = kOwnTable;
    if (record != nullptr) before_ = record->current;
    show(usualLabel());
    begun_ = typed();
    show(kept->typed);
    look();
    followEdit();
    return true;
}

// The sample is gone with its window; all of it is.
void LabelForm::keepTyped() const {
    if (kitchen_.path().isEmpty()) return;
    if (isChanged())
        keepUnfinished(kitchen_.path(), {before_.food.row.number, typed()});
    else
        forgetUnfinished();
}

void LabelForm::findLike() {
    LabelTyped typed;
    pack_->readInto(typed);
    const QString name = QString::fromStdString(typed.name).trimmed();
    if (name == likeName_) return;
    likeName_ = name;
    like_.reset();
    if (kitchen_.tables() != nullptr && !name.isEmpty())
        like_ = likeDensity(*kitchen_.tables(), typed.name).value_or(std::nullopt);
}

void LabelForm::show(const LabelTyped& typed) {
    showing_ = true;
    assents_ = typed.assents;
    findings_.clear();
    pack_->show(typed);
    lines_->show(typed.rules, typed.amounts,
                 before_.food.label ? before_.food.label->amounts : std::vector<LabelAmount>{});
    lines_->followInTabs(*pack_->lastField());
    rest_->show(typed);
    photo_->clear();
    refusal_->hide();
    showing_ = false;
    sayTitle();
}

void LabelForm::sayTitle() {
    const OwnFoodRecord* const record = kitchen_.ownFoods().record(before_.food.row.number);
    const int version = record != nullptr ? record->versions + 1 : 1;
    title_->setText(record != nullptr ? tr("Label: %1").arg(isolated(before_.food.name))
                                      : tr("New label"));
    about_->setText(
        record != nullptr
            ? tr("%1 · new pack, version %2").arg(rulesName(pack_->rules())).arg(version)
            : tr("%1 · what stands on the package, as printed; an empty field is not "
                 "printed, which never counts as zero")
                  .arg(rulesName(pack_->rules())));
    save_->setText(record != nullptr ? tr("Save version %1 (Ctrl+S)").arg(version)
                                     : tr("Save label (Ctrl+S)"));
}

LabelTyped LabelForm::typed() const {
    LabelTyped typed;
    pack_->readInto(typed);
    rest_->readInto(typed);
    typed.amounts = lines_->amounts();
    typed.assents = assents_;
    if (photo_->photo()) typed.photo = photo_->photo()->photo;
    return typed;
}

bool LabelForm::isChanged() const {
    return typed() != begun_;
}

void LabelForm::sayUnfinished() {
    enter();
    refusal_->setText(tr("This label is not saved yet: save it, or drop what was typed."));
    refusal_->show();
}

void LabelForm::takePhoto(const QString& path) {
    photo_->take(path);
}

void LabelForm::dragEnterEvent(QDragEnterEvent* event) {
    const QList<QUrl> urls = event->mimeData()->urls();
    if (urls.size() == 1 && urls.front().isLocalFile()) event->acceptProposedAction();
}

void LabelForm::dropEvent(QDropEvent* event) {
    takePhoto(event->mimeData()->urls().front().toLocalFile());
    event->acceptProposedAction();
}

void LabelForm::followRules() {
    lines_->setRules(pack_->rules());
    lines_->followInTabs(*pack_->lastField());
    sayTitle();
    look();
}

// What is asked about goes as soon as it is answered; something new is asked when the field is
// left.
void LabelForm::followEdit() {
    if (showing_) return;
    const LabelFacts facts = factsSoFar(typed());
    lines_->sayIntervals(facts);
    rest_->setSugarsPrinted(facts.printed(Component::SUGAD) != nullptr);
    refusal_->hide();
    drop_->setVisible(isChanged());
    keepTimer_.start();
    if (findings_.empty()) return;
    const auto now = checkLabel(facts, like_);
    std::erase_if(findings_, [&](const LabelFinding& finding) {
        return std::ranges::none_of(now, [&](const LabelFinding& other) {
            return other.kind == finding.kind && other.about == finding.about && !other.assented;
        });
    });
    showFindings(facts);
}

void LabelForm::followFocus(const QWidget* old, QWidget* now) {
    // Nothing has the focus where another window took it, or this one is closing.
    if (now == nullptr) return;
    if (old != nullptr && isAncestorOf(old) && isVisible()) look();
    if (scroll_->widget()->isAncestorOf(now)) scroll_->ensureWidgetVisible(now);
}

void LabelForm::look() {
    findLike();
    const LabelFacts facts = factsSoFar(typed());
    findings_ = checkLabel(facts, like_);
    std::erase_if(findings_, &LabelFinding::assented);
    lines_->sayIntervals(facts);
    showFindings(facts);
}

void LabelForm::showFindings(const LabelFacts& facts) {
    bar_->show(facts, findings_);
    const QString why = bar_->accessibleName();
    const auto& finding = bar_->finding();
    lines_->mark(finding ? finding->lines : std::vector<LabelLine>{}, why);
    pack_->markServing(finding && finding->serving ? why : QString{});
}

void LabelForm::takeSlip() {
    if (!bar_->finding() || !bar_->finding()->slip) return;
    const LabelSlip slip = *bar_->finding()->slip;
    if (slip.line)
        lines_->setAmount(*slip.line, slip.instead);
    else
        pack_->setServingSize(slip.instead);
    QWidget* const changed =
        slip.line ? lines_->field(*slip.line) : static_cast<QWidget*>(pack_->servingField());
    followEdit();
    look();
    if (changed != nullptr && !isAncestorOf(QApplication::focusWidget()))
        changed->setFocus(Qt::OtherFocusReason);
}

void LabelForm::sayAsPrinted() {
    if (!bar_->finding()) return;
    assents_.push_back({bar_->finding()->kind, bar_->finding()->about});
    followEdit();
    look();
    if (findings_.empty() && !stops().empty() && QApplication::focusWidget() == nullptr)
        save_->setFocus(Qt::OtherFocusReason);
}

QWidget* LabelForm::questionedField() const {
    if (!bar_->finding()) return nullptr;
    const auto& lines = bar_->finding()->lines;
    return lines.empty() ? static_cast<QWidget*>(pack_->servingField())
                         : lines_->field(lines.front());
}

void LabelForm::save() {
    if (waiting_) return;
    look();
    if (!findings_.empty()) {
        refusal_->setText(
            tr("Nothing is lost: first take what was likely meant, correct it, or "
               "say that it is as printed."));
        refusal_->show();
        if (QWidget* const field = questionedField()) field->setFocus(Qt::TabFocusReason);
        return;
    }
    const auto own = labelledFoodFrom(typed(), before_);
    if (!own) return refuse(own.error());
    refusal_->hide();
    waiting_ = true;
    rememberLabel(typed());
    const std::string bytes = photo_->photo() ? photo_->photo()->bytes : std::string{};
    kitchen_.ownFoods().saveWithPhoto(*own, bytes, this, [this](const TableRow& row) {
        waiting_ = false;
        begun_ = typed();
        keepTyped();
        keepTimer_.stop();
        emit saved(row);
    });
}

void LabelForm::drop() {
    begin(before_);
    emit left();
}

void LabelForm::refuse(const Error& error) {
    refusal_->setText(entrySentence(error));
    refusal_->show();
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
