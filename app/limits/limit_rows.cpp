#include "app/limits/limit_rows.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "app/figures/figure_words.h"
#include "app/sheet/draft_field.h"
#include "app/sheet/refusal_line.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"

namespace nettare {

namespace {

constexpr int kLimitNumberWidth = 96;

QLabel* limitLabel(const QString& text, const char* tone) {
    auto* label = new QLabel{text};
    label->setTextFormat(Qt::PlainText);
    label->setProperty("tone", QLatin1String{tone});
    return label;
}

bool isOf(const TargetVerdict& verdict, const LimitKey& key) {
    return verdict.target.component == key.component && verdict.target.per == key.per &&
           verdict.target.atMost.has_value() == (key.end == TargetEnd::AtMost);
}

}  // namespace

LimitRows::LimitRows(RefusalLine& refusal, QWidget* parent)
    : QWidget{parent},
      refusal_{refusal},
      none_{limitLabel(tr("No ceiling and no floor is set yet."), "secondary")} {
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(none_);
}

void LimitRows::setDraft(DraftSession* draft) {
    if (draft_ != nullptr) draft_->disconnect(this);
    draft_ = draft;
    rebuild({});
    if (draft != nullptr)
        connect(draft, &DraftSession::evaluationChanged, this, &LimitRows::follow);
    follow();
}

void LimitRows::follow() {
    auto keys = draft_ == nullptr ? std::vector<LimitKey>{} : limitsOf(draft_->document());
    if (keys != keys_) rebuild(std::move(keys));
    sayVerdicts();
}

// What is typed into a row keeps the row; only another limit makes other rows.
void LimitRows::rebuild(std::vector<LimitKey> keys) {
    keys_ = std::move(keys);
    verdicts_.clear();
    if (rows_ != nullptr) {
        layout()->removeWidget(rows_);
        rows_->hide();
        rows_->deleteLater();
    }
    rows_ = new QWidget{this};
    auto* grid = new QGridLayout{rows_};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(kSpace3Px);
    grid->setVerticalSpacing(kSpace1Px);
    grid->setColumnStretch(0, 1);
    for (std::size_t i = 0; i < keys_.size(); ++i) addRow(2 * static_cast<int>(i), keys_[i]);
    layout()->addWidget(rows_);
    rows_->show();
    none_->setVisible(keys_.empty());
}

void LimitRows::addRow(int row, const LimitKey& key) {
    auto* number = new DraftField{limitName(key), limitMember(key)};
    number->setObjectName(QStringLiteral("limit%1").arg(row / 2));
    number->setFixedWidth(kLimitNumberWidth);
    number->setAlignment(Qt::AlignRight);
    number->setDraft(draft_);
    refusal_.watch(number);
    auto* away = new QPushButton{QStringLiteral("×")};
    away->setObjectName(QStringLiteral("removeLimit%1").arg(row / 2));
    away->setProperty("quiet", true);
    away->setAccessibleName(tr("Take away: %1").arg(limitName(key)));
    away->setToolTip(away->accessibleName());
    away->setEnabled(!draft_->readOnly());
    connect(away, &QPushButton::clicked, this, [this, key] { takeAway(key); });
    const std::string_view unit = factsOf(key.component).unit;
    auto* grid = static_cast<QGridLayout*>(rows_->layout());
    grid->addWidget(limitLabel(componentName(key.component), "primary"), row, 0);
    grid->addWidget(limitLabel(limitEnd(key.end), "secondary"), row, 1);
    grid->addWidget(number, row, 2);
    grid->addWidget(
        limitLabel(QString::fromUtf8(unit.data(), static_cast<qsizetype>(unit.size())), "primary"),
        row, 3);
    grid->addWidget(limitLabel(limitBasis(key.per), "secondary"), row, 4);
    grid->addWidget(away, row, 5);
    auto* verdict = limitLabel({}, "secondary");
    verdict->setWordWrap(true);
    verdict->setFont(typeFont(TypeSize::Header));
    verdicts_.push_back(verdict);
    grid->addWidget(verdict, row + 1, 0, 1, 6);
}

void LimitRows::takeAway(const LimitKey& key) {
    const auto edit = setTarget(draft_->document(), key.component, key.per, key.end, "");
    if (!edit) return emit failed(edit.error());
    draft_->endTyping();
    if (const auto done = draft_->apply(*edit); !done) emit failed(done.error());
    draft_->endTyping();
}

void LimitRows::sayVerdicts() {
    if (draft_ == nullptr || !draft_->evaluation()) return;
    const Recipe& recipe = draft_->evaluation()->dossier.main();
    for (std::size_t i = 0; i < keys_.size(); ++i) {
        QString words;
        for (const TargetVerdict& verdict : draft_->evaluation()->verdicts)
            if (isOf(verdict, keys_[i])) {
                words = verdictText(verdict, recipe, false);
                if (const QString safe = safePortion(verdict, recipe); !safe.isEmpty())
                    words = tr("%1. %2").arg(words, safe);
            }
        if (!words.isEmpty()) words[0] = words[0].toUpper();
        verdicts_[i]->setText(words);
        verdicts_[i]->setVisible(!words.isEmpty());
    }
}

}  // namespace nettare
