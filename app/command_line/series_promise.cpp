#include "app/command_line/series_promise.h"

#include <fmt/core.h>

#include <algorithm>

#include "app/command_line/series_page.h"
#include "core/ledger/followed_in.h"
#include "core/publish/enough_text.h"

namespace nettare {

namespace {

const char* enoughWord(Enough enough) {
    switch (enough) {
        case Enough::Already:
            return "already";
        case Enough::WithMore:
            return "with more";
        case Enough::NoneSuffices:
            return "none suffices";
        case Enough::ValueMisses:
            return "the value misses";
    }
    return "";
}

Json answerJson(const EnoughWeighings& answer) {
    const TargetEntry& target = answer.target;
    Json json = Json::object();
    json.set("component", Json{factsOf(target.component).tagname});
    json.set("per", Json{nameOf(target.per)});
    if (target.atMost) json.set("at_most", Json{target.atMost->text()});
    if (target.atLeast) json.set("at_least", Json{target.atLeast->text()});
    json.set("enough", Json{enoughWord(answer.enough)});
    if (answer.enough == Enough::WithMore) json.set("more", Json{static_cast<double>(answer.more)});
    json.set("room", Json{answer.room}).set("within", Json{answer.halfWidth});
    json.set("least_within", Json{answer.least});
    return json;
}

}  // namespace

Result<SeriesPromise> promiseOf(const OpenRecipe& open, const std::string& recipe,
                                const SeriesKey& key, const std::vector<std::string>& tags) {
    const auto opened = open(recipe);
    if (!opened) return fail(opened.error());
    const Dossier& dossier = opened->dossier;
    std::vector<std::string> sorted = tags;
    std::ranges::sort(sorted);
    const auto series = followedIn(dossier, key, sorted);
    if (!series)
        return fail(ofArgument("--for", Error{ErrorCode::SeriesNotFollowed}
                                            .with("found", seriesTitle(key))
                                            .with("recipe", dossier.main().title)));
    auto answers = enoughWeighings(dossier, opened->cooked, *series);
    if (!answers) return fail(answers.error());
    return SeriesPromise{dossier.main(), std::move(*answers)};
}

std::string promiseLines(const SeriesPromise& promise) {
    if (promise.answers.empty())
        return fmt::format("“{}” has no ceiling or floor that this series could keep.\n",
                           promise.recipe.title);
    std::string lines;
    for (const EnoughWeighings& answer : promise.answers)
        lines += enoughText(answer, promise.recipe) + "\n";
    return lines;
}

Json promiseJson(const SeriesPromise& promise) {
    Json list = Json::array();
    for (const EnoughWeighings& answer : promise.answers) list.append(answerJson(answer));
    return list;
}

}  // namespace nettare
