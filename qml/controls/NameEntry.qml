// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts

// A name to be typed, on a keyboard or by touch.
PageScroll {
    id: root

    required property string text
    required property string spoken
    required property string doneWord
    readonly property int longest: 60

    signal edited(text: string)
    signal accepted
    signal goneBack

    WrapText {
        text: root.spoken
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
    TextEntry {
        Layout.fillWidth: true
        text: root.text
        spoken: root.spoken
        onEdited: text => root.edited(text)
        onAccepted: root.accepted()
    }
    LetterPad {
        Layout.fillWidth: true
        onTyped: letter => root.edited((root.text + letter).slice(0, root.longest))
        onErased: root.edited(root.text.slice(0, -1))
        onCleared: root.edited("")
    }
    Item {
        Layout.fillHeight: true
    }
    EvenGrid {
        id: ways
        Layout.fillWidth: true
        columns: 2

        TouchButton {
            width: ways.share
            text: qsTr("Back")
            onClicked: root.goneBack()
        }
        TouchButton {
            width: ways.share
            text: root.doneWord
            leading: true
            onClicked: root.accepted()
        }
    }
}
