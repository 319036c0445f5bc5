// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The car shown; units, letters and language.
PageScroll {
    id: root

    required property ScreenSettings settings

    ColumnLayout {
        spacing: 0

        Text {
            text: root.settings.cars.name
            color: Theme.quietInk
            font.pixelSize: Theme.small
        }
        ButtonGrid {
            Layout.fillWidth: true
            columns: Theme.stacked ? 1 : Math.min(3, names.length)
            names: root.settings.cars.options
            current: root.settings.cars.current
            onChosen: index => root.settings.chooseCar(index)
        }
    }
    Column {
        id: rows
        Layout.fillWidth: true
        spacing: Theme.step

        Repeater {
            model: root.settings.choices

            Column {
                id: row
                required property choice modelData
                required property int index

                width: rows.width

                Text {
                    text: row.modelData.name
                    color: Theme.quietInk
                    font.pixelSize: Theme.small
                }
                ButtonGrid {
                    width: row.width
                    names: row.modelData.options
                    current: row.modelData.current
                    onChosen: index => root.settings.choose(row.index, index)
                }
            }
        }
    }
    Item {
        Layout.fillHeight: true
    }
}
