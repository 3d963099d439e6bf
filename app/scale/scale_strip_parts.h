#pragma once

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QWidget;

namespace nettare {

/// The parts of the scale strip that its layout places.
struct ScaleStripParts {
    QComboBox &scale, &tare;
    QLineEdit &gross, &pieces;
    QLabel &net, &piecesLabel;
    QComboBox& purpose;
    QLabel& note;
    QCheckBox& addTo;
    QPushButton& leftOver;
    QPushButton &useAsTare, &takeOff, &record;
};

/// Sets names, fonts and labels and lays the parts out.
void buildScaleStrip(QWidget& strip, const ScaleStripParts& parts);

}  // namespace nettare
