#include "app/import_table/import_screen.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QVBoxLayout>

#include "app/files/read_file.h"
#include "app/files/write_file.h"
#include "app/import_table/mapping_form.h"
#include "app/import_table/report_words.h"
#include "app/session/kitchen_session.h"
#include "app/theme/spacing.h"
#include "app/widgets/basis_switch.h"
#include "app/widgets/message_line.h"
#include "app/widgets/screen_header.h"
#include "app/widgets/table_delegate.h"
#include "app/words/error_sentence.h"
#include "core/support/json.h"

namespace nettare {

namespace {

constexpr int kBarSteps = 1000;

QPushButton* namedButton(const QString& name, const QString& text) {
    auto* button = new QPushButton{text};
    button->setObjectName(name);
    return button;
}

QString sentenceOf(const Error& error) {
    return QString::fromStdString(errorSentence(error));
}

QString hintFor(ImportKind kind) {
    switch (kind) {
        case ImportKind::Sr28:
            return ImportScreen::tr(
                "The ASCII files of the USDA National Nutrient Database for Standard Reference, "
                "release 28, as a zip or in a folder.");
        case ImportKind::Fdc:
            return ImportScreen::tr(
                "A CSV download of USDA FoodData Central, as a zip or in a folder.");
        case ImportKind::Csv:
            return ImportScreen::tr(
                "Any table of foods as CSV, one food a line. Say which column is what; the mapping "
                "can be saved for the next release.");
    }
    return {};
}

}  // namespace

ImportScreen::ImportScreen(KitchenSession& kitchen, Asker asker, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      asker_{std::move(asker)},
      header_{new ScreenHeader{tr("Bring in a table")}},
      kinds_{new BasisSwitch},
      hint_{new QLabel},
      path_{new QLineEdit},
      file_{namedButton(QStringLiteral("importFile"), tr("Choose a &file…"))},
      folder_{namedButton(QStringLiteral("importFolder"), tr("Choose a f&older…"))},
      use_{namedButton(QStringLiteral("useMapping"), tr("Use a &mapping…"))},
      save_{namedButton(QStringLiteral("saveMapping"), tr("&Save this mapping…"))},
      look_{namedButton(QStringLiteral("lookOnly"), tr("&Look only"))},
      bring_{namedButton(QStringLiteral("bringIn"), tr("&Bring it in"))},
      stop_{namedButton(QStringLiteral("stopImport"), tr("S&top"))},
      mapping_{new MappingForm},
      bar_{new QProgressBar},
      message_{new MessageLine},
      report_{new QLabel},
      rejected_{new QTableWidget} {
    build();
    connect(kinds_, &BasisSwitch::chosen, this, &ImportScreen::chooseKind);
    connect(path_, &QLineEdit::editingFinished, this, &ImportScreen::openFile);
    connect(path_, &QLineEdit::textChanged, this, &ImportScreen::follow);
    connect(file_, &QPushButton::clicked, this, [this] { choosePath(false); });
    connect(folder_, &QPushButton::clicked, this, [this] { choosePath(true); });
    connect(use_, &QPushButton::clicked, this, &ImportScreen::readMapping);
    connect(save_, &QPushButton::clicked, this, &ImportScreen::writeMapping);
    connect(mapping_, &MappingForm::changed, this, &ImportScreen::follow);
    connect(look_, &QPushButton::clicked, this, [this] { run(true); });
    connect(bring_, &QPushButton::clicked, this, [this] { run(false); });
    connect(stop_, &QPushButton::clicked, this, &ImportScreen::stop);
    connect(&tasks_, &TaskRunner::progressed, this,
            [this](const QString& /*name*/, const QString& step, double share) {
                bar_->setValue(static_cast<int>(share * kBarSteps));
                bar_->setFormat(step);
            });
    chooseKind(0);
}

// A field that goes with the focus says that it was edited, after the screen itself is gone.
ImportScreen::~ImportScreen() {
    path_->disconnect(this);
}

void ImportScreen::build() {
    bring_->setProperty("primary", true);
    header_->addAction(stop_);
    header_->addAction(look_);
    header_->addAction(bring_);
    auto* page = new QWidget;
    auto* column = new QVBoxLayout{page};
    column->setContentsMargins(kSpace6Px, kSpace4Px, kSpace6Px, kSpace4Px);
    column->setSpacing(kSpace3Px);
    column->addWidget(buildSource());
    column->addWidget(mapping_, 3);
    column->addWidget(buildReport());
    column->addWidget(rejected_, 1);
    column->addStretch(0);
    auto* whole = new QVBoxLayout{this};
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    whole->addWidget(header_);
    whole->addWidget(page, 1);
}

QWidget* ImportScreen::buildSource() {
    kinds_->setObjectName(QStringLiteral("importKind"));
    kinds_->setAccessibleName(tr("Kind of table"));
    kinds_->setTexts({tr("USDA SR28"), tr("FoodData Central"), tr("Another CSV")});
    path_->setObjectName(QStringLiteral("importPath"));
    path_->setAccessibleName(tr("File or folder"));
    path_->setPlaceholderText(tr("path of the file or folder"));
    hint_->setProperty("tone", QStringLiteral("secondary"));
    hint_->setWordWrap(true);
    auto* choices = new QHBoxLayout;
    choices->setSpacing(kSpace4Px);
    choices->addWidget(kinds_);
    choices->addWidget(hint_, 1);
    auto* files = new QHBoxLayout;
    files->setSpacing(kSpace2Px);
    files->addWidget(path_, 1);
    for (QPushButton* button : {file_, folder_, use_, save_}) files->addWidget(button);
    auto* source = new QWidget;
    auto* column = new QVBoxLayout{source};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kSpace3Px);
    column->addLayout(choices);
    column->addLayout(files);
    return source;
}

QWidget* ImportScreen::buildReport() {
    bar_->setRange(0, kBarSteps);
    bar_->setObjectName(QStringLiteral("importProgress"));
    bar_->setAccessibleName(tr("How far the import is"));
    report_->setObjectName(QStringLiteral("importReport"));
    report_->setTextFormat(Qt::PlainText);
    report_->setWordWrap(true);
    report_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    rejected_->setObjectName(QStringLiteral("rejectedRows"));
    rejected_->setAccessibleName(tr("Rows and values that are left out, and why"));
    rejected_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    dressTable(*rejected_);
    rejected_->setColumnCount(1);
    rejected_->setHorizontalHeaderLabels({tr("Left out, and why")});
    rejected_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    rejected_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    auto* report = new QWidget;
    auto* column = new QVBoxLayout{report};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kSpace2Px);
    column->addWidget(message_);
    column->addWidget(bar_);
    column->addWidget(report_);
    return report;
}

void ImportScreen::chooseKind(int index) {
    kind_ = static_cast<ImportKind>(index);
    const bool csv = kind_ == ImportKind::Csv;
    hint_->setText(hintFor(kind_));
    folder_->setVisible(!csv);
    use_->setVisible(csv);
    save_->setVisible(csv);
    report_->clear();
    rejected_->hide();
    message_->clear();
    openFile();
}

void ImportScreen::setPath(const QString& path) {
    path_->setText(path);
    openFile();
}

void ImportScreen::choosePath(bool folder) {
    if (const QString path = asker_.table(this, folder); !path.isEmpty()) setPath(path);
}

void ImportScreen::openFile() {
    const QString path = path_->text().trimmed();
    const bool csv = kind_ == ImportKind::Csv && !path.isEmpty();
    mapping_->setVisible(false);
    if (csv) {
        if (const auto failure = mapping_->open(path.toStdString()))
            message_->say(MessageKind::Warning, sentenceOf(*failure));
        else
            mapping_->setVisible(true);
    }
    follow();
}

void ImportScreen::readMapping() {
    const QString path = asker_.mapping(this, false);
    if (path.isEmpty()) return;
    const auto mapping = [&]() -> Result<CsvMapping> {
        const auto text = readFile(path.toStdString());
        if (!text) return fail(text.error());
        const auto json = parseJson(*text);
        if (!json) return fail(json.error());
        return readCsvMapping(*json);
    }();
    if (mapping) return mapping_->setMapping(*mapping);
    Error error = mapping.error();
    if (error.file.empty()) error.file = path.toStdString();
    message_->say(MessageKind::Warning, sentenceOf(error));
}

void ImportScreen::writeMapping() {
    const QString path = asker_.mapping(this, true);
    if (path.isEmpty()) return;
    const std::string text = writeJson(csvMappingJson(mapping_->mapping())) + "\n";
    if (const auto written = writeFile(path.toStdString(), text); !written)
        return message_->say(MessageKind::Warning, sentenceOf(written.error()));
    message_->say(MessageKind::Done, tr("The mapping is in %1.").arg(path));
}

// What is still missing is said before the buttons are pressed.
void ImportScreen::follow() {
    const bool working = tasks_.busy();
    const bool csv = kind_ == ImportKind::Csv;
    const bool mapped = !csv || mapping_->isVisibleTo(this);
    const QString missing = csv && mapped ? missingOf(mapping_->mapping()) : QString{};
    const bool ready =
        !working && mapped && missing.isEmpty() && !path_->text().trimmed().isEmpty();
    look_->setEnabled(ready);
    bring_->setEnabled(ready);
    save_->setEnabled(mapped && !working);
    use_->setEnabled(mapped && !working);
    stop_->setVisible(working);
    bar_->setVisible(working);
    for (QWidget* widget : std::initializer_list<QWidget*>{kinds_, path_, file_, folder_, mapping_})
        widget->setEnabled(!working);
    if (!missing.isEmpty())
        message_->say(MessageKind::Info, missing);
    else if (toldMissing_)
        message_->clear();
    toldMissing_ = !missing.isEmpty();
}

ImportRequest ImportScreen::request(bool dryRun) const {
    ImportRequest request;
    request.kind = kind_;
    request.path = path_->text().trimmed().toStdString();
    request.folder = kitchen_.tablePlaces().folder;
    request.dryRun = dryRun;
    if (kind_ == ImportKind::Csv) request.mapping = mapping_->mapping();
    return request;
}

void ImportScreen::run(bool dryRun) {
    message_->clear();
    report_->clear();
    rejected_->hide();
    mapping_->showRows(true);
    bar_->setValue(0);
    bar_->setFormat({});
    stopAsked_ = std::make_shared<std::atomic<bool>>(false);
    tasks_.run(
        tr("Bring in a table"), *this,
        [request = request(dryRun), stop = stopAsked_](const Progress& progress) {
            return importTable(request, [&](const ImportProgress& now) {
                const double share = now.bytesInAll == 0 ? 0
                                                         : static_cast<double>(now.bytesDone) /
                                                               static_cast<double>(now.bytesInAll);
                progress.step(stepText(now), share);
                return !*stop && !progress.cancelled();
            });
        },
        [this, dryRun](const Result<ImportReport>& result) { ended(result, dryRun); });
    follow();
}

void ImportScreen::stop() {
    *stopAsked_ = true;
    stop_->setEnabled(false);
}

void ImportScreen::ended(const Result<ImportReport>& result, bool dryRun) {
    stop_->setEnabled(true);
    follow();
    if (!result && result.error().code == ErrorCode::ImportStopped)
        return message_->say(MessageKind::Info, tr("Stopped. The tables are as they were."));
    if (!result) return message_->say(MessageKind::Warning, sentenceOf(result.error()));
    report_->setText(reportText(*result, dryRun));
    mapping_->showRows(false);
    showRejected(*result);
    if (!dryRun) {
        kitchen_.reloadTables();
        emit broughtIn();
    }
}

void ImportScreen::showRejected(const ImportReport& report) {
    rejected_->setRowCount(static_cast<int>(report.rejectedRows.size()));
    for (std::size_t row = 0; row < report.rejectedRows.size(); ++row)
        rejected_->setItem(static_cast<int>(row), 0,
                           new QTableWidgetItem{sentenceOf(report.rejectedRows[row].reason)});
    rejected_->setVisible(!report.rejectedRows.empty());
}

}  // namespace nettare
