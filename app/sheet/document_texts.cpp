#include "app/sheet/document_texts.h"

namespace nettare {

std::string memberText(const Json* object, std::string_view key) {
    const Json* member = object == nullptr ? nullptr : object->find(key);
    return member == nullptr || member->text() == nullptr ? std::string{} : *member->text();
}

const Json::Array& entriesIn(const Json& document, std::string_view list) {
    static const Json::Array none;
    const Json* entries = document.find(list);
    return entries == nullptr || entries->items() == nullptr ? none : *entries->items();
}

const Json* entryIn(const Json& document, std::string_view list, std::string_view id) {
    for (const Json& entry : entriesIn(document, list))
        if (memberText(&entry, "id") == id) return &entry;
    return nullptr;
}

QString documentTitle(const Json& document) {
    return QString::fromStdString(memberText(&document, "title"));
}

QString lineName(const Json& document, std::string_view line) {
    const std::string food = memberText(entryIn(document, "lines", line), "food");
    return QString::fromStdString(memberText(entryIn(document, "foods", food), "name"));
}

}  // namespace nettare
