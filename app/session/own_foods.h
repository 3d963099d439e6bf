#pragma once

#include <QObject>
#include <QString>
#include <QUndoStack>

#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "app/kitchen/moved_figures.h"
#include "app/session/label_photo.h"
#include "app/work/store_thread.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// The foods that a kitchen has of its own, in memory, and which rows its recipes use. Every change
/// is written in the store's thread; what can be taken back stands on undoStack(). Errors come by
/// failed().
class OwnFoods : public QObject {
    Q_OBJECT

public:
    OwnFoods(StoreThread& store, std::shared_ptr<Kitchen> kitchen, QObject* parent = nullptr);

    /// By name; also those out of use or merged.
    [[nodiscard]] const std::vector<OwnFoodRecord>& all() const { return all_; }
    /// Null where there is none.
    [[nodiscard]] const OwnFoodRecord* record(const std::string& id) const;
    /// The food that stands for that one now: itself, or what it was merged into.
    [[nodiscard]] const OwnFoodRecord* standingFor(const std::string& id) const;
    /// The UUIDs of the food and of all that were merged into it.
    [[nodiscard]] std::vector<std::string> idsOf(const std::string& id) const;
    /// In how many recipes each row is.
    [[nodiscard]] const UsedRows& used() const { return used_; }
    /// The rows that recipes use, as the kitchen has them, most used first.
    [[nodiscard]] const std::vector<TableFood>& usedFoods() const { return usedFoods_; }
    /// The row as it counts now, or as recipes use it; null where it is neither.
    [[nodiscard]] const TableFood* food(const TableRow& row) const;
    [[nodiscard]] QUndoStack& undoStack() { return stack_; }

    /// Reads everything anew; changed() follows.
    void load();
    /// Saves a food as its next version. `done` gets its row, unless that failed or `receiver` is
    /// gone by then.
    void save(const OwnFood& own, QObject* receiver, std::function<void(TableRow)> done);
    /// The same together with the photograph that its label names: both are kept, or neither.
    void saveWithPhoto(const OwnFood& own, const std::string& photo, QObject* receiver,
                       std::function<void(TableRow)> done);
    void retire(const std::string& id);
    void takeBackIntoUse(const std::string& id);
    /// `stays` stands for `goes` from now on.
    void merge(const std::string& goes, const std::string& stays);
    /// The recipes that use one of these rows; told unless `receiver` is gone by then.
    void askUses(const std::vector<TableRow>& rows, QObject* receiver,
                 std::function<void(std::vector<FoodUse>)> done);

    /// Every version of a food, the first first; told likewise.
    void askVersions(const std::string& id, QObject* receiver,
                     std::function<void(std::vector<OwnFood>)> done);

    /// The published figures that the version that counts of a food would move; told likewise,
    /// failures as well: OwnFoodNotFound where it is gone. Takes its time where many revisions use
    /// the food.
    void askMoved(const std::string& id, QObject* receiver,
                  std::function<void(Result<std::vector<MovedRevision>>)> done);
    /// Reads a photograph from a file, beside the window; told likewise, failures as well.
    void readPhoto(const QString& path, QObject* receiver,
                   std::function<void(Result<ReadPhoto>)> done);
    /// How a photograph of the kitchen looks; a null image where it is not there. Told likewise.
    void askPhoto(const std::string& sha256, QObject* receiver, std::function<void(QImage)> done);

signals:
    void changed();
    void failed(const nettare::Error& error);

private:
    friend class OwnFoodCommand;
    struct Loaded;
    void take(Loaded loaded);
    /// Writes the event; what it did can then be taken back by another one.
    void happen(const OwnFoodEvent& event, const OwnFoodEvent& back, const QString& text);
    void post(const OwnFoodEvent& event);
    /// `row` was saved in place of what counted before, if anything did.
    void wasSaved(const std::optional<TableRow>& before, const TableRow& row,
                  const std::string& name);

    StoreThread& store_;
    std::shared_ptr<Kitchen> kitchen_;  ///< used in the store's thread only
    std::vector<OwnFoodRecord> all_;
    UsedRows used_;
    std::vector<TableFood> usedFoods_;
    QUndoStack stack_;
};

}  // namespace nettare
