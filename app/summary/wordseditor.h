#pragma once

#include <QWidget>

class QLabel;
class QPlainTextEdit;

namespace rhizograph::app {

class Label;
class PlainButton;

/// Gives a field for longer text our outline; the one with the keyboard wears the action's color.
void dressField(QPlainTextEdit& field);

/// Changes the words of one section; what differs from the program's words stands below, marked by more than
/// color.
class WordsEditor : public QWidget {
    Q_OBJECT

public:
    explicit WordsEditor(QWidget* parent = nullptr);

    void open(const QString& section, const QString& title, const QString& generated, const QString& words);
    [[nodiscard]] const QString& section() const { return section_; }
    [[nodiscard]] QPlainTextEdit& field() { return *field_; }
    [[nodiscard]] QString difference() const;

signals:
    void accepted(const QString& section, const QString& words, const QString& generated);
    void cancelled();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void showDifference();

    QString section_;
    QString generated_;
    Label* title_ = nullptr;
    QPlainTextEdit* field_ = nullptr;
    QLabel* difference_ = nullptr;
};

} // namespace rhizograph::app
