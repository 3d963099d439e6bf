#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/command_line/arguments.h"

namespace CLI {
class App;
}

namespace nettare {

/// The commands of the bench and the ledger on the command line, bound to the values they fill.
/// All of them work on a kitchen.
class BenchArguments {
public:
    void addTo(CLI::App& app);

    [[nodiscard]] const std::vector<CLI::App*>& commands() const { return commands_; }
    /// The command that was given; nothing where it was another one.
    [[nodiscard]] std::optional<Command> given() const;
    /// What contradicts itself or is missing, as the beginning of a sentence; nothing where all is
    /// well.
    [[nodiscard]] std::optional<std::string> wrong() const;

private:
    void addReading();
    void addReadingSeries();
    void addReadingSpeaksOf();
    void addEquipment();
    void addSeries();
    void addLedger();
    /// An argument that is there, with nothing in it.
    [[nodiscard]] std::optional<std::string> emptyArgument() const;
    [[nodiscard]] std::optional<std::string> wrongReading() const;
    [[nodiscard]] std::optional<std::string> wrongScale() const;

    CLI::App* readingCommand_ = nullptr;
    CLI::App* scaleCommand_ = nullptr;
    CLI::App* vesselCommand_ = nullptr;
    CLI::App* seriesCommand_ = nullptr;
    CLI::App* ledgerCommand_ = nullptr;
    CLI::App* verifyCommand_ = nullptr;
    std::vector<CLI::App*> commands_;
    ReadingCommand reading_;
    ScaleCommand scale_;
    VesselCommand vessel_;
    SeriesCommand series_;
    LedgerCommand ledger_;
    VerifyCommand verify_;
};

}  // namespace nettare
