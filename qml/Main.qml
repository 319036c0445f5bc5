// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

Window {
    id: root

    required property NowViewModel now
    required property PumpViewModel pump
    property int page: 0
    property bool night: false
    readonly property bool portrait: height > width

    title: qsTr("Undermark")
    visible: true
    minimumWidth: 480
    minimumHeight: 480
    color: Theme.paper

    onPageChanged: pages.itemAt(page).forceActiveFocus()

    Binding {
        target: Theme
        property: "night"
        value: root.night
    }
    Binding {
        target: Theme
        property: "scale"
        value: Math.max(1, root.portrait ? Math.min(root.width / 480, root.height / 800)
                                         : Math.min(root.width / 800, root.height / 480))
    }

    Item {
        id: pages

        function itemAt(index: int): Item {
            return index === 0 ? nowPage : pumpPage;
        }

        anchors {
            left: parent.left
            top: parent.top
            right: root.portrait ? parent.right : dividers.left
            bottom: root.portrait ? dividers.top : parent.bottom
        }

        NowPage {
            id: nowPage
            anchors.fill: parent
            visible: root.page === 0
            focus: visible
            view: root.now
        }
        PumpPage {
            id: pumpPage
            anchors.fill: parent
            visible: root.page === 1
            focus: visible
            view: root.pump
        }
    }

    IndexDividers {
        id: dividers
        x: root.portrait ? 0 : parent.width - width
        y: root.portrait ? parent.height - height : 0
        width: root.portrait ? parent.width : 15 * Theme.step
        height: root.portrait ? 10 * Theme.step : parent.height
        portrait: root.portrait
        names: [qsTr("Now"), qsTr("Pump")]
        current: root.page
        night: root.night
        onChosen: index => root.page = index
        onLightSwitched: root.night = !root.night
    }

    Shortcut {
        sequence: "Ctrl+PgDown"
        onActivated: root.page = (root.page + 1) % dividers.names.length
    }
    Shortcut {
        sequence: "Ctrl+PgUp"
        onActivated: root.page = (root.page + dividers.names.length - 1) % dividers.names.length
    }
}
