#include "app/pantry/measure_fields.h"

#include <QGridLayout>
#include <QLabel>

#include "app/theme/spacing.h"
#include "app/theme/type.h"

namespace nettare {

namespace {

constexpr std::array<const char*, 4> kMembers{"amount", "unit", "qualifier", "grams"};
constexpr int kShortField = 88;

}  // namespace

MeasureFields::MeasureFields(QWidget* parent) : QWidget{parent} {
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    show({});
}

void MeasureFields::show(const std::vector<MeasureEntry>& measures) {
    delete body_;
    rows_.clear();
    body_ = new QWidget{this};
    grid_ = new QGridLayout{body_};
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(kSpace2Px);
    grid_->setVerticalSpacing(kSpace1Px);
    const QStringList heads{tr("How many"), tr("of what"), tr("how cut, how large"), tr("grams")};
    for (int i = 0; i < 4; ++i) {
        auto* head = new QLabel{heads[i]};
        head->setFont(typeFont(TypeSize::Header));
        head->setProperty("tone", QStringLiteral("secondary"));
        grid_->addWidget(head, 0, i);
    }
    grid_->setColumnStretch(1, 1);
    grid_->setColumnStretch(2, 2);
    for (const MeasureEntry& measure : measures) addRow(measure);
    addRow({});
    layout()->addWidget(body_);
    body_->show();
}

void MeasureFields::addRow(const MeasureEntry& measure) {
    const int at = static_cast<int>(rows_.size());
    const std::array<const std::string*, 4> texts{&measure.amount, &measure.unit,
                                                  &measure.qualifier, &measure.grams};
    const QStringList spoken{tr("Measure %1: how many"), tr("Measure %1: of what"),
                             tr("Measure %1: how cut, how large"), tr("Measure %1: grams")};
    Row row{};
    for (int i = 0; i < 4; ++i) {
        const auto place = static_cast<std::size_t>(i);
        auto* field = new QLineEdit{QString::fromStdString(*texts[place])};
        field->setObjectName(
            QStringLiteral("measure%1_%2").arg(at).arg(QLatin1String{kMembers[place]}));
        field->setAccessibleName(spoken[i].arg(at + 1));
        if (i == 0 || i == 3) {
            field->setFixedWidth(kShortField);
            field->setAlignment(Qt::AlignRight);
        }
        connect(field, &QLineEdit::textEdited, this, &MeasureFields::follow);
        grid_->addWidget(field, at + 1, i);
        row[place] = field;
    }
    rows_.push_back(row);
}

void MeasureFields::follow() {
    bool empty = true;
    for (const QLineEdit* field : rows_.back()) empty = empty && field->text().isEmpty();
    if (!empty) addRow({});
    emit edited();
}

std::vector<MeasureEntry> MeasureFields::entries() const {
    std::vector<MeasureEntry> entries;
    for (const Row& row : rows_)
        entries.push_back({row[0]->text().toStdString(), row[1]->text().toStdString(),
                           row[2]->text().toStdString(), row[3]->text().toStdString()});
    while (!entries.empty() && entries.back() == MeasureEntry{}) entries.pop_back();
    return entries;
}

QLineEdit* MeasureFields::field(std::size_t row, const std::string& member) const {
    for (std::size_t i = 0; i < kMembers.size(); ++i)
        if (row < rows_.size() && member == kMembers[i]) return rows_[row][i];
    return nullptr;
}

}  // namespace nettare
