// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// What the fill just saved has taught.
ColumnLayout {
    id: root

    required property PumpViewModel view

    spacing: 2 * Theme.step

    Words {
        Layout.fillWidth: true
        text: root.view.savedTitle
        font.pixelSize: Theme.large
        font.bold: true
    }
    // (On top: a second tap on Save, which was below, finds nothing; and never slid away.)
    RowLayout {
        spacing: Theme.step

        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            text: qsTr("Undo")
            Accessible.description: qsTr("Takes this fill out of the logbook")
            onClicked: root.view.undo()
        }
        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            text: qsTr("Next fill")
            leading: true
            onClicked: root.view.startAgain()
        }
    }
    TouchButton {  // (not the leading one: what was typed is what the pump showed)
        Layout.fillWidth: true
        visible: root.view.mendWord !== ""
        text: root.view.mendWord
        onClicked: root.view.mend()
    }
    TextMetrics {
        id: was
        text: qsTr("was")
        font.pixelSize: Theme.body
    }
    TextMetrics {
        id: now
        text: qsTr("now")
        font.pixelSize: Theme.body
    }
    EvenGrid {
        id: lessons
        readonly property real indent: Math.ceil(Math.max(was.advanceWidth, now.advanceWidth))
                                       + 2 * Theme.step

        Layout.fillWidth: true
        spacing: 2 * Theme.step

        Repeater {
            model: root.view.lesson

            Column {
                id: row
                required property lessonRow modelData

                width: lessons.share
                spacing: Theme.step / 2

                Words {
                    width: row.width
                    text: row.modelData.name
                    color: Theme.quietInk
                }
                Row {
                    Words {
                        width: lessons.indent
                        text: was.text
                        color: Theme.quietInk
                    }
                    Words {
                        width: row.width - lessons.indent
                        text: row.modelData.before
                        color: Theme.quietInk
                        wrapMode: Text.Wrap
                    }
                }
                Row {
                    Words {
                        width: lessons.indent
                        text: now.text
                    }
                    Words {
                        width: row.width - lessons.indent
                        text: row.modelData.after
                        font.pixelSize: Theme.large
                        wrapMode: Text.Wrap
                    }
                }
            }
        }
    }
    Item {
        Layout.fillHeight: true
    }
}
