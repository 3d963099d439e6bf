#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

#include "core/label/label_entry.h"

class QGridLayout;

namespace nettare {

/// What a labelled food has beside its amounts: added sugars, plant or not, how far the product may
/// be from its declaration, the day it was read, and a note.
class LabelRestFields : public QWidget {
    Q_OBJECT

public:
    explicit LabelRestFields(QWidget* parent = nullptr);

    void show(const LabelTyped& typed);
    void readInto(LabelTyped& typed) const;
    /// The field that a pointer of labelledFoodFrom() names by these two; null for another.
    [[nodiscard]] QLineEdit* field(const QString& list, const QString& member) const;
    /// The added sugars are printed, so that nothing else needs to say them.
    void setSugarsPrinted(bool printed);

signals:
    void edited();

private:
    QLineEdit* addField(const char* name, const QString& spoken, int width = 0);
    void build();
    void follow();

    QComboBox* addedKind_;
    QLineEdit *addedAmount_, *addedReason_, *spread_, *date_, *note_;
    QCheckBox* plant_;
    bool printed_ = false;
};

}  // namespace nettare
