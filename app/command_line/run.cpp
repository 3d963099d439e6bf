#include "app/command_line/run.h"

#include <fmt/core.h>

#include <filesystem>
#include <ostream>
#include <sstream>

#include "app/command_line/arguments.h"
#include "app/files/share_folder.h"
#include "app/loading/load_dossier.h"
#include "app/panel/panel_pdf.h"
#include "app/words/error_sentence.h"
#include "core/publish/figures_json.h"
#include "core/publish/figures_text.h"
#include "core/publish/number_text.h"
#include "core/publish/panel_of.h"
#include "core/publish/statement.h"
#include "core/support/text.h"

namespace nettare {

namespace {

constexpr std::size_t kMostHits = 20;
constexpr std::size_t kLongestQuote = 200;

/// A document's dossier with everything computed once.
struct Opened {
    Dossier dossier;
    Cooked cooked;
};

/// The error with the argument as its place.
Error ofArgument(std::string_view argument, Error error) {
    error.file = argument;
    return error;
}

/// "1,2,3" as counts; the errors of readAmount and RangeNotAllowed.
Result<std::vector<Count>> piecesOf(std::string_view list) {
    std::vector<Count> pieces;
    for (const std::string_view text : split(list, ',')) {
        const auto amount = readAmount(text);
        if (!amount) return fail(amount.error());
        if (amount->isRange()) return fail(Error{ErrorCode::RangeNotAllowed}.with("found", text));
        pieces.push_back(*Count::from(amount->low()));
    }
    return pieces;
}

/// Runs one command; each `run` answers nothing or the error that refused it.
class Session {
public:
    explicit Session(std::ostream& out) : out_{out}, loader_{shareFolder() + "/starter.table"} {}

    Result<void> run(const FiguresCommand& command) {
        for (const std::string& document : command.documents) {
            const auto opened = open(document);
            if (!opened) return fail(opened.error());
            if (auto shown = figures(*opened, command.per, command.json); !shown) return shown;
        }
        return {};
    }

    Result<void> run(const StatementCommand& command) {
        const auto opened = open(command.document);
        if (!opened) return fail(opened.error());
        const auto component = componentNamed(command.component);
        if (!component)
            return fail(ofArgument("--component", Error{ErrorCode::ComponentUnknown}.with(
                                                      "found", command.component)));
        const auto pieces = piecesOf(command.pieces);
        if (!pieces) return fail(ofArgument("--pieces", pieces.error()));
        const auto figures = figuresPer(Basis::Piece, opened->dossier, opened->cooked);
        if (!figures) return fail(figures.error());
        out_ << statementText((*figures)[*component], opened->dossier.main(), *pieces) << '\n';
        return {};
    }

    Result<void> run(const PanelCommand& command) {
        const auto opened = open(command.document);
        if (!opened) return fail(opened.error());
        return panel(*opened, command.out);
    }

    Result<void> run(const FoodsCommand& command) {
        std::string words;
        for (const std::string& word : command.words) (words += words.empty() ? "" : " ") += word;
        if (trimmed(words).empty()) return fail(ofArgument("WORDS", {ErrorCode::EmptyText}));
        const auto table = loader_.table();
        if (!table) return fail(table.error());
        const auto hits = (*table)->search(words, kMostHits);
        if (!hits) return fail(hits.error());
        if (hits->empty())
            out_ << "No food of the table matches “" << shortened(words, kLongestQuote) << "”.\n";
        for (const FoodHit& hit : *hits)
            out_ << fmt::format("{:<18} {:>5} kcal/100 g  {} of {} known  {}\n", hit.row.text(),
                                hit.energyKcalPer100g ? numberAt(0, *hit.energyKcalPer100g) : "?",
                                hit.knownComponents, kComponentCount, hit.name);
        return {};
    }

    Result<void> run(const DemoCommand& command) {
        for (const char* name : {"prawn-fennel-skewers", "barley-beetroot-patties"}) {
            const auto opened = open(shareFolder() + "/demo/" + name + ".json");
            if (!opened) return fail(opened.error());
            if (auto shown = figures(*opened, Basis::Portion, false); !shown) return shown;
            const std::filesystem::path folder = command.out.empty() ? "." : command.out;
            const std::string path = (folder / (std::string{name} + ".pdf")).string();
            if (auto written = panel(*opened, path); !written) return written;
            out_ << '\n';
        }
        return {};
    }

private:
    Result<Opened> open(const std::string& document) {
        auto dossier = loader_.load(document);
        if (!dossier) return fail(dossier.error());
        auto cooked = cook(*dossier);
        if (!cooked) return fail(cooked.error());
        return Opened{std::move(*dossier), std::move(*cooked)};
    }

    Result<void> figures(const Opened& opened, Basis basis, bool json) {
        const auto figures = figuresPer(basis, opened.dossier, opened.cooked);
        if (!figures) return fail(figures.error());
        if (json) {
            out_ << writeJsonIndented(figuresJson(*figures, opened.dossier, opened.cooked));
            return {};
        }
        const auto verdicts = verdictsOf(opened.dossier, opened.cooked);
        if (!verdicts) return fail(verdicts.error());
        out_ << figuresPage(*figures, opened.dossier, opened.cooked, *verdicts);
        return {};
    }

    Result<void> panel(const Opened& opened, const std::string& path) {
        const auto panel = usPanelOf(opened.dossier, opened.cooked);
        if (!panel) return fail(panel.error());
        if (auto written = writePanelPdf(*panel, path); !written) return written;
        out_ << "Panel written to " << path << '\n';
        return {};
    }

    std::ostream& out_;
    DossierLoader loader_;
};

}  // namespace

int runCommandLine(const std::vector<std::string>& arguments, std::ostream& out,
                   std::ostream& err) {
    const Command command = readArguments(arguments);
    if (const auto* text = std::get_if<PrintAndExit>(&command)) {
        (text->code == 0 ? out : err) << text->text;
        return text->code;
    }
    // Results go out whole or not at all: what one document refuses, no other has half written.
    std::ostringstream results;
    Session session{results};
    Result<void> done = std::visit(
        [&](const auto& one) -> Result<void> {
            if constexpr (std::is_same_v<std::decay_t<decltype(one)>, PrintAndExit>)
                return {};
            else
                return session.run(one);
        },
        command);
    if (done && !(out << results.view() << std::flush))
        done = fail(ofArgument("standard output", Error{ErrorCode::FileNotWritable}.with(
                                                      "reason", "the disk may be full")));
    if (done) return 0;
    err << "nettare: " << errorSentence(done.error()) << '\n';
    return 1;
}

}  // namespace nettare
