#include "core/publish/enough_text.h"

#include <fmt/core.h>

#include "core/publish/number_text.h"

namespace nettare {

namespace {

std::string targetName(const TargetEntry& target, const ComponentFacts& facts) {
    const bool isCeiling = target.atMost.has_value();
    return fmt::format("{} {} {} {} per {}", isCeiling ? "at most" : "at least",
                       printedDecimal(isCeiling ? *target.atMost : *target.atLeast), facts.unit,
                       facts.name, nameOf(target.per));
}

std::string noneSuffices(const EnoughWeighings& answer, const ComponentFacts& facts) {
    // As many decimals as part the two.
    int decimals = facts.decimals;
    while (decimals < 6 && numberAt(decimals, answer.least) == numberAt(decimals, answer.room))
        ++decimals;
    return fmt::format("even {} more are not enough; ± {} {} would stay, and {} are left",
                       answer.tried == 1 ? "one" : numberAt(0, answer.tried),
                       numberAt(decimals, answer.least, Direction::Ceiling), facts.unit,
                       numberAt(decimals, answer.room, Direction::Floor));
}

std::string answerText(const EnoughWeighings& answer, const ComponentFacts& facts) {
    switch (answer.enough) {
        case Enough::Already:
            return "what is weighed is enough";
        case Enough::WithMore:
            return answer.more == 1 ? "one more weighing is enough"
                                    : fmt::format("{} more weighings are enough", answer.more);
        case Enough::NoneSuffices:
            return noneSuffices(answer, facts);
        case Enough::ValueMisses:
            return fmt::format("the value itself is {} {} {}; no weighing mends that",
                               numberAt(facts.decimals, -answer.room, Direction::Ceiling),
                               facts.unit, answer.target.atMost ? "above" : "below");
    }
    return {};
}

}  // namespace

std::string enoughText(const EnoughWeighings& answer, const Recipe& recipe) {
    const ComponentFacts& facts = factsOf(answer.target.component);
    return fmt::format("For “{}”, {}: {}.", recipe.title, targetName(answer.target, facts),
                       answerText(answer, facts));
}

}  // namespace nettare
