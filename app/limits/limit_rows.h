#pragma once

#include <QGridLayout>
#include <QLabel>
#include <QPointer>
#include <QWidget>

#include "app/limits/limit_key.h"

namespace nettare {

class RefusalLine;

/// The ceilings and floors of a draft: each with its number, how it is kept, and a button that
/// takes it away.
class LimitRows : public QWidget {
    Q_OBJECT

public:
    explicit LimitRows(RefusalLine& refusal, QWidget* parent = nullptr);

    void setDraft(DraftSession* draft);

signals:
    void failed(const nettare::Error& error);

private:
    void follow();
    void rebuild(std::vector<LimitKey> keys);
    void addRow(int row, const LimitKey& key);
    void takeAway(const LimitKey& key);
    void sayVerdicts();

    RefusalLine& refusal_;
    QPointer<DraftSession> draft_;
    QWidget* rows_ = nullptr;
    std::vector<LimitKey> keys_;
    std::vector<QLabel*> verdicts_;
    QLabel* none_;
};

}  // namespace nettare
