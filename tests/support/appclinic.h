#pragma once

#include "exam/exam.h"
#include "settings/preferences.h"
#include "window/mainwindow.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <QApplication>
#include <QDate>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <stdexcept>
#include <string>
#include <vector>

namespace rhizograph::app::testing {

template <class T> T need(Result<T> result) {
    if (!result) throw std::runtime_error(result.problems().front().text());
    return std::move(result).value();
}

inline void need(const Outcome& outcome) {
    if (!outcome) throw std::runtime_error(outcome.problems().front().text());
}

/// Lets the program work until the condition holds; false when it does not within the time.
inline bool waitUntil(const std::function<bool()>& holds, int milliseconds = 20000) {
    QElapsedTimer time;
    time.start();
    while (!holds()) {
        if (time.elapsed() > milliseconds) return false;
        QApplication::processEvents(QEventLoop::AllEvents, 20);
    }
    return true;
}

inline FindingChange word(const std::string& item, Side side, const std::string& value, bool bulk = false) {
    return {{ItemId{item}, side}, Finding{Value::token(value), bulk, {}}};
}

inline FindingChange number(const std::string& item, Side side, double value) {
    return {{ItemId{item}, side}, Finding{Value::number(value), false, {}}};
}

inline std::string day(int fromToday) {
    return QDate::currentDate().addDays(fromToday).toString(Qt::ISODate).toStdString();
}

constexpr const char* passphrase = "seven quiet herons";
constexpr const char* administrator = "Ottilie Marrow";
constexpr const char* clinicName = "Practice at the Old Ferry";

inline Materials materials() {
    static const Materials loaded = need(Materials::load(RHIZOGRAPH_RESOURCES));
    return loaded;
}

/// A clinic in a folder of its own; every name and finding in it is invented.
class AppClinic {
public:
    AppClinic() {
        if (!folder_.isValid()) throw std::runtime_error("no temporary folder");
        options.cost = KeyCost::cheapest();
    }

    [[nodiscard]] std::filesystem::path file() const { return path("clinic.rhizo"); }
    [[nodiscard]] std::filesystem::path path(const std::string& name) const {
        return std::filesystem::path(folder_.path().toStdString()) / name;
    }

    void create() const {
        need(createClinic(file(), clinicName, {administrator, Role::administrator, passphrase}, options));
    }
    [[nodiscard]] std::unique_ptr<Store> opened() const {
        auto store = need(openClinic(file(), options));
        need(store->signIn(need(store->users()).front().id, passphrase));
        return store;
    }
    [[nodiscard]] std::unique_ptr<MainWindow> window() const {
        MainWindow::Setup setup{file(), QString::fromStdString(path("preferences.ini").string()), options};
        return std::make_unique<MainWindow>(promised(materials()), std::move(setup));
    }

    ClinicOptions options;

private:
    QTemporaryDir folder_;
};

} // namespace rhizograph::app::testing
