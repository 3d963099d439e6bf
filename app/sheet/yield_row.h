#pragma once

#include <QPointer>
#include <QPushButton>
#include <QWidget>

#include "app/session/draft_session.h"

namespace nettare {

class DraftField;
class DraftMember;
class FlowLayout;
class RefusalLine;

/// What the batch makes, what a portion is, what was weighed, and the ceiling: text that is edited
/// where it stands. Weights lead to the scale, since one without scale and tare cannot be defended.
class YieldRow : public QWidget {
    Q_OBJECT

public:
    YieldRow(RefusalLine& refusal, QWidget* parent = nullptr);

    void setDraft(DraftSession* draft);

signals:
    void weighCookedAsked();
    void weighLeftAsked();

private:
    DraftField* addField(const QString& label, DraftMember member);
    QPushButton* addWeight(const QString& label);
    QWidget* addPair(const QString& label, QWidget* value);
    void follow();

    RefusalLine& refusal_;
    QPointer<DraftSession> draft_;
    FlowLayout* flow_;
    DraftField *makes_, *portion_, *ceiling_;
    QPushButton *cooked_, *left_;
};

}  // namespace nettare
