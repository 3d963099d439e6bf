#pragma once

#include "app/compare/change_card.h"
#include "app/compare/focus_group.h"

#include <vector>

class QGridLayout;

namespace nettare {

/// The cards of a comparison, in rows of equal columns.
class ChangeCards : public FocusGroup {
    Q_OBJECT

public:
    explicit ChangeCards(QWidget* parent = nullptr);

    void show(const std::vector<CardWords>& cards);
    [[nodiscard]] const std::vector<ChangeCard*>& cards() const { return cards_; }

private:
    QGridLayout* grid_;
    std::vector<ChangeCard*> cards_;
};

}  // namespace nettare
