// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick

// Names side by side, one of them chosen. Up to six are always all in sight, in
// two rows where a word would get too small; more are reached by sliding.
Item {
    id: root

    required property list<string> names
    required property int current
    property bool tabs: false  // the names of views
    readonly property bool few: names.length <= 6
    readonly property bool folded: names.length > 2
        && 0.75 * widest.width > (width + Theme.step) / names.length - 3 * Theme.step

    signal chosen(index: int)

    function longestWord(names: list<string>): string {
        let found = "";
        for (const name of names)
            for (const word of name.split(" "))
                found = word.length > found.length ? word : found;
        return found;
    }

    implicitHeight: few ? grid.implicitHeight : Theme.touch

    TextMetrics {
        id: widest
        font.pixelSize: Theme.body
        font.bold: true
        text: root.longestWord(root.names)
    }
    ButtonGrid {
        id: grid
        width: root.width
        visible: root.few
        columns: Math.max(1, root.folded ? Math.ceil(root.names.length / 2) : root.names.length)
        columnSpacing: root.tabs ? 0 : Theme.step
        rowSpacing: columnSpacing
        tabs: root.tabs
        least: 0 // folded as above
        names: root.few ? root.names : []
        current: root.current
        onChosen: index => root.chosen(index)
    }
    ListView {
        id: list
        readonly property real share: (width - (count - 1) * spacing) / Math.max(1, count)

        anchors.fill: parent
        visible: !root.few
        orientation: ListView.Horizontal
        spacing: Theme.step
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        interactive: contentWidth > width
        model: root.few ? [] : root.names
        currentIndex: root.current
        onCurrentIndexChanged: positionViewAtIndex(currentIndex, ListView.Contain)

        delegate: ChoiceButton {
            required property string modelData
            required property int index

            width: Math.max(10 * Theme.step, list.share, 0.8 * implicitWidth)
            height: list.height
            text: modelData
            chosen: index === root.current
            onClicked: root.chosen(index)
        }
    }
}
