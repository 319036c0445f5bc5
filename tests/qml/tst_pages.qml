// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Undermark.App
import Undermark.Fixture
import Undermark.Ui

PageCase {
    id: root

    name: "Pages"

    function sizes_data(): var {
        const rows = [];
        for (const size of [Qt.size(800, 480), Qt.size(480, 800), Qt.size(1024, 600),
                            Qt.size(1920, 1080)]) {
            for (const state of ["calm", "warned", "low", "far", "tanks"]) {
                for (const page of Fixture.pages)
                    rows.push(look(size, page, {state: state}));
            }
        }
        return rows;
    }
    // A page, or what is opened on one: a row of the route in its three parts, an entry,
    // import and export.
    function look(size: size, shown: string, other: var): var {
        const row = Object.assign({size: size, shown: shown, state: "calm", language: "en",
                                   percent: 100}, other);
        row.tag = [size.width + "x" + size.height, row.state, row.language, row.percent + " %", shown].join(" ");
        return row;
    }
    // Every page in every state, opened anew in every size.
    function test_everyPageIsWholeWhenItIsOpened_data() {
        return sizes_data();
    }
    function test_everyPageIsWholeWhenItIsOpened(data) {
        openLook(data);
        verifyWhole(data);
    }
    // Every page, and what is opened there, in large letters and in the other languages: opened
    // in one size, then the window takes the others, as a screen that is turned.
    function test_everyLookIsWhole_data() {
        const opened = ["map", "route", "road", "fuel", "row", "entry", "transfer", "files", "sheet", "aux", "proof", "trip", "cars"];
        const narrow = [Qt.size(800, 480), Qt.size(480, 800)];
        const wide = [Qt.size(1024, 600), Qt.size(1920, 1080)];
        const rows = [];
        const add = (shown, language, percent, sizes) =>
            rows.push(Object.assign(look(sizes[0], shown, {language: language, percent: percent}),
                                    {sizes: sizes}));
        for (const language of ["en", ...Fixture.languages]) {
            for (const shown of Fixture.pages.concat(opened))
                add(shown, language, 200, narrow.concat(wide));
            for (const shown of opened)
                add(shown, language, 100, [...narrow, wide[1]]);
        }
        for (const page of Fixture.pages) {
            for (const language of Fixture.languages)
                add(page, language, 100, narrow);
            add(page, "en", 150, narrow);
        }
        return rows;
    }
    function test_everyLookIsWhole(data) {
        openLook(data);
        for (const size of data.sizes) {
            if (size !== data.size) {
                root.window.width = size.width;
                root.window.height = size.height;
                waitForRendering(root.window.contentItem);
                wait(50);
            }
            verifyWhole(data);
        }
    }
    function verifyWhole(data: var) {
        verifyFits();
        verifyApart();
        if (data.percent === 200)
            verifyReadable();
        if (["now", "pump"].includes(data.shown) && data.percent === 100) { // the pages for the road fit without sliding
            for (const item of visibleItems(root.window.contentItem))
                verify(!(item instanceof Flickable) || item.contentHeight <= item.height + 0.5,
                       describe(item) + " has to be slid by " + (item.contentHeight - item.height));
        }
    }
    function openLook(data: var) {
        const isPage = Fixture.pages.includes(data.shown);
        const part = ["road", "fuel", "row"].indexOf(data.shown);
        const ofRoute = part >= 0 || ["route", "map"].includes(data.shown);
        const ofTank = ["sheet", "aux", "proof"].includes(data.shown);
        const state = ({aux: "tanks", cars: "workshop"})[data.shown] ?? data.state;
        open(data.size, state, isPage ? data.shown : ofRoute ? "ahead" : ofTank ? "tank" : "logbook",
             data.language, data.percent);
        if (isPage)
            return;
        if (data.shown === "entry")
            Fixture.logbook.open(2);
        else if (data.shown === "trip")
            Fixture.logbook.add(1);
        else if (ofTank)
            root.window.pageItem.tab = data.shown === "proof" ? TankViewModel.Reserve : TankViewModel.Sheet;
        else if (data.shown === "cars")
            root.window.pageItem.tab = LogbookViewModel.Settings;
        else
            root.window.pageItem.tab = ofRoute ? PlanViewModel.Rows : LogbookViewModel.Transfer;
        if (data.shown === "map")
            root.window.pageItem.mapping = true;
        if (part >= 0) {
            Fixture.ahead.editRow(3);
            Fixture.ahead.editor.selectPart(part);
            Fixture.ahead.editor.selectMode(0);
        }
        if (data.shown === "aux")
            Fixture.tank.selectTank(1);
        if (data.shown === "cars")
            root.window.pageItem.choosingCar = true;
        if (data.shown === "proof")
            Fixture.tank.tellNextProof();
        if (data.shown === "files")
            Fixture.logbook.transfer.chooseTable();
        waitForRendering(root.window.contentItem);
        wait(50);
    }
    // Names that are the user's own, and longer than they have to be shown.
    function isOwnAndLong(text: string): bool {
        return text.length > 60;
    }
    // Nothing is cut, and where a word has to shrink into a button, it stays as large as
    // the small letters are at 100 %.
    function verifyReadable() {
        for (const text of visibleTexts()) {
            if (text.truncated && !isOwnAndLong(text.text))
                fail(describe(text) + " is cut");
            if (!(text.fontInfo.pixelSize >= 2 * Theme.step))
                fail(describe(text) + " is only " + text.fontInfo.pixelSize + " px");
        }
    }
    function verifyFits() {
        for (const button of visibleButtons()) {
            verifyInside(button);
            if (!(button.width >= 64 && button.height >= 64))
                fail(describe(button) + " is " + button.width + "x" + button.height);
            if (button.Accessible.name === "")
                fail(describe(button) + " has no accessible name");
        }
        for (const text of visibleTexts()) {
            verifyInside(text);
            if (!(text.width + 0.5 >= text.paintedWidth))
                fail(describe(text) + " is too narrow");
            if (!(text.height + 0.5 >= text.paintedHeight))
                fail(describe(text) + " is too low");
        }
        verify(visibleButtons().length > 5);
        verify(visibleTexts().length > 6);
    }
    // No text runs into another one.
    function verifyApart() {
        const texts = visibleTexts();
        const boxes = texts.map(t => {
            const left = t.horizontalAlignment === Text.AlignRight ? t.width - t.paintedWidth
                       : t.horizontalAlignment === Text.AlignHCenter ? (t.width - t.paintedWidth) / 2 : 0;
            return t.mapToItem(null, left, t.baselineOffset - 0.7 * t.font.pixelSize,
                               t.paintedWidth, 0.7 * t.font.pixelSize);
        });
        for (let i = 0; i < boxes.length; ++i) {
            for (let j = i + 1; j < boxes.length; ++j) {
                const a = boxes[i];
                const b = boxes[j];
                const apart = a.x + a.width <= b.x || b.x + b.width <= a.x
                            || a.y + a.height <= b.y || b.y + b.height <= a.y;
                if (!apart) // a message of each pair would take longer than all of the rest
                    fail(describe(texts[i]) + " and " + describe(texts[j]));
            }
        }
    }

    // On a screen of 800 x 480 dots in 5 inches (187 to an inch) with its own size of letters,
    // 175 % (reading_size_test): what is read while driving subtends 16' at 650 mm, as its
    // capitals and figures do (ISO 15008 as usually cited, from memory: 12' at least, 16' acceptable).
    TextMetrics {
        id: capital
        text: "0"
    }
    function test_whatIsReadWhileDrivingIsLargeEnough_data() {
        return [{tag: "flat", size: Qt.size(800, 480)}, {tag: "upright", size: Qt.size(480, 800)}];
    }
    function test_whatIsReadWhileDrivingIsLargeEnough(data) {
        open(data.size, "calm", "now", "en", 175);
        const wanted = 2 * 650 * Math.tan(16 / 60 * Math.PI / 180 / 2); // mm
        let looked = 0;
        for (const part of visibleItems(root.window.contentItem)) {
            if (!(part instanceof BigNumber || part instanceof RangeTable))
                continue;
            for (const text of visibleItems(part).filter(i => i instanceof Text && i.text !== "")) {
                capital.font = text.font;
                capital.font.pixelSize = text.fontInfo.pixelSize;
                const found = capital.tightBoundingRect.height * 25.4 / 187;
                verify(found >= wanted, describe(text) + " is " + found.toFixed(2) + " mm high");
                ++looked;
            }
        }
        verify(looked >= 3 + 3 + 12, looked); // number, caption, unit; heads; rows
    }

    // Title, hint and tabs in the largest letters once left no room for a single row.
    function test_aListOfFilesHasRowsInSightInLargeLetters_data() {
        return [look(Qt.size(800, 480), "files", {percent: 200}), look(Qt.size(480, 800), "files", {percent: 200})];
    }
    function test_aListOfFilesHasRowsInSightInLargeLetters(data) {
        openLook(data);
        verify(visibleButtons().some(button => button.text.endsWith("(folder)")));
    }

    function test_aFillWithRightGuessesTakesThreeTouches() {
        open(Qt.size(800, 480), "calm", "now");
        touch("Pump");
        touch("Save this fill");
        compare(Fixture.storedFills(), 0);
        wait(750);  // no double tap
        touch("Yes, save the guesses");
        compare(Fixture.storedFills(), 1);
        verify(Fixture.pump.saved);
        tryVerify(() => buttonNamed("Undo") !== null);
    }

    function test_theEchoFitsEverySize_data() {
        return sizes_data().filter(row => row.shown === "pump");
    }
    function test_theEchoFitsEverySize(data) {
        open(data.size, data.state, "pump");
        if (data.state === "warned") {  // a can was filled, too: the echo asks
            keyClick("5");
            keyClick("2");
        } else if (data.state === "far") {  // just filled: the guess is nothing, and 9 L are asked about
            keyClick("9");
        }
        if (["calm", "low", "tanks"].includes(data.state)) { // nothing typed: it asks first
            Fixture.pump.save();
            wait(750);
        }
        Fixture.pump.save();
        wait(50);
        verify(buttonNamed("Undo"));
        compare(Fixture.pump.notices.length > 0, data.state === "warned" || data.state === "far");
        for (const text of visibleTexts()) {
            verifyInside(text);
            verify(text.height + 0.5 >= text.paintedHeight, describe(text) + " is too low");
        }
        touch("Undo");
        verify(!Fixture.pump.saved);
    }

    function test_aFillCanBeTypedWithTheKeyboardAlone() {
        open(Qt.size(800, 480), "calm", "now");
        keySequence("Ctrl+PgDown");
        compare(root.window.page, "pump");
        for (const key of ["3", "8", ".", "2"])
            keyClick(key);
        compare(Fixture.pump.form.fields[0].text, "38.2");
        keyClick(Qt.Key_Backspace);
        keyClick("5");
        keyClick(Qt.Key_Down);
        compare(Fixture.pump.form.activeField, 1);
        for (const key of ["4", "8", "3"])
            keyClick(key);
        compare(Fixture.pump.form.fields[1].text, "483");
        keyClick(Qt.Key_Return);
        compare(Fixture.pump.form.activeField, 2);
        keyClick(Qt.Key_Return);
        verify(!Fixture.pump.saved);  // it stands on Save now
        keyClick(Qt.Key_Return);
        verify(Fixture.pump.saved);
        compare(Fixture.pump.savedTitle, "38.5 L saved");
    }

    function test_everyButtonIsReachedByTabAndPressedByReturn_data() {
        return [{tag: "now", page: "now"}, {tag: "pump", page: "pump"}, {tag: "tank", page: "tank"}];
    }
    function test_everyButtonIsReachedByTabAndPressedByReturn(data) {
        open(Qt.size(800, 480), "warned", data.page);
        const wanted = visibleButtons();
        const reached = new Set();
        for (let i = 0; i < 3 * wanted.length; ++i) {
            keyClick(Qt.Key_Tab);
            reached.add(root.window.activeFocusItem);
        }
        for (const button of wanted)
            verify(reached.has(button), describe(button) + " is not reached");
    }

    function test_theModeIsSwitchedByTouchAndByKey() {
        open(Qt.size(800, 480), "calm", "now");
        touch("Usual mix: change");
        touch("Motorway");
        compare(Fixture.now.mode, "Motorway");
        touch("Motorway: change");
        tryVerify(() => buttonNamed("Town") !== null);
        buttonNamed("Town").forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Return);
        tryVerify(() => buttonNamed("Town: change") !== null);
    }

    // The reading goes into the log, and is listed and shown there.
    function test_aReadingIsKeptByTouch() {
        for (const size of [Qt.size(800, 480), Qt.size(480, 800)]) {
            open(size, "calm", "now");
            touch("Tell a reading or the odometer");
            tryVerify(() => buttonNamed("Keep this reading in the log") !== null);
            waitForRendering(root.window.contentItem);
            wait(50);
            verifyFits();
            verifyApart();
            keyClick(Qt.Key_Down);
            for (const key of ["1", ".", "5"])
                keyClick(key);
            const entries = Fixture.logbook.rows.rowCount();
            touch("Keep this reading in the log");
            tryCompare(root.window.pageItem, "tab", NowViewModel.Figures);
            verify(Fixture.now.age.startsWith("level kept"));
            compare(Fixture.logbook.rows.rowCount(), entries + 1);
            touch("Logbook");
            Fixture.logbook.open(0);
            verify(Fixture.logbook.title.startsWith("Level"));
            verify(Fixture.logbook.facts.some(fact => fact.value === "1.5"));
            waitForRendering(root.window.contentItem);
            wait(50);
            verifyFits();
        }
    }

    function test_warningsComeFirst() {
        open(Qt.size(800, 480), "warned", "now");
        const texts = visibleTexts();
        const top = t => t.mapToItem(null, 0, 0).y;
        const warning = texts.find(t => t.text.includes("Caution"));
        verify(warning);
        for (const text of texts) {
            if (text.mapToItem(null, 0, 0).x < 656 && !text.text.includes("1 of 2"))
                verify(top(text) >= top(warning), describe(text));
        }
    }

    function test_nightIsATouchAway() {
        open(Qt.size(800, 480), "calm", "now");
        touch("Night");
        verify(Theme.night);
        touch("Day");
        verify(!Theme.night);
    }
}
