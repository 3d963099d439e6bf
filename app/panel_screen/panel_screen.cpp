#include "app/panel_screen/panel_screen.h"

#include "app/files/write_file.h"
#include "app/panel/panel_fonts.h"
#include "app/panel/panel_layout.h"
#include "app/panel/panel_pdf.h"
#include "app/panel_screen/added_sugars_form.h"
#include "app/panel_screen/check_bar.h"
#include "app/panel_screen/panel_trouble.h"
#include "app/panel_screen/state_value_form.h"
#include "app/session/draft_title.h"
#include "app/session/kitchen_session.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/message_line.h"
#include "app/widgets/screen_header.h"
#include "app/words/error_sentence.h"

#include <QButtonGroup>
#include <QDir>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedLayout>
#include <QVBoxLayout>

#include "core/publish/panel_of.h"

namespace nettare {

namespace {

constexpr int kNotesPx = 260;

QLabel* noteLabel() {
    auto* const label = new QLabel;
    label->setFont(typeFont(TypeSize::Header));
    label->setProperty("tone", QStringLiteral("secondary"));
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

}  // namespace

PanelScreen::PanelScreen(KitchenSession& kitchen, AskForPdf ask, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      ask_{std::move(ask)},
      header_{new ScreenHeader{tr("Panel")}},
      zooms_{new QButtonGroup{this}},
      export_{new QPushButton{tr("Export as PDF…")}},
      view_{new PanelView},
      bar_{new CheckBar},
      scaleNote_{noteLabel()},
      report_{new MessageLine},
      trouble_{new EmptyState},
      form_{new StateValueForm},
      sugars_{new AddedSugarsForm},
      askedSugars_{new AddedSugarsForm},
      showSugars_{new QPushButton{tr("&Added sugars…")}} {
    auto* const column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    report_->setObjectName(QStringLiteral("report"));
    column->addWidget(buildHeader());
    column->addWidget(report_);
    column->addWidget(buildBody(), 1);
    connect(&kitchen_, &KitchenSession::draftOpened, this, &PanelScreen::followDraft);
    connect(view_, &PanelView::trueSizeChanged, this, &PanelScreen::sayScale);
    connect(trouble_, &EmptyState::actionChosen, this, &PanelScreen::sheetWanted);
    followDraft();
}

QWidget* PanelScreen::buildHeader() {
    const struct {
        PanelZoom zoom;
        QString text, words;
        const char* name;
    } choices[] = {{PanelZoom::TrueSize, tr("100 %"), tr("True size, 100 percent"), "trueSize"},
                   {PanelZoom::Fit, tr("Fit"), tr("Fit into the window"), "fit"},
                   {PanelZoom::Double, tr("200 %"), tr("Twice its size, 200 percent"), "double"}};
    for (const auto& choice : choices) {
        auto* const button = new QPushButton{choice.text};
        button->setObjectName(QLatin1String{choice.name});
        button->setCheckable(true);
        button->setToolTip(choice.words);
        button->setAccessibleName(choice.words);
        zooms_->addButton(button, static_cast<int>(choice.zoom));
        header_->addAction(button);
    }
    zooms_->button(static_cast<int>(PanelZoom::TrueSize))->setChecked(true);
    connect(zooms_, &QButtonGroup::idClicked, this, [this](int id) {
        view_->setZoom(static_cast<PanelZoom>(id));
        sayScale();
    });
    export_->setObjectName(QStringLiteral("export"));
    export_->setProperty("primary", true);
    header_->addAction(export_);
    connect(export_, &QPushButton::clicked, this, &PanelScreen::exportPdf);
    return header_;
}

QWidget* PanelScreen::buildNotes() {
    auto* const notes = new QWidget;
    notes->setFixedWidth(kNotesPx);
    auto* const column = new QVBoxLayout{notes};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kSpace3Px);
    column->addWidget(bar_);
    column->addWidget(scaleNote_);
    showSugars_->setObjectName(QStringLiteral("showSugars"));
    showSugars_->setCheckable(true);
    showSugars_->setToolTip(tr("What part of the sugars of each food is added"));
    column->addWidget(showSugars_, 0, Qt::AlignLeft);
    column->addWidget(sugars_);
    column->addStretch(1);
    connect(showSugars_, &QPushButton::toggled, this, [this](bool shown) {
        if (shown) return sugars_->follow(kitchen_.draft());
        sugars_->hide();
    });
    return notes;
}

QWidget* PanelScreen::buildBody() {
    auto* const body = new QWidget;
    stack_ = new QStackedLayout{body};
    auto* const page = new QWidget;
    auto* const row = new QHBoxLayout{page};
    row->setContentsMargins(kSpace6Px, kSpace6Px, kSpace6Px, kSpace6Px);
    row->setSpacing(kSpace6Px);
    row->addWidget(view_, 1);
    row->addWidget(buildNotes());
    stack_->addWidget(page);
    auto* const asked = new QWidget;
    auto* const column = new QVBoxLayout{asked};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(form_);
    column->addWidget(askedSugars_);
    trouble_->setBelow(asked);
    stack_->addWidget(trouble_);
    return body;
}

void PanelScreen::followDraft() {
    report_->clear();
    if (const DraftSession* const draft = kitchen_.draft())
        connect(draft, &DraftSession::evaluationChanged, this, &PanelScreen::refresh);
    refresh();
}

void PanelScreen::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
}

void PanelScreen::refresh() {
    stale_ = !isVisible();
    if (!stale_) lookAtDraft();
}

void PanelScreen::lookAtDraft() {
    panel_.reset();
    export_->setEnabled(false);
    const DraftSession* const draft = kitchen_.draft();
    header_->setSubject(draftTitle(draft));
    if (draft == nullptr) {
        form_->hide();
        askedSugars_->hide();
        trouble_->show(tr("No recipe is open"),
                       tr("Open a recipe from the shelf, and its nutrition panel appears here."));
        return stack_->setCurrentIndex(1);
    }
    if (draft->failure()) return showTrouble(*draft->failure());
    // A panel declares what was made, whatever the figures are looked at as.
    const auto batch = withMeaning(draft->evaluation(), Meaning::ThisBatch);
    if (!batch) return showTrouble(batch.error());
    const auto panel = usPanelOf((*batch)->dossier, (*batch)->cooked);
    if (!panel) return showTrouble(panel.error());
    showPanel(*panel);
}

void PanelScreen::showPanel(const Panel& panel) {
    panel_ = panel;
    export_->setEnabled(true);
    view_->show(layOutPanel(panel, panelTextWidth));
    if (showSugars_->isChecked()) sugars_->follow(kitchen_.draft());
    showSugars_->setEnabled(!kitchen_.draft()->readOnly());
    stack_->setCurrentIndex(0);
    sayScale();
}

void PanelScreen::showTrouble(const Error& error) {
    const PanelTrouble words = PanelTrouble::of(error);
    trouble_->show(tr("There is no panel yet"), words.what + u'\n' + words.advice,
                   tr("Go to the sheet"));
    askFor(error);
    stack_->setCurrentIndex(1);
}

void PanelScreen::askFor(const Error& error) {
    const bool open = error.code == ErrorCode::PanelLineOpen &&
                      error.value("component") == factsOf(Component::SUGAD).tagname;
    if (!open && error.code != ErrorCode::AddedSugarsAboveSugars) {
        askedSugars_->hide();
        return form_->ask(kitchen_.draft(), error);
    }
    form_->hide();
    std::vector<std::string> names;
    for (const ErrorValue& value : error.values)
        if (value.name == "food") names.push_back(value.text);
    askedSugars_->ask(kitchen_.draft(), names);
}

void PanelScreen::sayScale() {
    const TrueSize size = view_->trueSize();
    bar_->setScale(size.pxPerPoint);
    scaleNote_->setText(
        size.measured
            ? tr("At 100 % this bar measures 50 mm on a ruler, by what the screen says of its "
                 "size.")
            : tr("The screen does not say how large it is, so 100 % may be off: hold a ruler to "
                 "this bar. The PDF is exact in any case."));
}

QString PanelScreen::report() const {
    return report_->text();
}

void PanelScreen::exportPdf() {
    if (stale_) lookAtDraft();
    if (!panel_) return;
    const QString suggested = kitchen_.draft()->recipe() + QStringLiteral(".pdf");
    const QString path = ask_(this, suggested);
    // The dialog let events in, and the draft may have changed.
    if (path.isEmpty() || !panel_) return;
    tasks_.run(
        tr("Exporting the panel"), *this,
        [path = path.toStdString(), bytes = panelPdf(*panel_)](const Progress&) {
            return writeFile(path, bytes);
        },
        [this, path](const Result<void>& written) {
            if (written)
                report_->say(MessageKind::Done,
                             tr("Panel written to %1").arg(QDir::toNativeSeparators(path)));
            else
                report_->say(MessageKind::Error,
                             QString::fromStdString(errorSentence(written.error())));
        });
}

}  // namespace nettare
