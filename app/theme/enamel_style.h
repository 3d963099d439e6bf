#pragma once

#include <QProxyStyle>

namespace nettare {

/// Fusion, with what a style sheet cannot draw in our own colours: combo boxes, spin boxes, check
/// boxes, radio buttons and the ring around what has the focus.
class EnamelStyle : public QProxyStyle {
    Q_OBJECT

public:
    EnamelStyle();

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget = nullptr) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                            QPainter* painter, const QWidget* widget = nullptr) const override;
    [[nodiscard]] QSize sizeFromContents(ContentsType type, const QStyleOption* option,
                                         const QSize& size,
                                         const QWidget* widget = nullptr) const override;
    [[nodiscard]] int pixelMetric(PixelMetric metric, const QStyleOption* option = nullptr,
                                  const QWidget* widget = nullptr) const override;
};

}  // namespace nettare
