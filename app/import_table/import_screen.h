#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QTableWidget>

#include <atomic>
#include <functional>
#include <memory>

#include "app/work/task_runner.h"
#include "db/import/import_table.h"

namespace nettare {

class BasisSwitch;
class KitchenSession;
class MappingForm;
class MessageLine;
class ScreenHeader;

/// Brings a public table of foods in: choose its files, look what would come, bring it in. Nothing
/// changes before the last step, and stopping leaves all as it was.
class ImportScreen : public QWidget {
    Q_OBJECT

public:
    /// Who asks the cook for files and folders, and for a mapping to read or to write.
    struct Asker {
        std::function<QString(QWidget*, bool folder)> table;
        std::function<QString(QWidget*, bool write)> mapping;
    };

    ImportScreen(KitchenSession& kitchen, Asker asker, QWidget* parent = nullptr);
    ~ImportScreen() override;

    void setPath(const QString& path);
    [[nodiscard]] bool busy() const { return tasks_.busy(); }

signals:
    void broughtIn();

private:
    void build();
    QWidget* buildSource();
    QWidget* buildReport();
    void chooseKind(int index);
    void choosePath(bool folder);
    void openFile();
    void readMapping();
    void writeMapping();
    void follow();
    void run(bool dryRun);
    void stop();
    void ended(const Result<ImportReport>& result, bool dryRun);
    void showRejected(const ImportReport& report);
    [[nodiscard]] ImportRequest request(bool dryRun) const;

    KitchenSession& kitchen_;
    Asker asker_;
    ImportKind kind_ = ImportKind::Sr28;
    ScreenHeader* header_;
    BasisSwitch* kinds_;
    QLabel* hint_;
    QLineEdit* path_;
    QPushButton *file_, *folder_, *use_, *save_, *look_, *bring_, *stop_;
    MappingForm* mapping_;
    QProgressBar* bar_;
    MessageLine* message_;
    QLabel* report_;
    QTableWidget* rejected_;
    std::shared_ptr<std::atomic<bool>> stopAsked_;
    bool toldMissing_ = false;
    TaskRunner tasks_;
};

}  // namespace nettare
