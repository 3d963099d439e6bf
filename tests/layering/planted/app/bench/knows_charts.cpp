// Planted: the bench plots in another file than its chart.
#include <QtCharts/QChartView>
