#pragma once

#include <QLabel>
#include <QWidget>

#include <vector>

#include "app/sheet/draft_member.h"
#include "core/edit/heading_edits.h"

namespace nettare {

class DraftField;
class RefusalLine;

/// What is assumed where nothing was measured: each number with where it comes from and the lines
/// that it counts for now. An empty field takes its default again.
class AssumptionFields : public QWidget {
    Q_OBJECT

public:
    explicit AssumptionFields(RefusalLine& refusal, QWidget* parent = nullptr);

    void setDraft(DraftSession* draft);

private:
    struct Row {
        Assumption which;
        DraftField* field;
        QLabel* usedBy;
    };
    void addRow(Assumption which, RefusalLine& refusal);
    void follow();

    QPointer<DraftSession> draft_;
    std::vector<Row> rows_;
};

/// An assumption as a field of the draft; shares are shown and typed in percent.
[[nodiscard]] DraftMember assumptionMember(Assumption which);

}  // namespace nettare
