#include "app/widgets/mark.h"

#include <QCoreApplication>

namespace nettare {

Mark markOf(Way way) {
    switch (way) {
        case Way::Weighed:
        case Way::Series:
            return Mark::Weighed;
        case Way::Label:
            return Mark::Label;
        case Way::Table:
            return Mark::Table;
        case Way::Density:
            return Mark::Density;
        case Way::Assumed:
            break;
    }
    return Mark::Assumed;
}

QString wordOf(Mark mark) {
    switch (mark) {
        case Mark::None:
            break;
        case Mark::Weighed:
            return QCoreApplication::translate("WayMark", "weighed");
        case Mark::Label:
            return QCoreApplication::translate("WayMark", "label");
        case Mark::Table:
            return QCoreApplication::translate("WayMark", "table");
        case Mark::Density:
            return QCoreApplication::translate("WayMark", "by density");
        case Mark::Assumed:
            return QCoreApplication::translate("WayMark", "assumed");
        case Mark::NoData:
            return QCoreApplication::translate("WayMark", "no data");
    }
    return {};
}

QString wordOf(Way way) {
    return way == Way::Series ? QCoreApplication::translate("WayMark", "series")
                              : wordOf(markOf(way));
}

Role roleOf(Mark mark) {
    switch (mark) {
        case Mark::Weighed:
            return Role::Weighed;
        case Mark::Label:
            return Role::Label;
        case Mark::Table:
        case Mark::Density:
            return Role::Table;
        case Mark::Assumed:
            return Role::Assumed;
        case Mark::None:
        case Mark::NoData:
            break;
    }
    return Role::Ink2;
}

}  // namespace nettare
