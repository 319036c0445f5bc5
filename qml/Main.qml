// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

Window {
    id: root

    required property ScreenModel model
    readonly property ScreenSettings settings: model.settings
    readonly property SetupViewModel setup: model.setup
    readonly property var pages: model.pages // (var: qmllint 6.4 knows no map() of a list of values)
    property string page: pages[0].key // the key of the one that is open
    readonly property int index: pages.findIndex(each => each.key === root.page)
    readonly property bool night: settings.night
    readonly property bool portrait: height > width
    property Item pageItem: null // the page that is open
    readonly property real capitals: capital.tightBoundingRect.height / Screen.pixelDensity // mm, at 100 %
    readonly property string sizes: Theme.step + " " + Theme.textScale // what all others follow

    title: qsTr("Undermark")
    visible: true
    minimumWidth: 480
    minimumHeight: 480
    color: Theme.paper

    onIndexChanged: turn()
    onCapitalsChanged: settings.seenOn(capitals, Math.hypot(Screen.width, Screen.height) / Screen.pixelDensity)
    onSizesChanged: anew.restart()
    Component.onCompleted: turn()

    // A page is made when it is first turned to. (By file: Qt 6.4 cannot load a
    // bound component.)
    function turn() {
        const loader = loaders.itemAt(root.index) as PageLoader;
        if (!loader)
            return;
        if (!loader.item) {
            loader.sizes = root.sizes;
            const page = root.pages[root.index];
            loader.setSource(Qt.resolvedUrl(page.file + ".qml"), Object.assign({focus: true}, page.given));
        }
        root.pageItem = loader.item as Item;
        loader.forceActiveFocus();
    }

    // Where all sizes change at once, layouts of Qt 6.4 keep some of before: the
    // pages are made anew, and the one that is open stays at its tab.
    function layAnew() {
        const tab = (root.pageItem as Item)?.tab;
        for (let i = 0; i < loaders.count; ++i) {
            const loader = loaders.itemAt(i) as PageLoader;
            if (loader.item && loader.sizes !== root.sizes)
                loader.setSource("");
        }
        root.turn();
        if (tab !== undefined)
            root.pageItem.tab = tab;
    }

    TextMetrics {
        id: capital
        font.pixelSize: Math.floor(Theme.plainBody)
        text: "0"
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
        id: loaders
        model: root.pages.length

        PageLoader {
            required property int index

            width: root.portrait ? root.width : dividers.x
            height: root.portrait ? dividers.y : root.height
            visible: root.index === index && !root.setup.needed
            enabled: !cover.visible // by keys neither
            focus: visible
            onPageWanted: key => root.page = key
        }
    }

    SetupPage {
        width: root.portrait ? root.width : dividers.x
        height: root.portrait ? dividers.y : root.height
        visible: root.setup.needed
        focus: visible
        view: root.setup
    }
    MovingCover {
        id: cover
        width: root.portrait ? root.width : dividers.x
        height: root.portrait ? dividers.y : root.height
        // (A page that may be read while moving says where it is being typed at.)
        visible: root.model.lock.locked
                 && (!root.pages[root.index].whileMoving || (root.pageItem as Item)?.typing === true)
        onPassengerConfirmed: root.model.lock.confirmPassenger()
    }
    IndexDividers {
        id: dividers
        x: root.portrait ? 0 : parent.width - width
        y: root.portrait ? parent.height - height : 0
        width: root.portrait ? parent.width : 15 * Theme.step
        height: !root.portrait ? parent.height : (Theme.stacked ? 18 : 10) * Theme.step
        portrait: root.portrait
        names: root.pages.map(each => each.title)
        current: root.index
        night: root.night
        onChosen: index => root.page = root.pages[index].key
        onLightSwitched: root.settings.night = !root.settings.night
    }

    Shortcut {
        sequence: "Ctrl+PgDown"
        onActivated: root.page = root.pages[(root.index + 1) % root.pages.length].key
    }
    Shortcut {
        sequence: "Ctrl+PgUp"
        onActivated: root.page = root.pages[(root.index + root.pages.length - 1) % root.pages.length].key
    }
}
