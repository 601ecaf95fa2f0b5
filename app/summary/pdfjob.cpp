#include "summary/pdfjob.h"

namespace rhizograph::app {

PdfJob::~PdfJob() {
    if (thread_ != nullptr) thread_->wait();
}

void PdfJob::write(const PageContent& content, std::shared_ptr<const FigureArt> art,
                   QPageSize::PageSizeId paper, const QString& path) {
    const auto problem = std::make_shared<QString>();
    thread_.reset(QThread::create([content, art = std::move(art), paper, path, problem] {
        const Outcome written = writePdf(PageDocument(content, art, paper), path);
        if (!written) *problem = QString::fromStdString(written.problems().front().text());
    }));
    connect(thread_.get(), &QThread::finished, this, [this, path, problem] {
        thread_->wait();
        thread_.release()->deleteLater();
        emit finished(path, *problem);
    });
    thread_->start();
}

} // namespace rhizograph::app
