#pragma once

#include <QFrame>

class QLabel;
class QLineEdit;
class QPushButton;

namespace nettare {

/// Asks about a reading that lies far out: it is as weighed, or it is left out for a cause, which
/// must be told. Hidden while there is nothing to ask.
class OutlierQuestion : public QFrame {
    Q_OBJECT

public:
    explicit OutlierQuestion(QWidget* parent = nullptr);

    /// Empty: nothing to ask. The same question again changes nothing.
    void ask(const QString& question);
    [[nodiscard]] QString text() const;

signals:
    void leftOut(const QString& cause);
    void asWeighed();

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void showCauses(bool shown);
    void tellOwnCause();

    QLabel *question_, *refusal_;
    QPushButton *leaveOut_, *asWeighed_;
    QWidget* causes_;
    QLineEdit* own_;
};

}  // namespace nettare
