// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Undermark.App

// The log, newest first; a line is touched to open its entry.
ListView {
    id: root
    objectName: "history"

    required property HistoryModel rows
    required property string emptyText

    signal picked(row: int)

    component LineFace: Item {
        id: face
        required property string date
        required property string kind
        required property string value
        required property string detail
        required property string flag

        Text {
            id: kindText
            y: (parent.height - Theme.line(Theme.body) - Theme.line(Theme.small)) / 2
            width: Math.min(implicitWidth, 0.45 * parent.width)
            height: Theme.line(Theme.body)
            text: face.kind
            color: Theme.ink
            font.pixelSize: Theme.body
            font.bold: true
            verticalAlignment: Text.AlignVCenter
            elide: Text.ElideRight
        }
        Text {
            y: kindText.y
            anchors.left: kindText.right
            anchors.leftMargin: 2 * Theme.step
            anchors.right: parent.right
            height: kindText.height
            text: face.value
            color: Theme.ink
            font.pixelSize: Theme.body
            horizontalAlignment: Text.AlignRight
            verticalAlignment: Text.AlignVCenter
            elide: Text.ElideRight
        }
        Text {
            id: dateText
            y: kindText.y + kindText.height
            height: Theme.line(Theme.small)
            text: face.date
            color: Theme.quietInk
            font.pixelSize: Theme.small
            verticalAlignment: Text.AlignVCenter
        }
        Text {
            y: dateText.y
            anchors.left: dateText.right
            anchors.leftMargin: 2 * Theme.step
            anchors.right: parent.right
            height: dateText.height
            text: face.flag !== "" ? qsTr("Caution: %1").arg(face.flag) : face.detail
            color: face.flag !== "" ? Theme.caution : Theme.quietInk
            font.pixelSize: Theme.small
            font.bold: face.flag !== ""
            horizontalAlignment: Text.AlignRight
            verticalAlignment: Text.AlignVCenter
            elide: Text.ElideRight
        }
    }

    model: rows
    clip: true
    reuseItems: true
    spacing: 0
    boundsBehavior: Flickable.StopAtBounds
    highlightMoveDuration: 0
    activeFocusOnTab: true
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Log, newest first")
    Keys.onReturnPressed: root.picked(root.currentIndex)
    Keys.onEnterPressed: root.picked(root.currentIndex)

    SlideMark {
        parent: root
        view: root
    }
    Text {
        anchors.fill: parent
        visible: text !== ""
        text: root.emptyText
        color: Theme.quietInk
        font.pixelSize: Theme.body
        wrapMode: Text.WordWrap
        verticalAlignment: Text.AlignVCenter
        horizontalAlignment: Text.AlignHCenter
    }

    delegate: T.AbstractButton {
        id: line

        required property int index
        required property string date
        required property string kind
        required property string value
        required property string detail
        required property string flag
        required property string spoken
        readonly property bool marked: root.activeFocus && ListView.isCurrentItem

        width: root.width - 2 * Theme.step
        height: Math.max(Theme.touch, Theme.line(Theme.body) + Theme.line(Theme.small) + Theme.step)
        focusPolicy: Qt.NoFocus
        Accessible.role: Accessible.ListItem
        Accessible.name: spoken
        Accessible.onPressAction: line.clicked()
        onClicked: {
            root.currentIndex = index;
            root.picked(index);
        }

        background: Rectangle {
            color: line.down ? Theme.track : line.marked ? Theme.surface : Theme.paper
            border.width: line.marked ? 3 * Theme.hairline : 0
            border.color: Theme.ink

            Rectangle {
                anchors.bottom: parent.bottom
                width: parent.width
                height: Theme.hairline
                color: Theme.track
            }
        }
        contentItem: LineFace {
            date: line.date
            kind: line.kind
            value: line.value
            detail: line.detail
            flag: line.flag
        }
    }
}
