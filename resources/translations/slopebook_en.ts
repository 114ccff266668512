<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>Wording</name>
    <message numerus="yes">
        <source>%n repeat tests</source>
        <translation>
            <numerusform>%n repeat test</numerusform>
            <numerusform>%n repeat tests</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>the athlete&apos;s own: mean of %n true maxima</source>
        <translation>
            <numerusform>the athlete&apos;s own: one true maximum</numerusform>
            <numerusform>the athlete&apos;s own: mean of %n true maxima</numerusform>
        </translation>
    </message>
</context>
</TS>
