// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

// Points of the route, one below the other: where, what arrives, what to take on.
// Where they may be opened, a row is as high as a finger.
EvenGrid {
    id: root

    required property list<routeRow> rows
    property bool pickable: false

    signal picked(row: int)

    component Detail: Text {
        font.pixelSize: Theme.small
        wrapMode: Text.Wrap
    }

    rowSpacing: 0

    Repeater {
        model: root.rows

        Pressable {
            id: row
            required property routeRow modelData
            required property int index
            readonly property real side: Theme.stacked ? 0 : 9 * Theme.step

            width: root.share
            height: Math.max(words.y + words.height + Theme.step, enabled ? Theme.touch : 0)
            implicitHeight: height
            enabled: root.pickable
            focusPolicy: enabled ? Qt.TabFocus : Qt.NoFocus
            Accessible.role: Accessible.ListItem
            Accessible.name: modelData.spoken
            onClicked: root.picked(index)

            background: Rectangle {
                color: row.down ? Theme.track : "transparent"
                border.width: row.visualFocus ? 4 * Theme.hairline : 0
                border.color: Theme.ink
            }

            Text {
                id: atText
                y: Theme.step / 2
                x: Theme.stacked ? 0 : row.side - Theme.step - width
                text: Theme.stacked ? row.modelData.at + " " + row.modelData.unit : row.modelData.at
                color: Theme.ink
                font.pixelSize: Theme.body
            }
            Text {
                anchors.right: atText.right
                anchors.top: atText.bottom
                visible: !Theme.stacked
                text: row.modelData.unit
                color: Theme.quietInk
                font.pixelSize: Theme.small
            }
            Column {
                id: words
                x: row.side
                y: Theme.step / 2 + (Theme.stacked ? atText.height : 0)
                width: row.width - x

                Item {
                    width: words.width
                    height: Math.max(nameText.height, buyText.height)

                    Text {
                        id: nameText
                        width: parent.width - buyText.width - Theme.step
                        text: row.modelData.name
                        color: Theme.ink
                        font.pixelSize: Theme.body
                        font.bold: true
                        wrapMode: Text.Wrap
                    }
                    Text {
                        id: buyText
                        anchors.right: parent.right
                        text: row.modelData.buy
                        color: Theme.sure
                        font.pixelSize: Theme.body
                        font.bold: true
                    }
                }
                Detail {
                    visible: text !== ""
                    width: words.width
                    text: row.modelData.detail
                    color: Theme.ink
                }
                Detail {
                    width: words.width
                    text: row.modelData.way
                    color: Theme.quietInk
                }
            }
            Rectangle {
                anchors.bottom: parent.bottom
                width: parent.width
                height: Theme.hairline
                color: Theme.track
            }
        }
    }
}
