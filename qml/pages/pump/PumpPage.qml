// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

FocusScope {
    id: root

    required property PumpViewModel view
    readonly property bool portrait: height > width
    readonly property bool saved: view.saved

    onSavedChanged: page.contentY = 0 // what is shown then begins at the top

    Keys.onPressed: event => {
        if (!root.view.saved)
            form.take(event);
    }

    PageScroll {
        id: page
        anchors {
            fill: parent
            leftMargin: 3 * Theme.step
            rightMargin: Theme.step
            topMargin: 1.5 * Theme.step
            bottomMargin: 1.5 * Theme.step
        }

        NoticeBar {
            id: notice
            Layout.fillWidth: true
            notices: root.view.notices
        }
        FillForm {
            id: form
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: implicitHeight
            visible: !root.view.saved
            view: root.view
            portrait: root.portrait
            room: page.height - (notice.visible ? notice.implicitHeight + Theme.step : 0)
        }
        FillEcho {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.view.saved
            view: root.view
        }
    }
}
