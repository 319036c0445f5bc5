// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// Units, letters and language.
PageScroll {
    id: root

    required property ScreenSettings settings

    Repeater {
        model: root.settings.choices

        ColumnLayout {
            id: row
            required property choice modelData
            required property int index

            Layout.fillWidth: true
            Layout.fillHeight: false
            spacing: 0

            Text {
                text: row.modelData.name
                color: Theme.quietInk
                font.pixelSize: Theme.small
            }
            ModeBar {
                Layout.fillWidth: true
                names: row.modelData.options
                current: row.modelData.current
                onChosen: index => root.settings.choose(row.index, index)
            }
        }
    }
    Item {
        Layout.fillHeight: true
    }
}
