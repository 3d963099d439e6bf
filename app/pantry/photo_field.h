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

    /// None is chosen, and none is read any more.
    void clear();
    /// One that the kitchen has already.
    void showKept(const LabelPhoto& photo);
    /// Reads it and shows it; failed() where that is no photograph.
    void take(const QString& path);
    /// Without bytes where the kitchen has it already.
    [[nodiscard]] const std::optional<ReadPhoto>& photo() const { return photo_; }
    /// The file that photo() is read from, or could not be; empty for one that the kitchen has.
    [[nodiscard]] const QString& path() const { return reading_ ? asked_ : path_; }
    /// The kitchen has photo() from now on.
    void setKept() { path_.clear(); }
    [[nodiscard]] bool isReading() const { return reading_; }

signals:
    /// A file is to be chosen.
    void asked();
    void edited();
    /// Nothing is being read any more: the photograph is there, or was left out.
    void settled();
    void failed(const nettare::Error& error);

private:
    void follow();

    KitchenSession& kitchen_;
    std::optional<ReadPhoto> photo_;
    QString path_, asked_;
    int readings_ = 0;  ///< counts, so that only the newest file shows
    bool reading_ = false;
    PhotoView* view_;
    QLabel* words_;
    QPushButton *choose_, *remove_;
};

}  // namespace nettare
