// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

// The fields of a form, one below the other. (In no layout: layouts of Qt 6.4 keep
// what a Repeater has removed while they are hidden, and crash on it later. So no
// Repeater stands in a layout anywhere here.)
EvenGrid {
    id: root

    required property NumberForm form
    property real fieldHeight: 0   // 0: as high as a field has to be
    property int narrowRow: -1     // leaves room at its right
    property bool narrowAll: false // so do all
    property real narrowBy: 0

    Repeater {
        model: root.form.fields

        FieldButton {
            required property numberField modelData
            required property int index

            width: root.share - (root.narrowAll || index === root.narrowRow ? root.narrowBy : 0)
            height: Math.max(implicitHeight, root.fieldHeight)
            name: modelData.name
            value: modelData.text
            unit: modelData.unit
            hint: modelData.hint
            spoken: modelData.spoken
            chosen: index === root.form.activeField
            onClicked: root.form.select(index)
        }
    }
}
