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

        Words {
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
    ChoiceRows {
        Layout.fillWidth: true
        choices: root.settings.choices
        onChosen: (choice, option) => root.settings.choose(choice, option)
    }
    Item {
        Layout.fillHeight: true
    }
}
