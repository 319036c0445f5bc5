// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// One plot, or two: side by side where there is room.
GridLayout {
    id: root

    required property plotPicture first
    required property plotPicture second

    columns: width > 60 * Theme.step && !Theme.stacked ? 2 : 1
    columnSpacing: 3 * Theme.step
    rowSpacing: Theme.step

    Plot {
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredWidth: 1
        Layout.minimumHeight: implicitHeight
        visible: !root.first.empty
        picture: root.first
    }
    Plot {
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredWidth: 1
        Layout.minimumHeight: implicitHeight
        visible: !root.second.empty
        picture: root.second
    }
}
