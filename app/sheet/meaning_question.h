#pragma once

#include <QFrame>
#include <QLabel>
#include <QPushButton>

#include <functional>
#include <vector>

namespace nettare {

/// A question below a field with an answer a button: what a word of two meanings stands for. The
/// first answer takes the focus, the arrow keys go through them, Esc leaves the field as it was.
class MeaningQuestion : public QFrame {
    Q_OBJECT

public:
    struct Answer {
        QString text;
        std::function<void()> take;
    };

    explicit MeaningQuestion(QWidget* parent = nullptr);

    void ask(const QString& question, std::vector<Answer> answers);
    void leave();

signals:
    /// Nothing was answered.
    void left();

protected:
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    QLabel* question_;
    QLayout* row_;
    std::vector<QPushButton*> buttons_;
};

}  // namespace nettare
