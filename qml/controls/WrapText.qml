// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts

// Running text.
Words {
    Layout.fillWidth: true
    wrapMode: Text.Wrap
}
