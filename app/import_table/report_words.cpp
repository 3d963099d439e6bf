#include "app/import_table/report_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace nettare {

namespace {

struct ReportWords {
    Q_DECLARE_TR_FUNCTIONS(ImportReport)
};

QString count(std::size_t number) {
    return QLocale{}.toString(static_cast<qulonglong>(number));
}

/// "262 (679), 263 (12)": numbers of components with how many values each has.
QString numbersText(const std::map<std::string, std::size_t>& numbers) {
    constexpr int kMost = 8;
    QStringList texts;
    for (const auto& [number, values] : numbers) {
        if (texts.size() == kMost) break;
        texts += QStringLiteral("%1 (%2)").arg(QString::fromStdString(number), count(values));
    }
    QString text = texts.join(QStringLiteral(", "));
    if (static_cast<int>(numbers.size()) > kMost) text += QStringLiteral(" …");
    return text;
}

QString outcome(const ImportReport& report, bool dryRun) {
    if (dryRun) return ReportWords::tr("Nothing was written; this is what would come in.");
    if (report.unchanged)
        return ReportWords::tr("The table was here already, with the same content.");
    return ReportWords::tr("The table is in the pantry.");
}

}  // namespace

QString reportText(const ImportReport& report, bool dryRun) {
    QStringList lines;
    lines += ReportWords::tr("%1, release %2. %3")
                 .arg(QString::fromStdString(report.table), QString::fromStdString(report.release),
                      outcome(report, dryRun));
    lines += ReportWords::tr("%1 foods, %2 values, %3 kitchen measures")
                 .arg(count(report.foods), count(report.values), count(report.measures));
    if (!report.unnamedComponents.empty())
        lines += ReportWords::tr("Kept under the publisher's own numbers: %1")
                     .arg(numbersText(report.unnamedComponents));
    if (!report.unknownComponents.empty())
        lines += ReportWords::tr("Left out, since the publisher's list does not have them: %1")
                     .arg(numbersText(report.unknownComponents));
    lines += report.rejected == 0
                 ? ReportWords::tr("Nothing was left out.")
                 : ReportWords::tr("Rows and values left out: %1").arg(count(report.rejected));
    return lines.join(QLatin1Char{'\n'});
}

QString stepText(const ImportProgress& progress) {
    if (progress.file.empty()) return ReportWords::tr("writing the table");
    return ReportWords::tr("reading %1")
        .arg(QString::fromUtf8(progress.file.data(), static_cast<qsizetype>(progress.file.size())));
}

}  // namespace nettare
