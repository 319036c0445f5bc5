// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The car shown, and what is due of each; units, letters and language.
Item {
    id: root

    required property ScreenSettings settings
    required property CarList cars
    property bool choosing: false  // one of many cars
    readonly property bool watching: visible

    onVisibleChanged: root.choosing = false

    Binding {
        target: root.cars
        property: "watched"
        value: root.watching
    }
    ManyCars {
        anchors.fill: parent
        visible: root.choosing
        cars: root.cars
        onChosen: row => {
            root.choosing = false;
            root.settings.chooseCar(row);
        }
        onAnotherWanted: root.settings.chooseCar(root.settings.cars.options.length - 1)
        onGoneBack: root.choosing = false
    }
    PageScroll {
        width: root.width + 2 * Theme.step // (its slide mark stands in the page's margin)
        height: root.height
        visible: !root.choosing

        SettingLine {
            Layout.fillWidth: true
            visible: root.cars.many
            text: qsTr("car: %1").arg(root.settings.cars.options[root.settings.cars.current] ?? "")
            way: qsTr("choose another")
            onClicked: root.choosing = true
        }
        ColumnLayout {
            spacing: 0
            visible: !root.cars.many

            Words {
                text: root.settings.cars.name
                color: Theme.quietInk
                font.pixelSize: Theme.small
            }
            ButtonGrid {
                Layout.fillWidth: true
                columns: Theme.stacked ? 1 : Math.min(3, names.length)
                names: root.cars.many ? [] : root.settings.cars.options
                current: root.settings.cars.current
                onChosen: index => root.settings.chooseCar(index)
            }
        }
        FactList {
            Layout.fillWidth: true
            visible: facts.length > 0
            nameShare: 0.3
            facts: root.cars.due
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
}
