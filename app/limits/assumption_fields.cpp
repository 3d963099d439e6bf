#include "app/limits/assumption_fields.h"

#include <QGridLayout>

#include "app/limits/assumption_words.h"
#include "app/sheet/document_texts.h"
#include "app/sheet/draft_field.h"
#include "app/sheet/refusal_line.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "core/quantity/decimal.h"
#include "core/support/text.h"

namespace nettare {

namespace {

constexpr int kFieldWidth = 80;

/// The number times ten to a power, exactly.
std::string shifted(const Decimal& number, int powers) {
    return Decimal{number.coefficient(), powers - number.decimals()}.text();
}

std::string heldText(const DraftSession& draft, Assumption which) {
    const Json* all = draft.document().find("assumptions");
    std::string held = memberText(all, assumptionKey(which));
    if (!held.empty()) return held;
    const auto usual = defaultOf(which);
    return usual ? usual->text() : std::string{};
}

QLabel* wrapped(const QString& text, const char* tone) {
    auto* label = new QLabel{text};
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setProperty("tone", QLatin1String{tone});
    label->setFont(typeFont(TypeSize::Header));
    return label;
}

}  // namespace

DraftMember assumptionMember(Assumption which) {
    return {[which](const DraftSession& draft) {
                const std::string text = heldText(draft, which);
                const auto number = Decimal::read(text);
                if (!isShare(which) || !number) return QString::fromStdString(text);
                return QString::fromStdString(shifted(*number, 2));
            },
            [which](const Json& document, const std::string& typed) -> Result<Edit> {
                const std::string text{trimmed(typed)};
                const auto number = Decimal::read(text);
                if (text.empty() || !isShare(which) || !number)
                    return setAssumption(document, which, text);
                return setAssumption(document, which, shifted(*number, -2));
            },
            concernsPointer("/assumptions/" + std::string{assumptionKey(which)})};
}

AssumptionFields::AssumptionFields(RefusalLine& refusal, QWidget* parent) : QWidget{parent} {
    auto* grid = new QGridLayout{this};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(kSpace2Px);
    grid->setVerticalSpacing(kSpace1Px);
    grid->setColumnStretch(0, 1);
    for (const Assumption which : allAssumptions()) addRow(which, refusal);
}

void AssumptionFields::addRow(Assumption which, RefusalLine& refusal) {
    auto* grid = static_cast<QGridLayout*>(layout());
    const int row = 3 * static_cast<int>(rows_.size());
    auto* field = new DraftField{assumptionName(which), assumptionMember(which)};
    field->setObjectName(QString::fromUtf8(assumptionKey(which).data(),
                                           static_cast<qsizetype>(assumptionKey(which).size())));
    field->setFixedWidth(kFieldWidth);
    field->setAlignment(Qt::AlignRight);
    field->setPlaceholderText(tr("table"));
    refusal.watch(field);
    auto* name = new QLabel{assumptionName(which)};
    name->setTextFormat(Qt::PlainText);
    name->setWordWrap(true);
    name->setBuddy(field);
    grid->addWidget(name, row, 0);
    grid->addWidget(field, row, 1);
    grid->addWidget(new QLabel{isShare(which) ? QStringLiteral("%") : QString{}}, row, 2);
    grid->addWidget(wrapped(assumptionSource(which), "secondary"), row + 1, 0, 1, 3);
    auto* usedBy = wrapped({}, "secondary");
    grid->addWidget(usedBy, row + 2, 0, 1, 3);
    rows_.push_back({which, field, usedBy});
}

void AssumptionFields::setDraft(DraftSession* draft) {
    if (draft_ != nullptr) draft_->disconnect(this);
    draft_ = draft;
    for (const Row& row : rows_) row.field->setDraft(draft);
    if (draft != nullptr)
        connect(draft, &DraftSession::evaluationChanged, this, &AssumptionFields::follow);
    follow();
}

void AssumptionFields::follow() {
    for (const Row& row : rows_) {
        QString words;
        if (draft_ != nullptr && draft_->evaluation())
            words = countsFor(row.which, *draft_->evaluation());
        row.usedBy->setText(words);
        row.usedBy->setVisible(!words.isEmpty());
    }
}

}  // namespace nettare
