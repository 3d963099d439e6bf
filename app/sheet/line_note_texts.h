#pragma once

#include <QString>

#include <optional>
#include <string>
#include <vector>

#include "app/session/draft_session.h"
#include "app/widgets/mark.h"

namespace nettare {

/// Another way to a line's grams, to be taken with a key or a click.
struct OtherWay {
    Way way = Way::Assumed;
    Mark mark = Mark::None;
    QString text;      ///< "table 28.4 g"
    QString sentence;  ///< how it is found
};

/// What is odd about a line, and the way that would be better.
struct FindingText {
    QString sentence;
    std::optional<Way> better;
};

/// What the sheet says of one line below the table.
struct LineNoteTexts {
    Mark mark = Mark::None;
    QString word;      ///< of the way: "series"
    QString sentence;  ///< how its grams were found; empty for none
    std::vector<OtherWay> others;
    std::vector<FindingText> findings;
};

/// Of the line with that id; empty where the draft has no figures of it.
[[nodiscard]] LineNoteTexts lineNoteTexts(const DraftSession& draft, const std::string& line);

/// The findings of all lines, by their order in the draft, as the margin tells them.
[[nodiscard]] std::vector<QString> marginTexts(const DraftSession& draft);

/// The way that follows the one that counts, in the order of the note; nothing where it is the only
/// one. `back` goes the other way round.
[[nodiscard]] std::optional<Way> wayBeside(const DraftSession& draft, const std::string& line,
                                           bool back);

}  // namespace nettare
