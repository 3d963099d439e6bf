#include "app/pantry/photo_field.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/pantry/label_words.h"
#include "app/pantry/photo_view.h"
#include "app/session/kitchen_session.h"
#include "app/sheet/flow_layout.h"
#include "app/theme/spacing.h"

namespace nettare {

PhotoField::PhotoField(KitchenSession& kitchen, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      view_{new PhotoView},
      words_{new QLabel},
      choose_{new QPushButton},
      remove_{new QPushButton{tr("Without it")}} {
    choose_->setObjectName(QStringLiteral("choosePhoto"));
    remove_->setObjectName(QStringLiteral("removePhoto"));
    words_->setObjectName(QStringLiteral("photoWords"));
    words_->setTextFormat(Qt::PlainText);
    words_->setWordWrap(true);
    words_->setMinimumWidth(1);
    words_->setProperty("tone", QStringLiteral("secondary"));
    auto* actions = new QWidget;
    auto* row = new FlowLayout{kSpace2Px, kSpace2Px, actions};
    row->addWidget(choose_);
    row->addWidget(remove_);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kSpace2Px);
    column->addWidget(view_);
    column->addWidget(words_);
    column->addWidget(actions);
    connect(choose_, &QPushButton::clicked, this, &PhotoField::asked);
    connect(remove_, &QPushButton::clicked, this, [this] {
        clear();
        emit edited();
        emit settled();
    });
    follow();
}

void PhotoField::clear() {
    ++readings_;
    reading_ = false;
    photo_.reset();
    path_.clear();
    follow();
}

void PhotoField::showKept(const LabelPhoto& photo) {
    clear();
    photo_ = ReadPhoto{photo, {}, {}};
    follow();
    kitchen_.ownFoods().askPhoto(photo.sha256, this,
                                 [this, reading = readings_](const QImage& image) {
                                     if (reading != readings_ || !photo_) return;
                                     photo_->image = image;
                                     follow();
                                 });
}

void PhotoField::take(const QString& path) {
    reading_ = true;
    asked_ = path;
    follow();
    kitchen_.ownFoods().readPhoto(
        path, this, [this, reading = ++readings_](Result<ReadPhoto> read) {
            if (reading != readings_) return;
            reading_ = false;
            // A file may be there again later, as on a stick; what is no photograph never will be.
            if (read || (!photo_ && read.error().code == ErrorCode::FileNotReadable))
                path_ = asked_;
            if (read) photo_ = std::move(*read);
            follow();
            if (!read) return emit failed(read.error());
            emit edited();
            emit settled();
        });
}

void PhotoField::follow() {
    view_->show(photo_ ? photo_->image : QImage{});
    if (reading_)
        words_->setText(tr("reading…"));
    else if (photo_)
        words_->setText(isolated(photo_->photo.fileName));
    else
        words_->setText(
            tr("Photograph: none yet. Choose one or drop it here; it is kept with "
               "the label as its evidence."));
    choose_->setText(photo_ ? tr("Another photograph…") : tr("Choose a photograph…"));
    remove_->setVisible(photo_ || reading_);
}

}  // namespace nettare
