#include "app/limits/limit_key.h"

#include <QCoreApplication>

#include "app/figures/figure_words.h"
#include "app/sheet/document_texts.h"
#include "core/support/text.h"

namespace nettare {

namespace {

struct LimitWords {
    Q_DECLARE_TR_FUNCTIONS(Limits)
};

std::optional<LimitKey> keyOf(const Json& target) {
    const auto component = componentNamed(memberText(&target, "component"));
    const auto per = basisNamed(memberText(&target, "per"));
    if (!component || !per) return std::nullopt;
    const bool ceiling = target.find("at_most") != nullptr;
    return LimitKey{*component, *per, ceiling ? TargetEnd::AtMost : TargetEnd::AtLeast};
}

std::string_view memberOf(TargetEnd end) {
    return end == TargetEnd::AtMost ? "at_most" : "at_least";
}

}  // namespace

std::vector<LimitKey> limitsOf(const Json& document) {
    std::vector<LimitKey> keys;
    for (const Json& target : entriesIn(document, "targets"))
        if (const auto key = keyOf(target)) keys.push_back(*key);
    return keys;
}

QString limitEnd(TargetEnd end) {
    return end == TargetEnd::AtMost ? LimitWords::tr("at most") : LimitWords::tr("at least");
}

QString limitBasis(Basis per) {
    switch (per) {
        case Basis::Piece:
            return LimitWords::tr("per piece");
        case Basis::Portion:
            return LimitWords::tr("per portion");
        case Basis::Hundred:
            return LimitWords::tr("per 100 g");
        case Basis::Batch:
            return LimitWords::tr("per batch");
    }
    return {};
}

QString limitName(const LimitKey& key) {
    return LimitWords::tr("%1, %2, %3")
        .arg(componentName(key.component), limitEnd(key.end), limitBasis(key.per));
}

DraftMember limitMember(const LimitKey& key) {
    return {[key](const DraftSession& draft) {
                for (const Json& target : entriesIn(draft.document(), "targets"))
                    if (keyOf(target) == key)
                        return QString::fromStdString(memberText(&target, memberOf(key.end)));
                return QString{};
            },
            [key](const Json& document, const std::string& typed) -> Result<Edit> {
                if (trimmed(typed).empty()) return fail(ErrorCode::EmptyText);
                return setTarget(document, key.component, key.per, key.end, typed);
            }};
}

}  // namespace nettare
