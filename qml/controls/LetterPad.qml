// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick

// Letters to touch, for names, where there is no keyboard.
EvenGrid {
    id: root

    //: The small letters of the language, in their order.
    readonly property string letters: qsTr("abcdefghijklmnopqrstuvwxyz") + "-"
    readonly property string digits: "1234567890.,:/&()+'"
    property bool capital: true
    property bool counting: false
    readonly property list<string> keys: (counting ? digits : letters).split("")
                                         .map(key => capital && key.toUpperCase().length === 1 ? key.toUpperCase() : key)

    signal typed(letter: string)
    signal erased
    signal cleared

    columns: Math.max(1, Math.floor((width + spacing) / (Theme.touch + spacing)))
    spacing: Theme.step / 2

    Repeater {
        model: root.keys

        TouchButton {
            required property string modelData

            width: root.share
            text: modelData
            onClicked: {
                root.typed(modelData);
                root.capital = false;
            }
        }
    }
    TouchButton {
        width: root.share
        text: root.capital ? "abc" : "ABC"
        onClicked: {
            root.capital = !root.capital;
            root.counting = false;
        }
    }
    TouchButton {
        width: root.share
        text: root.counting ? "abc" : "123"
        onClicked: root.counting = !root.counting
    }
    TouchButton {
        width: root.share
        text: qsTr("Space")
        onClicked: {
            root.typed(" ");
            root.capital = true;
        }
    }
    TouchButton {
        width: root.share
        text: qsTr("Erase")
        onClicked: root.erased()
    }
    TouchButton {
        width: root.share
        text: qsTr("Clear")
        onClicked: {
            root.cleared();
            root.capital = true;
        }
    }
}
