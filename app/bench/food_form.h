#pragma once

#include <vector>

#include "app/bench/weigh_subject.h"
#include "app/window/pane.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace nettare {

class KitchenSession;

/// A food that is no line of the open recipe: its name, and the series that it is weighed for.
class FoodForm : public Pane {
    Q_OBJECT

public:
    explicit FoodForm(KitchenSession& kitchen, QWidget* parent = nullptr);

    /// Empty again, with the focus on the name.
    void begin();

signals:
    void said(const nettare::FreeSubject& subject);
    void left();

private:
    void build();
    void chooseKind(int kind);
    void accept();
    [[nodiscard]] std::vector<std::string> tags() const;
    /// The row of the table that the name names, where one does whole; empty otherwise.
    [[nodiscard]] std::string rowOf(const QString& name) const;

    KitchenSession& kitchen_;
    QLineEdit *what_, *of_, *tags_;
    QLabel* note_;
    std::vector<QPushButton*> kinds_;
    int kind_ = 0;
};

}  // namespace nettare
