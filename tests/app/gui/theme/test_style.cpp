#include "app/gui/support/gui.h"
#include "app/icons/icon_engine.h"
#include "app/theme/dress.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/basis_switch.h"
#include "app/widgets/beam_gauge.h"
#include "app/widgets/message_line.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSpinBox>
#include <QToolButton>

#include <initializer_list>

namespace nettare {

namespace {

QPushButton* button(const char* text, const char* property = nullptr) {
    auto* const made = new QPushButton{QString::fromUtf8(text)};
    if (property != nullptr) made->setProperty(property, true);
    return made;
}

BeamGauge* gauge(bool open) {
    BeamFigure figure;
    figure.value = 144;
    figure.low = 138;
    if (!open) figure.high = 150;
    figure.ceiling = 160;
    figure.ceilingText = QStringLiteral("160");
    figure.floor = 100;
    figure.floorText = QStringLiteral("100");
    auto* const made = new BeamGauge;
    made->setFigure(figure);
    return made;
}

void addMessages(QGridLayout& grid) {
    int row = 6;
    for (const MessageKind kind :
         {MessageKind::Info, MessageKind::Warning, MessageKind::Error, MessageKind::Done}) {
        auto* const line = new MessageLine;
        line->say(kind,
                  QStringLiteral("The kitchen could not be saved: the disk is full. The draft "
                                 "stays here; free some room and try again."),
                  kind == MessageKind::Error ? QStringLiteral("Try again") : QString{});
        grid.addWidget(line, row++, 0, 1, 5);
    }
}

/// Every control once.
struct Controls {
    Controls() {
        page.setProperty("pane", QStringLiteral("paper"));
        page.setProperty("rim", true);
        auto* const title = new QLabel{QStringLiteral("Charred prawn & fennel skewers")};
        title->setFont(typeFont(TypeSize::PaneTitle, Weight::Semibold));
        grid->addWidget(title, 0, 0, 1, 3);
        auto* const figure = new QLabel{QStringLiteral("144")};
        figure->setFont(figureFont(TypeSize::Reading, Weight::Bold));
        grid->addWidget(figure, 0, 3, 2, 2);
        addButtons();
        addFields();
        grid->addWidget(gauge(false), 4, 0, 1, 3);
        grid->addWidget(gauge(true), 4, 3, 1, 2);
        grid->addWidget(basis, 5, 0, 1, 5);
        basis->setTexts({QStringLiteral("Skewer"), QStringLiteral("Portion"),
                         QStringLiteral("100 g"), QStringLiteral("Batch")});
        basis->setIndex(1);
        addMessages(*grid);
        showReady(page, {900, 680});
        field->setFocus();
    }

    void addButtons() {
        auto* const off = button("Compare");
        off->setEnabled(false);
        auto* const quiet = button("Add a line…", "quiet");
        quiet->setIcon(iconOf(Sign::Add));
        auto* const tool = new QToolButton;
        tool->setIcon(iconOf(Sign::Undo));
        int column = 0;
        for (QWidget* each : std::initializer_list<QWidget*>{
                 button("At the stove"), button("Keep as revision 8…", "primary"), off, quiet,
                 tool})
            grid->addWidget(each, 2, column++);
    }

    void addFields() {
        field->setPlaceholderText(QStringLiteral("Find a recipe…"));
        auto* const basisBox = new QComboBox;
        basisBox->addItems({QStringLiteral("per piece"), QStringLiteral("per portion")});
        auto* const pieces = new QSpinBox;
        auto* const check = new QCheckBox{QStringLiteral("changes only")};
        check->setChecked(true);
        auto* const radio = new QRadioButton{QStringLiteral("follow the system")};
        radio->setChecked(true);
        int column = 0;
        for (QWidget* each : std::initializer_list<QWidget*>{field, basisBox, pieces, check, radio})
            grid->addWidget(each, 3, column++);
    }

    QFrame page;
    QGridLayout* grid = new QGridLayout{&page};
    QLineEdit* field = new QLineEdit;
    BasisSwitch* basis = new BasisSwitch;
};

}  // namespace

TEST_CASE("controls are 32 pixels high or more, and as high focused as not") {
    Controls controls;
    for (auto* const each : controls.page.findChildren<QPushButton*>()) {
        CHECK(each->height() >= kControlHeightPx);
        const QSize idle = each->sizeHint();
        each->setFocus();
        CHECK(each->sizeHint() == idle);
    }
    CHECK(controls.field->height() >= kControlHeightPx);
    CHECK(controls.page.findChild<QComboBox*>()->height() >= kControlHeightPx);
    CHECK(controls.page.findChild<QSpinBox*>()->height() >= kControlHeightPx);
}

TEST_CASE("what has the focus shows a cobalt ring, by day and night") {
    Controls controls;
    for (const Shade shade : {Shade::Light, Shade::Dark}) {
        dress(*qApp, shade);
        keepPicture(controls.page, shade == Shade::Light ? QStringLiteral("controls")
                                                         : QStringLiteral("controls-dark"));
        CHECK(pixelsOf(picture(*controls.field), colour(Role::Cobalt, shade)) >
              2 * controls.field->width());
    }
    controls.basis->setFocus();
    CHECK(pixelsOf(picture(*controls.field), colour(Role::Cobalt, Shade::Dark)) == 0);
    dress(*qApp, Shade::Light);
}

}  // namespace nettare
