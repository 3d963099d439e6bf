#include "app/bench/print_ledger.h"

#include <QCoreApplication>
#include <QFile>
#include <QPainter>
#include <QPrinter>
#include <QSaveFile>

#include <cstdio>

#include "app/bench/chain_words.h"
#include "app/bench/ledger_sheet.h"
#include "app/paper/paper_pages.h"
#include "app/words/error_sentence.h"
#include "core/ledger/chain_check.h"
#include "core/publish/ledger_csv.h"
#include "db/is_database.h"

namespace nettare {

namespace {

struct PrintTexts {
    Q_DECLARE_TR_FUNCTIONS(LedgerSheet)
};

constexpr long long kToldEvery = 64;  // entries between two steps of the progress
constexpr double kSurveyShare = 0.15;

/// Where the ledger ended when it was surveyed; what is recorded meanwhile is not in the output.
struct SurveyedLedger {
    long long entries = 0;
    std::string head;
    long long broken = 0;  ///< the first entry that is not as recorded; 0: none, or not looked for
};

/// Goes over a ledger once; nothing where it was cancelled.
template <class Survey>
Result<std::optional<SurveyedLedger>> surveyed(const LedgerSource& ledger, const Progress& progress,
                                               Survey survey) {
    SurveyedLedger found;
    const auto read = ledger([&](const ChainedEntry& chained) {
        survey(chained);
        ++found.entries;
        found.head = chained.hash;
        return !progress.cancelled();
    });
    if (!read) return fail(read.error());
    if (progress.cancelled()) return std::optional<SurveyedLedger>{};
    return std::optional{std::move(found)};
}

void tell(const Progress& progress, long long done, long long all, const QString& step) {
    if (done % kToldEvery != 0 || all == 0) return;
    const double share = static_cast<double>(done) / static_cast<double>(all);
    progress.step(step, kSurveyShare + (1 - kSurveyShare) * share);
}

LedgerWritten refused(const Error& error) {
    return {{}, QString::fromStdString(errorSentence(error))};
}

/// The refusal to take the place of a database; nothing where the file is none.
std::optional<LedgerWritten> keptDatabase(const QString& path) {
    if (!isDatabase(path.toStdString())) return {};
    return refused(Error{ErrorCode::FileNotWritable, path.toStdString()}.with(
        "reason", "it is a kitchen or another database"));
}

/// The ledger on its pages.
class LedgerPrint {
public:
    LedgerPrint(QPrinter& printer, QString kitchenName, QString printedAt)
        : pages_{printer}, kitchen_{std::move(kitchenName)}, at_{std::move(printedAt)} {}

    /// The chain was checked while it was surveyed.
    [[nodiscard]] bool begin(const SurveyedLedger& ledger) {
        ledger_ = ledger;
        if (!pages_.begin([this](QPainter& painter, int page) { paintFoot(painter, page); }, 2))
            return false;
        const double width = pages_.text().width();
        const QString count = PrintTexts::tr("Entries: %1, oldest first").arg(ledger.entries);
        return pages_.add(textBlock(PrintTexts::tr("Ledger of %1").arg(kitchen_),
                                    boldPaperFont(kPaperTitleCpt), kPaperInk, width,
                                    kPaperAirCpt)) &&
               pages_.add(textBlock(
                   PrintTexts::tr("%1 · printed %2 · nothing in a ledger is changed or removed; "
                                  "what no longer counts is struck through, with the reason. Net "
                                  "is gross less tare, or what a jar lost.")
                       .arg(count, at_),
                   paperFont(kPaperSmallCpt), kPaperInk2, width, kPaperAirCpt)) &&
               pages_.add(textBlock(printedChain({ledger.entries, ledger.broken, ledger.head}),
                                    boldPaperFont(kPaperSmallCpt), kPaperInk, width,
                                    kPaperAirCpt)) &&
               pages_.add(ledgerHeader(width));
    }

    [[nodiscard]] bool add(const LedgerLine& line) {
        const double width = pages_.text().width();
        const PaperBlock block = ledgerBlock(line, width);
        if (!pages_.fits(block.heightCpt))
            if (!pages_.newPage() || !pages_.add(ledgerHeader(width))) return false;
        if (firstOfPage_.isEmpty() || page_ != pages_.page()) firstOfPage_ = line.number;
        page_ = pages_.page();
        lastOfPage_ = line.number;
        return pages_.add(block);
    }

    [[nodiscard]] bool end() { return pages_.end(); }
    [[nodiscard]] int pages() const { return pages_.page(); }

private:
    void paintFoot(QPainter& painter, int page) {
        const QFont font = paperFont(kPaperSmallCpt);
        painter.setFont(font);
        painter.setPen(kPaperInk2);
        const auto right = [&](const QString& text, int line) {
            painter.drawText(
                QPointF{pages_.text().width() - wideOnPaper(font, text), pages_.footBase(line)},
                text);
        };
        painter.drawText(QPointF{0, pages_.footBase(0)},
                         lastOfPage_.isEmpty() ? PrintTexts::tr("no entries")
                                               : PrintTexts::tr("entries %1 to %2 of %3")
                                                     .arg(firstOfPage_, lastOfPage_,
                                                          QString::number(ledger_.entries)));
        right(PrintTexts::tr("page %1").arg(page), 0);
        if (ledger_.head.empty()) return;
        painter.drawText(
            QPointF{0, pages_.footBase(1)},
            PrintTexts::tr("Ledger head %1").arg(QString::fromStdString(ledger_.head)));
        right(at_, 1);
    }

    PaperPages pages_;
    QString kitchen_, at_;
    SurveyedLedger ledger_;
    QString firstOfPage_, lastOfPage_;
    int page_ = 0;
};

/// A PDF in the making, which takes its name at the end; nothing to do for paper.
class UnfinishedPdf {
public:
    explicit UnfinishedPdf(QPrinter& printer) : name_{printer.outputFileName()} {
        if (name_.isEmpty()) return;
        part_ = name_ + QStringLiteral(".part");
        printer.setOutputFileName(part_);
    }
    UnfinishedPdf(const UnfinishedPdf&) = delete;
    UnfinishedPdf& operator=(const UnfinishedPdf&) = delete;
    ~UnfinishedPdf() {
        if (!part_.isEmpty()) QFile::remove(part_);
    }

    [[nodiscard]] bool finish() {
        if (part_.isEmpty()) return true;
        const bool named = std::rename(QFile::encodeName(part_).constData(),
                                       QFile::encodeName(name_).constData()) == 0;
        if (named) part_.clear();
        return named;
    }

private:
    QString name_, part_;
};

QString notPrinted() {
    return PrintTexts::tr(
        "The ledger could not be printed: the printer or the file takes nothing. "
        "Choose another one.");
}

}  // namespace

LedgerWritten printLedger(const LedgerSource& ledger, const QString& kitchenName,
                          const QString& printedAt, QPrinter& printer, const Progress& progress) {
    if (auto kept = keptDatabase(printer.outputFileName())) return *kept;
    LedgerWalk walk;
    ChainCheck chain;
    auto survey = surveyed(ledger, progress, [&walk, &chain](const ChainedEntry& chained) {
        walk.survey(chained);
        chain.look(chained);
    });
    if (!survey) return refused(survey.error());
    if (!*survey) return {};
    SurveyedLedger& known = **survey;
    known.broken = chain.state().broken;
    UnfinishedPdf pdf{printer};
    LedgerPrint print{printer, kitchenName, printedAt};
    bool fine = print.begin(known);
    const auto read = !fine ? Result<void>{} : ledger([&](const ChainedEntry& chained) {
        if (chained.sequence > known.entries) return false;
        fine = print.add(ledgerLineOf(chained, walk.look(chained)));
        tell(progress, chained.sequence, known.entries, PrintTexts::tr("Printing the ledger"));
        return fine && !progress.cancelled();
    });
    if (progress.cancelled()) {
        printer.abort();
        return {};
    }
    if (!read) return refused(read.error());
    if (!fine || !print.end() || !pdf.finish()) return {{}, notPrinted()};
    return {LedgerWritten::Whole{known.entries, print.pages(), known.head, true, known.broken}, {}};
}

LedgerWritten writeLedgerCsv(const LedgerSource& ledger, const QString& path,
                             const Progress& progress) {
    if (auto kept = keptDatabase(path)) return *kept;
    LedgerCsv csv;
    const auto survey =
        surveyed(ledger, progress, [&csv](const ChainedEntry& chained) { csv.survey(chained); });
    if (!survey) return refused(survey.error());
    if (!*survey) return {};
    const SurveyedLedger& known = **survey;
    QSaveFile file{path};
    const auto write = [&file](const std::string& text) {
        const auto size = static_cast<qint64>(text.size());
        return file.write(text.data(), size) == size;
    };
    bool fine = file.open(QIODevice::WriteOnly) && write(LedgerCsv::header());
    const auto read = !fine ? Result<void>{} : ledger([&](const ChainedEntry& chained) {
        if (chained.sequence > known.entries) return false;
        fine = write(csv.row(chained));
        tell(progress, chained.sequence, known.entries, PrintTexts::tr("Saving the ledger"));
        return fine && !progress.cancelled();
    });
    // What is not committed leaves no file behind.
    if (progress.cancelled()) return {};
    if (!read) return refused(read.error());
    if (fine && file.commit())
        return {LedgerWritten::Whole{known.entries, 0, known.head, false, 0}, {}};
    return refused(Error{ErrorCode::FileNotWritable, path.toStdString()}.with(
        "reason", file.errorString().toStdString()));
}

}  // namespace nettare
