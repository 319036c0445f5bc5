// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

Window {
    id: root

    required property NowViewModel now
    required property PumpViewModel pump
    required property PlanViewModel ahead
    required property TankViewModel tank
    required property LogbookViewModel logbook
    property int page: 0
    property bool night: false
    property real textScale: 1
    readonly property bool portrait: height > width
    property Item pageItem: null // the page that is open
    readonly property list<string> files: ["NowPage", "PumpPage", "AheadPage", "TankPage", "LogbookPage"]
    readonly property var views: [now, pump, ahead, tank, logbook]

    title: qsTr("Undermark")
    visible: true
    minimumWidth: 480
    minimumHeight: 480
    color: Theme.paper

    onPageChanged: turn()
    Component.onCompleted: turn()

    // A page is made when it is first turned to. (By file: Qt 6.4 cannot load a
    // bound component.)
    function turn() {
        const loader = pages.itemAt(root.page) as Loader;
        if (!loader)
            return;
        if (!loader.item)
            loader.setSource(Qt.resolvedUrl(root.files[root.page] + ".qml"),
                             {view: root.views[root.page], focus: true});
        root.pageItem = loader.item as Item;
        loader.forceActiveFocus();
    }

    Binding {
        target: Theme
        property: "night"
        value: root.night
    }
    Binding {
        target: Theme
        property: "textScale"
        value: root.textScale
    }
    Binding {
        target: Theme
        property: "scale"
        value: Math.max(1, root.portrait ? Math.min(root.width / 480, root.height / 800)
                                         : Math.min(root.width / 800, root.height / 480))
    }

    Repeater {
        id: pages
        model: root.files

        Loader {
            required property int index

            width: root.portrait ? root.width : dividers.x
            height: root.portrait ? dividers.y : root.height
            visible: root.page === index
            focus: visible
        }
    }

    IndexDividers {
        id: dividers
        x: root.portrait ? 0 : parent.width - width
        y: root.portrait ? parent.height - height : 0
        width: root.portrait ? parent.width : 15 * Theme.step
        height: root.portrait ? 10 * Theme.step : parent.height
        portrait: root.portrait
        names: [qsTr("Now"), qsTr("Pump"), qsTr("Ahead"), qsTr("Tank"), qsTr("Logbook")]
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
