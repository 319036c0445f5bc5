// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/file_list.h"
#include "tests/support/test_main.h"

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <sys/mount.h>

using namespace undermark;

namespace {

constexpr int kSoon = 10000; // ms; kLookAgain on a busy machine

QStringList names(const FileList& files)
{
    QStringList all;
    for (int row = 0; row < files.rowCount(); ++row)
        all.append(files.data(files.index(row), FileList::Name).toString());
    return all;
}

void write(const QString& file)
{
    QFile made(file);
    QVERIFY(made.open(QIODevice::WriteOnly));
    made.write("date,litres\n");
}

QString entered(FileList& files, const QString& name)
{
    return files.pick(int(names(files).indexOf(name)));
}

} // namespace

class FileListTest : public QObject {
    Q_OBJECT
private slots:
    void init() { m_folder = std::make_unique<QTemporaryDir>(); }
    void whatIsCopiedInShowsWhileItIsWatched()
    {
        FileList files(m_folder->path(), {"*.csv"}, {});
        files.setWatched(true);
        write(m_folder->filePath("new.csv"));
        QTRY_VERIFY_WITH_TIMEOUT(names(files).contains("new.csv"), kSoon);
        QVERIFY(QDir(m_folder->path()).mkdir("inner"));
        QTRY_VERIFY_WITH_TIMEOUT(names(files).contains("inner"), kSoon);
        QVERIFY(entered(files, "inner").isEmpty()); // the folder that is watched goes with it
        write(m_folder->filePath("inner/later.csv"));
        QTRY_VERIFY_WITH_TIMEOUT(names(files).contains("later.csv"), kSoon);
        QVERIFY(QFile::remove(m_folder->filePath("inner/later.csv")));
        QTRY_VERIFY_WITH_TIMEOUT(!names(files).contains("later.csv"), kSoon);
    }
    void aListThatIsTheSameIsNotReset()
    {
        FileList files(m_folder->path(), {"*.csv"}, {});
        QSignalSpy reset(&files, &FileList::modelReset);
        files.refresh();
        QCOMPARE(reset.count(), 0); // a list that is slid stays where it is
        write(m_folder->filePath("new.csv"));
        files.refresh();
        QCOMPARE(reset.count(), 1);
    }
    void aStickShowsOnceItIsMountedAndGoesWhenItIsTakenAway()
    {
        QVERIFY(QDir(m_folder->path()).mkpath("home/Documents") && QDir(m_folder->path()).mkpath("stick/in"));
        write(m_folder->filePath("stick/a.csv"));
        const FilePlace documents{"Papers", m_folder->filePath("home/Documents")};
        const FilePlace stick{"STICK", m_folder->filePath("stick"), true};
        QList<FilePlace> there{documents};
        FileList files({m_folder->filePath("home"), [&there] { return there; }}, {"*.csv"}, {});
        files.setWatched(true);
        QCOMPARE(names(files), QStringList({"One folder up", "Papers"})); // and not Documents besides
        there.prepend(stick);
        QTRY_COMPARE_WITH_TIMEOUT(names(files), QStringList({"One folder up", "STICK", "Papers"}), kSoon);
        QVERIFY(entered(files, "STICK").isEmpty());
        QCOMPARE(names(files), QStringList({"One folder up", "in", "a.csv"}));
        QCOMPARE(entered(files, "a.csv"), m_folder->filePath("stick/a.csv"));
        QVERIFY(entered(files, "One folder up").isEmpty());
        QCOMPARE(files.folder(), m_folder->filePath("home")); // back, not to where sticks are mounted
        QVERIFY(entered(files, "STICK").isEmpty());
        QVERIFY(QDir(m_folder->filePath("stick")).removeRecursively());
        there.removeFirst();
        QTRY_COMPARE_WITH_TIMEOUT(files.folder(), m_folder->filePath("home"), kSoon);
        QCOMPARE(names(files), QStringList({"One folder up", "Papers"}));
    }
    // A real mount, where this user may.
    void whatIsMountedAtMediaIsAStick()
    {
        const QString point = "/media/undermark-test";
        const bool made = QDir().mkpath(point);
        const QByteArray own = m_folder->path().toLocal8Bit(), target = point.toLocal8Bit();
        if (!made || mount(own.constData(), target.constData(), nullptr, MS_BIND, nullptr) != 0) {
            QDir().rmdir(point);
            QSKIP("nothing can be mounted here");
        }
        const QList<FilePlace> places = filePlaces();
        umount(target.constData());
        QDir().rmdir(point);
        QVERIFY(places.contains(FilePlace{"undermark-test", point, true}));
        QVERIFY(!filePlaces().contains(FilePlace{"undermark-test", point, true}));
    }

private:
    std::unique_ptr<QTemporaryDir> m_folder;
};

UNDERMARK_TEST(FileListTest)
#include "file_list_test.moc"
