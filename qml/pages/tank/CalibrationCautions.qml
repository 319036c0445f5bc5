// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// What must hold before anything is drained or poured, line by line; and by how
// many senders the tank is read.
PageScroll {
    id: root

    required property CalibrationGuide guide

    component CautionFace: Item {
        id: face
        required property string text
        required property bool acknowledged

        implicitHeight: words.implicitHeight

        Rectangle {
            id: box
            x: Theme.step
            anchors.verticalCenter: parent.verticalCenter
            width: 4 * Theme.step
            height: width
            radius: Theme.step / 2
            color: face.acknowledged ? Theme.sure : Theme.paper
            border.width: 2 * Theme.hairline
            border.color: Theme.ink

            Rectangle {  // a tick of two strokes
                visible: face.acknowledged
                x: 0.8 * Theme.step
                y: 2.2 * Theme.step
                width: 1.2 * Theme.step
                height: Theme.step / 2
                rotation: 45
                antialiasing: true
                color: Theme.inkOnSure
            }
            Rectangle {
                visible: face.acknowledged
                x: 1.25 * Theme.step
                y: 1.75 * Theme.step
                width: 2.2 * Theme.step
                height: Theme.step / 2
                rotation: -50
                antialiasing: true
                color: Theme.inkOnSure
            }
        }
        Text {
            id: words
            anchors.left: box.right
            anchors.leftMargin: 1.5 * Theme.step
            anchors.right: parent.right
            anchors.rightMargin: Theme.step
            anchors.verticalCenter: parent.verticalCenter
            text: face.text
            color: Theme.ink
            font.pixelSize: Theme.small
            wrapMode: Text.Wrap
        }
    }

    NoticeBar {
        Layout.fillWidth: true
        notices: root.guide.notices
    }
    WrapText {
        text: root.guide.text
    }
    EvenGrid {
        id: lines
        Layout.fillWidth: true

        Repeater {
            model: root.guide.cautions

            Pressable {
                id: line
                required property caution modelData
                required property int index

                width: lines.share
                height: Math.max(Theme.touch, implicitContentHeight + 2 * Theme.step)
                Accessible.role: Accessible.CheckBox
                text: modelData.text
                checkable: true
                checked: modelData.acknowledged
                onToggled: checked = Qt.binding(() => line.modelData.acknowledged)
                Accessible.onToggleAction: line.clicked()
                onClicked: root.guide.acknowledge(index)

                background: Rectangle {
                    radius: Theme.step
                    color: Theme.surface
                    border.width: (line.visualFocus ? 4 : 1) * Theme.hairline
                    border.color: line.visualFocus ? Theme.ink : Theme.edge
                }
                contentItem: CautionFace {
                    text: line.text
                    acknowledged: line.modelData.acknowledged
                }
            }
        }
    }
    WrapText {
        text: qsTr("How is the tank read?")
    }
    ButtonGrid {
        Layout.fillWidth: true
        columns: Theme.stacked ? 1 : 3
        names: root.guide.wirings
        current: root.guide.wiring
        onChosen: index => root.guide.chooseWiring(index)
    }
    WrapText {
        text: qsTr("What does the meter show?")
    }
    ButtonGrid {
        Layout.fillWidth: true
        columns: Theme.stacked ? 3 : names.length
        names: root.guide.units
        current: root.guide.unit
        onChosen: index => root.guide.chooseUnit(index)
    }
    Item {
        Layout.fillHeight: true
    }
}
