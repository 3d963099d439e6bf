#include "command_line/bad_input.h"

#include <catch2/catch.hpp>

#include "command_line/scratch_kitchen.h"
#include "core/support/text.h"

using namespace nettare;

namespace {

Json parsed(std::string_view text) {
    auto json = parseJson(text);
    INFO(text);
    REQUIRE(json);
    return std::move(*json);
}

std::string unescaped(std::string_view step) {
    return replaced(replaced(step, "~1", "/"), "~0", "~");
}

Json& childOf(Json& parent, const std::string& step) {
    if (parent.items() != nullptr) return parent.items()->at(std::stoul(step));
    for (JsonMember& member : *parent.members())
        if (member.key == step) return member.value;
    throw std::out_of_range(step);
}

void apply(Json& root, const DocumentEdit& edit) {
    Json* parent = &root;
    auto steps = split(std::string_view{edit.pointer}.substr(1), '/');
    const std::string last = unescaped(steps.back());
    steps.pop_back();
    for (const std::string_view step : steps) parent = &childOf(*parent, unescaped(step));
    if (edit.json.empty())
        std::erase_if(*parent->members(), [&](const JsonMember& m) { return m.key == last; });
    else if (last == "-" && parent->items() != nullptr)
        parent->append(parsed(edit.json));
    else if (parent->items() != nullptr)
        childOf(*parent, last) = parsed(edit.json);
    else
        parent->set(last, parsed(edit.json));
}

}  // namespace

std::string edited(const std::string& document, const std::vector<DocumentEdit>& edits) {
    Json root = parsed(document);
    for (const DocumentEdit& edit : edits) apply(root, edit);
    return writeJsonIndented(root);
}

void checkRefused(const std::string& document, const std::string& sentence,
                  const std::vector<std::string>& arguments) {
    const ScratchKitchen kitchen;
    kitchen.write("doc.json", document);
    checkRun(arguments, sentence);
}

void checkRun(const std::vector<std::string>& arguments, const std::string& sentence, int code) {
    const Outcome outcome = run(arguments);
    CHECK(outcome.err == "nettare: " + sentence + "\n");
    CHECK(outcome.code == code);
    CHECK(outcome.out.empty());
    CHECK(isPlainLine(sentence));
    CHECK(sentence.find("“”") == std::string::npos);
}
