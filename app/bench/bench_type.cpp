#include "app/bench/bench_type.h"

#include <QPushButton>

#include "app/theme/spacing.h"

namespace nettare {

QFont benchFont(Weight weight) {
    return resized(typeFont(TypeSize::Step, weight), kBenchTextPx);
}

QFont benchFigures(Weight weight) {
    return resized(figureFont(TypeSize::Step, weight), kBenchTextPx);
}

QPushButton* benchButton(const QString& text, const char* name) {
    auto* button = new QPushButton{text};
    button->setObjectName(QLatin1String{name});
    button->setFont(benchFont());
    button->setProperty("touch", true);
    // A longer text keeps its own width; a set one would let it be cut.
    if (button->sizeHint().width() < kBenchTargetPx) button->setMinimumWidth(kBenchTargetPx);
    button->setAutoDefault(false);
    return button;
}

}  // namespace nettare
