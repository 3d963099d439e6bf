#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>

#include "core/wording/line_questions.h"
#include "core/wording/read_line.h"
#include "core/wording/write_line.h"

// Any bytes are a line: its parts are the whole text in order, and what is written from its reading
// reads as the same. A broken law aborts, which the fuzzer reports with the input.

namespace {

void require(bool law) {
    if (!law) std::abort();
}

void checkParts(const nettare::LineReading& reading) {
    std::size_t end = 0;
    for (const nettare::LinePart& part : reading.parts) {
        require(part.begin == end && part.end > part.begin);
        end = part.end;
    }
    require(end == reading.text.size());
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    std::string text(size, '\0');
    for (std::size_t i = 0; i < size; ++i) text[i] = static_cast<char>(data[i]);
    const nettare::LineReading reading = nettare::readLine(text);
    require(reading.text == text);
    checkParts(reading);
    require(sameFields(nettare::readLine(nettare::writeLine(reading)), reading));
    for (const auto& question : questionsOf(reading))
        for (const auto& choice : question.choices)
            require(!sameFields(answered(reading, question, choice), reading));
    return 0;
}
