#pragma once

#include "page/pagedocument.h"
#include "summary/summaryedits.h"

#include <memory>
#include <QTimer>
#include <QWidget>

class QBoxLayout;
class QPrinter;
class QScrollArea;
class QStackedWidget;

namespace rhizograph {
class Store;
}

namespace rhizograph::app {

class PagePreview;
class PdfJob;
class SummaryPanel;
class VisitSession;
class WordsEditor;

/// The chart page of the visit as it will print, with the plan, changes of words, signing and every way out.
/// Whatever leaves the program is written into the record's audit.
class SummaryPage : public QWidget {
    Q_OBJECT

public:
    /// `art` may be null: the page then has no figures.
    SummaryPage(VisitSession& session, Store& store, std::shared_ptr<const FigureArt> art,
                QWidget* parent = nullptr);
    ~SummaryPage() override;

    [[nodiscard]] SummaryPanel& panel() { return *panel_; }
    [[nodiscard]] PagePreview& preview() { return *preview_; }
    [[nodiscard]] WordsEditor& editor() { return *editor_; }
    [[nodiscard]] PageContent content() const;
    [[nodiscard]] bool isSigned() const { return signature_.has_value(); }

    void editSection(const QString& section);
    void exportPdf(const QString& path); ///< on a thread of its own; pdfWritten tells the end
    void printOn(QPrinter& printer);
    void copyText();
    void addAddendum(const QString& text);
    void flushPlan(); ///< hands over what was typed and not yet recorded

signals:
    /// The window signs: it first waits until every finding is on disk, then opens the visit again, read
    /// only.
    void signRequested();
    void goToItem(const rhizograph::FindingKey& key);
    void pdfWritten(const QString& path, bool written);

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    void readRecord();
    void allowWhatIsAllowed();
    void refreshSoon();
    void refresh();
    void acceptWords(const QString& section, const QString& words, const QString& generated);
    void askPdf();
    void askPrint();
    void pdfDone(const QString& path, const QString& problem);
    void log(AuditAction action, const QString& detail);
    [[nodiscard]] std::vector<PageSection> generatedSections() const;
    [[nodiscard]] PageIdentity identity() const;
    void shorten(std::vector<PageSection>& sections) const;
    void addAcknowledgements(std::vector<PageSection>& sections) const;

    VisitSession& session_;
    Store& store_;
    std::shared_ptr<const FigureArt> art_;
    SummaryEdits edits_;
    std::optional<PageSignature> signature_;
    std::vector<PageAddendum> addenda_;
    std::vector<Exam> earlierExams_; ///< oldest first
    QString clinic_;
    QString letterhead_;
    QPageSize::PageSizeId paper_;
    QTimer planTimer_;
    QTimer refreshTimer_;
    bool stale_ = true;
    QBoxLayout* layout_ = nullptr;
    QScrollArea* desk_ = nullptr;
    PagePreview* preview_ = nullptr;
    QStackedWidget* side_ = nullptr;
    SummaryPanel* panel_ = nullptr;
    WordsEditor* editor_ = nullptr;
    PdfJob* job_ = nullptr;
};

} // namespace rhizograph::app
