#pragma once

#include <QString>

#include <vector>

#include "app/window/pane.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace nettare {

/// One thing that can be chosen, and a word on it.
struct TouchChoice {
    QString text, detail;
    bool enabled = true;

    friend bool operator==(const TouchChoice&, const TouchChoice&) = default;
};

/// A list of big buttons under a heading. Where it is a page of its own, a button leads back.
class TouchList : public Pane {
    Q_OBJECT

public:
    enum class Leave { Never, ByButton };
    TouchList(const QString& heading, Leave leave, QWidget* parent = nullptr);

    /// Does nothing where they are the same as before. Without any, `none` is said.
    void setChoices(const std::vector<TouchChoice>& choices, const QString& none = {});
    [[nodiscard]] const std::vector<TouchChoice>& choices() const { return choices_; }
    void setHeading(const QString& heading);

signals:
    void chosen(int index);
    void left();

private:
    void clear();

    std::vector<TouchChoice> choices_;
    QLabel *heading_, *none_;
    QPushButton* leave_;
    QVBoxLayout* column_;
};

}  // namespace nettare
