// SPDX-License-Identifier: GPL-3.0-or-later
//
// Photos beside the logbook: what is a picture, what is kept of it, what another device brings.
#include "engine/base/sha256.h"
#include "engine/logbook/photo_store.h"
#include "tests/support/logbook_files.h"
#include "tests/support/pictures.h"
#include "tests/support/test_main.h"

#include <QTemporaryDir>
#include <QTest>

using namespace undermark;
using namespace undermark::test;

class PhotoStoreTest : public QObject {
    Q_OBJECT
    std::unique_ptr<QTemporaryDir> m_folder;

    fs::path at(const char* name) const { return fs::path(m_folder->path().toStdString()) / name; }
    fs::path written(const char* name, const std::string& bytes) const
    {
        writeBytes(at(name), bytes);
        return at(name);
    }

private slots:
    void init() { m_folder = std::make_unique<QTemporaryDir>(); }

    // FIPS 180-4's own examples (NIST, "SHA256.pdf"), and the empty message.
    void theHashIsThatOfTheStandard()
    {
        QCOMPARE(sha256(""), std::string("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"));
        QCOMPARE(sha256("abc"), std::string("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"));
        QCOMPARE(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
                 std::string("248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"));
        QCOMPARE(sha256(std::string(1'000'000, 'a')),
                 std::string("cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"));
    }

    void aPictureIsKeptUnderItsHashForItsOwnerOnly()
    {
        for (const bool jpeg : {true, false}) {
            const auto photo = keepPhoto(at("log.sqlite"), written("a picture", jpeg ? jpegPicture() : pngPicture()));
            QVERIFY2(photo.has_value(), photo ? "" : describe(photo.error()).c_str());
            QCOMPARE(photo->format, jpeg ? PhotoFormat::jpeg : PhotoFormat::png);
            const fs::path file = photoFile(at("log.sqlite"), *photo);
            QCOMPARE(file.parent_path(), at("log.sqlite.photos"));
            QCOMPARE(file.filename().string(), photo->sha256 + (jpeg ? ".jpg" : ".png"));
            QCOMPARE(sha256(bytesOf(file)), photo->sha256);
            QCOMPARE(fs::status(file).permissions(), fs::perms::owner_read | fs::perms::owner_write);
            QCOMPARE(fs::status(file.parent_path()).permissions(), fs::perms::owner_all);
            QVERIFY(*photoBytes(at("log.sqlite"), *photo) == bytesOf(file));
        }
        QCOMPARE(namesIn(at("log.sqlite.photos")).size(), std::size_t(2));
    }

    // A camera writes down where it stood.
    void whatTheCameraNotedIsNotKept()
    {
        const auto photo = keepPhoto(at("log.sqlite"), written("x", jpegPicture("GPS 61.25 N")));
        QVERIFY(*photoBytes(at("log.sqlite"), *photo) == jpegPicture());   // and all else is
        const auto png = keepPhoto(at("log.sqlite"), written("z", pngPicture("GPS 61.25 N")));
        QVERIFY(*photoBytes(at("log.sqlite"), *png) == pngPicture());
    }

    // How the camera was held is all that stays of its notes, and stays when kept again.
    void howAPictureIsTurnedIsKept_data()
    {
        QTest::addColumn<QByteArray>("tiff");
        QTest::addColumn<int>("turned");
        const QByteArray big("MM\0*\0\0\0\x08\0\2\x01\x0f\0\2\0\0\0\4GPS\0\x01\x12\0\3\0\0\0\1\0\6\0\0\0\0\0\0", 38);
        const QByteArray little("II*\0\x08\0\0\0\1\0\x12\x01\3\0\1\0\0\0\3\0\0\0\0\0\0\0", 26);
        QTest::newRow("a quarter clockwise, behind another field") << big << 6;
        QTest::newRow("upside down, least significant first") << little << 3;
        QTest::newRow("as it is") << QByteArray(big).replace(30, 2, QByteArray("\0\1", 2)) << 1;
        QTest::newRow("no such way") << QByteArray(big).replace(30, 2, QByteArray("\0\x09", 2)) << 1;
        QTest::newRow("cut short") << big.left(24) << 1;
        QTest::newRow("a directory beyond the end") << QByteArray(little).replace(4, 1, "\xf0") << 1;
    }
    void howAPictureIsTurnedIsKept()
    {
        QFETCH(QByteArray, tiff);
        QFETCH(int, turned);
        const std::string bytes = jpegPicture(std::string("Exif\0\0", 6) + tiff.toStdString());
        const auto kept = pictureIn(bytes);
        QVERIFY(kept);
        QCOMPARE(orientationOf(kept->bytes), turned);
        QCOMPARE(kept->bytes.size(), jpegPicture().size() + (turned == 1 ? 0 : 36));
        QVERIFY(kept->bytes.find("GPS") == std::string::npos);
        QVERIFY(pictureIn(kept->bytes)->bytes == kept->bytes);
    }

    // ITU-T T.81, B.1.1.2: any marker may have bytes of ones before it.
    void bytesThatFillUpToAMarkerAreNoSegment()
    {
        std::string filled = jpegPicture("a note");
        filled.insert(2, "\xff\xff");
        filled.insert(filled.size() - 2, "\xff");
        const auto kept = pictureIn(filled);
        QVERIFY(kept && pictureIn(kept->bytes)->bytes == kept->bytes);
        QVERIFY(kept->bytes.find("a note") == std::string::npos);
    }

    void whatIsNoPictureIsRefused_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::newRow("text called .jpg") << QByteArray("A reading of 3.02 V");
        QTest::newRow("nothing") << QByteArray();
        QTest::newRow("a JPEG's first bytes") << QByteArray::fromStdString(jpegPicture().substr(0, 40));
        QTest::newRow("a JPEG cut short") << QByteArray::fromStdString(jpegPicture()).chopped(2);
        // B.1.1.3: what has no length is no segment; taking the note away would join it to the colours before
        for (const char marker : {'\x00', '\x01', '\xd0', '\xd7', '\xd8'})
            QTest::addRow("a JPEG with %02x behind a note among its colours", unsigned(std::uint8_t(marker)))
                << QByteArray::fromStdString(jpegPicture()).chopped(2) + QByteArray("\xff\xfe\0\4ab\xff", 7) + marker
                       + QByteArray("\0\4cd\xff\xd9", 6);
        QTest::newRow("a PNG cut short") << QByteArray::fromStdString(pngPicture()).chopped(12);
        QTest::newRow("a PNG of a length that lies")
            << QByteArray::fromStdString(pngPicture()).replace(8, 4, QByteArray("\x7f\xff\xff\xff", 4));
    }
    void whatIsNoPictureIsRefused()
    {
        QFETCH(QByteArray, bytes);
        const auto photo = keepPhoto(at("log.sqlite"), written("photo.jpg", bytes.toStdString()));
        QVERIFY(!photo && photo.error().code == ErrorCode::badInput);
        QVERIFY(!fs::exists(at("log.sqlite.photos")));
    }

    void whateverIsCutOffItIsRefused()
    {
        for (const std::string& whole : {jpegPicture(), pngPicture()})
            for (std::size_t length = 0; length < whole.size(); ++length)
                QVERIFY(!pictureIn(std::string_view(whole).substr(0, length)));
    }

    void twoHundredMegabytesAreRefusedUnread()
    {
        const fs::path huge = written("huge.jpg", jpegPicture());
        fs::resize_file(huge, 200u << 20);
        const auto photo = keepPhoto(at("log.sqlite"), huge);
        QVERIFY(!photo && photo.error().code == ErrorCode::badInput);
        QVERIFY(english(photo.error().detail).find("too large") != std::string::npos);
        QVERIFY(!fs::exists(at("log.sqlite.photos")));
        QCOMPARE(keepPhoto(at("log.sqlite"), at("")).error().code, ErrorCode::fileAccess);
        QCOMPARE(keepPhoto(at("log.sqlite"), "/dev/zero").error().code, ErrorCode::fileAccess);
    }

    void anotherDevicesPhotosAreTakenOverOnce()
    {
        (void)keepPhoto(at("theirs.sqlite"), written("a", jpegPicture()));
        (void)keepPhoto(at("theirs.sqlite"), written("b", pngPicture()));
        QCOMPARE(takePhotos(at("theirs.sqlite"), at("mine.sqlite"))->taken, 2);
        QCOMPARE(namesIn(at("mine.sqlite.photos")), namesIn(at("theirs.sqlite.photos")));
        QCOMPARE(takePhotos(at("theirs.sqlite"), at("mine.sqlite"))->taken, 0);
        QCOMPARE(takePhotos(at("nowhere.sqlite"), at("mine.sqlite"))->taken, 0);
    }

    void whatIsNotWhatItsNameSaysIsLeftOut()
    {
        const fs::path folder = at("theirs.sqlite.photos");
        fs::create_directory(folder);
        writeBytes(folder / (sha256("x") + ".jpg"), "x");                 // no picture
        writeBytes(folder / (std::string(64, 'a') + ".jpg"), jpegPicture()); // another hash
        writeBytes(folder / (sha256(jpegPicture()) + ".png"), jpegPicture()); // another kind
        writeBytes(folder / "..photo.jpg", jpegPicture());
        fs::create_directory(folder / "folder");
        fs::create_symlink("/etc/hostname", folder / (std::string(64, 'b') + ".jpg"));
        const auto taken = takePhotos(at("theirs.sqlite"), at("mine.sqlite"));
        QCOMPARE(taken->taken, 0);
        QCOMPARE(taken->refused, 6);
        QVERIFY(!fs::exists(at("mine.sqlite.photos")));
    }

    void aPhotoThatWasChangedIsSaidToBe()
    {
        const auto photo = keepPhoto(at("log.sqlite"), written("a", jpegPicture()));
        writeBytes(photoFile(at("log.sqlite"), *photo), pngPicture());
        QCOMPARE(photoBytes(at("log.sqlite"), *photo).error().code, ErrorCode::damaged);
        fs::remove(photoFile(at("log.sqlite"), *photo));
        QCOMPARE(photoBytes(at("log.sqlite"), *photo).error().code, ErrorCode::notFound);
    }

    void aBackupBesideTheLogbookShowsTheSamePhotos()
    {
        QCOMPARE(photoFolder("/x/log.sqlite.backup-20260101T000000Z"), fs::path("/x/log.sqlite.photos"));
        QCOMPARE(photoFolder("/x/bundle.undermark"), fs::path("/x/bundle.undermark.photos"));
    }
};

UNDERMARK_TEST(PhotoStoreTest)
#include "photo_store_test.moc"
