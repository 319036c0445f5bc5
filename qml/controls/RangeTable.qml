// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// Sure, even and hopeful; to the zero mark and to dry.
GridLayout {
    id: root

    required property string unit
    required property rangeRow toZero
    required property rangeRow toDry

    component Head: Text {
        Layout.fillWidth: true
        Layout.preferredHeight: Math.max(3 * Theme.step, Theme.line(Theme.body))
        horizontalAlignment: Text.AlignRight
        verticalAlignment: Text.AlignVCenter
        color: Theme.quietInk
        font.pixelSize: Theme.body
    }
    component Cell: Text {
        Layout.fillWidth: true
        Layout.preferredHeight: Math.max(5 * Theme.step, Theme.line(Theme.large))
        horizontalAlignment: Text.AlignRight
        verticalAlignment: Text.AlignVCenter
        color: Theme.ink
        font.pixelSize: Theme.large
    }

    columns: 4
    columnSpacing: 1.5 * Theme.step
    rowSpacing: 0

    Head { text: root.unit; horizontalAlignment: Text.AlignLeft }
    Head { text: qsTr("sure") }
    Head { text: qsTr("even") }
    Head { text: qsTr("hopeful") }

    Cell { text: root.toZero.name; horizontalAlignment: Text.AlignLeft; font.pixelSize: Theme.body }
    Cell { text: root.toZero.sure; font.bold: true }
    Cell { text: root.toZero.even }
    Cell { text: root.toZero.hopeful }

    Cell {
        text: root.toDry.name
        horizontalAlignment: Text.AlignLeft
        color: Theme.reserve
        font.pixelSize: Theme.body
    }
    Cell { text: root.toDry.sure; font.bold: true; color: Theme.reserve }
    Cell { text: root.toDry.even; color: Theme.reserve }
    Cell { text: root.toDry.hopeful; color: Theme.reserve }
}
