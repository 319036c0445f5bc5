// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/real_program.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QStandardPaths>
#include <QTest>
#include <QtEndian>
#include <unistd.h>
#include <utility>

namespace undermark::test {

namespace {

constexpr double kFrozen = 1.0;     // s of processor time
constexpr int kLongest = 60000;     // ms by the clock, on a machine however busy
constexpr int kNoDoubleTap = 750;   // ms between two touches of one place
constexpr int kSlideSteps = 12;          // of a slide, as Hand's
constexpr int kAtRest = 400;        // ms without a change
constexpr QSize kDisplay(2048, 1200);

// The picture of a display as Xvfb keeps it in a file, in the form of xwd (XWDFile.h of X11):
// a header of big-endian words, the colour map, then 32 bits a pixel.
QImage displayPicture(const QString& file)
{
    QFile dump(file);
    if (!dump.open(QIODevice::ReadOnly))
        return {};
    const QByteArray all = dump.readAll();
    const auto word = [&](int index) {
        return qFromBigEndian<quint32>(all.constData() + 4 * index);
    };
    if (all.size() < 100)
        return {};
    constexpr int kHeaderSize = 0, kWidth = 4, kHeight = 5, kBytesPerLine = 12, kColours = 19;
    const qsizetype start = word(kHeaderSize) + 12 * qsizetype(word(kColours));
    const int width = int(word(kWidth)), height = int(word(kHeight));
    if (all.size() < start + qsizetype(word(kBytesPerLine)) * height)
        return {};
    return QImage(reinterpret_cast<const uchar*>(all.constData() + start), width, height,
                  int(word(kBytesPerLine)), QImage::Format_RGB32)
        .copy();
}

// xdotool's words.
QStringList to(QPoint place)
{
    return {"mousemove", QString::number(place.x()), QString::number(place.y())};
}

// Slowly, and held at its end, so that the page does not fly on.
QStringList slide(const QLine& way)
{
    QStringList words = to(way.p1()) + QStringList{"mousedown", "1"};
    for (int step = 1; step <= kSlideSteps; ++step)
        words += QStringList{"sleep", "0.01"} + to(way.p1() + (way.p2() - way.p1()) * step / kSlideSteps);
    return words + QStringList{"sleep", "0.15", "mouseup", "1"};
}

} // namespace

QString RealProgram::missing()
{
    for (const QString program : {"Xvfb", "xdotool"})
        if (QStandardPaths::findExecutable(program).isEmpty())
            return "needs " + program + ": install " + program.toLower();
    return {};
}

RealProgram::RealProgram(const QStringList& arguments, QSize size) : m_size(size)
{
    const QString screen = QString("%1x%2x24").arg(kDisplay.width()).arg(kDisplay.height());
    m_display.setProgram("Xvfb");
    m_display.setArguments({"-displayfd", "1", "-screen", "0", screen, "-fbdir", m_folder.path()});
    m_display.start(QIODevice::ReadOnly);
    if (!QTest::qWaitFor([this] { return m_display.bytesAvailable() > 1; }, kLongest))
        return;
    m_number = ":" + QString(m_display.readAllStandardOutput()).trimmed();
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert("DISPLAY", m_number);
    environment.insert("LC_ALL", "C");
    environment.insert("XDG_CONFIG_HOME", m_folder.filePath("config"));
    environment.insert("XDG_RUNTIME_DIR", m_folder.path());
    for (const char* unwanted : {"QT_QPA_PLATFORM", "WAYLAND_DISPLAY", "LANGUAGE"})
        environment.remove(unwanted);
    m_program.setProcessEnvironment(environment);
    m_program.start(UNDERMARK_SCREEN_PROGRAM,
                    QStringList{"--size", QString("%1x%2").arg(size.width()).arg(size.height())} + arguments);
    // Until something is drawn: a display without a window is black.
    if (!QTest::qWaitFor([this] { return picture().pixelColor(4, m_size.height() / 2).lightness() > 128; }, kLongest))
        qWarning("the program has drawn nothing");
}

RealProgram::~RealProgram()
{
    end();
    m_display.terminate();
    m_display.waitForFinished();
}

QImage RealProgram::picture() const
{
    const QImage all = displayPicture(m_folder.filePath("Xvfb_screen0"));
    return all.isNull() ? QImage(m_size, QImage::Format_RGB32) : all.copy(QRect({}, m_size));
}

double RealProgram::worked() const
{
    const QString pid = QString::number(m_program.processId());
    QFile stat("/proc/" + pid + "/task/" + pid + "/stat");
    if (!stat.open(QIODevice::ReadOnly))
        return 0.0;
    // After the name in brackets: state is field 3, utime 14, stime 15 (proc(5)).
    const QList<QByteArray> fields = stat.readAll().split(')').last().trimmed().split(' ');
    return (fields.value(11).toDouble() + fields.value(12).toDouble()) / double(sysconf(_SC_CLK_TCK));
}

bool RealProgram::sleeps() const
{
    const QDir tasks("/proc/" + QString::number(m_program.processId()) + "/task");
    for (const QString& task : tasks.entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
        QFile stat(tasks.filePath(task + "/stat"));
        if (stat.open(QIODevice::ReadOnly) && stat.readAll().split(')').last().trimmed().startsWith('R'))
            return false;
    }
    return true;
}

bool RealProgram::move(const QLine& gesture)
{
    if (std::exchange(m_last, gesture) == gesture)
        QTest::qWait(kNoDoubleTap);
    const QImage before = picture();
    const double start = worked();
    QProcess tool;
    tool.setProcessEnvironment(m_program.processEnvironment());
    tool.start("xdotool", gesture.isNull() ? to(gesture.p1()) + QStringList{"click", "1"} : slide(gesture));
    if (!tool.waitForFinished() || tool.exitCode() != 0)
        return false;
    if (!gesture.isNull())
        return atRest();
    const auto moved = [&] { return picture() != before || worked() - start > kFrozen; };
    return QTest::qWaitFor(moved, kLongest) && picture() != before && atRest();
}

bool RealProgram::atRest()
{
    QElapsedTimer since;
    since.start();
    QImage last = picture();
    double start = worked();
    while (since.elapsed() < kAtRest) {
        QTest::qWait(20);
        if (worked() - start > kFrozen)
            return false;
        const QImage now = picture();
        if (now != last)
            start = worked();
        if (now != last || !sleeps()) // not merely waiting for its turn on a busy machine
            since.restart();
        last = now;
    }
    return true;
}

QByteArray RealProgram::printed()
{
    return m_program.readAllStandardError();
}

bool RealProgram::end()
{
    if (m_program.state() == QProcess::NotRunning)
        return true;
    m_program.terminate();
    return m_program.waitForFinished(kLongest);
}

QString walk(const QStringList& arguments, QSize size, const QList<QLine>& gestures)
{
    RealProgram program(arguments, size);
    if (!program.atRest())
        return "it does not come to rest at the start";
    for (qsizetype i = 0; i < gestures.size(); ++i) {
        if (!program.move(gestures[i]))
            return QString("frozen after gesture %1").arg(i + 1);
    }
    if (!program.end())
        return "it does not end";
    const QByteArray printed = program.printed();
    return printed.contains("qrc:/") ? QString::fromUtf8(printed) : QString(); // a warning about a page
}

} // namespace undermark::test
