#include "app/session/now.h"

#include <QDateTime>

namespace nettare {

std::string now() {
    const QDateTime here = QDateTime::currentDateTime();
    return here.toOffsetFromUtc(here.offsetFromUtc()).toString(Qt::ISODate).toStdString();
}

}  // namespace nettare
