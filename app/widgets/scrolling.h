#pragma once

class QScrollArea;
class QWidget;

namespace nettare {

/// A page that scrolls downwards where it is too tall, in the colours of what it stands in. Takes
/// the page over.
[[nodiscard]] QScrollArea* scrolling(QWidget* page);

}  // namespace nettare
