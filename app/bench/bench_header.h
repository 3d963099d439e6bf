#pragma once

#include <QFrame>

class QPushButton;

namespace nettare {

class BenchDesk;
class Feedback;
class TwoLineButton;

/// Head of the bench: the scale and its last check, and what leads elsewhere.
class BenchHeader : public QFrame {
    Q_OBJECT

public:
    BenchHeader(BenchDesk& desk, Feedback& feedback, QWidget* parent = nullptr);

signals:
    void equipmentAsked();
    void printAsked();
    void saveAsked();
    void sheetWanted();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void follow();

    BenchDesk& desk_;
    TwoLineButton* scale_;
    QPushButton *sound_, *print_, *save_, *back_;
};

}  // namespace nettare
