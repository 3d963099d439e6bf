#include "app/command_line/revision_line.h"

#include <fmt/core.h>

#include <optional>

#include "app/command_line/kept_figures.h"
#include "app/loading/closure.h"
#include "core/publish/figures_json.h"
#include "core/publish/figures_record.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

/// One revision with its figures, and those that were kept where they differ.
struct RevisionFigures {
    Dossier dossier;
    Cooked cooked;
    Figures figures;
    std::optional<KeptFigures> kept;
};

Error inRevision(const KeptReference& reference, Error error) {
    if (error.file.empty()) error.file = reference.text();
    return error;
}

Result<Dossier> dossierOfStored(const Kitchen& kitchen, const StoredRevision& stored,
                                const KeptReference& reference) {
    const auto closure = closureOfRevision(kitchen, stored.document, stored.foods);
    if (!closure) return fail(inRevision(reference, closure.error()));
    return dossierOf(stored.document, reference.text(), *closure);
}

/// What was kept, where it comes out otherwise today. Text that is the same is the same figures.
Result<std::optional<KeptFigures>> keptWhereOther(const Kitchen& kitchen,
                                                  const StoredRevision& stored,
                                                  const KeptReference& reference,
                                                  const RevisionFigures& today) {
    if (stored.arithmetic == kArithmeticVersion &&
        stored.figures == figuresRecordText(today.dossier, today.cooked))
        return std::optional<KeptFigures>{};
    auto whole = kitchen.revision(reference.recipe, reference.revision);
    if (!whole) return fail(whole.error());
    KeptFigures kept{std::move(whole->figures), whole->arithmetic};
    if (!differFromToday(kept, today.dossier, today.cooked)) return std::optional<KeptFigures>{};
    return std::optional{std::move(kept)};
}

Result<RevisionFigures> recomputed(Basis per, const Kitchen& kitchen,
                                   const KeptReference& reference) {
    const auto stored = kitchen.stored(reference.recipe, reference.revision);
    if (!stored) return fail(stored.error());
    RevisionFigures revision;
    auto dossier = dossierOfStored(kitchen, *stored, reference);
    if (!dossier) return fail(dossier.error());
    revision.dossier = std::move(*dossier);
    auto cooked = cook(revision.dossier);
    if (!cooked) return fail(cooked.error());
    revision.cooked = std::move(*cooked);
    auto figures = figuresPer(per, revision.dossier, revision.cooked);
    if (!figures) return fail(inRevision(reference, figures.error()));
    revision.figures = std::move(*figures);
    auto kept = keptWhereOther(kitchen, *stored, reference, revision);
    if (!kept) return fail(kept.error());
    revision.kept = std::move(*kept);
    return revision;
}

/// Members in the order of their keys, as writeJson() has them.
std::string jsonLine(const RevisionFigures& revision, const KeptReference& reference) {
    const Figures& figures = revision.figures;
    std::string line =
        fmt::format(R"({{"arithmetic":{},"basis":"{}")", kArithmeticVersion, nameOf(figures.basis));
    if (figures.beforeCooking) line += R"(,"before_cooking":true)";
    line += R"(,"figures":)";
    appendFigureRecords(figures, line);
    if (revision.kept) line += R"(,"kept":)" + writeJson(keptOtherwise(*revision.kept, figures));
    line +=
        fmt::format(R"(,"of":"{}","recipe":{},"revision":{}}})", nameOf(revision.cooked.meaning),
                    writeJson(Json{reference.recipe}), reference.revision);
    return line += '\n';
}

constexpr auto kRevisionRow = "{:<32}  {:>8}  {:<32}  {}\n";

}  // namespace

Result<std::string> revisionLine(const FiguresCommand& command, const Kitchen& kitchen,
                                 const KeptReference& reference) {
    const auto revision = recomputed(command.per, kitchen, reference);
    if (!revision) return fail(revision.error());
    if (command.json) return jsonLine(*revision, reference);
    return fmt::format(kRevisionRow, reference.recipe, reference.revision,
                       figureText(revision->figures[Component::ENERC_KCAL]),
                       revision->kept ? "differ today" : "the same");
}

std::string headingOfRows(const FiguresCommand& command) {
    if (command.json) return {};
    return fmt::format(kRevisionRow, "recipe", "revision",
                       fmt::format("energy per {}", nameOf(command.per)), "kept figures");
}

}  // namespace nettare
