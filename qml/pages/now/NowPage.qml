// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

// How far; and, a touch away, what changes the answer.
FocusScope {
    id: root

    required property NowViewModel view
    signal pageWanted(key: string)

    property int tab: NowViewModel.Figures
    // Not while the car moves.
    readonly property bool typing: tab === NowViewModel.Tell || tab === NowViewModel.Loaded
    readonly property bool portrait: height > width || Theme.stacked

    Keys.onPressed: event => {
        if (root.tab === NowViewModel.Tell)
            tell.take(event);
        else if (root.tab === NowViewModel.Loaded)
            load.take(event);
    }
    Keys.onEscapePressed: root.tab = NowViewModel.Figures

    NowFigures {
        anchors {
            fill: parent
            leftMargin: 3 * Theme.step
            rightMargin: Theme.step
            topMargin: Theme.step
            bottomMargin: Theme.step
        }
        visible: root.tab === NowViewModel.Figures
        view: root.view
        portrait: root.portrait
        onModeWanted: root.tab = NowViewModel.Modes
        onTellWanted: root.tab = NowViewModel.Tell
        onFillWanted: root.pageWanted("pump")
        onTankWanted: root.pageWanted("tank")
    }
    ModeChoice {
        anchors {
            fill: parent
            leftMargin: 3 * Theme.step
            rightMargin: Theme.step
            topMargin: Theme.step
            bottomMargin: Theme.step
        }
        visible: root.tab === NowViewModel.Modes
        view: root.view
        onClosed: root.tab = NowViewModel.Figures
        onLoadWanted: root.tab = NowViewModel.Loaded
    }
    BurnsMore {
        id: load
        anchors {
            fill: parent
            leftMargin: 3 * Theme.step
            rightMargin: 3 * Theme.step
            topMargin: 1.5 * Theme.step
            bottomMargin: 1.5 * Theme.step
        }
        visible: root.tab === NowViewModel.Loaded
        load: root.view.load
        portrait: root.portrait
        onClosed: root.tab = NowViewModel.Figures
    }
    TellNow {
        id: tell
        anchors {
            fill: parent
            leftMargin: 3 * Theme.step
            rightMargin: Theme.step
            topMargin: 1.5 * Theme.step
            bottomMargin: 1.5 * Theme.step
        }
        visible: root.tab === NowViewModel.Tell
        tell: root.view.tell
        portrait: root.portrait
        onClosed: root.tab = NowViewModel.Figures
    }
    Connections {  // at the halt, while somebody looks at it
        target: root.view.live
        function onRefuelSeen() {
            if (root.visible && root.tab === NowViewModel.Figures && root.view.live.stands)
                root.pageWanted("pump");
        }
    }
    Connections {
        target: root.view.tell
        function onTaken() {
            root.tab = NowViewModel.Figures;
        }
    }
    Connections {
        target: root.view.load
        function onTaken() {
            root.tab = NowViewModel.Figures;
        }
    }
}
