// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The route's name, and every point of it, to be opened and changed.
PageScroll {
    id: root

    required property PlanViewModel view
    readonly property RouteEditModel editor: view.editor

    signal nameWanted

    NoticeBar {
        Layout.fillWidth: true
        notices: root.editor.notices.length > 0 ? root.editor.notices : root.view.notices
    }
    SettingLine {
        Layout.fillWidth: true
        Layout.bottomMargin: -Theme.step
        text: qsTr("name of the route: %1").arg(root.editor.routeName)
        onClicked: root.nameWanted()
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
