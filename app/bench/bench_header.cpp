#include "app/bench/bench_header.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>

#include "app/bench/bench_desk.h"
#include "app/bench/bench_type.h"
#include "app/bench/bench_words.h"
#include "app/bench/feedback.h"
#include "app/bench/two_line_button.h"
#include "app/theme/palette.h"
#include "app/theme/spacing.h"

namespace nettare {

BenchHeader::BenchHeader(BenchDesk& desk, Feedback& feedback, QWidget* parent)
    : QFrame{parent},
      desk_{desk},
      scale_{new TwoLineButton},
      sound_{benchButton(tr("Sound"), "benchSound")},
      print_{benchButton(tr("Print"), "printLedger")},
      save_{benchButton(tr("CSV"), "saveLedger")},
      back_{benchButton(tr("Sheet"), "benchBack")} {
    scale_->setObjectName(QStringLiteral("benchScale"));
    scale_->setProperty("quiet", true);
    sound_->setCheckable(true);
    sound_->setChecked(!feedback.isMuted());
    print_->setAccessibleName(tr("Print the ledger"));
    save_->setAccessibleName(tr("Save the ledger as CSV"));
    back_->setAccessibleName(tr("Back to the sheet"));
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(kSpace2Px, 2, kSpace4Px, 2);
    row->setSpacing(kSpace2Px);
    row->addWidget(scale_, 1);
    for (QPushButton* button : {sound_, print_, save_, back_}) row->addWidget(button);
    connect(scale_, &QPushButton::clicked, this, &BenchHeader::equipmentAsked);
    connect(print_, &QPushButton::clicked, this, &BenchHeader::printAsked);
    connect(save_, &QPushButton::clicked, this, &BenchHeader::saveAsked);
    connect(back_, &QPushButton::clicked, this, &BenchHeader::sheetWanted);
    connect(sound_, &QPushButton::toggled, &feedback,
            [&feedback](bool on) { feedback.setMuted(!on); });
    connect(&desk_, &BenchDesk::equipmentChanged, this, &BenchHeader::follow);
    follow();
}

void BenchHeader::follow() {
    const ScaleHeading words = scaleWords(desk_.scale());
    scale_->setTexts(words.scale, words.check);
}

void BenchHeader::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Shade shade = shadeOf(palette());
    painter.fillRect(rect(), colour(Role::Raised, shade));
    painter.fillRect(0, height() - 1, width(), 1, colour(Role::Hairline, shade));
}

}  // namespace nettare
