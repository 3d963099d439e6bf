#pragma once

class QLabel;
class QLineEdit;
class QPushButton;
class QWidget;

namespace nettare {

class Feedback;
class TareRow;
class TwoLineButton;
class WeighDisplay;

/// The parts of the bench's left side that its layout places.
struct WeighPaneParts {
    TareRow& tares;
    WeighDisplay& display;
    QLineEdit& gross;
    QLabel& sum;
    TwoLineButton &subject, &pairWith;
    QWidget& piecesBox;
    QLineEdit& pieces;
    QPushButton &addTo, &takeBack, &record, &next;
    Feedback& feedback;
};

/// Sets names and fonts and lays the parts out.
void buildWeighPane(QWidget& pane, const WeighPaneParts& parts);

}  // namespace nettare
