// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

Window {
    id: root

    required property ScreenSettings settings
    required property DrivingLock lock
    required property SetupViewModel setup
    required property NowViewModel now
    required property PumpViewModel pump
    required property PlanViewModel ahead
    required property TankViewModel tank
    required property LogbookViewModel logbook
    property int page: 0
    readonly property bool night: settings.night
    readonly property bool portrait: height > width
    property Item pageItem: null // the page that is open
    readonly property list<string> files: ["NowPage", "PumpPage", "AheadPage", "TankPage", "LogbookPage"]
    readonly property string sizes: Theme.step + " " + Theme.textScale // what all others follow
    readonly property var views: [now, pump, ahead, tank, logbook]

    title: qsTr("Undermark")
    visible: true
    minimumWidth: 480
    minimumHeight: 480
    color: Theme.paper

    onPageChanged: turn()
    onSizesChanged: anew.restart()
    Component.onCompleted: turn()

    // A page is made when it is first turned to. (By file: Qt 6.4 cannot load a
    // bound component.)
    function turn() {
        const loader = pages.itemAt(root.page) as PageLoader;
        if (!loader)
            return;
        if (!loader.item) {
            loader.sizes = root.sizes;
            loader.setSource(Qt.resolvedUrl(root.files[root.page] + ".qml"),
                             root.page === 4 ? {view: root.logbook, settings: root.settings, focus: true}
                                             : {view: root.views[root.page], focus: true});
        }
        root.pageItem = loader.item as Item;
        loader.forceActiveFocus();
    }

    // Where all sizes change at once, layouts of Qt 6.4 keep some of before: the
    // pages are made anew, and the one that is open stays at its tab.
    function layAnew() {
        const tab = (root.pageItem as Item)?.tab;
        for (let i = 0; i < pages.count; ++i) {
            const loader = pages.itemAt(i) as PageLoader;
            if (loader.item && loader.sizes !== root.sizes)
                loader.setSource("");
        }
        root.turn();
        if (tab !== undefined)
            root.pageItem.tab = tab;
    }

    Timer {
        id: anew
        interval: 0
        onTriggered: root.layAnew()
    }
    Binding {
        target: Theme
        property: "night"
        value: root.night
    }
    Binding {
        target: Theme
        property: "textScale"
        value: root.settings.textScale
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

        PageLoader {
            required property int index

            width: root.portrait ? root.width : dividers.x
            height: root.portrait ? dividers.y : root.height
            visible: root.page === index && !root.setup.needed
            focus: visible
        }
    }

    SetupPage {
        width: root.portrait ? root.width : dividers.x
        height: root.portrait ? dividers.y : root.height
        visible: root.setup.needed
        focus: visible
        view: root.setup
    }
    MovingCover {  // Now may be read at any time
        width: root.portrait ? root.width : dividers.x
        height: root.portrait ? dividers.y : root.height
        visible: root.lock.locked && root.page !== 0
        onPassengerConfirmed: root.lock.confirmPassenger()
    }
    IndexDividers {
        id: dividers
        x: root.portrait ? 0 : parent.width - width
        y: root.portrait ? parent.height - height : 0
        width: root.portrait ? parent.width : 15 * Theme.step
        height: !root.portrait ? parent.height : (Theme.stacked ? 18 : 10) * Theme.step
        portrait: root.portrait
        names: [qsTr("Now"), qsTr("Pump"), qsTr("Ahead"), qsTr("Tank"), qsTr("Logbook")]
        current: root.page
        night: root.night
        onChosen: index => root.page = index
        onLightSwitched: root.settings.night = !root.settings.night
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
