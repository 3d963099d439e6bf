#pragma once

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <QWidget>

#include "app/session/draft_session.h"

namespace nettare {

/// The row that sets a new ceiling or floor: component, end, number, what it is per.
class LimitEntry : public QWidget {
    Q_OBJECT

public:
    explicit LimitEntry(QWidget* parent = nullptr);

    void setDraft(DraftSession* draft);

signals:
    /// One sentence on what was typed; empty once it is fine.
    void refused(const QString& sentence);

private:
    void add();

    QPointer<DraftSession> draft_;
    QComboBox *component_, *end_, *per_;
    QLineEdit* number_;
    QLabel* unit_;
    QPushButton* add_;
};

}  // namespace nettare
