// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/line_source.h"

#include <QFile>
#include <cerrno>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace undermark {

LineSource::~LineSource()
{
    m_notifier.reset();   // before what it watches is closed
    if (m_handle >= 0)
        ::close(m_handle);
}

bool LineSource::open(const QString& file)
{
    const QByteArray name = QFile::encodeName(file);
    struct stat what {};
    if (::stat(name.constData(), &what) != 0 || S_ISDIR(what.st_mode))
        return false;
    const int flags = O_NONBLOCK | O_NOCTTY | O_CLOEXEC;
    // A pipe to read and write, so that it does not end when its writer does.
    if (S_ISFIFO(what.st_mode))
        m_handle = ::open(name.constData(), O_RDWR | flags);
    if (m_handle < 0)
        m_handle = ::open(name.constData(), O_RDONLY | flags);
    if (m_handle < 0)
        return false;
    if (S_ISREG(what.st_mode)) {
        connect(&m_play, &QTimer::timeout, this, &LineSource::playLine);
        m_play.start(1000 / kLinesPerSecond);
        return true;
    }
    m_notifier = std::make_unique<QSocketNotifier>(m_handle, QSocketNotifier::Read);
    connect(m_notifier.get(), &QSocketNotifier::activated, this, [this] {
        read();
        while (passLine())
            ;
        if (m_ended) {
            m_notifier->setEnabled(false);
            emit ended();
        }
    });
    return true;
}

void LineSource::read()
{
    char text[4096];
    const ssize_t length = ::read(m_handle, text, sizeof text);
    if (length < 0 && (errno == EAGAIN || errno == EINTR))
        return;
    if (length > 0) {
        m_waiting.append(text, int(length));
        return;
    }
    m_ended = true;
    if (!m_waiting.isEmpty()) // a last line without its end
        m_waiting.append('\n');
}

void LineSource::playLine()
{
    while (!passLine()) {
        if (m_ended) {
            m_play.stop();
            emit ended();
            return;
        }
        read();
    }
}

bool LineSource::passLine()
{
    const auto end = m_waiting.indexOf('\n');
    if (end < 0) {
        if (m_waiting.size() > kLongest) {
            m_tooLong = true;
            m_waiting.clear();
        }
        return false;
    }
    const QByteArray text = m_tooLong || end > kLongest ? QByteArray() : m_waiting.left(end);
    m_waiting.remove(0, end + 1);
    m_tooLong = false;
    emit line(text);
    return true;
}

} // namespace undermark
