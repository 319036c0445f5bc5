// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// Folders and files to choose from.
ColumnLayout {
    id: root

    required property string title
    required property list<noticeText> notices
    required property FileList files
    property string hint: ""

    signal picked(row: int)

    spacing: Theme.step

    WrapText {
        text: root.title
        font.pixelSize: Theme.large
    }
    NoticeBar {
        Layout.fillWidth: true
        notices: root.notices
    }
    WrapText {
        text: root.files.folder
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
    ListView {
        id: list
        Layout.fillWidth: true
        Layout.rightMargin: -2 * Theme.step
        Layout.fillHeight: true
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
        visible: text !== ""
        text: root.hint
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
}
