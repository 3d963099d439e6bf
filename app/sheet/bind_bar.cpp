#include "app/sheet/bind_bar.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/session/kitchen_session.h"
#include "app/sheet/document_texts.h"
#include "app/sheet/draft_sentence.h"
#include "app/sheet/refusal_line.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

std::string rowText(const Json* food) {
    const Json* table = food == nullptr ? nullptr : food->find("table");
    if (table == nullptr) return {};
    return TableRow{memberText(table, "table"), memberText(table, "release"),
                    memberText(table, "number")}
        .text();
}

LineToBind lineToBind(const Json& document, const std::string& line) {
    const Json* entry = entryIn(document, "lines", line);
    std::string counted = memberText(entry, "piece");
    if (counted.empty()) counted = memberText(entry, "unit");
    const Json* food = entryIn(document, "foods", memberText(entry, "food"));
    return {line, memberText(food, "name"), std::move(counted), rowText(food)};
}

/// The edit that an offer makes of the document.
struct EditOfOffer {
    const Json& document;
    const std::string& line;

    Result<Edit> operator()(const SeriesToBind& series) const {
        return bindToSeries(document, line, series, SeriesUse::Others);
    }
    Result<Edit> operator()(const ReadingToBind& one) const {
        return bindToReading(document, line, one.reading, one.tare);
    }
};

}  // namespace

BindBar::BindBar(KitchenSession& kitchen, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      offer_{new QComboBox},
      take_{new QPushButton{tr("Take its weight from there")}},
      none_{new QLabel{tr("The ledger has no series and no reading of it yet.")}},
      refusal_{new RefusalLine} {
    auto* words = new QLabel{tr("From the ledger")};
    words->setBuddy(offer_);
    auto* weigh = new QPushButton{tr("Weigh it now")};
    auto* cancel = new QPushButton{tr("Cancel")};
    offer_->setObjectName(QStringLiteral("bindOffer"));
    offer_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    offer_->setMinimumContentsLength(16);
    offer_->setPlaceholderText(tr("Choose a series…"));
    take_->setObjectName(QStringLiteral("bindTake"));
    weigh->setObjectName(QStringLiteral("bindWeigh"));
    auto* row = new QHBoxLayout;
    row->setSpacing(kSpace2Px);
    row->addWidget(words);
    row->addWidget(offer_, 1);
    row->addWidget(none_, 1);
    row->addWidget(take_);
    row->addWidget(weigh);
    row->addWidget(cancel);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, kSpace1Px, 0, 0);
    column->setSpacing(kSpace1Px);
    column->addLayout(row);
    column->addWidget(refusal_);
    connect(take_, &QPushButton::clicked, this, &BindBar::bind);
    connect(cancel, &QPushButton::clicked, this, &BindBar::leave);
    connect(weigh, &QPushButton::clicked, this, [this] {
        leave();
        emit weighAsked();
    });
    connect(offer_, &QComboBox::currentIndexChanged, this, [this] {
        refusal_->tell(this, {});
        take_->setEnabled(offer_->currentIndex() >= 0);
    });
    hide();
}

void BindBar::ask(DraftSession& draft, const std::string& line) {
    draft_ = &draft;
    line_ = line;
    before_ = QApplication::focusWidget();
    refusal_->tell(this, {});
    offer_->setAccessibleName(
        tr("Where the weight of %1 comes from").arg(lineName(draft.document(), line)));
    kitchen_.askKitchen(this, [this, asked = ++asked_, wanted = lineToBind(draft.document(), line),
                               pools = kitchen_.pools()](const Kitchen& kitchen) {
        auto offers = bindOffers(kitchen, wanted, pools);
        return [this, asked, offers = std::move(offers)] {
            if (asked == asked_) show(offers);
        };
    });
}

void BindBar::show(const Result<std::vector<BindOffer>>& offers) {
    if (draft_ == nullptr) return;
    offers_ = offers ? *offers : std::vector<BindOffer>{};
    {
        const QSignalBlocker quiet{offer_};
        offer_->clear();
        for (const BindOffer& offer : offers_) offer_->addItem(offer.text);
        // Another food's series is never taken by a mere Enter.
        offer_->setCurrentIndex(offers_.empty() || !offers_.front().ownFood ? -1 : 0);
    }
    take_->setEnabled(offer_->currentIndex() >= 0);
    offer_->setVisible(!offers_.empty());
    take_->setVisible(!offers_.empty());
    none_->setVisible(offers_.empty());
    QWidget::show();
    if (!offers) refusal_->tell(this, draftSentence(draft_->document(), offers.error()));
    (offers_.empty() ? static_cast<QWidget*>(this) : offer_)->setFocus(Qt::ShortcutFocusReason);
}

void BindBar::bind() {
    const int index = offer_->currentIndex();
    if (draft_ == nullptr || index < 0) return;
    const auto edit = std::visit(EditOfOffer{draft_->document(), line_},
                                 offers_[static_cast<std::size_t>(index)].what);
    const auto refuse = [this](const Error& error) {
        refusal_->tell(this, draftSentence(draft_->document(), error));
    };
    if (!edit) return refuse(edit.error());
    draft_->endTyping();
    if (const auto done = draft_->apply(*edit); !done) return refuse(done.error());
    draft_->endTyping();
    leave();
    emit bound();
}

void BindBar::leave() {
    ++asked_;
    if (isHidden()) return;
    hide();
    if (before_ != nullptr && before_->isVisible()) before_->setFocus(Qt::OtherFocusReason);
}

void BindBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        leave();
    else
        QWidget::keyPressEvent(event);
}

}  // namespace nettare
