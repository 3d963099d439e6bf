#pragma once

#include "app/theme/palette.h"

#include <QFrame>

#include <cstdint>

class QLabel;
class QPushButton;

namespace nettare {

enum class MessageKind : std::uint8_t { Info, Warning, Error, Done };

/// A message in its place, never in the way: mark, text that wraps, and one action at most. Hidden
/// while it has nothing to say.
class MessageLine : public QFrame {
    Q_OBJECT

public:
    explicit MessageLine(QWidget* parent = nullptr);

    /// What is wrong, where, what to do. `action` labels the button; none without it.
    void say(MessageKind kind, const QString& text, const QString& action = {});
    void clear();

    [[nodiscard]] MessageKind kind() const { return kind_; }
    [[nodiscard]] QString text() const;

signals:
    void actionTriggered();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    MessageKind kind_ = MessageKind::Info;
    QLabel* text_;
    QPushButton* action_;
};

}  // namespace nettare
