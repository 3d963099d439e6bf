#pragma once

#include <QFrame>

#include "app/bench/equipment_entry.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace nettare {

/// A few fields below one another, one button, and a line that says what is wrong in them.
class EquipmentForm : public QFrame {
    Q_OBJECT

public:
    EquipmentForm(const QString& button, const char* name, QWidget* parent = nullptr);

    /// Empty hides the line.
    void refuse(const QString& sentence);
    void clear();

signals:
    void wanted();  ///< the button, or Enter in a field

protected:
    QLineEdit* addField(const QString& label, const char* name, const QString& hint = {});
    void addRow(const QString& label, QWidget* field);

private:
    QVBoxLayout* form_;
    QLabel* refusal_;
    QPushButton* button_;
};

/// A scale that is not known yet.
class NewScaleForm : public EquipmentForm {
    Q_OBJECT

public:
    explicit NewScaleForm(QWidget* parent = nullptr);
    [[nodiscard]] TypedScale typed() const;

private:
    QLineEdit *name_, *readability_, *capacity_;
    QComboBox* unit_;
};

/// A known mass on a scale.
class CheckForm : public EquipmentForm {
    Q_OBJECT

public:
    CheckForm(const KnownScale& scale, QWidget* parent = nullptr);
    [[nodiscard]] QString mass() const;
    [[nodiscard]] QString shown() const;

private:
    QLineEdit *mass_, *shown_;
};

/// An empty vessel on the scale that is weighed on.
class NewVesselForm : public EquipmentForm {
    Q_OBJECT

public:
    explicit NewVesselForm(QWidget* parent = nullptr);
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString tare() const;

private:
    QLineEdit *name_, *tare_;
};

}  // namespace nettare
