// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The numbers of a fill on the left, the pad that types them on the right.
GridLayout {
    id: root

    required property PumpViewModel view
    required property bool portrait

    columns: portrait ? 1 : 2
    columnSpacing: 3 * Theme.step
    rowSpacing: Theme.step

    ColumnLayout {
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredWidth: 10
        spacing: Theme.step

        Repeater {
            model: root.view.fields

            RowLayout {
                id: line
                required property pumpField modelData
                required property int index

                spacing: Theme.step

                FieldButton {
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    Layout.minimumHeight: Theme.touch
                    Layout.maximumHeight: 1.65 * Theme.touch
                    name: line.modelData.name
                    value: line.modelData.text
                    unit: line.modelData.unit
                    hint: line.modelData.hint
                    spoken: line.modelData.spoken
                    chosen: line.index === root.view.activeField
                    onClicked: root.view.select(line.index)
                }
                TouchButton {
                    visible: line.index === 1
                    Layout.fillHeight: true
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
            elide: Text.ElideRight
        }
    }
    ColumnLayout {
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredWidth: 9
        spacing: Theme.step

        NumberPad {
            Layout.fillWidth: true
            Layout.fillHeight: true
            flat: root.portrait
            title: root.view.padTitle
            onPressed: key => root.view.press(key)
            onErased: root.view.erase()
        }
        TouchButton {
            Layout.fillWidth: true
            text: qsTr("Save this fill")
            leading: true
            onClicked: root.view.save()
        }
    }
}
