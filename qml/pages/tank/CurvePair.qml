// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

// The level curve, or one of each lobe, and what is drawn of it.
Item {
    id: root

    required property plotPicture first
    required property plotPicture second

    visible: !root.first.empty
    implicitHeight: pair.implicitHeight + caption.height

    PlotPair {
        id: pair
        width: root.width
        height: root.height - caption.height
        first: root.first
        second: root.second
    }
    WrapText {
        id: caption
        y: pair.height
        width: root.width
        text: qsTr("Band: there the level is with 90 %. Bar at a point: how far a curve without it misses it.")
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
}
