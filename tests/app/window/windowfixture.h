#pragma once

#include "hands.h"
#include "support/inventedvisits.h"

#include <gtest/gtest.h>
#include <QFileDialog>
#include <QMessageBox>
#include <QTimer>
#include <sqlite3.h>

namespace rhizograph::app::testing {

/// Another program on the same file.
class OtherProgram {
public:
    explicit OtherProgram(const std::filesystem::path& file) {
        if (sqlite3_open(file.c_str(), &database_) != SQLITE_OK) throw std::runtime_error("cannot open");
        run("pragma busy_timeout = 2000");
    }
    ~OtherProgram() { sqlite3_close(database_); }
    OtherProgram(const OtherProgram&) = delete;
    OtherProgram& operator=(const OtherProgram&) = delete;
    void run(const char* sql) {
        if (sqlite3_exec(database_, sql, nullptr, nullptr, nullptr) != SQLITE_OK)
            throw std::runtime_error(sqlite3_errmsg(database_));
    }

private:
    sqlite3* database_ = nullptr;
};

class WindowTest : public ::testing::Test {
protected:
    WindowTest() {
        clinic.options.busyMilliseconds = 50;
        clinic.create();
        visit = inventDay(*clinic.opened());
        window = clinic.window();
        window->openDatabase();
        window->show();
        signIn(*window);
    }
    VisitPage& opened() {
        window->openVisitById(visit);
        return *window->visitPage();
    }
    VisitState stateNow() { return need(clinic.opened()->visit(visit)).state; }

    AppClinic clinic;
    VisitId visit;
    std::unique_ptr<MainWindow> window;
};

/// Answers the next file dialog with this file.
inline void answerFileDialog(const std::filesystem::path& file) {
    auto* timer = new QTimer(qApp);
    QObject::connect(timer, &QTimer::timeout, timer, [timer, file] {
        auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
        if (dialog == nullptr) return;
        timer->deleteLater();
        dialog->findChild<QLineEdit*>("fileNameEdit")->setText(QString::fromStdString(file.string()));
        QMetaObject::invokeMethod(dialog, "accept");
    });
    timer->start(20);
}

/// Works in the next dialog of the program.
inline void inNextDialog(const std::function<void(QDialog&)>& work) {
    auto* timer = new QTimer(qApp);
    QObject::connect(timer, &QTimer::timeout, timer, [timer, work] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        if (dialog == nullptr || qobject_cast<QMessageBox*>(dialog) != nullptr) return;
        timer->deleteLater();
        work(*dialog);
    });
    timer->start(20);
}

/// What the program says in a box right now; empty when there is none.
inline QString saidInABox() {
    for (QWidget* widget : QApplication::topLevelWidgets())
        if (auto* box = qobject_cast<QMessageBox*>(widget); box != nullptr && box->isVisible())
            return box->text();
    return {};
}

inline bool shows(const QWidget& within, const QString& words) {
    for (const auto* label : within.findChildren<QLabel*>())
        if (label->isVisible() && label->text().contains(words)) return true;
    return false;
}

} // namespace rhizograph::app::testing
