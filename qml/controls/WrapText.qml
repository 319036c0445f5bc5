// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts

// Running text.
Text {
    Layout.fillWidth: true
    color: Theme.ink
    font.pixelSize: Theme.body
    wrapMode: Text.Wrap
}
