// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick

// Buttons in columns of one width, one of them or several perhaps chosen.
EvenGrid {
    id: root

    required property list<string> names
    property int current: -1
    property var marked: []  // numbers, where several may be chosen
    property real buttonHeight: Theme.touch
    property bool tabs: false

    signal chosen(index: int)

    function longestWord(names: list<string>): string {
        return names.join(" ").split(" ").reduce((found, word) => word.length > found.length ? word : found, "");
    }

    columns: Math.max(1, names.length)
    // Large letters stay large, in fewer columns.
    least: Theme.stacked ? Math.ceil(widest.advanceWidth) + 2 * Theme.step : 0

    TextMetrics {
        id: widest
        font.pixelSize: Theme.body
        font.bold: true
        text: root.longestWord(root.names)
    }

    Repeater {
        model: root.names

        ChoiceButton {
            required property string modelData
            required property int index

            width: root.share
            height: Math.max(Theme.touch, root.buttonHeight)
            text: modelData
            chosen: index === root.current || root.marked.indexOf(index) >= 0
            tab: root.tabs
            onClicked: root.chosen(index)
        }
    }
}
