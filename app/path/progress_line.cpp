#include "app/path/progress_line.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

#include "app/theme/palette.h"
#include "app/theme/spacing.h"

namespace nettare {

ProgressLine::ProgressLine(QWidget* parent) : Readout{parent} {
    setAccessibleName(tr("Progress"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void ProgressLine::setShare(double share) {
    share_ = std::clamp(share, 0.0, 1.0);
    valueChanged();
}

QString ProgressLine::spokenValue() const {
    return tr("%1 %").arg(static_cast<int>(std::lround(100 * share_)));
}

QSize ProgressLine::sizeHint() const {
    return {kSpace8Px, kSpace2Px};
}

void ProgressLine::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Shade shade = shadeOf(palette());
    painter.fillRect(rect(), colour(Role::Selection, shade));
    painter.fillRect(0, 0, static_cast<int>(share_ * width()), height(),
                     colour(Role::Cobalt, shade));
}

}  // namespace nettare
