// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// Consumption over time with the band it was expected in, and the rates as they
// are known now.
PageScroll {
    id: root

    required property LogbookViewModel view

    Plot {
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: 20 * Theme.step
        visible: !root.view.consumption.empty
        picture: root.view.consumption
    }
    Words {
        Layout.fillWidth: true
        text: root.view.consumption.empty
              ? qsTr("Two fills to the first click make the first point here.")
              : qsTr("Points: what each tank burnt; hollow: kept out as odd. Line and band: what was "
                     + "expected before it, 90 % of tanks lie in the band.")
        color: Theme.quietInk
        font.pixelSize: Theme.small
        wrapMode: Text.WordWrap
    }
    FactList {
        Layout.fillWidth: true
        facts: root.view.rates
    }
}
