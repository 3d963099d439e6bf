#include "app/session/now.h"

#include <utility>

namespace nettare {

namespace {

std::function<QDateTime()>& clockInstead() {
    static std::function<QDateTime()> clock;
    return clock;
}

QDateTime momentHere() {
    const auto& clock = clockInstead();
    return clock ? clock() : QDateTime::currentDateTime();
}

}  // namespace

std::string now() {
    const QDateTime here = momentHere();
    return here.toOffsetFromUtc(here.offsetFromUtc()).toString(Qt::ISODate).toStdString();
}

QDate today() {
    return momentHere().date();
}

void SinceThen::start() {
    timer_.start();
    then_ = clockInstead() ? momentHere() : QDateTime{};
}

std::optional<int> SinceThen::seconds() const {
    if (!timer_.isValid()) return std::nullopt;
    if (then_.isValid() && clockInstead()) return static_cast<int>(then_.secsTo(momentHere()));
    return static_cast<int>(timer_.elapsed() / 1000);
}

ClockInstead::ClockInstead(std::function<QDateTime()> clock) {
    clockInstead() = std::move(clock);
}

ClockInstead::~ClockInstead() {
    clockInstead() = nullptr;
}

}  // namespace nettare
