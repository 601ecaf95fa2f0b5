#include "compare/eventscard.h"
#include "compare/trendpage.h"
#include "exchange/comparison.h"
#include "parts/textsize.h"
#include "record/store.h"
#include "shell/theme.h"
#include "shell/visitsession.h"

#include <QBuffer>
#include <QFileDialog>
#include <QImage>
#include <QMenu>
#include <QPainter>
#include <QSaveFile>
#include <QSvgGenerator>

// The course as a file: what the chart shows, or all of its figures.

namespace rhizograph::app {
namespace {

constexpr int captionHeight = 56;
constexpr qreal pixelsPerPoint = 2; ///< sharp on paper too

QString legend() {
    return TrendPage::tr("Left: solid line, filled dots. Right: dashed line, hollow dots. A triangle or "
                         "diamond marks a change larger "
                         "than its threshold. A gap: not examined. Decision support, not a diagnosis.");
}

void paintSheet(QPainter& painter, const TrendChart& chart) {
    const Theme& theme = Theme::of(&chart);
    painter.fillRect(0, 0, chart.width(), chart.height() + captionHeight, theme.raised);
    chart.paintTo(painter, chart.rect());
    painter.setFont(sized(&chart, 15));
    painter.setPen(theme.quiet);
    painter.drawText(QRect(16, chart.height() + 4, chart.width() - 32, captionHeight - 8),
                     Qt::AlignLeft | Qt::TextWordWrap, legend());
}

QByteArray asPng(const TrendChart& chart) {
    const QSize size(chart.width(), chart.height() + captionHeight);
    QImage image(size * pixelsPerPoint, QImage::Format_RGB32);
    image.setDevicePixelRatio(pixelsPerPoint);
    QPainter painter(&image);
    paintSheet(painter, chart);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

QByteArray asSvg(const TrendChart& chart) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QSvgGenerator svg;
    svg.setOutputDevice(&buffer);
    svg.setResolution(96); // of CSS, so that its pixels are the screen's
    svg.setSize({chart.width(), chart.height() + captionHeight});
    svg.setViewBox(QRect(0, 0, chart.width(), chart.height() + captionHeight));
    svg.setTitle(TrendPage::tr("Course over all visits"));
    QPainter painter(&svg);
    paintSheet(painter, chart);
    painter.end();
    return bytes;
}

Outcome writeFile(const QString& path, const QByteArray& bytes) {
    QSaveFile file(path);
    // What leaves the program about a patient is for who wrote it, like everything else it writes.
    const bool written = file.open(QIODevice::WriteOnly) &&
                         file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner) &&
                         file.write(bytes) == bytes.size() && file.commit();
    if (written) return {};
    return Problem{path.toStdString(), "", "cannot be written: " + file.errorString().toStdString()};
}

} // namespace

Outcome TrendPage::exportTo(const QString& path, Export what) {
    const char* const names[] = {"course as PNG", "course as SVG", "course as CSV"};
    const std::string patient = session_.start().visit.patient.text();
    if (auto noted = store_.log(AuditAction::exported, patient, names[static_cast<int>(what)]); !noted)
        return noted;
    switch (what) {
    case Export::png:
        return writeFile(path, asPng(*chart_));
    case Export::svg:
        return writeFile(path, asSvg(*chart_));
    case Export::csv:
        break;
    }
    return writeFile(path, QByteArray::fromStdString(trendCsv(trend_, events_->events())));
}

void TrendPage::askExport() {
    struct Choice {
        QString name;
        QString suffix;
        Export what;
    };
    QMenu menu(this);
    for (const Choice& choice : {Choice{tr("Chart as PNG …"), QStringLiteral("png"), Export::png},
                                 Choice{tr("Chart as SVG …"), QStringLiteral("svg"), Export::svg},
                                 Choice{tr("Figures as CSV …"), QStringLiteral("csv"), Export::csv}})
        menu.addAction(choice.name, this, [this, choice] {
            const QString path =
                QFileDialog::getSaveFileName(this, choice.name, QStringLiteral("course.") + choice.suffix,
                                             QStringLiteral("*.") + choice.suffix);
            if (path.isEmpty()) return;
            const Outcome outcome = exportTo(path, choice.what);
            say(outcome ? tr("Written: %1").arg(path)
                        : QString::fromStdString(outcome.problems().front().text()));
        });
    menu.exec(exportButton().mapToGlobal(QPoint(0, exportButton().height())));
}

} // namespace rhizograph::app
