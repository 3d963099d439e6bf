#include "app/theme/type.h"

#include "app/gui/support/gui.h"

#include <QFontInfo>
#include <QFontMetricsF>
#include <QRawFont>

namespace nettare {

TEST_CASE("every size and cut of the type is Lato itself, not a stand-in") {
    for (const TypeSize size :
         {TypeSize::Caption, TypeSize::Header, TypeSize::Body, TypeSize::Section,
          TypeSize::PaneTitle, TypeSize::Step, TypeSize::Unit, TypeSize::Reading})
        for (const auto& [weight, cut] :
             {std::pair{Weight::Regular, "Regular"}, std::pair{Weight::Semibold, "Semibold"},
              std::pair{Weight::Bold, "Bold"}}) {
            const QRawFont drawn = QRawFont::fromFont(typeFont(size, weight));
            CHECK(drawn.familyName().startsWith(QStringLiteral("Lato")));
            CHECK(drawn.styleName() == QLatin1String{cut});
            CHECK(QFontInfo{typeFont(size, weight)}.pixelSize() == static_cast<int>(size));
        }
}

TEST_CASE("digits of one size stand in columns, whatever they are") {
    for (const Weight weight : {Weight::Regular, Weight::Semibold, Weight::Bold}) {
        INFO("cut " << static_cast<int>(weight));
        const QFontMetricsF metrics{figureFont(TypeSize::Body, weight)};
        const double width = metrics.horizontalAdvance(QStringLiteral("0000"));
        for (const char* digits : {"1111", "7171", "4711", "9876", "3652"})
            CHECK(metrics.horizontalAdvance(QLatin1String{digits}) == Approx(width));
    }
}

}  // namespace nettare
