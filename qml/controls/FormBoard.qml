// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// What is told on the left, and the pad that types its numbers on the right; in portrait
// below. The left slides by itself, so that nothing there pushes the pad off; where the page
// is too low even for the pad, all of it slides.
PageScroll {
    id: root

    default property alias told: left.content
    required property NumberForm form
    required property bool portrait
    property string doneWord: ""
    property string backWord: ""
    property bool padded: true

    signal done
    signal goneBack

    function take(event: KeyEvent) {
        entry.take(event);
        const field = chosenField(left.contentItem);
        if (field)
            left.reveal(field);
    }
    function chosenField(item: Item): Item {
        for (let i = 0; i < item.children.length; ++i) {
            const field = item.children[i] as FieldButton;
            const found = field?.chosen ? field : chosenField(item.children[i]);
            if (found)
                return found;
        }
        return null;
    }
    // What is told from its start on, where something new stands.
    function toTop() {
        left.contentY = 0;
    }

    Item {
        id: board
        readonly property real half: Math.floor((width - 3 * Theme.step) * 0.52)
        readonly property real least: 18 * Theme.step * Theme.textScale // of what is told

        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: root.portrait ? least + entry.implicitHeight + Theme.step : entry.implicitHeight

        PageScroll {
            id: left
            width: (root.portrait ? board.width : board.half) + 2 * Theme.step
            height: root.portrait ? board.height - entry.implicitHeight - Theme.step : board.height
        }
        NumberEntry {
            id: entry
            x: root.portrait ? 0 : board.half + 3 * Theme.step
            y: root.portrait ? left.height + Theme.step : 0
            width: board.width - x
            height: root.portrait ? implicitHeight : board.height
            portrait: root.portrait
            padded: root.padded
            form: root.form
            doneWord: root.doneWord
            backWord: root.backWord
            onDone: root.done()
            onGoneBack: root.goneBack()
        }
    }
}
