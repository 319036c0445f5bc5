// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T

// The index dividers of the road book, down the right edge or along the
// bottom. Room for five, and a sixth place for day and night.
FocusScope {
    id: root

    required property list<string> names
    required property int current
    required property bool portrait
    required property bool night
    readonly property real slotWidth: portrait ? width / 6 : width
    readonly property real slotHeight: portrait ? height : height / 6

    signal chosen(index: int)
    signal lightSwitched

    Rectangle {
        anchors.fill: parent
        color: Theme.track
    }
    Repeater {
        model: root.names

        T.AbstractButton {
            id: divider

            required property string modelData
            required property int index
            readonly property bool open: index === root.current

            x: root.portrait ? index * root.slotWidth : 0
            y: root.portrait ? 0 : index * root.slotHeight
            width: root.slotWidth
            height: root.slotHeight
            text: modelData
            focusPolicy: Qt.TabFocus
            Accessible.role: Accessible.PageTab
            Accessible.name: text
            Accessible.selected: open
            Accessible.onPressAction: divider.clicked()
            onClicked: root.chosen(index)
            Keys.onReturnPressed: divider.clicked()
            Keys.onEnterPressed: divider.clicked()

            background: Item {
                Rectangle {
                    anchors.fill: parent
                    anchors.margins: divider.open ? 0 : 2 * Theme.hairline
                    radius: divider.open ? 0 : Theme.step
                    color: divider.open ? Theme.paper : Theme.surface
                    border.width: divider.visualFocus ? 4 * Theme.hairline : 0
                    border.color: Theme.ink
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
                font.pixelSize: Theme.body
                font.bold: divider.open
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: Math.floor(1.625 * Theme.step)
                horizontalAlignment: Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
            }
        }
    }
    TouchButton {
        x: root.portrait ? 5 * root.slotWidth : 0
        y: root.portrait ? 0 : 5 * root.slotHeight
        width: root.slotWidth
        height: root.slotHeight
        text: root.night ? qsTr("Day") : qsTr("Night")
        Accessible.description: qsTr("Changes the colours of the screen")
        onClicked: root.lightSwitched()
    }
}
