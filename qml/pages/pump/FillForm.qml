// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

// The numbers of a fill on the left, the pad that types them on the right.
Item {
    id: root

    required property PumpViewModel view
    required property bool portrait
    required property real room  // height there is; (its own follows from what it holds)
    property string backWord: ""
    signal goneBack

    function take(event: KeyEvent) {
        entry.take(event);
    }

    implicitHeight: portrait ? numbers.height + entry.implicitHeight + Theme.step
                             : Math.max(numbers.height, entry.implicitHeight)

    Column {
        id: numbers
        // What a row gets where the page is high: up to 1.65 of a finger.
        readonly property real rowHeight: Math.min(1.65 * Theme.touch, Math.floor(
            (root.room * (root.portrait ? 0.46 : 1) - caution.height - tanks.taken - 4 * spacing) / 4))

        readonly property real switchWidth: 12 * Theme.step

        width: root.portrait ? root.width : Math.floor((root.width - 3 * Theme.step) * 0.53)
        spacing: Theme.step

        ChoiceRows {
            id: tanks
            readonly property real taken: visible ? height + numbers.spacing : 0

            width: numbers.width
            visible: root.view.tanks.length > 0
            choices: root.view.tanks
            onChosen: (choice, option) => root.view.selectTank(option)
        }
        Item {
            width: numbers.width
            height: fields.height

            FieldColumn {
                id: fields
                width: numbers.width
                form: root.view.form
                fieldHeight: numbers.rowHeight
                narrowAll: true
                narrowBy: numbers.switchWidth + Theme.step
            }
            Repeater {  // beside each field, what it can be turned to
                model: root.view.switches

                TouchButton {
                    required property string modelData
                    required property int index

                    visible: modelData !== ""
                    x: numbers.width - width
                    y: index * (height + fields.spacing)
                    width: numbers.switchWidth
                    height: (fields.height + fields.spacing) / root.view.form.fields.length - fields.spacing
                    text: modelData
                    textSize: Theme.small
                    onClicked: root.view.turn(index)
                }
            }
        }
        ButtonGrid {
            width: numbers.width
            names: root.view.extents
            current: root.view.extent
            buttonHeight: numbers.rowHeight
            onChosen: index => root.view.selectExtent(index)
        }
        Words {
            id: caution
            width: numbers.width
            text: qsTr("Caution: at a halt only, engine off.")
            color: Theme.caution
            font.pixelSize: Theme.small
            wrapMode: Text.WordWrap
        }
    }
    NumberEntry {
        id: entry
        x: root.portrait ? 0 : numbers.width + 3 * Theme.step
        y: root.portrait ? numbers.height + Theme.step : 0
        width: root.width - x
        height: root.height - y
        portrait: root.portrait
        titled: !root.portrait || !tanks.visible // there is no room for both
        form: root.view.form
        doneWord: root.view.saveWord
        backWord: root.backWord
        onDone: root.view.save()
        onGoneBack: root.goneBack()
    }
}
