// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

// The log, newest first; a line is touched to open its entry.
ListView {
    id: root
    objectName: "history"

    required property HistoryModel rows
    required property string emptyText

    signal picked(row: int)

    property real within: 0 // how much of the top line is slid out of sight
    property bool atTop: true // where a new line comes, and is seen

    // Two texts at the ends of one line; one below the other where it is too narrow.
    component Pair: Item {
        id: pair
        required property string start
        required property string end
        required property int size
        property color startColor: Theme.ink
        property color endColor: Theme.ink
        property bool startBold: false
        property bool endBold: false
        readonly property bool beside: startText.implicitWidth + 2 * Theme.step + endText.implicitWidth <= width

        width: parent.width
        height: beside || end === "" ? Math.max(Theme.line(size), startText.height)
                                       : startText.height + endText.height

        Text {
            id: startText
            width: Math.min(implicitWidth, pair.width)
            text: pair.start
            color: pair.startColor
            font.pixelSize: pair.size
            font.bold: pair.startBold
            wrapMode: Text.Wrap
        }
        Text {
            id: endText
            x: pair.beside ? pair.width - width : 0
            y: pair.beside ? 0 : startText.height
            width: Math.min(implicitWidth, pair.width)
            text: pair.end
            color: pair.endColor
            font.pixelSize: pair.size
            font.bold: pair.endBold
            wrapMode: Text.Wrap
        }
    }

    component LineFace: Column {
        id: face
        required property string date
        required property string kind
        required property string value
        required property string detail
        required property string flag

        Pair {
            start: face.kind
            end: face.value
            size: Theme.body
            startBold: true
        }
        Pair {
            start: face.date
            end: face.flag !== "" ? qsTr("Caution: %1").arg(face.flag) : face.detail
            size: Theme.small
            startColor: Theme.quietInk
            endColor: face.flag !== "" ? Theme.caution : Theme.quietInk
            endBold: face.flag !== ""
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
    Words {
        anchors.fill: parent
        visible: text !== ""
        text: root.emptyText
        color: Theme.quietInk
        font.pixelSize: Theme.body
        wrapMode: Text.WordWrap
        verticalAlignment: Text.AlignVCenter
        horizontalAlignment: Text.AlignHCenter
    }

    delegate: Pressable {
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
        height: Math.max(Theme.touch, implicitContentHeight + Theme.step)
        topPadding: (height - implicitContentHeight) / 2
        focusPolicy: Qt.NoFocus
        Accessible.role: Accessible.ListItem
        Accessible.name: spoken
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

    // Read anew, the list stays with the entries that were in sight, or at its top.
    Connections {
        target: root.model  // rows, as a var: qmllint knows no model to be a QObject

        function onLeaving() {
            root.atTop = root.atYBeginning;
            const top = Math.max(0, root.indexAt(0, root.contentY));
            root.within = root.contentY - (root.itemAtIndex(top)?.y ?? root.contentY);
            root.rows.kept = [top, Math.max(0, root.currentIndex)];
        }
        function onReturned() {
            const [top, current] = root.rows.kept;
            root.currentIndex = current ?? 0;
            root.forceLayout();
            root.positionViewAtIndex(root.atTop ? 0 : top ?? 0, ListView.Beginning);
            if (top > 0 && !root.atTop)
                root.contentY += root.within;
            root.returnToBounds();
        }
    }
}
