#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/food/own_food_entry.h"

class QGridLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace nettare {

class KitchenSession;
class MeasureFields;
struct Error;

/// An own food as it is typed: where it comes from, every component, its measures. Saving makes a
/// new version; what was saved before stays.
class OwnFoodForm : public QWidget {
    Q_OBJECT

public:
    explicit OwnFoodForm(KitchenSession& kitchen, QWidget* parent = nullptr);

    /// Fills the form with a food to be changed, or a copy, or nothing.
    void begin(const OwnFood& before);
    /// Whether something was typed that is not saved.
    [[nodiscard]] bool isChanged() const;
    /// Says so where something is not saved yet, else left() follows.
    void leave();

signals:
    void saved(const nettare::TableRow& row);
    void left();

private:
    void build();
    void buildHead(QVBoxLayout& column);
    void buildComponents(QVBoxLayout& column);
    void buildRest(QVBoxLayout& column);
    void buildFoot(QVBoxLayout& column);
    QLineEdit* field(const QString& name, const QString& spoken, int width = 0);
    [[nodiscard]] OwnFoodEntry entry() const;
    void followSugars();
    void save();
    void refuse(const Error& error);
    [[nodiscard]] QWidget* fieldAt(const std::string& pointer) const;

    KitchenSession& kitchen_;
    OwnFood before_;
    OwnFoodEntry begun_;
    QLabel *title_, *from_;
    QLineEdit *name_, *source_, *date_, *note_, *refuse_;
    QCheckBox* plant_;
    std::array<QLineEdit*, kComponentCount> components_{};
    std::array<QLabel*, kComponentCount> was_{};
    QComboBox* addedKind_;
    QLineEdit *addedAmount_, *addedReason_;
    MeasureFields* measures_;
    QLabel* refusal_;
    QPushButton *save_, *leave_, *drop_;
    bool waiting_ = false;  ///< a save is on its way
};

}  // namespace nettare
