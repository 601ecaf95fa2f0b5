#pragma once

#include "page/pagedocument.h"

#include <memory>
#include <QObject>
#include <QThread>

namespace rhizograph::app {

/// Writes a page as a PDF file beside the user interface.
class PdfJob : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;
    ~PdfJob() override; ///< waits for the file to be whole

    [[nodiscard]] bool busy() const { return thread_ != nullptr; }
    /// Precondition: not busy. The document is laid out anew on the other thread, so that none is shared.
    void write(const PageContent& content, std::shared_ptr<const FigureArt> art, QPageSize::PageSizeId paper,
               const QString& path);

signals:
    /// `problem` is empty when the file was written.
    void finished(const QString& path, const QString& problem);

private:
    std::unique_ptr<QThread> thread_;
};

} // namespace rhizograph::app
