#include "app/gui/pantry/label_typing.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/theme/user_settings.h"
#include "app/widgets/plain_tip.h"

#include <QAbstractItemView>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTableView>
#include <QTextDocument>

namespace nettare {

namespace {

const QString kMarkup = QStringLiteral("<b>bold</b><img src=\"x\"> & <script>");
/// Hebrew letters: written from right to left, and no control character.
const QString kRightToLeft = QStringLiteral("יוגורט 100");
/// A control that turns what follows around.
const QString kOverride = QStringLiteral("Yog\u202Eturh");

/// Every label that is shown takes its text as it is.
void checkPlain(QWidget& root) {
    for (const QLabel* label : root.findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty()) continue;
        INFO(label->objectName().toStdString() << ": " << label->text().toStdString());
        const bool inert = label->textFormat() == Qt::PlainText ||
                           !label->text().contains(QStringLiteral("<b>bold"));
        CHECK(inert);
    }
}

/// What a tool tip paints of that text.
QString painted(const QString& tip) {
    if (!Qt::mightBeRichText(tip)) return tip;
    QTextDocument document;
    document.setHtml(tip);
    return document.toPlainText();
}

/// Every tool tip of a list or table shows its text as it is.
void checkTips(QWidget& root) {
    int hostile = 0;
    for (const QAbstractItemView* view : root.findChildren<QAbstractItemView*>()) {
        const QAbstractItemModel* const model = view->model();
        if (model == nullptr || !view->isVisible()) continue;
        for (int row = 0; row < model->rowCount(); ++row)
            for (int column = 0; column < model->columnCount(); ++column) {
                const QModelIndex cell = model->index(row, column);
                const QString tip = cell.data(Qt::ToolTipRole).toString();
                if (!tip.contains(QStringLiteral("bold"))) continue;
                ++hostile;
                CHECK(painted(tip).contains(QStringLiteral("<b>bold</b>")));
            }
    }
    CHECK(hostile > 0);
}

void typeHostile(LabelTyping& typing, const QString& name) {
    typing.writeYoghurt(QStringLiteral("6"));
    typing.put("labelName", name);
    typing.put("labelHousehold", QStringLiteral("1 ") + kMarkup);
    typing.put("labelServings", QStringLiteral("<b>bold</b> 4"));
    typing.put("labelNote", kMarkup);
    typing.enter();
}

}  // namespace

TEST_CASE("markup in a label is plain text in form, list, card and comparison") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typeHostile(typing, kMarkup);
    checkPlain(pantry.screen());
    typing.save();
    pantry.rest();
    REQUIRE(pantry.kitchen().ownFoods().all().size() == 1);
    CHECK(pantry.shown() == kMarkup);
    checkPlain(pantry.screen());
    pantry.search(QStringLiteral("bold"));
    REQUIRE_FALSE(pantry.listed().isEmpty());
    CHECK(pantry.listed().front().startsWith(kMarkup));
    checkTips(pantry.screen());
    click(child<QPushButton>(pantry.screen(), "adjustFood"));
    checkPlain(pantry.screen());
    CHECK(pantry.screen().width() == 1280);
    keepScreenPictures(pantry.demo().window(), QStringLiteral("label-hostile"));
    pressKey(child<QLineEdit>(pantry.screen(), "labelName"), Qt::Key_Escape);
    pantry.addOwn(QStringLiteral("bold plain food"), 100);
    pantry.search(QStringLiteral("bold"));
    auto& list = child<QListView>(pantry.screen(), "foods");
    list.setFocus();
    for (int row = 0; row < 2; ++row) {
        list.setCurrentIndex(list.model()->index(row, 0));
        pressKey(list, Qt::Key_Space);
    }
    click(child<QPushButton>(pantry.screen(), "compareFoods"));
    checkPlain(pantry.screen());
}

TEST_CASE("a tool tip shows typed markup letter by letter, and plain text as it is") {
    for (const QString& text :
         {kMarkup, QStringLiteral("<i>one</i>\ntwo & three"), QStringLiteral("3 < 4 & 5 > 2"),
          QStringLiteral("plain\ntext"), QStringLiteral("&lt;b&gt; %1 <br>")})
        CHECK(painted(plainTip(text)) == text);
    CHECK(plainTip(QStringLiteral("fennel, raw")) == QStringLiteral("fennel, raw"));
}

TEST_CASE("text from right to left in a label ends where it ends") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.writeYoghurt(QStringLiteral("6"));
    typing.put("labelName", kRightToLeft);
    typing.put("labelHousehold", QStringLiteral("1 ") + kRightToLeft);
    typing.save();
    pantry.rest();
    CHECK(pantry.shown() == kRightToLeft);
    const QString basis = child<QLabel>(pantry.screen(), "labelBasis").text();
    const auto begins = basis.indexOf(QChar{0x2068}), ends = basis.indexOf(QChar{0x2069});
    CHECK(begins >= 0);
    CHECK(ends > basis.indexOf(kRightToLeft));
    click(child<QPushButton>(pantry.screen(), "adjustFood"));
    CHECK(child<QLabel>(pantry.screen(), "labelTitle").text() ==
          QStringLiteral("Label: \u2068") + kRightToLeft + QChar{0x2069});
    keepScreenPictures(pantry.demo().window(), QStringLiteral("label-right-to-left"));
}

TEST_CASE("characters that turn text around, and texts without end, are refused in a label") {
    userSettings()->clear();
    PantryWindow pantry;
    LabelTyping typing{pantry};
    typing.openForm();
    typing.writeYoghurt(QStringLiteral("6"));
    auto& name = child<QLineEdit>(pantry.screen(), "labelName");
    auto& refusal = child<QLabel>(pantry.screen(), "labelRefusal");
    const auto refused = [&](QLineEdit& field, const QString& text) {
        const QString before = field.text();
        field.setText(text);
        typing.save();
        pantry.rest();
        CHECK(pantry.kitchen().ownFoods().all().empty());
        CHECK(refusal.isVisible());
        CHECK(field.hasFocus());
        CHECK(pantry.screen().width() == 1280);
        field.setText(before);
    };
    const QString endless{10'000, u'W'};
    refused(name, kOverride);
    refused(name, endless);
    refused(child<QLineEdit>(pantry.screen(), "labelHousehold"), QStringLiteral("1 ") + endless);
    refused(child<QLineEdit>(pantry.screen(), "labelHousehold"), QStringLiteral("1 ") + kOverride);
    refused(child<QLineEdit>(pantry.screen(), "labelNote"), endless);
    refused(child<QLineEdit>(pantry.screen(), "label_NA"), endless);
    refused(child<QLineEdit>(pantry.screen(), "label_NA"), kOverride);
    keepScreenPictures(pantry.demo().window(), QStringLiteral("label-refused"));
    typing.save();
    pantry.rest();
    CHECK(pantry.kitchen().ownFoods().all().size() == 1);
}

}  // namespace nettare
