// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

// A text that is read aloud, too: Qt 6.4 tells a reader of the screen of no text by itself.
// (Text where what holds it says it all.)
Text {
    color: Theme.ink
    font.pixelSize: Theme.body
    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
