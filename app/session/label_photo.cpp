#include "app/session/label_photo.h"

#include <QBuffer>
#include <QFileInfo>
#include <QImageReader>

#include "app/files/read_file.h"
#include "core/food/label_json.h"
#include "core/support/sha256.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

namespace {

/// Width and height at most, in px: more is not shown.
constexpr int kMostPhotoSide = 1600;

}  // namespace

Result<QImage> imageOfPhoto(const std::string& bytes) {
    QByteArray data = QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()));
    QBuffer buffer{&data};
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader{&buffer};
    reader.setAutoTransform(true);
    const QByteArray kind = reader.format();
    const QSize size = reader.size();
    if ((kind != "jpeg" && kind != "png") || !size.isValid())
        return fail(Error{ErrorCode::PhotoNotAnImage});
    if (std::max(size.width(), size.height()) > kMostPhotoSide)
        reader.setScaledSize(size.scaled(kMostPhotoSide, kMostPhotoSide, Qt::KeepAspectRatio));
    QImage image = reader.read();
    if (image.isNull()) return fail(Error{ErrorCode::PhotoNotAnImage});
    return image;
}

Result<ReadPhoto> readPhotoFile(const QString& path) {
    auto bytes = readFile(path.toStdString(), kMostPhotoMib * kMebibyte);
    if (!bytes && bytes.error().code == ErrorCode::FileTooLarge)
        return fail(Error{ErrorCode::PhotoTooLarge}.with("most", std::to_string(kMostPhotoMib)));
    if (!bytes) return fail(bytes.error());
    auto image = imageOfPhoto(*bytes);
    if (!image) return fail(image.error());
    const std::string name = photoName(QFileInfo{path}.fileName().toStdString());
    return ReadPhoto{{sha256(*bytes), name}, std::move(*bytes), std::move(*image)};
}

}  // namespace nettare
