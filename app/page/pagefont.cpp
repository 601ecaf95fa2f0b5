#include "page/pagefont.h"

#include <QFontDatabase>
#include <QFontInfo>
#include <QFontMetricsF>

namespace rhizograph::app {
namespace {

constexpr qreal leading = 1.32; // line height over size

/// Embedding is proved with this family, which the package depends on.
QString family() {
    const QString ours = QStringLiteral("DejaVu Sans");
    return QFontDatabase::hasFamily(ours) ? ours
                                          : QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
}

} // namespace

QFont pageFont(qreal points, QFont::Weight weight) {
    QFont font(family());
    font.setPixelSize(qRound(points * unitsPerPoint));
    font.setWeight(weight);
    font.setHintingPreference(QFont::PreferNoHinting);
    // Spaced letters are never joined; a sixty-fourth of a unit cannot be seen.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 1.0 / 64);
    return font;
}

PageText::PageText(const std::vector<PageRun>& runs, qreal points, qreal width, Qt::Alignment alignment)
    : lineHeight_(points * unitsPerPoint * leading) {
    QString words;
    QList<QTextLayout::FormatRange> formats;
    for (const PageRun& run : runs) {
        QTextCharFormat format;
        format.setFontWeight(run.weight);
        format.setForeground(run.color);
        QString text = run.text;
        text.replace(u'\n', QChar::LineSeparator);
        formats.push_back({static_cast<int>(words.size()), static_cast<int>(text.size()), format});
        words += text;
    }
    layout_ = std::make_shared<QTextLayout>(words, pageFont(points));
    layout_->setFormats(formats);
    QTextOption option(alignment);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout_->setTextOption(option);
    layout_->beginLayout();
    for (QTextLine line = layout_->createLine(); line.isValid(); line = layout_->createLine()) {
        line.setLineWidth(width);
        line.setPosition({0, 0}); // every line is placed by itself
    }
    layout_->endLayout();
}

} // namespace rhizograph::app
