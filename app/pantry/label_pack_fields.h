#pragma once

#include <QLineEdit>
#include <QWidget>

#include "core/label/label_entry.h"

class QGridLayout;
class QLabel;

namespace nettare {

class BasisSwitch;

/// What a package says before its amounts: name, whose rules, per what, of which state, servings
/// and their size, and what a millilitre weighs where one is named.
class LabelPackFields : public QWidget {
    Q_OBJECT

public:
    explicit LabelPackFields(QWidget* parent = nullptr);
    ~LabelPackFields() override;

    void show(const LabelTyped& typed);
    void readInto(LabelTyped& typed) const;
    [[nodiscard]] LabelRules rules() const;
    /// The other ones than now, as if chosen by the cook.
    void toggleRules();
    void setServingSize(const std::string& size);
    /// Marks the size of the serving; an empty `why` takes that back.
    void markServing(const QString& why);
    [[nodiscard]] QLineEdit* nameField() const { return name_; }
    [[nodiscard]] QLineEdit* servingField() const { return size_; }
    /// The last that the Tab key stops at.
    [[nodiscard]] QLineEdit* lastField() const { return within_; }
    /// The fields that Enter leads through.
    [[nodiscard]] std::vector<QWidget*> stops() const;
    /// Of the words before the fields, in px; the other parts of the form keep to it.
    static constexpr int kWordsPx = 104;
    /// The field of that member of a label: "serving", "density" ...; null for another.
    [[nodiscard]] QLineEdit* field(const QString& member) const;

signals:
    void edited();
    void rulesChosen();

private:
    QLineEdit* addField(const char* name, const QString& spoken, int width = 0);
    void addRow(QGridLayout& grid, const QString& label, std::initializer_list<QWidget*> parts);
    void build();
    void follow();

    BasisSwitch *rules_, *per_, *state_, *sizeUnit_;
    QLineEdit *name_, *servings_, *household_, *size_, *density_, *within_;
    QAction* sign_ = nullptr;
    std::vector<QWidget*> densityRow_;
};

}  // namespace nettare
