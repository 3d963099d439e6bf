#include "app/bench/food_form.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>
#include <set>

#include "app/bench/bench_type.h"
#include "app/session/kitchen_session.h"
#include "app/sheet/flow_layout.h"
#include "app/theme/spacing.h"
#include "app/widgets/scrolling.h"

namespace nettare {

namespace {

constexpr int kNoSeries = 0, kPerPiece = 1, kPerMeasure = 2, kFirstRatio = 3;
constexpr int kMostName = 120;

}  // namespace

FoodForm::FoodForm(KitchenSession& kitchen, QWidget* parent)
    : Pane{tr("A food"), Role::Raised, parent},
      kitchen_{kitchen},
      what_{new QLineEdit},
      of_{new QLineEdit},
      tags_{new QLineEdit},
      note_{new QLabel} {
    setObjectName(QStringLiteral("foodForm"));
    setEntry(what_);
    build();
    chooseKind(kNoSeries);
}

void FoodForm::build() {
    const auto field = [this](QLineEdit* edit, const char* name, const QString& says) {
        edit->setObjectName(QLatin1String{name});
        edit->setProperty("touch", true);
        edit->setFont(benchFont());
        edit->setMaxLength(kMostName);
        edit->setAccessibleName(says);
        edit->setPlaceholderText(says);
        connect(edit, &QLineEdit::returnPressed, this, &FoodForm::accept);
    };
    field(what_, "foodWhat", tr("Food, as you call it"));
    field(of_, "foodOf", tr("of what: prawn, cup"));
    field(tags_, "foodTags", tr("conditions: size 16/20, with head"));
    note_->setFont(benchFont());
    note_->setWordWrap(true);
    note_->setTextFormat(Qt::PlainText);
    note_->setProperty("tone", QStringLiteral("secondary"));
    auto* kinds = new QWidget;
    auto* flow = new FlowLayout{kSpace2Px, kSpace2Px, kinds};
    const QStringList texts{tr("no series"),       tr("per piece"),    tr("per measure"),
                            tr("edible / bought"), tr("cooked / raw"), tr("drained / total")};
    for (int i = 0; i < texts.size(); ++i) {
        QPushButton* button = benchButton(texts[i], "foodKind");
        button->setObjectName(QStringLiteral("foodKind%1").arg(i));
        button->setCheckable(true);
        connect(button, &QPushButton::clicked, this, [this, i] { chooseKind(i); });
        flow->addWidget(button);
        kinds_.push_back(button);
    }
    QPushButton* leave = benchButton(tr("Back"), "leaveFood");
    connect(leave, &QPushButton::clicked, this, &FoodForm::left);
    QPushButton* done = benchButton(tr("That is it"), "foodDone");
    done->setProperty("primary", true);
    connect(done, &QPushButton::clicked, this, &FoodForm::accept);
    auto* foot = new QHBoxLayout;
    foot->addWidget(leave);
    foot->addWidget(done, 1);

    auto* page = new QWidget;
    auto* inner = new QVBoxLayout{page};
    inner->setContentsMargins(0, 0, 0, 0);
    inner->setSpacing(kSpace2Px);
    for (QWidget* part : {static_cast<QWidget*>(what_), kinds, static_cast<QWidget*>(of_),
                          static_cast<QWidget*>(tags_), static_cast<QWidget*>(note_)})
        inner->addWidget(part);
    inner->addStretch(1);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(kSpace4Px, kSpace2Px, kSpace4Px, kSpace2Px);
    column->addWidget(scrolling(page), 1);
    column->addLayout(foot);
}

void FoodForm::begin() {
    for (QLineEdit* edit : {what_, of_, tags_}) edit->clear();
    note_->clear();
    chooseKind(kNoSeries);
    what_->setFocus();
}

void FoodForm::chooseKind(int kind) {
    kind_ = kind;
    for (std::size_t i = 0; i < kinds_.size(); ++i)
        kinds_[i]->setChecked(static_cast<int>(i) == kind);
    of_->setVisible(kind == kPerPiece || kind == kPerMeasure);
    of_->setPlaceholderText(kind == kPerPiece ? tr("one piece is called: prawn")
                                              : tr("the measure: cup"));
    tags_->setVisible(kind != kNoSeries);
    note_->clear();
}

std::vector<std::string> FoodForm::tags() const {
    std::set<std::string> tags;
    for (const QString& each : tags_->text().split(u','))
        if (const QString tag = each.simplified(); !tag.isEmpty()) tags.insert(tag.toStdString());
    return {tags.begin(), tags.end()};
}

std::string FoodForm::rowOf(const QString& name) const {
    for (const FoodHit& hit : kitchen_.findFoods(name, 5))
        if (QString::fromStdString(hit.name).compare(name, Qt::CaseInsensitive) == 0)
            return hit.row.text();
    return {};
}

void FoodForm::accept() {
    const QString name = what_->text().simplified();
    if (name.isEmpty()) {
        what_->setFocus();
        return note_->setText(tr("Type what the food is called."));
    }
    FreeSubject subject;
    subject.what = name.toStdString();
    subject.row = rowOf(name);
    if (kind_ != kNoSeries) {
        SeriesMark mark;
        mark.tags = tags();
        if (mark.tags.size() > kMostTags)
            return note_->setText(tr("At most %1 conditions.").arg(kMostTags));
        if (kind_ >= kFirstRatio) {
            mark.kind = SeriesKind::Ratio;
            mark.of = kRatios[kind_ - kFirstRatio];
            if (kind_ == kFirstRatio + 1) subject.state = WeighedState::Cooked;
        } else {
            mark.kind = kind_ == kPerPiece ? SeriesKind::PerPiece : SeriesKind::PerMeasure;
            mark.of = of_->text().simplified().toStdString();
            if (mark.of.empty()) {
                of_->setFocus();
                return note_->setText(tr("Type what is counted: prawn, clove, cup."));
            }
        }
        subject.series = mark;
    }
    emit said(subject);
}

}  // namespace nettare
