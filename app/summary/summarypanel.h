#pragma once

#include "summary/beforesigning.h"

#include <QWidget>

class QPlainTextEdit;
class QVBoxLayout;

namespace rhizograph::app {

class Label;
class PlainButton;
class SwitchRow;

/// What stands beside the page: plan and phrases, what the page shows, what to look at before signing, ways
/// out.
class SummaryPanel : public QWidget {
    Q_OBJECT

public:
    /// `phrases` are offered under the plan; the first three as buttons.
    SummaryPanel(const QStringList& phrases, QWidget* parent = nullptr);

    void setPlan(const QString& plan);
    [[nodiscard]] QString plan() const;
    [[nodiscard]] QPlainTextEdit& planField() { return *plan_; }
    /// What may be done here; what may not is not offered.
    struct May {
        bool change = true; ///< findings, and with them what stands before signing
        bool plan = true;
        bool sign = true;
        bool addend = false;
    };
    void allow(const May& may, const QString& state);
    void showWarnings(const std::vector<SigningWarning>& warnings);
    void say(const QString& text); ///< one line on what became of the last way out
    [[nodiscard]] QString said() const;
    void setBusy(bool busy);

    [[nodiscard]] bool brief() const; ///< the short form, for one page
    [[nodiscard]] bool figures() const;
    [[nodiscard]] bool reasons() const;
    [[nodiscard]] bool notExamined() const;
    [[nodiscard]] PlainButton& signButton() { return *sign_; }

signals:
    void planEdited();
    void optionsChanged();
    void goToItem(const rhizograph::FindingKey& key);
    void printPressed();
    void pdfPressed();
    void textPressed();
    void signPressed();
    void addendumWritten(const QString& text);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void buildPlan(QVBoxLayout& column, const QStringList& phrases);
    void buildOptions(QVBoxLayout& column);
    void buildWarnings(QVBoxLayout& column);
    void buildWaysOut(QVBoxLayout& column);
    void buildAddendum(QVBoxLayout& column);
    void addPhrase(const QString& phrase);
    void showPhrases(const QStringList& phrases, QWidget* below);
    Label* heading(const QString& text);

    QWidget* upper_ = nullptr; ///< what scrolls
    Label* state_ = nullptr;
    QPlainTextEdit* plan_ = nullptr;
    QWidget* phrases_ = nullptr;
    SwitchRow* brief_ = nullptr;
    SwitchRow* figures_ = nullptr;
    SwitchRow* reasons_ = nullptr;
    SwitchRow* notExamined_ = nullptr;
    QWidget* warnings_ = nullptr;
    QVBoxLayout* warningRows_ = nullptr;
    PlainButton* pdf_ = nullptr;
    PlainButton* sign_ = nullptr;
    Label* said_ = nullptr;
    QWidget* addendum_ = nullptr;
    QPlainTextEdit* addendumField_ = nullptr;
};

} // namespace rhizograph::app
