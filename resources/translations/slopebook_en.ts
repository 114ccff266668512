<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>SessionChange</name>
    <message numerus="yes">
        <source>Move the session from %1 to %2, %n day(s) away?</source>
        <translation>
            <numerusform>Move the session from %1 to %2, %n day away?</numerusform>
            <numerusform>Move the session from %1 to %2, %n days away?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Moved to %1 with %n set(s), from %2. Ctrl+Z moves it back.</source>
        <translation>
            <numerusform>Moved to %1 with %n set, from %2. Ctrl+Z moves it back.</numerusform>
            <numerusform>Moved to %1 with %n sets, from %2. Ctrl+Z moves it back.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Device of %n set(s): now %1, was %2. Ctrl+Z changes it back.</source>
        <translation>
            <numerusform>Device of %n set: now %1, was %2. Ctrl+Z changes it back.</numerusform>
            <numerusform>Device of %n sets: now %1, was %2. Ctrl+Z changes it back.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Store</name>
    <message numerus="yes">
        <source>%n things wait</source>
        <translation>
            <numerusform>%n thing waits</numerusform>
            <numerusform>%n things wait</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n choices are open</source>
        <translation>
            <numerusform>%n choice is open</numerusform>
            <numerusform>%n choices are open</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n things wait, %1 of them not this login&apos;s to write: they stay in this log alone.</source>
        <translation>
            <numerusform>%n thing waits, %1 of them not this login&apos;s to write: it stays in this log alone.</numerusform>
            <numerusform>%n things wait, %1 of them not this login&apos;s to write: they stay in this log alone.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n things wait for the next meeting.</source>
        <translation>
            <numerusform>%n thing waits for the next meeting.</numerusform>
            <numerusform>%n things wait for the next meeting.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>slopebook::ui::ChoicesDialog</name>
    <message numerus="yes">
        <source>%n choices wait. One side of each counts until then; the choice goes along to the other log with the next merge.</source>
        <translation>
            <numerusform>%n choice waits. One side of it counts until then; the choice goes along to the other log with the next merge.</numerusform>
            <numerusform>%n choices wait. One side of each counts until then; the choice goes along to the other log with the next merge.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>slopebook::ui::MainWindow</name>
    <message numerus="yes">
        <source>%n choices between two logs wait: Log, Choose between two sides.</source>
        <translation>
            <numerusform>%n choice between two logs waits: Log, Choose between two sides.</numerusform>
            <numerusform>%n choices between two logs wait: Log, Choose between two sides.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>slopebook::ui::SessionDialog</name>
    <message numerus="yes">
        <source>%1 (%n day(s) apart)</source>
        <translation>
            <numerusform>%1 (%n day apart)</numerusform>
            <numerusform>%1 (%n days apart)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Expected a test within %n day(s): this one is %1 days away.</source>
        <translation>
            <numerusform>Expected a test within %n day: this one is %1 days away.</numerusform>
            <numerusform>Expected a test within %n days: this one is %1 days away.</numerusform>
        </translation>
    </message>
</context>
</TS>
