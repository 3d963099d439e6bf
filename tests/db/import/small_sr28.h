#pragma once

#include <map>
#include <string>
#include <string_view>

#include "db/import/import_table.h"
#include "scratch.h"

/// Six invented foods in the ASCII form of the Standard Reference, and where their table goes.
class SmallSr28 {
public:
    SmallSr28();

    /// Replaces one file.
    void file(const std::string& name, std::string_view content);
    /// Adds a row, without its line end.
    void addRow(const std::string& name, std::string_view row);
    void remove(const std::string& name);

    [[nodiscard]] std::string folder() const { return files_.path("sr28"); }
    [[nodiscard]] std::string tables() const { return files_.path("tables"); }
    [[nodiscard]] std::string table() const { return tables() + "/usda-sr_28.table"; }
    [[nodiscard]] nettare::ImportRequest request() const;
    /// Names of what lies beside the table, with it.
    [[nodiscard]] std::string listed() const;

private:
    Scratch files_;
    std::map<std::string, std::string> contents_;
};
