#pragma once

#include <QWidget>

class QVBoxLayout;

namespace rhizograph::app {

class Label;
class PlainButton;

/// Why the clinic cannot be opened, in plain words, and what can be done about it.
class ProblemPage : public QWidget {
    Q_OBJECT

public:
    explicit ProblemPage(QWidget* parent = nullptr);
    void say(const QString& title, const QString& file, const QString& reason);
    [[nodiscard]] QString text() const;

signals:
    void retryWanted();
    void restoreWanted();
    void otherFileWanted();
    void quitWanted();

private:
    Label* title_;
    Label* file_;
    Label* reason_;
};

} // namespace rhizograph::app
