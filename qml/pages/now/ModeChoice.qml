// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The kind of driving that the distances of Now are for, and what burns more than usual.
PageScroll {
    id: root

    required property NowViewModel view

    signal closed
    signal loadWanted

    WrapText {
        text: qsTr("How is it driven from here?")
        font.pixelSize: Theme.large
    }
    ButtonGrid {
        Layout.fillWidth: true
        columns: Theme.stacked ? 1 : 2
        names: root.view.modes
        current: root.view.modeIndex
        onChosen: index => {
            root.view.selectMode(index);
            root.closed();
        }
    }
    SettingLine {
        Layout.fillWidth: true
        text: root.view.load.standing !== "" ? root.view.load.standing
                                             : qsTr("It burns as the log says, not more (towing, a roof box …)")
        onClicked: root.loadWanted()
    }
    Item {
        Layout.fillHeight: true
    }
    TouchButton {
        Layout.fillWidth: true
        text: qsTr("Back")
        onClicked: root.closed()
    }
}
