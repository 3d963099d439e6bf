#include "db/import/csv_stream.h"

#include <algorithm>
#include <cstring>

namespace nettare {

ReadBytes bytesOfStream(ImportStream& stream) {
    // What a call of the stream brought and did not fit yet.
    return
        [&stream, rest = std::string_view{}](std::span<char> into) mutable -> Result<std::size_t> {
            if (rest.empty()) {
                const auto more = stream.next();
                if (!more) return fail(more.error());
                rest = *more;
            }
            const std::size_t count = std::min(rest.size(), into.size());
            std::memcpy(into.data(), rest.data(), count);
            rest.remove_prefix(count);
            return count;
        };
}

}  // namespace nettare
