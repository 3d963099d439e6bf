#pragma once

#include <QFrame>

class QHBoxLayout;
class QLabel;

namespace nettare {

/// Head of a screen: its name, what it shows, and its actions at the right.
class ScreenHeader : public QFrame {
    Q_OBJECT

public:
    explicit ScreenHeader(const QString& name, QWidget* parent = nullptr);

    void setName(const QString& name);
    /// The recipe that the screen shows; it wraps where it is long.
    void setSubject(const QString& subject);
    [[nodiscard]] QString subject() const;
    /// At the right, in the order of calls.
    void addAction(QWidget* button);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QHBoxLayout* row_;
    QLabel *name_, *subject_;
};

}  // namespace nettare
