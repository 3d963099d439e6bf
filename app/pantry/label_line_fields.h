#pragma once

#include <QLineEdit>
#include <QWidget>

#include <optional>
#include <string>
#include <vector>

#include "core/food/label_facts.h"
#include "core/label/label_lines.h"

class QGridLayout;
class QLabel;
class QPushButton;

namespace nettare {

/// The lines of a label in the order in which packages print them, each with its field and with
/// what the typed amount stands for. Lines that few packages have stand behind "More lines".
class LabelLineFields : public QWidget {
    Q_OBJECT

public:
    explicit LabelLineFields(QWidget* parent = nullptr);

    /// `before` are those of the last pack; what differs from them says so.
    void show(LabelRules rules, const std::vector<LabelAmount>& amounts,
              const std::vector<LabelAmount>& before);
    /// Other rules have other lines. What was typed in lines of the former ones comes back with
    /// them. The focus of a line stays with it, or goes to the first one where it is not there.
    void setRules(LabelRules rules);
    /// Those that hold text.
    [[nodiscard]] std::vector<LabelAmount> amounts() const;
    void setAmount(const LabelLine& line, const std::string& printed);
    /// Null where these rules have no such line.
    [[nodiscard]] QLineEdit* field(const LabelLine& line) const;
    /// Null where there is none.
    [[nodiscard]] QLineEdit* firstField() const;
    /// The fields that are shown, in order.
    [[nodiscard]] std::vector<QWidget*> stops() const;
    /// The Tab key comes here from `before`.
    void followInTabs(QWidget& before);
    /// Says beside each field what it stands for, in a label with these facts.
    void sayIntervals(const LabelFacts& facts);
    /// Marks the fields of these lines with an edge and a sign; `why` is for screen readers.
    void mark(const std::vector<LabelLine>& lines, const QString& why);

signals:
    void edited();

private:
    struct Row {
        const PrintedLine* printed;
        QLabel *name, *unit, *standsFor;
        QLineEdit* field;
        QAction* sign;
    };
    void build(const std::optional<LabelLine>& focused = {});
    [[nodiscard]] std::optional<LabelLine> focusedLine() const;
    void takeFocus(const LabelLine& line);
    void addRow(QGridLayout& grid, const PrintedLine& printed);
    void remember();
    void follow();
    [[nodiscard]] QString was(const LabelLine& line) const;

    LabelRules rules_ = LabelRules::Us;
    std::vector<LabelAmount> typed_;  ///< of all rules
    std::vector<LabelAmount> before_;
    QWidget* body_ = nullptr;
    QPushButton* more_;
    bool all_ = false;
    std::vector<Row> rows_;
};

/// Marks a field as one that is questioned, or takes that back.
void setQuestioned(QLineEdit& field, QAction*& sign, const QString& why);

}  // namespace nettare
