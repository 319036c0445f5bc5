// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

// Folders and files to choose from. (By anchors: a layout inside another one, shown
// late, gives a wrapped text one line only in Qt 6.4.)
Item {
    id: root

    required property string title
    required property list<noticeText> notices
    required property FileList files
    property string hint: ""
    property bool watching: visible
    readonly property var watched: files // (var: qmllint knows no model to be a QObject)

    signal picked(row: int)

    Binding {
        target: root.watched
        property: "watched"
        value: root.watching
    }
    Column {
        id: head
        width: parent.width
        spacing: Theme.step

        WrapText {
            width: head.width
            text: root.title
            font.pixelSize: Theme.large
        }
        NoticeBar {
            width: head.width
            notices: root.notices
        }
        WrapText {
            width: head.width
            text: root.files.folder
            color: Theme.quietInk
            font.pixelSize: Theme.small
        }
    }
    ListView {
        id: list
        anchors {
            top: head.bottom
            topMargin: Theme.step
            bottom: hintText.top
            bottomMargin: Theme.step
        }
        width: root.width + 2 * Theme.step
        model: root.files
        clip: true
        spacing: Theme.step / 2
        boundsBehavior: Flickable.StopAtBounds

        SlideMark {
            parent: list
            view: list
        }

        delegate: TouchButton {
            required property int index
            required property string name
            required property bool isFolder

            width: list.width - 2 * Theme.step
            text: isFolder ? qsTr("%1 (folder)").arg(name) : name
            leading: !isFolder
            onClicked: root.picked(index)
        }
    }
    WrapText {
        id: hintText
        anchors.bottom: parent.bottom
        width: parent.width
        text: root.hint
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
}
