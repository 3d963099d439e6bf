#pragma once

#include <string>
#include <vector>

#include "command_line/scratch_kitchen.h"

/// A kitchen bench.nettare with the scale "counter" (0.1 g, up to 3,000 g), in a folder of its own.
class BenchKitchen {
public:
    BenchKitchen();

    /// The run must end well; answers what it wrote.
    std::string operator()(std::vector<std::string> arguments) const;
    /// Records and answers the id of the reading.
    std::string reading(std::vector<std::string> arguments) const;
    /// The same call with the kitchen named.
    [[nodiscard]] static std::vector<std::string> here(std::vector<std::string> arguments);

private:
    ScratchKitchen folder_;
};

/// The text with every UUID as "ID", cut ones as "id", hashes as "HASH" and times as "TIME".
[[nodiscard]] std::string withoutIds(const std::string& text);
