#include "app/compare/method_difference.h"

#include "app/gui/support/gui.h"

#include <QLabel>

namespace nettare {

namespace {

std::vector<ComparedStep> threeSteps() {
    const auto text = [](const char* words) { return QString::fromUtf8(words); };
    return {{QStringLiteral("1."),
             {{WordsOn::Both, text("Stir the oil, garlic")},
              {WordsOn::LeftOnly, text(" and paprika")},
              {WordsOn::RightOnly, text(", lemon juice & paprika")},
              {WordsOn::Both, text(" in a bowl; tare it first.")}}},
            {QStringLiteral("2."), {{WordsOn::Both, text("Thread ten skewers.")}}},
            {QStringLiteral("3."),
             {{WordsOn::Both, text("Grill at ")},
              {WordsOn::LeftOnly, text("220")},
              {WordsOn::RightOnly, text("230")},
              {WordsOn::Both, text(" °C for 6 min, turning once.")}}}};
}

int stepsIn(const MethodDifference& method) {
    int steps = 0;
    for (const QLabel* label : method.findChildren<QLabel*>())
        steps += label->textFormat() == Qt::RichText ? 1 : 0;
    return steps;
}

}  // namespace

TEST_CASE("a step says by word what was removed and what was added") {
    CHECK(threeSteps()[2].spoken() ==
          QString::fromUtf8(
              "Step 3.: Grill at [removed: 220] [added: 230] °C for 6 min, turning once."));
}

TEST_CASE("removed words are struck through and added ones underlined") {
    MethodDifference method;
    method.show(threeSteps());
    showReady(method, {900, 160});
    keepPicture(method, QStringLiteral("method-difference"));
    const QString text = method.findChildren<QLabel*>().at(2)->text();
    CHECK(text.contains(QStringLiteral("line-through")));
    CHECK(text.contains(QStringLiteral("underline")));
    CHECK(text.contains(QStringLiteral("lemon juice &amp; paprika")));
    CHECK(spokenOf(method).description.contains(QStringLiteral("[removed: and paprika]")));
}

TEST_CASE("only the changed steps of a method are shown where only changes are asked for") {
    MethodDifference method;
    method.show(threeSteps());
    CHECK(stepsIn(method) == 3);
    method.setChangesOnly(true);
    CHECK(stepsIn(method) == 2);
}

TEST_CASE("an unchanged method says so") {
    MethodDifference method;
    method.show({{QStringLiteral("1."), {{WordsOn::Both, QStringLiteral("Stir.")}}}});
    method.setChangesOnly(true);
    CHECK(stepsIn(method) == 0);
    CHECK(spokenOf(method).description == QStringLiteral("The method is the same word for word."));
}

}  // namespace nettare
