// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the programs write is for their user's eyes, and nothing leaves the machine.
//
// What the network tests prove: during these runs no socket but a local (Unix) one was
// asked for, because the kernel would have ended the program; and no library of the
// command line but libc itself can open one. The command line itself can open one kind:
// frames of a CAN bus, for `--source can:` alone, which is no network (nothing of it has an
// address beyond the car); it names no function that could reach further. So can the screen,
// for its own `--source can:`; its libraries can reach further (they talk to the display), so
// for them only the run counts.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QDir>
#include <QDirIterator>
#include <QFileInfo>
#include <QRegularExpression>
#include <QTest>
#include <SQLiteCpp/SQLiteCpp.h>
#include <cstddef>
#include <linux/filter.h>
#include <linux/seccomp.h>
#include <sys/prctl.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/syscall.h>

using namespace undermark::test;

namespace {

// From here on, and in every program started from here, socket() of any family but
// `allowed` ends the process (SIGSYS).
void forbidAllBut(unsigned allowed)
{
    sock_filter rules[] = {
        BPF_STMT(BPF_LD | BPF_W | BPF_ABS, offsetof(seccomp_data, nr)),
        BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, __NR_socket, 0, 3),
        BPF_STMT(BPF_LD | BPF_W | BPF_ABS, offsetof(seccomp_data, args[0])),
        BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, allowed, 1, 0),
        BPF_STMT(BPF_RET | BPF_K, SECCOMP_RET_KILL_PROCESS),
        BPF_STMT(BPF_RET | BPF_K, SECCOMP_RET_ALLOW),
    };
    const sock_fprog program{static_cast<unsigned short>(std::size(rules)), rules};
    if (prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) != 0
        || prctl(PR_SET_SECCOMP, SECCOMP_MODE_FILTER, &program) != 0)
        _exit(77);
}

QProcess::ExitStatus runWithoutNetwork(QProcess& process, const QString& program, const QStringList& words,
                                       unsigned allowed = AF_UNIX)
{
    process.setChildProcessModifier([allowed] { forbidAllBut(allowed); });
    process.start(program, words);
    process.waitForFinished(120'000);
    return process.exitStatus();
}

QStringList linesOf(const QString& program, const QStringList& words)
{
    QProcess process;
    process.start(program, words);
    process.waitForFinished();
    return QString::fromLocal8Bit(process.readAllStandardOutput()).split('\n', Qt::SkipEmptyParts);
}

// Functions of the network that a binary names.
QStringList networkOf(const QString& binary)
{
    static const QRegularExpression name("^\\s+[UW] (socket|connect|getaddrinfo|gethostbyname|bind|listen)(@|$)");
    QStringList named;
    for (const QString& line : linesOf("nm", {"-D", "--undefined-only", binary}))
        if (const auto found = name.match(line); found.hasMatch())
            named << found.captured(1);
    return named;
}

} // namespace

class PrivacyTest : public QObject {
    Q_OBJECT

    static QString beside(const CliRunner& run, const char* name)
    {
        return QFileInfo(run.logbook()).dir().filePath(name);
    }

private slots:
    void everyFileThatIsWrittenIsItsOwnersAlone()
    {
        ::umask(0);   // the laxest that a user can have
        const CliRunner run;
        QVERIFY(run.prepareCar());
        {
            // A reader keeps the write-ahead log and its index alive beside the file.
            SQLite::Database reader(run.logbook().toStdString(), SQLite::OPEN_READWRITE);
            reader.execAndGet("SELECT count(*) FROM fills");
            for (const char* command : {"fill add --litres 30 --trip-meter-km 400 --full", "backup"})
                QCOMPARE(run(command).exitCode, 0);
            QCOMPARE(run("export --csv " + beside(run, "tables")).exitCode, 0);
            QCOMPARE(run("export --bundle " + beside(run, "bundle")).exitCode, 0);
            QCOMPARE(run("merge " + beside(run, "bundle")).exitCode, 0);
            QCOMPARE(run("check --salvage " + beside(run, "salvaged")).exitCode, 0);
            QVERIFY(QFileInfo::exists(run.logbook() + "-wal") && QFileInfo::exists(run.logbook() + "-shm"));
            int looked = 0;
            QDirIterator files(QFileInfo(run.logbook()).path(), QDir::Files, QDirIterator::Subdirectories);
            while (files.hasNext()) {
                const QString file = files.next();
                struct stat status{};
                QCOMPARE(::stat(file.toLocal8Bit().constData(), &status), 0);
                if (file.endsWith("points.csv"))   // the test's own
                    continue;
                ++looked;
                QVERIFY2((status.st_mode & 07777U) == 0600U, qPrintable(file));
            }
            QVERIFY(looked >= 14);
        }
        ::umask(022);
    }

    void theFilterItselfEndsAProgramThatAsksForTheNetwork()
    {
        QProcess python;
        const auto how = runWithoutNetwork(python, "python3", {"-c", "import socket; socket.socket()"});
        if (python.error() == QProcess::FailedToStart)
            QSKIP("python3 is not there");
        if (python.exitCode() == 77 && how == QProcess::NormalExit)
            QSKIP("this kernel takes no filter");
        QCOMPARE(how, QProcess::CrashExit);
    }

    void theCommandLineNeverAsksForTheNetwork()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString route = run.file("r.csv", "at_km,name,mode,fuel,price_per_l\n0,Start,town,none,\n"
                                                "200,Pump,open-road,pump,1.8\n400,End,,none,\n");
        for (const QString& line : QStringList{
                 "range", "reserve", "rates", "log --json", "check", "vehicle show", "vehicle list",
                 "fill add --litres 30 --trip-meter-km 400 --full", "trip add --km 5 --mode town", "plan " + route,
                 "export --bundle " + beside(run, "b"), "merge " + beside(run, "b"), "backup", "--help",
                 "check --salvage " + beside(run, "s")}) {
            QProcess process;
            const auto how = runWithoutNetwork(process, QStringLiteral(UNDERMARK_CLI),
                                               QStringList{"--logbook", run.logbook()} + line.split(' '));
            if (how == QProcess::NormalExit && process.exitCode() == 77)
                QSKIP("this kernel takes no filter");
            QVERIFY2(how == QProcess::NormalExit, qPrintable(line));
            QVERIFY2(process.exitCode() == 0, qPrintable(line + ": " + process.readAllStandardError()));
        }
    }

    // Two words of one command line, so that the two families are told apart.
    void onlyACanSourceAsksForASocketAndOnlyForOneOfFrames()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString table = run.file("t.csv", "t_s,signal\n0,1.5\n1,1.5\n");
        const QStringList watch{"--logbook", run.logbook(), "watch", "--speed-up", "1000", "--source"};
        QProcess file, bus, forbidden;
        const auto withFile = runWithoutNetwork(file, QStringLiteral(UNDERMARK_CLI), watch + QStringList{table});
        if (withFile == QProcess::NormalExit && file.exitCode() == 77)
            QSKIP("this kernel takes no filter");
        QCOMPARE(withFile, QProcess::NormalExit);
        QCOMPARE(file.exitCode(), 0);
        const QStringList can = watch + QStringList{"can:nosuchbus"};
        QCOMPARE(runWithoutNetwork(bus, QStringLiteral(UNDERMARK_CLI), can, AF_CAN), QProcess::NormalExit);
        QCOMPARE(bus.exitCode(), 1); // there is no such bus
        QCOMPARE(runWithoutNetwork(forbidden, QStringLiteral(UNDERMARK_CLI), can), QProcess::CrashExit);
    }

    void noLibraryOfTheCommandLineButLibcCanOpenASocket()
    {
        QStringList own = networkOf(QStringLiteral(UNDERMARK_CLI)); // of a CAN bus (source_device.cpp)
        own.sort();
        QCOMPARE(own, (QStringList{"bind", "socket"}));
        QStringList looked;
        for (const QString& line : linesOf("ldd", {QStringLiteral(UNDERMARK_CLI)})) {
            const QString library = line.section("=> ", 1).section(' ', 0, 0);
            if (!library.isEmpty() && !library.contains("/libc.so"))
                looked << library;
        }
        QVERIFY(looked.size() >= 5);
        for (const QString& binary : looked) {
            QVERIFY(!linesOf("nm", {"-D", binary}).isEmpty());
            QVERIFY2(networkOf(binary).isEmpty(), qPrintable(binary));
        }
    }

    void theTouchScreenNeverAsksForTheNetwork()
    {
        const QString screen = QFileInfo(QStringLiteral(UNDERMARK_CLI)).dir().filePath("undermark");
        if (!QFileInfo::exists(screen))
            QSKIP("the touch screen is not built");
        QTemporaryDir home;
        QProcess process;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert("QT_QPA_PLATFORM", "offscreen");
        environment.insert("XDG_DATA_HOME", home.path());
        process.setProcessEnvironment(environment);
        const auto how = runWithoutNetwork(process, screen, {"--demo", "--self-test"});
        if (how == QProcess::NormalExit && process.exitCode() == 77)
            QSKIP("this kernel takes no filter");
        QCOMPARE(how, QProcess::NormalExit);
        QVERIFY2(process.exitCode() == 0, process.readAllStandardError().constData());
        QStringList own = networkOf(screen); // of a CAN bus (source_device.cpp)
        own.sort();
        QCOMPARE(own, (QStringList{"bind", "socket"}));
    }
};

UNDERMARK_TEST(PrivacyTest)
#include "privacy_test.moc"
