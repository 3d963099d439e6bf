#pragma once

#include <QPointer>
#include <QPushButton>
#include <QWidget>

#include <vector>

#include "app/scale/purpose.h"
#include "app/session/draft_session.h"

namespace nettare {

class CountingChoice;
class DraftField;
class DraftMember;
class FlowLayout;
class RefusalLine;
class YieldResidue;

/// What the batch makes, what a portion is, what was weighed, the ceiling, and the rules by which
/// open amounts count: text that is edited where it stands. Weights lead to the scale, since one
/// without scale and tare cannot be defended.
class YieldRow : public QWidget {
    Q_OBJECT

public:
    YieldRow(RefusalLine& refusal, QWidget* parent = nullptr);

    void setDraft(DraftSession* draft);

signals:
    void weighAsked(const nettare::Purpose& purpose);
    void failed(const nettare::Error& error);

private:
    DraftField* addField(const QString& label, DraftMember member);
    QPushButton* addWeight(const QString& label);
    QWidget* addPair(const QString& label, QWidget* value);
    void follow();
    void followResidues(bool editable);
    YieldResidue* residueAt(std::size_t index);
    void removeResidue(std::size_t index);
    void followCounting(bool editable);
    void run(const Result<Edit>& edit);

    RefusalLine& refusal_;
    QPointer<DraftSession> draft_;
    FlowLayout* flow_;
    DraftField *makes_, *portion_, *ceiling_;
    QPushButton* cooked_;
    std::vector<YieldResidue*> residues_;  ///< the first one stays
    std::vector<CountingChoice*> counting_;
};

}  // namespace nettare
