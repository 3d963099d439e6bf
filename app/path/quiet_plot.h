#pragma once

#include <QWidget>
#include <QtCharts/QChart>

QT_BEGIN_NAMESPACE
class QChartView;
QT_END_NAMESPACE

namespace nettare {

/// A chart on whatever it stands on: still, without a ground, and nothing to be operated.
class QuietPlot : public QWidget {
    Q_OBJECT

public:
    /// `name` is for screen readers.
    explicit QuietPlot(const QString& name, QWidget* parent = nullptr);

    /// Takes the chart over. `spoken` says what it shows.
    void show(QChart* chart, const QString& spoken);

private:
    QChartView* view_;
};

}  // namespace nettare
