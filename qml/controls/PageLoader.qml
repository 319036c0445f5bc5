// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick

// A page, and the sizes that it was made for.
Loader {
    id: root

    property string sizes

    // The page has a way to another one.
    signal pageWanted(key: string)

    Connections {
        target: root.item
        ignoreUnknownSignals: true
        function onPageWanted(key: string) {
            root.pageWanted(key);
        }
    }
}
