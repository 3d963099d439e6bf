#include "app/bench/weigh_pane_parts.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/bench/bench_type.h"
#include "app/bench/feedback.h"
#include "app/bench/tare_row.h"
#include "app/bench/two_line_button.h"
#include "app/bench/weigh_display.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

constexpr int kGrossWidth_px = 190;
constexpr int kPiecesWidth_px = 84;

struct PaneWords {
    Q_DECLARE_TR_FUNCTIONS(WeighPane)
};

void dressNumber(QLineEdit& gross) {
    gross.setObjectName(QStringLiteral("benchNumber"));
    gross.setAccessibleName(PaneWords::tr("What the scale shows"));
    gross.setFont(figureFont(TypeSize::Unit));
    gross.setProperty("touch", true);
    gross.setMaxLength(20);
    gross.setFixedWidth(kGrossWidth_px);
    gross.setContextMenuPolicy(Qt::NoContextMenu);
}

void stepPieces(QLineEdit& pieces, int by) {
    const int now = pieces.text().toInt() + by;
    if (now >= 1) pieces.setText(QString::number(now));
}

void buildPieces(const WeighPaneParts& parts) {
    QLineEdit& pieces = parts.pieces;
    pieces.setObjectName(QStringLiteral("benchPieces"));
    pieces.setAccessibleName(PaneWords::tr("Pieces weighed together"));
    pieces.setFont(benchFigures());
    pieces.setProperty("touch", true);
    pieces.setMaxLength(4);
    pieces.setFixedWidth(kPiecesWidth_px);
    pieces.setAlignment(Qt::AlignCenter);
    QPushButton* fewer = benchButton(QStringLiteral("−"), "fewerPieces");
    QPushButton* more = benchButton(QStringLiteral("+"), "morePieces");
    fewer->setAccessibleName(PaneWords::tr("One piece fewer"));
    more->setAccessibleName(PaneWords::tr("One piece more"));
    QObject::connect(fewer, &QPushButton::clicked, &pieces, [&pieces] { stepPieces(pieces, -1); });
    QObject::connect(more, &QPushButton::clicked, &pieces, [&pieces] { stepPieces(pieces, 1); });
    auto* row = new QHBoxLayout{&parts.piecesBox};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(kSpace1Px);
    for (QWidget* part : {static_cast<QWidget*>(fewer), static_cast<QWidget*>(&pieces),
                          static_cast<QWidget*>(more)})
        row->addWidget(part);
}

QHBoxLayout* rowOf(std::initializer_list<QWidget*> widgets, QWidget* widest) {
    auto* row = new QHBoxLayout;
    row->setSpacing(kSpace2Px);
    for (QWidget* widget : widgets) row->addWidget(widget, widget == widest ? 1 : 0);
    return row;
}

}  // namespace

void buildWeighPane(QWidget& pane, const WeighPaneParts& parts) {
    dressNumber(parts.gross);
    buildPieces(parts);
    parts.sum.setObjectName(QStringLiteral("benchSum"));
    parts.sum.setFont(benchFigures());
    parts.sum.setProperty("tone", QStringLiteral("secondary"));
    parts.sum.setTextFormat(Qt::PlainText);
    parts.subject.setObjectName(QStringLiteral("benchSubject"));
    parts.pairWith.setObjectName(QStringLiteral("pairWith"));
    parts.pairWith.setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    parts.addTo.setCheckable(true);
    parts.record.setProperty("primary", true);
    parts.record.setFont(benchFont(Weight::Semibold));

    auto* column = new QVBoxLayout{&pane};
    column->setContentsMargins(kSpace4Px, kSpace1Px, kSpace4Px, kSpace1Px);
    column->setSpacing(kSpace1Px);
    column->addWidget(&parts.tares);
    column->addWidget(&parts.display);
    column->addLayout(rowOf({&parts.gross, &parts.sum}, &parts.sum));
    column->addLayout(
        rowOf({&parts.subject, &parts.addTo, &parts.pairWith, &parts.piecesBox}, &parts.subject));
    column->addLayout(rowOf({&parts.takeBack, &parts.record, &parts.next}, &parts.record));
    column->addWidget(&parts.feedback);
    column->addStretch(1);
}

}  // namespace nettare
