// The least a window of this toolkit costs: what the program's start is measured against.
#include <QApplication>
#include <QMainWindow>

int main(int count, char** arguments) {
    QApplication application(count, arguments);
    QMainWindow window;
    window.resize(1280, 800);
    window.show();
    return QApplication::exec();
}
