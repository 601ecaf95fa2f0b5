#include "figures/figureart.h"

#include <array>
#include <cmath>

namespace rhizograph::app {
namespace {

/// Walks over the letters and numbers of path data.
class PathReader {
public:
    explicit PathReader(QStringView data) : data_(data) {}

    [[nodiscard]] bool atEnd() {
        skipSeparators();
        return position_ >= data_.size();
    }
    [[nodiscard]] qsizetype position() const { return position_; }
    [[nodiscard]] QChar peek() const { return data_.at(position_); }
    QChar take() { return data_.at(position_++); }

    std::optional<double> number() {
        skipSeparators();
        qsizetype end = position_;
        while (end < data_.size() && isNumeric(end)) {
            ++end;
        }
        bool ok = false;
        const double value = data_.mid(position_, end - position_).toDouble(&ok);
        if (!ok || !std::isfinite(value)) {
            return std::nullopt;
        }
        position_ = end;
        return value;
    }

    std::optional<QPointF> point() {
        const auto x = number();
        const auto y = x ? number() : std::nullopt;
        return y ? std::optional(QPointF(*x, *y)) : std::nullopt;
    }

private:
    void skipSeparators() {
        while (position_ < data_.size() && (data_.at(position_).isSpace() || data_.at(position_) == u',')) {
            ++position_;
        }
    }
    [[nodiscard]] bool isNumeric(qsizetype at) const {
        const QChar c = data_.at(at);
        if (c.isDigit() || c == u'.') return true;
        return (c == u'-' || c == u'+') && at == position_; // a sign further on starts the next number
    }

    QStringView data_;
    qsizetype position_ = 0;
};

} // namespace

Result<QPainterPath> parsePathData(QStringView data, const std::string& file, const std::string& place) {
    PathReader reader(data);
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    const auto wrong = [&](const char* reason) {
        return Problem{file, place,
                       reason + std::string(" at character ") + std::to_string(reader.position() + 1)};
    };
    QChar command;
    bool begun = false;
    while (!reader.atEnd()) {
        if (reader.peek().isLetter()) {
            command = reader.take();
        } else if (command != u'C') {
            return wrong("a command letter is missing");
        }
        if (command == u'Z') {
            path.closeSubpath();
        } else if (command == u'M') {
            const auto to = reader.point();
            if (!to) return wrong("M needs two numbers");
            path.moveTo(*to);
            begun = true;
        } else if (command == u'C') {
            const std::array points{reader.point(), reader.point(), reader.point()};
            if (!points[0] || !points[1] || !points[2]) return wrong("C needs six numbers");
            if (!begun) return wrong("a path starts with M");
            path.cubicTo(*points[0], *points[1], *points[2]);
        } else {
            return wrong("only M, C and Z in absolute numbers are known");
        }
    }
    if (path.elementCount() < 2) {
        return Problem{file, place, "the path is empty"};
    }
    return path;
}

} // namespace rhizograph::app
