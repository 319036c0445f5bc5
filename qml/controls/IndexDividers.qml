// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick

// The index dividers of the road book, down the right edge or along the
// bottom, there in two rows where the letters are large. One more place than pages,
// for day and night. All names in letters of one size.
FocusScope {
    id: root

    required property list<string> names
    required property int current
    required property bool portrait
    required property bool night
    readonly property int places: names.length + 1
    readonly property int columns: portrait ? (Theme.stacked ? Math.ceil(places / 2) : places) : 1
    readonly property real slotWidth: width / columns
    readonly property real slotHeight: height / Math.ceil(places / columns)
    readonly property real room: slotWidth - 2 * Theme.step
    readonly property int letters: Math.floor(Theme.body * Math.min(1, room / Math.max(1, widest.width)))

    function longest(names: list<string>): string {
        let found = "";
        for (const name of names)
            found = name.length > found.length ? name : found;
        return found;
    }

    signal chosen(index: int)
    signal lightSwitched

    TextMetrics {
        id: widest
        font.pixelSize: Theme.body
        font.bold: true
        text: root.longest(root.names)
    }
    Rectangle {
        anchors.fill: parent
        color: Theme.track
    }
    Repeater {
        model: root.names

        Pressable {
            id: divider

            required property string modelData
            required property int index
            readonly property bool open: index === root.current

            x: index % root.columns * root.slotWidth
            y: Math.floor(index / root.columns) * root.slotHeight
            width: root.slotWidth
            height: root.slotHeight
            text: modelData
            Accessible.role: Accessible.PageTab
            Accessible.selected: open
            onClicked: root.chosen(index)

            background: Item {
                Rectangle {
                    anchors.fill: parent
                    anchors.margins: divider.open ? 0 : 2 * Theme.hairline
                    radius: divider.open ? 0 : Theme.step
                    color: divider.open ? Theme.paper : Theme.surface
                    border.width: (divider.visualFocus ? 4 : divider.open ? 0 : 1) * Theme.hairline
                    border.color: divider.visualFocus ? Theme.ink : Theme.edge
                }
                Rectangle {  // the open page's edge
                    visible: divider.open
                    width: root.portrait ? parent.width : Math.floor(0.75 * Theme.step)
                    height: root.portrait ? Math.floor(0.75 * Theme.step) : parent.height
                    color: Theme.sure
                }
            }
            contentItem: Text {
                text: divider.text
                color: divider.open ? Theme.ink : Theme.quietInk
                font.pixelSize: root.letters
                font.bold: divider.open
                horizontalAlignment: Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
            }
        }
    }
    TouchButton {
        x: (root.places - 1) % root.columns * root.slotWidth
        y: Math.floor((root.places - 1) / root.columns) * root.slotHeight
        textSize: root.letters
        width: root.slotWidth
        height: root.slotHeight
        text: root.night ? qsTr("Day") : qsTr("Night")
        Accessible.description: qsTr("Changes the colours of the screen")
        onClicked: root.lightSwitched()
    }
}
