#pragma once

#include <QImage>
#include <QString>

#include <string>

#include "core/food/label_facts.h"
#include "core/support/result.h"

namespace nettare {

/// A photograph of a package that was read from a file and is not kept yet.
struct ReadPhoto {
    LabelPhoto photo;
    std::string bytes;
    QImage image;  ///< as it is shown
};

/// Reads a JPEG or PNG file. Takes its time: not for the GUI thread. Fails: FileNotReadable,
/// PhotoTooLarge ("most"), PhotoNotAnImage.
[[nodiscard]] Result<ReadPhoto> readPhotoFile(const QString& path);

/// How the photograph looks, no larger than a screen shows it. Fails: PhotoNotAnImage.
[[nodiscard]] Result<QImage> imageOfPhoto(const std::string& bytes);

}  // namespace nettare
