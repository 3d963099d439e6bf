#pragma once

#include <QFont>
#include <QHash>
#include <QObject>
#include <QPointer>
#include <QString>

class QAbstractItemModel;

namespace nettare {

/// A number as it stands around its decimal mark: "12.25" is "12" and ".25", "300" is "300" and "".
struct SplitNumber {
    QString whole, fraction;
};
/// `.` and `,` are decimal marks; groups are set apart by narrow spaces.
[[nodiscard]] SplitNumber splitNumber(const QString& number);

/// The widest parts of a column of numbers, in px.
struct NumberWidths {
    double whole = 0.0;     ///< with what stands before it
    double fraction = 0.0;  ///< decimal mark and digits
    double unit = 0.0;
};

/// Widths of a table's columns, measured once and again when the model changes.
class NumberColumns : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    [[nodiscard]] NumberWidths widths(const QAbstractItemModel& model, int column,
                                      const QFont& font);

private:
    void watch(const QAbstractItemModel& model);

    QPointer<const QAbstractItemModel> watched_;
    QHash<int, NumberWidths> widths_;
    QFont font_;
};

/// The fonts of a figure and of the unit behind it, made from a view's font.
[[nodiscard]] QFont numberFont(const QFont& viewFont, bool strong);
[[nodiscard]] QFont unitFont(const QFont& viewFont);

}  // namespace nettare
