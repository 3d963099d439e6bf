#include "app/pantry/label_form.h"

#include <QApplication>
#include <QDragEnterEvent>
#include <QGridLayout>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QScrollArea>
#include <QStyle>

#include <algorithm>
#include <utility>

#include "app/pantry/label_line_fields.h"
#include "app/pantry/label_memory.h"
#include "app/pantry/label_pack_fields.h"
#include "app/pantry/label_rest_fields.h"
#include "app/pantry/label_words.h"
#include "app/pantry/photo_field.h"
#include "app/session/kitchen_session.h"
#include "app/words/error_sentence.h"
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
    connect(photo_, &PhotoField::settled, this, [this] {
        if (std::exchange(saveWhenRead_, false)) save();
    });
    connect(photo_, &PhotoField::failed, this, [this](const Error& error) {
        saveWhenRead_ = false;
        tell(QString::fromStdString(errorSentence(error)));
    });
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
    connect(&kitchen_.ownFoods(), &OwnFoods::changed, this, &LabelForm::sayTitle);
}

// The photograph of the last pack stays with the last pack.
void LabelForm::begin(const OwnFood& before, LabelStart start) {
    before_ = before;
    start_ = start;
    LabelTyped typed = usualLabel();
    if (before.food.label) {
        const std::string today = typed.date;
        typed = typedLabelOf(before);
        if (start == LabelStart::NewPack) {
            typed.date = today;
            typed.photo.reset();
        }
    }
    show(typed);
    begun_ = this->typed();
    followEdit();
    look();
    scroll_->ensureVisible(0, 0);
    enter();
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
    saveWhenRead_ = false;
    typed.photo ? photo_->showKept(*typed.photo) : photo_->clear();
    refusal_->hide();
    showing_ = false;
    sayTitle();
}

void LabelForm::sayTitle() {
    const OwnFoodRecord* const record = kitchen_.ownFoods().record(before_.food.row.number);
    const int version = record != nullptr ? record->versions + 1 : 1;
    title_->setText(record != nullptr ? tr("Label: %1").arg(isolated(before_.food.name))
                                      : tr("New label"));
    const QString rules = rulesName(pack_->rules());
    if (record == nullptr)
        about_->setText(tr("%1 · what stands on the package, as printed; an empty field is not "
                           "printed, which never counts as zero")
                            .arg(rules));
    else if (start_ == LabelStart::Correction)
        about_->setText(tr("%1 · corrected, version %2").arg(rules).arg(version));
    else
        about_->setText(tr("%1 · new pack, version %2").arg(rules).arg(version));
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
    return typed() != begun_ || !photo_->path().isEmpty();
}

void LabelForm::sayUnfinished() {
    enter();
    tell(tr("This label is not saved yet: save it, or drop what was typed."));
}

void LabelForm::tell(const QString& words, const char* tone) {
    refusal_->setText(words);
    if (const QLatin1String wanted{tone}; refusal_->property("tone").toString() != wanted) {
        refusal_->setProperty("tone", wanted);
        refusal_->style()->unpolish(refusal_);
        refusal_->style()->polish(refusal_);
    }
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
    // The lines that hold the focus are laid out anew.
    if (QWidget* const focus = QApplication::focusWidget();
        focus != nullptr && lines_->isAncestorOf(focus)) {
        body_->activate();
        scroll_->ensureWidgetVisible(focus);
    }
}

// What is asked about goes as soon as it is answered; something new is asked when the field is
// left.
void LabelForm::followEdit() {
    if (showing_) return;
    const LabelFacts facts = factsSoFar(typed());
    lines_->sayIntervals(facts);
    rest_->setSugarsPrinted(facts.printed(Component::SUGAD) != nullptr);
    if (!saveWhenRead_) refusal_->hide();
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
    // While one of these is open, what is said of the others settles nothing.
    std::stable_partition(findings_.begin(), findings_.end(),
                          [](const LabelFinding& finding) { return finding.impossible; });
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
    if (!bar_->finding() || bar_->finding()->impossible) return;
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

}  // namespace nettare
