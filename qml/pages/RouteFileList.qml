// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// Folders and route files to choose from.
ColumnLayout {
    id: root

    required property PlanViewModel view

    spacing: Theme.step

    Text {
        Layout.fillWidth: true
        text: root.view.title
        color: Theme.ink
        font.pixelSize: Theme.large
    }
    NoticeBar {
        Layout.fillWidth: true
        notices: root.view.notices
    }
    WrapText {
        text: root.view.files.folder
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
    ListView {
        id: list
        Layout.fillWidth: true
        Layout.fillHeight: true
        model: root.view.files
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

            width: list.width - (list.contentHeight > list.height ? 2 * Theme.step : 0)
            text: isFolder ? qsTr("%1 (folder)").arg(name) : name
            leading: !isFolder
            onClicked: root.view.pickFile(index)
        }
    }
    WrapText {
        text: qsTr("A route is a .csv or .gpx file: points in order, with distances, driving and where "
                   + "fuel can be had.")
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
}
