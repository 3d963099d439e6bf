#pragma once

#include <QStackedWidget>
#include <QWidget>

namespace nettare {

class AssumptionFields;
class EmptyState;
class KitchenSession;
class LimitEntry;
class LimitRows;
class RefusalLine;
class ScreenHeader;
struct Error;

/// What a recipe promises and what it assumes: ceilings and floors on any component, and the
/// numbers that stand in where nothing was measured.
class LimitsScreen : public QWidget {
    Q_OBJECT

public:
    explicit LimitsScreen(KitchenSession& kitchen, QWidget* parent = nullptr);

signals:
    void sheetWanted();
    void failed(const nettare::Error& error);

private:
    QWidget* buildPage();
    void followDraft();

    KitchenSession& kitchen_;
    ScreenHeader* header_;
    QStackedWidget* stack_;
    EmptyState* empty_;
    RefusalLine* refusal_;
    LimitRows* rows_;
    LimitEntry* entry_;
    AssumptionFields* assumptions_;
};

}  // namespace nettare
