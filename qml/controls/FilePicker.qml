// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

// Folders and files to choose from. Title and hint slide with them, so that large letters
// leave room for the list. (In its margins: Qt 6.4 cannot make a bound header.)
ListView {
    id: root

    required property string title
    required property list<noticeText> notices
    required property FileList files
    property string hint: ""
    property bool watching: visible
    readonly property var watched: files // (var: qmllint knows no model to be a QObject)
    readonly property real room: width - 2 * Theme.step // beside the mark of the slide

    signal picked(row: int)

    function goToTop() {
        contentY = originY - topMargin;
    }

    model: root.files
    clip: true
    spacing: Theme.step / 2
    topMargin: head.height + Theme.step
    bottomMargin: hintText.height + Theme.step
    boundsBehavior: Flickable.StopAtBounds
    onTopMarginChanged: goToTop()
    onVisibleChanged: goToTop()

    Binding {
        target: root.watched
        property: "watched"
        value: root.watching
    }
    Connections {
        target: root.watched
        function onModelReset() {
            root.forceLayout();
            root.goToTop();
        }
    }
    SlideMark {
        parent: root
        view: root
    }
    Column {
        id: head
        parent: root.contentItem
        y: root.originY - root.topMargin
        width: root.room
        spacing: Theme.step

        WrapText {
            width: root.room
            text: root.title
            font.pixelSize: Theme.large
        }
        NoticeBar {
            width: root.room
            notices: root.notices
        }
        WrapText {
            width: root.room
            text: root.files.folder
            color: Theme.quietInk
            font.pixelSize: Theme.small
        }
    }
    WrapText {
        id: hintText
        parent: root.contentItem
        y: root.originY + root.contentHeight + Theme.step
        width: root.room
        text: root.hint
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }

    delegate: TouchButton {
        required property int index
        required property string name
        required property bool isFolder

        width: root.room
        text: isFolder ? qsTr("%1 (folder)").arg(name) : name
        leading: !isFolder
        onClicked: root.picked(index)
        onActiveFocusChanged: if (activeFocus) root.positionViewAtIndex(index, ListView.Contain)
    }
}
