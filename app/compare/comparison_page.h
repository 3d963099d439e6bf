#pragma once

#include "app/compare/comparison_words.h"

#include <QScrollArea>

class QCheckBox;
class QLabel;

namespace nettare {

class ChangeCards;
class CompareTable;
class MethodDifference;

/// A comparison as one page that scrolls: the lines, the cards, the method.
class ComparisonPage : public QScrollArea {
    Q_OBJECT

public:
    explicit ComparisonPage(QWidget* parent = nullptr);

    void show(const QString& leftTitle, const QString& rightTitle, ComparisonWords words);
    /// Nothing is said until the next comparison is there.
    void clear() { page_->hide(); }
    [[nodiscard]] CompareTable& table() const { return *table_; }
    [[nodiscard]] ChangeCards& cards() const { return *cards_; }
    [[nodiscard]] MethodDifference& method() const { return *method_; }

private:
    void setChangesOnly(bool changesOnly);
    void bringIntoSight(const QRect& cell);

    QWidget* page_;
    QCheckBox* changesOnly_;
    QLabel* sameLines_;
    CompareTable* table_;
    ChangeCards* cards_;
    MethodDifference* method_;
};

}  // namespace nettare
