#include "app/widgets/basis_switch.h"

#include "app/gui/support/gui.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>

#include <initializer_list>

namespace nettare {

namespace {

const QStringList& bases() {
    static const QStringList texts{QStringLiteral("Skewer"), QStringLiteral("Portion"),
                                   QStringLiteral("100 g"), QStringLiteral("Batch")};
    return texts;
}

/// The switch between two fields.
struct SwitchInForm {
    SwitchInForm() {
        auto* const row = new QHBoxLayout{&page};
        for (QWidget* each : std::initializer_list<QWidget*>{before, basis, after})
            row->addWidget(each);
        basis->setTexts(bases());
        showReady(page, {700, 60});
    }
    QWidget page;
    QLineEdit* before = new QLineEdit;
    BasisSwitch* basis = new BasisSwitch;
    QLineEdit* after = new QLineEdit;
};

QPushButton& segment(BasisSwitch& basis, int index) {
    return *basis.findChildren<QPushButton*>().at(index);
}

}  // namespace

TEST_CASE("the basis of the figures is switched by the arrow keys") {
    SwitchInForm form;
    QSignalSpy chosen{form.basis, &BasisSwitch::chosen};
    form.before->setFocus();
    pressKey(*form.before, Qt::Key_Tab);
    CHECK(segment(*form.basis, 0).hasFocus());
    pressKey(*QApplication::focusWidget(), Qt::Key_Right);
    pressKey(*QApplication::focusWidget(), Qt::Key_Right);
    CHECK(form.basis->index() == 2);
    CHECK(segment(*form.basis, 2).hasFocus());
    pressKey(*QApplication::focusWidget(), Qt::Key_Left);
    CHECK(form.basis->index() == 1);
    REQUIRE(chosen.count() == 3);
    CHECK(chosen.last().first().toInt() == 1);
    pressKey(*QApplication::focusWidget(), Qt::Key_Left);
    pressKey(*QApplication::focusWidget(), Qt::Key_Left);
    CHECK(form.basis->index() == 0);
    CHECK(chosen.count() == 4);
}

TEST_CASE("the switch is one stop on the way of the Tab key, at what it holds") {
    SwitchInForm form;
    form.basis->setIndex(2);
    form.before->setFocus();
    pressKey(*form.before, Qt::Key_Tab);
    CHECK(segment(*form.basis, 2).hasFocus());
    pressKey(*QApplication::focusWidget(), Qt::Key_Tab);
    CHECK(form.after->hasFocus());
}

TEST_CASE("a click chooses, and setting from outside says nothing") {
    SwitchInForm form;
    QSignalSpy chosen{form.basis, &BasisSwitch::chosen};
    click(segment(*form.basis, 3));
    CHECK(form.basis->index() == 3);
    REQUIRE(chosen.count() == 1);
    CHECK(chosen.first().first().toInt() == 3);
    form.basis->setIndex(1);
    CHECK(form.basis->index() == 1);
    CHECK(segment(*form.basis, 1).isChecked());
    CHECK_FALSE(segment(*form.basis, 3).isChecked());
    CHECK(chosen.count() == 1);
}

TEST_CASE("new texts of the switch keep the place where they can") {
    SwitchInForm form;
    form.basis->setIndex(3);
    form.basis->setTexts({QStringLiteral("Patty"), QStringLiteral("Portion")});
    CHECK(form.basis->findChildren<QPushButton*>().size() == 2);
    CHECK(form.basis->index() == 1);
    form.basis->setTexts(bases());
    CHECK(form.basis->index() == 1);
    CHECK(segment(*form.basis, 0).text() == QStringLiteral("Skewer"));
    CHECK(spokenOf(segment(*form.basis, 1)).name == QStringLiteral("Portion"));
}

}  // namespace nettare
