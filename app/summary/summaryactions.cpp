#include "exchange/narrative.h"
#include "record/store.h"
#include "shell/visitsession.h"
#include "summary/pagepreview.h"
#include "summary/pdfjob.h"
#include "summary/summarypage.h"
#include "summary/summarypanel.h"
#include "summary/wordseditor.h"

#include <QClipboard>
#include <QFileDialog>
#include <QGuiApplication>
#include <QPrintDialog>
#include <QPrinter>
#include <QStackedWidget>
#include <QStandardPaths>

// What the person does on the summary: changing words, the ways out, addenda.

namespace rhizograph::app {
namespace {

/// The sheet in words for other programs, in the language of the chart, from the page's own content, so that
/// changed words go along.
std::string textOf(const PageContent& content) {
    Narrative narrative;
    const auto add = [&](const QString& title, const QString& bold, const QString& text,
                         const QString& quiet) {
        narrative.sections.push_back(
            {{}, title.toStdString(), bold.toStdString(), text.toStdString(), quiet.toStdString()});
    };
    const PageIdentity& who = content.identity;
    add(who.name, {}, QStringList{who.about, who.record, who.date}.join(QStringLiteral(", ")), {});
    for (const PageSection& section : content.sections)
        add(section.title, section.bold, section.text, section.quiet);
    add(QStringLiteral("Plan"), {},
        content.plan.trimmed().isEmpty() ? QStringLiteral("No plan written.") : content.plan, {});
    add(QStringLiteral("Signature"), {},
        content.signature
            ? QStringLiteral("Signed by %1, %2").arg(content.signature->by, content.signature->at)
            : QStringLiteral("Draft, not signed."),
        {});
    for (const PageAddendum& each : content.addenda)
        add(QStringLiteral("Addendum"), {}, each.text, each.by + QStringLiteral(", ") + each.at);
    narrative.cautions = content.cautions.toStdString();
    return asText(narrative);
}

} // namespace

void SummaryPage::editSection(const QString& section) {
    if (session_.readOnly() || isSigned()) return;
    for (const PageSection& each : generatedSections()) {
        if (each.id != section) continue;
        const auto found = edits_.find(section);
        const QString generated = editableWords(each);
        editor_->open(section, each.title, generated,
                      found == edits_.end() ? generated : found->second.words);
        side_->setCurrentWidget(editor_);
        return;
    }
}

void SummaryPage::acceptWords(const QString& section, const QString& words, const QString& generated) {
    SummaryEdit edit{words, generated, session_.start().userName};
    const auto found = edits_.find(section);
    const bool same = found == edits_.end() ? words == generated : found->second.words == words;
    if (!same) {
        const Outcome written =
            store_.addNote(session_.start().visit.id, noteOf(section, edit).toStdString());
        if (!written) {
            panel_->say(QString::fromStdString(written.problems().front().text()));
            side_->setCurrentIndex(0);
            return;
        }
        if (words == generated)
            edits_.erase(section);
        else
            edits_[section] = std::move(edit);
    }
    side_->setCurrentIndex(0);
    refresh();
}

void SummaryPage::askPdf() {
    const auto& visit = session_.start().visit;
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    // No name of a person in the name of a file.
    const QString name = QStringLiteral("%1/visit-%2-%3.pdf")
                             .arg(folder)
                             .arg(visit.number)
                             .arg(QString::fromStdString(visit.date));
    const QString path =
        QFileDialog::getSaveFileName(this, tr("Write the page as a PDF file"), name, tr("PDF files (*.pdf)"));
    if (!path.isEmpty()) exportPdf(path);
}

void SummaryPage::exportPdf(const QString& path) {
    if (job_->busy()) return;
    flushPlan();
    panel_->setBusy(true);
    panel_->say(tr("Writing %1 …").arg(path));
    job_->write(content(), art_, paper_, path);
}

void SummaryPage::pdfDone(const QString& path, const QString& problem) {
    panel_->setBusy(false);
    panel_->say(problem.isEmpty() ? tr("Written to %1").arg(path) : tr("Not written: %1").arg(problem));
    if (problem.isEmpty()) log(AuditAction::exported, QStringLiteral("PDF ") + path);
    emit pdfWritten(path, problem.isEmpty());
}

void SummaryPage::askPrint() {
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageSize(QPageSize(paper_));
    QPrintDialog dialog(&printer, this);
    dialog.setWindowTitle(tr("Print the page"));
    if (dialog.exec() == QDialog::Accepted) printOn(printer);
}

void SummaryPage::printOn(QPrinter& printer) {
    flushPlan();
    printer.setFullPage(true); // the page brings its own margins
    printer.setDocName(tr("Visit %1").arg(session_.start().visit.number));
    const QPageSize::PageSizeId chosen = printer.pageLayout().pageSize().id();
    const PageDocument document(content(), art_, chosen);
    if (!document.paintOn(printer)) {
        panel_->say(tr("Not printed: the printer could not be started."));
        return;
    }
    log(AuditAction::printed, printer.printerName());
    panel_->say(tr("Handed to the printer."));
}

void SummaryPage::copyText() {
    flushPlan();
    QGuiApplication::clipboard()->setText(QString::fromStdString(textOf(content())));
    log(AuditAction::exported, QStringLiteral("text"));
    panel_->say(tr("Copied as text."));
}

void SummaryPage::addAddendum(const QString& text) {
    const Outcome written = store_.addAddendum(session_.start().visit.id, text.toStdString());
    if (!written) {
        panel_->say(QString::fromStdString(written.problems().front().text()));
        return;
    }
    readRecord();
    allowWhatIsAllowed();
    panel_->say(tr("Added."));
    refresh();
}

void SummaryPage::log(AuditAction action, const QString& detail) {
    const Outcome written = store_.log(action, session_.start().visit.id.text(), detail.toStdString());
    if (!written)
        panel_->say(tr("The audit could not be written: %1")
                        .arg(QString::fromStdString(written.problems().front().text())));
}

} // namespace rhizograph::app
