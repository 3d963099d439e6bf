#pragma once

#include <QAbstractTableModel>

#include "app/trial/trial.h"

namespace nettare {

/// The lines of a draft with the amounts that are tried. A tried amount is edited as text, in the
/// unit of its line or in percent of what it is.
class TrialLinesModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Food, Now, Tried, Grams, ColumnCount };

    explicit TrialLinesModel(Trial& trial, QObject* parent = nullptr);

    /// The trial has other lines.
    void reset();
    /// Grams eaten with what is tried; nothing while it has no figures.
    void setTried(const Cooked* cooked);
    /// Multiplies what is tried of a line.
    void multiply(int row, double by);
    [[nodiscard]] bool canTry(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

signals:
    void tried();
    /// One sentence on a text that is no amount of its line; empty once one is.
    void refused(const QString& sentence);

private:
    [[nodiscard]] const Line& line(int row) const;

    Trial& trial_;
    std::vector<double> grams_;
};

}  // namespace nettare
