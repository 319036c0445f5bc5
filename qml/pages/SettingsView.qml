// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// Units, letters and language.
PageScroll {
    id: root

    required property ScreenSettings settings

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
