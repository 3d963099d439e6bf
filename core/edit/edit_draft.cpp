#include "core/edit/edit_draft.h"

#include "core/edit/place.h"
#include "core/recipe/read_recipe.h"
#include "core/support/json_reader.h"
#include "core/support/text.h"

namespace nettare {

namespace {

constexpr std::size_t kSubjectLength = 80;
constexpr std::size_t kSlugLength = 40;

bool isSlugCharacter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
}

/// Letters and digits of a name, with dashes for what is between them.
std::string slugOf(std::string_view name) {
    std::string slug;
    for (const char c : lowerAscii(name)) {
        if (slug.size() >= kSlugLength) break;
        if (isSlugCharacter(c))
            slug += c;
        else if (!slug.empty() && slug.back() != '-')
            slug += '-';
    }
    while (!slug.empty() && slug.back() == '-') slug.pop_back();
    return slug.empty() ? "entry" : slug;
}

}  // namespace

EditDraft::EditDraft(const Json& document, EditKind kind, std::string_view subject)
    : document_{document}, edit_{kind, shortened(subject, kSubjectLength), {}} {}

void EditDraft::set(const std::string& place, std::optional<Json> after) {
    const Json* there = valueAt(document_, place);
    std::optional<Json> before;
    if (there != nullptr) before = *there;
    if (before != after) edit_.changes.emplace_back(SetMember{place, before, std::move(after)});
}

std::size_t EditDraft::sizeOf(const std::string& list) const {
    const Json* there = valueAt(document_, list);
    const std::size_t written =
        there != nullptr && there->items() != nullptr ? there->items()->size() : 0;
    const auto grown = grown_.find(list);
    if (grown == grown_.end()) return written;
    return static_cast<std::size_t>(static_cast<std::ptrdiff_t>(written) + grown->second);
}

void EditDraft::insert(const std::string& list, std::size_t at, Json entry) {
    const bool makes = valueAt(document_, list) == nullptr && sizeOf(list) == 0;
    edit_.changes.emplace_back(InsertEntry{list, at, std::move(entry), makes});
    ++grown_[list];
}

void EditDraft::append(const std::string& list, Json entry) {
    insert(list, sizeOf(list), std::move(entry));
}

void EditDraft::remove(const std::string& list, std::size_t at) {
    const Json& entry = (*valueAt(document_, list)->items())[at];
    edit_.changes.emplace_back(RemoveEntry{list, at, entry, sizeOf(list) == 1});
    --grown_[list];
}

void EditDraft::move(const std::string& list, std::size_t from, std::size_t to) {
    if (from != to) edit_.changes.emplace_back(MoveEntry{list, from, to});
}

Result<Edit> EditDraft::takeChecked() {
    const auto after = applied(document_, edit_);
    if (!after) return fail(after.error());
    const auto recipe = readRecipe(*after);
    if (!recipe) return fail(recipe.error());
    return take();
}

std::string_view textAt(const Json& object, std::string_view key) {
    const Json* member = object.find(key);
    if (member == nullptr || member->text() == nullptr) return {};
    return *member->text();
}

const Json::Array& itemsOf(const Json& object, std::string_view key) {
    static const Json::Array kNone;
    const Json* member = object.find(key);
    return member != nullptr && member->items() != nullptr ? *member->items() : kNone;
}

Result<const Json*> entryNamed(const Json& document, std::string_view list, std::string_view id) {
    const Json* entries = document.find(list);
    const auto index = entries != nullptr ? indexOfId(*entries, id) : std::nullopt;
    if (!index)
        return fail(Error{ErrorCode::UnknownReference}.with("found", id).at(pointerTo("", list)));
    return &(*entries->items())[*index];
}

Result<Json> typedText(const std::string& place, std::string_view typed, std::size_t most) {
    const PlaceParts parts = partsOf(place);
    Json holder = Json::object();
    holder.set(parts.step, Json{typed});
    std::optional<Error> failure;
    ObjectReader reader{holder, std::string{parts.parent}, failure};
    std::string text = reader.text(parts.step, most);
    if (failure) return fail(*failure);
    return Json{std::move(text)};
}

std::string freshId(const Json& document, std::string_view list, std::string_view name) {
    const std::string slug = slugOf(name);
    const Json* entries = document.find(list);
    std::string id = slug;
    for (int next = 2; entries != nullptr && indexOfId(*entries, id); ++next)
        id = slug + "-" + std::to_string(next);
    return id;
}

std::string_view nameOfLine(const Json& document, const Json& line) {
    const auto food = entryNamed(document, "foods", textAt(line, "food"));
    return food ? textAt(**food, "name") : textAt(line, "food");
}

}  // namespace nettare
