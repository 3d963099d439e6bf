#include "app/theme/dress.h"

#include "app/theme/enamel_style.h"
#include "app/theme/style_sheet.h"
#include "app/theme/type.h"

#include <QApplication>

namespace nettare {

void dress(QApplication& application, Shade shade) {
    static constexpr auto kDressed = "nettare_dressed";
    if (!application.property(kDressed).toBool()) {
        QApplication::setStyle(new EnamelStyle);
        QApplication::setFont(typeFont(TypeSize::Body));
        application.setProperty(kDressed, true);
    }
    QApplication::setPalette(widgetPalette(shade));
    application.setStyleSheet(styleSheet(shade));
}

}  // namespace nettare
