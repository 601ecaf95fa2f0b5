#include "exam/legend.h"

#include "exam/rowwords.h"
#include "parts/textsize.h"

#include <QPainter>

namespace rhizograph::app {
namespace {

using State = CellFace::State;

} // namespace

Legend::Legend(const QString& lastVisit, QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    entries_ = {{tr("not examined"), State::unexamined, Look::plain, false},
                {lookWord(Look::normal), State::chosen, Look::normal, false},
                {tr("filled in bulk"), State::bulk, Look::normal, false}};
    for (const Look look : {Look::reduced, Look::marked})
        entries_.push_back({lookWord(look), State::chosen, look, false});
    if (!lastVisit.isEmpty()) entries_.push_back({lastVisit, State::unexamined, Look::plain, true});
    entries_.push_back({lookWord(Look::heightened), State::chosen, Look::heightened, false});
}

QSize Legend::sizeHint() const {
    return {600, grown(this, 28)};
}

void Legend::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const qreal scale = textScale(this);
    painter.setFont(sized(this, 15));
    const QFontMetricsF metrics(painter.font());
    qreal x = 0;
    for (const Entry& entry : entries_) {
        const qreal words = metrics.horizontalAdvance(entry.word);
        // What does not fit whole is left out; the first entries matter most.
        if (x + 28 * scale + words > width() + 1) break;
        const QRectF swatch(x + 0.5, height() / 2.0 - 9 * scale, 22 * scale, 18 * scale);
        if (entry.ghost) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(theme.quiet);
            painter.drawRoundedRect(QRectF(x, height() / 2.0 - 2, 18 * scale, 4), 2, 2);
        } else {
            painter.save();
            CellFace face;
            face.rect = swatch;
            face.state = entry.state;
            face.look = entry.look;
            face.corner = 5;
            paintCell(painter, theme, face);
            painter.restore();
        }
        painter.setFont(sized(this, 15));
        painter.setPen(theme.quiet);
        painter.drawText(QRectF(x + 28 * scale, 0, words + 2, height()), Qt::AlignVCenter, entry.word);
        x += 28 * scale + words + 16 * scale;
    }
}

} // namespace rhizograph::app
