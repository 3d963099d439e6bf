#include <fmt/core.h>

#include <array>
#include <charconv>

#include "core/support/json.h"
#include "core/support/json_number.h"

namespace nettare {

namespace {

/// Escapes what RFC 8259, section 7, says must be; all other text stays as it is, in UTF-8.
void writeText(std::string& out, std::string_view text) {
    out += '"';
    for (const char c : text) {
        if (c == '"' || c == '\\')
            (out += '\\') += c;
        else if (c == '\n')
            out += "\\n";
        else if (static_cast<unsigned char>(c) < 0x20)
            out += fmt::format("\\u{:04x}", static_cast<unsigned>(c));
        else
            out += c;
    }
    out += '"';
}

/// Writes values, on one line or indented; `depth` is the number of containers around a value.
class JsonWriter {
public:
    explicit JsonWriter(bool indented) : indented_{indented} {}

    void write(const Json& value, int depth) {
        if (const bool* truth = value.boolean())
            out_ += *truth ? "true" : "false";
        else if (const double* number = value.number())
            appendNumber(out_, *number);
        else if (const std::string* text = value.text())
            writeText(out_, *text);
        else if (const Json::Array* items = value.items())
            writeItems(*items, depth);
        else if (const Json::Object* members = value.members())
            writeMembers(*members, depth);
        else
            out_ += "null";
    }

    std::string take() { return std::move(out_); }

private:
    void writeItems(const Json::Array& items, int depth) {
        out_ += '[';
        bool first = true;
        for (const Json& item : items) {
            next(first, depth + 1);
            write(item, depth + 1);
        }
        close(items.empty(), depth, ']');
    }

    void writeMembers(const Json::Object& members, int depth) {
        out_ += '{';
        bool first = true;
        for (const JsonMember& member : members) {
            next(first, depth + 1);
            writeText(out_, member.key);
            out_ += indented_ ? ": " : ":";
            write(member.value, depth + 1);
        }
        close(members.empty(), depth, '}');
    }

    /// What parts an item from the one before it.
    void next(bool& first, int depth) {
        if (!first) out_ += ',';
        first = false;
        newLine(depth);
    }

    /// An empty container stays on its line: [].
    void close(bool empty, int depth, char bracket) {
        if (!empty) newLine(depth);
        out_ += bracket;
    }

    void newLine(int depth) {
        if (!indented_) return;
        out_ += '\n';
        out_.append(static_cast<std::size_t>(depth) * 2, ' ');
    }

    bool indented_;
    std::string out_;
};

}  // namespace

void appendNumber(std::string& text, double value) {
    // -0 is equal to 0 and would keep its sign. The longest double has 24 characters.
    if (value == 0) {
        text += '0';
        return;
    }
    std::array<char, 32> buffer{};
    const auto [end, error] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value);
    text.append(buffer.data(), error == std::errc{} ? end : buffer.data());
}

std::string numberText(double value) {
    std::string text;
    appendNumber(text, value);
    return text;
}

std::string writeJson(const Json& value) {
    JsonWriter writer{false};
    writer.write(value, 0);
    return writer.take();
}

std::string writeJsonIndented(const Json& value) {
    JsonWriter writer{true};
    writer.write(value, 0);
    return writer.take() + "\n";
}

}  // namespace nettare
