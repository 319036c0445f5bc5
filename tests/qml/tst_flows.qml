// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Undermark.App
import Undermark.Fixture
import Undermark.Ui

// What people do, from the first touch to the last.
PageCase {
    id: root

    name: "Flows"

    function keys(text: string) {
        for (const key of text)
            keyClick(key);
    }
    function pad(text: string) {
        for (const key of text)
            touch(key);
    }
    // The program is started again over what is on disk.
    function startAgain(page: string) {
        root.window.visible = false;
        Fixture.restart();
        show(Qt.size(800, 480), page);
    }

    function test_aLargerWindowIsLaidAnewAtTheSameTab() {
        open(Qt.size(800, 480), "calm", "logbook");
        Fixture.logbook.open(2);
        root.window.pageItem.tab = LogbookViewModel.Fills;
        root.window.width = 1920;
        root.window.height = 1080;
        tryCompare(Theme, "step", 18);
        wait(50);
        compare(root.window.pageItem.tab, LogbookViewModel.Fills);
        for (const button of visibleButtons())
            verify(button.height >= Theme.touch - 0.5, describe(button) + " is " + button.height);
    }

    // And none says what only a logbook that is read could tell.
    function test_everyPageSaysWhyTheLogbookIsNotRead_data() {
        return Fixture.pages.map(page => ({tag: page}));
    }
    function test_everyPageSaysWhyTheLogbookIsNotRead(data) {
        open(Qt.size(800, 480), "unknown", data.tag);
        verify(visibleTexts().some(text => text.text.includes("no reading and no fill yet")));
        verify(!visibleTexts().some(text => text.text.includes("no calibration yet")));
    }
    function test_aFillInFourTouches() {
        open(Qt.size(800, 480), "calm", "now");
        touch("Pump");      // 1
        touch("Partial");   // 2
        touch("Full");      // 3: changed my mind
        touch("Save this fill");  // 4
        compare(Fixture.storedFills(), 1);
    }

    function test_calibrationFromTouchToTouchWithAPowerCut() {
        open(Qt.size(800, 480), "calm", "tank");
        touch("Calibrate");
        const guide = Fixture.tank.guide;
        touch("All of it holds");
        verify(guide.preparing);  // nothing acknowledged yet
        for (let i = 0; i < 5; ++i)
            guide.acknowledge(i);
        touch("All of it holds");
        pad("3.02");
        touch("Take this reading");
        touch("Next step");
        pad("5");
        keyClick(Qt.Key_Down);
        pad("2.84");
        touch("Take this reading");

        startAgain("tank");  // the power was cut here
        compare(root.window.pageItem.tab, TankViewModel.Calibrate);  // straight back to the step
        const again = Fixture.tank.guide;
        compare(again.stage, 2);
        verify(visibleTexts().some(t => t.text.includes("nothing is lost")));
        touch("Next step");
        pad("45");
        keyClick(Qt.Key_Down);
        pad("0.55");
        touch("Take this reading");
        touch("Now fill it up");
        compare(again.stage, 4);
        pad("1");
        keyClick(Qt.Key_Down);
        pad("0.5");
        keyClick(Qt.Key_Return);
        keyClick(Qt.Key_Return);
        keyClick(Qt.Key_Return);
        touch("Without verifying");
        verify(again.reviewing);
        touch("Save this calibration");
        compare(root.window.pageItem.tab, TankViewModel.Curve);
        verify(Fixture.tank.calibrated);
        verify(Fixture.tank.curveFacts[2].value.startsWith("5.0 L"));
    }

    function test_anEntryIsOpenedAndTakenOutByTouch() {
        open(Qt.size(800, 480), "calm", "logbook");
        touch("Fills");
        const before = Fixture.logbook.rows.rowCount();
        const line = visibleButtons().find(b => b.Accessible.name.startsWith("Fill, 2026-08-29"));
        verify(line);
        mouseClick(line);
        verify(Fixture.logbook.opened);
        touch("Take out");
        compare(Fixture.logbook.rows.rowCount(), before - 1);
        touch("Undo taking out");
        compare(Fixture.logbook.rows.rowCount(), before);
    }

    function test_theLogIsReadWithTheKeyboardAlone() {
        open(Qt.size(800, 480), "calm", "now");
        for (let i = 0; i < 4; ++i)
            keySequence("Ctrl+PgDown");
        compare(root.window.page, "logbook");
        for (let i = 0; i < 15 && !Fixture.logbook.opened; ++i) {
            keyClick(Qt.Key_Tab);
            if (root.window.activeFocusItem.Accessible.role === Accessible.ListItem) {
                keyClick(Qt.Key_Down);
                keyClick(Qt.Key_Return);
            }
        }
        verify(Fixture.logbook.opened);
        keyClick(Qt.Key_Escape);
        verify(!Fixture.logbook.opened);
    }

    function test_theAimOfThePlanIsATouchAway() {
        open(Qt.size(800, 480), "calm", "ahead");
        touch("aim of the plan: Least cost · sure on each arrival: 99 %");
        touch("Fewest stops");
        touch("Back to the plan");
        verify(buttonNamed("aim of the plan: Fewest stops · sure on each arrival: 99 %"));
        tryVerify(() => !Fixture.ahead.planning); // what is asked belongs to the plan that is shown
        touch("What if");
        touch("It burns 10 % more");
        const whatIfs = Fixture.ahead.whatIfs;
        compare(whatIfs.questions[whatIfs.asked[0]], "It burns 10 % more");
        tryVerify(() => visibleTexts().some(t => t.text.startsWith("1 stop, ")));
    }

    function test_aLegIsChangedByTouchAndByKey() {
        open(Qt.size(800, 480), "calm", "ahead");
        touch("Route");
        const before = Fixture.ahead.title;
        const line = () => visibleButtons().find(b => b.Accessible.name.includes("Callow stage 1"));
        tryVerify(() => line() !== undefined);
        mouseClick(line());
        verify(Fixture.ahead.editor.opened);
        for (let i = 0; i < 4; ++i)
            keyClick(Qt.Key_Backspace);
        pad("68");
        touch(".");
        keys("4");
        touch("Take the numbers");  // 10 km more
        compare(Fixture.ahead.title, "Seven Weirs Rally, 332 km");
        touch("Row after");
        compare(Fixture.ahead.editor.name, "Callow end");
        touch("Fuel");
        pad("1.9");
        touch("Refuel zone");
        compare(Fixture.ahead.editor.fuel, 2);
        touch("Undo the change");
        touch("Undo the change");
        compare(Fixture.ahead.title, before);
        keyClick(Qt.Key_Escape);
        verify(!Fixture.ahead.editor.opened);
        verify(buttonNamed("Other route"));
    }

    function test_aNewRowIsNamedWithTheKeyboard() {
        open(Qt.size(800, 480), "calm", "ahead");
        Fixture.ahead.editRow(1);
        Fixture.ahead.editor.addRow();
        touch("Row");
        const entry = () => visibleItems(root.window.contentItem)
                                .find(i => i instanceof TextInput && i.text === "New row 1");
        tryVerify(() => entry() !== undefined);
        wait(50);  // until layouts are at rest
        mouseClick(entry());
        verify(entry().activeFocus);
        keySequence("Ctrl+A");
        keys("Ford 7");
        keyClick(Qt.Key_Return);
        compare(Fixture.ahead.editor.name, "Ford 7");
        touch("Undo the change");
        compare(Fixture.ahead.editor.name, "New row 1");
    }

    // What is seen stays where it is when something above it goes, or comes from elsewhere.
    function test_theListStaysWithItsEntriesWhenItIsReadAnew() {
        open(Qt.size(800, 480), "calm", "logbook");
        const list = findChild(root.window.pageItem, "history");
        const spokenAtTop = () => list.itemAtIndex(list.indexAt(0, list.contentY)).spoken;
        list.contentY = 12 * 64 + 20;
        list.currentIndex = 13;
        waitForRendering(list);
        const top = spokenAtTop();
        const within = list.contentY - list.itemAtIndex(list.indexAt(0, list.contentY)).y;
        const current = list.currentItem.spoken;
        Fixture.logbook.open(0);
        Fixture.logbook.takeOut();
        waitForRendering(list);
        compare(spokenAtTop(), top);
        compare(list.currentIndex, 12);
        compare(list.currentItem.spoken, current);
        compare(list.contentY - list.itemAtIndex(list.indexAt(0, list.contentY)).y, within);
        Fixture.logbook.undo();
        waitForRendering(list);
        compare(spokenAtTop(), top);
        touch("Fills");
        compare(list.contentY, list.originY);
        compare(list.currentIndex, 0);
    }

    function test_theLogbookGoesOutAndNothingComesInTwiceByTouch() {
        open(Qt.size(800, 800), "calm", "logbook");  // high enough for the list of files
        touch("Transfer");
        touch("Export the whole logbook");
        tryVerify(() => visibleTexts().some(t => t.text.includes("logbook.sqlite for another device")));
        touch("Back");
        touch("Take in fills from a table");
        touch("Undermark's own folder (folder)");
        const made = () => visibleButtons().find(b => b.text.startsWith("export-"));
        tryVerify(() => made() !== undefined);
        mouseClick(made());
        touch("fills.csv");
        touch("Show what would be added");
        tryVerify(() => visibleTexts().some(t => t.text.startsWith("Would add 0 fills; ")));
        compare(buttonNamed("Add 0 fills"), null);
        touch("Back");
        touch("Back");
        touch("One folder up (folder)");
        touch("Back");
        verify(buttonNamed("Export the whole logbook"));
    }

    function test_unitsAreChosenByTouch() {
        open(Qt.size(800, 480), "calm", "logbook");
        touch("Settings");
        touch("miles");
        compare(Fixture.now.distanceUnit, "mi");
    }

    function test_whileMovingNothingIsTypedUnlessByThePassenger() {
        open(Qt.size(800, 480), "calm", "pump");
        Fixture.drive(60);
        tryVerify(() => buttonNamed("I am the passenger") !== null);
        const text = Fixture.pump.form.fields[0].text;
        keys("7");
        mouseClick(root.window.contentItem, 500, 100);  // where the pad was
        compare(Fixture.pump.form.fields[0].text, text);
        for (let i = 0; i < 30; ++i) {  // nor by keys
            keyClick(Qt.Key_Tab);
            verify(!(root.window.activeFocusItem instanceof FieldButton));
            verify(root.window.activeFocusItem.text !== "Save this fill");
        }
        touch("I am the passenger");
        touch("7");
        compare(Fixture.pump.form.fields[0].text, "7");
        Fixture.drive(0);
    }

    function test_aCarIsSetUpInAMinute() {
        Fixture.resetToNothing();
        show(Qt.size(800, 480), "now");
        verify(Fixture.setup.needed);
        touch("Diesel");
        pad("61.5");
        touch("Set up this car");
        verify(!Fixture.setup.needed);
        tryVerify(() => buttonNamed("Set up this car") === null);
        compare(Fixture.pump.form.fields[0].text, "61.5");
    }
}
