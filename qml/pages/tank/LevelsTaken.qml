// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

// The levels of the calibration so far, the last one first; a touch corrects one.
EvenGrid {
    id: root

    required property CalibrationGuide guide

    visible: root.guide.done.length > 0

    WrapText {
        width: root.share
        text: qsTr("Taken so far. Touch a level to correct it.")
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
    ActionGrid {
        width: root.share
        columns: 2
        least: 20 * Theme.step * Theme.textScale
        names: root.guide.done
        onPicked: row => root.guide.correct(row)
    }
}
