#include "db/import/import_lines.h"

namespace nettare {

namespace {

constexpr std::size_t kLongestLine = std::size_t{1} << 20U;

std::string_view withoutReturn(std::string_view line) {
    if (line.ends_with('\r')) line.remove_suffix(1);
    return line;
}

}  // namespace

Result<bool> ImportLines::fetch() {
    const auto block = stream_->next();
    if (!block) return fail(block.error());
    rest_ = *block;
    return !rest_.empty();
}

Result<std::optional<std::string_view>> ImportLines::next() {
    using Line = std::optional<std::string_view>;
    if (givesCarried_) carried_.clear();
    givesCarried_ = false;
    for (;;) {
        const std::size_t end = rest_.find('\n');
        if (end != std::string_view::npos) {
            std::string_view line = rest_.substr(0, end);
            rest_.remove_prefix(end + 1);
            ++line_;
            if (carried_.empty()) return Line{withoutReturn(line)};
            givesCarried_ = true;
            return Line{withoutReturn(carried_ += line)};
        }
        carried_ += rest_;
        if (carried_.size() > kLongestLine)
            return fail(
                Error{ErrorCode::NotPublished}.with("found", carried_).with("wanted", "a line"));
        const auto more = fetch();
        if (!more) return fail(more.error());
        if (*more) continue;
        if (carried_.empty()) return Line{};
        ++line_;
        givesCarried_ = true;
        return Line{withoutReturn(carried_)};
    }
}

}  // namespace nettare
