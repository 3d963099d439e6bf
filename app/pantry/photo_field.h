#pragma once

#include <QWidget>

#include <optional>

#include "app/session/label_photo.h"

class QLabel;
class QPushButton;

namespace nettare {

class KitchenSession;
class PhotoView;

/// The photograph of a package while its label is typed: chosen, dropped in, looked at, left out.
/// It is read beside the window and kept with the label, not before.
class PhotoField : public QWidget {
    Q_OBJECT

public:
    explicit PhotoField(KitchenSession& kitchen, QWidget* parent = nullptr);

    /// None is chosen.
    void clear();
    /// Reads it and shows it; failed() where that is no photograph.
    void take(const QString& path);
    [[nodiscard]] const std::optional<ReadPhoto>& photo() const { return photo_; }

signals:
    /// A file is to be chosen.
    void asked();
    void edited();
    void failed(const nettare::Error& error);

private:
    void follow();

    KitchenSession& kitchen_;
    std::optional<ReadPhoto> photo_;
    int asked_ = 0;  ///< counts, so that only the newest file shows
    PhotoView* view_;
    QLabel* words_;
    QPushButton *choose_, *remove_;
};

}  // namespace nettare
