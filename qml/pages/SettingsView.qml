// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// Units, letters and language.
PageScroll {
    id: root

    required property ScreenSettings settings

    ChoiceRows {
        Layout.fillWidth: true
        choices: root.settings.choices
        onChosen: (choice, option) => root.settings.choose(choice, option)
    }
    Item {
        Layout.fillHeight: true
    }
}
