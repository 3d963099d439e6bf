#pragma once

#include <QPointer>
#include <QString>

#include <functional>
#include <optional>
#include <string>

#include "app/session/draft_session.h"

namespace nettare {

/// One thing of a draft that is edited as text: how it is shown, and the edit that a typed text
/// means. Whoever shows it hands over what was typed at each keystroke.
class DraftMember {
public:
    /// The text that the document has for it.
    using Shown = std::function<QString(const DraftSession&)>;
    /// The edit that the typed text means, or why it means none.
    using Typed = std::function<Result<Edit>(const Json&, const std::string&)>;

    /// Whether a failure of the draft, by its pointer, is about this thing.
    using Concerns = std::function<bool(const DraftSession&, const std::string& pointer)>;

    DraftMember(Shown shown, Typed typed, Concerns concerns = {})
        : shown_{std::move(shown)}, typed_{std::move(typed)}, concerns_{std::move(concerns)} {}

    void setDraft(DraftSession* draft);
    [[nodiscard]] DraftSession* draft() const { return draft_; }
    [[nodiscard]] QString shown() const { return draft_ == nullptr ? QString{} : shown_(*draft_); }

    /// Hands a typed text to the draft, in place of what was typed before in the same stay. False
    /// where it is refused; the draft is then as before.
    bool type(const QString& text);
    /// Undoes what was typed in this stay, if nothing else happened since.
    void takeBack();
    /// The field was left.
    void leave();
    /// Forgets a refused text.
    void forget() { refusal_.reset(); }
    /// Why the text that stands in the field is not in the draft.
    [[nodiscard]] const std::optional<Error>& refusal() const { return refusal_; }
    /// What is wrong with it: the refusal, or the failure of the draft that it is to blame for.
    [[nodiscard]] std::optional<Error> problem() const;
    /// The sentence about the problem; empty where there is none.
    [[nodiscard]] QString complaint() const;
    /// True while the draft changes because of what was typed here.
    [[nodiscard]] bool isTyping() const { return typing_; }

private:
    Shown shown_;
    Typed typed_;
    Concerns concerns_;
    QPointer<DraftSession> draft_;
    std::optional<Error> refusal_;
    bool typing_ = false;
    Json before_;   ///< the document before what was typed in this stay
    int step_ = 0;  ///< index of the undo stack after what was typed last; 0: nothing yet
};

/// For members whose failures stand at that pointer or below it.
[[nodiscard]] DraftMember::Concerns concernsPointer(std::string pointer);

}  // namespace nettare
