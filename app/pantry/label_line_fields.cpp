#include "app/pantry/label_line_fields.h"

#include <QAction>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QStyle>
#include <QToolButton>

#include <algorithm>

#include "app/icons/icon_engine.h"
#include "app/pantry/label_words.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"

namespace nettare {

namespace {

constexpr int kAmountField = 88;
constexpr int kStandsForColumn = 104;
constexpr int kUnitColumn = 32, kNameColumn = 132;
constexpr int kIndent = kSpace4Px;

QLabel* lineLabel(const QString& text, bool second) {
    auto* label = new QLabel{text};
    label->setTextFormat(Qt::PlainText);
    if (second) label->setProperty("tone", QStringLiteral("secondary"));
    return label;
}

const std::string* amountIn(const std::vector<LabelAmount>& amounts, const LabelLine& line) {
    const auto found = std::ranges::find(amounts, line, &LabelAmount::line);
    return found == amounts.end() ? nullptr : &found->printed;
}

void setTone(QLabel& label, bool wrong) {
    const QString tone = wrong ? QStringLiteral("error") : QStringLiteral("secondary");
    if (label.property("tone").toString() == tone) return;
    label.setProperty("tone", tone);
    label.style()->unpolish(&label);
    label.style()->polish(&label);
}

}  // namespace

void setQuestioned(QLineEdit& field, QAction*& sign, const QString& why) {
    const bool questioned = !why.isEmpty();
    field.setAccessibleDescription(why);
    if (questioned == (sign != nullptr)) return;
    if (questioned) {
        sign = field.addAction(iconOf(Sign::Error, Role::Error), QLineEdit::LeadingPosition);
        // Without a text of its own, which nothing would show.
        field.findChildren<QToolButton*>().last()->setAccessibleName(
            LabelLineFields::tr("Questioned"));
    } else {
        delete sign;
        sign = nullptr;
    }
    field.setProperty("refused", questioned);
    field.style()->unpolish(&field);
    field.style()->polish(&field);
}

LabelLineFields::LabelLineFields(QWidget* parent) : QWidget{parent}, more_{new QPushButton} {
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kSpace2Px);
    more_->setObjectName(QStringLiteral("moreLines"));
    more_->setProperty("quiet", true);
    column->addWidget(more_, 0, Qt::AlignLeft);
    connect(more_, &QPushButton::clicked, this, [this] {
        all_ = !all_;
        follow();
    });
    build();
}

void LabelLineFields::show(LabelRules rules, const std::vector<LabelAmount>& amounts,
                           const std::vector<LabelAmount>& before) {
    rules_ = rules;
    typed_ = amounts;
    before_ = before;
    all_ = false;
    build();
}

void LabelLineFields::setRules(LabelRules rules) {
    if (rules == rules_) return;
    const std::optional<LabelLine> focused = focusedLine();
    remember();
    rules_ = rules;
    build(focused);
}

std::optional<LabelLine> LabelLineFields::focusedLine() const {
    for (const Row& row : rows_)
        if (row.field->hasFocus()) return row.printed->line;
    return std::nullopt;
}

// The former fields go last: one of them may have the focus, which would go to nowhere with it.
void LabelLineFields::build(const std::optional<LabelLine>& focused) {
    const QWidget* const former = body_;
    rows_.clear();
    body_ = new QWidget;
    auto* grid = new QGridLayout{body_};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(kSpace2Px);
    grid->setVerticalSpacing(kSpace1Px);
    grid->setColumnStretch(0, 1);
    grid->setColumnMinimumWidth(0, kNameColumn);
    grid->setColumnMinimumWidth(2, kUnitColumn);
    for (const PrintedLine& printed : printedLines(rules_)) addRow(*grid, printed);
    static_cast<QVBoxLayout*>(layout())->insertWidget(0, body_);
    follow();
    if (focused) takeFocus(*focused);
    delete former;
}

void LabelLineFields::takeFocus(const LabelLine& line) {
    body_->show();
    QLineEdit* const same = field(line);
    QLineEdit* const takes = same != nullptr && !same->isHidden() ? same : firstField();
    if (takes != nullptr) takes->setFocus(Qt::OtherFocusReason);
}

void LabelLineFields::addRow(QGridLayout& grid, const PrintedLine& printed) {
    const QString name = calledName(rules_, printed.line);
    const QString unit = calledUnit(rules_, printed.line);
    const int at = static_cast<int>(rows_.size());
    Row row{&printed,
            lineLabel(name, printed.indent > 0),
            lineLabel(unit, true),
            lineLabel({}, true),
            new QLineEdit,
            nullptr};
    row.name->setContentsMargins(printed.indent * kIndent, 0, 0, 0);
    row.name->setWordWrap(true);
    row.name->setMinimumWidth(1);
    row.standsFor->setWordWrap(true);
    row.standsFor->setFixedWidth(kStandsForColumn);
    row.standsFor->setFont(figureFont(TypeSize::Body));
    row.field->setObjectName(
        QStringLiteral("label_") +
        QString::fromLatin1(tagnameOf(printed.line).data(),
                            static_cast<qsizetype>(tagnameOf(printed.line).size())));
    row.field->setAccessibleName(unit.isEmpty() ? name : tr("%1, %2").arg(name, unit));
    row.field->setFixedWidth(kAmountField);
    row.field->setAlignment(Qt::AlignRight);
    row.field->setFont(figureFont(TypeSize::Body));
    if (const std::string* text = amountIn(typed_, printed.line))
        row.field->setText(QString::fromStdString(*text));
    grid.addWidget(row.name, at, 0);
    grid.addWidget(row.field, at, 1);
    grid.addWidget(row.unit, at, 2);
    grid.addWidget(row.standsFor, at, 3);
    connect(row.field, &QLineEdit::textEdited, this, &LabelLineFields::edited);
    rows_.push_back(row);
}

void LabelLineFields::remember() {
    for (const Row& row : rows_) {
        std::erase_if(typed_, [&](const LabelAmount& a) { return a.line == row.printed->line; });
        if (!row.field->text().isEmpty())
            typed_.push_back({row.printed->line, row.field->text().toStdString()});
    }
}

// A line with text is never hidden.
void LabelLineFields::follow() {
    bool some = false;
    for (const Row& row : rows_) {
        const bool seldom = !row.printed->always && row.field->text().isEmpty();
        some = some || seldom;
        for (QWidget* part :
             {static_cast<QWidget*>(row.name), static_cast<QWidget*>(row.field),
              static_cast<QWidget*>(row.unit), static_cast<QWidget*>(row.standsFor)})
            part->setVisible(all_ || !seldom);
    }
    more_->setText(all_ ? tr("Fewer lines") : tr("More lines"));
    more_->setVisible(some);
}

std::vector<LabelAmount> LabelLineFields::amounts() const {
    std::vector<LabelAmount> amounts;
    for (const Row& row : rows_)
        if (!row.field->text().trimmed().isEmpty())
            amounts.push_back({row.printed->line, row.field->text().trimmed().toStdString()});
    return amounts;
}

void LabelLineFields::setAmount(const LabelLine& line, const std::string& printed) {
    if (QLineEdit* const target = field(line)) target->setText(QString::fromStdString(printed));
    follow();
}

QLineEdit* LabelLineFields::field(const LabelLine& line) const {
    for (const Row& row : rows_)
        if (row.printed->line == line) return row.field;
    return nullptr;
}

QLineEdit* LabelLineFields::firstField() const {
    return rows_.empty() ? nullptr : rows_.front().field;
}

std::vector<QWidget*> LabelLineFields::stops() const {
    std::vector<QWidget*> shown;
    for (const Row& row : rows_)
        if (!row.field->isHidden()) shown.push_back(row.field);
    return shown;
}

void LabelLineFields::followInTabs(QWidget& before) {
    QWidget* last = &before;
    for (const Row& row : rows_) {
        setTabOrder(last, row.field);
        last = row.field;
    }
    setTabOrder(last, more_);
}

QString LabelLineFields::was(const LabelLine& line) const {
    const std::string* const last = amountIn(before_, line);
    const QLineEdit* const now = field(line);
    if (before_.empty() || now == nullptr) return {};
    const QString text = last != nullptr ? QString::fromStdString(*last) : QString{};
    if (text == now->text().trimmed()) return {};
    return text.isEmpty() ? tr("not printed before") : tr("was %1").arg(isolated(text));
}

// A field that is being typed in is not called wrong: "1" is on its way to "140".
void LabelLineFields::sayIntervals(const LabelFacts& facts) {
    for (const Row& row : rows_) {
        QStringList parts;
        bool wrong = false;
        if (const std::string* printed = facts.printed(row.printed->line)) {
            const StandsFor stands = standsFor(facts, {row.printed->line, *printed});
            wrong = stands.wrong && !row.field->hasFocus();
            if (wrong || !stands.wrong) parts += stands.text;
        }
        if (const QString last = was(row.printed->line); !last.isEmpty() && !wrong) parts += last;
        row.standsFor->setText(parts.join(QStringLiteral(" · ")));
        setTone(*row.standsFor, wrong);
    }
}

void LabelLineFields::mark(const std::vector<LabelLine>& lines, const QString& why) {
    for (Row& row : rows_) {
        const bool questioned = std::ranges::find(lines, row.printed->line) != lines.end();
        setQuestioned(*row.field, row.sign, questioned ? why : QString{});
    }
}

}  // namespace nettare
