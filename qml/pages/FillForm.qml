// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The numbers of a fill on the left, the pad that types them on the right.
Item {
    id: root

    required property PumpViewModel view
    required property bool portrait
    property string backWord: ""
    signal goneBack

    function take(event: KeyEvent) {
        entry.take(event);
    }

    implicitHeight: portrait ? numbers.implicitHeight + entry.implicitHeight + Theme.step
                             : Math.max(numbers.implicitHeight, entry.implicitHeight)

    ColumnLayout {
        id: numbers
        width: root.portrait ? root.width : Math.floor((root.width - 3 * Theme.step) * 0.53)
        height: root.portrait ? Math.max(implicitHeight, Math.floor(root.height * 0.46))
                              : root.height
        spacing: Theme.step

        Repeater {
            model: root.view.form.fields

            RowLayout {
                id: line
                required property numberField modelData
                required property int index

                spacing: Theme.step

                FieldButton {
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    Layout.minimumHeight: implicitHeight
                    Layout.maximumHeight: Math.max(implicitHeight, 1.65 * Theme.touch)
                    name: line.modelData.name
                    value: line.modelData.text
                    unit: line.modelData.unit
                    hint: line.modelData.hint
                    spoken: line.modelData.spoken
                    chosen: line.index === root.view.form.activeField
                    onClicked: root.view.form.select(line.index)
                }
                TouchButton {
                    visible: line.index === 1
                    Layout.fillHeight: true
                    Layout.minimumHeight: Theme.touch
                    Layout.maximumHeight: 1.65 * Theme.touch
                    Layout.preferredWidth: 12 * Theme.step
                    text: root.view.meterSwitch
                    textSize: Theme.small
                    onClicked: root.view.switchMeter()
                }
            }
        }
        RowLayout {
            spacing: Theme.step

            Repeater {
                model: root.view.extents

                TouchButton {
                    required property string modelData
                    required property int index

                    Layout.fillWidth: true
                    Layout.preferredWidth: 10
                    Layout.fillHeight: true
                    Layout.minimumHeight: Theme.touch
                    Layout.maximumHeight: 1.65 * Theme.touch
                    text: modelData
                    chosen: index === root.view.extent
                    Accessible.role: Accessible.RadioButton
                    onClicked: root.view.selectExtent(index)
                }
            }
        }
        Text {
            Layout.fillWidth: true
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
        form: root.view.form
        doneWord: root.view.saveWord
        backWord: root.backWord
        onDone: root.view.save()
        onGoneBack: root.goneBack()
    }
}
