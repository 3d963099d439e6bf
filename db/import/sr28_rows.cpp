#include "db/import/sr28_rows.h"

#include <charconv>
#include <cmath>
#include <system_error>

#include "core/support/text.h"
#include "db/import/windows_1252.h"

namespace nettare {

Sr28Rows::Sr28Rows(std::unique_ptr<ImportStream> stream, std::string_view name, std::size_t fields,
                   ImportRun& run)
    : stream_{std::move(stream)},
      lines_{std::make_unique<ImportLines>(*stream_)},
      name_{name},
      fields_(fields),
      run_{&run} {}

Result<Sr28Rows> Sr28Rows::open(const ImportFiles& files, std::string_view name, std::size_t fields,
                                ImportRun& run) {
    auto stream = files.read(name);
    if (!stream) return fail(stream.error());
    run.begins(name);
    return Sr28Rows{std::move(*stream), name, fields, run};
}

Error Sr28Rows::errorHere(ErrorCode code) const {
    return at(Error{code});
}

Error Sr28Rows::at(Error error) const {
    error.file = name_;
    error.line = lines_->line();
    return error;
}

Result<bool> Sr28Rows::next() {
    for (;;) {
        const auto line = lines_->next();
        if (!line && line.error().code == ErrorCode::NotPublished) {
            Error error = line.error();
            error.file = name_;
            return fail(error);
        }
        if (!line) return fail(line.error());
        const std::string wanted = std::to_string(fields_.size()) + " fields between carets";
        if (!*line) {
            run_->ends(stream_->bytesRead());
            if (lines_->line() > 0) return false;
            return fail(
                errorHere(ErrorCode::NotPublished).with("found", "").with("wanted", wanted));
        }
        if (const auto told = run_->isAt(stream_->bytesRead()); !told) return fail(told.error());
        if (takeApart(**line)) return true;
        if (lines_->line() == 1)
            return fail(errorHere(ErrorCode::NotPublished)
                            .with("found", shortened(**line, 30))
                            .with("wanted", wanted));
        run_->reject(errorHere(ErrorCode::FieldsDiffer)
                         .with("found", std::to_string(found_))
                         .with("known", std::to_string(fields_.size())));
    }
}

bool Sr28Rows::takeApart(std::string_view line) {
    found_ = 0;
    for (;;) {
        // A caret between tildes is text.
        const bool quoted = line.starts_with('~');
        const std::size_t close = quoted ? line.find('~', 1) : 0;
        if (quoted && close == std::string_view::npos) return false;
        const std::size_t end = line.find('^', close);
        std::string_view field = line.substr(0, end);
        if (quoted) {
            if (field.size() != close + 1) return false;
            field = field.substr(1, close - 1);
        }
        if (found_ < fields_.size()) fields_[found_] = field;
        ++found_;
        if (end == std::string_view::npos) return found_ == fields_.size();
        line.remove_prefix(end + 1);
    }
}

void Sr28Rows::refuse(ErrorCode code, std::string_view found) {
    if (refusal_) return;
    refusal_ = errorHere(code).with("found", utf8FromWindows1252(found).value_or("?"));
}

void Sr28Rows::refuse(std::string_view found, std::string_view wanted) {
    if (refusal_) return;
    refuse(ErrorCode::NotPublished, found);
    refusal_ = refusal_->with("wanted", wanted);
}

bool Sr28Rows::refused() {
    if (!refusal_) return false;
    run_->reject(*refusal_);
    refusal_.reset();
    return true;
}

std::string Sr28Rows::text(std::size_t field) {
    auto text = utf8FromWindows1252(trimmed(raw(field)));
    if (text && isPlainLine(*text)) return std::move(*text);
    refuse(raw(field), "plain text");
    return {};
}

std::string Sr28Rows::requiredText(std::size_t field) {
    std::string found = text(field);
    if (found.empty()) refuse(raw(field), "a text");
    return found;
}

std::optional<double> Sr28Rows::number(std::size_t field) {
    const std::string_view written = raw(field);
    if (written.empty()) return std::nullopt;
    double value = 0;
    const char* end = written.data() + written.size();
    const auto read = std::from_chars(written.data(), end, value, std::chars_format::fixed);
    const bool whole = read.ec == std::errc{} && read.ptr == end && std::isfinite(value);
    if (whole && value >= 0) return value;
    refuse(written, "a number from 0 on");
    return std::nullopt;
}

double Sr28Rows::requiredNumber(std::size_t field) {
    if (raw(field).empty()) refuse(raw(field), "a number");
    return number(field).value_or(0);
}

int Sr28Rows::count(std::size_t field) {
    const std::string_view written = raw(field);
    if (written.empty()) return 0;
    int value = 0;
    const char* end = written.data() + written.size();
    const auto read = std::from_chars(written.data(), end, value);
    if (read.ec == std::errc{} && read.ptr == end && value >= 0) return value;
    refuse(written, "a whole number");
    return 0;
}

}  // namespace nettare
