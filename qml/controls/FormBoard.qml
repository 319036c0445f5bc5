// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// What is asked on the left, the pad for it on the right; in portrait one below the other.
PageScroll {
    id: root

    default property alias asked: left.data
    required property NumberForm form
    required property bool portrait
    property string doneWord: ""
    property string backWord: ""
    property bool padded: true

    signal done
    signal goneBack

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
        }
        NumberEntry {
            id: entry
            x: root.portrait ? 0 : board.half + 3 * Theme.step
            y: root.portrait ? left.height + Theme.step : 0
            width: board.width - x
            height: root.portrait ? implicitHeight
                                  : Math.max(implicitHeight, Math.min(board.height, root.height))
            portrait: root.portrait
            form: root.form
            padded: root.padded
            doneWord: root.doneWord
            backWord: root.backWord
            onDone: root.done()
            onGoneBack: root.goneBack()
        }
    }
}
