// Linked into a program, it ends it when its first window has been painted and prints how much memory it
// held.
#include <cstdio>
#include <fstream>
#include <QApplication>
#include <QEvent>
#include <QMainWindow>
#include <QTimer>
#include <string>
#include <unistd.h>

namespace {

/// A line of /proc/self/status in kB, e.g. "VmRSS:".
long memory(const std::string& name) {
    std::ifstream status("/proc/self/status");
    for (std::string word; status >> word;)
        if (word == name) {
            long kilobytes = 0;
            status >> kilobytes;
            return kilobytes;
        }
    return 0;
}

class FirstPaint : public QObject {
public:
    using QObject::QObject;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint && qobject_cast<QMainWindow*>(watched) != nullptr && !seen_) {
            seen_ = true; // its children are painted in the same go; what is queued comes after
            QTimer::singleShot(0, this, [] {
                std::printf("%ld %ld\n", memory("VmRSS:"), memory("RssAnon:"));
                std::fflush(stdout);
                _exit(0);
            });
        }
        return QObject::eventFilter(watched, event);
    }

private:
    bool seen_ = false;
};

void watch() {
    qApp->installEventFilter(new FirstPaint(qApp));
}

} // namespace

Q_COREAPP_STARTUP_FUNCTION(watch)
