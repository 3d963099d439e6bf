#include "app/command_line/ledger_command.h"

#include <fmt/core.h>

#include <ostream>
#include <string>

#include "app/command_line/ledger_line.h"
#include "app/files/write_file.h"
#include "core/publish/ledger_csv.h"

namespace nettare {

namespace {

/// Goes over the ledger twice: what is said of an entry comes after it.
template <class Form>
Result<std::string> written(const Kitchen& kitchen, Form form, std::string text) {
    const auto surveyed = kitchen.readLedger([&form](const ChainedEntry& chained) {
        form.survey(chained);
        return true;
    });
    if (!surveyed) return fail(surveyed.error());
    const auto read = kitchen.readLedger([&form, &text](const ChainedEntry& chained) {
        text += form.row(chained);
        return true;
    });
    if (!read) return fail(read.error());
    return text;
}

Result<std::string> table(const Kitchen& kitchen) {
    auto text = written(kitchen, LedgerLines{}, {});
    if (!text) return text;
    const auto end = kitchen.ledgerEnd();
    if (!end) return fail(end.error());
    if (end->sequence == 0) return std::string{"The ledger is empty.\n"};
    *text += fmt::format("{} {}, head {}\n", end->sequence,
                         end->sequence == 1 ? "entry" : "entries", end->hash);
    return text;
}

}  // namespace

Result<void> showLedger(const LedgerCommand& command, const Kitchen& kitchen, std::ostream& out) {
    const auto text =
        command.csv ? written(kitchen, LedgerCsv{}, LedgerCsv::header()) : table(kitchen);
    if (!text) return fail(text.error());
    if (command.out.empty()) {
        out << *text;
        return {};
    }
    if (auto done = writeFile(command.out, *text); !done) return done;
    out << "Ledger written to " << command.out << '\n';
    return {};
}

}  // namespace nettare
