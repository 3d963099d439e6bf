#pragma once

#include <QWidget>

#include <optional>
#include <vector>

class QLabel;
class QPushButton;
class QStackedLayout;
class QTableView;

namespace nettare {

class BringBackBar;
class EmptyState;
class KitchenSession;
class RevisionModel;
class ScreenHeader;

/// The kept revisions of the open recipe, newest first, and what can be done with them.
class RevisionScreen : public QWidget {
    Q_OBJECT

public:
    explicit RevisionScreen(KitchenSession& kitchen, QWidget* parent = nullptr);

    /// Numbers of the selected revisions, lowest first.
    [[nodiscard]] std::vector<int> selected() const;

signals:
    /// The earlier one first; without a second one, the draft is meant.
    void compareAsked(int revision, std::optional<int> other);
    void keepAsked();

protected:
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    void buildHeader();
    void buildTable();
    QWidget* buildBody();
    void fitColumns();
    void follow();
    void followSelection();
    void showEmpty();
    void loadFigures();
    void compareWithDraft();
    void compareTwo();

    KitchenSession& kitchen_;
    ScreenHeader* header_;
    QPushButton *withDraft_, *two_, *bringBack_;
    BringBackBar* bar_;
    QStackedLayout* stack_;
    RevisionModel* model_;
    QTableView* table_;
    EmptyState* empty_;
    QLabel* detail_;
    bool loading_ = false;
};

}  // namespace nettare
