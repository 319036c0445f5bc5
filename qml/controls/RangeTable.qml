// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

// Sure, even and hopeful, for each place.
Item {
    id: root

    required property string unit
    required property list<rangeRow> rows
    readonly property real headHeight: Math.max(3 * Theme.step, Theme.line(Theme.body))
    // Names stand above their numbers where large letters leave no room beside them.
    readonly property bool folded: Theme.stacked && width < besideNames
    readonly property real nameHeight: folded ? Theme.line(Theme.body) : 0
    readonly property real rowHeight: Math.max(4 * Theme.step, Theme.line(Theme.large)) + nameHeight
    readonly property real nameWidth: folded ? 0 : Math.ceil(longestName.advanceWidth)
    readonly property real cellWidth: (width - nameWidth) / 3
    readonly property real leastCell: Math.ceil(Math.max(longestHead.advanceWidth, longestNumber.advanceWidth)
                                                + 1.5 * Theme.step)
    readonly property real besideNames: Math.ceil(longestName.advanceWidth) + 3 * leastCell

    readonly property var all: rows // (var: qmllint 6.4 knows no map() of a list of values)

    function longest(texts: list<string>): string {
        return texts.reduce((found, text) => text.length > found.length ? text : found, "");
    }

    Accessible.role: Accessible.Grouping
    Accessible.name: unit + ": " + qsTr("sure") + ", " + qsTr("even") + ", " + qsTr("hopeful")
    implicitWidth: besideNames
    implicitHeight: headHeight + rows.length * rowHeight

    TextMetrics {
        id: longestName
        font.pixelSize: Theme.body
        text: root.longest(root.all.map(row => row.name).concat([root.unit]))
    }
    TextMetrics {
        id: longestHead
        font.pixelSize: Theme.body
        text: root.longest([qsTr("sure"), qsTr("even"), qsTr("hopeful")])
    }
    TextMetrics {
        id: longestNumber
        font.pixelSize: Theme.large
        font.bold: true
        text: root.longest(root.all.map(row => row.hopeful).concat(["000"]))
    }

    component Head: Text {
        required property int column
        x: root.nameWidth + column * root.cellWidth + Theme.step / 2
        width: root.cellWidth - Theme.step / 2
        height: root.headHeight
        horizontalAlignment: Text.AlignRight
        verticalAlignment: Text.AlignVCenter
        color: Theme.quietInk
        font.pixelSize: Theme.body
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: 2 * Theme.step
    }
    component Cell: Text {
        required property int column
        x: root.nameWidth + column * root.cellWidth
        y: root.nameHeight
        width: root.cellWidth
        height: root.rowHeight - root.nameHeight
        horizontalAlignment: Text.AlignRight
        verticalAlignment: Text.AlignVCenter
        font.pixelSize: Theme.large
        font.bold: column === 0
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: 2 * Theme.step
    }

    Text {
        visible: !root.folded // the names have it there
        height: root.headHeight
        text: root.unit
        color: Theme.quietInk
        font.pixelSize: Theme.body
        verticalAlignment: Text.AlignVCenter
    }
    Head { column: 0; text: qsTr("sure") }
    Head { column: 1; text: qsTr("even") }
    Head { column: 2; text: qsTr("hopeful") }

    Repeater {
        model: root.rows

        Item {
            id: row
            required property rangeRow modelData
            required property int index
            readonly property color ink: modelData.ofReserve ? Theme.reserve : Theme.ink

            y: root.headHeight + index * root.rowHeight
            width: root.width
            height: root.rowHeight
            Accessible.role: Accessible.StaticText
            Accessible.name: qsTr("%1: sure %2, even %3, hopeful %4 %5").arg(modelData.name)
                .arg(modelData.sure).arg(modelData.even).arg(modelData.hopeful).arg(root.unit)

            Text {
                height: root.folded ? root.nameHeight : row.height
                text: root.folded ? row.modelData.name + ", " + root.unit : row.modelData.name
                color: row.ink
                font.pixelSize: Theme.body
                verticalAlignment: Text.AlignVCenter
            }
            Cell { column: 0; text: row.modelData.sure; color: row.ink }
            Cell { column: 1; text: row.modelData.even; color: row.ink }
            Cell { column: 2; text: row.modelData.hopeful; color: row.ink }
        }
    }
}
