#pragma once

#include <QFile>
#include <QXmlStreamReader>
#include <stdexcept>
#include <vector>

namespace rhizograph::app::testing {

/// One text of a translation file.
struct Message {
    QString context;
    QString source;
    QString translation;
    bool finished = true;
};

/// The messages of a .ts file; throws where it cannot be read.
inline std::vector<Message> messagesOf(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) throw std::runtime_error("cannot read " + path.toStdString());
    QXmlStreamReader xml(&file);
    std::vector<Message> out;
    QString context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        if (xml.name() == u"name") {
            context = xml.readElementText();
        } else if (xml.name() == u"source") {
            out.push_back({context, xml.readElementText(), {}, true});
        } else if (xml.name() == u"translation") {
            out.back().finished = !xml.attributes().hasAttribute(QStringLiteral("type"));
            out.back().translation = xml.readElementText();
        }
    }
    if (xml.hasError()) throw std::runtime_error(path.toStdString() + ": " + xml.errorString().toStdString());
    return out;
}

} // namespace rhizograph::app::testing
