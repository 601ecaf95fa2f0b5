#include "page/pagedocument.h"
#include "page/pagefont.h"

#include <QCoreApplication>
#include <QPdfWriter>
#include <QSaveFile>

namespace rhizograph::app {

Outcome writePdf(const PageDocument& document, const QString& path) {
    const auto problem = [&](const QString& reason) {
        return Problem{path.toStdString(), "", reason.toStdString()};
    };
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return problem(file.errorString());
    // Readable by the owner only: it is about a patient.
    file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner);
    {
        QPdfWriter writer(&file);
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
        writer.setResolution(pageResolution);
        writer.setPageSize(QPageSize(document.paper()));
        writer.setPageMargins({});
        writer.setTitle(QCoreApplication::translate("Page", "Low back and leg examination"));
        writer.setCreator(QStringLiteral("Rhizograph"));
        if (!document.paintOn(writer)) return problem(QStringLiteral("the page could not be written"));
    }
    if (!file.commit()) return problem(file.errorString());
    return {};
}

} // namespace rhizograph::app
