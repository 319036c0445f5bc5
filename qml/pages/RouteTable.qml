// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// Points of the route, one below the other: where, what arrives, what to take on.
Column {
    id: root

    required property list<routeRow> rows

    Repeater {
        model: root.rows

        Item {
            id: row
            required property routeRow modelData
            readonly property real side: Theme.stacked ? 0 : 8 * Theme.step

            width: root.width
            height: words.height + 1.5 * Theme.step
            implicitHeight: height
            Accessible.role: Accessible.ListItem
            Accessible.name: modelData.spoken

            Text {
                id: atText
                y: Theme.step / 2
                width: Theme.stacked ? implicitWidth : row.side - Theme.step
                text: row.modelData.at
                color: Theme.quietInk
                font.pixelSize: Theme.body
                horizontalAlignment: Text.AlignRight
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
                Flow {
                    width: words.width
                    spacing: 2 * Theme.step

                    Text {
                        text: row.modelData.arrive
                        color: Theme.ink
                        font.pixelSize: Theme.small
                    }
                    Text {
                        text: row.modelData.risk
                        color: Theme.quietInk
                        font.pixelSize: Theme.small
                    }
                    Text {
                        visible: text !== ""
                        text: row.modelData.detail
                        color: Theme.quietInk
                        font.pixelSize: Theme.small
                    }
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
