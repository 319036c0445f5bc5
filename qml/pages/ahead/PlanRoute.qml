// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// Every point of the route, to be opened and changed; and what was changed, kept.
PageScroll {
    id: root

    required property PlanViewModel view
    readonly property RouteEditModel editor: view.editor

    NoticeBar {
        Layout.fillWidth: true
        notices: root.editor.notices.length > 0 ? root.editor.notices : root.view.notices
    }
    RowLayout {
        visible: root.editor.unsaved || root.editor.undoWord !== ""
        spacing: Theme.step

        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            visible: root.editor.undoWord !== ""
            text: root.editor.undoWord
            onClicked: root.editor.undo()
        }
        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            visible: root.editor.unsaved
            text: qsTr("Save the route")
            leading: true
            onClicked: root.editor.save()
        }
    }
    WrapText {
        text: root.editor.saved !== "" ? root.editor.saved : qsTr("Touch a row to change it.")
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
    RouteTable {
        Layout.fillWidth: true
        rows: root.view.answer.rows
        pickable: true
        onPicked: row => root.view.editRow(row)
    }
    Item {
        Layout.fillHeight: true
    }
}
