#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/food/component.h"
#include "core/food/measure.h"
#include "core/food/table_food.h"
#include "core/support/result.h"
#include "db/build_table/processing_place.h"

namespace nettare {

/// Which table is written, and where to.
struct TableTarget {
    std::string table, release, citation;
    std::string folder;   ///< made where it is absent
    bool dryRun = false;  ///< all is done but in a nameless file that is gone afterwards
};

/// A food as its publisher's list of foods tells it. What other files tell can be set later.
struct NewFood {
    std::string number;  ///< as printed
    std::string name;    ///< one line
    int group = 0;       ///< what TableWriter::group() gave
    std::vector<std::string> otherNames;
    std::optional<double> refusePercent;  ///< 0 to 100
    std::string refuseNote;
    ConversionFactors factors;
    /// Where the publisher tells it, as of a branded product; else it is told by name and group.
    std::optional<ProcessingPlace> place;
};

/// A value of one food per 100 g edible portion, in the unit of the component.
struct NewValue {
    int component = 0;  ///< indexOf() one of ours, or what TableWriter::component() gave
    double per100g = 0;
    std::optional<double> standardError;
    int dataPoints = 0;                               ///< 0 where none are published
    std::optional<int> derivation = {}, source = {};  ///< what derivation() and source() gave
};

/// How many rows a writer took.
struct WrittenRows {
    std::size_t foods = 0, values = 0, measures = 0;
};

/// What became of the file.
enum class TablePut {
    Written,
    Unchanged,  ///< it was there with the same bytes
    NotKept,    ///< a dry run
};

/// Writes a table file of public data while its publisher's files are read; needs no more memory
/// for more rows than some ten bytes a food. Nothing shows under the file's own name before
/// finish(). What goes wrong with the disk is kept and told by failure() and finish(): a writer
/// that has failed takes rows and drops them. The same calls give the same bytes.
class TableWriter {
public:
    /// Answers false to stop.
    using GoOn = std::function<bool()>;

    /// Fails: FileNotWritable, ImportBusy (another import writes to that folder).
    [[nodiscard]] static Result<TableWriter> begin(const TableTarget& target);

    TableWriter(TableWriter&&) noexcept;
    TableWriter& operator=(TableWriter&&) noexcept;
    /// Leaves nothing behind, unless finish() was well.
    ~TableWriter();

    /// Where the table file goes.
    [[nodiscard]] const std::string& path() const;

    /// A file that the table is made from, by its plain name; a name told again replaces.
    void input(std::string_view name, std::string_view sha256);
    /// The publisher's number for one of our components.
    void ourComponent(Component component, std::string_view number);
    /// One more component of the publisher; ids start at 100. A tagname that another has already is
    /// left out, as is an empty one.
    [[nodiscard]] int component(std::string_view number, std::string_view tagname,
                                std::string_view name, std::string_view unit);
    /// The group of that name, made at its first use.
    [[nodiscard]] int group(std::string_view name);
    /// A code of the publisher with its meaning, made at its first use.
    [[nodiscard]] int derivation(std::string_view code, std::string_view description);
    [[nodiscard]] int source(std::string_view code, std::string_view description);

    /// The food's id, in the order of arrival; nothing where its number is there already.
    [[nodiscard]] std::optional<std::uint32_t> food(const NewFood& food);
    /// The food of that number.
    [[nodiscard]] std::optional<std::uint32_t> find(std::string_view number) const;
    // What another file tells of a food that is there; cheapest in the order of the foods.
    void setGroup(std::uint32_t food, int group);
    void setFactors(std::uint32_t food, const ConversionFactors& factors);
    void setPlace(std::uint32_t food, ProcessingPlace place);
    void addOtherNames(std::uint32_t food, const std::vector<std::string>& names);

    /// False where the food has a value of that component already, or the value is below zero or
    /// not finite. Cheapest where all values of a food come together and foods in their order.
    [[nodiscard]] bool value(std::uint32_t food, const NewValue& value);
    /// False where amount or grams are not above zero.
    [[nodiscard]] bool measure(std::uint32_t food, const HouseholdMeasure& measure);

    [[nodiscard]] const WrittenRows& rows() const;
    /// The first thing that went wrong with the disk.
    [[nodiscard]] const std::optional<Error>& failure() const;

    /// Ranks the foods, works out what the table says of groups and measures, makes the search
    /// index and puts the file in its place. Fails: FileNotWritable, ImportStopped (goOn said so).
    [[nodiscard]] Result<TablePut> finish(const GoOn& goOn = {});

private:
    struct File;
    explicit TableWriter(std::unique_ptr<File> file);

    std::unique_ptr<File> file_;
};

/// "usda-sr_28.table": each table and release has a name of its own. Bytes other than letters,
/// digits, dots and hyphens are percent-encoded.
[[nodiscard]] std::string tableFileName(std::string_view table, std::string_view release);

}  // namespace nettare
