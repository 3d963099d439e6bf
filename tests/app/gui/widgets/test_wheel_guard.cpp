#include "app/widgets/wheel_guard.h"

#include "app/gui/support/gui.h"

#include <QComboBox>
#include <QScrollArea>
#include <QScrollBar>
#include <QSlider>
#include <QSpinBox>
#include <QTabBar>
#include <QVBoxLayout>

#include <initializer_list>

namespace nettare {

namespace {

/// A form that is higher than its window, with a field of each kind that turns by the wheel.
struct LongForm {
    LongForm() {
        auto* const page = new QWidget;
        auto* const column = new QVBoxLayout{page};
        pieces->setRange(0, 100);
        pieces->setValue(10);
        basis->addItems({QStringLiteral("piece"), QStringLiteral("portion")});
        food->setEditable(true);
        food->addItems({QStringLiteral("leek"), QStringLiteral("mussel")});
        share->setOrientation(Qt::Horizontal);
        share->setValue(50);
        tabs->addTab(QStringLiteral("figures"));
        tabs->addTab(QStringLiteral("panel"));
        for (QWidget* field : std::initializer_list<QWidget*>{pieces, basis, food, share, tabs})
            column->addWidget(field);
        column->addSpacing(2000);
        area.setWidget(page);
        area.setWidgetResizable(true);
    }

    [[nodiscard]] int scrolled() const { return area.verticalScrollBar()->value(); }

    QScrollArea area;
    QSpinBox* pieces = new QSpinBox;
    QComboBox* basis = new QComboBox;
    QComboBox* food = new QComboBox;
    QSlider* share = new QSlider;
    QTabBar* tabs = new QTabBar;
};

}  // namespace

TEST_CASE("the wheel scrolls the form and edits no field that it crosses") {
    const WheelGuard guard;
    LongForm form;
    showReady(form.area, {300, 200});
    form.area.setFocus();
    for (QWidget* field : std::initializer_list<QWidget*>{form.pieces, form.basis, form.food,
                                                          form.share, form.tabs}) {
        form.area.verticalScrollBar()->setValue(0);
        turnWheel(*field);
        CHECK(form.scrolled() > 0);
        CHECK_FALSE(field->hasFocus());
    }
    CHECK(form.pieces->value() == 10);
    CHECK(form.basis->currentIndex() == 0);
    CHECK(form.food->currentIndex() == 0);
    CHECK(form.share->value() == 50);
    CHECK(form.tabs->currentIndex() == 0);
}

TEST_CASE("the wheel edits the field that has the focus") {
    const WheelGuard guard;
    LongForm form;
    showReady(form.area, {300, 200});
    form.pieces->setFocus();
    turnWheel(*form.pieces);
    CHECK(form.pieces->value() == 9);
    form.food->setFocus();
    turnWheel(*form.food);
    CHECK(form.food->currentIndex() == 1);
    CHECK(form.scrolled() == 0);
}

TEST_CASE("without the guard the wheel would edit, so the tests above bite") {
    LongForm form;
    showReady(form.area, {300, 200});
    form.area.setFocus();
    turnWheel(*form.pieces);
    CHECK(form.pieces->value() == 9);
}

}  // namespace nettare
