#include "app/bench/bench_fields.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

#include "app/theme/spacing.h"

namespace nettare {

QLabel* benchLabel(Weight weight) {
    auto* const label = new QLabel;
    label->setFont(benchFigures(weight));
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

QLabel* benchNote() {
    QLabel* const label = benchLabel();
    label->setProperty("tone", QStringLiteral("secondary"));
    return label;
}

QLineEdit* benchField(const QString& spoken, const char* name) {
    auto* const field = new QLineEdit;
    field->setObjectName(QLatin1String{name});
    field->setFont(benchFigures());
    field->setAccessibleName(spoken);
    field->setProperty("touch", true);
    return field;
}

QComboBox* benchBox(const QString& spoken, const char* name) {
    auto* const box = new QComboBox;
    box->setObjectName(QLatin1String{name});
    box->setFont(benchFont());
    box->setAccessibleName(spoken);
    box->setMinimumHeight(kBenchTargetPx);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    constexpr int kLetters = 8;
    box->setMinimumContentsLength(kLetters);
    return box;
}

}  // namespace nettare
