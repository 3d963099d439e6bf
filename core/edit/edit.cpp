#include "core/edit/edit.h"

#include <algorithm>
#include <ranges>

#include "core/edit/place.h"

namespace nettare {

namespace {

std::optional<Error> doesNotFit(std::string_view place) {
    return Error{ErrorCode::EditDoesNotFit}.at(place);
}

/// Steps of iterators are signed.
std::ptrdiff_t step(std::size_t index) {
    return static_cast<std::ptrdiff_t>(index);
}

bool stands(const Json* there, const std::optional<Json>& wanted) {
    return wanted ? there != nullptr && *there == *wanted : there == nullptr;
}

/// True for the id of a list's entry, by which places are found.
bool namesAnEntry(const Json& document, const PlaceParts& parts) {
    if (parts.step != "id" || parts.parent.empty()) return false;
    const Json* list = valueAt(document, partsOf(parts.parent).parent);
    return list != nullptr && list->items() != nullptr;
}

/// Each answers whether the change fits, and has changed nothing where it does not.
bool change(Json& document, const SetMember& set) {
    if (set.place.empty()) {
        if (!set.after || !stands(&document, set.before)) return false;
        document = *set.after;
        return true;
    }
    if (set.place.front() != '/') return false;
    const PlaceParts parts = partsOf(set.place);
    Json* parent = valueAt(document, parts.parent);
    if (parent == nullptr || parent->members() == nullptr || namesAnEntry(document, parts))
        return false;
    if (!stands(parent->find(parts.step), set.before)) return false;
    if (set.after)
        parent->set(parts.step, *set.after);
    else
        parent->remove(parts.step);
    return true;
}

bool change(Json& document, const InsertEntry& insert) {
    if (!insert.list.starts_with('/')) return false;
    Json* list = valueAt(document, insert.list);
    if (insert.makeList) {
        const PlaceParts parts = partsOf(insert.list);
        Json* parent = valueAt(document, parts.parent);
        if (list != nullptr || insert.at != 0 || namesAnEntry(document, parts)) return false;
        if (parent == nullptr || parent->members() == nullptr) return false;
        Json made = Json::array();
        made.append(insert.entry);
        parent->set(parts.step, std::move(made));
        return true;
    }
    if (list == nullptr || list->items() == nullptr || insert.at > list->items()->size())
        return false;
    list->items()->insert(list->items()->begin() + step(insert.at), insert.entry);
    return true;
}

bool change(Json& document, const RemoveEntry& remove) {
    Json* list = valueAt(document, remove.list);
    if (list == nullptr || list->items() == nullptr) return false;
    Json::Array& items = *list->items();
    if (remove.at >= items.size() || items[remove.at] != remove.entry) return false;
    if (!remove.dropList) {
        items.erase(items.begin() + step(remove.at));
        return true;
    }
    if (items.size() != 1 || remove.list.empty()) return false;
    const PlaceParts parts = partsOf(remove.list);
    Json* parent = valueAt(document, parts.parent);
    if (parent->members() == nullptr || namesAnEntry(document, parts)) return false;
    parent->remove(parts.step);
    return true;
}

bool change(Json& document, const MoveEntry& move) {
    Json* list = valueAt(document, move.list);
    if (list == nullptr || list->items() == nullptr) return false;
    Json::Array& items = *list->items();
    if (move.from >= items.size() || move.to >= items.size()) return false;
    const auto from = items.begin() + step(move.from);
    const auto to = items.begin() + step(move.to);
    if (move.from < move.to)
        std::rotate(from, from + 1, to + 1);
    else
        std::rotate(to, from, from + 1);
    return true;
}

Change inverseOfChange(const SetMember& set) {
    return SetMember{set.place, set.after, set.before};
}
Change inverseOfChange(const InsertEntry& insert) {
    return RemoveEntry{insert.list, insert.at, insert.entry, insert.makeList};
}
Change inverseOfChange(const RemoveEntry& remove) {
    return InsertEntry{remove.list, remove.at, remove.entry, remove.dropList};
}
Change inverseOfChange(const MoveEntry& move) {
    return MoveEntry{move.list, move.to, move.from};
}

const std::string& placeOf(const Change& any) {
    return std::visit(
        [](const auto& one) -> const std::string& {
            if constexpr (requires { one.place; })
                return one.place;
            else
                return one.list;
        },
        any);
}

bool setsMembersOnly(const Edit& edit) {
    return !edit.changes.empty() && std::ranges::all_of(edit.changes, [](const Change& any) {
        return std::holds_alternative<SetMember>(any);
    });
}

/// One of two places lies inside the other: then their order matters.
bool oneInside(const std::string& a, const std::string& b) {
    return a.starts_with(b + "/") || b.starts_with(a + "/");
}

/// Lets a later setting go on with those before it; false where it does not continue them.
bool continued(std::vector<Change>& changes, const SetMember& later) {
    for (Change& any : changes) {
        auto& earlier = std::get<SetMember>(any);
        if (oneInside(earlier.place, later.place)) return false;
        if (earlier.place != later.place) continue;
        if (earlier.after != later.before) return false;
        earlier.after = later.after;
        return true;
    }
    changes.emplace_back(later);
    return true;
}

}  // namespace

std::optional<Error> apply(const Edit& edit, Json& document) {
    for (std::size_t i = 0; i < edit.changes.size(); ++i) {
        const bool fits =
            std::visit([&](const auto& one) { return change(document, one); }, edit.changes[i]);
        if (fits) continue;
        // What was done before is taken back, the last first; that always fits.
        for (std::size_t done = i; done-- > 0;) {
            const Change back = std::visit([](const auto& one) { return inverseOfChange(one); },
                                           edit.changes[done]);
            std::visit([&](const auto& one) { return change(document, one); }, back);
        }
        return doesNotFit(placeOf(edit.changes[i]));
    }
    return std::nullopt;
}

Result<Json> applied(Json document, const Edit& edit) {
    if (auto error = apply(edit, document)) return fail(std::move(*error));
    return document;
}

Edit inverseOf(const Edit& edit) {
    Edit inverse{edit.kind, edit.subject, {}};
    inverse.changes.reserve(edit.changes.size());
    for (std::size_t i = edit.changes.size(); i-- > 0;)
        inverse.changes.push_back(
            std::visit([](const auto& one) { return inverseOfChange(one); }, edit.changes[i]));
    return inverse;
}

std::optional<Edit> merged(const Edit& first, const Edit& second) {
    const bool same = first.kind == second.kind && first.subject == second.subject;
    if (!same || !setsMembersOnly(first) || !setsMembersOnly(second)) return std::nullopt;
    if (placeOf(first.changes.front()) != placeOf(second.changes.front())) return std::nullopt;
    Edit both = first;
    for (const Change& later : second.changes)
        if (!continued(both.changes, std::get<SetMember>(later))) return std::nullopt;
    return both;
}

bool changesNothing(const Edit& edit) {
    return std::ranges::all_of(edit.changes, [](const Change& any) {
        if (const auto* set = std::get_if<SetMember>(&any)) return set->before == set->after;
        const auto* move = std::get_if<MoveEntry>(&any);
        return move != nullptr && move->from == move->to;
    });
}

}  // namespace nettare
