#include "db/kitchen/store_photos.h"

#include "core/support/sha256.h"

namespace nettare {

namespace {

using namespace std::string_view_literals;

/// The kinds of image by their first bytes: JPEG by its markers SOI and the next one (ITU-T T.81,
/// B.1.1), PNG by its signature (ISO/IEC 15948, 5.2). Empty for anything else.
std::string mediaTypeOf(std::string_view bytes) {
    if (bytes.starts_with("\xff\xd8\xff"sv)) return "image/jpeg";
    if (bytes.starts_with("\x89PNG\r\n\x1a\n"sv)) return "image/png";
    return {};
}

bool hasPhoto(KitchenStore& store, const std::string& hash) {
    Query row = store.query("SELECT 1 FROM label_photo WHERE hash = ?");
    row.with(hash);
    return row.next();
}

}  // namespace

Result<std::string> addPhoto(KitchenStore& store, std::string_view bytes, const std::string& at) {
    constexpr std::size_t kBytesPerMib = std::size_t{1024} * 1024;
    if (const auto open = checkWritable(store); !open) return fail(open.error());
    if (bytes.size() > kMostPhotoMib * kBytesPerMib)
        return fail(
            store.error(ErrorCode::PhotoTooLarge).with("most", std::to_string(kMostPhotoMib)));
    const std::string mediaType = mediaTypeOf(bytes);
    if (mediaType.empty()) return fail(store.error(ErrorCode::PhotoNotAnImage));
    std::string hash = sha256(bytes);
    if (hasPhoto(store, hash)) return hash;
    WriteTransaction transaction{store};
    store.query("INSERT INTO label_photo (hash, media_type, kept_at, bytes) VALUES (?, ?, ?, ?)")
        .with(hash)
        .with(mediaType)
        .with(at)
        .withBytes(bytes)
        .run();
    transaction.commit();
    return hash;
}

Result<std::optional<std::string>> photoBytes(KitchenStore& store, const std::string& hash) {
    Query row = store.query("SELECT bytes FROM label_photo WHERE hash = ?");
    row.with(hash);
    if (!row.next()) return std::optional<std::string>{};
    std::string bytes = row.text(0);
    if (sha256(bytes) != hash)
        return fail(store.error(ErrorCode::PhotoChanged).with("found", hash));
    return std::optional{std::move(bytes)};
}

}  // namespace nettare
