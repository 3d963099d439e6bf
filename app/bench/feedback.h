#pragma once

#include <QFrame>
#include <QTimer>

#include <functional>

class QLabel;

namespace nettare {

enum class FeedbackKind {
    Hint,       ///< what to do next
    Recorded,   ///< filled square, high tone
    TakenBack,  ///< crossed-out square, high tone
    Caution,    ///< triangle, silent
    Refused,    ///< cross, two tones
};

/// What the bench answers: in words, by a shape and a frame, and by sound. None of it needs a
/// colour or a movement, and screen readers are told.
class Feedback : public QFrame {
    Q_OBJECT

public:
    explicit Feedback(QWidget* parent = nullptr);

    void say(FeedbackKind kind, const QString& text);
    [[nodiscard]] FeedbackKind kind() const { return kind_; }
    [[nodiscard]] QString text() const;
    /// Kept in the user's settings.
    [[nodiscard]] bool isMuted() const { return muted_; }
    void setMuted(bool muted);
    /// In place of the desktop's tone, in tests.
    void setTone(std::function<void()> tone) { tone_ = std::move(tone); }
    [[nodiscard]] bool isFlashing() const { return flash_.isActive(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void sound(FeedbackKind kind);

    FeedbackKind kind_ = FeedbackKind::Hint;
    QLabel* text_;
    QTimer flash_;
    std::function<void()> tone_;
    bool muted_ = false;
};

}  // namespace nettare
