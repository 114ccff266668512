<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AgreementWords</name>
    <message>
        <source>No sets seen by both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean of %1 and %2 (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 − %2 (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bias</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upper limit</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Attempts</name>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>values in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flight times in s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height in m / contact time in s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flight time / contact time in s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>force in N (the session needs a body mass)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, Enter: %2   x after one leaves it out, # why   - # why: not possible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing typed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A number was expected there, such as 1.82.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A value above 0 was expected. What was not possible is no 0: type - # and why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This test has sides: type L or R before the attempts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This test has no sides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two numbers with a stroke between them were expected: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One number an attempt was expected: this test takes no contact time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type # and why at the end: it is kept with the attempt.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attempts were expected after the side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BatteryPrint</name>
    <message>
        <source>%1: all tests, %2 to %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test (unit)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 interval</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>TE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left and right: the better side, and by how much of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test or lift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To beware of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Computed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Interval: change ± t ↢ TE on the degrees of freedom of TE, the typical error. Better or worse: the interval excludes zero; held: the interval of two one-sided tests lies inside the smallest change that matters; else unclear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sources</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All tests from %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it could not be painted</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BatteryWords</name>
    <message>
        <source>%1: %2, then %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No test of the battery was done on either side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>* compared over a changed context.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&gt; m: by more than the smallest change that matters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not in the chart: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: typical error %2 %3, %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: smallest change that matters %2 %3, %4</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Card</name>
    <message>
        <source>1 set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1   %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, each side: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of the estimated 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fastest rep expected: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End the set at %1, or at %2 % of the day&apos;s own fastest rep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fastest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the test of %1; equipment: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restricted-flow training</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: page %3 of %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it could not be painted</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Edit</name>
    <message>
        <source>set check loads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo failed (%1): %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo failed (%1): %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it has been changed by another window since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>add session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>remove session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>include set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exclude set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>add set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>add sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>remove set</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ImportReport</name>
    <message>
        <source>Rows read: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be added: %1 sessions, %2 sets, %3 reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Already in the log, left as they are: %1 sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New athletes: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New lifts: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New devices: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New training blocks: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the battery: %1 attempts, %2 tests not possible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New tests: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Columns not used: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken, and worth a look:</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Menus</name>
    <message>
        <source>&amp;Log</source>
        <translation>&amp;Logbuch</translation>
    </message>
    <message>
        <source>&amp;New log…</source>
        <translation>&amp;Neues Logbuch …</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen …</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the &amp;sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Import CSV…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Back up…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write P&amp;DF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <source>&amp;Leave out, note…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re&amp;move set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re&amp;cords</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add &amp;athlete…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change athlete…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add &amp;lift…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change li&amp;ft…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chec&amp;k loads…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New &amp;session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session d&amp;etails…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Devices…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Training blocks…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T&amp;ype a set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find &amp;athlete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find li&amp;ft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Keys and method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;About Slopebook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>As the &amp;desktop</source>
        <translation>Wie die Arbeits&amp;fläche</translation>
    </message>
</context>
<context>
    <name>NoiseWords</name>
    <message>
        <source>none named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all athletes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole line, from day to day (in use)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeat tests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typical error (m/s; 1RM: %1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CV %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CV % by logs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest detectable change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimated 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no noise of its own: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeat test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Interval</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets seen by both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Athletes, sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bias (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower limit of agreement (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upper limit of agreement (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SD of the differences (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proportion, least products (slope)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Intercept, least products (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correlation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bias that comparisons take off (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Difference (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 reads %2 m/s more than %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 reads %2 m/s less than %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No clear bias between %1 and %2: %3 m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (%1 %2); of twenty sets about nineteen differ by %3.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>OpenLog</name>
    <message>
        <source>This log is damaged (%1 found, the first: %2). What still reads is shown; go back to a backup before anything is added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This log can only be read: nothing typed here would be kept.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>Change from %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier (■, dashed): %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later (●, solid): %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By load: what the lines say, m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, with day-to-day noise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, these two days only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest that matters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1RM, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To beware of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Computed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sources</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it could not be painted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 counting sets, %2 to %3 %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body mass %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; estimate %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, very far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2 (%3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (no. %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>† check load.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>* beyond the loads that both sessions lifted: extrapolated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 incl. the MVT&apos;s SD; change incl. noise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smallest that matters %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of the line; change of two days only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reach (heaviest load / estimate)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured 1RM (a true maximum lifted)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The interval of each estimate includes the MVT&apos;s own SD; that of the change does not: both estimates use the same MVT, so it nearly cancels (what is left is %1 %2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No figure for the change: a slope is not certain enough to bound it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: V0 %2 m/s, slope %3 m/s per %4, residual SD %5 m/s, R² %6, n %7</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>p &lt; %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>p = %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: F(%2, %3) = %4, %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One least-squares line of velocity on load a session (%1 of each counting set). %2. %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fastest rep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean of the reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change: both lines in one model, one residual variance (%1 df).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change: both lines, each with its own residual variance (Satterthwaite&apos;s df).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parallel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one line for both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band over all loads: Working and Hotelling 1929.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated 1RM: the load at which a line reaches the MVT; interval: Fieller 1954; of the change: variance recovery, Zou and Donner 2008.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Better or worse: the %1 interval with day-to-day noise leaves out zero. Held: the %2 interval lies within the smallest change that matters. Else unclear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MVT (minimal-velocity threshold): %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day-to-day noise: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest change of speed that matters, by load: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest change of speed that matters: %1 m/s (%2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest change of speed that matters, other loads: %1 m/s (%2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest change of the estimated 1RM that matters: %1 %2 (%3).</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Pages</name>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it could not be painted</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Plan</name>
    <message>
        <source>no plates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Borrowing from the athlete&apos;s %1 sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: estimated 1RM %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (%1 to %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; from this session alone %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not start without medical clearance with: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop and deflate at once for: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To medical care for: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual practice: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>best for the 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>best for the check loads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two extremes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as last time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>even steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2 sets)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: a true change of %2 m/s is read as one with a chance of %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; one test will do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; %1 tests after the block, on separate days, make it 80 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; no number of later tests makes it 80 %, for the earlier test was done once: from now on test %1 times before and after.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; not even 20 tests on each side make it 80 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No change would be read as held by one test.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No change would be read as held after %1 later tests.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No change would be read as held by %1 tests on each side.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Season</name>
    <message>
        <source>%1 at %2 (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SeasonRows</name>
    <message>
        <source>%1 #%2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Device: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The load lies beyond the session&apos;s loads: extrapolated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The device&apos;s bias against the baseline&apos;s, %1 m/s, is taken off in change, trend and chart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the line (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Interval</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Interval, with day-to-day noise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated 1RM (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured 1RM (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (extrapolated)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>baseline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (far)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not bounded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No trend: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trend over %1 sessions: %2 m/s a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (%1 %2)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SeasonWords</name>
    <message>
        <source>from the line, with its %1 interval</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seen at the load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beyond the loads lifted; 1RM: reach below 0.80</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smallest detectable change (±%1 m/s) around the baseline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>baseline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to follow yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1RM (%1)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Sentence</name>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1 to %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up to %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, more than the smallest change that matters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, less than the smallest change that matters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (by %1 m/s%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>faster %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slower %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>speed held %1 (%2 m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no clear change %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no figure %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the two sessions share no loads, so nothing is said by load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no clear change at any load %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimated max up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimated max down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimated max held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no clear change of the estimated max</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (reach %1 both times: extrapolations)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (reach %1, then %2: extrapolations)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (the earlier one&apos;s reach %1: an extrapolation)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (the later one&apos;s reach %1: an extrapolation)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no estimated max: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 %3 (%4 to %5)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; %2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SetWords</name>
    <message>
        <source>Expected a load in kg, then the reps&apos; speeds in m/s: 60 0.92 0.90 0.88.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found %1, expected a number such as 62.5 or 0,92: digits and one decimal mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found %1, expected one decimal mark: the comma is a decimal mark too, and there are no marks for thousands. Blanks go between numbers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found %1, expected digits after the decimal mark. Blanks go between numbers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found a load of %1, expected at most 2000 kg.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found %1, expected the load alone: an x leaves out a rep and follows its speed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found %1 among the speeds, expected a speed in m/s. The load stands first, and a ! for a true maximum follows it: 92.5! 0.18.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected the reps&apos; speeds in m/s after the load: 60 0.92 0.90 0.88.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found %1, expected a speed above 0. A rep that did not go up has none: leave it out and say so in a note (# missed).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found %1, expected a speed under 10 m/s, such as 0.92.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found %1 in the load&apos;s place, expected the load first, then the speeds: 60 0.92 0.90.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found %1 after the first rep of a true maximum, expected one rep: 92.5! 0.18.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 m/s? Found %2, expected a speed under 10 m/s. Enter takes it as %1; Esc leaves it for you to correct.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 kg?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 m/s?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SquadForestWords</name>
    <message>
        <source>change (later − earlier), %1 interval with day-to-day noise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below the smallest change that matters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>extrapolated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change of the estimated 1RM (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change of speed at %1 (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody to compare yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SquadPaper</name>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the session nearest to %1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squad: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change from %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To beware of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squad: %1, from %2 to %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SquadRows</name>
    <message>
        <source>; extrapolated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; far from any load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; device corrected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; two devices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 better, %2 worse, %3 held, %4 unclear, %5 without a figure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 interval</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest that matters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest change that matters: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of a block its last session that makes a line stands, of a date the nearest. Readings hold day-to-day noise; rows go better, worse, held, unclear, and by size in each.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Units</name>
    <message>
        <source>%1 to %2</source>
        <extracomment>an interval: low to high</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Wording</name>
    <message numerus="yes">
        <source>%n repeat tests</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>better</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unclear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, by over %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, by under %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the athlete&apos;s own: one true maximum</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>the athlete&apos;s own: mean of %n true maxima</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>the coach&apos;s own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coach&apos;s own: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>published, not yours: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 m/s (SD %2; %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 m/s (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>squad: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SD %1 m/s (the athlete&apos;s own: %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SD %1 m/s (this log&apos;s: %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SD %1 m/s (published, not yours: %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known: the readings are made from these two days alone, which calls too much a change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No set of this session counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No minimal-velocity threshold (MVT) is known for this lift. Set one with the lift.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A thrown or jumped lift is followed by velocity at load only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 m/s at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The points bend (p = %1): a straight line misses their ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lies far from the line of the other points (studentised %2): worth a look.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is hard to believe: worth a look.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Extrapolated far: the estimated 1RM lies %1 beyond the heaviest load (reach %2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heaviest load is under half of the estimated 1RM, which lies %1 beyond it (reach %2): read its interval first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The slope is not certain enough to bound the estimate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sessions share no stretch of loads: every change by load is extrapolated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two points make a line without intervals: it needs a third load.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Intervals are at %1, not 95 %.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>cautions</name>
    <message>
        <source>An estimate, not clearance to lift. Near-maximal lifts need a competent spotter or safeties, and a coach&apos;s eye. Pain, illness or return from injury: a qualified practitioner decides. Local rules come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loads are estimates, not clearance to lift. Near-maximal lifts need a competent spotter or safeties, and a coach&apos;s eye. Restricted-flow training needs screening for vascular, cardiac, clotting and pressure problems, and trained supervision. Pain, illness or return from injury: a qualified practitioner decides. Local rules come first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>format</name>
    <message>
        <source>mean velocity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean propulsive velocity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>peak velocity</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>sessionview</name>
    <message>
        <source>%1 (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::AgreementView</name>
    <message>
        <source>Devices compared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the devices differ by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures of the agreement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets seen by both devices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Devices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a lift.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sets of this lift were measured by two devices at once. Enter the same sets as two sessions of one athlete and day, each with its device: then they are compared here, and comparisons across the two have the bias taken off.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::AthleteDialog</name>
    <message>
        <source>Change athlete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add athlete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected a name.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::AttemptsView</name>
    <message>
        <source>&amp;New session today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a &amp;trace...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What a comparison rests on: where it changed, the comparison says so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;urface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F&amp;ootwear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Techni&amp;que</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tests...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T&amp;est</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Attempts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answer to what was typed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attempts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Values of the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Leave out or take in again...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found %1, expected %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source> - %n attempt(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>change context</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>add attempts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a session first: New session today.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note a gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the attempt out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why does it not count?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>include attempt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exclude attempt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>remove attempt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>remove gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a lift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not possible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Better side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose an athlete.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No session yet: make one with New session today.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::BatteryPage</name>
    <message>
        <source>Attempts of a session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speeds are on the clipboard: on the Session tab type the load, then paste (%1)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::BeforeAfterView</name>
    <message>
        <source>Choose an athlete.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;After</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pre&amp;view...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;DF...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;CSV...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the battery says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the lifts say</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes and sources</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tests before and after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left and right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left and right: the better side, and by how much of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two dates or two blocks with sessions are needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test (unit)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 interval</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typical error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side of the comparison</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test or lift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The page could not be printed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::BlockDialog</name>
    <message>
        <source>Change training block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add training block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;First day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Last day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load &amp;ceiling, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heaviest load at hand in that block. Empty: no ceiling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected a load in kg, such as 40, or nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected a last day on or after the first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::BlocksDialog</name>
    <message>
        <source>Training blocks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ceiling, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Training block</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::BlocksPage</name>
    <message>
        <source>Training blocks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions of the selected block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Training &amp;blocks...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled mark: session. Hollow: something was not possible. Lid on a block: a load ceiling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside any block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not possible: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load ceiling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose an athlete.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sessions in this block.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;essions in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lifts and tests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not possible, and why</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::CautionLabel</name>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::CheckLoadsDialog</name>
    <message>
        <source>Check loads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Loads, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The submaximal loads of %1&apos;s %2 to follow through the season, such as 40 60. Empty: none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found %1, expected loads in kg with blanks between them, such as 40 60 72.5.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::ComparePage</name>
    <message>
        <source>Print pre&amp;view…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save P&amp;DF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pa&amp;rts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level of the intervals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one scatter for both days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each day its own scatter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scatter about the lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>La&amp;ter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Le&amp;vel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Scatter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart of both &amp;lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart of the &amp;change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table by l&amp;oad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;How it was computed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is printed beside the sentence, the sources and the cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper of the PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper o&amp;f the PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (no. %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose an athlete and a lift to compare two of their sessions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A comparison needs two sessions of this lift with sets that count. The log holds %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the comparison as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer took nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The page as it is printed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print preview</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::ComparisonView</name>
    <message>
        <source>Change by load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change by load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Both lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By &amp;load: what the lines say, m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1&amp;RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To beware of, and where the figures come from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, these two days only: %2 m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 with noise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::DeviceDialog</name>
    <message>
        <source>Change device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected a name.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::DevicesDialog</name>
    <message>
        <source>Devices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::EntryLine</name>
    <message>
        <source>Set: load, then the reps&apos; speeds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>60 0.92 0.90 0.88</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answer to the typed line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load in kg, each rep&apos;s speed in m/s, Enter.  Up: next load.  ! after the load: true maximum.  x after a speed: left out.  # note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1 of what was pasted: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken, and flagged for a look: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::EntryPage</name>
    <message>
        <source>Next load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets of this session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The ladder of last time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T&amp;his session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L&amp;eave out, note…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What counts of the selected set, and why not (Ctrl+Shift+E)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re&amp;move set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete does the same in the table; Undo brings the set back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart of load and velocity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No athlete yet: add one (Ctrl+Shift+A).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No lift yet: add one (Ctrl+Shift+L).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last time, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No earlier session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next load %1 kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose an athlete and a lift first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session removed. Ctrl+Z brings it back with its sets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set removed. Ctrl+Z brings it back.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::EquipmentDialog</name>
    <message>
        <source>Bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mass with collars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mass of one plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pairs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dumbbell, kettlebell, …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Masses on their own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vest, belt, band, …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Masses added to any load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set of equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>home, gym, travel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Plates, in pairs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Masses &amp;on their own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Masses &amp;added to any load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Ceiling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none: the heaviest load that may be used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No&amp;te</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Masses are kg; write lb behind a number for pounds (45 lb). Both are kept exactly. A band counts with the pull you measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the ceiling</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::FiguresPanel</name>
    <message>
        <source>Estimated 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About the estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures of the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes on the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated 1RM: no sets yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated 1RM: no figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated 1RM %1 kg, no interval</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated 1RM %1 kg (%2), middle %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated 1RM %1 kg (%2: %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the interval needs a third load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reach %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, extrapolated very far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, extrapolated far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MVT %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with the MVT&apos;s own spread %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured 1RM %1 kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>V0 %1 m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slope %1 m/s per kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R² %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 kg</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::ForestChart</name>
    <message>
        <source>change, in units of the smallest change that matters (grey: smaller)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>better</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changes of all tests in units of the smallest change that matters; the same figures stand in the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 units, %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::FormDialog</name>
    <message>
        <source>What is wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found %1, expected %2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::HelpDialog</name>
    <message>
        <source>&lt;h3&gt;One line a set&lt;/h3&gt;&lt;p&gt;&lt;code&gt;60 0.92 0.90 0.88&lt;/code&gt; and Enter: 60 kg and three reps. It is on disk when the line is empty again.&lt;/p&gt;&lt;ul&gt;&lt;li&gt;Point and comma are both the decimal mark; there are no marks for thousands. Blanks, tabs or ; go between the numbers.&lt;/li&gt;&lt;li&gt;Up puts the next load there: the ladder of last time, above its top the same rise again. Down steps back.&lt;/li&gt;&lt;li&gt;&lt;code&gt;92.5! 0.18&lt;/code&gt;: a successful true maximum, one rep.&lt;/li&gt;&lt;li&gt;&lt;code&gt;60 0.92 0.71x # slipped&lt;/code&gt;: the second rep is left out; what follows # is the note and the reason. It stays in the log and is drawn hollow.&lt;/li&gt;&lt;li&gt;&lt;code&gt;60 92&lt;/code&gt;: the line asks whether 0.92 was meant; Enter says yes, Esc no.&lt;/li&gt;&lt;li&gt;Several lines pasted from a spreadsheet go in at once, all or none.&lt;/li&gt;&lt;li&gt;In the table F2 changes a cell and Delete removes the set.&lt;/li&gt;&lt;/ul&gt;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&lt;h3&gt;The method in plain words&lt;/h3&gt;&lt;p&gt;Each set gives one point: its fastest rep, or the mean of its reps, as the lift says. The &lt;b&gt;line&lt;/b&gt; is the ordinary least-squares regression of velocity on load through the session&apos;s points.&lt;/p&gt;&lt;p&gt;The &lt;b&gt;estimated 1RM&lt;/b&gt; is the load at which the line meets the minimal-velocity threshold (MVT): the athlete&apos;s own true maxima where there are any, else the coach&apos;s figure, else a published one. Its interval is Fieller&apos;s (1954; Draper and Smith, Applied Regression Analysis). &lt;b&gt;Reach&lt;/b&gt; is the heaviest load divided by that estimate: under 0.80 it is extrapolated far, under 0.50 the interval stands first. Individual estimates of free-weight maxima run high even with loads to 90 % (Banyard, Nosaka and Haff 2017).&lt;/p&gt;&lt;p&gt;A &lt;b&gt;comparison&lt;/b&gt; of two sessions takes both lines together, and adds the noise from day to day (Hopkins 2000), which one day&apos;s scatter does not show. A change is better or worse when its interval leaves out zero, held when it surely lies within the smallest change that matters, else unclear. Where lines differ is found as by Johnson and Neyman (1936); the change of 1RM as by Zou and Donner (2008).&lt;/p&gt;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys and method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&lt;h3&gt;Keys&lt;/h3&gt;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&lt;h3&gt;Cautions&lt;/h3&gt;</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::HistoryModel</name>
    <message>
        <source>%1 (no. %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (no bound)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; estimate %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>* outside the loads lifted that day: extrapolated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heaviest load / estimated 1RM. Under %1 the estimate is extrapolated far.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day of the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Training block that the day lies in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What measured the bar speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets that count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>n</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lightest and heaviest load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loads, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Velocity at zero load, from the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>V0, m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>m/s per %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the scatter that the line explains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated 1RM with the interval of the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Est. 1RM, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heaviest load / estimated 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A true maximum that was lifted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lifted 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Velocity that the line gives at the check load of %1, m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::HistoryPage</name>
    <message>
        <source>&amp;Open the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy the rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Delete the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Com&amp;pare these two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Com&amp;pare with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The session of %1 is deleted. Undo brings it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The session of %1 also holds sets of: %2. Delete all of it? Undo brings it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a date, block or device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Find</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>History of sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose an athlete and a lift to see their sessions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No session of this lift yet. Enter one in the session form, or import.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 session.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 sessions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter opens one; choose several to lay their lines over each other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines of %1 sessions; their figures are in the table.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (no. %2)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::ImportDialog</name>
    <message>
        <source>Import CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the files hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can go into the log, whole or not at all. An import is not undone by Undo: a backup beforehand is the way back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds nothing that the log does not have.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be taken in; nothing was written. Expected: UTF-8 CSV with a header row date,athlete,lift,set,load_kg,rep,velocity and one row a rep. A workbook comes in saved as CSV.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The import failed; nothing was written.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::LadderModel</name>
    <message>
        <source>next: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reps, m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::LiftDialog</name>
    <message>
        <source>Change lift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add lift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Measured as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changing this relabels the speeds that the log already holds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fastest rep of the set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the mean of the set&apos;s reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A set&apos;s &amp;point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thrown or jumped: a line, and no 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Ballistic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MV&amp;T, m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its S&amp;D, m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its so&amp;urce</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The minimal-velocity threshold: the speed at which the 1RM is lifted. An athlete&apos;s own true maxima come before it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest change, m/&amp;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest change, &amp;kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The smallest changes that matter to you, of a speed and of the 1RM. Empty: published defaults, named as such.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>published: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>published: %1 % of the estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected a speed between 0 and 2 m/s, such as 0.17.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected a spread in m/s, such as 0.03, or nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected a change in m/s, such as 0.05, or nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected a change in kg, such as 2.5, or nothing.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::LinesModel</name>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1RM, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>95 %, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>V0, m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>s, m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loads, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L0, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked: on the chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated 1RM; in brackets where reach is under half</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Interval of the estimate from the line alone, 95 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heaviest load lifted / estimated 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured 1RM: the heaviest true maximum, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Velocity at zero load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>m/s per kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Residual SD of the points about the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the spread that the line explains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets that count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lightest to heaviest load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load at zero velocity</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::Logbook</name>
    <message>
        <source>add athlete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>add lift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>add device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>add training block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>add set of equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>add test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>remove test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change athlete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change lift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change training block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change set of equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>remove training block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>remove set of equipment</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::MainWindow</name>
    <message>
        <source>Slopebook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – Slopebook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A CSV file goes into a log: open one, or make a new one, then drop it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Logs (*.slopebook);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to print yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CSV (*.csv *.txt);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back up to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backed up, and the copy checked: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About Slopebook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&lt;h3&gt;Slopebook %1&lt;/h3&gt;&lt;p&gt;Load-velocity lines, estimated 1RM with an honest interval, and what changed between sessions.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later, without any warranty.&lt;/p&gt;&lt;p&gt;Made with Qt %2 and Qt Charts (GPL 3), Eigen (MPL 2), Boost.Math (BSL 1.0), SQLite (public domain), SQLiteCpp (MIT), libcsv (LGPL 2.1).&lt;/p&gt;&lt;p&gt;%3&lt;/p&gt;</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::MessageBar</name>
    <message>
        <source>Message</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::NameCombo</name>
    <message>
        <source>type to find</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::NextTestPane</name>
    <message>
        <source>as before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the test&apos;s own scatter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with earlier tests&apos; scatter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scatter taken as known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the interval is made with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;teps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reps a set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Heaviest, of 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I&amp;ntervals by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which ladder to test with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would settle what is unclear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ladders for the next test, best first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too few sets of two reps to say what more reps would do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The best ladder can be expected to give the estimated 1RM to ± %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No ladder of these loads can be expected to bound the estimated 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The best ladder can be expected to give a change to ± %1 m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (this session&apos;s: ± %1 %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half the sets at the lightest and half at the heaviest load would give %1 times that, and could not show a bend.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scatter from %1 sessions: SD %2 m/s.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::NoisePage</name>
    <message>
        <source>From &amp;repeat tests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between de&amp;vices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kinds of noise</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::NoiseView</name>
    <message>
        <source>&amp;Every lift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Noise by lift, device and load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeat tests used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Repeat tests used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a lift, or every lift.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A repeat test is marked in the session&apos;s details: same conditions, within a few days. Readings use the athlete&apos;s own day-to-day noise from %1 repeat tests on, else the log&apos;s from as many, else the published figure.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::PeriodChooser</name>
    <message>
        <source>On or near a date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: days around it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>± </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> days</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::PlanForm</name>
    <message>
        <source>Ne&amp;w…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chan&amp;ge…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re&amp;move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restricted-&amp;flow window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Borrow from earlier sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speed of the fastest rep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aim, from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aim, to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to (window)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nearest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none beside the set&apos;s own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Session of the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E&amp;quipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ceiling toda&amp;y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Aim at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From, to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop after l&amp;osing (%)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show loads &amp;in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session of the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ceiling today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aim at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load: which side of the aim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop after losing, percent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show loads in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (no. %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the ceiling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the aim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the velocity loss</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::PlanLadderModel</name>
    <message>
        <source>not bounded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>± %1 (lines ± %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two loads cannot show whether the points bend, and one slip of a set bends the whole line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>#</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loads (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heaviest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change at %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::PlanModel</name>
    <message>
        <source>Outside the loads of the test: the line drawn on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put on (each side)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of estimated 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fastest rep expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1RM share of others</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::PlanPage</name>
    <message>
        <source>What is planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Borrowed from earlier sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loads that can be built</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Loads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ne&amp;xt test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;quad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose an athlete and a lift.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No session of this lift yet: test first, then plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a set of equipment first: the bars and plates at hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every load of this set of equipment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The aim is %1; to be built: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The aim is %1 to %2; to be built: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set of equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Removed; undo brings it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the card as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer took nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The card as it is printed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print preview</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::PointsModel</name>
    <message>
        <source>left out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>far from its line: have a look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Residual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leverage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Studentised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::ProfilePage</name>
    <message>
        <source>Choose an athlete and a lift.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart of the chosen sessions&apos; lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions and their lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points of the selected session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session&amp;s (checked: on the chart)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sets of this lift yet: type the first on the Session tab.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points of %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::RelationPane</name>
    <message>
        <source>not used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the squad&apos;s own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the published equation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Use in the table of loads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The squad: %1 athletes, %2 points; one point scatters by %3 % of the 1RM about the curve.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No published equation is known for this lift and kind of velocity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People differ: such a share is of others, never of this athlete.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::SeasonPage</name>
    <message>
        <source>Choose an athlete and a lift.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load to follow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Baseline session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use the selected as &amp;baseline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Compare it with the baseline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ba&amp;seline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click a session to make it the baseline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions, the load and the estimated 1RM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the season says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the figures come from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (check load)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sets of this lift yet: type the first on the Session tab.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season of %1 at %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::SessionBar</name>
    <message>
        <source>Sta&amp;rt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start this session (Enter in the last field does the same)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Detai&amp;ls…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeat test, note and the rest of this session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>De&amp;vice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Body, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Body mass, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add device…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a body mass of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kilograms, such as 74.5, or nothing</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::SessionDialog</name>
    <message>
        <source>Session details</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Body mass, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What may matter later: surface, footwear, sleep, soreness.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>De&amp;vice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Repeat test of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Same conditions within a few days and no training effect expected: such pairs tell the noise of the test.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected a body mass in kg, such as 74.5, or nothing.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::SetDialog</name>
    <message>
        <source>Set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set %1, %2 kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Whole set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rep &amp;%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rep %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 m/s counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a successful true maximum (1RM)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Maximum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reason for leaving it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected a reason: it stays with what is left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected one rep in a true maximum; this set has %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::SetModel</name>
    <message>
        <source>true maximum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rep %1 left out: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>have a look: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>have a look: %1 residuals from its line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reps, m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::SquadPage</name>
    <message>
        <source>&amp;From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a lift.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is compared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Athletes and their changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open this session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save P&amp;DF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No check load is set for this lift: nothing is followed in the squad.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 to %3: %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no session of this lift in either.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squad %1 %2 to %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the squad as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer took nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The page as it is printed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print preview</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::TestDialog</name>
    <message>
        <source>Test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the day&apos;s value: m, s, N, points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>higher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Better is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left and right apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>best attempt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean of the attempts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value of the &amp;day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Attempts planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number as it is read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jump height from flight time (s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reactive strength from height (m) / contact time (s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reactive strength from flight time / contact time (s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>force (N) per kg of body mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Computed from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;ecimals shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Typical error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>used until the log has two repeat tests of its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>percent of the value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typical error &amp;in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it comes &amp;from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;mallest change that matters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the unit; used until eight athletes have the test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where that comes f&amp;rom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left empty: your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the test a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the unit of its value, such as m, s, N or points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A number above 0, such as 0.05, or nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say where the typical error comes from.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::TestsDialog</name>
    <message>
        <source>Tests of the battery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::Timeline</name>
    <message>
        <source>Timeline of training blocks; the same stands in the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No blocks and no sessions yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no load over %1 kg</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::TraceDialog</name>
    <message>
        <source>From a trace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A CSV file with one row a sample: time in s, and force in N or displacement in m; 100 Hz to 10 kHz.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;File...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>isometric push or pull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jumps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reps of a lift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures of the trace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Becomes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Becomes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Accept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CSV (*.csv *.txt *.tsv);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>push %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jump %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rep %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 samples at %2 Hz. Drag a mark, or Tab to it and use the arrow keys: the figures follow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an attempt of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handed over: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This trace does not give what that test needs (a jump without a contact before it has no contact time).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added to the session: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean velocities to the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean propulsive velocities to the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>peak velocities to the session</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::TraceView</name>
    <message>
        <source>Curve with marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag a mark, or Tab to it and move it with the arrow keys (Shift: ten samples). Wheel, plus and minus: zoom; 0: everything.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No trace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark %1 at %2 s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time (s); displacement (m)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time (s); force (N)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::WelcomePage</name>
    <message>
        <source>&amp;Recent logs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slopebook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a ladder of loads and bar speeds, see its line and the estimated 1RM with an honest interval, compare it with last time&apos;s, print the page. Everything is kept in one file, your log; what you type is on disk at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What went wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recent logs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the &amp;sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A rowing squad, a flooded weights room: a copy to try on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One file, where you choose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open a log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Or drop it on this window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Import CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date, athlete, lift, set, load, rep and velocity, one row a rep</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::Workspace</name>
    <message>
        <source>Session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>History</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Battery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Noise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Athlete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add athlete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Li&amp;ft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add lift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Messages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tasks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Imported.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::charts::CeilingFigure</name>
    <message>
        <source>Heaviest load allowed (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected ± of the 1RM (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected ± of the change (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today&apos;s ceiling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to show yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>even steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>best ladder</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::charts::ChangeFigure</name>
    <message>
        <source>Load (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>faster</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change, later − earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, these two days only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, all loads at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 with day-to-day noise: the reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smallest that matters, ±%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lines differ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beyond the loads of both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to compare yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::charts::ChartView</name>
    <message>
        <source>&amp;Copy the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as &amp;PNG…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as &amp;SVG…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawings (*.svg)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be written.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::charts::LineFigure</name>
    <message>
        <source>Load (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Velocity (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sets yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MVT %1 m/s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2) %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>est. 1RM %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, lifted %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>slopebook::ui::charts::RelationFigure</name>
    <message>
        <source>Velocity (m/s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the 1RM (%)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to show yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the squad, curved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>straight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>published</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
