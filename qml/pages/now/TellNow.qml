// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The odometer or a reading, for a better answer now. Nothing of it goes into the log.
PageScroll {
    id: root

    required property NowTell tell
    required property bool portrait

    signal closed

    function take(event: KeyEvent) {
        entry.take(event);
    }

    Item {
        id: board
        readonly property real half: Math.floor((width - 3 * Theme.step) * 0.5)

        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: root.portrait ? left.implicitHeight + entry.implicitHeight + Theme.step
                                            : Math.max(left.implicitHeight, entry.implicitHeight)

        ColumnLayout {
            id: left
            width: root.portrait ? board.width : board.half
            spacing: Theme.step

            NoticeBar {
                Layout.fillWidth: true
                notices: root.tell.notices
            }
            WrapText {
                text: qsTr("What stands there now? It counts until the log knows more.")
                font.pixelSize: Theme.small
            }
            FieldColumn {
                Layout.fillWidth: true
                form: root.tell.form
            }
            WrapText {
                visible: text !== ""
                text: root.tell.standing
                color: Theme.sure
                font.pixelSize: Theme.small
            }
            TouchButton {
                Layout.fillWidth: true
                visible: root.tell.standing !== ""
                text: qsTr("Drop what was told")
                onClicked: root.tell.drop()
            }
        }
        NumberEntry {
            id: entry
            x: root.portrait ? 0 : board.half + 3 * Theme.step
            y: root.portrait ? left.height + Theme.step : 0
            width: board.width - x
            height: root.portrait ? implicitHeight
                                  : Math.max(implicitHeight, Math.min(board.height, root.height))
            portrait: root.portrait
            form: root.tell.form
            doneWord: qsTr("Answer for this")
            backWord: qsTr("Back")
            onDone: root.tell.take()
            onGoneBack: root.closed()
        }
    }
}
