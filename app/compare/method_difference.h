#pragma once

#include "app/compare/focus_group.h"
#include "app/compare/method_words.h"

#include <utility>
#include <vector>

class QGridLayout;
class QLabel;

namespace nettare {

/// The method of both sides as one text: what is only left is struck through, what is only right
/// is underlined.
class MethodDifference : public FocusGroup {
    Q_OBJECT

public:
    explicit MethodDifference(QWidget* parent = nullptr);

    void show(std::vector<ComparedStep> steps);
    void setChangesOnly(bool changesOnly);

protected:
    void changeEvent(QEvent* event) override;

private:
    void build();
    void recolour();

    QGridLayout* grid_;
    QLabel* nothing_;
    std::vector<ComparedStep> steps_;
    std::vector<QLabel*> numbers_;
    std::vector<std::pair<std::size_t, QLabel*>> texts_;  ///< by the step they show
    bool changesOnly_ = false;
};

}  // namespace nettare
