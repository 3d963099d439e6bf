#pragma once

#include <QMetaObject>
#include <QObject>
#include <QStringList>

#include <string>
#include <vector>

#include "app/work/task_runner.h"
#include "core/ledger/ledger_reading.h"

class QTimer;

namespace nettare {

class BenchDesk;

/// What the series that the desk shows means for the ceilings and floors of the open recipe, where
/// that follows it: how many more weighings keep them. Found beside the window, a moment after the
/// recipe or the series changed, and only while somebody looks.
class RecipePromise : public QObject {
    Q_OBJECT

public:
    explicit RecipePromise(BenchDesk& desk, QObject* parent = nullptr);

    /// A sentence for each ceiling or floor that the series has to do with; none otherwise.
    [[nodiscard]] const QStringList& sentences() const { return sentences_; }
    void look(bool isLookedAt);

signals:
    void changed();

private:
    void followDraft();
    void followSeries();
    void askSoon();
    void ask();
    void say(const QStringList& sentences);

    BenchDesk& desk_;
    QTimer* soon_;
    QMetaObject::Connection draft_;
    QStringList sentences_;
    SeriesKey key_;  ///< of the series that sentences_ are of
    std::vector<std::string> tags_;
    bool isLookedAt_ = false;
    int asked_ = 0;  ///< counts, so that only the newest answer shows
    /// Last: it ends before what its answers touch. Not the kitchen's thread, so that a reading
    /// that is recorded meanwhile does not wait.
    TaskRunner tasks_;
};

}  // namespace nettare
