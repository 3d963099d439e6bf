#include "app/panel/wrap_words.h"

namespace nettare {

namespace {

/// Bytes of the first `count` characters of UTF-8 text.
std::size_t bytesOfCharacters(std::string_view text, std::size_t count) {
    std::size_t at = 0;
    while (at < text.size()) {
        const bool begins = (static_cast<unsigned char>(text[at]) & 0xC0U) != 0x80U;
        if (begins && count-- == 0) break;
        ++at;
    }
    return at;
}

class LineFiller {
public:
    LineFiller(const PanelMeasure& measure, const PanelTextWidth& width)
        : measure_{measure}, width_{width} {}

    void add(PanelWord word) {
        while (!word.text.empty()) {
            if (append(word)) return;
            if (line_.empty()) breakOff(word);
            endLine();
        }
    }

    std::vector<PanelTextLine> lines() && {
        if (!line_.empty()) endLine();
        return std::move(lines_);
    }

private:
    [[nodiscard]] int startCpt() const {
        return measure_.leftCpt + (lines_.empty() ? 0 : measure_.hangCpt);
    }

    [[nodiscard]] PanelText run(std::string text, const PanelStyle& style, int leftCpt) const {
        const int rightCpt = leftCpt + width_(text, style);
        return {std::move(text), style, leftCpt, rightCpt, 0};
    }

    bool append(const PanelWord& word) {
        const bool joins = !line_.empty() && line_.back().style == word.style;
        PanelText next;
        if (joins)
            next = run(line_.back().text + " " + word.text, word.style, line_.back().leftCpt);
        else if (line_.empty())
            next = run(word.text, word.style, startCpt());
        else
            next = run(word.text, word.style, line_.back().rightCpt + width_(" ", word.style));
        if (next.rightCpt > measure_.rightCpt) return false;
        if (joins) line_.pop_back();
        line_.push_back(std::move(next));
        return true;
    }

    /// Puts as much of the word on the empty line as fits, one character at least.
    void breakOff(PanelWord& word) {
        std::size_t bytes = bytesOfCharacters(word.text, 1);
        for (std::size_t count = 2; bytes < word.text.size(); ++count) {
            const std::size_t longer = bytesOfCharacters(word.text, count);
            const int wide = width_(word.text.substr(0, longer), word.style);
            if (startCpt() + wide > measure_.rightCpt) break;
            bytes = longer;
        }
        line_.push_back(run(word.text.substr(0, bytes), word.style, startCpt()));
        word.text.erase(0, bytes);
    }

    void endLine() {
        lines_.push_back(std::move(line_));
        line_.clear();
    }

    PanelMeasure measure_;
    const PanelTextWidth& width_;
    PanelTextLine line_;
    std::vector<PanelTextLine> lines_;
};

}  // namespace

std::vector<PanelWord> panelWords(std::string_view text, const PanelStyle& style) {
    std::vector<PanelWord> words;
    std::size_t start = 0;
    while ((start = text.find_first_not_of(' ', start)) != std::string_view::npos) {
        const std::size_t end = std::min(text.find(' ', start), text.size());
        words.push_back({std::string{text.substr(start, end - start)}, style});
        start = end;
    }
    return words;
}

std::vector<PanelTextLine> wrapWords(const std::vector<PanelWord>& words,
                                     const PanelMeasure& measure, const PanelTextWidth& width) {
    LineFiller filler{measure, width};
    for (const PanelWord& word : words) filler.add(word);
    return std::move(filler).lines();
}

}  // namespace nettare
