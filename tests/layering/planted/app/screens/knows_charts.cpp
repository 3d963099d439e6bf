// Planted: a screen that plots past the palette.
#include <QtCharts/QChartView>
