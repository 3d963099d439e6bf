#include "app/scale/scale_strip_parts.h"

#include <QCheckBox>
#include <QComboBox>
#include <QCoreApplication>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/theme/spacing.h"
#include "app/theme/type.h"

namespace nettare {

namespace {

constexpr int kGrossWidth = 132;
constexpr int kNetWidth = 150;
constexpr int kBoxWidth = 210;
constexpr int kWidestPurpose = 460;

struct StripWords {
    Q_DECLARE_TR_FUNCTIONS(ScaleStrip)
};

/// A caption above what it names.
QLabel* caption(const QString& text, QWidget* buddy) {
    auto* label = new QLabel{text};
    QFont font = typeFont(TypeSize::Caption);
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.6);
    label->setFont(font);
    label->setProperty("tone", QStringLiteral("secondary"));
    label->setBuddy(buddy);
    return label;
}

void nameParts(const ScaleStripParts& parts) {
    parts.scale.setObjectName(QStringLiteral("scale"));
    parts.tare.setObjectName(QStringLiteral("tare"));
    parts.gross.setObjectName(QStringLiteral("gross"));
    parts.pieces.setObjectName(QStringLiteral("pieces"));
    parts.purpose.setObjectName(QStringLiteral("purpose"));
    parts.net.setObjectName(QStringLiteral("net"));
    parts.note.setObjectName(QStringLiteral("note"));
    parts.record.setObjectName(QStringLiteral("record"));
    parts.useAsTare.setObjectName(QStringLiteral("useAsTare"));
    parts.addTo.setObjectName(QStringLiteral("addTo"));
    parts.takeOff.setObjectName(QStringLiteral("takeOff"));
    parts.scale.setAccessibleName(StripWords::tr("Scale"));
    parts.tare.setAccessibleName(StripWords::tr("Tare"));
    parts.gross.setAccessibleName(StripWords::tr("Gross, as the scale shows it"));
    parts.pieces.setAccessibleName(StripWords::tr("Pieces weighed together"));
    parts.purpose.setAccessibleName(StripWords::tr("What the reading is for"));
    for (QComboBox* box : {&parts.scale, &parts.tare, &parts.purpose}) {
        box->setFocusPolicy(Qt::StrongFocus);
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumWidth(kBoxWidth);
    }
}

void sizeParts(const ScaleStripParts& parts) {
    parts.gross.setFont(figureFont(TypeSize::PaneTitle));
    parts.gross.setFixedWidth(kGrossWidth);
    parts.gross.setMaxLength(20);
    parts.pieces.setFixedWidth(56);
    parts.net.setFont(figureFont(TypeSize::Unit, Weight::Bold));
    parts.net.setMinimumWidth(kNetWidth);
    parts.note.setWordWrap(true);
    parts.note.setTextFormat(Qt::PlainText);
    parts.record.setProperty("primary", true);
    parts.record.setStyleSheet(
        QStringLiteral("QPushButton { min-height: 46px; padding: 0 20px; }"));
    parts.useAsTare.setProperty("quiet", true);
    for (QPushButton* button : {&parts.useAsTare, &parts.takeOff, &parts.record})
        button->setAutoDefault(false);
}

QLayout* purposeRow(const ScaleStripParts& parts) {
    auto* row = new QHBoxLayout;
    row->setSpacing(kSpace2Px);
    parts.purpose.setMaximumWidth(kWidestPurpose);
    row->addWidget(&parts.purpose, 1);
    row->addWidget(&parts.leftOver);
    row->addWidget(&parts.piecesLabel);
    row->addWidget(&parts.pieces);
    row->addStretch(0);
    return row;
}

/// What is already there stands above the purpose that it is of.
QLayout* purposeHead(const ScaleStripParts& parts) {
    auto* row = new QHBoxLayout;
    row->setSpacing(kSpace4Px);
    row->addWidget(caption(StripWords::tr("FOR"), &parts.purpose));
    row->addWidget(&parts.addTo);
    row->addStretch(1);
    return row;
}

QLayout* noteRow(const ScaleStripParts& parts) {
    auto* row = new QHBoxLayout;
    row->setSpacing(kSpace2Px);
    row->addWidget(&parts.note, 1);
    row->addWidget(&parts.takeOff);
    return row;
}

}  // namespace

void buildScaleStrip(QWidget& strip, const ScaleStripParts& parts) {
    nameParts(parts);
    sizeParts(parts);
    parts.piecesLabel.setText(StripWords::tr("pieces"));
    parts.piecesLabel.setBuddy(&parts.pieces);
    auto* grid = new QGridLayout{&strip};
    grid->setContentsMargins(kSpace6Px, kSpace2Px, kSpace6Px, kSpace3Px);
    grid->setHorizontalSpacing(kSpace4Px);
    grid->setVerticalSpacing(kSpace1Px);
    grid->addWidget(caption(StripWords::tr("ON THE SCALE"), &parts.scale), 0, 0);
    grid->addWidget(&parts.scale, 1, 0);
    grid->addWidget(&parts.tare, 2, 0);
    grid->addWidget(caption(StripWords::tr("GROSS"), &parts.gross), 0, 1);
    grid->addWidget(&parts.gross, 1, 1);
    grid->addWidget(&parts.useAsTare, 2, 1);
    grid->addWidget(caption(StripWords::tr("NET"), nullptr), 0, 2);
    grid->addWidget(&parts.net, 1, 2, 2, 1, Qt::AlignLeft | Qt::AlignVCenter);
    grid->addLayout(purposeHead(parts), 0, 3);
    grid->addLayout(purposeRow(parts), 1, 3);
    grid->addLayout(noteRow(parts), 2, 3);
    grid->addWidget(&parts.record, 1, 4, 2, 1, Qt::AlignVCenter);
    grid->setColumnStretch(3, 1);
}

}  // namespace nettare
