<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AgreementWords</name>
    <message>
        <source>No sets seen by both</source>
        <translation>Keine Sätze, die beide gemessen haben</translation>
    </message>
    <message>
        <source>Mean of %1 and %2 (m/s)</source>
        <translation>Mittel von %1 und %2 (m/s)</translation>
    </message>
    <message>
        <source>%1 − %2 (m/s)</source>
        <translation>%1 − %2 (m/s)</translation>
    </message>
    <message>
        <source>bias</source>
        <translation>Bias</translation>
    </message>
    <message>
        <source>lower limit</source>
        <translation>untere Grenze</translation>
    </message>
    <message>
        <source>upper limit</source>
        <translation>obere Grenze</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>set</source>
        <translation>Satz</translation>
    </message>
</context>
<context>
    <name>Attempts</name>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>values in %1</source>
        <translation>Werte in %1</translation>
    </message>
    <message>
        <source>flight times in s</source>
        <translation>Flugzeiten in s</translation>
    </message>
    <message>
        <source>height in m / contact time in s</source>
        <translation>Höhe in m / Kontaktzeit in s</translation>
    </message>
    <message>
        <source>flight time / contact time in s</source>
        <translation>Flugzeit / Kontaktzeit in s</translation>
    </message>
    <message>
        <source>force in N (the session needs a body mass)</source>
        <translation>Kraft in N (die Einheit braucht eine Körpermasse)</translation>
    </message>
    <message>
        <source>%1, Enter: %2   x after one leaves it out, # why   - # why: not possible</source>
        <translation>%1, Enter: %2   x nach einem Wert schließt ihn aus, # Grund   - # Grund: nicht möglich</translation>
    </message>
    <message>
        <source>Nothing typed.</source>
        <translation>Nichts eingegeben.</translation>
    </message>
    <message>
        <source>A number was expected there, such as 1.82.</source>
        <translation>Hier wird eine Zahl erwartet, etwa 1,82.</translation>
    </message>
    <message>
        <source>A value above 0 was expected. What was not possible is no 0: type - # and why.</source>
        <translation>Ein Wert über 0 wird erwartet. Was nicht möglich war, ist keine 0: - # und den Grund eingeben.</translation>
    </message>
    <message>
        <source>This test has sides: type L or R before the attempts.</source>
        <translation>Dieser Test hat Seiten: L oder R vor den Versuchen eingeben.</translation>
    </message>
    <message>
        <source>This test has no sides.</source>
        <translation>Dieser Test hat keine Seiten.</translation>
    </message>
    <message>
        <source>Two numbers with a stroke between them were expected: </source>
        <translation>Zwei Zahlen mit einem Schrägstrich dazwischen werden erwartet: </translation>
    </message>
    <message>
        <source>One number an attempt was expected: this test takes no contact time.</source>
        <translation>Eine Zahl je Versuch wird erwartet: Dieser Test hat keine Kontaktzeit.</translation>
    </message>
    <message>
        <source>Type # and why at the end: it is kept with the attempt.</source>
        <translation>Am Ende # und den Grund eingeben: Er bleibt beim Versuch stehen.</translation>
    </message>
    <message>
        <source>Attempts were expected after the side.</source>
        <translation>Nach der Seite werden Versuche erwartet.</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>ausgeschlossen: %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Change it, or Enter again takes it as it stands.</source>
        <translation>Ändern, oder noch einmal Enter: Dann gilt es, wie es dasteht.</translation>
    </message>
    <message>
        <source>This test has sides: type L, R or B (both at once) before the attempts.</source>
        <translation>Dieser Test hat Seiten: L, R oder B (beide zugleich) vor die Versuche schreiben.</translation>
    </message>
    <message>
        <source>This test takes each side alone: type L or R.</source>
        <translation>Dieser Test nimmt jede Seite für sich: L oder R schreiben.</translation>
    </message>
    <message>
        <source>Found %1: an effort belongs to a set of a lift, and this is a test.</source>
        <translation>Gefunden: %1. Eine Anstrengung gehört zu einem Satz einer Übung, und dies ist ein Test.</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beide</translation>
    </message>
</context>
<context>
    <name>BatteryPrint</name>
    <message>
        <source>%1: all tests, %2 to %3</source>
        <translation>%1: alle Tests, %2 bis %3</translation>
    </message>
    <message>
        <source>Tests</source>
        <translation>Tests</translation>
    </message>
    <message>
        <source>Test (unit)</source>
        <translation>Test (Maßeinheit)</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>%1 interval</source>
        <translation>Intervall (%1)</translation>
    </message>
    <message>
        <source>TE</source>
        <translation>TE</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Left and right: the better side, and by how much of it</source>
        <translation>Links und rechts: die bessere Seite und um wie viel</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>What was missing</source>
        <translation>Was fehlte</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Test or lift</source>
        <translation>Test oder Übung</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Übungen</translation>
    </message>
    <message>
        <source>To beware of</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>Computed</source>
        <translation>Berechnung</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>All tests from %1 to %2</source>
        <translation>Alle Tests von %1 bis %2</translation>
    </message>
    <message>
        <source>Change of the difference (%1 interval)</source>
        <translation>Änderung des Unterschieds (Intervall %1)</translation>
    </message>
</context>
<context>
    <name>BatteryWords</name>
    <message>
        <source>%1 (mean of %2)</source>
        <translation>%1 (Mittel aus %2)</translation>
    </message>
    <message>
        <source>%1 (mean of %2: %3)</source>
        <translation>%1 (Mittel aus %2: %3)</translation>
    </message>
</context>
<context>
    <name>Card</name>
    <message>
        <source>1 set</source>
        <translation>1 Satz</translation>
    </message>
    <message>
        <source>%1 sets</source>
        <translation>%1 Sätze</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 zu %2</translation>
    </message>
    <message>
        <source>%1   %2</source>
        <translation>%1   %2</translation>
    </message>
    <message>
        <source>%1, each side: %2</source>
        <translation>%1, je Seite: %2</translation>
    </message>
    <message>
        <source>%1 of the estimated 1RM</source>
        <translation>%1 des geschätzten 1RM</translation>
    </message>
    <message>
        <source>Fastest rep expected: %1</source>
        <translation>Schnellste Wiederholung, erwartet: %1</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Satz</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Fastest</source>
        <translation>Schnellste</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Letzte</translation>
    </message>
    <message>
        <source>Reps</source>
        <translation>Wdh.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>From the test of %1; equipment: %2</source>
        <translation>Aus dem Test vom %1; Ausrüstung: %2</translation>
    </message>
    <message>
        <source>Restricted-flow training</source>
        <translation>Training mit Blutflussrestriktion</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 nach %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>ChartKey</name>
    <message>
        <source>not comparable</source>
        <translation>nicht vergleichbar</translation>
    </message>
    <message>
        <source>too small to matter</source>
        <translation>zu klein, um zu zählen</translation>
    </message>
    <message>
        <source>%1, ±%2</source>
        <comment>too small to matter, ± 0.05 m/s</comment>
        <translation>%1, ±%2</translation>
    </message>
</context>
<context>
    <name>Counts</name>
    <message>
        <source>1 session</source>
        <translation>1 Einheit</translation>
    </message>
    <message>
        <source>%1 sessions</source>
        <translation>%1 Einheiten</translation>
    </message>
</context>
<context>
    <name>DuePaper</name>
    <message>
        <source>What is due on %1</source>
        <translation>Was am %1 ansteht</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athlet</translation>
    </message>
    <message>
        <source>Lift or test</source>
        <translation>Übung oder Test</translation>
    </message>
    <message>
        <source>Last tested</source>
        <translation>Zuletzt getestet</translation>
    </message>
    <message>
        <source>Days ago</source>
        <translation>Vor Tagen</translation>
    </message>
    <message>
        <source>Why it is due</source>
        <translation>Warum es ansteht</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
</context>
<context>
    <name>Edit</name>
    <message>
        <source>set check loads</source>
        <translation>Prüflasten festlegen</translation>
    </message>
    <message>
        <source>Redo failed (%1): %2</source>
        <translation>Wiederherstellen fehlgeschlagen (%1): %2</translation>
    </message>
    <message>
        <source>Undo failed (%1): %2</source>
        <translation>Rückgängigmachen fehlgeschlagen (%1): %2</translation>
    </message>
    <message>
        <source>add session</source>
        <translation>Einheit hinzufügen</translation>
    </message>
    <message>
        <source>remove session</source>
        <translation>Einheit entfernen</translation>
    </message>
    <message>
        <source>change session</source>
        <translation>Einheit ändern</translation>
    </message>
    <message>
        <source>include set</source>
        <translation>Satz wieder werten</translation>
    </message>
    <message>
        <source>exclude set</source>
        <translation>Satz ausschließen</translation>
    </message>
    <message>
        <source>change set</source>
        <translation>Satz ändern</translation>
    </message>
    <message>
        <source>add set</source>
        <translation>Satz hinzufügen</translation>
    </message>
    <message>
        <source>add sets</source>
        <translation>Sätze hinzufügen</translation>
    </message>
    <message>
        <source>remove set</source>
        <translation>Satz entfernen</translation>
    </message>
    <message>
        <source>change who is here</source>
        <translation>ändern, wer da ist</translation>
    </message>
    <message>
        <source>remove station</source>
        <translation>Station entfernen</translation>
    </message>
    <message>
        <source>join sessions</source>
        <translation>Einheiten verbinden</translation>
    </message>
</context>
<context>
    <name>FigureWords</name>
    <message>
        <source>estimated 1RM</source>
        <translation>geschätztes 1RM</translation>
    </message>
    <message>
        <source>lifted %1</source>
        <translation>gehoben %1</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation>Last, %1</translation>
    </message>
    <message>
        <source>Velocity, m/s</source>
        <translation>Geschwindigkeit, m/s</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgeschlossen</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Gerade</translation>
    </message>
    <message>
        <source>Change, m/s</source>
        <translation>Änderung, m/s</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Interval with noise and bend, m/s</source>
        <translation>Intervall mit Streuung und Krümmung, m/s</translation>
    </message>
    <message>
        <source>As if straight, m/s</source>
        <translation>Ohne Krümmung, m/s</translation>
    </message>
    <message>
        <source>not lifted</source>
        <translation>nicht geschafft</translation>
    </message>
</context>
<context>
    <name>FileQuestions</name>
    <message>
        <source>%1 is there already. Replace it?</source>
        <translation>%1 gibt es schon. Ersetzen?</translation>
    </message>
    <message>
        <source>&amp;Replace</source>
        <translation>&amp;Ersetzen</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>One line a set</source>
        <translation>Eine Zeile je Satz</translation>
    </message>
    <message>
        <source>&lt;code&gt;60 0.92 0.90 0.88&lt;/code&gt; and Enter: the load 60 and three reps. It is on disk when the line is empty again; there is nothing to save.</source>
        <translation>&lt;code&gt;60 0,92 0,90 0,88&lt;/code&gt; und Enter: die Last 60 und drei Wiederholungen. Sobald die Zeile wieder leer ist, liegt der Satz auf der Platte; zu speichern ist nichts.</translation>
    </message>
    <message>
        <source>Point and comma are both the decimal mark; there are no marks for thousands. Blanks, tabs or ; go between the numbers.</source>
        <translation>Punkt und Komma sind beide Dezimalzeichen; Tausenderzeichen gibt es nicht. Zwischen Zahlen stehen Leerzeichen, Tabulatoren oder Strichpunkte.</translation>
    </message>
    <message>
        <source>A load is in the unit chosen under View; &lt;code&gt;60kg&lt;/code&gt; and &lt;code&gt;135lb&lt;/code&gt; say their own.</source>
        <translation>Eine Last ist in der Maßeinheit gemeint, die unter Ansicht gewählt ist; &lt;code&gt;60kg&lt;/code&gt; und &lt;code&gt;135lb&lt;/code&gt; nennen ihre eigene.</translation>
    </message>
    <message>
        <source>&lt;code&gt;92.5! 0.18&lt;/code&gt;: a successful true maximum, one rep.</source>
        <translation>&lt;code&gt;92,5! 0,18&lt;/code&gt;: ein geglücktes echtes Maximum, eine Wiederholung.</translation>
    </message>
    <message>
        <source>&lt;code&gt;60 0.92 0.71x # slipped&lt;/code&gt;: the second rep is left out; what follows # is the note and the reason. It stays in the log and is drawn hollow.</source>
        <translation>&lt;code&gt;60 0,92 0,71x # gerutscht&lt;/code&gt;: Die zweite Wiederholung ist ausgeschlossen; was auf # folgt, ist Notiz und Grund. Sie bleibt im Protokoll und wird hohl gezeichnet.</translation>
    </message>
    <message>
        <source>&lt;code&gt;60 92&lt;/code&gt;: the line asks whether 0.92 was meant; Enter says yes, Esc no. &lt;code&gt;1.12 1.08&lt;/code&gt;: it asks whether the load was forgotten.</source>
        <translation>&lt;code&gt;60 92&lt;/code&gt;: Die Zeile fragt, ob 0,92 gemeint war; Enter heißt ja, Esc nein. &lt;code&gt;1,12 1,08&lt;/code&gt;: Sie fragt, ob die Last vergessen wurde.</translation>
    </message>
    <message>
        <source>Several lines pasted from a spreadsheet go in at once, all or none.</source>
        <translation>Mehrere Zeilen, aus einer Tabelle eingefügt, werden auf einmal übernommen: alle oder keine.</translation>
    </message>
    <message>
        <source>In the table F2 changes a cell, Delete removes the set, and Leave out, note… says what does not count and why.</source>
        <translation>In der Tabelle ändert F2 eine Zelle, Entf entfernt den Satz, und Ausschließen, Notiz… sagt, was nicht zählt und warum.</translation>
    </message>
    <message>
        <source>View, Rest timer shows beside the line how long ago the last set was typed.</source>
        <translation>Ansicht, Pausenuhr zeigt neben der Zeile, wie lange der letzte Satz her ist.</translation>
    </message>
    <message>
        <source>From reps to a line</source>
        <translation>Von Wiederholungen zur Geraden</translation>
    </message>
    <message>
        <source>Each set gives one point: its fastest rep, or the mean of its reps, as the lift says. A lift is measured in one kind of velocity, and kinds are never mixed. The &lt;b&gt;line&lt;/b&gt; is the ordinary least-squares regression of velocity on load through the session&apos;s points. V0 is its velocity at zero load, L0 its load at zero velocity.</source>
        <translation>Jeder Satz ergibt einen Punkt: seine schnellste Wiederholung oder das Mittel seiner Wiederholungen, wie bei der Übung festgelegt. Eine Übung wird in einer Art von Geschwindigkeit gemessen, und die Arten werden nie vermischt. Die &lt;b&gt;Gerade&lt;/b&gt; ist die gewöhnliche lineare Regression (kleinste Quadrate) der Geschwindigkeit auf die Last durch die Punkte der Einheit. V0 ist ihre Geschwindigkeit bei Last null, L0 ihre Last bei Geschwindigkeit null.</translation>
    </message>
    <message>
        <source>Estimated 1RM and its interval</source>
        <translation>Das geschätzte 1RM und sein Intervall</translation>
    </message>
    <message>
        <source>&lt;b&gt;Reach&lt;/b&gt; is the heaviest load lifted divided by the estimate. Under 0.80 it is extrapolated far, under 0.50 the interval is shown first (common practice). Estimates of free-weight maxima run high even with loads to 90 % [2].</source>
        <translation>Die &lt;b&gt;Reichweite&lt;/b&gt; ist die schwerste gehobene Last geteilt durch die Schätzung. Unter 0,80 ist weit extrapoliert, unter 0,50 steht das Intervall an erster Stelle (übliche Praxis). Schätzungen von Maxima mit freien Gewichten fallen selbst mit Lasten bis 90 % zu hoch aus [2].</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Was sich geändert hat</translation>
    </message>
    <message>
        <source>A comparison takes both sessions&apos; lines together. The change at a load, and where the lines differ [3], come with intervals; the change of the 1RM by recovering the variance from both intervals [4].</source>
        <translation>Ein Vergleich betrachtet die Geraden beider Einheiten gemeinsam. Die Änderung bei einer Last und der Bereich, in dem sich die Geraden unterscheiden [3], haben Intervalle; die Änderung des 1RM erhält ihres aus den Varianzen, die aus beiden Intervallen zurückgewonnen werden [4].</translation>
    </message>
    <message>
        <source>The readings</source>
        <translation>Die Befunde</translation>
    </message>
    <message>
        <source>Season, devices, squad, plan</source>
        <translation>Saison, Messgeräte, Kader, Plan</translation>
    </message>
    <message>
        <source>A &lt;b&gt;check load&lt;/b&gt; is a fixed submaximal load followed through the season, with a trend from three sessions on and the smallest detectable change around the baseline [5].</source>
        <translation>Eine &lt;b&gt;Prüflast&lt;/b&gt; ist eine feste submaximale Last, die durch die Saison verfolgt wird, mit einem Trend ab drei Einheiten und der kleinsten nachweisbaren Änderung um den Bezug [5].</translation>
    </message>
    <message>
        <source>A speed far from the line at that load, a speed that rises with the load, or a load far from all others is asked about; Enter takes it as typed, Esc leaves it to be corrected.</source>
        <translation>Nach einer Geschwindigkeit weit weg von der Geraden bei dieser Last, einer Geschwindigkeit, die mit der Last steigt, oder einer Last weit weg von allen anderen wird gefragt; Enter übernimmt sie wie eingegeben, Esc lässt sie zum Berichtigen stehen.</translation>
    </message>
    <message>
        <source>View, Controls that fit a finger makes everything large enough for a touch screen; where there is one it is on by itself.</source>
        <translation>Ansicht, Bedienung mit dem Finger macht alles groß genug für einen Touchscreen; wo es einen gibt, ist sie von selbst an.</translation>
    </message>
    <message>
        <source>Up puts the next load there: the ladder of last time, above its top the same rise again, never above the block&apos;s ceiling, nor above the estimated 1RM unless last time it was a true maximum. Down steps back.</source>
        <translation>Pfeil auf setzt die nächste Last ein: die Leiter vom letzten Mal, über ihrem Ende noch einmal denselben Schritt, nie über der Lastgrenze des Blocks und nie über dem geschätzten 1RM, außer sie war beim letzten Mal ein echtes Maximum. Pfeil ab geht zurück.</translation>
    </message>
    <message>
        <source>Undo and Redo go back and forth through every change that was made by hand since the log was opened or a file was last imported, each on disk at once.</source>
        <translation>Rückgängig und Wiederherstellen gehen durch alle Änderungen vor und zurück, die seit dem Öffnen des Protokolls oder dem letzten Import einer Datei von Hand gemacht wurden, jede sofort auf der Platte.</translation>
    </message>
    <message>
        <source>Two sets at two loads make a line without intervals; a third set gives them, best at a third load. From four loads on it is tested whether the points bend. A point far from the line of the others is named: worth a look, never left out by itself.</source>
        <translation>Zwei Sätze mit zwei Lasten ergeben eine Gerade ohne Intervalle; ein dritter Satz liefert sie, am besten mit einer dritten Last. Ab vier Lasten wird geprüft, ob die Punkte gekrümmt liegen. Ein Punkt weit von der Geraden der übrigen wird genannt: einen Blick wert, aber nie von selbst ausgeschlossen.</translation>
    </message>
    <message>
        <source>The plan turns a percentage, a speed or a window into loads that the plates at hand can make, under a ceiling, with the expected speed and the speed to stop at for a chosen velocity loss [7], and ranks ladders for the next test by how narrow they would make the interval, behind the others those with one great step or without the loads to show a bend. Loads end at the upper end of the estimated 1RM, under the block&apos;s ceiling, and a line that does not bound a maximum gives no plan. Light loads with restricted flow [8] carry their cautions. An athlete&apos;s short session may borrow from earlier ones by a mixed model; that line is shown beside the session&apos;s own, never instead.</source>
        <translation>Der Plan macht aus einem Prozentsatz, einer Geschwindigkeit oder einem Bereich Lasten, die sich mit den vorhandenen Scheiben zusammenstellen lassen, unter einer Lastgrenze, mit der erwarteten Geschwindigkeit und der Geschwindigkeit, bei der für den gewählten Geschwindigkeitsverlust [7] Schluss ist; und er ordnet Leitern für den nächsten Test danach, wie eng sie das Intervall machen würden, hinter den anderen die mit einem großen Sprung oder ohne die Lasten, die eine Krümmung zeigen. Die Lasten enden am oberen Ende des geschätzten 1RM und unter der Lastgrenze des Blocks, und aus einer Geraden, die kein Maximum eingrenzt, wird nichts geplant. Leichte Lasten mit Blutflussrestriktion [8] stehen nie ohne ihre Vorsichtshinweise. Die kurze Einheit eines Athleten kann sich mit einem gemischten Modell auf frühere stützen; diese Gerade steht neben der eigenen der Einheit, nie an ihrer Stelle.</translation>
    </message>
    <message>
        <source>The estimated 1RM is the load at which the line meets the minimal-velocity threshold (MVT): the mean of the athlete&apos;s own true maxima where there are any, drawn towards the lift&apos;s figure while they are few, else the coach&apos;s figure, else a published one; it is always said which. Its interval is Fieller&apos;s [1]. A measured 1RM stands beside the estimate and never replaces it. A thrown or jumped lift has a line and no 1RM.</source>
        <translation>Das geschätzte 1RM ist die Last, bei der die Gerade die Mindestgeschwindigkeit (MVT) erreicht: das Mittel der eigenen echten Maxima, wo es welche gibt, zur Zahl der Übung hingezogen, solange es wenige sind, sonst die Zahl des Trainers, sonst eine veröffentlichte; es steht immer dabei, welche. Sein Intervall ist das von Fieller [1]. Ein gemessenes 1RM steht neben der Schätzung und ersetzt sie nie. Eine geworfene oder gesprungene Übung hat eine Gerade und kein 1RM.</translation>
    </message>
    <message>
        <source>The interval to plan with is wider: it holds the threshold&apos;s own spread, how much days differ, and how far a straight line may be off. From three maxima on that were lifted within a week of an estimate, the log says how far such estimates read off; both figures are shown, and plans take the calibrated one.</source>
        <translation>Das Intervall zum Planen ist breiter: es enthält die Streuung der Schwelle, wie sehr Tage sich unterscheiden und wie weit eine Gerade danebenliegen kann. Ab drei Maxima, die innerhalb einer Woche nach oder vor einer Schätzung gehoben wurden, sagt das Protokoll, wie weit solche Schätzungen danebenliegen; beide Zahlen werden gezeigt, Pläne nehmen die kalibrierte.</translation>
    </message>
    <message>
        <source>A line also moves as a whole from day to day, which one day&apos;s scatter does not show, and it tilts a little, least near 60 % of the maximum. That noise starts from a published figure, which weighs as much as four repeat tests; the log&apos;s repeat tests (the typical error [5]) move it, the athlete&apos;s own take its place, wholly from about twenty on, and the share of each is said. Without a published figure three of them are needed. It is added before anything is read.</source>
        <translation>Eine Gerade verschiebt sich auch als Ganzes von Tag zu Tag, was die Streuung eines Tages nicht zeigt, und sie kippt ein wenig, am wenigsten bei 60 % des Maximums. Diese Streuung geht von einem veröffentlichten Wert aus, der so viel wiegt wie vier Wiederholungstests; die Wiederholungstests des Protokolls (der typische Messfehler [5]) verschieben ihn, die eigenen des Athleten treten an seine Stelle, ganz ab etwa zwanzig, und der Anteil von jedem wird genannt. Ohne veröffentlichten Wert braucht es drei davon. Sie wird eingerechnet, bevor ein Befund entsteht.</translation>
    </message>
    <message>
        <source>Where two days differ in reps, the fastest of as many reps is compared. Where a session has no line to judge by, the change at a load lifted on both days is told from the typical error of a point. Of many sessions held against one baseline the newest is judged as one look, those before it more strictly.</source>
        <translation>Wo zwei Tage verschieden viele Wiederholungen haben, wird die schnellste von gleich vielen verglichen. Wo eine Einheit keine Gerade zum Beurteilen hat, steht die Änderung bei einer an beiden Tagen gehobenen Last mit dem typischen Fehler eines Punktes. Von vielen Einheiten gegen einen Bezug wird die neueste wie ein einziger Blick beurteilt, die davor strenger.</translation>
    </message>
    <message>
        <source>Where lines bend</source>
        <translation>Wo Geraden krumm sind</translation>
    </message>
    <message>
        <source>Speed falls nearly straight with load, not quite, and a straight line is fitted to it: what it reads depends on the loads that it was fitted to. So a full ladder and a light one differ with nothing changed; without an allowance for it more than half of such bench pulls would read as a lower maximum.</source>
        <translation>Die Geschwindigkeit fällt mit der Last fast gerade, nicht ganz, und eine Gerade wird hineingelegt: was sie liest, hängt von den Lasten ab, durch die sie gelegt ist. Deshalb unterscheiden sich eine volle und eine leichte Leiter, ohne dass sich etwas geändert hat; ohne Zuschlag dafür würde mehr als die Hälfte solcher Bankziehen als niedrigeres Maximum gelesen.</translation>
    </message>
    <message>
        <source>Every change by load, every estimate and its change have that allowance: from no bend to as much as the published curves have, of the lift&apos;s own or of all that are shipped. It is nothing where both ladders hold the same loads. The interval stands beside the one as if lines were straight. Three own full ladders of five loads or more narrow it; the same ladder each time, or one load near 80 % of the maximum, ends the doubt. An athlete who bends the other way than published is not covered.</source>
        <translation>Jede Änderung bei einer Last, jede Schätzung und ihre Änderung haben diesen Krümmungszuschlag: von keiner Krümmung bis zu der der veröffentlichten Kurven, der eigenen der Übung oder aller mitgelieferten. Er ist null, wo beide Leitern dieselben Lasten haben. Das Intervall steht neben dem, das bei wirklich geraden Linien gälte. Drei eigene volle Leitern aus fünf oder mehr Lasten verengen ihn; jedes Mal dieselbe Leiter oder eine Last nahe 80 % des Maximums beendet den Zweifel. Wer sich andersherum krümmt als veröffentlicht, ist nicht abgedeckt.</translation>
    </message>
    <message>
        <source>&lt;b&gt;leaning&lt;/b&gt;: an unclear change whose 80 % interval leaves out zero. It is no reading: of nothing, up to one in four such tests leans one way or the other.</source>
        <translation>&lt;b&gt;eher&lt;/b&gt;: eine unklare Änderung, deren 80-%-Intervall null auslässt. Das ist kein Befund: Ohne jede Änderung neigt bis zu ein Viertel solcher Tests in die eine oder andere Richtung.</translation>
    </message>
    <message>
        <source>The smallest change that matters is a fifth of the spread between athletes, by a measure that a few far-off ones do not move, where at least eight have the test [5], else the coach&apos;s figure, else a published one.</source>
        <translation>Die kleinste bedeutsame Änderung, ist ein Fünftel der Streuung zwischen den Athleten, nach einem Maß, das wenige weit entfernte nicht bewegen, wo mindestens acht den Test haben [5], sonst die Zahl des Trainers, sonst eine veröffentlichte.</translation>
    </message>
    <message>
        <source>Two devices on the same lifts: bias and limits of agreement [6]. Sets of one athlete resemble each other: from three athletes on the intervals count athletes, else sessions. Sessions of different devices are compared with a warning, and with the bias taken off where the log holds such a study.</source>
        <translation>Zwei Messgeräte bei denselben Übungen: Bias und Übereinstimmungsgrenzen [6]. Sätze eines Athleten ähneln sich: Ab drei Athleten zählen die Intervalle Athleten, sonst Einheiten. Einheiten mit verschiedenen Messgeräten werden mit Warnung verglichen und nach Abzug des Bias, wenn das Protokoll eine solche Messreihe enthält.</translation>
    </message>
    <message>
        <source>Published thresholds, noise and smallest changes carry their own source where they are used. Most of these papers were read as abstracts.</source>
        <translation>Veröffentlichte Schwellen, Streuungen und kleinste Änderungen nennen ihre eigene Quelle dort, wo sie verwendet werden. Die meisten dieser Arbeiten wurden als Zusammenfassung gelesen.</translation>
    </message>
    <message>
        <source>&lt;code&gt;60 0.92 0.90 @8.5&lt;/code&gt;: how hard it was (RPE), from 1 to 10 in halves.</source>
        <translation>&lt;code&gt;60 0,92 0,90 @8,5&lt;/code&gt;: wie schwer es war (RPE), von 1 bis 10 in halben Schritten.</translation>
    </message>
    <message>
        <source>&lt;code&gt;100 -&lt;/code&gt;: tried and not lifted, &lt;code&gt;100! -&lt;/code&gt; as a true maximum; what follows # says why.</source>
        <translation>&lt;code&gt;100 -&lt;/code&gt;: versucht und nicht geschafft, &lt;code&gt;100! -&lt;/code&gt; als echtes Maximum; was nach # folgt, sagt warum.</translation>
    </message>
    <message>
        <source>&lt;code&gt;100 / # plates gone&lt;/code&gt;: that load was not possible. &lt;code&gt;- # sore back&lt;/code&gt;: the lift was not; both with the reason.</source>
        <translation>&lt;code&gt;100 / # Scheiben weg&lt;/code&gt;: diese Last war nicht möglich. &lt;code&gt;- # Rücken&lt;/code&gt;: die Übung war es nicht; beides mit dem Grund.</translation>
    </message>
    <message>
        <source>What is refused stays in the line. Down puts there what would be taken, where that is said; Up brings the line back to be mended.</source>
        <translation>Was abgewiesen wird, bleibt in der Zeile. Pfeil ab setzt dorthin, was genommen würde, wo das gesagt ist; Pfeil auf bringt die Zeile zum Verbessern zurück.</translation>
    </message>
    <message>
        <source>At a station</source>
        <translation>An einer Station</translation>
    </message>
    <message>
        <source>Ctrl+T shows the stations: a lift, or a few tests, with device, surface and ladder, and who is here today in the order of their turns.</source>
        <translation>Strg+T zeigt die Stationen: eine Übung oder einige Tests, mit Messgerät, Untergrund und Leiter, und wer heute da ist, in der Reihenfolge.</translation>
    </message>
    <message>
        <source>Enter writes, and makes it the next one&apos;s turn who is due. Alt+Down passes, Alt+Up goes back, Up puts the load there that is due.</source>
        <translation>Enter schreibt, und der Nächste, der noch etwas vor sich hat, ist an der Reihe. Alt+Ab überspringt, Alt+Auf geht zurück, Pfeil auf setzt die fällige Last dorthin.</translation>
    </message>
    <message>
        <source>&lt;code&gt;be 60 0.92&lt;/code&gt;: Bela&apos;s set, where nobody else here begins so; where two do, it asks. A name alone goes there; it needs two letters, for l, r and b are always sides.</source>
        <translation>&lt;code&gt;be 60 0,92&lt;/code&gt;: der Satz von Bela, wenn hier sonst niemand so beginnt; bei zweien wird gefragt. Ein Name allein geht dorthin; er braucht zwei Buchstaben, denn l, r und b sind immer Seiten.</translation>
    </message>
    <message>
        <source>At a test &lt;code&gt;1.84 1.91&lt;/code&gt; are attempts; &lt;code&gt;l 1.84 r 1.79&lt;/code&gt;: left and right, &lt;code&gt;b 1.9&lt;/code&gt;: both at once, where the test takes that.</source>
        <translation>Bei einem Test sind &lt;code&gt;1,84 1,91&lt;/code&gt; Versuche; &lt;code&gt;l 1,84 r 1,79&lt;/code&gt;: links und rechts, &lt;code&gt;b 1,9&lt;/code&gt;: beide zugleich, wo der Test das nimmt.</translation>
    </message>
    <message>
        <source>&lt;code&gt;0.512/0.204&lt;/code&gt;: flight and contact time, where the test takes both. &lt;code&gt;1.95x # on the line&lt;/code&gt;: left out; &lt;code&gt;r - # knee&lt;/code&gt;: not possible on that side.</source>
        <translation>&lt;code&gt;0,512/0,204&lt;/code&gt;: Flug- und Kontaktzeit, wo der Test beide nimmt. &lt;code&gt;1,95x # auf der Linie&lt;/code&gt;: ausgelassen; &lt;code&gt;r - # Knie&lt;/code&gt;: auf dieser Seite nicht möglich.</translation>
    </message>
    <message>
        <source>What is typed for somebody waits for them until it is written.</source>
        <translation>Was für jemanden getippt ist, wartet auf ihn, bis es geschrieben ist.</translation>
    </message>
    <message>
        <source>Undo names whose set it takes back, and goes there first.</source>
        <translation>Rückgängig nennt, wessen Satz es zurücknimmt, und geht zuerst dorthin.</translation>
    </message>
    <message>
        <source>Over the season the sessions of a training block are made one, and all blocks are read together against the baseline, which is a session or a block. A trend takes days as alike, by a half from one to the next; within a block it needs four days that cover the load. Days on which the load, or a lighter one, was not lifted or not possible are marked under the chart.</source>
        <translation>Über die Saison werden die Einheiten eines Trainingsblocks zu einer gemacht, und alle Blöcke werden zusammen gegen den Bezug gelesen, der eine Einheit oder ein Block ist. Ein Trend nimmt Tage als ähnlich an, zur Hälfte von einem zum nächsten; innerhalb eines Blocks braucht er vier Tage, die die Last abdecken. Tage, an denen die Last oder eine leichtere nicht geschafft wurde oder nicht möglich war, sind unter dem Diagramm markiert.</translation>
    </message>
    <message>
        <source>Ctrl+U shows &lt;b&gt;what is due&lt;/b&gt;: what somebody was not tested in since the running block began, for over so many weeks, or more than a week before most of the others.</source>
        <translation>Strg+U zeigt, &lt;b&gt;was ansteht&lt;/b&gt;: worin jemand seit Beginn des laufenden Blocks, seit über so vielen Wochen oder mehr als eine Woche vor den meisten anderen nicht getestet wurde.</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Ten years on</source>
        <translation>In zehn Jahren</translation>
    </message>
    <message>
        <source>A log is one SQLite file, and all that was typed stands in its plain tables. Whatever reads SQLite reads it, with this program or without.</source>
        <translation>Ein Protokoll ist eine SQLite-Datei, und alles Getippte steht in ihren schlichten Tabellen. Was SQLite liest, liest es, mit diesem Programm oder ohne.</translation>
    </message>
    <message>
        <source>&lt;code&gt;slopebook schema&lt;/code&gt;, typed into a terminal, prints what every table and column holds, in which unit, and how the checksums are made. Keep its text beside your logs.</source>
        <translation>&lt;code&gt;slopebook schema&lt;/code&gt;, in ein Terminal getippt, schreibt aus, was jede Tabelle und Spalte enthält, in welcher Einheit, und wie die Prüfsummen entstehen. Diesen Text neben den Protokollen aufheben.</translation>
    </message>
    <message>
        <source>Log, Export everything writes the same as CSV tables and a workbook, for those who have no SQLite either.</source>
        <translation>Protokoll, Alles exportieren schreibt dasselbe als CSV-Tabellen und als Arbeitsmappe, für alle, die auch kein SQLite haben.</translation>
    </message>
    <message>
        <source>&lt;b&gt;better&lt;/b&gt; or &lt;b&gt;worse&lt;/b&gt;: the interval leaves out zero. &lt;b&gt;held&lt;/b&gt;: the change surely lies within the smallest change that matters. &lt;b&gt;unclear&lt;/b&gt;: neither; its change, its interval and the size from which on a change is clear with such tests (half of the interval) are said, and what would settle it. &lt;b&gt;no figure&lt;/b&gt;: and why.</source>
        <translation>&lt;b&gt;besser&lt;/b&gt; oder &lt;b&gt;schlechter&lt;/b&gt;: das Intervall lässt null aus. &lt;b&gt;gehalten&lt;/b&gt;: die Änderung liegt sicher innerhalb der kleinsten bedeutsamen Änderung. &lt;b&gt;unklar&lt;/b&gt;: keines von beiden; ihre Änderung, ihr Intervall und die Größe, ab der eine Änderung mit solchen Tests klar ist (das halbe Intervall), werden gesagt, und was es klären würde. &lt;b&gt;keine Zahl&lt;/b&gt;: und warum.</translation>
    </message>
    <message>
        <source>&lt;b&gt;better alone&lt;/b&gt;, &lt;b&gt;worse alone&lt;/b&gt;: clear by itself, and unclear where all blocks of the season are read at once, which asks for more; of two blocks every page says the same. &lt;b&gt;standing among all&lt;/b&gt;: clear even with every reading of the season taken as one question.</source>
        <translation>&lt;b&gt;allein besser&lt;/b&gt;, &lt;b&gt;allein schlechter&lt;/b&gt;: für sich genommen klar, und unklar, wo alle Blöcke der Saison zugleich gelesen werden, was mehr verlangt; von zwei Blöcken sagt jede Seite dasselbe. &lt;b&gt;bleibt unter allen&lt;/b&gt;: klar selbst dann, wenn alle Befunde der Saison als eine einzige Frage genommen werden.</translation>
    </message>
    <message>
        <source>A &lt;b&gt;squad&lt;/b&gt; between two blocks: each athlete&apos;s change, as it is and drawn to all, their mean, and how many athletes, at most, chance would make better or worse. Half of what a day does is shared by all who were tested that day, and no number of athletes lessens it. Of a block or a stretch of days all sessions are made one; a test of the battery is then the mean of its sessions.</source>
        <translation>Ein &lt;b&gt;Kader&lt;/b&gt; zwischen zwei Blöcken: die Änderung jedes Athleten, wie sie ist und zum Mittel hin gezogen, ihr Mittel, und wie viele Athleten der Zufall höchstens besser oder schlechter machte. Die Hälfte dessen, was ein Tag ausmacht, teilen alle, die an ihm getestet wurden, und keine Zahl von Athleten verringert sie. Von einem Block oder einer Folge von Tagen werden alle Einheiten zu einer gemittelt; ein Test der Batterie ist dann das Mittel seiner Einheiten.</translation>
    </message>
</context>
<context>
    <name>ImportReport</name>
    <message>
        <source>Rows read: %1</source>
        <translation>Gelesene Zeilen: %1</translation>
    </message>
    <message>
        <source>To be added: %1 sessions, %2 sets, %3 reps</source>
        <translation>Kommt hinzu: %1 Einheiten, %2 Sätze, %3 Wiederholungen</translation>
    </message>
    <message>
        <source>Already in the log, left as they are: %1 sets</source>
        <translation>Schon im Protokoll, bleibt unverändert: %1 Sätze</translation>
    </message>
    <message>
        <source>New athletes: %1</source>
        <translation>Neue Athleten: %1</translation>
    </message>
    <message>
        <source>New lifts: %1</source>
        <translation>Neue Übungen: %1</translation>
    </message>
    <message>
        <source>New devices: %1</source>
        <translation>Neue Messgeräte: %1</translation>
    </message>
    <message>
        <source>New training blocks: %1</source>
        <translation>Neue Trainingsblöcke: %1</translation>
    </message>
    <message>
        <source>Of the battery: %1 attempts, %2 tests not possible</source>
        <translation>Aus der Testbatterie: %1 Versuche, %2 nicht mögliche Tests</translation>
    </message>
    <message>
        <source>New tests: %1</source>
        <translation>Neue Tests: %1</translation>
    </message>
    <message>
        <source>Columns not used: %1</source>
        <translation>Nicht verwendete Spalten: %1</translation>
    </message>
    <message>
        <source>Taken, and worth a look:</source>
        <translation>Übernommen, aber einen Blick wert:</translation>
    </message>
    <message>
        <source>New sets of equipment: %1</source>
        <translation>Neue Ausrüstungen: %1</translation>
    </message>
    <message>
        <source>Undo ends here: an import cannot be undone, and neither can any more what was done before it. A backup beforehand is the way back.</source>
        <translation>Hier endet das Rückgängigmachen: Ein Import lässt sich nicht rückgängig machen, und was davor getan wurde, dann auch nicht mehr. Eine Sicherung davor ist der Weg zurück.</translation>
    </message>
    <message>
        <source>An import cannot be undone: a backup beforehand is the way back.</source>
        <translation>Ein Import lässt sich nicht rückgängig machen: Eine Sicherung davor ist der Weg zurück.</translation>
    </message>
    <message>
        <source>Without a row below the header: %1</source>
        <translation>Ohne eine Zeile unter der Kopfzeile: %1</translation>
    </message>
    <message>
        <source>New stations: %1</source>
        <translation>Neue Stationen: %1</translation>
    </message>
</context>
<context>
    <name>ImportWords</name>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athlet</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>Set number</source>
        <translation>Satznummer</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Rep number</source>
        <translation>Wiederholungsnummer</translation>
    </message>
    <message>
        <source>Velocity</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>Session of the day (1, 2)</source>
        <translation>Einheit des Tages (1, 2)</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>Kind of velocity</source>
        <translation>Art der Geschwindigkeit</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Training block</source>
        <translation>Trainingsblock</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Körpermasse</translation>
    </message>
    <message>
        <source>True maximum (yes or no)</source>
        <translation>Echtes Maximum (ja oder nein)</translation>
    </message>
    <message>
        <source>Why the rep is left out</source>
        <translation>Warum die Wiederholung ausgeschlossen ist</translation>
    </message>
    <message>
        <source>Why the set is left out</source>
        <translation>Warum der Satz ausgeschlossen ist</translation>
    </message>
    <message>
        <source>Note on the set</source>
        <translation>Notiz zum Satz</translation>
    </message>
    <message>
        <source>Note on the session</source>
        <translation>Notiz zur Einheit</translation>
    </message>
    <message>
        <source>Latin-1 (older files)</source>
        <translation>Latin-1 (ältere Dateien)</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Wie vorgefunden</translation>
    </message>
    <message>
        <source>Load (kg)</source>
        <translation>Last (kg)</translation>
    </message>
    <message>
        <source>Velocities (m/s)</source>
        <translation>Geschwindigkeiten (m/s)</translation>
    </message>
    <message>
        <source>refused: expected %1</source>
        <translation>abgelehnt: erwartet %1</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>Footwear</source>
        <translation>Schuhe</translation>
    </message>
    <message>
        <source>Technique</source>
        <translation>Technik</translation>
    </message>
    <message>
        <source>RPE</source>
        <translation>RPE</translation>
    </message>
</context>
<context>
    <name>MatrixText</name>
    <message>
        <source>Against %1: no reading, %2.</source>
        <translation>Gegen %1: kein Befund, %2.</translation>
    </message>
    <message>
        <source>Against %1: %2, %3 (%4); %5.</source>
        <translation>Gegen %1: %2, %3 (%4); %5.</translation>
    </message>
    <message>
        <source>Against %1: %2, %3 (%4).</source>
        <translation>Gegen %1: %2, %3 (%4).</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: no figure, %2.</source>
        <translation>%1: kein Wert, %2.</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1: %2 of %3.</source>
        <translation>%1: %2 aus %3.</translation>
    </message>
    <message>
        <source>Beyond the loads of its sessions.</source>
        <translation>Jenseits der Lasten seiner Einheiten.</translation>
    </message>
    <message>
        <source>The others are read against this block.</source>
        <translation>Die anderen werden gegen diesen Block gelesen.</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>verändert</translation>
    </message>
    <message>
        <source>%1, up to %2</source>
        <translation>%1, bis %2</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messgröße</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Matters</source>
        <translation>Zählt ab</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>kein Befund</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a block, how many are read together</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>step from %1: %2</source>
        <translation>Schritt von %1: %2</translation>
    </message>
    <message>
        <source>Bar: change against the chosen block with its %1 interval, thick %2, which decides “held”, in units of what matters; right is better. Grey: too small to matter. Dotted: what a bend may add. Hatched: not comparable. Arrow: runs on beyond the scale.</source>
        <translation>Balken: Änderung gegen den gewählten Block mit ihrem Intervall zu %1, dick zu %2, das über „gehalten“ entscheidet, in Einheiten der kleinsten bedeutsamen Änderung; rechts ist besser. Grau: zu klein, um zu zählen. Gepunktet: was eine Krümmung hinzutun kann. Schraffiert: nicht vergleichbar. Pfeil: geht über die Skala hinaus.</translation>
    </message>
    <message>
        <source>unclear, better?</source>
        <translation>unklar, besser?</translation>
    </message>
    <message>
        <source>unclear, worse?</source>
        <translation>unklar, schlechter?</translation>
    </message>
    <message>
        <source>Hatched: not comparable.</source>
        <translation>Schraffiert: nicht vergleichbar.</translation>
    </message>
    <message>
        <source>%1, standing among all</source>
        <translation>%1, bleibt unter allen</translation>
    </message>
    <message>
        <source>left %1</source>
        <comment>by how much that side is ahead</comment>
        <translation>links %1</translation>
    </message>
    <message>
        <source>right %1</source>
        <comment>by how much that side is ahead</comment>
        <translation>rechts %1</translation>
    </message>
</context>
<context>
    <name>Menus</name>
    <message>
        <source>&amp;Log</source>
        <translation>&amp;Protokoll</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Zuletzt &amp;geöffnet</translation>
    </message>
    <message>
        <source>Open the &amp;sample</source>
        <translation>Beispie&amp;l öffnen</translation>
    </message>
    <message>
        <source>&amp;Back up…</source>
        <translation>Si&amp;cherung anlegen…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>Write P&amp;DF…</source>
        <translation>&amp;PDF schreiben…</translation>
    </message>
    <message>
        <source>&amp;Close log</source>
        <translation>Protokoll &amp;schließen</translation>
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
        <translation>&amp;Ausschließen, Notiz…</translation>
    </message>
    <message>
        <source>Re&amp;move set</source>
        <translation>Satz &amp;entfernen</translation>
    </message>
    <message>
        <source>Re&amp;cords</source>
        <translation>&amp;Verwaltung</translation>
    </message>
    <message>
        <source>Add &amp;athlete…</source>
        <translation>&amp;Neuer Athlet…</translation>
    </message>
    <message>
        <source>&amp;Change athlete…</source>
        <translation>&amp;Athlet ändern…</translation>
    </message>
    <message>
        <source>Add &amp;lift…</source>
        <translation>Neue Ü&amp;bung…</translation>
    </message>
    <message>
        <source>Change li&amp;ft…</source>
        <translation>Übung ände&amp;rn…</translation>
    </message>
    <message>
        <source>Chec&amp;k loads…</source>
        <translation>&amp;Prüflasten…</translation>
    </message>
    <message>
        <source>New &amp;session</source>
        <translation>Neue &amp;Einheit</translation>
    </message>
    <message>
        <source>Session d&amp;etails…</source>
        <translation>&amp;Details der Einheit…</translation>
    </message>
    <message>
        <source>&amp;Remove session</source>
        <translation>Einheit ent&amp;fernen</translation>
    </message>
    <message>
        <source>&amp;Devices…</source>
        <translation>&amp;Messgeräte…</translation>
    </message>
    <message>
        <source>&amp;Training blocks…</source>
        <translation>&amp;Trainingsblöcke…</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Gehe zu</translation>
    </message>
    <message>
        <source>T&amp;ype a set</source>
        <translation>Satz &amp;eingeben</translation>
    </message>
    <message>
        <source>Find &amp;athlete</source>
        <translation>&amp;Athlet suchen</translation>
    </message>
    <message>
        <source>Find li&amp;ft</source>
        <translation>Ü&amp;bung suchen</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Vorsichtshinweise</translation>
    </message>
    <message>
        <source>&amp;About Slopebook</source>
        <translation>Ü&amp;ber Slopebook</translation>
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
        <translation>Wie der &amp;Desktop</translation>
    </message>
    <message>
        <source>&amp;Go back to a backup…</source>
        <translation>Auf eine Sicherung &amp;zurückgehen…</translation>
    </message>
    <message>
        <source>Import a copied &amp;table…</source>
        <translation>Kopierte &amp;Tabelle importieren…</translation>
    </message>
    <message>
        <source>&amp;Export everything…</source>
        <translation>&amp;Alles exportieren…</translation>
    </message>
    <message>
        <source>&amp;Chart</source>
        <translation>&amp;Diagramm</translation>
    </message>
    <message>
        <source>&amp;Copy the picture</source>
        <translation>Bild &amp;kopieren</translation>
    </message>
    <message>
        <source>Save as &amp;PNG…</source>
        <translation>Als &amp;PNG speichern…</translation>
    </message>
    <message>
        <source>Save as &amp;SVG…</source>
        <translation>Als &amp;SVG speichern…</translation>
    </message>
    <message>
        <source>Copy the &amp;figures</source>
        <translation>&amp;Zahlen kopieren</translation>
    </message>
    <message>
        <source>Show the f&amp;igures…</source>
        <translation>Zahlen a&amp;nzeigen…</translation>
    </message>
    <message>
        <source>&amp;Rest timer</source>
        <translation>&amp;Pausenuhr</translation>
    </message>
    <message>
        <source>Loads &amp;in</source>
        <translation>&amp;Lasten in</translation>
    </message>
    <message>
        <source>&amp;Kilograms (kg)</source>
        <translation>&amp;Kilogramm (kg)</translation>
    </message>
    <message>
        <source>&amp;Pounds (lb)</source>
        <translation>&amp;Pfund (lb)</translation>
    </message>
    <message>
        <source>&amp;Typing a set</source>
        <translation>Einen Satz &amp;eingeben</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>The &amp;method</source>
        <translation>Die &amp;Methode</translation>
    </message>
    <message>
        <source>New &amp;log…</source>
        <translation>&amp;Neues Protokoll…</translation>
    </message>
    <message>
        <source>Pri&amp;nt preview…</source>
        <translation>Druckvorschau…</translation>
    </message>
    <message>
        <source>Controls that fit a &amp;finger</source>
        <translation>Bedienung mit dem &amp;Finger</translation>
    </message>
    <message>
        <source>&amp;Write into the damaged log…</source>
        <translation>In das beschädigte Protokoll schreiben…</translation>
    </message>
    <message>
        <source>Fold the inde&amp;x away</source>
        <translation>&amp;Verzeichnis einklappen</translation>
    </message>
    <message>
        <source>C&amp;olours</source>
        <translation>F&amp;arben</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>D&amp;ark</source>
        <translation>D&amp;unkel</translation>
    </message>
    <message>
        <source>&amp;Import a table…</source>
        <translation>Tabelle &amp;importieren…</translation>
    </message>
    <message>
        <source>T&amp;utorial</source>
        <translation>An&amp;leitung</translation>
    </message>
    <message>
        <source>The log&apos;s &amp;file</source>
        <translation>Die &amp;Datei des Protokolls</translation>
    </message>
    <message>
        <source>What is &amp;new</source>
        <translation>&amp;Neues</translation>
    </message>
    <message>
        <source>&amp;Merge another log…</source>
        <translation>Anderes Protokoll aufneh&amp;men…</translation>
    </message>
    <message>
        <source>C&amp;hoose between two sides…</source>
        <translation>Z&amp;wischen zwei Seiten wählen…</translation>
    </message>
    <message>
        <source>Sh&amp;ared store</source>
        <translation>Gemeinsamer Speiche&amp;r</translation>
    </message>
    <message>
        <source>&amp;Join a store…</source>
        <translation>&amp;Beitreten…</translation>
    </message>
    <message>
        <source>&amp;Meet now</source>
        <translation>&amp;Jetzt abgleichen</translation>
    </message>
    <message>
        <source>&amp;What came, what waits…</source>
        <translation>&amp;Was kam, was wartet…</translation>
    </message>
    <message>
        <source>&amp;Leave the store…</source>
        <translation>Den Speicher ver&amp;lassen…</translation>
    </message>
</context>
<context>
    <name>NoiseChartWords</name>
    <message>
        <source>Load, %1</source>
        <translation>Last, %1</translation>
    </message>
    <message>
        <source>Typical error, m/s</source>
        <translation>Typischer Fehler, m/s</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>95-%-Intervall</translation>
    </message>
    <message>
        <source>Repeat tests</source>
        <translation>Wiederholungstests</translation>
    </message>
    <message>
        <source>No load was lifted in two repeat tests yet</source>
        <translation>Noch keine Last wurde in zwei Wiederholungstests gehoben</translation>
    </message>
    <message>
        <source>Load (%1)</source>
        <translation>Last (%1)</translation>
    </message>
    <message>
        <source>Typical error (m/s)</source>
        <translation>Typischer Fehler (m/s)</translation>
    </message>
    <message>
        <source>Error (m/s)</source>
        <translation>Fehler (m/s)</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>whole line, %1</source>
        <translation>ganze Gerade, %1</translation>
    </message>
    <message>
        <source>All athletes together. Points: of one set at that load, its own scatter with it; dashed: of a whole line.</source>
        <translation>Alle Athleten zusammen. Punkte: eines Satzes bei der Last, mit seiner eigenen Streuung; gestrichelt: einer ganzen Geraden.</translation>
    </message>
</context>
<context>
    <name>NoiseWords</name>
    <message>
        <source>none named</source>
        <translation>keins genannt</translation>
    </message>
    <message>
        <source>all athletes</source>
        <translation>alle Athleten</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>Whose</source>
        <translation>Von wem</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Bei</translation>
    </message>
    <message>
        <source>Repeat tests</source>
        <translation>Wiederholungstests</translation>
    </message>
    <message>
        <source>Typical error (m/s; 1RM: %1)</source>
        <translation>Typischer Messfehler (m/s; 1RM: %1)</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>95-%-Intervall</translation>
    </message>
    <message>
        <source>CV %</source>
        <translation>CV %</translation>
    </message>
    <message>
        <source>CV % by logs</source>
        <translation>CV % logarithmisch</translation>
    </message>
    <message>
        <source>Smallest detectable change</source>
        <translation>Kleinste nachweisbare Änderung</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>estimated 1RM</source>
        <translation>geschätztes 1RM</translation>
    </message>
    <message>
        <source>no noise of its own: %1</source>
        <translation>keine eigene Streuung: %1</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athlet</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>Repeat test</source>
        <translation>Wiederholungstest</translation>
    </message>
    <message>
        <source>Days between</source>
        <translation>Tage dazwischen</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Kennwert</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Interval</source>
        <translation>Intervall</translation>
    </message>
    <message>
        <source>Sets seen by both</source>
        <translation>Von beiden gemessene Sätze</translation>
    </message>
    <message>
        <source>Athletes, sessions</source>
        <translation>Athleten, Einheiten</translation>
    </message>
    <message>
        <source>Bias (m/s)</source>
        <translation>Bias (m/s)</translation>
    </message>
    <message>
        <source>Lower limit of agreement (m/s)</source>
        <translation>Untere Übereinstimmungsgrenze (m/s)</translation>
    </message>
    <message>
        <source>Upper limit of agreement (m/s)</source>
        <translation>Obere Übereinstimmungsgrenze (m/s)</translation>
    </message>
    <message>
        <source>SD of the differences (m/s)</source>
        <translation>SD der Differenzen (m/s)</translation>
    </message>
    <message>
        <source>Proportion, least products (slope)</source>
        <translation>Proportion, kleinste Produkte (Steigung)</translation>
    </message>
    <message>
        <source>Intercept, least products (m/s)</source>
        <translation>Achsenabschnitt, kleinste Produkte (m/s)</translation>
    </message>
    <message>
        <source>Correlation</source>
        <translation>Korrelation</translation>
    </message>
    <message>
        <source>Bias that comparisons take off (m/s)</source>
        <translation>Bias, den Vergleiche abziehen (m/s)</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Load (%1)</source>
        <translation>Last (%1)</translation>
    </message>
    <message>
        <source>Mean (m/s)</source>
        <translation>Mittel (m/s)</translation>
    </message>
    <message>
        <source>Difference (m/s)</source>
        <translation>Differenz (m/s)</translation>
    </message>
    <message>
        <source>In use for %1, %2, %3: %4</source>
        <translation>In Gebrauch für %1, %2, %3: %4</translation>
    </message>
    <message>
        <source>no spread</source>
        <translation>keine Streuung</translation>
    </message>
    <message>
        <source>none found</source>
        <translation>keine gefunden</translation>
    </message>
    <message>
        <source>SD between athletes (m/s)</source>
        <translation>SD zwischen Athleten (m/s)</translation>
    </message>
    <message>
        <source>SD between sessions (m/s)</source>
        <translation>SD zwischen Einheiten (m/s)</translation>
    </message>
    <message>
        <source>SD within an athlete (m/s)</source>
        <translation>SD innerhalb eines Athleten (m/s)</translation>
    </message>
    <message>
        <source>SD within a session (m/s)</source>
        <translation>SD innerhalb einer Einheit (m/s)</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>a device, whose, where its noise comes from</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>whole line, from day to day</source>
        <translation>ganze Gerade, von Tag zu Tag</translation>
    </message>
    <message>
        <source>%1; %2.</source>
        <translation>%1; %2.</translation>
    </message>
</context>
<context>
    <name>OpenLog</name>
    <message>
        <source>This log can only be read: nothing typed here would be kept.</source>
        <translation>Dieses Protokoll lässt sich nur lesen: Eingaben würden hier nicht gespeichert.</translation>
    </message>
</context>
<context>
    <name>OverviewPaper</name>
    <message>
        <source>%1: overview</source>
        <translation>%1: Überblick</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Was not possible</source>
        <translation>War nicht möglich</translation>
    </message>
    <message>
        <source>To beware of</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>What was done in the blocks</source>
        <translation>Was in den Blöcken getan wurde</translation>
    </message>
    <message>
        <source>%1: notes on the overview</source>
        <translation>%1: Anmerkungen zum Überblick</translation>
    </message>
</context>
<context>
    <name>OverviewText</name>
    <message>
        <source>no reading is made of it</source>
        <translation>daraus wird kein Befund</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messgröße</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Reading, or why none</source>
        <translation>Befund oder Grund</translation>
    </message>
    <message>
        <source>Every measure by reading</source>
        <translation>Jede Messgröße nach Befund</translation>
    </message>
    <message>
        <source>%1 interval</source>
        <translation>Intervall (%1)</translation>
    </message>
    <message>
        <source>%1: %2 interval (%3)</source>
        <comment>a change, its level, held against</comment>
        <translation>%1: %2-Intervall (%3)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a figure, its block</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, against %2</source>
        <comment>a reading, its block</comment>
        <translation>%1, gegen %2</translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>Change from %1 to %2</source>
        <translation>Änderung vom %1 zum %2</translation>
    </message>
    <message>
        <source>Earlier (■, dashed): %1</source>
        <translation>Früher (■, gestrichelt): %1</translation>
    </message>
    <message>
        <source>Later (●, solid): %1</source>
        <translation>Später (●, durchgezogen): %1</translation>
    </message>
    <message>
        <source>By load: what the lines say, m/s</source>
        <translation>Je Last: was die Geraden sagen, m/s</translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation>Last, %1</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Smallest that matters</source>
        <translation>Kleinste bedeutsame</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>1RM, %1</source>
        <translation>1RM, %1</translation>
    </message>
    <message>
        <source>To beware of</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>Computed</source>
        <translation>Berechnung</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1: %2 bis %3</translation>
    </message>
    <message>
        <source>%1 counting sets, %2 to %3 %4</source>
        <translation>%1 gewertete Sätze, %2 bis %3 %4</translation>
    </message>
    <message>
        <source>body mass %1 %2</source>
        <translation>Körpermasse %1 %2</translation>
    </message>
    <message>
        <source>%1; estimate %2</source>
        <translation>%1; Schätzung %2</translation>
    </message>
    <message>
        <source>%1, very far</source>
        <translation>%1, sehr weit</translation>
    </message>
    <message>
        <source>%1, far</source>
        <translation>%1, weit</translation>
    </message>
    <message>
        <source>%1 · %2 (%3)</source>
        <translation>%1 · %2 (%3)</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>Measured with</source>
        <translation>Gemessen mit</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>Leiter</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Estimated 1RM</source>
        <translation>Geschätztes 1RM</translation>
    </message>
    <message>
        <source>Reach (heaviest load / estimate)</source>
        <translation>Reichweite (schwerste Last / Schätzung)</translation>
    </message>
    <message>
        <source>Measured 1RM (a true maximum lifted)</source>
        <translation>Gemessenes 1RM (ein echtes Maximum gehoben)</translation>
    </message>
    <message>
        <source>Unclear</source>
        <translation>Unklar</translation>
    </message>
    <message>
        <source>%1 (%2 m/s taken off)</source>
        <translation>%1 (%2 m/s abgezogen)</translation>
    </message>
    <message>
        <source>Estimated 1RM (device&apos;s bias taken off)</source>
        <translation>Geschätztes 1RM (Geräteabweichung abgezogen)</translation>
    </message>
    <message>
        <source>%1, with noise and bend</source>
        <translation>%1, mit Streuung und Krümmung</translation>
    </message>
    <message>
        <source>%1 as if lines were straight</source>
        <translation>%1 als gäbe es keine Krümmung</translation>
    </message>
    <message>
        <source>%1, %2 not lifted</source>
        <translation>%1, %2 nicht geschafft</translation>
    </message>
    <message>
        <source>%1 line alone; change of two days only</source>
        <translation>%1, Gerade allein; nur für Änderungen zwischen zwei Tagen</translation>
    </message>
    <message>
        <source>Smallest that matters: %1 m/s</source>
        <translation>Kleinste bedeutsame: %1 m/s</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 lines alone; change of these days only</source>
        <translation>%1, Geraden allein; Änderung nur dieser Tage</translation>
    </message>
    <message>
        <source>Heaviest day of the earlier (■, dashed): %1</source>
        <translation>Schwerster Tag der früheren (■, gestrichelt): %1</translation>
    </message>
    <message>
        <source>Heaviest day of the later (●, solid): %1</source>
        <translation>Schwerster Tag der späteren (●, durchgezogen): %1</translation>
    </message>
    <message>
        <source>%1: notes on the comparison</source>
        <translation>%1: Anmerkungen zum Vergleich</translation>
    </message>
    <message>
        <source>Smallest change that matters</source>
        <translation>Kleinste bedeutsame Änderung</translation>
    </message>
    <message>
        <source>no reading: lacks the days&apos; noise</source>
        <translation>kein Befund: ohne die Streuung der Tage</translation>
    </message>
    <message>
        <source>%1 with days and bend; change too</source>
        <translation>%1 mit Tagen und Krümmung; auch die Änderung</translation>
    </message>
    <message>
        <source>%1, these days only (no reading)</source>
        <translation>%1, nur diese Tage (kein Befund)</translation>
    </message>
    <message>
        <source>%1, these two days only (no reading)</source>
        <translation>%1, nur diese zwei Tage (kein Befund)</translation>
    </message>
</context>
<context>
    <name>Pages</name>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>Paperwork</name>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>The printer took nothing.</source>
        <translation>Der Drucker hat nichts angenommen.</translation>
    </message>
    <message>
        <source>Print preview</source>
        <translation>Druckvorschau</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>Save PDF</source>
        <translation>PDF speichern</translation>
    </message>
</context>
<context>
    <name>PastedWords</name>
    <message>
        <source>found %1, expected %2.</source>
        <translation>%1 gefunden, erwartet: %2.</translation>
    </message>
    <message>
        <source>Line %1 of what was pasted, %2: %3</source>
        <translation>Zeile %1 des Eingefügten, %2: %3</translation>
    </message>
    <message>
        <source>What was pasted cannot be read: %1</source>
        <translation>Das Eingefügte ist nicht lesbar: %1</translation>
    </message>
    <message>
        <source>column %1 (%2)</source>
        <translation>Spalte %1 (%2)</translation>
    </message>
</context>
<context>
    <name>Phrases</name>
    <message>
        <source>&quot;%1&quot; with a decimal point and &quot;%2&quot; with a decimal comma</source>
        <translation>„%1“ mit Dezimalpunkt und „%2“ mit Dezimalkomma</translation>
    </message>
    <message>
        <source>one decimal mark in all that is pasted</source>
        <translation>ein Dezimalzeichen in allem, was eingefügt wird</translation>
    </message>
    <message>
        <source>no day has a session of this lift on each of the two devices, with the same loads</source>
        <translation>an keinem Tag gibt es eine Einheit dieser Übung auf jedem der beiden Messgeräte mit denselben Lasten</translation>
    </message>
    <message>
        <source>1 set seen by both devices: agreement needs three or more</source>
        <translation>1 Satz, den beide Messgeräte gemessen haben: Die Übereinstimmung braucht drei oder mehr</translation>
    </message>
    <message>
        <source>%1 sets seen by both devices: agreement needs three or more</source>
        <translation>%1 Sätze, die beide Messgeräte gemessen haben: Die Übereinstimmung braucht drei oder mehr</translation>
    </message>
    <message>
        <source>not possible: %1</source>
        <translation>nicht möglich: %1</translation>
    </message>
    <message>
        <source>the session has no body mass</source>
        <translation>die Einheit hat keine Körpermasse</translation>
    </message>
    <message>
        <source>unknown formula</source>
        <translation>unbekannte Formel</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>nicht getestet</translation>
    </message>
    <message>
        <source>the athlete&apos;s own, 1 repeat test</source>
        <translation>der des Athleten selbst, 1 Wiederholungstest</translation>
    </message>
    <message>
        <source>the athlete&apos;s own, %1 repeat tests</source>
        <translation>der des Athleten selbst, %1 Wiederholungstests</translation>
    </message>
    <message>
        <source>this log&apos;s, 1 repeat test</source>
        <translation>der dieses Protokolls, 1 Wiederholungstest</translation>
    </message>
    <message>
        <source>this log&apos;s, %1 repeat tests</source>
        <translation>der dieses Protokolls, %1 Wiederholungstests</translation>
    </message>
    <message>
        <source>%1, left</source>
        <translation>%1, links</translation>
    </message>
    <message>
        <source>%1, right</source>
        <translation>%1, rechts</translation>
    </message>
    <message>
        <source>on both sides %1</source>
        <translation>vorher und nachher: %1</translation>
    </message>
    <message>
        <source>before: %1</source>
        <translation>vorher: %1</translation>
    </message>
    <message>
        <source>after: %1</source>
        <translation>nachher: %1</translation>
    </message>
    <message>
        <source>no typical error is known: repeat the test, or give the test one</source>
        <translation>kein typischer Messfehler bekannt: den Test wiederholen oder beim Test einen angeben</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>no smallest change that matters is known</source>
        <translation>keine kleinste bedeutsame Änderung bekannt</translation>
    </message>
    <message>
        <source>left %1</source>
        <translation>links %1</translation>
    </message>
    <message>
        <source>right %1</source>
        <translation>rechts %1</translation>
    </message>
    <message>
        <source>%1, estimated 1RM</source>
        <translation>%1, geschätztes 1RM</translation>
    </message>
    <message>
        <source>the change cannot be bounded</source>
        <translation>die Änderung lässt sich nicht eingrenzen</translation>
    </message>
    <message>
        <source>a trend needs three sessions that cover the load</source>
        <translation>ein Trend braucht drei Einheiten, die die Last abdecken</translation>
    </message>
    <message>
        <source>a trend needs sessions on more than one day</source>
        <translation>ein Trend braucht Einheiten an mehr als einem Tag</translation>
    </message>
    <message>
        <source>no session of this lift</source>
        <translation>keine Einheit dieser Übung</translation>
    </message>
    <message>
        <source>the baseline is none of the sessions</source>
        <translation>der Bezug ist keine der Einheiten</translation>
    </message>
    <message>
        <source>sessions of two athletes</source>
        <translation>Einheiten von zwei Athleten</translation>
    </message>
    <message>
        <source>two sessions of one athlete</source>
        <translation>zwei Einheiten eines Athleten</translation>
    </message>
    <message>
        <source>sessions of two lifts</source>
        <translation>Einheiten zweier Übungen</translation>
    </message>
    <message>
        <source>two sessions of one lift</source>
        <translation>zwei Einheiten einer Übung</translation>
    </message>
    <message>
        <source>one session is not compared with itself</source>
        <translation>eine Einheit wird nicht mit sich selbst verglichen</translation>
    </message>
    <message>
        <source>a thrown or jumped lift is followed by velocity at load only</source>
        <translation>eine geworfene oder gesprungene Übung wird nur über die Geschwindigkeit je Last verfolgt</translation>
    </message>
    <message>
        <source>speed does not fall as load rises, so no maximum can be read off</source>
        <translation>die Geschwindigkeit fällt nicht mit steigender Last, also lässt sich kein Maximum ablesen</translation>
    </message>
    <message>
        <source>the line starts under the MVT</source>
        <translation>die Gerade beginnt unter der MVT</translation>
    </message>
    <message>
        <source>a history to borrow from needs three sessions of the lift; there is 1 session</source>
        <translation>um sich auf den Verlauf zu stützen, braucht es drei Einheiten der Übung; es gibt 1 Einheit</translation>
    </message>
    <message>
        <source>a history to borrow from needs three sessions of the lift; there are %1 sessions</source>
        <translation>um sich auf den Verlauf zu stützen, braucht es drei Einheiten der Übung; es gibt %1 Einheiten</translation>
    </message>
    <message>
        <source>the sessions hold too few loads to borrow from: two of them need two loads, and points must scatter about the lines</source>
        <translation>die Einheiten enthalten zu wenige Lasten, um sich darauf zu stützen: Zwei davon brauchen zwei Lasten, und die Punkte müssen um die Geraden streuen</translation>
    </message>
    <message>
        <source>%1 steps</source>
        <translation>%1 Stufen</translation>
    </message>
    <message>
        <source>2 to 8 steps of a ladder</source>
        <translation>2 bis 8 Stufen einer Leiter</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>a heaviest load of 20 to 100 % of the estimated 1RM</source>
        <translation>eine schwerste Last von 20 bis 100 % des geschätzten 1RM</translation>
    </message>
    <message>
        <source>no session shows the scatter of this athlete&apos;s points: it needs three loads</source>
        <translation>keine Einheit zeigt die Streuung der Punkte dieses Athleten: Dazu braucht es drei Lasten</translation>
    </message>
    <message>
        <source>speed does not fall as load rises, so no test can be planned on the line</source>
        <translation>die Geschwindigkeit fällt nicht mit steigender Last, also lässt sich mit der Geraden kein Test planen</translation>
    </message>
    <message>
        <source>there is no 1RM and no check load to judge a test by: set a check load</source>
        <translation>es gibt kein 1RM und keine Prüflast, nach der sich ein Test beurteilen ließe: eine Prüflast festlegen</translation>
    </message>
    <message>
        <source>repeat tests of several lifts or people</source>
        <translation>Wiederholungstests mehrerer Übungen oder Personen</translation>
    </message>
    <message>
        <source>pairs of one lift, each of one athlete</source>
        <translation>Paare einer Übung, jedes von einem Athleten</translation>
    </message>
    <message>
        <source>no repeat test of this lift is marked as one</source>
        <translation>kein Wiederholungstest dieser Übung ist als solcher gekennzeichnet</translation>
    </message>
    <message>
        <source>one repeat test is too few: noise needs two or more</source>
        <translation>ein Wiederholungstest ist zu wenig: Die Streuung braucht zwei oder mehr</translation>
    </message>
    <message>
        <source>a share of the 1RM above 0 and up to 120 %</source>
        <translation>ein Anteil am 1RM über 0 bis 120 %</translation>
    </message>
    <message>
        <source>a velocity above 0 and under 10 m/s</source>
        <translation>eine Geschwindigkeit über 0 und unter 10 m/s</translation>
    </message>
    <message>
        <source>a velocity loss between 0 and 100 %</source>
        <translation>ein Geschwindigkeitsverlust zwischen 0 und 100 %</translation>
    </message>
    <message>
        <source>speed does not fall as load rises, so no load belongs to a speed</source>
        <translation>die Geschwindigkeit fällt nicht mit steigender Last, also gehört zu keiner Geschwindigkeit eine Last</translation>
    </message>
    <message>
        <source>the line starts at V0 = %1 m/s: %2 m/s is not reached at any load</source>
        <translation>die Gerade beginnt bei V0 = %1 m/s: %2 m/s wird bei keiner Last erreicht</translation>
    </message>
    <message>
        <source>no load can be built under that ceiling</source>
        <translation>unter dieser Lastgrenze lässt sich keine Last zusammenstellen</translation>
    </message>
    <message>
        <source>equipment that makes more than %1 loads</source>
        <translation>Ausrüstung, aus der sich mehr als %1 Lasten zusammenstellen lassen</translation>
    </message>
    <message>
        <source>fewer kinds of plates and masses in one set of equipment</source>
        <translation>weniger Arten von Scheiben und Massen in einer Ausrüstung</translation>
    </message>
    <message>
        <source>a confidence level between 0.5 and 1</source>
        <translation>ein Konfidenzniveau zwischen 0,5 und 1</translation>
    </message>
    <message>
        <source>the line starts at V0 = %1 m/s, not above the MVT of %2 m/s</source>
        <translation>die Gerade beginnt bei V0 = %1 m/s, nicht über der MVT von %2 m/s</translation>
    </message>
    <message>
        <source>no set of this session counts</source>
        <translation>kein Satz dieser Einheit zählt</translation>
    </message>
    <message>
        <source>%1 reps</source>
        <translation>%1 Wiederholungen</translation>
    </message>
    <message>
        <source>1 to 100 reps</source>
        <translation>1 bis 100 Wiederholungen</translation>
    </message>
    <message>
        <source>a slope is not certain enough to bound its change</source>
        <translation>eine Steigung ist nicht sicher genug, um seine Änderung einzugrenzen</translation>
    </message>
    <message>
        <source>a smallest change of zero</source>
        <translation>eine kleinste Änderung von null</translation>
    </message>
    <message>
        <source>a smallest change that matters above 0</source>
        <translation>eine kleinste bedeutsame Änderung über 0</translation>
    </message>
    <message>
        <source>no session of this lift in %1</source>
        <translation>keine Einheit dieser Übung in: %1</translation>
    </message>
    <message>
        <source>a slope is not certain enough to bound the change</source>
        <translation>eine Steigung ist nicht sicher genug, um die Änderung einzugrenzen</translation>
    </message>
    <message>
        <source>no athlete has a session of this lift</source>
        <translation>kein Athlet hat eine Einheit dieser Übung</translation>
    </message>
    <message>
        <source>a thrown or jumped lift has no 1RM to take shares of</source>
        <translation>eine geworfene oder gesprungene Übung hat kein 1RM, von dem sich Anteile nehmen ließen</translation>
    </message>
    <message>
        <source>a squad&apos;s relation needs sessions with a measured 1RM of at least three athletes and six points; there are %1 and %2</source>
        <translation>ein Kaderzusammenhang braucht Einheiten mit gemessenem 1RM von mindestens drei Athleten und sechs Punkte; vorhanden: %1 und %2</translation>
    </message>
    <message>
        <source>1 athlete</source>
        <translation>1 Athlet</translation>
    </message>
    <message>
        <source>%1 athletes</source>
        <translation>%1 Athleten</translation>
    </message>
    <message>
        <source>1 point</source>
        <translation>1 Punkt</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 Punkte</translation>
    </message>
    <message>
        <source>no minimal-velocity threshold (MVT) is known for this lift</source>
        <translation>für diese Übung ist keine minimale Geschwindigkeitsschwelle (MVT) bekannt</translation>
    </message>
    <message>
        <source>no published threshold (MVT) holds for peak velocity</source>
        <translation>für die Spitzengeschwindigkeit gilt keine veröffentlichte Schwelle (MVT)</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>a number above 0, such as 0.05</source>
        <translation>eine Zahl über 0, etwa 0.05</translation>
    </message>
    <message>
        <source>best or mean</source>
        <translation>best oder mean</translation>
    </message>
    <message>
        <source>value, flight height, height rsi, flight rsi or per body mass</source>
        <translation>value, flight height, height rsi, flight rsi oder per body mass</translation>
    </message>
    <message>
        <source>0 to 4</source>
        <translation>0 bis 4</translation>
    </message>
    <message>
        <source>&quot;%1&quot;, as an earlier row of this session says</source>
        <translation>„%1“, wie eine frühere Zeile dieser Einheit sagt</translation>
    </message>
    <message>
        <source>a value above 0; where the test was not possible, the reason under not_possible and nothing here</source>
        <translation>ein Wert über 0; wo der Test nicht möglich war, der Grund unter not_possible und hier nichts</translation>
    </message>
    <message>
        <source>a contact time in s above 0 and under 10</source>
        <translation>eine Kontaktzeit in s über 0 und unter 10</translation>
    </message>
    <message>
        <source>left, right, both or nothing</source>
        <translation>left, right, both oder nichts</translation>
    </message>
    <message>
        <source>a test or a lift that it is about, one of them</source>
        <translation>ein Test oder eine Übung, um die es geht, eines von beiden</translation>
    </message>
    <message>
        <source>no value where the test was not possible</source>
        <translation>kein Wert, wo der Test nicht möglich war</translation>
    </message>
    <message>
        <source>a date written year-month-day, such as 2026-03-14</source>
        <translation>ein Datum als Jahr-Monat-Tag, etwa 2026-03-14</translation>
    </message>
    <message>
        <source>the test &quot;%1&quot; told otherwise</source>
        <translation>der Test „%1“ mit anderen Angaben</translation>
    </message>
    <message>
        <source>that test as the log has it</source>
        <translation>dieser Test, wie er im Protokoll steht</translation>
    </message>
    <message>
        <source>the test &quot;%1&quot;</source>
        <translation>der Test „%1“</translation>
    </message>
    <message>
        <source>a test of the log, one that the program knows, or a file of tests that explains it</source>
        <translation>ein Test des Protokolls, einer, den das Programm kennt, oder eine Datei mit Tests, die ihn erklärt</translation>
    </message>
    <message>
        <source>&quot;%1&quot;</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>&quot;%1&quot;, as the log has it</source>
        <translation>„%1“, wie es im Protokoll steht</translation>
    </message>
    <message>
        <source>other attempts of &quot;%1&quot;</source>
        <translation>andere Versuche von „%1“</translation>
    </message>
    <message>
        <source>the attempts of that session as the log has them</source>
        <translation>die Versuche dieser Einheit, wie sie im Protokoll stehen</translation>
    </message>
    <message>
        <source>the lift &quot;%1&quot;</source>
        <translation>die Übung „%1“</translation>
    </message>
    <message>
        <source>a lift of the log</source>
        <translation>eine Übung des Protokolls</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>&quot;%1...&quot;</source>
        <translation>„%1 …“</translation>
    </message>
    <message>
        <source>The CSV reader could not be started.</source>
        <translation>Das Lesen von CSV ließ sich nicht beginnen.</translation>
    </message>
    <message>
        <source>UTF-16 text</source>
        <translation>UTF-16-Text</translation>
    </message>
    <message>
        <source>UTF-8 (save the file as CSV UTF-8)</source>
        <translation>UTF-8 (die Datei als CSV UTF-8 speichern)</translation>
    </message>
    <message>
        <source>a NUL byte</source>
        <translation>ein NUL-Byte</translation>
    </message>
    <message>
        <source>plain text in UTF-8 (this looks like UTF-16 or no text)</source>
        <translation>reiner Text in UTF-8 (dies sieht nach UTF-16 oder nach keinem Text aus)</translation>
    </message>
    <message>
        <source>bytes that are not UTF-8</source>
        <translation>Bytes, die nicht UTF-8 sind</translation>
    </message>
    <message>
        <source>a character cut in half at the end</source>
        <translation>ein abgeschnittenes Zeichen am Ende</translation>
    </message>
    <message>
        <source>UTF-8, whole</source>
        <translation>vollständiges UTF-8</translation>
    </message>
    <message>
        <source>a quote that never closes</source>
        <translation>ein Anführungszeichen, das nie geschlossen wird</translation>
    </message>
    <message>
        <source>a closing quote (&quot;) for the cell</source>
        <translation>ein schließendes Anführungszeichen (&quot;) für die Zelle</translation>
    </message>
    <message>
        <source>a quote (&quot;) in the middle of a cell</source>
        <translation>ein Anführungszeichen (&quot;) mitten in einer Zelle</translation>
    </message>
    <message>
        <source>the whole cell in quotes, and a quote inside it written twice</source>
        <translation>die ganze Zelle in Anführungszeichen, und ein Anführungszeichen darin doppelt geschrieben</translation>
    </message>
    <message>
        <source>a cell of more than 1,000,000 bytes</source>
        <translation>eine Zelle mit mehr als 1.000.000 Bytes</translation>
    </message>
    <message>
        <source>shorter cells (is there a quote that never closes?)</source>
        <translation>kürzere Zellen (fehlt ein schließendes Anführungszeichen?)</translation>
    </message>
    <message>
        <source>a mass above 0 and under 1000 kg with a decimal point, such as 20 or 2.5</source>
        <translation>eine Masse über 0 und unter 1000 kg mit Dezimalpunkt, etwa 20 oder 2.5</translation>
    </message>
    <message>
        <source>kg or lb</source>
        <translation>kg oder lb</translation>
    </message>
    <message>
        <source>nothing: plates alone come in pairs</source>
        <translation>nichts: Nur Scheiben gibt es paarweise</translation>
    </message>
    <message>
        <source>nothing: a plate has no name</source>
        <translation>nichts: Eine Scheibe hat keinen Namen</translation>
    </message>
    <message>
        <source>nothing: a ceiling has no name</source>
        <translation>nichts: Eine Lastgrenze hat keinen Namen</translation>
    </message>
    <message>
        <source>one ceiling for a set of equipment</source>
        <translation>eine einzige Lastgrenze je Ausrüstung</translation>
    </message>
    <message>
        <source>bar, plate, alone, added or ceiling</source>
        <translation>bar, plate, alone, added oder ceiling</translation>
    </message>
    <message>
        <source>%1, as an earlier row says of the same set</source>
        <translation>%1, wie eine frühere Zeile von derselben Ausrüstung sagt</translation>
    </message>
    <message>
        <source>%1 in &quot;%2&quot;</source>
        <translation>%1 in „%2“</translation>
    </message>
    <message>
        <source>the set of equipment &quot;%1&quot; told otherwise</source>
        <translation>die Ausrüstung „%1“ mit anderen Angaben</translation>
    </message>
    <message>
        <source>its pieces as the log has them (an import adds, it does not overwrite: change it in the program)</source>
        <translation>ihre Teile, wie sie im Protokoll stehen (ein Import fügt hinzu und überschreibt nicht: im Programm ändern)</translation>
    </message>
    <message>
        <source>%1 columns</source>
        <translation>%1 Spalten</translation>
    </message>
    <message>
        <source>at most 500</source>
        <translation>höchstens 500</translation>
    </message>
    <message>
        <source>set %1 of %2 of %3 on %4</source>
        <translation>Satz %1 von %2 von %3 am %4</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>%1 m/s</source>
        <translation>%1 m/s</translation>
    </message>
    <message>
        <source>the session of %1 on %2</source>
        <translation>die Einheit von %1 am %2</translation>
    </message>
    <message>
        <source>%1, as the log has for %2</source>
        <translation>%1, wie es im Protokoll steht (%2)</translation>
    </message>
    <message>
        <source>the day of a session, such as 2026-03-14, or 2026-03-14#2</source>
        <translation>der Tag einer Einheit, etwa 2026-03-14 oder 2026-03-14#2</translation>
    </message>
    <message>
        <source>another session of the same athlete, in the files or in the log</source>
        <translation>eine andere Einheit desselben Athleten, in den Dateien oder im Protokoll</translation>
    </message>
    <message>
        <source>the session that it repeats in the log</source>
        <translation>die Einheit, die sie im Protokoll wiederholt</translation>
    </message>
    <message>
        <source>%1: another note than the log&apos;s, which stays (%2)</source>
        <translation>%1: eine andere Notiz als die des Protokolls, die bleibt (%2)</translation>
    </message>
    <message>
        <source>%1, as the log has for %2 (an import adds, it does not overwrite: change it in the program)</source>
        <translation>%1, wie es im Protokoll steht (%2; ein Import fügt hinzu und überschreibt nicht: im Programm ändern)</translation>
    </message>
    <message>
        <source>block %1</source>
        <translation>Trainingsblock %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot;, in which the log has %2: values of different kinds are never put on one line (import them as a lift of another name)</source>
        <translation>„%1“, worin das Protokoll %2 führt: Werte verschiedener Arten kommen nie auf eine Gerade (als Übung mit anderem Namen importieren)</translation>
    </message>
    <message>
        <source>a threshold for &quot;%1&quot;</source>
        <translation>eine Schwelle für „%1“</translation>
    </message>
    <message>
        <source>a lift of the files or of the log</source>
        <translation>eine Übung der Dateien oder des Protokolls</translation>
    </message>
    <message>
        <source>a threshold of %1 m/s for %2</source>
        <translation>eine Schwelle von %1 m/s für %2</translation>
    </message>
    <message>
        <source>a speed in m/s above 0 and under 10, such as 0.17</source>
        <translation>eine Geschwindigkeit in m/s über 0 und unter 10, etwa 0.17</translation>
    </message>
    <message>
        <source>a name that the log or the files have</source>
        <translation>ein Name, den das Protokoll oder die Dateien kennen</translation>
    </message>
    <message>
        <source>a load in lb from 0 to 4409 with a decimal comma</source>
        <translation>eine Last in lb von 0 bis 4409 mit Dezimalkomma</translation>
    </message>
    <message>
        <source>a load in lb from 0 to 4409 with a decimal point</source>
        <translation>eine Last in lb von 0 bis 4409 mit Dezimalpunkt</translation>
    </message>
    <message>
        <source>a load in kg from 0 to 2000 with a decimal comma</source>
        <translation>eine Last in kg von 0 bis 2000 mit Dezimalkomma</translation>
    </message>
    <message>
        <source>a load in kg from 0 to 2000 with a decimal point</source>
        <translation>eine Last in kg von 0 bis 2000 mit Dezimalpunkt</translation>
    </message>
    <message>
        <source>a body mass in lb from 0 to 4409 with a decimal comma</source>
        <translation>eine Körpermasse in lb von 0 bis 4409 mit Dezimalkomma</translation>
    </message>
    <message>
        <source>a body mass in lb from 0 to 4409 with a decimal point</source>
        <translation>eine Körpermasse in lb von 0 bis 4409 mit Dezimalpunkt</translation>
    </message>
    <message>
        <source>a body mass in kg from 0 to 2000 with a decimal comma</source>
        <translation>eine Körpermasse in kg von 0 bis 2000 mit Dezimalkomma</translation>
    </message>
    <message>
        <source>a body mass in kg from 0 to 2000 with a decimal point</source>
        <translation>eine Körpermasse in kg von 0 bis 2000 mit Dezimalpunkt</translation>
    </message>
    <message>
        <source>a speed in cm/s above 0 and under 1000 with a decimal comma</source>
        <translation>eine Geschwindigkeit in cm/s über 0 und unter 1000 mit Dezimalkomma</translation>
    </message>
    <message>
        <source>a speed in cm/s above 0 and under 1000 with a decimal point</source>
        <translation>eine Geschwindigkeit in cm/s über 0 und unter 1000 mit Dezimalpunkt</translation>
    </message>
    <message>
        <source>a speed in m/s above 0 and under 10 with a decimal comma</source>
        <translation>eine Geschwindigkeit in m/s über 0 und unter 10 mit Dezimalkomma</translation>
    </message>
    <message>
        <source>a speed in m/s above 0 and under 10 with a decimal point</source>
        <translation>eine Geschwindigkeit in m/s über 0 und unter 10 mit Dezimalpunkt</translation>
    </message>
    <message>
        <source>a date written day, month, year, such as 14.3.2026</source>
        <translation>ein Datum als Tag, Monat, Jahr, etwa 14.3.2026</translation>
    </message>
    <message>
        <source>a date written month, day, year, such as 3/14/2026</source>
        <translation>ein Datum als Monat, Tag, Jahr, etwa 3/14/2026</translation>
    </message>
    <message>
        <source>a date written year, month, day, such as 2026-03-14</source>
        <translation>ein Datum als Jahr, Monat, Tag, etwa 2026-03-14</translation>
    </message>
    <message>
        <source>no column of velocities</source>
        <translation>keine Spalte mit Geschwindigkeiten</translation>
    </message>
    <message>
        <source>one, or several side by side</source>
        <translation>eine oder mehrere nebeneinander</translation>
    </message>
    <message>
        <source>%1 for all rows</source>
        <translation>%1 für alle Zeilen</translation>
    </message>
    <message>
        <source>a weight in kg with a decimal point, such as 72.5</source>
        <translation>ein Gewicht in kg mit Dezimalpunkt, etwa 72.5</translation>
    </message>
    <message>
        <source>mean, propulsive or peak</source>
        <translation>mean, propulsive oder peak</translation>
    </message>
    <message>
        <source>no more than the %1 cells of the header row (a decimal comma, or a comma in a name that is not in quotes, makes one more)</source>
        <translation>nicht mehr als die %1 Zellen der Kopfzeile (ein Dezimalkomma oder ein Komma in einem Namen ohne Anführungszeichen ergibt eine mehr)</translation>
    </message>
    <message>
        <source>a whole number from 1 on</source>
        <translation>eine ganze Zahl ab 1</translation>
    </message>
    <message>
        <source>yes or no, 1 or 0, or nothing</source>
        <translation>ja oder nein (yes oder no), 1 oder 0, oder nichts</translation>
    </message>
    <message>
        <source>a load</source>
        <translation>eine Last</translation>
    </message>
    <message>
        <source>a name</source>
        <translation>ein Name</translation>
    </message>
    <message>
        <source>a line such as &quot;column date: Datum&quot;</source>
        <translation>eine Zeile wie „column date: Datum“</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>eines von: %1</translation>
    </message>
    <message>
        <source>a role, such as date, athlete, lift, load, velocity</source>
        <translation>eine Rolle wie date, athlete, lift, load, velocity</translation>
    </message>
    <message>
        <source>utf-8, utf-16le, utf-16be or latin-1</source>
        <translation>utf-8, utf-16le, utf-16be oder latin-1</translation>
    </message>
    <message>
        <source>a number of rows from 0 on</source>
        <translation>eine Zahl von Zeilen ab 0</translation>
    </message>
    <message>
        <source>the column %1</source>
        <translation>die Spalte %1</translation>
    </message>
    <message>
        <source>a column of the table</source>
        <translation>eine Spalte der Tabelle</translation>
    </message>
    <message>
        <source>a second column for %1</source>
        <translation>eine zweite Spalte für %1</translation>
    </message>
    <message>
        <source>one</source>
        <translation>eine</translation>
    </message>
    <message>
        <source>several columns of velocities in a row that is a rep</source>
        <translation>mehrere Spalten mit Geschwindigkeiten in einer Zeile, die eine Wiederholung ist</translation>
    </message>
    <message>
        <source>a row is: a set</source>
        <translation>a row is: a set</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be read.</source>
        <translation>„%1“ lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>UTF-16 text that is cut in half</source>
        <translation>abgeschnittener UTF-16-Text</translation>
    </message>
    <message>
        <source>whole text (save the file as CSV UTF-8)</source>
        <translation>vollständiger Text (die Datei als CSV UTF-8 speichern)</translation>
    </message>
    <message>
        <source>a speed in m/s above 0 and under 10, with a decimal point, such as 0.92</source>
        <translation>eine Geschwindigkeit in m/s über 0 und unter 10, mit Dezimalpunkt, etwa 0.92</translation>
    </message>
    <message>
        <source>a load in kg from 0 to 2000, with a decimal point, such as 72.5</source>
        <translation>eine Last in kg von 0 bis 2000, mit Dezimalpunkt, etwa 72.5</translation>
    </message>
    <message>
        <source>a body mass in kg, with a decimal point, such as 81.4</source>
        <translation>eine Körpermasse in kg, mit Dezimalpunkt, etwa 81.4</translation>
    </message>
    <message>
        <source>the date is %1</source>
        <translation>das Datum ist der %1</translation>
    </message>
    <message>
        <source>%1, as %2 says of the session</source>
        <translation>%1, wie %2 von der Einheit sagt</translation>
    </message>
    <message>
        <source>&quot;%1&quot;, as %2 says of %3: a lift is measured in one kind of velocity, because values of different kinds are never put on one line</source>
        <translation>„%1“, wie %2 von %3 sagt: Eine Übung wird in einer Art von Geschwindigkeit gemessen, weil Werte verschiedener Arten nie auf eine Gerade kommen</translation>
    </message>
    <message>
        <source>%1, as %2 says of the set</source>
        <translation>%1, wie %2 vom Satz sagt</translation>
    </message>
    <message>
        <source>the set&apos;s number, from 1 on</source>
        <translation>die Nummer des Satzes, ab 1</translation>
    </message>
    <message>
        <source>a load of %1</source>
        <translation>eine Last von %1</translation>
    </message>
    <message>
        <source>%1, as %2 says of the same set: a set has one load</source>
        <translation>%1, wie %2 von demselben Satz sagt: Ein Satz hat eine Last</translation>
    </message>
    <message>
        <source>the number of the rep that is excluded</source>
        <translation>die Nummer der ausgeschlossenen Wiederholung</translation>
    </message>
    <message>
        <source>the rep&apos;s number, from 1 on</source>
        <translation>die Nummer der Wiederholung, ab 1</translation>
    </message>
    <message>
        <source>a speed of %1</source>
        <translation>eine Geschwindigkeit von %1</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>rep %1 of the same set again (%2)</source>
        <translation>Wiederholung %1 desselben Satzes noch einmal (%2)</translation>
    </message>
    <message>
        <source>each rep once; %1 has it with %2</source>
        <translation>jede Wiederholung einmal; %1 hat sie mit %2</translation>
    </message>
    <message>
        <source>%1, line %2: %3</source>
        <translation>%1, Zeile %2: %3</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>line %1 of %2</source>
        <translation>Zeile %1 von %2</translation>
    </message>
    <message>
        <source>%1, as %2 says of the same session: a session has one device (a column session, 1 or 2, tells two sessions of a day apart)</source>
        <translation>%1, wie %2 von derselben Einheit sagt: Eine Einheit hat ein Messgerät (eine Spalte session mit 1 oder 2 hält zwei Einheiten eines Tages auseinander)</translation>
    </message>
    <message>
        <source>a header row with semicolons</source>
        <translation>eine Kopfzeile mit Semikolons</translation>
    </message>
    <message>
        <source>the columns %1</source>
        <translation>die Spalten %1</translation>
    </message>
    <message>
        <source>cells separated by commas, numbers with a decimal point</source>
        <translation>durch Kommas getrennte Zellen, Zahlen mit Dezimalpunkt</translation>
    </message>
    <message>
        <source>a column named %1</source>
        <translation>eine Spalte namens %1</translation>
    </message>
    <message>
        <source>two columns of that name</source>
        <translation>zwei Spalten dieses Namens</translation>
    </message>
    <message>
        <source>a column that is used for another already</source>
        <translation>eine Spalte, die schon für etwas anderes verwendet ist</translation>
    </message>
    <message>
        <source>each column of the file used once</source>
        <translation>jede Spalte der Datei einmal verwendet</translation>
    </message>
    <message>
        <source>%1 cells</source>
        <translation>%1 Zellen</translation>
    </message>
    <message>
        <source>%1 as in the header row (a decimal comma, or a comma in a name that is not in quotes, makes one more)</source>
        <translation>%1 wie in der Kopfzeile (ein Dezimalkomma oder ein Komma in einem Namen ohne Anführungszeichen ergibt eine mehr)</translation>
    </message>
    <message>
        <source>text of at most 100,000 bytes</source>
        <translation>Text von höchstens 100.000 Bytes</translation>
    </message>
    <message>
        <source>1, 0 or nothing</source>
        <translation>1, 0 oder nichts</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be written (is there room on the disk?).</source>
        <translation>„%1“ lässt sich nicht schreiben (ist auf dem Datenträger noch Platz?).</translation>
    </message>
    <message>
        <source>a load in kg above 0, such as 62.5</source>
        <translation>eine Last in kg über 0, etwa 62.5</translation>
    </message>
    <message>
        <source>a last day that is not before the first</source>
        <translation>ein letzter Tag, der nicht vor dem ersten liegt</translation>
    </message>
    <message>
        <source>coach, published or nothing</source>
        <translation>coach, published oder nichts</translation>
    </message>
    <message>
        <source>an SD in m/s, such as 0.04</source>
        <translation>eine SD in m/s, etwa 0.04</translation>
    </message>
    <message>
        <source>fastest or mean</source>
        <translation>fastest oder mean</translation>
    </message>
    <message>
        <source>a speed in m/s above 0 and under 10, such as 0.05</source>
        <translation>eine Geschwindigkeit in m/s über 0 und unter 10, etwa 0.05</translation>
    </message>
    <message>
        <source>a weight in kg above 0 and under 2000, such as 2.5</source>
        <translation>ein Gewicht in kg über 0 und unter 2000, etwa 2.5</translation>
    </message>
    <message>
        <source>a load in kg from 0 to 2000, such as 60</source>
        <translation>eine Last in kg von 0 bis 2000, etwa 60</translation>
    </message>
    <message>
        <source>an empty file</source>
        <translation>eine leere Datei</translation>
    </message>
    <message>
        <source>a header row such as date,athlete,lift,set,load_kg,rep,velocity</source>
        <translation>eine Kopfzeile wie date,athlete,lift,set,load_kg,rep,velocity</translation>
    </message>
    <message>
        <source>a column of tidy CSV and the file&apos;s name for it, such as load_kg=Gewicht,velocity=v</source>
        <translation>eine Spalte des schlichten CSV und ihr Name in der Datei, etwa load_kg=Gewicht,velocity=v</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot;</source>
        <translation>die Spalte „%1“</translation>
    </message>
    <message>
        <source>the column &quot;%1&quot; twice</source>
        <translation>die Spalte „%1“ zweimal</translation>
    </message>
    <message>
        <source>each column once</source>
        <translation>jede Spalte einmal</translation>
    </message>
    <message>
        <source>no such column</source>
        <translation>keine solche Spalte</translation>
    </message>
    <message>
        <source>one of %1, or its number</source>
        <translation>eine von %1, oder ihre Nummer</translation>
    </message>
    <message>
        <source>no row of numbers</source>
        <translation>keine Zeile mit Zahlen</translation>
    </message>
    <message>
        <source>rows of samples: time in s and force in N or displacement in m, separated by commas, semicolons or tabs</source>
        <translation>Zeilen mit Messwerten: Zeit in s und Kraft in N oder Weg in m, getrennt durch Kommas, Semikolons oder Tabulatoren</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>it does not pass SQLite&apos;s check</source>
        <translation>sie besteht die Prüfung von SQLite nicht</translation>
    </message>
    <message>
        <source>a text that cannot be stored</source>
        <translation>ein Text, der sich nicht speichern lässt</translation>
    </message>
    <message>
        <source>a shorter text in UTF-8</source>
        <translation>ein kürzerer Text in UTF-8</translation>
    </message>
    <message>
        <source>That test is not in the log any more. Nothing was changed.</source>
        <translation>Dieser Test ist nicht mehr im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>That session is not in the log any more.</source>
        <translation>Diese Einheit ist nicht mehr im Protokoll.</translation>
    </message>
    <message>
        <source>the battery of %1 is not as it was written</source>
        <translation>Die Testbatterie für %1 ist nicht so, wie sie geschrieben wurde</translation>
    </message>
    <message>
        <source>The battery of %1 is not as it was written.</source>
        <translation>Die Testbatterie für %1 ist nicht so, wie sie geschrieben wurde.</translation>
    </message>
    <message>
        <source>And %1 more.</source>
        <translation>Und %1 weitere.</translation>
    </message>
    <message>
        <source>SQLite&apos;s own check finds: %1.</source>
        <translation>Die Prüfung von SQLite findet: %1.</translation>
    </message>
    <message>
        <source>A row of %1 refers to one of %2 that is not there.</source>
        <translation>Eine Zeile von %1 verweist auf eine von %2, die es nicht gibt.</translation>
    </message>
    <message>
        <source>%1 is not as it was written.</source>
        <translation>%1 ist nicht so, wie sie geschrieben wurde.</translation>
    </message>
    <message>
        <source>The point of set %1 in %2 is not that of its reps.</source>
        <translation>Der Punkt von Satz %1 (%2) ist nicht der seiner Wiederholungen.</translation>
    </message>
    <message>
        <source>The last key given to a %1 is lower than one in use.</source>
        <translation>Der zuletzt vergebene Schlüssel (%1) ist kleiner als einer in Gebrauch.</translation>
    </message>
    <message>
        <source>The table of keys is not whole.</source>
        <translation>Die Tabelle der Schlüssel ist nicht vollständig.</translation>
    </message>
    <message>
        <source>There is no file &apos;%1&apos;.</source>
        <translation>Es gibt keine Datei „%1“.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not a file.</source>
        <translation>„%1“ ist keine Datei.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; could not be read.</source>
        <translation>„%1“ ließ sich nicht lesen.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not a Slopebook log.</source>
        <translation>„%1“ ist kein Slopebook-Protokoll.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; was written by a newer Slopebook than this one (layout %2, this one knows %3). Update Slopebook.</source>
        <translation>„%1“ wurde von einem neueren Slopebook als diesem geschrieben (Aufbau %2, dieses kennt %3). Bitte Slopebook aktualisieren.</translation>
    </message>
    <message>
        <source>its header holds no version</source>
        <translation>im Kopf steht keine Version</translation>
    </message>
    <message>
        <source>another program changed how it is written (its journal mode)</source>
        <translation>ein anderes Programm hat geändert, wie sie geschrieben wird (ihren Journalmodus)</translation>
    </message>
    <message>
        <source>The SQLite library at hand refuses a safe setting.</source>
        <translation>Die vorhandene SQLite-Bibliothek lehnt eine sichere Einstellung ab.</translation>
    </message>
    <message>
        <source>its text is not written as UTF-8</source>
        <translation>der Text ist nicht in UTF-8 geschrieben</translation>
    </message>
    <message>
        <source>its copy does not pass SQLite&apos;s check</source>
        <translation>ihre Kopie besteht die Prüfung von SQLite nicht</translation>
    </message>
    <message>
        <source>The log is just being changed; it can be backed up when that is done.</source>
        <translation>Das Protokoll wird gerade geändert; danach lässt es sich sichern.</translation>
    </message>
    <message>
        <source>the set of equipment &apos;%1&apos; is not as it was written</source>
        <translation>die Ausrüstung „%1“ ist nicht so, wie sie geschrieben wurde</translation>
    </message>
    <message>
        <source>That set of equipment is not in the log any more. Nothing was changed.</source>
        <translation>Diese Ausrüstung ist nicht mehr im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; a second time</source>
        <translation>„%1“ ein zweites Mal</translation>
    </message>
    <message>
        <source>a name that no other set of equipment has</source>
        <translation>ein Name, den keine andere Ausrüstung hat</translation>
    </message>
    <message>
        <source>That set of equipment is in the log already. Nothing was changed.</source>
        <translation>Diese Ausrüstung ist schon im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>There is no room left on the disk for &apos;%1&apos;. Nothing was changed; make room and try again.</source>
        <translation>Auf dem Datenträger ist kein Platz mehr für „%1“. Nichts wurde geändert; bitte Platz schaffen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; cannot be written: the file or its folder is read-only.</source>
        <translation>„%1“ lässt sich nicht schreiben: Die Datei oder ihr Ordner ist schreibgeschützt.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; could not be read: the disk is failing or gone.</source>
        <translation>„%1“ ließ sich nicht lesen: Der Datenträger fällt aus oder ist weg.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; could not be read or written: %2.</source>
        <translation>„%1“ ließ sich nicht lesen oder schreiben: %2.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is damaged: %2. Keep the file as it is and go back to a backup.</source>
        <translation>„%1“ ist beschädigt: %2. Die Datei so lassen, wie sie ist, und auf eine Sicherung zurückgehen.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is being used by another program. Nothing was changed; try again in a moment.</source>
        <translation>„%1“ wird gerade von einem anderen Programm verwendet. Nichts wurde geändert; bitte gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; was moved, renamed or deleted while it was open. Nothing was changed.</source>
        <translation>„%1“ wurde verschoben, umbenannt oder gelöscht, während es offen war. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The change does not fit with what &apos;%1&apos; holds by now (%2). Nothing was changed.</source>
        <translation>Die Änderung passt nicht zu dem, was „%1“ inzwischen enthält (%2). Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; was written, but the disk failed before it was certain to last. Look whether the last change is there before making it again.</source>
        <translation>„%1“ wurde geschrieben, aber der Datenträger fiel aus, bevor sicher war, dass es bleibt. Bitte nachsehen, ob die letzte Änderung da ist, bevor sie noch einmal gemacht wird.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; could not be opened, or its folder takes no new file: the disk is full, failing or gone, or there is no right to it.</source>
        <translation>„%1“ ließ sich nicht öffnen, oder der Ordner nimmt keine neue Datei an: Der Datenträger ist voll, fällt aus oder ist weg, oder das Recht dazu fehlt.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; could not be written: the disk is full, failing or gone. Nothing was changed.</source>
        <translation>„%1“ ließ sich nicht schreiben: Der Datenträger ist voll, fällt aus oder ist weg. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; could not be opened: %2.</source>
        <translation>„%1“ ließ sich nicht öffnen: %2.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; could not be made: %2.</source>
        <translation>„%1“ ließ sich nicht anlegen: %2.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; could not be written: %2.</source>
        <translation>„%1“ ließ sich nicht schreiben: %2.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is there already; choose another name.</source>
        <translation>„%1“ gibt es schon; bitte einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>its tables are not those that Slopebook makes</source>
        <translation>die Tabellen sind nicht die, die Slopebook anlegt</translation>
    </message>
    <message>
        <source>the key %1</source>
        <translation>der Schlüssel %1</translation>
    </message>
    <message>
        <source>a key that the log gave out</source>
        <translation>ein Schlüssel, den das Protokoll vergeben hat</translation>
    </message>
    <message>
        <source>its table of keys lacks one</source>
        <translation>in der Tabelle der Schlüssel fehlt einer</translation>
    </message>
    <message>
        <source>&apos;%1&apos; still has 1 session in the log. Nothing was removed.</source>
        <translation>„%1“ hat noch 1 Einheit im Protokoll. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; still has %2 sessions in the log. Nothing was removed.</source>
        <translation>„%1“ hat noch %2 Einheiten im Protokoll. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; still has 1 set in the log. Nothing was removed.</source>
        <translation>„%1“ hat noch 1 Satz im Protokoll. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; still has %2 sets in the log. Nothing was removed.</source>
        <translation>„%1“ hat noch %2 Sätze im Protokoll. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; still has 1 check load in the log. Nothing was removed.</source>
        <translation>„%1“ hat noch 1 Prüflast im Protokoll. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; still has %2 check loads in the log. Nothing was removed.</source>
        <translation>„%1“ hat noch %2 Prüflasten im Protokoll. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; still has 1 attempt in the log. Nothing was removed.</source>
        <translation>„%1“ hat noch 1 Versuch im Protokoll. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; still has %2 attempts in the log. Nothing was removed.</source>
        <translation>„%1“ hat noch %2 Versuche im Protokoll. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; still has 1 gap in the log. Nothing was removed.</source>
        <translation>„%1“ hat noch 1 Lücke im Protokoll. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; still has %2 gaps in the log. Nothing was removed.</source>
        <translation>„%1“ hat noch %2 Lücken im Protokoll. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>the lift &apos;%1&apos; has no rule for its points</source>
        <translation>die Übung „%1“ hat keine Regel für ihre Punkte</translation>
    </message>
    <message>
        <source>the check loads of &apos;%1&apos; are not as they were written</source>
        <translation>die Prüflasten von „%1“ sind nicht so, wie sie geschrieben wurden</translation>
    </message>
    <message>
        <source>something in it refers to what is not there</source>
        <translation>etwas darin verweist auf etwas, das es nicht gibt</translation>
    </message>
    <message>
        <source>&apos;%1&apos; was made by an older Slopebook and must be brought up to date, but it cannot be written. Copy it to where it can.</source>
        <translation>„%1“ stammt von einem älteren Slopebook und muss auf den neuen Stand gebracht werden, lässt sich aber nicht schreiben. Bitte dorthin kopieren, wo das geht.</translation>
    </message>
    <message>
        <source>it holds a date that is none</source>
        <translation>ein Datum darin ist keines</translation>
    </message>
    <message>
        <source>%1 is not as it was written</source>
        <translation>%1 ist nicht so, wie sie geschrieben wurde</translation>
    </message>
    <message>
        <source>That athlete is not in the log any more. Nothing was changed.</source>
        <translation>Dieser Athlet ist nicht mehr im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>That lift is not in the log any more. Nothing was changed.</source>
        <translation>Diese Übung ist nicht mehr im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>That device is not in the log any more. Nothing was changed.</source>
        <translation>Dieses Messgerät ist nicht mehr im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>That session is not in the log any more. Nothing was changed.</source>
        <translation>Diese Einheit ist nicht mehr im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>a repeat of %1</source>
        <translation>eine Wiederholung für %1</translation>
    </message>
    <message>
        <source>a session of the same athlete</source>
        <translation>eine Einheit desselben Athleten</translation>
    </message>
    <message>
        <source>a repeat of itself</source>
        <translation>eine Wiederholung ihrer selbst</translation>
    </message>
    <message>
        <source>another session of the same athlete</source>
        <translation>eine andere Einheit desselben Athleten</translation>
    </message>
    <message>
        <source>There is a session %1 of %2 on %3 already; %4 is free.</source>
        <translation>%2 hat am %3 schon eine Einheit %1; frei ist %4.</translation>
    </message>
    <message>
        <source>That session is in the log already. Nothing was changed.</source>
        <translation>Diese Einheit ist schon im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Another session is a repeat of this one; both must be of the same athlete. Nothing was changed.</source>
        <translation>Eine andere Einheit ist eine Wiederholung von dieser; beide müssen vom selben Athleten sein. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The session of %1 is a repeat of this one. Nothing was removed.</source>
        <translation>Die Einheit vom %1 ist eine Wiederholung von dieser. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>the check loads of %1 are not as they were written</source>
        <translation>die Prüflasten von %1 sind nicht so, wie sie geschrieben wurden</translation>
    </message>
    <message>
        <source>That set is not in the log any more.</source>
        <translation>Dieser Satz ist nicht mehr im Protokoll.</translation>
    </message>
    <message>
        <source>set number %1</source>
        <translation>Satznummer %1</translation>
    </message>
    <message>
        <source>1 for the first set of a lift</source>
        <translation>1 für den ersten Satz einer Übung</translation>
    </message>
    <message>
        <source>Set %1 is in the log already. Nothing was changed.</source>
        <translation>Satz %1 ist schon im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>That athlete is not in the log any more.</source>
        <translation>Dieser Athlet ist nicht mehr im Protokoll.</translation>
    </message>
    <message>
        <source>That athlete is in the log already. Nothing was changed.</source>
        <translation>Dieser Athlet ist schon im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>a name that no other athlete has</source>
        <translation>ein Name, den kein anderer Athlet hat</translation>
    </message>
    <message>
        <source>the entry of the athlete &apos;%1&apos; is not as it was written</source>
        <translation>der Eintrag des Athleten „%1“ ist nicht so, wie er geschrieben wurde</translation>
    </message>
    <message>
        <source>athlete %1</source>
        <translation>Athlet %1</translation>
    </message>
    <message>
        <source>That device is not in the log any more.</source>
        <translation>Dieses Messgerät ist nicht mehr im Protokoll.</translation>
    </message>
    <message>
        <source>That device is in the log already. Nothing was changed.</source>
        <translation>Dieses Messgerät ist schon im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>a name that no other device has</source>
        <translation>ein Name, den kein anderes Messgerät hat</translation>
    </message>
    <message>
        <source>the entry of the device &apos;%1&apos; is not as it was written</source>
        <translation>der Eintrag des Messgeräts „%1“ ist nicht so, wie er geschrieben wurde</translation>
    </message>
    <message>
        <source>device %1</source>
        <translation>Messgerät %1</translation>
    </message>
    <message>
        <source>That block is not in the log any more.</source>
        <translation>Dieser Trainingsblock ist nicht mehr im Protokoll.</translation>
    </message>
    <message>
        <source>That block is not in the log any more. Nothing was changed.</source>
        <translation>Dieser Trainingsblock ist nicht mehr im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>That block is in the log already. Nothing was changed.</source>
        <translation>Dieser Trainingsblock ist schon im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>a name and first day that no other block has</source>
        <translation>ein Name und ein erster Tag, die kein anderer Trainingsblock hat</translation>
    </message>
    <message>
        <source>the entry of the block &apos;%1&apos; is not as it was written</source>
        <translation>der Eintrag des Trainingsblocks „%1“ ist nicht so, wie er geschrieben wurde</translation>
    </message>
    <message>
        <source>That lift is not in the log any more.</source>
        <translation>Diese Übung ist nicht mehr im Protokoll.</translation>
    </message>
    <message>
        <source>That lift is in the log already. Nothing was changed.</source>
        <translation>Diese Übung ist schon im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>a name that no other lift has</source>
        <translation>ein Name, den keine andere Übung hat</translation>
    </message>
    <message>
        <source>the entry of the lift &apos;%1&apos; is not as it was written</source>
        <translation>der Eintrag der Übung „%1“ ist nicht so, wie er geschrieben wurde</translation>
    </message>
    <message>
        <source>lift %1</source>
        <translation>Übung %1</translation>
    </message>
    <message>
        <source>That test is not in the log any more.</source>
        <translation>Dieser Test ist nicht mehr im Protokoll.</translation>
    </message>
    <message>
        <source>That test is in the log already. Nothing was changed.</source>
        <translation>Dieser Test ist schon im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>a name that no other test has</source>
        <translation>ein Name, den kein anderer Test hat</translation>
    </message>
    <message>
        <source>the entry of the test &apos;%1&apos; is not as it was written</source>
        <translation>der Eintrag des Tests „%1“ ist nicht so, wie er geschrieben wurde</translation>
    </message>
    <message>
        <source>test %1</source>
        <translation>Test %1</translation>
    </message>
    <message>
        <source>An error before this took back the changes that belong together. Nothing was changed.</source>
        <translation>Ein früherer Fehler hat die zusammengehörigen Änderungen zurückgenommen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is open for reading only. Nothing was changed.</source>
        <translation>„%1“ ist nur zum Lesen geöffnet. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The log is just being read. Nothing was changed.</source>
        <translation>Das Protokoll wird gerade gelesen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>a name that is no text</source>
        <translation>ein Name, der kein Text ist</translation>
    </message>
    <message>
        <source>a note that is no text</source>
        <translation>eine Notiz, die kein Text ist</translation>
    </message>
    <message>
        <source>a source that is no text</source>
        <translation>eine Quelle, die kein Text ist</translation>
    </message>
    <message>
        <source>a reason that is no text</source>
        <translation>ein Grund, der kein Text ist</translation>
    </message>
    <message>
        <source>UTF-8 text of at most 100,000 bytes</source>
        <translation>UTF-8-Text von höchstens 100.000 Bytes</translation>
    </message>
    <message>
        <source>a blank name</source>
        <translation>ein leerer Name</translation>
    </message>
    <message>
        <source>a date that does not exist</source>
        <translation>ein Datum, das es nicht gibt</translation>
    </message>
    <message>
        <source>an MVT above 0 and below 10 m/s</source>
        <translation>eine MVT über 0 und unter 10 m/s</translation>
    </message>
    <message>
        <source>an SD of the MVT from 0 to below 10 m/s</source>
        <translation>eine SD der MVT von 0 bis unter 10 m/s</translation>
    </message>
    <message>
        <source>an athlete&apos;s own MVT</source>
        <translation>die eigene MVT eines Athleten</translation>
    </message>
    <message>
        <source>a lift&apos;s MVT: the coach&apos;s or a published one</source>
        <translation>die MVT einer Übung: die des Trainers oder eine veröffentlichte</translation>
    </message>
    <message>
        <source>the name of the athlete</source>
        <translation>der Name des Athleten</translation>
    </message>
    <message>
        <source>the name of the device</source>
        <translation>der Name des Messgeräts</translation>
    </message>
    <message>
        <source>the name of the block</source>
        <translation>der Name des Trainingsblocks</translation>
    </message>
    <message>
        <source>the block&apos;s first day</source>
        <translation>der erste Tag des Trainingsblocks</translation>
    </message>
    <message>
        <source>the block&apos;s last day</source>
        <translation>der letzte Tag des Trainingsblocks</translation>
    </message>
    <message>
        <source>a block that ends on %1</source>
        <translation>ein Trainingsblock, der am %1 endet</translation>
    </message>
    <message>
        <source>a last day not before its first, %1</source>
        <translation>ein letzter Tag nicht vor dem ersten, %1</translation>
    </message>
    <message>
        <source>the name of the lift</source>
        <translation>der Name der Übung</translation>
    </message>
    <message>
        <source>a smallest change that matters above 0 and below 10 m/s</source>
        <translation>eine kleinste bedeutsame Änderung über 0 und unter 10 m/s</translation>
    </message>
    <message>
        <source>the name of the set of equipment</source>
        <translation>der Name der Ausrüstung</translation>
    </message>
    <message>
        <source>the name of the test</source>
        <translation>der Name des Tests</translation>
    </message>
    <message>
        <source>a unit that is no text</source>
        <translation>eine Maßeinheit, die kein Text ist</translation>
    </message>
    <message>
        <source>the day of the session</source>
        <translation>der Tag der Einheit</translation>
    </message>
    <message>
        <source>session number %1</source>
        <translation>Einheit Nummer %1</translation>
    </message>
    <message>
        <source>1 for the first session of a day</source>
        <translation>1 für die erste Einheit eines Tages</translation>
    </message>
    <message>
        <source>a place that is no text</source>
        <translation>ein Ort, der kein Text ist</translation>
    </message>
    <message>
        <source>a velocity above 0 and below 10 m/s</source>
        <translation>eine Geschwindigkeit über 0 und unter 10 m/s</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beide</translation>
    </message>
    <message>
        <source>no unit</source>
        <translation>keine Maßeinheit</translation>
    </message>
    <message>
        <source>the unit of %1, such as m, s, N or points</source>
        <translation>die Maßeinheit von %1, etwa m, s, N oder Punkte</translation>
    </message>
    <message>
        <source>1 to 50 attempts</source>
        <translation>1 bis 50 Versuche</translation>
    </message>
    <message>
        <source>0 to 4 decimals</source>
        <translation>0 bis 4 Dezimalstellen</translation>
    </message>
    <message>
        <source>a typical error above 0</source>
        <translation>ein typischer Messfehler über 0</translation>
    </message>
    <message>
        <source>no source</source>
        <translation>keine Quelle</translation>
    </message>
    <message>
        <source>where the typical error comes from</source>
        <translation>woher der typische Messfehler stammt</translation>
    </message>
    <message>
        <source>a value above 0; a test that was not possible is written down as such</source>
        <translation>ein Wert über 0; ein Test, der nicht möglich war, wird als solcher vermerkt</translation>
    </message>
    <message>
        <source>a contact time</source>
        <translation>eine Kontaktzeit</translation>
    </message>
    <message>
        <source>no contact time</source>
        <translation>keine Kontaktzeit</translation>
    </message>
    <message>
        <source>%1 takes none</source>
        <translation>%1 braucht keine</translation>
    </message>
    <message>
        <source>the contact time in s after the first number</source>
        <translation>die Kontaktzeit in s nach der ersten Zahl</translation>
    </message>
    <message>
        <source>a contact time above 0 and below 10 s</source>
        <translation>eine Kontaktzeit über 0 und unter 10 s</translation>
    </message>
    <message>
        <source>left or right: %1 is tested side by side</source>
        <translation>links oder rechts: %1 wird je Seite getestet</translation>
    </message>
    <message>
        <source>no side: %1 has none</source>
        <translation>keine Seite: %1 hat keine</translation>
    </message>
    <message>
        <source>a test twice</source>
        <translation>ein Test zweimal</translation>
    </message>
    <message>
        <source>each test once in a session</source>
        <translation>jeder Test einmal je Einheit</translation>
    </message>
    <message>
        <source>a gap about nothing</source>
        <translation>eine Lücke ohne Gegenstand</translation>
    </message>
    <message>
        <source>the test or the lift that was not possible</source>
        <translation>der Test oder die Übung, die nicht möglich war</translation>
    </message>
    <message>
        <source>no reason</source>
        <translation>kein Grund</translation>
    </message>
    <message>
        <source>why it was not possible</source>
        <translation>warum es nicht möglich war</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>plates as MASSxPAIRS, like 20x2,10x2,2.5x1 (mass of one plate, pairs from 1 to %1)</source>
        <translation>Scheiben als MASSExPAARE, etwa 20x2,10x2,2.5x1 (Masse einer Scheibe, Paare von 1 bis %1)</translation>
    </message>
    <message>
        <source>no name</source>
        <translation>kein Name</translation>
    </message>
    <message>
        <source>a name for the set of equipment</source>
        <translation>ein Name für die Ausrüstung</translation>
    </message>
    <message>
        <source>nothing to lift</source>
        <translation>nichts zu heben</translation>
    </message>
    <message>
        <source>a bar or another mass</source>
        <translation>eine Stange oder eine andere Masse</translation>
    </message>
    <message>
        <source>a mass above 0 and under 1000 kg for bar</source>
        <translation>eine Masse über 0 und unter 1000 kg für die Stange</translation>
    </message>
    <message>
        <source>a mass above 0 and under 1000 kg for bar &quot;%1&quot;</source>
        <translation>eine Masse über 0 und unter 1000 kg für die Stange „%1“</translation>
    </message>
    <message>
        <source>a mass above 0 and under 1000 kg for mass</source>
        <translation>eine Masse über 0 und unter 1000 kg für die Masse</translation>
    </message>
    <message>
        <source>a mass above 0 and under 1000 kg for mass &quot;%1&quot;</source>
        <translation>eine Masse über 0 und unter 1000 kg für die Masse „%1“</translation>
    </message>
    <message>
        <source>a mass above 0 and under 1000 kg for a plate</source>
        <translation>eine Masse über 0 und unter 1000 kg für eine Scheibe</translation>
    </message>
    <message>
        <source>%1 pairs</source>
        <translation>%1 Paare</translation>
    </message>
    <message>
        <source>1 to %1 pairs of a plate</source>
        <translation>1 bis %1 Paare einer Scheibe</translation>
    </message>
    <message>
        <source>two rows for the %1 plate</source>
        <translation>zwei Zeilen für die Scheibe mit %1</translation>
    </message>
    <message>
        <source>one row a plate</source>
        <translation>eine Zeile je Scheibe</translation>
    </message>
    <message>
        <source>a mass above 0 and under 1000 kg for the ceiling</source>
        <translation>eine Masse über 0 und unter 1000 kg für die Lastgrenze</translation>
    </message>
    <message>
        <source>found %1, expected %2</source>
        <translation>gefunden: %1; erwartet: %2</translation>
    </message>
    <message>
        <source>%1, line %2, column %3: %4</source>
        <translation>%1, Zeile %2, Spalte %3: %4</translation>
    </message>
    <message>
        <source>%1, column %2: %3</source>
        <translation>%1, Spalte %2: %3</translation>
    </message>
    <message>
        <source>line %1, column %2: %3</source>
        <translation>Zeile %1, Spalte %2: %3</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>column %1: %2</source>
        <translation>Spalte %1: %2</translation>
    </message>
    <message>
        <source>%1#%2</source>
        <translation>%1 (Nr. %2)</translation>
    </message>
    <message>
        <source>Both sides are the same: choose two dates or blocks.</source>
        <translation>Beide Seiten sind gleich: bitte zwei Tage oder Trainingsblöcke wählen.</translation>
    </message>
    <message>
        <source>%1 has no session in %2.</source>
        <translation>%1 hat keine Einheit in: %2.</translation>
    </message>
    <message>
        <source>The baseline session does not hold this lift.</source>
        <translation>Die Bezugseinheit enthält diese Übung nicht.</translation>
    </message>
    <message>
        <source>No session of this lift has a line to start from.</source>
        <translation>Keine Einheit dieser Übung hat eine Gerade, von der sich ausgehen ließe.</translation>
    </message>
    <message>
        <source>a date such as 2026-03-14, or 2026-03-14#2 for the second of that day</source>
        <translation>ein Datum, etwa 2026-03-14, oder 2026-03-14#2 für die zweite dieses Tages</translation>
    </message>
    <message>
        <source>No session of this lift is in the log.</source>
        <translation>Von dieser Übung ist keine Einheit im Protokoll.</translation>
    </message>
    <message>
        <source>There is no session on %1. Sessions of this lift: %2.</source>
        <translation>Am %1 gibt es keine Einheit. Einheiten dieser Übung: %2.</translation>
    </message>
    <message>
        <source>That session does not hold this lift.</source>
        <translation>Diese Einheit enthält diese Übung nicht.</translation>
    </message>
    <message>
        <source>quiet baseline</source>
        <translation>Ruheniveau</translation>
    </message>
    <message>
        <source>its SD</source>
        <translation>seine SD</translation>
    </message>
    <message>
        <source>peak force, gross</source>
        <translation>Spitzenkraft, brutto</translation>
    </message>
    <message>
        <source>peak force, net of the baseline</source>
        <translation>Spitzenkraft über dem Ruheniveau</translation>
    </message>
    <message>
        <source>onset to peak</source>
        <translation>Beginn bis Spitze</translation>
    </message>
    <message>
        <source>impulse, net, onset to end</source>
        <translation>Kraftstoß, netto, Beginn bis Ende</translation>
    </message>
    <message>
        <source>force at %1 ms, gross</source>
        <translation>Kraft nach %1 ms, brutto</translation>
    </message>
    <message>
        <source>force at %1 ms, net</source>
        <translation>Kraft nach %1 ms, netto</translation>
    </message>
    <message>
        <source>rate of force development 0 to %1 ms</source>
        <translation>Kraftanstieg von 0 bis %1 ms</translation>
    </message>
    <message>
        <source>impulse, net, 0 to %1 ms</source>
        <translation>Kraftstoß, netto, 0 bis %1 ms</translation>
    </message>
    <message>
        <source>flight time</source>
        <translation>Flugzeit</translation>
    </message>
    <message>
        <source>height by flight time</source>
        <translation>Höhe aus der Flugzeit</translation>
    </message>
    <message>
        <source>height by impulse and momentum</source>
        <translation>Höhe aus dem Kraftstoß</translation>
    </message>
    <message>
        <source>take-off speed by impulse</source>
        <translation>Abhebegeschwindigkeit aus dem Kraftstoß</translation>
    </message>
    <message>
        <source>contact time</source>
        <translation>Kontaktzeit</translation>
    </message>
    <message>
        <source>reactive strength index</source>
        <translation>Reaktivkraftindex</translation>
    </message>
    <message>
        <source>flight time / contact time</source>
        <translation>Flugzeit / Kontaktzeit</translation>
    </message>
    <message>
        <source>movement to take-off</source>
        <translation>Bewegungsbeginn bis Abheben</translation>
    </message>
    <message>
        <source>height / time to take-off</source>
        <translation>Höhe / Zeit bis zum Abheben</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>Gewichtskraft</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>Körpermasse</translation>
    </message>
    <message>
        <source>mean velocity</source>
        <translation>mittlere Geschwindigkeit</translation>
    </message>
    <message>
        <source>mean propulsive velocity</source>
        <translation>mittlere propulsive Geschwindigkeit</translation>
    </message>
    <message>
        <source>peak velocity</source>
        <translation>Spitzengeschwindigkeit</translation>
    </message>
    <message>
        <source>displacement</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>start to top</source>
        <translation>Beginn bis oben</translation>
    </message>
    <message>
        <source>quiet from</source>
        <translation>Ruhe ab</translation>
    </message>
    <message>
        <source>quiet to</source>
        <translation>Ruhe bis</translation>
    </message>
    <message>
        <source>onset</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <source>peak</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <source>propulsive end</source>
        <translation>Ende propulsiv</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>still from</source>
        <translation>still ab</translation>
    </message>
    <message>
        <source>still to</source>
        <translation>still bis</translation>
    </message>
    <message>
        <source>movement</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>touch-down</source>
        <translation>Aufsetzen</translation>
    </message>
    <message>
        <source>take-off</source>
        <translation>Abheben</translation>
    </message>
    <message>
        <source>landing</source>
        <translation>Landung</translation>
    </message>
    <message>
        <source>no quiet stretch of 0.2 s before the force rises</source>
        <translation>keine ruhige Strecke von 0,2 s, bevor die Kraft steigt</translation>
    </message>
    <message>
        <source>the force never rises out of its quiet stretch</source>
        <translation>die Kraft steigt nie aus ihrer ruhigen Strecke</translation>
    </message>
    <message>
        <source>the force has risen before the trace begins</source>
        <translation>die Kraft ist schon gestiegen, bevor die Aufzeichnung beginnt</translation>
    </message>
    <message>
        <source>a mark lies outside the trace</source>
        <translation>eine Marke liegt außerhalb der Aufzeichnung</translation>
    </message>
    <message>
        <source>the marks are not in order: onset, peak, end</source>
        <translation>die Marken stehen nicht in der Reihenfolge: Beginn, Spitze, Ende</translation>
    </message>
    <message>
        <source>the quiet stretch holds fewer than three samples</source>
        <translation>die ruhige Strecke enthält weniger als drei Messwerte</translation>
    </message>
    <message>
        <source>nobody stands on the plate: the force stays under 150 N</source>
        <translation>niemand steht auf der Platte: Die Kraft bleibt unter 150 N</translation>
    </message>
    <message>
        <source>the marks are not in order: contact or start, take-off, landing</source>
        <translation>die Marken stehen nicht in der Reihenfolge: Kontakt oder Beginn, Abheben, Landung</translation>
    </message>
    <message>
        <source>nobody stands still on the plate between the marks for it</source>
        <translation>zwischen den Marken dafür steht niemand still auf der Platte</translation>
    </message>
    <message>
        <source>the trace is shorter than a tenth of a second</source>
        <translation>die Aufzeichnung ist kürzer als eine Zehntelsekunde</translation>
    </message>
    <message>
        <source>no rep found: nothing rises by 0.1 m; expected displacement in metres, upwards positive</source>
        <translation>keine Wiederholung gefunden: Nichts steigt um 0,1 m; erwartet wird der Weg in Metern, aufwärts positiv</translation>
    </message>
    <message>
        <source>the marks are not in order: start, end of the propulsive part, top</source>
        <translation>die Marken stehen nicht in der Reihenfolge: Beginn, Ende des propulsiven Teils, oberster Punkt</translation>
    </message>
    <message>
        <source>the rep is shorter than a sample</source>
        <translation>die Wiederholung ist kürzer als ein Messwert</translation>
    </message>
    <message>
        <source>a time is not a number</source>
        <translation>eine Zeit ist keine Zahl</translation>
    </message>
    <message>
        <source>a value is not a number</source>
        <translation>ein Wert ist keine Zahl</translation>
    </message>
    <message>
        <source>the times do not rise: %1 s follows %2 s</source>
        <translation>die Zeiten steigen nicht: %1 s folgt auf %2 s</translation>
    </message>
    <message>
        <source>uneven times: a step of %1 s among steps of %2 s</source>
        <translation>ungleichmäßige Zeiten: ein Schritt von %1 s unter Schritten von %2 s</translation>
    </message>
    <message>
        <source>uneven times: the sampling rate changes</source>
        <translation>ungleichmäßige Zeiten: Die Abtastrate ändert sich</translation>
    </message>
    <message>
        <source>there are not as many values as times</source>
        <translation>es gibt nicht so viele Werte wie Zeiten</translation>
    </message>
    <message>
        <source>fewer than %1 samples</source>
        <translation>weniger als %1 Messwerte</translation>
    </message>
    <message>
        <source>sampled at %1 Hz; expected 100 to 10000 Hz, with times in seconds</source>
        <translation>mit %1 Hz abgetastet; erwartet werden 100 bis 10000 Hz, mit Zeiten in Sekunden</translation>
    </message>
    <message>
        <source>two points make a line without intervals, so no change can be judged: it needs a third load</source>
        <translation>zwei Punkte ergeben eine Gerade ohne Intervalle, also lässt sich keine Änderung beurteilen: Es braucht eine dritte Last</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>%1 lacks one of its sets</source>
        <translation>%1 fehlt einer der Sätze</translation>
    </message>
    <message>
        <source>This log is damaged (%1 found, the first: %2). It is open for reading only, and what is damaged is left out. Go back to a backup to go on.</source>
        <translation>Dieses Protokoll ist beschädigt (%1 Fehler, der erste: %2). Es ist nur zum Lesen geöffnet, und was beschädigt ist, fehlt. Um weiterzuarbeiten, auf eine Sicherung zurückgehen.</translation>
    </message>
    <message>
        <source>%1, speed at %2</source>
        <translation>%1, Geschwindigkeit bei %2</translation>
    </message>
    <message>
        <source>fewer than two loads can be built up to %1</source>
        <translation>bis %1 lassen sich weniger als zwei Lasten zusammenstellen</translation>
    </message>
    <message>
        <source>every load that can be built is too heavy for this athlete</source>
        <translation>jede Last, die sich zusammenstellen lässt, ist für diesen Athleten zu schwer</translation>
    </message>
    <message>
        <source>the slope is not certain enough to bound the estimated 1RM, so nothing is planned from this line: lift loads further apart, and heavier ones</source>
        <translation>die Steigung ist nicht sicher genug, um das geschätzte 1RM einzugrenzen, deshalb wird aus dieser Geraden nichts geplant: Lasten heben, die weiter auseinander liegen, und schwerere</translation>
    </message>
    <message>
        <source>the heaviest load lifted is %1 % of the 1RM that the line would read: nothing is planned from so far away; lift heavier loads first</source>
        <translation>die schwerste gehobene Last ist %1 % des 1RM, das die Gerade ablesen ließe: Von so weit weg wird nichts geplant; erst schwerere Lasten heben</translation>
    </message>
    <message>
        <source>two loads, the heavier under half of the 1RM that their line would read: lift a third, heavier load before planning from it</source>
        <translation>zwei Lasten, die schwerere unter der Hälfte des 1RM, das ihre Gerade ablesen ließe: erst eine dritte, schwerere Last heben, dann daraus planen</translation>
    </message>
    <message>
        <source>the interval of the estimated 1RM is wider than the estimate itself: nothing is planned from it; lift loads further apart, and heavier ones</source>
        <translation>das Intervall des geschätzten 1RM ist breiter als die Schätzung selbst: Daraus wird nichts geplant; Lasten heben, die weiter auseinander liegen, und schwerere</translation>
    </message>
    <message>
        <source>the aim lies above the estimated 1RM: no load is planned there</source>
        <translation>das Ziel liegt über dem geschätzten 1RM: Dort wird keine Last geplant</translation>
    </message>
    <message>
        <source>the aim lies beyond where the line gives any speed: no load is planned there</source>
        <translation>das Ziel liegt jenseits dessen, wo die Gerade noch eine Geschwindigkeit hat: Dort wird keine Last geplant</translation>
    </message>
    <message>
        <source>the aim lies more than a quarter beyond the heaviest load lifted: test heavier loads first</source>
        <translation>das Ziel liegt mehr als ein Viertel über der schwersten gehobenen Last: erst schwerere Lasten testen</translation>
    </message>
    <message>
        <source>the aim lies above the upper end of the estimated 1RM&apos;s interval: no load is planned there</source>
        <translation>das Ziel liegt über dem oberen Ende des Intervalls des geschätzten 1RM: Dort wird keine Last geplant</translation>
    </message>
    <message>
        <source>every point is at %1: a line needs two loads</source>
        <translation>alle Punkte liegen bei %1: Eine Gerade braucht zwei Lasten</translation>
    </message>
    <message>
        <source>%1 lies beyond the loads that both sessions cover</source>
        <translation>%1 liegt jenseits der Lasten, die beide Einheiten abdecken</translation>
    </message>
    <message>
        <source>a name that one athlete of the log has, spelled as there</source>
        <translation>ein Name, den genau ein Athlet des Protokolls hat, geschrieben wie dort</translation>
    </message>
    <message>
        <source>a name that one lift of the log has, spelled as there</source>
        <translation>ein Name, den genau eine Übung des Protokolls hat, geschrieben wie dort</translation>
    </message>
    <message>
        <source>%1 athletes have one name in different spellings (%2): if they are one, their sessions stand apart; if not, give each a name of their own.</source>
        <translation>%1 Athleten haben einen Namen in verschiedenen Schreibweisen (%2): Sind sie einer, so stehen seine Einheiten getrennt; wenn nicht, jedem einen eigenen Namen geben.</translation>
    </message>
    <message>
        <source>%1 lifts have one name in different spellings (%2): their points stand on different lines.</source>
        <translation>%1 Übungen haben einen Namen in verschiedenen Schreibweisen (%2): Ihre Punkte stehen auf verschiedenen Geraden.</translation>
    </message>
    <message>
        <source>%1 devices have one name in different spellings (%2).</source>
        <translation>%1 Messgeräte haben einen Namen in verschiedenen Schreibweisen (%2).</translation>
    </message>
    <message>
        <source>%1 tests have one name in different spellings (%2).</source>
        <translation>%1 Tests haben einen Namen in verschiedenen Schreibweisen (%2).</translation>
    </message>
    <message>
        <source>the new athlete &quot;%1&quot;</source>
        <translation>der neue Athlet „%1“</translation>
    </message>
    <message>
        <source>to be told whether that is &quot;%1&quot;, who is in the log, or somebody new</source>
        <translation>die Angabe, ob das „%1“ aus dem Protokoll ist oder jemand Neues</translation>
    </message>
    <message>
        <source>to be told whether that is &quot;%1&quot;, who is new as well, or somebody else</source>
        <translation>die Angabe, ob das „%1“ ist, ebenfalls neu, oder jemand anders</translation>
    </message>
    <message>
        <source>a third column for %1</source>
        <translation>eine dritte Spalte für %1</translation>
    </message>
    <message>
        <source>two, the halves of a name</source>
        <translation>zwei, die Hälften eines Namens</translation>
    </message>
    <message>
        <source>its pages are not of the log&apos;s size</source>
        <translation>seine Seiten haben nicht die Größe derer des Protokolls</translation>
    </message>
    <message>
        <source>its parts do not belong together</source>
        <translation>seine Teile gehören nicht zusammen</translation>
    </message>
    <message>
        <source>it would put something else than a log there</source>
        <translation>es würde etwas anderes als ein Protokoll an dessen Stelle setzen</translation>
    </message>
    <message>
        <source>it would make the log %1 pages long, which it never was</source>
        <translation>es würde das Protokoll %1 Seiten lang machen, was es nie war</translation>
    </message>
    <message>
        <source>it is a link, or no file</source>
        <translation>es ist eine Verknüpfung oder keine Datei</translation>
    </message>
    <message>
        <source>it is another file too, under a second name</source>
        <translation>es ist zugleich eine andere Datei, unter einem zweiten Namen</translation>
    </message>
    <message>
        <source>it names another file</source>
        <translation>es nennt eine andere Datei</translation>
    </message>
    <message>
        <source>the log&apos;s own header is not whole</source>
        <translation>der Kopf des Protokolls selbst ist nicht vollständig</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not read: &apos;%2&apos; beside it is no journal that Slopebook left (%3). Nothing was changed. Keep both files as they are and go back to a backup.</source>
        <translation>„%1“ wird nicht gelesen: „%2“ daneben ist kein Journal, das Slopebook hinterlassen hat (%3). Nichts wurde geändert. Beide Dateien so lassen, wie sie sind, und auf eine Sicherung zurückgehen.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is damaged: it asks for a file that is not its own. Keep the file as it is and go back to a backup.</source>
        <translation>„%1“ ist beschädigt: Es verlangt nach einer Datei, die nicht die seine ist. Die Datei so lassen, wie sie ist, und auf eine Sicherung zurückgehen.</translation>
    </message>
    <message>
        <source>What a program that died had left undone could not be taken back: &apos;%1&apos; is no log any more. As it was before it is kept as &apos;%2&apos;.</source>
        <translation>Was ein abgestürztes Programm halb getan hinterließ, ließ sich nicht zurücknehmen: „%1“ ist kein Protokoll mehr. Wie es vorher war, liegt es unter „%2“.</translation>
    </message>
    <message>
        <source>The rows of %1 that belong to number %2 are not numbered from 1 on.</source>
        <translation>Die Zeilen von %1, die zu Nummer %2 gehören, sind nicht ab 1 durchgezählt.</translation>
    </message>
    <message>
        <source>A row of %1 (%2) breaks its rule: %3.</source>
        <translation>Eine Zeile von %1 (%2) verletzt ihre Regel: %3.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not sound (%2 found, the first: %3). Nothing was written.</source>
        <translation>„%1“ ist nicht in Ordnung (%2 Befunde, der erste: %3). Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>sessions of %1: %2 were written, %3 are there</source>
        <translation>Einheiten von %1: %2 wurden geschrieben, %3 sind da</translation>
    </message>
    <message>
        <source>Athletes: %1 were written, %2 are there.</source>
        <translation>Athleten: %1 wurden geschrieben, %2 sind da.</translation>
    </message>
    <message>
        <source>Athletes: as many as were written, but not the same.</source>
        <translation>Athleten: so viele wie geschrieben, aber nicht dieselben.</translation>
    </message>
    <message>
        <source>Lifts: %1 were written, %2 are there.</source>
        <translation>Übungen: %1 wurden geschrieben, %2 sind da.</translation>
    </message>
    <message>
        <source>Lifts: as many as were written, but not the same.</source>
        <translation>Übungen: so viele wie geschrieben, aber nicht dieselben.</translation>
    </message>
    <message>
        <source>Devices: %1 were written, %2 are there.</source>
        <translation>Messgeräte: %1 wurden geschrieben, %2 sind da.</translation>
    </message>
    <message>
        <source>Devices: as many as were written, but not the same.</source>
        <translation>Messgeräte: so viele wie geschrieben, aber nicht dieselben.</translation>
    </message>
    <message>
        <source>Blocks: %1 were written, %2 are there.</source>
        <translation>Trainingsblöcke: %1 wurden geschrieben, %2 sind da.</translation>
    </message>
    <message>
        <source>Blocks: as many as were written, but not the same.</source>
        <translation>Trainingsblöcke: so viele wie geschrieben, aber nicht dieselben.</translation>
    </message>
    <message>
        <source>Sets of equipment: %1 were written, %2 are there.</source>
        <translation>Ausrüstungen: %1 wurden geschrieben, %2 sind da.</translation>
    </message>
    <message>
        <source>Sets of equipment: as many as were written, but not the same.</source>
        <translation>Ausrüstungen: so viele wie geschrieben, aber nicht dieselben.</translation>
    </message>
    <message>
        <source>Tests: %1 were written, %2 are there.</source>
        <translation>Tests: %1 wurden geschrieben, %2 sind da.</translation>
    </message>
    <message>
        <source>Tests: as many as were written, but not the same.</source>
        <translation>Tests: so viele wie geschrieben, aber nicht dieselben.</translation>
    </message>
    <message>
        <source>Sessions of %1: %2 were written, %3 are there.</source>
        <translation>Einheiten von %1: %2 wurden geschrieben, %3 sind da.</translation>
    </message>
    <message>
        <source>Sessions of %1: as many as were written, but not the same.</source>
        <translation>Einheiten von %1: so viele wie geschrieben, aber nicht dieselben.</translation>
    </message>
    <message>
        <source>The table of tallies is not whole.</source>
        <translation>Die Tabelle der Zählungen ist nicht vollständig.</translation>
    </message>
    <message>
        <source>&apos;%1&apos;, the same name as &apos;%2&apos;</source>
        <translation>„%1“, derselbe Name wie „%2“</translation>
    </message>
    <message>
        <source>&apos;%1&apos;, with blanks or signs in it that are not seen</source>
        <translation>„%1“ mit Leerraum oder Zeichen darin, die man nicht sieht</translation>
    </message>
    <message>
        <source>the name without them</source>
        <translation>der Name ohne sie</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is a log or belongs to one; nothing else is ever written there. Nothing was changed.</source>
        <translation>„%1“ ist ein Protokoll oder gehört zu einem; dort wird nie etwas anderes geschrieben. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Standard output cannot be written: %1.</source>
        <translation>Auf die Standardausgabe lässt sich nicht schreiben: %1.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no plain file, and nothing is written in its place.</source>
        <translation>„%1“ ist keine gewöhnliche Datei; an ihrer Stelle wird nichts geschrieben.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; was changed by another program just now; it was left as it is.</source>
        <translation>„%1“ wurde eben von einem anderen Programm geändert und blieb, wie es ist.</translation>
    </message>
    <message>
        <source>a load from 0 to %1</source>
        <translation>eine Last von 0 bis %1</translation>
    </message>
    <message>
        <source>a ceiling above 0 and up to %1, or none</source>
        <translation>eine Lastgrenze über 0 bis %1, oder keine</translation>
    </message>
    <message>
        <source>a smallest change that matters above 0 and up to %1</source>
        <translation>eine kleinste bedeutsame Änderung über 0 bis %1</translation>
    </message>
    <message>
        <source>a body mass above 0 and up to %1, or none</source>
        <translation>eine Körpermasse über 0 bis %1, oder keine</translation>
    </message>
    <message>
        <source>%1, and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>The PDF %1 could not be painted. Nothing was changed.</source>
        <translation>Die PDF-Datei %1 ließ sich nicht zeichnen. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>The picture %1 could not be painted. Nothing was changed.</source>
        <translation>Das Bild %1 ließ sich nicht zeichnen. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>a lift that sets of %1 belong to: the log is damaged, and the lift is not in it any more</source>
        <translation>eine Übung, zu der Sätze von %1 gehören: Das Protokoll ist beschädigt, die Übung steht nicht mehr darin</translation>
    </message>
    <message>
        <source>a test that attempts of %1 belong to: the log is damaged, and the test is not in it any more</source>
        <translation>ein Test, zu dem Versuche von %1 gehören: Das Protokoll ist beschädigt, der Test steht nicht mehr darin</translation>
    </message>
    <message>
        <source>the lift was not possible that day (%1)</source>
        <translation>die Übung war an dem Tag nicht möglich (%1)</translation>
    </message>
    <message>
        <source>the lift was not possible that day (%1): %2</source>
        <translation>die Übung war an dem Tag nicht möglich (%1): %2</translation>
    </message>
    <message>
        <source>no flight found: the force never falls to nothing for 0.1 to 1.2 s between two contacts (on a plate that was not zeroed it does not)</source>
        <translation>kein Flug gefunden: Zwischen zwei Kontakten fällt die Kraft nie für 0,1 bis 1,2 s auf nichts (auf einer Platte, die nicht genullt wurde, tut sie das nicht)</translation>
    </message>
    <message>
        <source>the plate reads %1 N in flight, with nobody on it: zero it and jump again</source>
        <translation>die Platte zeigt im Flug, wenn niemand auf ihr steht, %1 N: bitte nullen und noch einmal springen lassen</translation>
    </message>
    <message>
        <source>force in flight, taken off the weight</source>
        <translation>Kraft im Flug, vom Gewicht abgezogen</translation>
    </message>
    <message>
        <source>The plate was not zeroed: it reads %1 N in flight, with nobody on it. That is taken off the weight and the body mass.</source>
        <translation>Die Platte war nicht genullt: Sie zeigt im Flug, wenn niemand auf ihr steht, %1 N. Das ist vom Gewicht und von der Körpermasse abgezogen.</translation>
    </message>
    <message>
        <source>its attempts alone spread by %1 %2, a lower bound of its noise: the same test on two days of one week, the second marked as a repeat, gives the whole</source>
        <translation>schon die Versuche streuen um %1 %2, eine untere Grenze der Streuung: derselbe Test an zwei Tagen einer Woche, der zweite als Wiederholung gekennzeichnet, ergibt die ganze</translation>
    </message>
    <message>
        <source>the two days share no load</source>
        <translation>die beiden Tage haben keine Last gemeinsam</translation>
    </message>
    <message>
        <source>calibration needs three maxima lifted within days of an estimate</source>
        <translation>die Kalibrierung braucht drei Maxima, die wenige Tage vor oder nach einer Schätzung gehoben wurden</translation>
    </message>
    <message>
        <source>surface: %1, then %2</source>
        <translation>Untergrund: %1, dann %2</translation>
    </message>
    <message>
        <source>device: %1, then %2</source>
        <translation>Messgerät: %1, dann %2</translation>
    </message>
    <message>
        <source>footwear: %1, then %2</source>
        <translation>Schuhwerk: %1, dann %2</translation>
    </message>
    <message>
        <source>technique: %1, then %2</source>
        <translation>Technik: %1, dann %2</translation>
    </message>
    <message>
        <source>left by %1 %</source>
        <translation>links um %1 % besser</translation>
    </message>
    <message>
        <source>right by %1 %</source>
        <translation>rechts um %1 % besser</translation>
    </message>
    <message>
        <source>even</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>the later session&apos;s device reads %1 m/s against the earlier one&apos;s: taken off its speeds, line and estimate here, and its uncertainty (SE %2) added to the readings</source>
        <translation>Das Messgerät der späteren Einheit zeigt %1 m/s gegenüber dem der früheren: hier von ihren Geschwindigkeiten, ihrer Geraden und Schätzung abgezogen, und die Unsicherheit davon (SE %2) ist in den Befunden enthalten</translation>
    </message>
    <message>
        <source>the device of one session is not known: part of the change may be the device&apos;s</source>
        <translation>Das Messgerät einer Einheit ist nicht bekannt: Ein Teil der Änderung kann vom Messgerät stammen</translation>
    </message>
    <message>
        <source>smallest change that matters, by load: %1</source>
        <translation>kleinste bedeutsame Änderung, je Last: %1</translation>
    </message>
    <message>
        <source>smallest change of speed that matters, other loads: %1 m/s (%2)</source>
        <translation>kleinste bedeutsame Geschwindigkeitsänderung, übrige Lasten: %1 m/s (%2)</translation>
    </message>
    <message>
        <source>smallest change of the estimated max that matters: %1 (%2)</source>
        <translation>kleinste bedeutsame Änderung des geschätzten Maximums: %1 (%2)</translation>
    </message>
    <message>
        <source>the points of one day scatter more than the other&apos;s (F = %1, %2): separate variances may be asked for</source>
        <translation>die Punkte des einen Tages streuen mehr als die des anderen (F = %1, %2): Getrennte Varianzen lassen sich verlangen</translation>
    </message>
    <message>
        <source>the points of one day scatter more than the other&apos;s (F = %1, %2): each line has its own variance here</source>
        <translation>die Punkte des einen Tages streuen mehr als die des anderen (F = %1, %2): Jede Gerade hat hier ihre eigene Varianz</translation>
    </message>
    <message>
        <source>no day-to-day noise is known: the readings are made from these two days alone, which calls too much a change</source>
        <translation>Keine Tag-zu-Tag-Streuung bekannt: Die Befunde beruhen allein auf diesen zwei Tagen, wodurch zu vieles als Änderung gilt</translation>
    </message>
    <message>
        <source>no day-to-day noise was found beyond the scatter within a day (%1)</source>
        <translation>Es fand sich keine Tag-zu-Tag-Streuung, die über die Streuung innerhalb eines Tages hinausgeht (%1)</translation>
    </message>
    <message>
        <source>day-to-day SD of a whole line, %1 m/s, is part of every reading (%2)</source>
        <translation>Die Tag-zu-Tag-SD einer ganzen Geraden, %1 m/s, ist in jeden Befund eingerechnet (%2)</translation>
    </message>
    <message>
        <source>smallest change of speed that matters: %1 m/s (%2)</source>
        <translation>Kleinste bedeutsame Geschwindigkeitsänderung: %1 m/s (%2)</translation>
    </message>
    <message>
        <source>intervals are at %1 %, not 95 %</source>
        <translation>die Intervalle gelten für %1 %, nicht für 95 %</translation>
    </message>
    <message>
        <source>the sessions share no stretch of loads: every change by load is extrapolated</source>
        <translation>Die Einheiten haben keinen Lastbereich gemeinsam: Jede Änderung je Last ist extrapoliert</translation>
    </message>
    <message>
        <source>the slope is not certain enough to bound the estimate</source>
        <translation>Die Steigung ist nicht sicher genug, um die Schätzung einzugrenzen</translation>
    </message>
    <message>
        <source>the heaviest load is under half of the estimate, which lies %1 beyond the heaviest load of %2 (reach %3): read its interval first</source>
        <translation>die schwerste Last liegt unter der Hälfte der Schätzung, die %1 über der schwersten Last von %2 liegt (Reichweite %3): zuerst das Intervall lesen</translation>
    </message>
    <message>
        <source>extrapolated far: the estimate lies %1 beyond the heaviest load of %2 (reach %3)</source>
        <translation>weit extrapoliert: Die Schätzung liegt %1 über der schwersten Last von %2 (Reichweite %3)</translation>
    </message>
    <message>
        <source>one true maximum has no SD: no interval with the MVT&apos;s own</source>
        <translation>Ein einziges echtes Maximum hat keine SD: kein Intervall mit der Streuung der MVT</translation>
    </message>
    <message>
        <source>the SD of the MVT is not known: no interval with it</source>
        <translation>Die SD der MVT ist nicht bekannt: kein Intervall mit ihr</translation>
    </message>
    <message>
        <source>%1 m/s at %2 lies far from the line of the other points (studentised %3): worth a look</source>
        <translation>%1 m/s bei %2 liegt weit von der Geraden der übrigen Punkte (studentisiert %3): einen Blick wert</translation>
    </message>
    <message>
        <source>%1 m/s at %2 is hard to believe: worth a look</source>
        <translation>%1 m/s bei %2 ist kaum zu glauben: einen Blick wert</translation>
    </message>
    <message>
        <source>two points make a line without intervals: it needs a third load</source>
        <translation>Zwei Punkte ergeben eine Gerade ohne Intervalle: Es fehlt eine dritte Last</translation>
    </message>
    <message>
        <source>peak velocity at a maximum is no small steady figure: an MVT made for mean velocity does not hold for it</source>
        <translation>Die Spitzengeschwindigkeit bei einem Maximum ist kein kleiner, beständiger Wert: Eine MVT für mittlere Geschwindigkeit gilt für sie nicht</translation>
    </message>
    <message>
        <source>the points bend (%1): a straight line misses their ends</source>
        <translation>Die Punkte sind gekrümmt (%1): Eine Gerade verfehlt ihre Enden</translation>
    </message>
    <message>
        <source>the baseline session has no line, so no change is judged: %1</source>
        <translation>Die Bezugseinheit hat keine Gerade, daher wird keine Änderung beurteilt: %1</translation>
    </message>
    <message>
        <source>the baseline&apos;s line has two points, so no change can be judged: it needs a third load</source>
        <translation>die Gerade der Bezugseinheit hat zwei Punkte, daher lässt sich keine Änderung beurteilen: Es fehlt eine dritte Last</translation>
    </message>
    <message>
        <source>changes across devices and the trend have the device&apos;s bias taken off</source>
        <translation>Von Änderungen zwischen Messgeräten und vom Trend ist der Bias des Messgeräts abgezogen</translation>
    </message>
    <message>
        <source>some sessions were measured with another device than the baseline: part of their change, and of the trend, may be the device&apos;s</source>
        <translation>Einige Einheiten wurden mit einem anderen Messgerät als der Bezug gemessen: Ein Teil ihrer Änderung und des Trends kann vom Messgerät stammen</translation>
    </message>
    <message>
        <source>sessions whose loads do not reach %1 are shown as extrapolated and take no part in the trend</source>
        <translation>Einheiten, deren Lasten %1 nicht erreichen, sind als extrapoliert dargestellt und zählen nicht zum Trend</translation>
    </message>
    <message>
        <source>no day-to-day noise is known: no smallest detectable change is drawn</source>
        <translation>Keine Tag-zu-Tag-Streuung bekannt: Die kleinste nachweisbare Änderung wird nicht gezeichnet</translation>
    </message>
    <message>
        <source>shares of the 1RM marked so are by %1, not by this athlete&apos;s own line: people differ</source>
        <translation>So gekennzeichnete Anteile am 1RM stammen aus: %1, nicht aus der eigenen Geraden dieses Athleten. Menschen sind verschieden</translation>
    </message>
    <message>
        <source>some were measured with two devices: part of their change may be the devices&apos;</source>
        <translation>Einige wurden mit zwei Messgeräten gemessen: Ein Teil ihrer Änderung kann von den Messgeräten stammen</translation>
    </message>
    <message>
        <source>changes across devices have the device&apos;s bias taken off and its uncertainty added</source>
        <translation>Von Änderungen zwischen Messgeräten ist der Bias des Messgeräts abgezogen und seine Unsicherheit eingerechnet</translation>
    </message>
    <message>
        <source>After Patterson et al. 2019 (Front Physiol 10:533), Front Physiol 2022;13:808622 and the clinical literature: have a clinician review it before relying on it.</source>
        <translation>Nach Patterson et al. 2019 (Front Physiol 10:533), Front Physiol 2022;13:808622 und der klinischen Literatur: vor der Anwendung von ärztlicher Seite prüfen lassen.</translation>
    </message>
    <message>
        <source>This plan is not medical advice. Restricted-flow training needs medical screening and trained, licensed supervision. Restriction pressure must be set by a trained person from a measured occlusion pressure, never by elastic wraps at a guessed tightness. Local rules come first.</source>
        <translation>Dieser Plan ist kein medizinischer Rat. Training mit Blutflussrestriktion erfordert eine medizinische Abklärung und geschulte, zugelassene Aufsicht. Der Restriktionsdruck muss von einer geschulten Person anhand eines gemessenen Okklusionsdrucks eingestellt werden, nie mit elastischen Binden in geschätzter Spannung. Örtliche Regeln gehen vor.</translation>
    </message>
    <message>
        <source>load 20 to 40 % of 1RM</source>
        <translation>Last 20 bis 40 % des 1RM</translation>
    </message>
    <message>
        <source>pressure 40 to 80 % of the occlusion pressure measured on that limb, with that cuff, in that posture; a wider cuff needs less</source>
        <translation>Druck 40 bis 80 % des Okklusionsdrucks, gemessen an dieser Gliedmaße, mit dieser Manschette, in dieser Haltung; eine breitere Manschette braucht weniger</translation>
    </message>
    <message>
        <source>2 to 4 sets, often 30, 15, 15 and 15 reps, 1 to 2 s up and 1 to 2 s down</source>
        <translation>2 bis 4 Sätze, oft 30, 15, 15 und 15 Wiederholungen, 1 bis 2 s hinauf und 1 bis 2 s hinunter</translation>
    </message>
    <message>
        <source>30 to 60 s between sets; about 5 to 10 min of restriction for an exercise, then deflate</source>
        <translation>30 bis 60 s zwischen den Sätzen; je Übung etwa 5 bis 10 min Restriktion, dann entlüften</translation>
    </message>
    <message>
        <source>a deep-vein thrombosis, pulmonary embolism or clotting disorder, now or before</source>
        <translation>eine tiefe Venenthrombose, Lungenembolie oder Gerinnungsstörung, jetzt oder früher</translation>
    </message>
    <message>
        <source>haemophilia; medicines that raise the risk of clots or of bleeding</source>
        <translation>Hämophilie; Medikamente, die das Risiko von Blutgerinnseln oder Blutungen erhöhen</translation>
    </message>
    <message>
        <source>anabolic steroids or other ergogenic medicines</source>
        <translation>anabole Steroide oder andere leistungssteigernde Mittel</translation>
    </message>
    <message>
        <source>pregnancy and the months after a birth</source>
        <translation>Schwangerschaft und die Monate nach einer Geburt</translation>
    </message>
    <message>
        <source>high blood pressure that is not under control</source>
        <translation>Bluthochdruck, der nicht eingestellt ist</translation>
    </message>
    <message>
        <source>unstable heart disease, a recent heart attack or stroke</source>
        <translation>instabile Herzerkrankung, kürzlicher Herzinfarkt oder Schlaganfall</translation>
    </message>
    <message>
        <source>heart failure or atrial fibrillation</source>
        <translation>Herzschwäche oder Vorhofflimmern</translation>
    </message>
    <message>
        <source>peripheral arterial disease or poor circulation; varicose veins</source>
        <translation>periphere arterielle Verschlusskrankheit oder schlechte Durchblutung; Krampfadern</translation>
    </message>
    <message>
        <source>smoking</source>
        <translation>Rauchen</translation>
    </message>
    <message>
        <source>sickle-cell disease or trait</source>
        <translation>Sichelzellkrankheit oder -anlage</translation>
    </message>
    <message>
        <source>chronic kidney disease</source>
        <translation>chronische Nierenkrankheit</translation>
    </message>
    <message>
        <source>rheumatoid arthritis</source>
        <translation>rheumatoide Arthritis</translation>
    </message>
    <message>
        <source>active cancer</source>
        <translation>aktive Krebserkrankung</translation>
    </message>
    <message>
        <source>an open wound, infection, recent fracture or surgery of the limb; a vascular graft or dialysis access; lymphoedema or removed lymph nodes</source>
        <translation>eine offene Wunde, eine Infektion, ein kürzlicher Bruch oder Eingriff an der Gliedmaße; eine Gefäßprothese oder ein Dialysezugang; ein Lymphödem oder entfernte Lymphknoten</translation>
    </message>
    <message>
        <source>diabetes with damage to vessels or nerves</source>
        <translation>Diabetes mit Gefäß- oder Nervenschäden</translation>
    </message>
    <message>
        <source>severe obesity</source>
        <translation>schwere Adipositas</translation>
    </message>
    <message>
        <source>long bed rest or recent long travel</source>
        <translation>lange Bettruhe oder eine kürzliche lange Reise</translation>
    </message>
    <message>
        <source>rhabdomyolysis before</source>
        <translation>eine frühere Rhabdomyolyse</translation>
    </message>
    <message>
        <source>numbness or tingling</source>
        <translation>Taubheitsgefühl oder Kribbeln</translation>
    </message>
    <message>
        <source>sharp pain</source>
        <translation>stechender Schmerz</translation>
    </message>
    <message>
        <source>unusual swelling or colour</source>
        <translation>ungewöhnliche Schwellung oder Verfärbung</translation>
    </message>
    <message>
        <source>dizziness, chest pain or shortness of breath</source>
        <translation>Schwindel, Brustschmerz oder Atemnot</translation>
    </message>
    <message>
        <source>nausea, headache or faintness</source>
        <translation>Übelkeit, Kopfschmerz oder das Gefühl, ohnmächtig zu werden</translation>
    </message>
    <message>
        <source>dark urine</source>
        <translation>dunkler Urin</translation>
    </message>
    <message>
        <source>soreness out of all proportion</source>
        <translation>Muskelschmerz weit über das übliche Maß hinaus</translation>
    </message>
    <message>
        <source>squad: %1</source>
        <translation>Kader: %1</translation>
    </message>
    <message>
        <source>the coach&apos;s own</source>
        <translation>eigener Wert des Trainers</translation>
    </message>
    <message>
        <source>published, not yours: %1</source>
        <translation>veröffentlicht, kein eigener Wert: %1</translation>
    </message>
    <message>
        <source>the athlete&apos;s own: 1 repeat test</source>
        <translation>eigener Wert des Athleten: 1 Wiederholungstest</translation>
    </message>
    <message>
        <source>the athlete&apos;s own: %1 repeat tests</source>
        <translation>eigener Wert des Athleten: %1 Wiederholungstests</translation>
    </message>
    <message>
        <source>this log&apos;s: 1 repeat test</source>
        <translation>Wert dieses Protokolls: 1 Wiederholungstest</translation>
    </message>
    <message>
        <source>this log&apos;s: %1 repeat tests</source>
        <translation>Wert dieses Protokolls: %1 Wiederholungstests</translation>
    </message>
    <message>
        <source>the athlete&apos;s own: one true maximum</source>
        <translation>eigener Wert des Athleten: ein echtes Maximum</translation>
    </message>
    <message>
        <source>the athlete&apos;s own: mean of %1 true maxima</source>
        <translation>eigener Wert des Athleten: Mittel aus %1 echten Maxima</translation>
    </message>
    <message>
        <source>the coach&apos;s own: %1</source>
        <translation>eigener Wert des Trainers: %1</translation>
    </message>
    <message>
        <source>both estimates use one MVT, so its uncertainty nearly cancels in their change (what is left is %1) and is not in its interval</source>
        <translation>beide Schätzungen verwenden dieselbe MVT, sodass sich deren Unsicherheit in der Änderung fast aufhebt (es bleiben %1) und nicht in ihrem Intervall steht</translation>
    </message>
    <message>
        <source>a slope is not certain enough to bound the change of the estimated max</source>
        <translation>eine Steigung ist nicht sicher genug, um die Änderung des geschätzten Maximums einzugrenzen</translation>
    </message>
    <message>
        <source>the devices differ in proportion (least-products slope %1, its interval leaves out 1): one bias for all speeds is too simple</source>
        <translation>Die Messgeräte unterscheiden sich proportional (Steigung der Least-Products-Geraden %1, ihr Intervall schließt die 1 nicht ein): Ein einziger Bias für alle Geschwindigkeiten ist zu einfach</translation>
    </message>
    <message>
        <source>1 set of one device has no partner and is left out</source>
        <translation>1 Satz eines Messgeräts hat kein Gegenstück und bleibt außer Betracht</translation>
    </message>
    <message>
        <source>%1 sets of one device have no partner and are left out</source>
        <translation>%1 Sätze eines Messgeräts haben kein Gegenstück und bleiben außer Betracht</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>no estimated 1RM: %1</source>
        <translation>Kein geschätztes 1RM: %1</translation>
    </message>
    <message>
        <source>the estimated 1RM lies %1 beyond the heaviest load lifted (reach %2): every percent here leans on that, so read the intervals first</source>
        <translation>Das geschätzte 1RM liegt %1 über der schwersten gehobenen Last (Reichweite %2): Jede Prozentangabe hier stützt sich darauf, also zuerst die Intervalle lesen</translation>
    </message>
    <message>
        <source>the estimated 1RM lies %1 beyond the heaviest load lifted (reach %2): every percent here leans on that</source>
        <translation>Das geschätzte 1RM liegt %1 über der schwersten gehobenen Last (Reichweite %2): Jede Prozentangabe hier stützt sich darauf</translation>
    </message>
    <message>
        <source>two points give no intervals: the line needs a third load</source>
        <translation>Zwei Punkte ergeben keine Intervalle: Die Gerade braucht eine dritte Last</translation>
    </message>
    <message>
        <source>the slope is not certain enough to bound the 1RM, so its percents have no interval</source>
        <translation>Die Steigung ist nicht sicher genug, um das 1RM einzugrenzen, deshalb haben seine Prozentangaben kein Intervall</translation>
    </message>
    <message>
        <source>no repeat tests are known: the expected speeds&apos; intervals lack the scatter from day to day and are too narrow</source>
        <translation>Es sind keine Wiederholungstests bekannt: Den Intervallen der erwarteten Geschwindigkeiten fehlt die Tag-zu-Tag-Streuung, und sie sind zu eng</translation>
    </message>
    <message>
        <source>this lift&apos;s line is of set means: take the stop speed from the day&apos;s fastest rep</source>
        <translation>Die Gerade dieser Übung ist die der Satzmittel: Die Stopp-Geschwindigkeit von der schnellsten Wiederholung des Tages nehmen</translation>
    </message>
    <message>
        <source>%1 is %2 % of this athlete&apos;s estimated 1RM: it may be more than the athlete can lift that day</source>
        <translation>%1 sind %2 % des geschätzten 1RM dieses Athleten: Das kann mehr sein, als der Athlet an dem Tag heben kann</translation>
    </message>
    <message>
        <source>near-maximal lifts need a competent spotter or safeties, and a coach&apos;s eye</source>
        <translation>Hebungen nahe dem Maximum brauchen eine fachkundige sichernde Person oder Sicherheitsablagen und ein geschultes Trainerauge</translation>
    </message>
    <message>
        <source>%1 lies outside the loads of the test (%2 to %3): its speed is the line drawn on</source>
        <translation>%1 liegt außerhalb der Lasten des Tests (%2 bis %3): Die Geschwindigkeit dort ist die der verlängerten Geraden</translation>
    </message>
    <message>
        <source>the stop speed of %1 m/s at %2 lies under the MVT of %3 m/s: the set would end by failure; choose less loss</source>
        <translation>Die Stopp-Geschwindigkeit von %1 m/s bei %2 liegt unter der MVT von %3 m/s: Der Satz würde mit Versagen enden; weniger Geschwindigkeitsverlust wählen</translation>
    </message>
    <message>
        <source>%1 is %2 % of this athlete&apos;s estimated 1RM; the target is %3</source>
        <translation>%1 sind %2 % des geschätzten 1RM dieses Athleten; das Ziel ist %3</translation>
    </message>
    <message>
        <source>%1 is the heaviest load at hand; the target is %2</source>
        <translation>%1 ist die schwerste verfügbare Last; das Ziel ist %2</translation>
    </message>
    <message>
        <source>possible there: every rep of %1 as fast as it will go, the day judged by its speed (expected %2 m/s, %3)</source>
        <translation>Damit möglich: jede Wiederholung mit %1 so schnell wie möglich, der Tag nach ihrer Geschwindigkeit beurteilt (erwartet %2 m/s, %3)</translation>
    </message>
    <message>
        <source>possible there: every rep of %1 as fast as it will go, the day judged by its speed (expected %2 m/s)</source>
        <translation>Damit möglich: jede Wiederholung mit %1 so schnell wie möglich, der Tag nach ihrer Geschwindigkeit beurteilt (erwartet %2 m/s)</translation>
    </message>
    <message>
        <source>or more reps of it, ending each set when speed has fallen by %1 % (about %2 m/s): more work, not more load</source>
        <translation>Oder mehr Wiederholungen damit, wobei jeder Satz endet, wenn die Geschwindigkeit um %1 % gefallen ist (etwa %2 m/s): mehr Arbeit, nicht mehr Last</translation>
    </message>
    <message>
        <source>the loads end at the upper end of the estimated 1RM (%1)</source>
        <translation>Die Lasten enden am oberen Ende des geschätzten 1RM (%1)</translation>
    </message>
    <message>
        <source>the loads end at the estimated 1RM (%1), which has no interval</source>
        <translation>Die Lasten enden am geschätzten 1RM (%1), das kein Intervall hat</translation>
    </message>
    <message>
        <source>the loads end where the line gives no speed any more (%1)</source>
        <translation>Die Lasten enden, wo die Gerade keine Geschwindigkeit mehr hat (%1)</translation>
    </message>
    <message>
        <source>without an estimated 1RM the loads end a quarter beyond the heaviest load lifted (%1)</source>
        <translation>Ohne geschätztes 1RM enden die Lasten ein Viertel über der schwersten gehobenen Last (%1)</translation>
    </message>
    <message>
        <source>the loads keep to the ceiling of the block %1 (%2)</source>
        <translation>Die Lasten bleiben unter der Lastgrenze des Blocks %1 (%2)</translation>
    </message>
    <message>
        <source>the loads stay under %1, which was not lifted</source>
        <translation>Die Lasten bleiben unter %1, die nicht geschafft wurden</translation>
    </message>
    <message>
        <source>restricted-flow work uses %1 to %2 % of 1RM, here %3 to %4: only after screening and under trained, licensed supervision, as its caution says</source>
        <translation>Training mit Blutflussrestriktion verwendet %1 bis %2 % des 1RM, hier %3 bis %4: nur nach medizinischer Abklärung und unter geschulter, zugelassener Aufsicht, wie sein Vorsichtshinweis sagt</translation>
    </message>
    <message>
        <source>%1 is the lightest load at hand; the target is %2</source>
        <translation>%1 ist die leichteste verfügbare Last; das Ziel ist %2</translation>
    </message>
    <message>
        <source>loads are estimates, not clearance to lift</source>
        <translation>Lasten sind Schätzungen, keine Freigabe zum Heben</translation>
    </message>
    <message>
        <source>pain, illness or return from injury: a qualified practitioner decides; local rules come first</source>
        <translation>Schmerzen, Krankheit oder Rückkehr nach Verletzung: Eine qualifizierte Fachperson entscheidet; örtliche Regeln gehen vor</translation>
    </message>
    <message>
        <source>Not without medical clearance with: %1.</source>
        <translation>Nicht ohne ärztliche Freigabe bei: %1.</translation>
    </message>
    <message>
        <source>Stop and deflate at once for: %1.</source>
        <translation>Sofort abbrechen und die Manschette entlüften bei: %1.</translation>
    </message>
    <message>
        <source>To medical care for: %1.</source>
        <translation>In ärztliche Behandlung bei: %1.</translation>
    </message>
    <message>
        <source>Usual practice: %1.</source>
        <translation>Übliche Praxis: %1.</translation>
    </message>
    <message>
        <source>faster at %1 (by %2 m/s, more than the smallest change that matters)</source>
        <translation>bei %1 schneller (um %2 m/s, mehr als die kleinste bedeutsame Änderung)</translation>
    </message>
    <message>
        <source>faster from %1 to %2 (by %3 m/s, more than the smallest change that matters)</source>
        <translation>von %1 bis %2 schneller (um %3 m/s, mehr als die kleinste bedeutsame Änderung)</translation>
    </message>
    <message>
        <source>faster at %1 (by %2 m/s, less than the smallest change that matters)</source>
        <translation>bei %1 schneller (um %2 m/s, weniger als die kleinste bedeutsame Änderung)</translation>
    </message>
    <message>
        <source>faster from %1 to %2 (by %3 m/s, less than the smallest change that matters)</source>
        <translation>von %1 bis %2 schneller (um %3 m/s, weniger als die kleinste bedeutsame Änderung)</translation>
    </message>
    <message>
        <source>faster at %1 (by %2 m/s)</source>
        <translation>bei %1 schneller (um %2 m/s)</translation>
    </message>
    <message>
        <source>faster from %1 to %2 (by %3 m/s)</source>
        <translation>von %1 bis %2 schneller (um %3 m/s)</translation>
    </message>
    <message>
        <source>slower at %1 (by %2 m/s, more than the smallest change that matters)</source>
        <translation>bei %1 langsamer (um %2 m/s, mehr als die kleinste bedeutsame Änderung)</translation>
    </message>
    <message>
        <source>slower from %1 to %2 (by %3 m/s, more than the smallest change that matters)</source>
        <translation>von %1 bis %2 langsamer (um %3 m/s, mehr als die kleinste bedeutsame Änderung)</translation>
    </message>
    <message>
        <source>slower at %1 (by %2 m/s, less than the smallest change that matters)</source>
        <translation>bei %1 langsamer (um %2 m/s, weniger als die kleinste bedeutsame Änderung)</translation>
    </message>
    <message>
        <source>slower from %1 to %2 (by %3 m/s, less than the smallest change that matters)</source>
        <translation>von %1 bis %2 langsamer (um %3 m/s, weniger als die kleinste bedeutsame Änderung)</translation>
    </message>
    <message>
        <source>slower at %1 (by %2 m/s)</source>
        <translation>bei %1 langsamer (um %2 m/s)</translation>
    </message>
    <message>
        <source>slower from %1 to %2 (by %3 m/s)</source>
        <translation>von %1 bis %2 langsamer (um %3 m/s)</translation>
    </message>
    <message>
        <source>no clear change at %1</source>
        <translation>bei %1 keine klare Änderung</translation>
    </message>
    <message>
        <source>no clear change from %1 to %2</source>
        <translation>von %1 bis %2 keine klare Änderung</translation>
    </message>
    <message>
        <source>no clear change above</source>
        <translation>darüber keine klare Änderung</translation>
    </message>
    <message>
        <source>no clear change up to %1</source>
        <translation>bis %1 keine klare Änderung</translation>
    </message>
    <message>
        <source>no figure at %1</source>
        <translation>bei %1 keine Angabe</translation>
    </message>
    <message>
        <source>no figure from %1 to %2</source>
        <translation>von %1 bis %2 keine Angabe</translation>
    </message>
    <message>
        <source>no figure above</source>
        <translation>darüber keine Angabe</translation>
    </message>
    <message>
        <source>no figure up to %1</source>
        <translation>bis %1 keine Angabe</translation>
    </message>
    <message>
        <source>speed held at %1 (%2 m/s)</source>
        <translation>bei %1 Geschwindigkeit gehalten (%2 m/s)</translation>
    </message>
    <message>
        <source>speed held from %1 to %2 (%3 m/s)</source>
        <translation>von %1 bis %2 Geschwindigkeit gehalten (%3 m/s)</translation>
    </message>
    <message>
        <source>%1 (reach %2 both times: extrapolations)</source>
        <translation>%1 (Reichweite beide Male %2: Extrapolationen)</translation>
    </message>
    <message>
        <source>%1 (reach %2, then %3: extrapolations)</source>
        <translation>%1 (Reichweite %2, dann %3: Extrapolationen)</translation>
    </message>
    <message>
        <source>%1 (the earlier one&apos;s reach %2: an extrapolation)</source>
        <translation>%1 (Reichweite der früheren Einheit %2: eine Extrapolation)</translation>
    </message>
    <message>
        <source>%1 (the later one&apos;s reach %2: an extrapolation)</source>
        <translation>%1 (Reichweite der späteren Einheit %2: eine Extrapolation)</translation>
    </message>
    <message>
        <source>estimated max up: %1 (%2 to %3), more than the smallest change that matters</source>
        <translation>geschätztes Maximum gestiegen: %1 (%2 bis %3), mehr als die kleinste bedeutsame Änderung</translation>
    </message>
    <message>
        <source>estimated max up: %1 (%2 to %3), less than the smallest change that matters</source>
        <translation>geschätztes Maximum gestiegen: %1 (%2 bis %3), weniger als die kleinste bedeutsame Änderung</translation>
    </message>
    <message>
        <source>estimated max up: %1 (%2 to %3)</source>
        <translation>geschätztes Maximum gestiegen: %1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>estimated max down: %1 (%2 to %3), more than the smallest change that matters</source>
        <translation>geschätztes Maximum gesunken: %1 (%2 bis %3), mehr als die kleinste bedeutsame Änderung</translation>
    </message>
    <message>
        <source>estimated max down: %1 (%2 to %3), less than the smallest change that matters</source>
        <translation>geschätztes Maximum gesunken: %1 (%2 bis %3), weniger als die kleinste bedeutsame Änderung</translation>
    </message>
    <message>
        <source>estimated max down: %1 (%2 to %3)</source>
        <translation>geschätztes Maximum gesunken: %1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>estimated max held: %1 (%2 to %3)</source>
        <translation>geschätztes Maximum gehalten: %1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>no clear change of the estimated max: %1 (%2 to %3)</source>
        <translation>keine klare Änderung des geschätzten Maximums: %1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>the two sessions share no loads, so nothing is said by load</source>
        <translation>die beiden Einheiten haben keine Lasten gemeinsam, daher keine Aussage je Last</translation>
    </message>
    <message>
        <source>no clear change at any load from %1 to %2</source>
        <translation>von %1 bis %2 bei keiner Last eine klare Änderung</translation>
    </message>
    <message>
        <source>no estimated max: %1</source>
        <translation>kein geschätztes Maximum: %1</translation>
    </message>
    <message>
        <source>%1 to %2 %</source>
        <translation>%1 bis %2 %</translation>
    </message>
    <message>
        <source>the later ladder lifted %1 times on one day would settle it</source>
        <translation>die spätere Leiter, %1-mal an einem Tag gehoben, würde es klären</translation>
    </message>
    <message>
        <source>the mean of %1 later tests on separate days would settle it</source>
        <translation>das Mittel aus %1 späteren Tests an verschiedenen Tagen würde es klären</translation>
    </message>
    <message>
        <source>the change may lie between none and that: do one more later test</source>
        <translation>die Änderung kann zwischen keiner und dieser liegen: noch einen späteren Test machen</translation>
    </message>
    <message>
        <source>not even %1 tests on each side would settle it</source>
        <translation>nicht einmal %1 Tests auf jeder Seite würden es klären</translation>
    </message>
    <message>
        <source>estimated 1RM: no smallest change that matters is known, so nothing can be called held: set one with the lift</source>
        <translation>geschätztes 1RM: Eine kleinste bedeutsame Änderung ist nicht bekannt, also kann nichts gehalten heißen; sie lässt sich bei der Übung angeben</translation>
    </message>
    <message>
        <source>%1: no smallest change that matters is known, so nothing can be called held: set one with the lift</source>
        <translation>%1: Eine kleinste bedeutsame Änderung ist nicht bekannt, also kann nichts gehalten heißen; sie lässt sich bei der Übung angeben</translation>
    </message>
    <message>
        <source>better</source>
        <translation>besser</translation>
    </message>
    <message>
        <source>worse</source>
        <translation>schlechter</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>unclear</source>
        <translation>unklar</translation>
    </message>
    <message>
        <source>no figure</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>better, by over %1</source>
        <translation>besser, um über %1</translation>
    </message>
    <message>
        <source>worse, by over %1</source>
        <translation>schlechter, um über %1</translation>
    </message>
    <message>
        <source>better, but by less than matters (%1)</source>
        <translation>besser, aber um weniger, als zählt (%1)</translation>
    </message>
    <message>
        <source>worse, but by less than matters (%1)</source>
        <translation>schlechter, aber um weniger, als zählt (%1)</translation>
    </message>
    <message>
        <source>better, by more than matters</source>
        <translation>besser, um mehr, als zählt</translation>
    </message>
    <message>
        <source>worse, by more than matters</source>
        <translation>schlechter, um mehr, als zählt</translation>
    </message>
    <message>
        <source>better, but by less than matters</source>
        <translation>besser, aber um weniger, als zählt</translation>
    </message>
    <message>
        <source>worse, but by less than matters</source>
        <translation>schlechter, aber um weniger, als zählt</translation>
    </message>
    <message>
        <source>%1 + %2</source>
        <translation>%1 + %2</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <translation>%1 %2 %3</translation>
    </message>
    <message>
        <source>%1 x %2</source>
        <translation>%1 x %2</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>Stange</translation>
    </message>
    <message>
        <source>no plates</source>
        <translation>keine Scheiben</translation>
    </message>
    <message>
        <source>%1, no plates</source>
        <translation>%1, keine Scheiben</translation>
    </message>
    <message>
        <source>%1; per side %2</source>
        <translation>%1; je Seite %2</translation>
    </message>
    <message>
        <source>the published equation (%1)</source>
        <translation>die veröffentlichte Gleichung (%1)</translation>
    </message>
    <message>
        <source>a step of %1 % of the 1RM</source>
        <translation>ein Sprung von %1 % des 1RM</translation>
    </message>
    <message>
        <source>a step of %1 % of the heaviest load lifted</source>
        <translation>ein Sprung von %1 % der schwersten gehobenen Last</translation>
    </message>
    <message>
        <source>too few spread loads to show a bend</source>
        <translation>zu wenige verteilte Lasten, um eine Krümmung zu zeigen</translation>
    </message>
    <message>
        <source>the squad&apos;s own relation (%1, %2)</source>
        <translation>der eigene Kaderzusammenhang (%1, %2)</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>borrowing from the athlete&apos;s %1 sessions: none of them is this one</source>
        <translation>gestützt auf die %1 Einheiten des Athleten: Diese ist nicht darunter</translation>
    </message>
    <message>
        <source>borrowing from the athlete&apos;s %1 sessions, no estimated 1RM: %2</source>
        <translation>gestützt auf die %1 Einheiten des Athleten, kein geschätztes 1RM: %2</translation>
    </message>
    <message>
        <source>borrowing from the athlete&apos;s %1 sessions: estimated 1RM %2; from this session alone %3</source>
        <translation>gestützt auf die %1 Einheiten des Athleten: geschätztes 1RM %2; allein aus dieser Einheit %3</translation>
    </message>
    <message>
        <source>borrowing from the athlete&apos;s %1 sessions: estimated 1RM %2</source>
        <translation>gestützt auf die %1 Einheiten des Athleten: geschätztes 1RM %2</translation>
    </message>
    <message>
        <source>best for the 1RM</source>
        <translation>am besten für das 1RM</translation>
    </message>
    <message>
        <source>best for the check loads</source>
        <translation>am besten für die Prüflasten</translation>
    </message>
    <message>
        <source>two extremes</source>
        <translation>zwei Extreme</translation>
    </message>
    <message>
        <source>as last time</source>
        <translation>wie letztes Mal</translation>
    </message>
    <message>
        <source>even steps</source>
        <translation>gleiche Stufen</translation>
    </message>
    <message>
        <source>best without a great step</source>
        <translation>beste ohne großen Sprung</translation>
    </message>
    <message>
        <source>%1, most at %2: %3</source>
        <translation>%1, am meisten bei %2: %3</translation>
    </message>
    <message>
        <source>the later day&apos;s light loads say nothing of the max (%1 to %2 %; reach %3)</source>
        <translation>die leichten Lasten des späteren Tages sagen nichts über das Maximum (%1 bis %2 %; Reichweite %3)</translation>
    </message>
    <message>
        <source>the earlier day&apos;s light loads say nothing of the max (%1 to %2 %; reach %3)</source>
        <translation>die leichten Lasten des früheren Tages sagen nichts über das Maximum (%1 bis %2 %; Reichweite %3)</translation>
    </message>
    <message>
        <source>where a session has no line to judge by, the change at a load is told of what was seen there on both days, from the typical error of a point</source>
        <translation>wo eine Einheit keine Gerade zum Beurteilen hat, wird die Änderung bei einer Last aus dem gesagt, was dort an beiden Tagen gesehen wurde, mit dem typischen Messfehler eines Punktes</translation>
    </message>
    <message>
        <source>leaning is no reading: of nothing, up to one in four such tests leans one way or the other</source>
        <translation>„eher“ ist kein Befund: Auch ohne jede Änderung neigt bis zu ein Viertel solcher Tests in eine der beiden Richtungen</translation>
    </message>
    <message>
        <source>the estimate lies under the %1 that were lifted that day: the line reads low</source>
        <translation>die Schätzung liegt unter den %1, die an dem Tag gehoben wurden: Die Gerade zeigt zu wenig</translation>
    </message>
    <message>
        <source>by %1 of an estimate and a maximum lifted (%2 of them the athlete&apos;s own) such estimates read %3 %: plans take %4 in place of %5</source>
        <translation>nach %1 aus Schätzung und gehobenem Maximum (davon %2 vom Athleten selbst) weichen solche Schätzungen um %3 % ab: Pläne nehmen %4 statt %5</translation>
    </message>
    <message>
        <source>1 pair</source>
        <translation>1 Paar</translation>
    </message>
    <message>
        <source>the days differ in reps: at each load the fastest of as many reps is compared</source>
        <translation>die Tage unterscheiden sich in den Wiederholungen: Bei jeder Last wird die schnellste von gleich vielen Wiederholungen verglichen</translation>
    </message>
    <message>
        <source>%1 % %2</source>
        <translation>%1 % %2</translation>
    </message>
    <message>
        <source>sets of one athlete resemble each other: the limits and the interval of the bias count athletes, not sets</source>
        <translation>Sätze eines Athleten ähneln sich: Die Grenzen und das Intervall des Bias zählen Athleten, nicht Sätze</translation>
    </message>
    <message>
        <source>sets of one session resemble each other: the limits and the interval of the bias count sessions, not sets, and hold for these athletes alone</source>
        <translation>Sätze einer Einheit ähneln sich: Die Grenzen und das Intervall des Bias zählen Einheiten, nicht Sätze, und gelten nur für diese Athleten</translation>
    </message>
    <message>
        <source>the same loads each time, or one load near 80 % of the max, end that doubt in a change</source>
        <translation>jedes Mal dieselben Lasten, oder eine Last nahe 80 % des Maximums, beenden diesen Zweifel bei einer Änderung</translation>
    </message>
    <message>
        <source>the same loads each time end that doubt in a change</source>
        <translation>jedes Mal dieselben Lasten beenden diesen Zweifel bei einer Änderung</translation>
    </message>
    <message>
        <source>as if lines were straight</source>
        <translation>als gäbe es keine Krümmung</translation>
    </message>
    <message>
        <source>bend allowance in</source>
        <translation>mit Krümmungszuschlag</translation>
    </message>
    <message>
        <source>lifts bend a little: a straight line through these loads may read the max %1 to %2 off</source>
        <translation>Übungen krümmen sich ein wenig: Eine Gerade durch diese Lasten kann das Maximum um %1 bis %2 falsch anzeigen</translation>
    </message>
    <message>
        <source>%1 own full ladders narrow it</source>
        <translation>%1 eigene volle Leitern engen es ein</translation>
    </message>
    <message>
        <source>both ladders reach alike: what lines may bend cancels in the change of the max</source>
        <translation>beide Leitern reichen gleich weit: Was sich krümmen kann, hebt sich in der Änderung des Maximums auf</translation>
    </message>
    <message>
        <source>lines bend a little: the change of the max may look up to %1 better or %2 worse than it is</source>
        <translation>Geraden krümmen sich ein wenig: Die Änderung des Maximums kann bis zu %1 besser oder %2 schlechter aussehen, als sie ist</translation>
    </message>
    <message>
        <source>lines bend a little: the change of the max may look up to %1 better than it is</source>
        <translation>Geraden krümmen sich ein wenig: Die Änderung des Maximums kann bis zu %1 besser aussehen, als sie ist</translation>
    </message>
    <message>
        <source>lines bend a little: the change of the max may look up to %1 worse than it is</source>
        <translation>Geraden krümmen sich ein wenig: Die Änderung des Maximums kann bis zu %1 schlechter aussehen, als sie ist</translation>
    </message>
    <message>
        <source>no bend allowance is made: lines are taken as straight</source>
        <translation>kein Krümmungszuschlag: Es wird ohne Krümmung gerechnet</translation>
    </message>
    <message>
        <source>bend allowance: any of the shipped curves, for none is published for this lift</source>
        <translation>Krümmungszuschlag: nach allen mitgelieferten Kurven, denn für diese Übung ist keine veröffentlicht</translation>
    </message>
    <message>
        <source>bend allowance: %1 to %2 times the published curve of the lift (%3), by %4 own full ladders</source>
        <translation>Krümmungszuschlag: das %1- bis %2-Fache der veröffentlichten Kurve der Übung (%3), nach %4 eigenen vollen Leitern</translation>
    </message>
    <message>
        <source>bend allowance: none up to all of the published curve of the lift (%1)</source>
        <translation>Krümmungszuschlag: von nichts bis zur ganzen veröffentlichten Kurve der Übung (%1)</translation>
    </message>
    <message>
        <source>days tilt a line as well: its slope by %1 % (SD), about 60 % of the max</source>
        <translation>Tage kippen eine Gerade auch: ihre Steigung um %1 % (SD), um 60 % des Maximums</translation>
    </message>
    <message>
        <source>estimated 1RM by the log&apos;s own maxima %1; to plan with %2 to %3</source>
        <translation>geschätztes 1RM nach den Maxima dieses Protokolls %1; zum Planen %2 bis %3</translation>
    </message>
    <message>
        <source>estimated 1RM %1; to plan with not bounded: lift loads further apart, and heavier ones</source>
        <translation>geschätztes 1RM %1; zum Planen nicht begrenzt: weiter auseinander liegende und schwerere Lasten heben</translation>
    </message>
    <message>
        <source>estimated 1RM %1, without an interval</source>
        <translation>geschätztes 1RM %1, ohne Intervall</translation>
    </message>
    <message>
        <source>estimated 1RM %1; to plan with %2 to %3</source>
        <translation>geschätztes 1RM %1; zum Planen %2 bis %3</translation>
    </message>
    <message>
        <source>estimated 1RM %1; to plan with %2 to %3 (as if straight %4 to %5)</source>
        <translation>geschätztes 1RM %1; zum Planen %2 bis %3 (ohne Krümmung %4 bis %5)</translation>
    </message>
    <message>
        <source>at %1 changes from %2 m/s up, of which the bend takes %3</source>
        <translation>bei %1 Änderungen ab %2 m/s, davon nimmt die Krümmung %3</translation>
    </message>
    <message>
        <source>at %1 changes from %2 m/s up</source>
        <translation>bei %1 Änderungen ab %2 m/s</translation>
    </message>
    <message>
        <source>of the estimated 1RM changes from %1 up, of which the bend takes %2 (the same loads both times: none)</source>
        <translation>beim geschätzten 1RM Änderungen ab %1, davon nimmt die Krümmung %2 (beide Male dieselben Lasten: nichts)</translation>
    </message>
    <message>
        <source>of the estimated 1RM changes from %1 up</source>
        <translation>beim geschätzten 1RM Änderungen ab %1</translation>
    </message>
    <message>
        <source>of the estimated 1RM none: it cannot be bounded</source>
        <translation>beim geschätzten 1RM keine: Es lässt sich nicht begrenzen</translation>
    </message>
    <message>
        <source>this test and one by the first ladder can show: %1; smaller changes will stay unclear, whatever the athlete did</source>
        <translation>dieser Test und einer nach der ersten Leiter können zeigen: %1; kleinere Änderungen bleiben unklar, was der Athlet auch tat</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>the surface changed (%1, then %2): part of the change may be its doing</source>
        <translation>der Untergrund hat gewechselt (%1, dann %2): Ein Teil der Änderung kann daran liegen</translation>
    </message>
    <message>
        <source>the footwear changed (%1, then %2): part of the change may be its doing</source>
        <translation>das Schuhwerk hat gewechselt (%1, dann %2): Ein Teil der Änderung kann daran liegen</translation>
    </message>
    <message>
        <source>both devices measured these same sets, so the change is between the devices, not in the athlete; too little is known of how the devices agree besides these sessions, and a bias found in them would hide what they say: nothing is taken off</source>
        <translation>Beide Messgeräte haben dieselben Sätze gemessen, die Änderung liegt also zwischen den Messgeräten, nicht beim Athleten; außer aus diesen Einheiten ist zu wenig über die Übereinstimmung der Messgeräte bekannt, und eine Abweichung aus ihnen würde verdecken, was sie sagen: Nichts wird abgezogen</translation>
    </message>
    <message>
        <source>too little is known of how the devices agree besides these sessions, and a bias found in them would hide what they say: nothing is taken off, and part of the change may be the devices&apos;</source>
        <translation>Außer aus diesen Einheiten ist zu wenig über die Übereinstimmung der Messgeräte bekannt, und eine Abweichung aus ihnen würde verdecken, was sie sagen: Nichts wird abgezogen, und ein Teil der Änderung kann an den Messgeräten liegen</translation>
    </message>
    <message>
        <source>the device&apos;s bias comes from %1 of %2 measured by both at once</source>
        <translation>Der Bias des Messgeräts stammt aus gleichzeitigen Messungen mit beiden (%1, %2)</translation>
    </message>
    <message>
        <source>1 set</source>
        <translation>1 Satz</translation>
    </message>
    <message>
        <source>%1 sets</source>
        <translation>%1 Sätze</translation>
    </message>
    <message>
        <source>one test will do</source>
        <translation>ein Test genügt</translation>
    </message>
    <message>
        <source>%1 tests after the block, on separate days, make it 80 %</source>
        <translation>%1 Tests nach dem Block, an verschiedenen Tagen, machen daraus 80 %</translation>
    </message>
    <message>
        <source>not even 20 tests on each side make it 80 %</source>
        <translation>auch je 20 Tests vorher und nachher machen daraus keine 80 %</translation>
    </message>
    <message>
        <source>%1: a true change of %2 m/s is read as one with a chance of %3 %</source>
        <translation>%1: Eine wahre Änderung von %2 m/s wird mit einer Wahrscheinlichkeit von %3 % als solche erkannt</translation>
    </message>
    <message>
        <source>no change would be read as held by one test</source>
        <translation>bliebe alles gleich, würde schon ein Test das als gehalten erkennen</translation>
    </message>
    <message>
        <source>no change would be read as held after %1 later tests</source>
        <translation>bliebe alles gleich, würden %1 spätere Tests das als gehalten erkennen</translation>
    </message>
    <message>
        <source>no change would be read as held by %1 tests on each side</source>
        <translation>bliebe alles gleich, würden je %1 Tests vorher und nachher das als gehalten erkennen</translation>
    </message>
    <message>
        <source>estimated 1RM: a true change of %1 is read as one with a chance of %2 %, none as held with %3 %</source>
        <translation>geschätztes 1RM: Eine wahre Änderung von %1 wird mit einer Wahrscheinlichkeit von %2 % als solche erkannt, keine Änderung mit %3 % als gehalten</translation>
    </message>
    <message>
        <source>80 % with 1 test on each side</source>
        <translation>80 % mit je 1 Test vorher und nachher</translation>
    </message>
    <message>
        <source>80 % with %1 tests on each side</source>
        <translation>80 % mit je %1 Tests vorher und nachher</translation>
    </message>
    <message>
        <source>%1 points (%2 to %3): less uneven</source>
        <translation>%1 Punkte (%2 bis %3): weniger ungleich</translation>
    </message>
    <message>
        <source>%1 points (%2 to %3): more uneven</source>
        <translation>%1 Punkte (%2 bis %3): ungleicher</translation>
    </message>
    <message>
        <source>estimated 1RM %1; to plan with %2 to %3, by the line and the MVT&apos;s own SD alone: days and bend leave it unbounded</source>
        <translation>geschätztes 1RM %1; zum Planen %2 bis %3, aus der Geraden und der SD der MVT allein: mit Tagen und Krümmung bleibt es unbegrenzt</translation>
    </message>
    <message>
        <source>estimated 1RM %1; to plan with %2 to %3, by the line alone: days and bend leave it unbounded</source>
        <translation>geschätztes 1RM %1; zum Planen %2 bis %3, aus der Geraden allein: mit Tagen und Krümmung bleibt es unbegrenzt</translation>
    </message>
    <message>
        <source>published, not yours</source>
        <translation>veröffentlicht, kein eigener Wert</translation>
    </message>
    <message>
        <source>published day-to-day noise: %1</source>
        <translation>veröffentlichte Tag-zu-Tag-Streuung: %1</translation>
    </message>
    <message>
        <source>the athlete&apos;s own: one true maximum, drawn towards the lift&apos;s figure</source>
        <translation>eigener Wert des Athleten: ein echtes Maximum, zum Wert der Übung hin gezogen</translation>
    </message>
    <message>
        <source>the athlete&apos;s own: mean of %1 true maxima, drawn towards the lift&apos;s figure</source>
        <translation>eigener Wert des Athleten: Mittel aus %1 echten Maxima, zum Wert der Übung hin gezogen</translation>
    </message>
    <message>
        <source>unclear, leaning to better</source>
        <translation>unklar, eher besser</translation>
    </message>
    <message>
        <source>unclear, leaning to worse</source>
        <translation>unklar, eher schlechter</translation>
    </message>
    <message>
        <source>the lift moves the body, and the session has no body mass</source>
        <translation>die Übung bewegt den Körper, und die Einheit hat keine Körpermasse</translation>
    </message>
    <message>
        <source>the device changed (%1, then %2): part of the change may be its doing</source>
        <translation>das Messgerät hat gewechselt (%1, dann %2): ein Teil der Änderung kann daran liegen</translation>
    </message>
    <message>
        <source>the place changed (%1, then %2): part of the change may be its doing</source>
        <translation>der Ort hat gewechselt (%1, dann %2): ein Teil der Änderung kann daran liegen</translation>
    </message>
    <message>
        <source>the technique changed (%1, then %2): part of the change may be its doing</source>
        <translation>die Technik hat gewechselt (%1, dann %2): ein Teil der Änderung kann daran liegen</translation>
    </message>
    <message>
        <source>place: %1, then %2</source>
        <translation>Ort: %1, dann %2</translation>
    </message>
    <message>
        <source>on another surface</source>
        <translation>auf anderem Untergrund</translation>
    </message>
    <message>
        <source>by another device</source>
        <translation>mit anderem Messgerät</translation>
    </message>
    <message>
        <source>in other footwear</source>
        <translation>in anderem Schuhwerk</translation>
    </message>
    <message>
        <source>by another technique</source>
        <translation>mit anderer Technik</translation>
    </message>
    <message>
        <source>not comparable</source>
        <translation>nicht vergleichbar</translation>
    </message>
    <message>
        <source>not comparable: %1</source>
        <translation>nicht vergleichbar: %1</translation>
    </message>
    <message>
        <source>%1 was not lifted on %2</source>
        <translation>%1 am %2 nicht geschafft</translation>
    </message>
    <message>
        <source>measured by another device (%1, then %2), and no study says how the two differ</source>
        <translation>mit einem anderen Messgerät gemessen (%1, dann %2), und keine Studie sagt, wie sich die beiden unterscheiden</translation>
    </message>
    <message>
        <source>some sets measured by both devices at once, a study of the two, make such days comparable</source>
        <translation>einige Sätze, von beiden Messgeräten zugleich gemessen, eine Studie der beiden, machen solche Tage vergleichbar</translation>
    </message>
    <message>
        <source>the estimate is not under the %1 that were not lifted that day: the line reads high, and plans keep under that load</source>
        <translation>die Schätzung liegt nicht unter den %1, die an diesem Tag nicht geschafft wurden: Die Gerade zeigt zu viel, und Pläne bleiben unter dieser Last</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 aus %2</translation>
    </message>
    <message>
        <source>%1, as %2 says of the lift that day</source>
        <translation>%1, wie %2 über die Übung an dem Tag sagt</translation>
    </message>
    <message>
        <source>%1, as %2 says of the same lift: a lift has one device in a session (a column session, 1 or 2, tells two sessions of a day apart)</source>
        <translation>%1, wie %2 über dieselbe Übung sagt: eine Übung hat in einer Einheit ein Messgerät (eine Spalte session, 1 oder 2, unterscheidet zwei Einheiten eines Tages)</translation>
    </message>
    <message>
        <source>&quot;%1&quot;, as an earlier row of this test says</source>
        <translation>„%1“, wie eine frühere Zeile dieses Tests sagt</translation>
    </message>
    <message>
        <source>another roster of &quot;%1&quot;</source>
        <translation>eine andere Liste von „%1“</translation>
    </message>
    <message>
        <source>the station &quot;%1&quot; told otherwise</source>
        <translation>die Station „%1“ anders beschrieben</translation>
    </message>
    <message>
        <source>an RPE from 1 to 10 in halves, such as 8.5</source>
        <translation>eine RPE von 1 bis 10 in halben Schritten, etwa 8.5</translation>
    </message>
    <message>
        <source>none: %1 says that the set was not lifted</source>
        <translation>keine: %1 sagt, dass der Satz nicht geschafft wurde</translation>
    </message>
    <message>
        <source>%1, the turn after the one before</source>
        <translation>%1, die Reihe nach der vorigen</translation>
    </message>
    <message>
        <source>loads in kg with blanks between, from light to heavy: 40 60 80</source>
        <translation>Lasten in kg mit Leerzeichen dazwischen, von leicht nach schwer: 40 60 80</translation>
    </message>
    <message>
        <source>one more test: the station stands further up</source>
        <translation>ein weiterer Test: die Station steht weiter oben</translation>
    </message>
    <message>
        <source>the number of the turn, from 1 on</source>
        <translation>die Nummer der Reihe, ab 1</translation>
    </message>
    <message>
        <source>a test of the log</source>
        <translation>ein Test des Logbuchs</translation>
    </message>
    <message>
        <source>a station of the log or of the files</source>
        <translation>eine Station des Logbuchs oder der Dateien</translation>
    </message>
    <message>
        <source>that station as the log has it</source>
        <translation>diese Station, wie das Logbuch sie hat</translation>
    </message>
    <message>
        <source>the roster of that day as the log has it</source>
        <translation>die Liste dieses Tages, wie das Logbuch sie hat</translation>
    </message>
    <message>
        <source>lifted, not lifted, not possible or nothing</source>
        <translation>lifted, not lifted, not possible oder nichts</translation>
    </message>
    <message>
        <source>nothing where the load or the lift was not possible</source>
        <translation>nichts, wo die Last oder die Übung nicht möglich war</translation>
    </message>
    <message>
        <source>nothing where the load was not lifted</source>
        <translation>nichts, wo die Last nicht geschafft wurde</translation>
    </message>
    <message>
        <source>nothing where the load was lifted</source>
        <translation>nichts, wo die Last geschafft wurde</translation>
    </message>
    <message>
        <source>no load of a test</source>
        <translation>keine Last bei einem Test</translation>
    </message>
    <message>
        <source>That set of equipment is not in the log any more.</source>
        <translation>Diese Ausrüstung ist nicht mehr im Protokoll.</translation>
    </message>
    <message>
        <source>set of equipment %1</source>
        <translation>Ausrüstung %1</translation>
    </message>
    <message>
        <source>&apos;%1&apos; still has %2 stations in the log. Nothing was removed.</source>
        <translation>„%1“ hat noch %2 Stationen im Protokoll. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; still has 1 station in the log. Nothing was removed.</source>
        <translation>„%1“ hat noch 1 Station im Protokoll. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; still has conditions in %2 sessions. Nothing was removed.</source>
        <translation>„%1“ hat noch Bedingungen in %2 Einheiten. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; still has conditions in 1 session. Nothing was removed.</source>
        <translation>„%1“ hat noch Bedingungen in 1 Einheit. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; still stands on %2 rosters. Nothing was removed.</source>
        <translation>„%1“ steht noch auf %2 Listen. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; still stands on 1 roster. Nothing was removed.</source>
        <translation>„%1“ steht noch auf 1 Liste. Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>the roster of &apos;%1&apos; on %2</source>
        <translation>die Liste von „%1“ am %2</translation>
    </message>
    <message>
        <source>That station is in the log already. Nothing was changed.</source>
        <translation>Diese Station ist schon im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>That station is not in the log any more.</source>
        <translation>Diese Station ist nicht mehr im Protokoll.</translation>
    </message>
    <message>
        <source>That station is not in the log any more. Nothing was changed.</source>
        <translation>Diese Station ist nicht mehr im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>a name that no other station has</source>
        <translation>einen Namen, den keine andere Station hat</translation>
    </message>
    <message>
        <source>station %1</source>
        <translation>Station %1</translation>
    </message>
    <message>
        <source>the entry of the station &apos;%1&apos; is not as it was written</source>
        <translation>der Eintrag der Station „%1“ ist nicht so, wie er geschrieben wurde</translation>
    </message>
    <message>
        <source>Rosters: %1 were written, %2 are there.</source>
        <translation>Listen: %1 wurden geschrieben, %2 sind da.</translation>
    </message>
    <message>
        <source>Rosters: as many as were written, but not the same.</source>
        <translation>Listen: so viele, wie geschrieben wurden, aber nicht dieselben.</translation>
    </message>
    <message>
        <source>Stations: %1 were written, %2 are there.</source>
        <translation>Stationen: %1 wurden geschrieben, %2 sind da.</translation>
    </message>
    <message>
        <source>Stations: as many as were written, but not the same.</source>
        <translation>Stationen: so viele, wie geschrieben wurden, aber nicht dieselben.</translation>
    </message>
    <message>
        <source>%1 velocities of a load that was not lifted</source>
        <translation>%1 Geschwindigkeiten einer Last, die nicht geschafft wurde</translation>
    </message>
    <message>
        <source>a reason why a load was not lifted that was</source>
        <translation>ein Grund, warum eine geschaffte Last nicht geschafft wurde</translation>
    </message>
    <message>
        <source>a surface that is no text</source>
        <translation>ein Untergrund, der kein Text ist</translation>
    </message>
    <message>
        <source>a technique that is no text</source>
        <translation>eine Technik, die kein Text ist</translation>
    </message>
    <message>
        <source>an RPE from 1 to 10 in halves</source>
        <translation>eine RPE von 1 bis 10 in halben Schritten</translation>
    </message>
    <message>
        <source>footwear that is no text</source>
        <translation>Schuhe, die kein Text sind</translation>
    </message>
    <message>
        <source>no velocity: what was not lifted has none</source>
        <translation>keine Geschwindigkeit: was nicht geschafft wurde, hat keine</translation>
    </message>
    <message>
        <source>such a reason only of a load that was not lifted</source>
        <translation>einen solchen Grund nur bei einer Last, die nicht geschafft wurde</translation>
    </message>
    <message>
        <source>the day of the roster</source>
        <translation>den Tag der Liste</translation>
    </message>
    <message>
        <source>the name of the station</source>
        <translation>den Namen der Station</translation>
    </message>
    <message>
        <source>%1 has no name among other logs.</source>
        <translation>%1 hat keinen Namen unter anderen Protokollen.</translation>
    </message>
    <message>
        <source>Names among other logs: %1 are there of %2 things.</source>
        <translation>Namen unter anderen Protokollen: %1 sind da für %2 Dinge.</translation>
    </message>
    <message>
        <source>Rows of %1: %2 were written, %3 are there.</source>
        <translation>Zeilen von %1: %2 wurden geschrieben, %3 sind da.</translation>
    </message>
    <message>
        <source>Rows of %1: as many as were written, but not the same.</source>
        <translation>Zeilen von %1: so viele, wie geschrieben wurden, aber nicht dieselben.</translation>
    </message>
    <message>
        <source>The hash of %1 is not that of its content.</source>
        <translation>Der Hashwert von %1 ist nicht der seines Inhalts.</translation>
    </message>
    <message>
        <source>it holds a UUID or a hash that is none</source>
        <translation>es enthält eine UUID oder einen Hashwert, der keiner ist</translation>
    </message>
    <message>
        <source>The two sessions are not one day on two devices any more. Nothing was changed.</source>
        <translation>Die beiden Einheiten sind nicht mehr ein Tag auf zwei Messgeräten. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>a load of a lift that was not possible</source>
        <translation>eine Last einer Übung, die nicht möglich war</translation>
    </message>
    <message>
        <source>a load of a test</source>
        <translation>eine Last eines Tests</translation>
    </message>
    <message>
        <source>both at once of a test without sides</source>
        <translation>beide zugleich bei einem Test ohne Seiten</translation>
    </message>
    <message>
        <source>left and right, where both are tested as well</source>
        <translation>links und rechts, wo auch beide zugleich getestet werden</translation>
    </message>
    <message>
        <source>the best %1 of which the best counts</source>
        <translation>die besten %1, von denen der beste zählt</translation>
    </message>
    <message>
        <source>the best 1 to 50 attempts, or all</source>
        <translation>die besten 1 bis 50 Versuche oder alle</translation>
    </message>
    <message>
        <source>the mean of the best attempts, or the best one</source>
        <translation>den Mittelwert der besten Versuche oder den besten</translation>
    </message>
    <message>
        <source>1 to 50 sets, or none said</source>
        <translation>1 bis 50 Sätze oder keine Angabe</translation>
    </message>
    <message>
        <source>a ladder that does not rise</source>
        <translation>eine Leiter, die nicht steigt</translation>
    </message>
    <message>
        <source>a ladder without a lift</source>
        <translation>eine Leiter ohne Übung</translation>
    </message>
    <message>
        <source>a lift and tests at one station</source>
        <translation>eine Übung und Tests an einer Station</translation>
    </message>
    <message>
        <source>a lift, or a test or a few</source>
        <translation>eine Übung oder ein Test oder einige</translation>
    </message>
    <message>
        <source>a station at which nothing is done</source>
        <translation>eine Station, an der nichts gemacht wird</translation>
    </message>
    <message>
        <source>an athlete twice</source>
        <translation>ein Sportler zweimal</translation>
    </message>
    <message>
        <source>each athlete once on a roster</source>
        <translation>jeden Sportler einmal auf einer Liste</translation>
    </message>
    <message>
        <source>each test once at a station</source>
        <translation>jeden Test einmal an einer Station</translation>
    </message>
    <message>
        <source>loads for a lift only</source>
        <translation>Lasten nur bei einer Übung</translation>
    </message>
    <message>
        <source>loads from light to heavy</source>
        <translation>Lasten von leicht nach schwer</translation>
    </message>
    <message>
        <source>A comparison needs two sessions of this lift with sets that count. The log holds %1.</source>
        <translation>Ein Vergleich braucht zwei Einheiten dieser Übung mit gewerteten Sätzen. Das Protokoll enthält %1.</translation>
    </message>
    <message>
        <source>Too few sets of two reps to say what more reps would do.</source>
        <translation>Zu wenige Sätze mit zwei Wiederholungen, um zu sagen, was mehr Wiederholungen brächten.</translation>
    </message>
    <message>
        <source>No check load is set for this lift: nothing is followed in the squad.</source>
        <translation>Für diese Übung ist keine Prüflast festgelegt: Im Kader wird nichts verfolgt.</translation>
    </message>
    <message>
        <source>%1 has no session of this lift in either.</source>
        <translation>%1 hat in keinem der beiden Zeiträume eine Einheit dieser Übung.</translation>
    </message>
    <message>
        <source>it has been changed by another window since</source>
        <translation>ein anderes Fenster hat es inzwischen geändert</translation>
    </message>
    <message>
        <source>%1: V0 %2 m/s, slope %3 m/s per %4, residual SD %5 m/s, R² %6, n %7</source>
        <translation>%1: V0 %2 m/s, Steigung %3 m/s je %4, Residual-SD %5 m/s, R² %6, n %7</translation>
    </message>
    <message>
        <source>F(%1, %2) = %3, %4</source>
        <translation>F(%1; %2) = %3, %4</translation>
    </message>
    <message>
        <source>%1 (no. %2)</source>
        <translation>%1 (Nr. %2)</translation>
    </message>
    <message>
        <source>One least-squares line of velocity on load a session (fastest rep of each counting set). %1. %2.</source>
        <translation>Eine Kleinste-Quadrate-Gerade der Geschwindigkeit über der Last je Einheit (schnellste Wiederholung jedes gewerteten Satzes). %1. %2.</translation>
    </message>
    <message>
        <source>One least-squares line of velocity on load a session (mean of the reps of each counting set). %1. %2.</source>
        <translation>Eine Kleinste-Quadrate-Gerade der Geschwindigkeit über der Last je Einheit (Mittel der Wiederholungen jedes gewerteten Satzes). %1. %2.</translation>
    </message>
    <message>
        <source>Change: both lines in one model, one residual variance (%1 df). Parallel: %2; one line for both: %3. Band over all loads: Working and Hotelling 1929.</source>
        <translation>Änderung: beide Geraden in einem Modell, eine Residualvarianz (%1 FG). Parallel: %2; eine Gerade für beide: %3. Band über alle Lasten: Working und Hotelling 1929.</translation>
    </message>
    <message>
        <source>Change: both lines, each with its own residual variance (Satterthwaite&apos;s df). Parallel: %1; one line for both: %2. Band over all loads: Working and Hotelling 1929.</source>
        <translation>Änderung: beide Geraden, jede mit eigener Residualvarianz (Freiheitsgrade nach Satterthwaite). Parallel: %1; eine Gerade für beide: %2. Band über alle Lasten: Working und Hotelling 1929.</translation>
    </message>
    <message>
        <source>Estimated 1RM: the load at which a line reaches the MVT; interval: Fieller 1954; of the change: variance recovery, Zou and Donner 2008.</source>
        <translation>Geschätztes 1RM: die Last, bei der eine Gerade die MVT erreicht; Intervall: Fieller 1954; der Änderung: Varianzrückgewinnung, Zou und Donner 2008.</translation>
    </message>
    <message>
        <source>Better or worse: the %1 % interval with day-to-day noise and bend leaves out zero. Held: the %2 % interval lies within the smallest change that matters. Else unclear.</source>
        <translation>Besser oder schlechter: Das %1-%-Intervall mit Tag-zu-Tag-Streuung und Krümmung schließt die Null aus. Gehalten: Das %2-%-Intervall liegt innerhalb der kleinsten bedeutsamen Änderung. Sonst unklar.</translation>
    </message>
    <message>
        <source>MVT (minimal-velocity threshold): %1</source>
        <translation>MVT (minimale Geschwindigkeitsschwelle): %1</translation>
    </message>
    <message>
        <source>† check load.</source>
        <translation>† Prüflast.</translation>
    </message>
    <message>
        <source>* beyond the loads that both sessions lifted: extrapolated.</source>
        <translation>* jenseits der Lasten, die in beiden Einheiten gehoben wurden: extrapoliert.</translation>
    </message>
    <message>
        <source>The interval of each estimate includes the MVT&apos;s own SD; that of the change does not: both estimates use the same MVT, so it nearly cancels (what is left is %1).</source>
        <translation>Das Intervall jeder Schätzung enthält die SD der MVT, das der Änderung nicht: Beide Schätzungen verwenden dieselbe MVT, sodass sie sich fast aufhebt (es bleiben %1).</translation>
    </message>
    <message>
        <source>No figure for the change: a slope is not certain enough to bound it.</source>
        <translation>Keine Angabe zur Änderung: Eine Steigung ist nicht sicher genug, um sie einzugrenzen.</translation>
    </message>
    <message>
        <source>%1 m/s (SD %2; %3)</source>
        <translation>%1 m/s (SD %2; %3)</translation>
    </message>
    <message>
        <source>%1 m/s (%2)</source>
        <translation>%1 m/s (%2)</translation>
    </message>
    <message>
        <source>The line is too flat, or its points too scattered, to say where it ends (it would read %1). Look at the typed speeds, or lift loads further apart.</source>
        <translation>Die Gerade ist zu flach, oder ihre Punkte streuen zu sehr, um zu sagen, wo sie endet (abzulesen wären %1). Bitte die eingegebenen Geschwindigkeiten prüfen oder Lasten heben, die weiter auseinanderliegen.</translation>
    </message>
    <message>
        <source>Two loads, the heavier under half of what their line would read (%1): lift a third, heavier load.</source>
        <translation>Zwei Lasten, die schwerere unter der Hälfte dessen, was ihre Gerade ergäbe (%1): Bitte eine dritte, schwerere Last heben.</translation>
    </message>
    <message>
        <source>Loads are estimates, not clearance to lift.</source>
        <translation>Lasten sind Schätzungen, keine Freigabe zum Heben.</translation>
    </message>
    <message>
        <source>Near-maximal lifts need a competent spotter or safeties, and a coach&apos;s eye.</source>
        <translation>Hebungen nahe dem Maximum brauchen eine fachkundige sichernde Person oder Sicherheitsablagen und ein geschultes Trainerauge.</translation>
    </message>
    <message>
        <source>Restricted-flow training needs screening for vascular, cardiac, clotting and pressure problems, and trained supervision.</source>
        <translation>Training mit Blutflussrestriktion braucht eine Voruntersuchung auf Gefäß-, Herz-, Gerinnungs- und Blutdruckprobleme und eine geschulte Aufsicht.</translation>
    </message>
    <message>
        <source>Pain, illness or return from injury: a qualified practitioner decides.</source>
        <translation>Bei Schmerzen, Krankheit oder Rückkehr nach einer Verletzung entscheidet eine qualifizierte Fachperson.</translation>
    </message>
    <message>
        <source>Local rules come first.</source>
        <translation>Örtliche Regeln gehen vor.</translation>
    </message>
    <message>
        <source>No test of the battery was done on either side.</source>
        <translation>Weder vorher noch nachher wurde ein Test der Batterie gemacht.</translation>
    </message>
    <message>
        <source>&gt; m: by more than the smallest change that matters.</source>
        <translation>&gt; m: um mehr als die kleinste bedeutsame Änderung.</translation>
    </message>
    <message>
        <source>&lt; m: certain, but less than the smallest change that matters.</source>
        <translation>&lt; m: sicher, aber weniger als die kleinste bedeutsame Änderung.</translation>
    </message>
    <message>
        <source>%1: typical error %2 %3, %4</source>
        <translation>%1: typischer Messfehler %2 %3, %4</translation>
    </message>
    <message>
        <source>%1: smallest change that matters %2 %3, %4</source>
        <translation>%1: kleinste bedeutsame Änderung %2 %3, %4</translation>
    </message>
    <message>
        <source>Left out, for it cannot be read: %1</source>
        <translation>Weggelassen, weil es nicht gelesen werden kann: %1</translation>
    </message>
    <message>
        <source>Interval: change ± t √2 TE on the degrees of freedom of TE, the typical error. Better or worse: the interval excludes zero; held: the interval of two one-sided tests lies inside the smallest change that matters; else unclear.</source>
        <translation>Intervall: Änderung ± t √2 TE mit den Freiheitsgraden von TE, dem typischen Messfehler. Besser oder schlechter: Das Intervall schließt die Null aus; gehalten: Das Intervall zweier einseitiger Tests liegt innerhalb der kleinsten bedeutsamen Änderung; sonst unklar.</translation>
    </message>
    <message>
        <source>%1 is the baseline: nothing later to compare with it.</source>
        <translation>%1 ist der Bezug: Es gibt nichts Späteres, das mit ihm zu vergleichen wäre.</translation>
    </message>
    <message>
        <source>%1 against %2: no figure.</source>
        <translation>%1 gegen %2: keine Zahl.</translation>
    </message>
    <message>
        <source>%1 against %2: %3 m/s (%4 to %5), %6.</source>
        <translation>%1 gegen %2: %3 m/s (%4 bis %5), %6.</translation>
    </message>
    <message>
        <source>No trend: %1.</source>
        <translation>Kein Trend: %1.</translation>
    </message>
    <message>
        <source>Trend over %1 sessions: %2 m/s per week, %3 m/s per month.</source>
        <translation>Trend über %1 Einheiten: %2 m/s pro Woche, %3 m/s pro Monat.</translation>
    </message>
    <message>
        <source>Trend over %1 sessions: %2 m/s per week (%4 % %5 to %6), %3 m/s per month (%4 % %7 to %8).</source>
        <translation>Trend über %1 Einheiten: %2 m/s pro Woche (%4 % %5 bis %6), %3 m/s pro Monat (%4 % %7 bis %8).</translation>
    </message>
    <message>
        <source>extrapolated: the load lies beyond that session&apos;s loads</source>
        <translation>extrapoliert: Die Last liegt außerhalb der Lasten jener Einheit</translation>
    </message>
    <message>
        <source>the device&apos;s bias against the baseline&apos;s, %1 m/s, is taken off in change, trend and chart</source>
        <translation>der Bias des Messgeräts gegen das der Bezugseinheit, %1 m/s, ist in Änderung, Trend und Diagramm abgezogen</translation>
    </message>
    <message>
        <source>No clear bias between %1 and %2: %3 m/s (%4 % %5 to %6); of twenty sets about nineteen differ by %7 to %8.</source>
        <translation>Kein klarer Bias zwischen %1 und %2: %3 m/s (%4 % %5 bis %6); von zwanzig Sätzen unterscheiden sich etwa neunzehn um %7 bis %8.</translation>
    </message>
    <message>
        <source>%1 reads %2 m/s more than %3 (%4 % %5 to %6); of twenty sets about nineteen differ by %7 to %8.</source>
        <translation>%1 zeigt %2 m/s mehr an als %3 (%4 % %5 bis %6); von zwanzig Sätzen unterscheiden sich etwa neunzehn um %7 bis %8.</translation>
    </message>
    <message>
        <source>%1 reads %2 m/s less than %3 (%4 % %5 to %6); of twenty sets about nineteen differ by %7 to %8.</source>
        <translation>%1 zeigt %2 m/s weniger an als %3 (%4 % %5 bis %6); von zwanzig Sätzen unterscheiden sich etwa neunzehn um %7 bis %8.</translation>
    </message>
    <message>
        <source>no day-to-day noise is known</source>
        <translation>keine Tag-zu-Tag-Streuung ist bekannt</translation>
    </message>
    <message>
        <source>No spread at this resolution: these repeat tests all differ alike, as far as the speeds were written down. That is no error of zero.</source>
        <translation>Keine Streuung bei dieser Auflösung: Diese Wiederholungstests unterscheiden sich alle gleich, so genau die Geschwindigkeiten notiert sind. Das ist kein Messfehler von null.</translation>
    </message>
    <message>
        <source>A repeat test is marked in the session&apos;s details: same conditions, within a few days. Readings use the athlete&apos;s own day-to-day noise from %1 repeat tests on, else the log&apos;s from as many, else the published figure.</source>
        <translation>Ein Wiederholungstest wird in den Details der Einheit angegeben: gleiche Bedingungen, innerhalb weniger Tage. Befunde verwenden ab %1 Wiederholungstests die eigene Tag-zu-Tag-Streuung des Athleten, sonst ab ebenso vielen die des Protokolls, sonst den veröffentlichten Wert.</translation>
    </message>
    <message>
        <source>The best ladder can be expected to give a change to ± %1 m/s (this session&apos;s: ± %2).</source>
        <translation>Die beste Leiter sollte eine Änderung auf ± %1 m/s genau liefern (diese Einheit: ± %2).</translation>
    </message>
    <message>
        <source>The best ladder can be expected to give a change to ± %1 m/s.</source>
        <translation>Die beste Leiter sollte eine Änderung auf ± %1 m/s genau liefern.</translation>
    </message>
    <message>
        <source>No ladder of these loads can be expected to bound the estimated 1RM (this session&apos;s: ± %1).</source>
        <translation>Von keiner Leiter aus diesen Lasten ist zu erwarten, dass sie das geschätzte 1RM eingrenzt (diese Einheit: ± %1).</translation>
    </message>
    <message>
        <source>No ladder of these loads can be expected to bound the estimated 1RM.</source>
        <translation>Von keiner Leiter aus diesen Lasten ist zu erwarten, dass sie das geschätzte 1RM eingrenzt.</translation>
    </message>
    <message>
        <source>The line is of %1.</source>
        <translation>Die Gerade ist vom %1.</translation>
    </message>
    <message>
        <source>The line is of %1, 1 day old.</source>
        <translation>Die Gerade ist vom %1, 1 Tag alt.</translation>
    </message>
    <message>
        <source>The line is of %1, %2 days old.</source>
        <translation>Die Gerade ist vom %1, %2 Tage alt.</translation>
    </message>
    <message>
        <source>The line is of %1, 1 week old.</source>
        <translation>Die Gerade ist vom %1, 1 Woche alt.</translation>
    </message>
    <message>
        <source>The line is of %1, %2 weeks old.</source>
        <translation>Die Gerade ist vom %1, %2 Wochen alt.</translation>
    </message>
    <message>
        <source>That is old: over %1 weeks a line moves with training, so test again, or go by the speeds (common practice).</source>
        <translation>Das ist alt: In mehr als %1 Wochen verschiebt das Training eine Gerade. Besser neu testen oder nach den Geschwindigkeiten gehen (übliche Praxis).</translation>
    </message>
    <message>
        <source>Every load of this set of equipment.</source>
        <translation>Jede Last mit dieser Ausrüstung.</translation>
    </message>
    <message>
        <source>A thrown or jumped lift has no 1RM to take a share of: aim at a speed.</source>
        <translation>Eine geworfene oder gesprungene Übung hat kein 1RM, von dem sich ein Anteil nehmen ließe: auf eine Geschwindigkeit zielen.</translation>
    </message>
    <message>
        <source>Beware, its loads: %1. No ladder without that was found under these settings: more steps, a heavier load or plates between them may give one.</source>
        <translation>Achtung, ihre Lasten: %1. Mit diesen Einstellungen wurde keine Leiter ohne das gefunden: mehr Stufen, eine schwerere Last oder Scheiben dazwischen können eine ergeben.</translation>
    </message>
    <message>
        <source>Half the sets at the lightest and half at the heaviest load would give %1 times that, and could not show a bend.</source>
        <translation>Die Hälfte der Sätze mit der leichtesten und die Hälfte mit der schwersten Last ergäbe das %1-Fache davon und könnte keine Krümmung zeigen.</translation>
    </message>
    <message>
        <source>Scatter from %1 sessions: SD %2 m/s.</source>
        <translation>Streuung aus %1 Einheiten: SD %2 m/s.</translation>
    </message>
    <message>
        <source>The squad: %1 athletes, %2 points; one point scatters by %3 % of the 1RM about the curve.</source>
        <translation>Der Kader: %1 Athleten, %2 Punkte; ein Punkt streut um %3 % des 1RM um die Kurve.</translation>
    </message>
    <message>
        <source>Published: %1.</source>
        <translation>Veröffentlicht: %1.</translation>
    </message>
    <message>
        <source>No published equation is known for this lift and kind of velocity.</source>
        <translation>Für diese Übung und Art der Geschwindigkeit ist keine veröffentlichte Gleichung bekannt.</translation>
    </message>
    <message>
        <source>People differ: such a share is of others, never of this athlete.</source>
        <translation>Menschen unterscheiden sich: Ein solcher Anteil gilt für andere, nie für diesen Athleten.</translation>
    </message>
    <message>
        <source>%1? Today&apos;s line says about %2 at that load.</source>
        <translation>%1? Die Gerade von heute sagt bei dieser Last etwa %2.</translation>
    </message>
    <message>
        <source>%1? Last time&apos;s line says about %2 at that load.</source>
        <translation>%1? Die Gerade vom letzten Mal sagt bei dieser Last etwa %2.</translation>
    </message>
    <message>
        <source>%1? The set&apos;s fastest rep is %2, and a later rep is fast again.</source>
        <translation>%1? Die schnellste Wiederholung des Satzes hat %2, und eine spätere ist wieder schnell.</translation>
    </message>
    <message>
        <source>%1? The lighter %3 went up at %2 today: speed falls as load rises.</source>
        <translation>%1? Die leichteren %3 gingen heute mit %2 hoch: Mit steigender Last sinkt die Geschwindigkeit.</translation>
    </message>
    <message>
        <source>%1? Today&apos;s heaviest load is %2.</source>
        <translation>%1? Die schwerste Last von heute ist %2.</translation>
    </message>
    <message>
        <source>%1? The heaviest load of today and last time is %2.</source>
        <translation>%1? Die schwerste Last von heute und vom letzten Mal ist %2.</translation>
    </message>
    <message>
        <source>%1? Today&apos;s lightest load is %2.</source>
        <translation>%1? Die leichteste Last von heute ist %2.</translation>
    </message>
    <message>
        <source>%1? The lightest load of today and last time is %2.</source>
        <translation>%1? Die leichteste Last von heute und vom letzten Mal ist %2.</translation>
    </message>
    <message>
        <source>%1: last in %2</source>
        <translation>%1: zuletzt in %2</translation>
    </message>
    <message>
        <source>%1: %2 sessions made one, by what each says of a load and of days that are alike</source>
        <translation>%1: %2 Einheiten zu einer gemacht, nach dem, was jede über eine Last sagt, und Tagen, die sich ähneln</translation>
    </message>
    <message>
        <source>%1: %2 is left out (%3)</source>
        <translation>%1: %2 bleibt weg (%3)</translation>
    </message>
    <message>
        <source>published MVT: %1</source>
        <translation>veröffentlichte MVT: %1</translation>
    </message>
    <message>
        <source>published smallest change that matters: %1</source>
        <translation>veröffentlichte kleinste bedeutsame Änderung: %1</translation>
    </message>
    <message>
        <source>Smallest change that matters: %1</source>
        <translation>Kleinste bedeutsame Änderung: %1</translation>
    </message>
    <message>
        <source>%1 is far from this athlete&apos;s others (%2 to %3).</source>
        <translation>%1 liegt weit von den übrigen Werten dieses Athleten (%2 bis %3).</translation>
    </message>
    <message>
        <source>%1 is outside what is usual (%2 to %3).</source>
        <translation>%1 liegt außerhalb des Üblichen (%2 bis %3).</translation>
    </message>
    <message>
        <source>It stands for the contact time in s.</source>
        <translation>Es steht für die Kontaktzeit in s.</translation>
    </message>
    <message>
        <source>Is %1 meant?</source>
        <translation>Ist %1 gemeint?</translation>
    </message>
    <message>
        <source>%1 was not lifted today: type a load if it is meant.</source>
        <translation>%1 wurde heute nicht geschafft: eine Last tippen, wenn sie gemeint ist.</translation>
    </message>
    <message>
        <source>%1 is above the block&apos;s ceiling of %2: type it if it is meant.</source>
        <translation>%1 liegt über der Lastgrenze des Blocks von %2: Bitte eintippen, wenn es gemeint ist.</translation>
    </message>
    <message>
        <source>%1 is above the estimated 1RM of %2: type it if it is meant.</source>
        <translation>%1 liegt über dem geschätzten 1RM von %2: Bitte eintippen, wenn es gemeint ist.</translation>
    </message>
    <message>
        <source>No next load:
%1 was not lifted</source>
        <translation>Keine nächste Last:
%1 nicht geschafft</translation>
    </message>
    <message>
        <source>No next load: the ladder&apos;s is above
the block&apos;s ceiling of %1</source>
        <translation>Keine nächste Last: die der Lastreihe liegt
über der Lastgrenze des Blocks von %1</translation>
    </message>
    <message>
        <source>No next load: the ladder&apos;s
is above the estimated 1RM</source>
        <translation>Keine nächste Last: die der Leiter
liegt über dem geschätzten 1RM</translation>
    </message>
    <message>
        <source>Next load %1:
%2 was not lifted</source>
        <translation>Nächste Last %1:
%2 nicht geschafft</translation>
    </message>
    <message>
        <source>%1 was not lifted, and no load is offered under it.</source>
        <translation>%1 wurde nicht geschafft, und darunter wird keine Last angeboten.</translation>
    </message>
    <message>
        <source>The ladder goes on above the block&apos;s ceiling.</source>
        <translation>Die Leiter geht über der Lastgrenze des Blocks weiter.</translation>
    </message>
    <message>
        <source>The ladder goes on above the estimated 1RM: type the load if it is meant.</source>
        <translation>Die Leiter geht über dem geschätzten 1RM weiter: die Last tippen, wenn sie gemeint ist.</translation>
    </message>
    <message>
        <source>No ladder is planned, and there is none of last time.</source>
        <translation>Es ist keine Leiter geplant, und vom letzten Mal gibt es keine.</translation>
    </message>
    <message>
        <source>%1 was not lifted.</source>
        <translation>%1 wurde nicht geschafft.</translation>
    </message>
    <message>
        <source>By the ladder of last time.</source>
        <translation>Nach der Leiter vom letzten Mal.</translation>
    </message>
    <message>
        <source>Two loads cannot show whether the points bend, and one slip of a set bends the whole line</source>
        <translation>Zwei Lasten können nicht zeigen, ob die Punkte gekrümmt sind, und ein Ausrutscher in einem Satz verbiegt die ganze Gerade</translation>
    </message>
    <message>
        <source>sessions that are not comparable are shown, and take no part in the trend</source>
        <translation>nicht vergleichbare Einheiten werden gezeigt, gehen aber nicht in den Trend ein</translation>
    </message>
    <message>
        <source>Outside the loads of the test: the line drawn on</source>
        <translation>Außerhalb der Lasten des Tests: die verlängerte Gerade</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>No measure was made in two of these blocks: nothing can be compared.</source>
        <translation>Nichts wurde in zwei dieser Blöcke gemessen: Es gibt nichts zu vergleichen.</translation>
    </message>
    <message>
        <source>from %1 to %2 no change can be read</source>
        <translation>von %1 zu %2 ist keine Änderung abzulesen</translation>
    </message>
    <message>
        <source>1 session lies in none of these blocks</source>
        <translation>1 Einheit liegt in keinem dieser Blöcke</translation>
    </message>
    <message>
        <source>%1 sessions lie in none of these blocks</source>
        <translation>%1 Einheiten liegen in keinem dieser Blöcke</translation>
    </message>
    <message>
        <source>The blocks came in one order: what an earlier one did may show in a later one.</source>
        <translation>Die Blöcke kamen in einer Reihenfolge: Was ein früherer bewirkte, kann sich in einem späteren zeigen.</translation>
    </message>
    <message>
        <source>better: %1</source>
        <translation>besser: %1</translation>
    </message>
    <message>
        <source>better: %1 and %2 more</source>
        <translation>besser: %1 und %2 weitere</translation>
    </message>
    <message>
        <source>worse: %1</source>
        <translation>schlechter: %1</translation>
    </message>
    <message>
        <source>worse: %1 and %2 more</source>
        <translation>schlechter: %1 und %2 weitere</translation>
    </message>
    <message>
        <source>held: %1</source>
        <translation>gehalten: %1</translation>
    </message>
    <message>
        <source>held: %1 and %2 more</source>
        <translation>gehalten: %1 und %2 weitere</translation>
    </message>
    <message>
        <source>unclear: %1</source>
        <translation>unklar: %1</translation>
    </message>
    <message>
        <source>unclear: %1 and %2 more</source>
        <translation>unklar: %1 und %2 weitere</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>%1, left against right</source>
        <translation>%1, links gegen rechts</translation>
    </message>
    <message>
        <source>%1, RPE at %2</source>
        <translation>%1, RPE bei %2</translation>
    </message>
    <message>
        <source>not weighed in this block</source>
        <translation>in diesem Block nicht gewogen</translation>
    </message>
    <message>
        <source>neither way is better, so no reading is made of it</source>
        <translation>keine Richtung ist besser, darum wird nichts daraus gelesen</translation>
    </message>
    <message>
        <source>no RPE at this load</source>
        <translation>kein RPE bei dieser Last</translation>
    </message>
    <message>
        <source>RPE is read by how its own days differ: a block needs several of them</source>
        <translation>RPE wird daran gelesen, wie sich seine eigenen Tage unterscheiden: Ein Block braucht mehrere davon</translation>
    </message>
    <message>
        <source>not lifted</source>
        <translation>nicht gehoben</translation>
    </message>
    <message>
        <source>no day held %1, and none has a line to read it off</source>
        <translation>kein Tag enthielt %1, und keiner hat eine Gerade, um es abzulesen</translation>
    </message>
    <message>
        <source>no day has a line that reaches a max</source>
        <translation>kein Tag hat eine Gerade, die ein Maximum erreicht</translation>
    </message>
    <message>
        <source>no figure in %1 to count from</source>
        <translation>keine Zahl in %1, von der aus zu zählen wäre</translation>
    </message>
    <message>
        <source>Which column is the date, or which day is it for all rows?</source>
        <translation>Welche Spalte ist das Datum, oder welcher Tag gilt für alle Zeilen?</translation>
    </message>
    <message>
        <source>Which column names the athlete, or who is it in all rows?</source>
        <translation>Welche Spalte nennt den Athleten, oder wer ist es in allen Zeilen?</translation>
    </message>
    <message>
        <source>Which column names the lift, or which lift is it in all rows?</source>
        <translation>Welche Spalte nennt die Übung, oder welche Übung ist es in allen Zeilen?</translation>
    </message>
    <message>
        <source>Which column is the load?</source>
        <translation>Welche Spalte ist die Last?</translation>
    </message>
    <message>
        <source>Which column is the velocity (or which are, side by side)?</source>
        <translation>Welche Spalte ist die Geschwindigkeit (oder welche sind es, nebeneinander)?</translation>
    </message>
    <message>
        <source>In &quot;%1&quot;, does %2 begin with the day, the month or the year?</source>
        <translation>Beginnt %2 in „%1“ mit dem Tag, dem Monat oder dem Jahr?</translation>
    </message>
    <message>
        <source>In &quot;%1&quot;, is the mark in %2 a decimal mark or one of thousands?</source>
        <translation>Ist das Zeichen in %2 in „%1“ ein Dezimalzeichen oder ein Tausenderzeichen?</translation>
    </message>
    <message>
        <source>In &quot;%1&quot;, is %2 in cm/s (or in hundredths of m/s), or in m/s?</source>
        <translation>Ist %2 in „%1“ in cm/s (oder in Hundertstel m/s) oder in m/s?</translation>
    </message>
    <message>
        <source>The letters are not UTF-8: they are read as Latin-1. Look at the names.</source>
        <translation>Die Zeichen sind nicht UTF-8: Sie werden als Latin-1 gelesen. Die Namen ansehen.</translation>
    </message>
    <message>
        <source>No session of %1 lies in a training block. Blocks are made under Squad, with their first and last day.</source>
        <translation>Keine Einheit von %1 liegt in einem Trainingsblock. Blöcke werden unter Kader angelegt, mit erstem und letztem Tag.</translation>
    </message>
    <message>
        <source>Estimated 1RM: no sets yet</source>
        <translation>Geschätztes 1RM: noch keine Sätze</translation>
    </message>
    <message>
        <source>Estimated 1RM: no figure</source>
        <translation>Geschätztes 1RM: keine Angabe</translation>
    </message>
    <message>
        <source>Estimated 1RM %1, no interval</source>
        <translation>Geschätztes 1RM %1, kein Intervall</translation>
    </message>
    <message>
        <source>Estimated 1RM %1 to %2 (%3 %), middle %4</source>
        <translation>Geschätztes 1RM %1 bis %2 (%3 %), Mitte %4</translation>
    </message>
    <message>
        <source>Estimated 1RM %1 (%2 % to plan with: %3 to %4)</source>
        <translation>Geschätztes 1RM %1 (%2 % zum Planen: %3 bis %4)</translation>
    </message>
    <message>
        <source>Estimated 1RM %1 (%2 % for a maximum that day: %3 to %4)</source>
        <translation>Geschätztes 1RM %1 (%2 % für ein Maximum an jenem Tag: %3 bis %4)</translation>
    </message>
    <message>
        <source>Estimated 1RM %1 (%2 % of the line alone: %3 to %4)</source>
        <translation>Geschätztes 1RM %1 (%2 % der Geraden allein: %3 bis %4)</translation>
    </message>
    <message>
        <source>the interval needs a third load</source>
        <translation>dem Intervall fehlt eine dritte Last</translation>
    </message>
    <message>
        <source>by the log&apos;s own maxima; the line reads %1</source>
        <translation>nach den Maxima des Protokolls selbst; die Gerade ergibt %1</translation>
    </message>
    <message>
        <source>MVT %1</source>
        <translation>MVT %1</translation>
    </message>
    <message>
        <source>MVT %1 m/s</source>
        <translation>MVT %1 m/s</translation>
    </message>
    <message>
        <source>measured 1RM %1</source>
        <translation>gemessenes 1RM %1</translation>
    </message>
    <message>
        <source>a change is of as many reps on both sides, and of what both blocks hold: it need not be the difference of the two figures</source>
        <translation>eine Änderung gilt für gleich viele Wiederholungen auf beiden Seiten und für das, was beide Blöcke enthalten: Sie muss nicht der Unterschied der beiden Zahlen sein</translation>
    </message>
    <message>
        <source>how far these blocks&apos; own days lie apart</source>
        <translation>wie weit die eigenen Tage dieser Blöcke auseinander liegen</translation>
    </message>
    <message>
        <source>never; %1 of %2 others were lately</source>
        <translation>nie; %1 von %2 anderen kürzlich</translation>
    </message>
    <message>
        <source>not in %1 yet</source>
        <translation>in %1 noch nicht</translation>
    </message>
    <message>
        <source>%1 of %2 others since</source>
        <translation>%1 von %2 anderen seitdem</translation>
    </message>
    <message>
        <source>over %1 weeks ago</source>
        <translation>vor über %1 Wochen</translation>
    </message>
    <message>
        <source>Nobody is due for anything.</source>
        <translation>Für niemanden steht etwas an.</translation>
    </message>
    <message>
        <source>1 test</source>
        <translation>1 Test</translation>
    </message>
    <message>
        <source>%1 tests</source>
        <translation>%1 Tests</translation>
    </message>
    <message>
        <source>1 athlete is due for %1.</source>
        <translation>Für 1 Athleten: %1 fällig.</translation>
    </message>
    <message>
        <source>%1 athletes are due for %2.</source>
        <translation>Für %1 Athleten: %2 fällig.</translation>
    </message>
    <message>
        <source>Not seen for half a year, and not listed: %1.</source>
        <translation>Seit einem halben Jahr nicht gesehen und nicht aufgeführt: %1.</translation>
    </message>
    <message>
        <source>a trend within a block needs four days that cover the load</source>
        <translation>ein Trend innerhalb eines Blocks braucht vier Tage, die die Last abdecken</translation>
    </message>
    <message>
        <source>a trend takes days as alike, 0.5 from one to the next; where they are 0.7, of nothing 9 % over six days and 17 % over twenty are read as a trend instead of 5</source>
        <translation>ein Trend nimmt Tage als ähnlich an, 0,5 von einem zum nächsten; wo es 0,7 sind, werden von nichts über sechs Tage 9 % und über zwanzig 17 % als Trend gelesen statt 5</translation>
    </message>
    <message>
        <source>%1 tests lie in %2: compare %3 with it</source>
        <translation>%1 Tests liegen in %2: vergleichen Sie %3 damit</translation>
    </message>
    <message>
        <source>then compare %1 with %2, of which all tests are made one</source>
        <translation>dann %1 vergleichen mit %2, dessen Tests alle zu einem gemittelt werden</translation>
    </message>
    <message>
        <source>then compare %1 with the days from %2 to the last of them, which are made one</source>
        <translation>dann %1 vergleichen mit den Tagen von %2 bis zum letzten davon, die zu einem gemittelt werden</translation>
    </message>
    <message>
        <source>as if the line were straight, to see what a bend may add: %1 to %2</source>
        <translation>ohne Krümmung, um zu sehen, was sie ausmacht: %1 bis %2</translation>
    </message>
    <message>
        <source>of the line alone, to compare with other days and not to plan with: %1 to %2</source>
        <translation>der Geraden allein, zum Vergleich mit anderen Tagen und nicht zum Planen: %1 bis %2</translation>
    </message>
    <message>
        <source>at %1 nothing is read against %2</source>
        <translation>bei %1 ist gegen %2 nichts abzulesen</translation>
    </message>
    <message>
        <source>at %1, of %2 sessions read against %3, %4 better, %5 worse, %6 held, %7 unclear</source>
        <translation>bei %1 sind von %2 Einheiten gegen %3 %4 besser, %5 schlechter, %6 gehalten, %7 unklar</translation>
    </message>
    <message>
        <source>%1 m/s per week</source>
        <translation>%1 m/s pro Woche</translation>
    </message>
    <message>
        <source>%1 m/s per week (%2 % %3 to %4)</source>
        <translation>%1 m/s pro Woche (%2 % %3 bis %4)</translation>
    </message>
    <message>
        <source>the blocks&apos; readings hold together over the season at %1 % (Dunnett); so do those of the sessions before the newest</source>
        <translation>die Befunde der Blöcke gelten über die Saison zusammen zu %1 % (Dunnett); ebenso die der Einheiten vor der neuesten</translation>
    </message>
    <message>
        <source>no trend within %1: %2</source>
        <translation>kein Trend innerhalb von %1: %2</translation>
    </message>
    <message>
        <source>trend within %1 over %2 sessions: %3</source>
        <translation>Trend innerhalb von %1 über %2 Einheiten: %3</translation>
    </message>
    <message>
        <source>%1: no figure, %2</source>
        <translation>%1: keine Zahl, %2</translation>
    </message>
    <message>
        <source>%1: %2 m/s, 1 session</source>
        <translation>%1: %2 m/s, 1 Einheit</translation>
    </message>
    <message>
        <source>%1: mean %2 m/s, %3 sessions</source>
        <translation>%1: Mittel %2 m/s, %3 Einheiten</translation>
    </message>
    <message>
        <source>%1; the baseline</source>
        <translation>%1; der Bezug</translation>
    </message>
    <message>
        <source>%1; no reading, %2</source>
        <translation>%1; kein Befund, %2</translation>
    </message>
    <message>
        <source>the lift</source>
        <translation>die Übung</translation>
    </message>
    <message>
        <source>%1 was not possible on %2</source>
        <translation>%1 war am %2 nicht möglich</translation>
    </message>
    <message>
        <source>planned: %1</source>
        <translation>geplant: %1</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>%1, %2 to %3: %4</source>
        <translation>%1, %2 bis %3: %4</translation>
    </message>
    <message>
        <source>A season can show that a measure changed from block to block in this athlete, not what changed it: nobody trained otherwise beside them, so the work, the time of the season, growth or practice in the tests may be behind it.</source>
        <translation>Eine Saison kann zeigen, dass sich ein Maß bei diesem Athleten von Block zu Block änderte, nicht, was es änderte: Niemand hat daneben anders trainiert, also können die Arbeit, die Zeit der Saison, Wachstum oder Übung in den Tests dahinterstehen.</translation>
    </message>
    <message>
        <source>After a day of unusually bad tests the next ones tend to be better whatever is done, after unusually good ones worse: a block that was begun because of such a day is not judged by it.</source>
        <translation>Nach einem Tag mit ungewöhnlich schlechten Tests fallen die nächsten meist besser aus, was auch getan wird, nach ungewöhnlich guten schlechter: Ein Block, der wegen eines solchen Tages begonnen wurde, wird nicht an diesem Tag gemessen.</translation>
    </message>
    <message>
        <source>What was trained is not written down for every block: it stands in the block&apos;s own form, and no reading says more than that.</source>
        <translation>Nicht für jeden Block ist festgehalten, was trainiert wurde: Es steht im Formular des Blocks, und mehr als das sagt keine Einstufung.</translation>
    </message>
    <message>
        <source>%1 went back to the work of %2: what changed in between and went back with it speaks for the work; what did not may be time, growth or practice.</source>
        <translation>%1 kehrte zur Arbeit von %2 zurück: Was sich dazwischen änderte und mit ihr zurückging, spricht für die Arbeit; was nicht, kann Zeit, Wachstum oder Übung sein.</translation>
    </message>
    <message>
        <source>More would be shown by going back to the first block&apos;s work and seeing the change go back too, or by a second athlete with the blocks in another order or begun on another day (single-case designs: Kazdin 2011).</source>
        <translation>Mehr zeigte die Rückkehr zur Arbeit des ersten Blocks, wenn auch die Änderung zurückgeht, oder ein zweiter Athlet mit den Blöcken in anderer Reihenfolge oder an einem anderen Tag begonnen (Einzelfallpläne: Kazdin 2011).</translation>
    </message>
    <message>
        <source>Hidden sheets are not looked at by themselves: %1.</source>
        <translation>Ausgeblendete Blätter werden nicht von selbst angesehen: %1.</translation>
    </message>
    <message>
        <source>The reader of workbooks could not be started.</source>
        <translation>Arbeitsmappen können gerade nicht gelesen werden.</translation>
    </message>
    <message>
        <source>Which sheet of the workbook is it? &quot;%1&quot; is shown.</source>
        <translation>Welches Blatt der Arbeitsmappe ist es? Gezeigt wird „%1“.</translation>
    </message>
    <message>
        <source>&quot;%1&quot;, which is no number</source>
        <translation>„%1“, was keine Zahl ist</translation>
    </message>
    <message>
        <source>a cell beyond the 500th column</source>
        <translation>eine Zelle jenseits der 500. Spalte</translation>
    </message>
    <message>
        <source>a formula whose value is not in the file (open and save it where it was made)</source>
        <translation>eine Formel, deren Wert nicht in der Datei steht (dort öffnen und speichern, wo sie entstand)</translation>
    </message>
    <message>
        <source>a package without a workbook that can be read</source>
        <translation>ein Archiv ohne lesbare Arbeitsmappe</translation>
    </message>
    <message>
        <source>a table of at most 512 MB</source>
        <translation>eine Tabelle von höchstens 512 MB</translation>
    </message>
    <message>
        <source>a table of people and speeds</source>
        <translation>eine Tabelle von Leuten und Geschwindigkeiten</translation>
    </message>
    <message>
        <source>a text that the workbook does not hold</source>
        <translation>ein Text, den die Arbeitsmappe nicht enthält</translation>
    </message>
    <message>
        <source>a value, or nothing</source>
        <translation>ein Wert oder nichts</translation>
    </message>
    <message>
        <source>a whole one (open it where it was made and save it again)</source>
        <translation>eine ganze (dort öffnen, wo sie entstand, und noch einmal speichern)</translation>
    </message>
    <message>
        <source>a workbook (.xlsx or .ods) with its parts</source>
        <translation>eine Arbeitsmappe (.xlsx oder .ods) mit ihren Teilen</translation>
    </message>
    <message>
        <source>a workbook of an old kind (.xls), or one locked by a password</source>
        <translation>eine Arbeitsmappe alter Art (.xls) oder eine mit Kennwort</translation>
    </message>
    <message>
        <source>a workbook that brings a document type of its own</source>
        <translation>eine Arbeitsmappe, die einen eigenen Dokumenttyp mitbringt</translation>
    </message>
    <message>
        <source>a workbook that is damaged or not whole</source>
        <translation>eine Arbeitsmappe, die beschädigt oder nicht ganz ist</translation>
    </message>
    <message>
        <source>a workbook that is locked by a password</source>
        <translation>eine Arbeitsmappe mit Kennwort</translation>
    </message>
    <message>
        <source>a workbook that unpacks to far more than it holds</source>
        <translation>eine Arbeitsmappe, die sich auf weit mehr entpackt, als in ihr steht</translation>
    </message>
    <message>
        <source>a workbook whose parts are nested beyond reason</source>
        <translation>eine Arbeitsmappe, deren Teile maßlos verschachtelt sind</translation>
    </message>
    <message>
        <source>a workbook whose sheets that are shown are empty</source>
        <translation>eine Arbeitsmappe, deren sichtbare Blätter leer sind</translation>
    </message>
    <message>
        <source>a workbook with more than 256 MB of text</source>
        <translation>eine Arbeitsmappe mit mehr als 256 MB Text</translation>
    </message>
    <message>
        <source>a workbook without a sheet of cells</source>
        <translation>eine Arbeitsmappe ohne Tabellenblatt</translation>
    </message>
    <message>
        <source>an .xlsx or .ods file without a password, or CSV</source>
        <translation>eine .xlsx- oder .ods-Datei ohne Kennwort oder CSV</translation>
    </message>
    <message>
        <source>fewer</source>
        <translation>weniger</translation>
    </message>
    <message>
        <source>more than 2,000,000 rows</source>
        <translation>mehr als 2.000.000 Zeilen</translation>
    </message>
    <message>
        <source>no part &quot;%1&quot;</source>
        <translation>kein Teil „%1“</translation>
    </message>
    <message>
        <source>no sheet named &quot;%1&quot;</source>
        <translation>kein Blatt namens „%1“</translation>
    </message>
    <message>
        <source>one of its sheets, such as &quot;%1&quot;</source>
        <translation>eines ihrer Blätter, etwa „%1“</translation>
    </message>
    <message>
        <source>one saved without a password</source>
        <translation>eine ohne Kennwort gespeicherte</translation>
    </message>
    <message>
        <source>one with a table in it</source>
        <translation>eine mit einer Tabelle darin</translation>
    </message>
    <message>
        <source>shorter cells</source>
        <translation>kürzere Zellen</translation>
    </message>
    <message>
        <source>the error %1</source>
        <translation>der Fehler %1</translation>
    </message>
    <message>
        <source>sessions a week in halves from 0.5 to 21, such as 2 or 2.5</source>
        <translation>Einheiten pro Woche in Halben von 0.5 bis 21, etwa 2 oder 2.5</translation>
    </message>
    <message>
        <source>the fewest sessions a week beside the most</source>
        <translation>die wenigsten Einheiten pro Woche neben den meisten</translation>
    </message>
    <message>
        <source>the most sessions a week, no fewer than the fewest</source>
        <translation>die meisten Einheiten pro Woche, nicht weniger als die wenigsten</translation>
    </message>
    <message>
        <source>a text of what was trained that is no text</source>
        <translation>eine Angabe, was trainiert wurde, die kein Text ist</translation>
    </message>
    <message>
        <source>sessions a week from 0.5 to 21 in halves, the fewest first, or none</source>
        <translation>Einheiten pro Woche von 0,5 bis 21 in Halben, die wenigsten zuerst, oder keine</translation>
    </message>
    <message>
        <source>the earlier day first: %1</source>
        <translation>den früheren Tag zuerst: %1</translation>
    </message>
    <message>
        <source>1 session a week</source>
        <translation>1 Einheit pro Woche</translation>
    </message>
    <message>
        <source>%1 sessions a week</source>
        <translation>%1 Einheiten pro Woche</translation>
    </message>
    <message>
        <source>%1 to %2 sessions a week</source>
        <translation>%1 bis %2 Einheiten pro Woche</translation>
    </message>
    <message>
        <source>a date such as 2026-03-14, or days such as 2026-03-01..2026-03-14</source>
        <translation>ein Datum wie 2026-03-14, oder Tage wie 2026-03-01..2026-03-14</translation>
    </message>
    <message>
        <source>a date such as 2026-03-14, days such as 2026-03-01..2026-03-14, or a block: %1</source>
        <translation>ein Datum wie 2026-03-14, Tage wie 2026-03-01..2026-03-14, oder ein Block: %1</translation>
    </message>
    <message>
        <source>A session lies on both sides: choose days or blocks apart.</source>
        <translation>Eine Einheit liegt auf beiden Seiten: bitte Tage oder Blöcke wählen, die sich nicht überschneiden.</translation>
    </message>
    <message>
        <source>from %1 up a loss of %2 % would end under the MVT of %3 m/s, by failure: no stop speed stands there</source>
        <translation>ab %1 würde ein Geschwindigkeitsverlust von %2 % unter der MVT von %3 m/s enden, mit Versagen: Dort steht keine Stopp-Geschwindigkeit</translation>
    </message>
    <message>
        <source>a measure&apos;s readings against the chosen block hold together at %1 %, those from block to block likewise; not the two at once, and not over measures</source>
        <translation>die Aussagen einer Messgröße gegen den gewählten Block gelten zusammen zu %1 %, die von Block zu Block ebenso; nicht beide zugleich und nicht über die Messgrößen</translation>
    </message>
    <message>
        <source>decimal comma, decimal point, kg, lb, m/s, cm/s or several in a cell</source>
        <translation>decimal comma, decimal point, kg, lb, m/s, cm/s oder several in a cell</translation>
    </message>
    <message>
        <source>columns of loads in kg and in lb side by side</source>
        <translation>Spalten mit Lasten in kg und in lb nebeneinander</translation>
    </message>
    <message>
        <source>one unit</source>
        <translation>eine Einheit</translation>
    </message>
    <message>
        <source>a day as a spreadsheet counts it, such as 46095</source>
        <translation>ein Tag, wie ihn eine Tabellenkalkulation zählt, etwa 46095</translation>
    </message>
    <message>
        <source>The row under the names is read as their units.</source>
        <translation>Die Zeile unter den Namen wird als deren Einheiten gelesen.</translation>
    </message>
    <message>
        <source>Columns that are named by a load are read as a set each.</source>
        <translation>Spalten, die nach einer Last heißen, werden als je ein Satz gelesen.</translation>
    </message>
    <message>
        <source>Left out as totals, %1 rows: %2.</source>
        <translation>Als Summen weggelassen, %1 Zeilen: %2.</translation>
    </message>
    <message>
        <source>sheet, delimiter, encoding, rows passed over, header, units row, rows left out, loads are columns, rows in order, a row is, blank is as above, dates, column ... or all ...</source>
        <translation>sheet, delimiter, encoding, rows passed over, header, units row, rows left out, loads are columns, rows in order, a row is, blank is as above, dates, column ... oder all ...</translation>
    </message>
    <message>
        <source>&quot;%1&quot;, in which attempts of that test are written down</source>
        <translation>&quot;%1&quot;, worin Versuche dieses Tests aufgeschrieben werden</translation>
    </message>
    <message>
        <source>figures that were worked out from other tables</source>
        <translation>Werte, die aus anderen Tabellen berechnet wurden</translation>
    </message>
    <message>
        <source>the command &quot;%1&quot;</source>
        <translation>der Befehl &quot;%1&quot;</translation>
    </message>
    <message>
        <source>a command that prints JSON: %1</source>
        <translation>ein Befehl, der JSON ausgibt: %1</translation>
    </message>
    <message>
        <source>the tables that they come from, such as reps.csv</source>
        <translation>die Tabellen, aus denen sie stammen, etwa reps.csv</translation>
    </message>
    <message>
        <source>In &quot;%1&quot;, is %2 a day that a spreadsheet counts from 1900 (%3) or from 1904 (%4)?</source>
        <translation>Ist %2 in „%1“ ein Tag, den eine Tabellenkalkulation ab 1900 zählt (%3) oder ab 1904 (%4)?</translation>
    </message>
    <message>
        <source>a day, where other days may stand in for it</source>
        <translation>ein Tag, wo andere Tage für ihn stehen dürfen</translation>
    </message>
    <message>
        <source>a row that is there already, or after a later one</source>
        <translation>eine Zeile, die schon da ist oder hinter einer späteren steht</translation>
    </message>
    <message>
        <source>a second value of the same cell</source>
        <translation>ein zweiter Wert derselben Zelle</translation>
    </message>
    <message>
        <source>rows in order of time whose blank cells are as above</source>
        <translation>Zeilen nach der Zeit geordnet, deren leere Zellen wie darüber gelten</translation>
    </message>
    <message>
        <source>one of the two: no blank cells, or rows in their order</source>
        <translation>eines von beiden: keine leeren Zellen, oder die Zeilen in ihrer Reihenfolge</translation>
    </message>
    <message>
        <source>Countermovement jump</source>
        <translation>Sprung mit Ausholbewegung</translation>
    </message>
    <message>
        <source>Drop jump, reactive strength</source>
        <translation>Nieder-Hoch-Sprung, Reaktivkraft</translation>
    </message>
    <message>
        <source>Repeated hops, reactive strength</source>
        <translation>Prellsprünge, Reaktivkraft</translation>
    </message>
    <message>
        <source>Drop jump, height</source>
        <translation>Nieder-Hoch-Sprung, Höhe</translation>
    </message>
    <message>
        <source>Single hop for distance</source>
        <translation>Einbeinsprung auf Weite</translation>
    </message>
    <message>
        <source>Triple hop for distance</source>
        <translation>Dreifacher Einbeinsprung auf Weite</translation>
    </message>
    <message>
        <source>Crossover hop for distance</source>
        <translation>Einbeinsprünge über Kreuz auf Weite</translation>
    </message>
    <message>
        <source>6 m timed hop</source>
        <translation>Einbeinsprünge über 6 m auf Zeit</translation>
    </message>
    <message>
        <source>Seated medicine-ball throw</source>
        <translation>Medizinballstoß im Sitzen</translation>
    </message>
    <message>
        <source>Isometric pull, peak force</source>
        <translation>Isometrischer Zug, Maximalkraft</translation>
    </message>
    <message>
        <source>Isometric pull, peak force per body mass</source>
        <translation>Isometrischer Zug, Maximalkraft je Körpermasse</translation>
    </message>
    <message>
        <source>Isometric pull, force at 100 ms</source>
        <translation>Isometrischer Zug, Kraft nach 100 ms</translation>
    </message>
    <message>
        <source>Isometric pull, rate 0 to 100 ms</source>
        <translation>Isometrischer Zug, Kraftanstieg 0 bis 100 ms</translation>
    </message>
    <message>
        <source>%1..%2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>typical error of the speed at one load between days, 0.035 m/s (0.026 to 0.04 by Grgic et al., Front Physiol 2020, and Orange et al., J Strength Cond Res 2020, the latter of CVs at assumed speeds); less the scatter about a line of 0.015 to 0.025 m/s (the middle of both ends)</source>
        <translation>typischer Messfehler der Geschwindigkeit bei einer Last zwischen Tagen, 0,035 m/s (0,026 bis 0,04 nach Grgic et al., Front Physiol 2020, und Orange et al., J Strength Cond Res 2020, letzteres aus VK bei angenommenen Geschwindigkeiten); abzüglich der Streuung um eine Gerade von 0,015 bis 0,025 m/s (die Mitte beider Enden)</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs, median of seven groups of four lifts (2.3 to 4.7 %); in m/s along 50 to 70 % 1RM, mean of five published equations (from memory): 0.0155 m/s per %</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM, Median von sieben Gruppen bei vier Übungen (2,3 bis 4,7 %); in m/s zwischen 50 und 70 % 1RM, Mittel von fünf veröffentlichten Gleichungen (aus dem Gedächtnis): 0,0155 m/s je %</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs, median of seven groups of four lifts (2.3 to 4.7 %); in m/s along 50 to 70 % 1RM, mean of five published equations: 0.0155 m/s per %</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM, Median von sieben Gruppen bei vier Übungen (2,3 bis 4,7 %); in m/s zwischen 50 und 70 % 1RM, Mittel von fünf veröffentlichten Gleichungen: 0,0155 m/s je %</translation>
    </message>
    <message>
        <source>typical error of the speed at one load between days, 0.035 to 0.04 m/s by judgement: none read in m/s, CVs (2.84 to 7.72 %) a little above those of mean speed (2.55 to 7.61 %; bench pull, Garcia-Ramos et al., PLoS ONE 2019); less the scatter about a line of 0.015 to 0.025 m/s (the middle of both ends)</source>
        <translation>typischer Messfehler der Geschwindigkeit bei einer Last zwischen Tagen, 0,035 bis 0,04 m/s nach Ermessen: keiner in m/s gelesen, VK (2,84 bis 7,72 %) etwas über denen der mittleren Geschwindigkeit (2,55 bis 7,61 %; Bankziehen, Garcia-Ramos et al., PLoS ONE 2019); abzüglich der Streuung um eine Gerade von 0,015 bis 0,025 m/s (die Mitte beider Enden)</translation>
    </message>
    <message>
        <source>typical error of the speed at one load between days, 0.055 m/s (bench press 3.9 to 8.4 %, Orange et al., J Strength Cond Res 2020, at assumed speeds); less the scatter about a line of 0.015 to 0.025 m/s (the middle of both ends)</source>
        <translation>typischer Messfehler der Geschwindigkeit bei einer Last zwischen Tagen, 0,055 m/s (Bankdrücken 3,9 bis 8,4 %, Orange et al., J Strength Cond Res 2020, bei angenommenen Geschwindigkeiten); abzüglich der Streuung um eine Gerade von 0,015 bis 0,025 m/s (die Mitte beider Enden)</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs, median of seven groups of four lifts (2.3 to 4.7 %)</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM, Median von sieben Gruppen bei vier Übungen (2,3 bis 4,7 %)</translation>
    </message>
    <message>
        <source>Gonzalez-Badillo and Sanchez-Medina, Int J Sports Med 2010 (120 men, guided bar)</source>
        <translation>Gonzalez-Badillo und Sanchez-Medina, Int J Sports Med 2010 (120 Männer, geführte Stange)</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs, men: 3.1 to 3.4 % (women 4.5 %); in m/s along 50 to 70 % 1RM, equation of Gonzalez-Badillo and Sanchez-Medina 2010 (from memory): 0.0155 m/s per %</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM, Männer: 3,1 bis 3,4 % (Frauen 4,5 %); in m/s zwischen 50 und 70 % 1RM, Gleichung von Gonzalez-Badillo und Sanchez-Medina 2010 (aus dem Gedächtnis): 0,0155 m/s je %</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs, men: 3.1 to 3.4 % (women 4.5 %); in m/s along 50 to 70 % 1RM, equation of Gonzalez-Badillo and Sanchez-Medina 2010: 0.0155 m/s per %</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM, Männer: 3,1 bis 3,4 % (Frauen 4,5 %); in m/s zwischen 50 und 70 % 1RM, Gleichung von Gonzalez-Badillo und Sanchez-Medina 2010: 0,0155 m/s je %</translation>
    </message>
    <message>
        <source>Gonzalez-Badillo and Sanchez-Medina, Int J Sports Med 2010 (120 men, guided bar; mean and propulsive coincide where nothing is braked)</source>
        <translation>Gonzalez-Badillo und Sanchez-Medina, Int J Sports Med 2010 (120 Männer, geführte Stange; mittlere und propulsive fallen zusammen, wo nicht gebremst wird)</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs, men: 3.1 to 3.4 % (women 4.5 %); in m/s along 50 to 70 % 1RM, equation of Gonzalez-Badillo and Sanchez-Medina 2010 (from memory): 0.0166 m/s per %</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM, Männer: 3,1 bis 3,4 % (Frauen 4,5 %); in m/s zwischen 50 und 70 % 1RM, Gleichung von Gonzalez-Badillo und Sanchez-Medina 2010 (aus dem Gedächtnis): 0,0166 m/s je %</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs, men: 3.1 to 3.4 % (women 4.5 %); in m/s along 50 to 70 % 1RM, equation of Gonzalez-Badillo and Sanchez-Medina 2010: 0.0166 m/s per %</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM, Männer: 3,1 bis 3,4 % (Frauen 4,5 %); in m/s zwischen 50 und 70 % 1RM, Gleichung von Gonzalez-Badillo und Sanchez-Medina 2010: 0,0166 m/s je %</translation>
    </message>
    <message>
        <source>Banyard, Nosaka and Haff, J Strength Cond Res 2017 (17 men, free weight)</source>
        <translation>Banyard, Nosaka und Haff, J Strength Cond Res 2017 (17 Männer, freie Hantel)</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs, squat: 27.2 of 140.3 kg (Banyard, Nosaka and Haff, J Strength Cond Res 2017); 4.7 % in 17 men (Int J Sports Med 2024); in m/s 0.0120 per % (parallel squat, 290 athletes; Naclerio and Larumbe-Zabala)</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM, Kniebeuge: 27,2 von 140,3 kg (Banyard, Nosaka und Haff, J Strength Cond Res 2017); 4,7 % bei 17 Männern (Int J Sports Med 2024); in m/s 0,0120 je % (parallele Kniebeuge, 290 Athleten; Naclerio und Larumbe-Zabala)</translation>
    </message>
    <message>
        <source>Sanchez-Medina et al., Sports Med Int Open 2017 (80 men)</source>
        <translation>Sanchez-Medina et al., Sports Med Int Open 2017 (80 Männer)</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs, squat: 27.2 of 140.3 kg (Banyard, Nosaka and Haff, J Strength Cond Res 2017); 4.7 % in 17 men (Int J Sports Med 2024); in m/s along 50 to 70 % 1RM, equation of Sanchez-Medina et al. 2017 (from memory): 0.0141 m/s per %</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM, Kniebeuge: 27,2 von 140,3 kg (Banyard, Nosaka und Haff, J Strength Cond Res 2017); 4,7 % bei 17 Männern (Int J Sports Med 2024); in m/s zwischen 50 und 70 % 1RM, Gleichung von Sanchez-Medina et al. 2017 (aus dem Gedächtnis): 0,0141 m/s je %</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs, squat: 27.2 of 140.3 kg (Banyard, Nosaka and Haff, J Strength Cond Res 2017); 4.7 % in 17 men (Int J Sports Med 2024); in m/s along 50 to 70 % 1RM, equation of Sanchez-Medina et al. 2017: 0.0141 m/s per %</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM, Kniebeuge: 27,2 von 140,3 kg (Banyard, Nosaka und Haff, J Strength Cond Res 2017); 4,7 % bei 17 Männern (Int J Sports Med 2024); in m/s zwischen 50 und 70 % 1RM, Gleichung von Sanchez-Medina et al. 2017: 0,0141 m/s je %</translation>
    </message>
    <message>
        <source>Sanchez-Medina et al., Sports Med Int Open 2017 (80 men; mean and propulsive coincide where nothing is braked)</source>
        <translation>Sanchez-Medina et al., Sports Med Int Open 2017 (80 Männer; mittlere und propulsive fallen zusammen, wo nicht gebremst wird)</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs, squat: 27.2 of 140.3 kg (Banyard, Nosaka and Haff, J Strength Cond Res 2017); 4.7 % in 17 men (Int J Sports Med 2024); in m/s along 50 to 70 % 1RM, equation of Sanchez-Medina et al. 2017 (from memory): 0.0160 m/s per %</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM, Kniebeuge: 27,2 von 140,3 kg (Banyard, Nosaka und Haff, J Strength Cond Res 2017); 4,7 % bei 17 Männern (Int J Sports Med 2024); in m/s zwischen 50 und 70 % 1RM, Gleichung von Sanchez-Medina et al. 2017 (aus dem Gedächtnis): 0,0160 m/s je %</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs, squat: 27.2 of 140.3 kg (Banyard, Nosaka and Haff, J Strength Cond Res 2017); 4.7 % in 17 men (Int J Sports Med 2024); in m/s along 50 to 70 % 1RM, equation of Sanchez-Medina et al. 2017: 0.0160 m/s per %</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM, Kniebeuge: 27,2 von 140,3 kg (Banyard, Nosaka und Haff, J Strength Cond Res 2017); 4,7 % bei 17 Männern (Int J Sports Med 2024); in m/s zwischen 50 und 70 % 1RM, Gleichung von Sanchez-Medina et al. 2017: 0,0160 m/s je %</translation>
    </message>
    <message>
        <source>Helms et al., J Strength Cond Res 2017 (15 powerlifters); in others some 0.18 m/s by the 0.029 m/s and 15.7 % of Ruf et al. 2018</source>
        <translation>Helms et al., J Strength Cond Res 2017 (15 Kraftdreikämpfer); bei anderen etwa 0,18 m/s nach den 0,029 m/s und 15,7 % von Ruf et al. 2018</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs; in m/s along 50 to 70 % 1RM, mean of five published equations (from memory): 0.0155 m/s per %</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM; in m/s zwischen 50 und 70 % 1RM, Mittel von fünf veröffentlichten Gleichungen (aus dem Gedächtnis): 0,0155 m/s je %</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs; in m/s along 50 to 70 % 1RM, mean of five published equations: 0.0155 m/s per %</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM; in m/s zwischen 50 und 70 % 1RM, Mittel von fünf veröffentlichten Gleichungen: 0,0155 m/s je %</translation>
    </message>
    <message>
        <source>Janicijevic et al., Int J Sports Med 2024 (27 men); SD of the deadlift, Helms et al., J Strength Cond Res 2017</source>
        <translation>Janicijevic et al., Int J Sports Med 2024 (27 Männer); SD des Kreuzhebens, Helms et al., J Strength Cond Res 2017</translation>
    </message>
    <message>
        <source>that of the deadlift: 0.2 x between-athlete SD over the mean of measured 1RMs; in m/s along 50 to 70 % 1RM, mean of five published equations (from memory): 0.0155 m/s per %</source>
        <translation>die des Kreuzhebens: 0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM; in m/s zwischen 50 und 70 % 1RM, Mittel von fünf veröffentlichten Gleichungen (aus dem Gedächtnis): 0,0155 m/s je %</translation>
    </message>
    <message>
        <source>that of the deadlift: 0.2 x between-athlete SD over the mean of measured 1RMs; in m/s along 50 to 70 % 1RM, mean of five published equations: 0.0155 m/s per %</source>
        <translation>die des Kreuzhebens: 0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM; in m/s zwischen 50 und 70 % 1RM, Mittel von fünf veröffentlichten Gleichungen: 0,0155 m/s je %</translation>
    </message>
    <message>
        <source>Sanchez-Medina et al., Int J Sports Med 2014 (75 athletes), from memory</source>
        <translation>Sanchez-Medina et al., Int J Sports Med 2014 (75 Athleten), aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Sanchez-Medina et al., Int J Sports Med 2014 (75 athletes)</source>
        <translation>Sanchez-Medina et al., Int J Sports Med 2014 (75 Athleten)</translation>
    </message>
    <message>
        <source>Sanchez-Medina et al., Int J Sports Med 2014: 0.5058 at 100 % by the equation, from memory</source>
        <translation>Sanchez-Medina et al., Int J Sports Med 2014: 0,5058 bei 100 % nach der Gleichung, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Sanchez-Medina et al., Int J Sports Med 2014: 0.5058 at 100 % by the equation</source>
        <translation>Sanchez-Medina et al., Int J Sports Med 2014: 0,5058 bei 100 % nach der Gleichung</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs, median of seven groups of four lifts (2.3 to 4.7 %); in m/s along 50 to 70 % 1RM, equation of Sanchez-Medina et al. 2014 (from memory): 0.0153 m/s per %</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM, Median von sieben Gruppen bei vier Übungen (2,3 bis 4,7 %); in m/s zwischen 50 und 70 % 1RM, Gleichung von Sanchez-Medina et al. 2014 (aus dem Gedächtnis): 0,0153 m/s je %</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs, median of seven groups of four lifts (2.3 to 4.7 %); in m/s along 50 to 70 % 1RM, equation of Sanchez-Medina et al. 2014: 0.0153 m/s per %</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM, Median von sieben Gruppen bei vier Übungen (2,3 bis 4,7 %); in m/s zwischen 50 und 70 % 1RM, Gleichung von Sanchez-Medina et al. 2014: 0,0153 m/s je %</translation>
    </message>
    <message>
        <source>Balsalobre-Fernandez et al., Int J Sports Sci Coach 2018; Garcia-Ramos et al., Sports Biomech 2019: 0.19 to 0.20 (SD by the 12.9 to 24.6 % between athletes that was read), from memory</source>
        <translation>Balsalobre-Fernandez et al., Int J Sports Sci Coach 2018; Garcia-Ramos et al., Sports Biomech 2019: 0,19 bis 0,20 (SD nach den gelesenen 12,9 bis 24,6 % zwischen Athleten), aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Balsalobre-Fernandez et al., Int J Sports Sci Coach 2018; Garcia-Ramos et al., Sports Biomech 2019: 0.19 to 0.20 (SD by the 12.9 to 24.6 % between athletes that was read)</source>
        <translation>Balsalobre-Fernandez et al., Int J Sports Sci Coach 2018; Garcia-Ramos et al., Sports Biomech 2019: 0,19 bis 0,20 (SD nach den gelesenen 12,9 bis 24,6 % zwischen Athleten)</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs, men (women 3.4 %); in m/s along 50 to 70 % 1RM, mean of five published equations (from memory): 0.0155 m/s per %</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM, Männer (Frauen 3,4 %); in m/s zwischen 50 und 70 % 1RM, Mittel von fünf veröffentlichten Gleichungen (aus dem Gedächtnis): 0,0155 m/s je %</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD over the mean of measured 1RMs, men (women 3.4 %); in m/s along 50 to 70 % 1RM, mean of five published equations: 0.0155 m/s per %</source>
        <translation>0,2-mal SD zwischen Athleten durch den Mittelwert gemessener 1RM, Männer (Frauen 3,4 %); in m/s zwischen 50 und 70 % 1RM, Mittel von fünf veröffentlichten Gleichungen: 0,0155 m/s je %</translation>
    </message>
    <message>
        <source>de Hoyo et al., J Strength Cond Res 2021 (102 men)</source>
        <translation>de Hoyo et al., J Strength Cond Res 2021 (102 Männer)</translation>
    </message>
    <message>
        <source>Sanchez-Moreno et al., Int J Sports Physiol Perform 2017, from memory</source>
        <translation>Sanchez-Moreno et al., Int J Sports Physiol Perform 2017, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Sanchez-Moreno et al., Int J Sports Physiol Perform 2017</source>
        <translation>Sanchez-Moreno et al., Int J Sports Physiol Perform 2017</translation>
    </message>
    <message>
        <source>between days 3.8 % (16 women; Appl Sci 2024;14:2662), 5.8 % (41 men; PMC7039490) and 2.5 % (17 adolescents, by a smallest detectable difference of 7 %; PMC5969001)</source>
        <translation>zwischen Tagen 3,8 % (16 Frauen; Appl Sci 2024;14:2662), 5,8 % (41 Männer; PMC7039490) und 2,5 % (17 Jugendliche, nach einem kleinsten erkennbaren Unterschied von 7 %; PMC5969001)</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD of about 0.05 m (common practice)</source>
        <translation>0,2-mal SD zwischen Athleten von etwa 0,05 m (übliche Praxis)</translation>
    </message>
    <message>
        <source>judgement: none read between days; within a session 8.2 to 11.2 % (30 men; Stratford et al.) and 2 to 3 % (basketball players; Markwick et al., Int J Sports Physiol Perform 2015)</source>
        <translation>nach Ermessen: zwischen Tagen keiner gelesen; innerhalb einer Einheit 8,2 bis 11,2 % (30 Männer; Stratford et al.) und 2 bis 3 % (Basketballspieler; Markwick et al., Int J Sports Physiol Perform 2015)</translation>
    </message>
    <message>
        <source>between days: CV of at most 10 % (women, five rebounds; Comyns et al., Int J Sports Physiol Perform 2019), the upper end; 1.4 to 5.6 % in 23 elite athletes (Southey et al. 2023)</source>
        <translation>zwischen Tagen: VK von höchstens 10 % (Frauen, fünf Sprünge; Comyns et al., Int J Sports Physiol Perform 2019), das obere Ende; 1,4 bis 5,6 % bei 23 Spitzenathleten (Southey et al. 2023)</translation>
    </message>
    <message>
        <source>between days (16 women; Appl Sci 2024;14:2662)</source>
        <translation>zwischen Tagen (16 Frauen; Appl Sci 2024;14:2662)</translation>
    </message>
    <message>
        <source>between days 2.6 to 4.1 % of the distance (16 people; Dingenen et al., Knee 2019) and 2.9 % (17 adolescents, by a smallest detectable difference of 8 %; PMC5969001)</source>
        <translation>zwischen Tagen 2,6 bis 4,1 % der Weite (16 Personen; Dingenen et al., Knee 2019) und 2,9 % (17 Jugendliche, nach einem kleinsten erkennbaren Unterschied von 8 %; PMC5969001)</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD implied by an SEM of 4.61 cm and the middle of its ICC of 0.92 to 0.97 (Ross, Langford and Whelan, J Strength Cond Res 2002, which test has which from memory): 0.2 SEM / sqrt(0.05)</source>
        <translation>0,2-mal SD zwischen Athleten, wie sie aus einem Standardmessfehler von 4,61 cm und der Mitte seiner ICC von 0,92 bis 0,97 folgt (Ross, Langford und Whelan, J Strength Cond Res 2002, welcher Test welchen hat, aus dem Gedächtnis): 0,2 SEM / √0,05</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD implied by an SEM of 4.61 cm and the middle of its ICC of 0.92 to 0.97 (Ross, Langford and Whelan, J Strength Cond Res 2002): 0.2 SEM / sqrt(0.05)</source>
        <translation>0,2-mal SD zwischen Athleten, wie sie aus einem Standardmessfehler von 4,61 cm und der Mitte seiner ICC von 0,92 bis 0,97 folgt (Ross, Langford und Whelan, J Strength Cond Res 2002): 0,2 SEM / √0,05</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD implied by an SEM of 11.17 cm and the middle of its ICC of 0.92 to 0.97 (Ross, Langford and Whelan, J Strength Cond Res 2002, which test has which from memory): 0.2 SEM / sqrt(0.05)</source>
        <translation>0,2-mal SD zwischen Athleten, wie sie aus einem Standardmessfehler von 11,17 cm und der Mitte seiner ICC von 0,92 bis 0,97 folgt (Ross, Langford und Whelan, J Strength Cond Res 2002, welcher Test welchen hat, aus dem Gedächtnis): 0,2 SEM / √0,05</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD implied by an SEM of 11.17 cm and the middle of its ICC of 0.92 to 0.97 (Ross, Langford and Whelan, J Strength Cond Res 2002): 0.2 SEM / sqrt(0.05)</source>
        <translation>0,2-mal SD zwischen Athleten, wie sie aus einem Standardmessfehler von 11,17 cm und der Mitte seiner ICC von 0,92 bis 0,97 folgt (Ross, Langford und Whelan, J Strength Cond Res 2002): 0,2 SEM / √0,05</translation>
    </message>
    <message>
        <source>Ross, Langford and Whelan, J Strength Cond Res 2002 (SEM, 18 cadets, a month apart; 4.61 to 17.74 cm read, which test has which from memory)</source>
        <translation>Ross, Langford und Whelan, J Strength Cond Res 2002 (Standardmessfehler, 18 Kadetten, ein Monat dazwischen; 4,61 bis 17,74 cm gelesen, welcher Test welchen hat, aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>Ross, Langford and Whelan, J Strength Cond Res 2002 (SEM, 18 cadets, a month apart; 4.61 to 17.74 cm read)</source>
        <translation>Ross, Langford und Whelan, J Strength Cond Res 2002 (Standardmessfehler, 18 Kadetten, ein Monat dazwischen; 4,61 bis 17,74 cm gelesen)</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD implied by that SEM and the middle of its ICC of 0.92 to 0.97: 0.2 SEM / sqrt(0.05)</source>
        <translation>0,2-mal SD zwischen Athleten, wie sie aus jenem Standardmessfehler und der Mitte seiner ICC von 0,92 bis 0,97 folgt: 0,2 SEM / √0,05</translation>
    </message>
    <message>
        <source>Ross, Langford and Whelan, J Strength Cond Res 2002 (SEM of the 6 m hop)</source>
        <translation>Ross, Langford und Whelan, J Strength Cond Res 2002 (Standardmessfehler des 6-m-Hüpfens)</translation>
    </message>
    <message>
        <source>between days (29 women, 3 days; J Orthop Surg Res 2023); within a session 0.10 to 0.173 m (Beckham et al., J Phys Act Res 2019), and at most 4.0 % in 50 boys a week apart (Carron, Pediatr Exerc Sci 2024)</source>
        <translation>zwischen Tagen (29 Frauen, 3 Tage; J Orthop Surg Res 2023); innerhalb einer Einheit 0,10 bis 0,173 m (Beckham et al., J Phys Act Res 2019), und höchstens 4,0 % bei 50 Jungen, eine Woche dazwischen (Carron, Pediatr Exerc Sci 2024)</translation>
    </message>
    <message>
        <source>0.2 x between-athlete SD of 1.0 m (20 adults, 10 lb ball; Beckham et al., J Phys Act Res 2019)</source>
        <translation>0,2-mal SD zwischen Athleten von 1,0 m (20 Erwachsene, Ball von 10 lb; Beckham et al., J Phys Act Res 2019)</translation>
    </message>
    <message>
        <source>between days, median of 16 studies (0.7 to 11.1 %; Grgic et al., Biol Sport 2022)</source>
        <translation>zwischen Tagen, Median von 16 Studien (0,7 bis 11,1 %; Grgic et al., Biol Sport 2022)</translation>
    </message>
    <message>
        <source>judgement within the 5 to 24 % of forces 30 to 250 ms from onset (girls; Moeskops et al., J Strength Cond Res 2018)</source>
        <translation>nach Ermessen innerhalb der 5 bis 24 % der Kräfte 30 bis 250 ms nach Beginn (Mädchen; Moeskops et al., J Strength Cond Res 2018)</translation>
    </message>
    <message>
        <source>judgement: over 10 to 11 % in two studies that call it too much (Moeskops et al., J Strength Cond Res 2018; PMC5969001)</source>
        <translation>nach Ermessen: über 10 bis 11 % in zwei Studien, denen das zu viel ist (Moeskops et al., J Strength Cond Res 2018; PMC5969001)</translation>
    </message>
    <message>
        <source>Gonzalez-Badillo and Sanchez-Medina 2010</source>
        <translation>Gonzalez-Badillo und Sanchez-Medina 2010</translation>
    </message>
    <message>
        <source>Sanchez-Medina et al. 2014</source>
        <translation>Sanchez-Medina et al. 2014</translation>
    </message>
    <message>
        <source>Sanchez-Medina et al. 2017</source>
        <translation>Sanchez-Medina et al. 2017</translation>
    </message>
    <message>
        <source>0.2 x robust SD of %1 athletes</source>
        <translation>0,2-mal robuste SD von %1 Athleten</translation>
    </message>
    <message>
        <source>Without a bar in the chart: %1.</source>
        <translation>Ohne Balken im Diagramm: %1.</translation>
    </message>
    <message>
        <source>the block %1</source>
        <translation>den Block %1</translation>
    </message>
    <message>
        <source>the day %1</source>
        <translation>den Tag %1</translation>
    </message>
    <message>
        <source>%1 alone: %2 m/s (%3 to %4), %5</source>
        <translation>%1 allein: %2 m/s (%3 bis %4), %5</translation>
    </message>
    <message>
        <source>Lift %1.</source>
        <translation>Hebe %1.</translation>
    </message>
    <message>
        <source>Lift one of %1.</source>
        <translation>Hebe eine dieser Lasten: %1.</translation>
    </message>
    <message>
        <source>without a figure: %1</source>
        <translation>ohne Zahl: %1</translation>
    </message>
    <message>
        <source>a UUID, such as 6ba7b810-9dad-11d1-80b4-00c04fd430c8</source>
        <translation>eine UUID wie 6ba7b810-9dad-11d1-80b4-00c04fd430c8</translation>
    </message>
    <message>
        <source>a kind of thing, such as athlete or set</source>
        <translation>eine Art von Sache, zum Beispiel athlete oder set</translation>
    </message>
    <message>
        <source>64 hexadecimal digits for each edit</source>
        <translation>64 hexadezimale Ziffern für jede Änderung</translation>
    </message>
    <message>
        <source>Passed over, %1 rows with nothing under any load.</source>
        <translation>Übergangen, %1 Zeilen ohne Angabe unter einer Last.</translation>
    </message>
    <message>
        <source>Rows follow one another by the time in &quot;%1&quot;, not as they stand.</source>
        <translation>Die Zeilen folgen einander nach der Zeit in „%1“, nicht wie sie dastehen.</translation>
    </message>
    <message>
        <source>a trail of %1 bytes</source>
        <translation>ein Werdegang von %1 Byte</translation>
    </message>
    <message>
        <source>a trail whose first step is none</source>
        <translation>ein Werdegang, dessen erster Schritt keiner ist</translation>
    </message>
    <message>
        <source>%1 is not as its hash says</source>
        <translation>%1 ist nicht so, wie der Hash sagt</translation>
    </message>
    <message>
        <source>That choice is not in the log any more. Nothing was changed.</source>
        <translation>Diese Wahl steht nicht mehr im Protokoll. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The trail of %1 does not end with what it says.</source>
        <translation>Der Werdegang von %1 endet nicht mit dem, was es sagt.</translation>
    </message>
    <message>
        <source>The hash of %1, which was removed, is not that of what it said.</source>
        <translation>Der Hash von %1, das entfernt wurde, ist nicht der dessen, was es sagte.</translation>
    </message>
    <message>
        <source>The trail of %1, which was removed, does not end with what it says.</source>
        <translation>Der Werdegang von %1, das entfernt wurde, endet nicht mit dem, was es sagt.</translation>
    </message>
    <message>
        <source>Names among other logs: %1 belong to more than one thing.</source>
        <translation>Namen unter anderen Protokollen: %1 gehören zu mehr als einer Sache.</translation>
    </message>
    <message>
        <source>the steps of a thing, of 32 bytes each</source>
        <translation>die Schritte einer Sache zu je 32 Byte</translation>
    </message>
    <message>
        <source>a trail that does not end with what the thing says</source>
        <translation>ein Werdegang, der nicht mit dem endet, was die Sache sagt</translation>
    </message>
    <message>
        <source>the trail of that very thing</source>
        <translation>die Spur genau dieses Dings</translation>
    </message>
    <message>
        <source>what a thing says, cut off or not as Slopebook writes it</source>
        <translation>was eine Sache sagt, abgeschnitten oder nicht so, wie Slopebook es schreibt</translation>
    </message>
    <message>
        <source>what a log of this version writes</source>
        <translation>was ein Protokoll dieser Version schreibt</translation>
    </message>
    <message>
        <source>a %1 that speaks of a %2 which is not here</source>
        <translation>%1, wo von %2 die Rede ist, das nicht hier ist</translation>
    </message>
    <message>
        <source>what it speaks of beside it</source>
        <translation>daneben das, wovon die Rede ist</translation>
    </message>
    <message>
        <source>an address of a store that cannot be read</source>
        <translation>eine Adresse eines Speichers, die nicht zu lesen ist</translation>
    </message>
    <message>
        <source>postgresql://LOGIN@HOST/DATABASE, or host=HOST dbname=DATABASE user=LOGIN, or service=NAME</source>
        <translation>postgresql://LOGIN@RECHNER/DATENBANK oder host=RECHNER dbname=DATENBANK user=LOGIN oder service=NAME</translation>
    </message>
    <message>
        <source>a password in the address of a store, where everybody on this machine sees it</source>
        <translation>ein Passwort in der Adresse eines Speichers, wo es jeder an diesem Rechner sieht</translation>
    </message>
    <message>
        <source>the address without it; the password in a line of ~/.pgpass, or in PGPASSWORD</source>
        <translation>die Adresse ohne es; das Passwort in einer Zeile von ~/.pgpass oder in PGPASSWORD</translation>
    </message>
    <message>
        <source>The store answered &apos;%1&apos;, which it never should. Nothing was changed.</source>
        <translation>Der Speicher hat „%1“ geantwortet, was er nie sollte. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The store at %1 is of a newer Slopebook than this one (layout %2, this one knows %3). Nothing was changed. Update Slopebook.</source>
        <translation>Der Speicher auf %1 ist von einem neueren Slopebook als diesem (Aufbau %2, dieses kennt %3). Nichts wurde geändert. Bringen Sie Slopebook auf den neuesten Stand.</translation>
    </message>
    <message>
        <source>The store at %1 is of an older Slopebook than this one (layout %2, this one needs %3). Nothing was changed. Who manages it brings it up to date with: slopebook store init</source>
        <translation>Der Speicher auf %1 ist von einem älteren Slopebook als diesem (Aufbau %2, dieses braucht %3). Nichts wurde geändert. Wer ihn verwaltet, bringt ihn auf den neuesten Stand mit: slopebook store init</translation>
    </message>
    <message>
        <source>The store at %1 does not take the password of &apos;%2&apos;, or knows no such login.</source>
        <translation>Der Speicher auf %1 nimmt das Passwort von „%2“ nicht an oder kennt diese Anmeldung nicht.</translation>
    </message>
    <message>
        <source>The store at %1 does not let &apos;%2&apos; in: %3.</source>
        <translation>Der Speicher auf %1 lässt „%2“ nicht ein: %3.</translation>
    </message>
    <message>
        <source>There is no database &apos;%1&apos; at %2.</source>
        <translation>Es gibt keine Datenbank „%1“ auf %2.</translation>
    </message>
    <message>
        <source>There is no store in the database &apos;%1&apos; at %2; who manages it makes one with: slopebook store init</source>
        <translation>In der Datenbank „%1“ auf %2 ist kein Speicher; wer sie verwaltet, legt einen an mit: slopebook store init</translation>
    </message>
    <message>
        <source>&apos;%1&apos; has no right to that in the store at %2. Nothing was changed. Who manages the store gives it with: slopebook store grant</source>
        <translation>„%1“ hat dazu im Speicher auf %2 kein Recht. Nichts wurde geändert. Wer den Speicher verwaltet, gibt es mit: slopebook store grant</translation>
    </message>
    <message>
        <source>The store at %1 was brought up to date by another version of Slopebook. Nothing was changed; both must be of one version.</source>
        <translation>Der Speicher auf %1 wurde von einer anderen Version von Slopebook auf den neuesten Stand gebracht. Nichts wurde geändert; beide müssen von derselben Version sein.</translation>
    </message>
    <message>
        <source>The disk of the store at %1 is full. Nothing was changed there, and nothing is lost here.</source>
        <translation>Der Datenträger des Speichers auf %1 ist voll. Dort wurde nichts geändert, und hier ist nichts verloren.</translation>
    </message>
    <message>
        <source>The store at %1 is just starting or stopping, or has no room for one more; try again in a moment.</source>
        <translation>Der Speicher auf %1 wird gerade gestartet oder beendet oder hat für niemanden mehr Platz; versuchen Sie es gleich noch einmal.</translation>
    </message>
    <message>
        <source>The store at %1 was busy with somebody else&apos;s work for too long. Nothing was changed; try again in a moment.</source>
        <translation>Der Speicher auf %1 war zu lange mit der Arbeit eines anderen beschäftigt. Nichts wurde geändert; versuchen Sie es gleich noch einmal.</translation>
    </message>
    <message>
        <source>Something else in the store has that name or number already. Nothing was changed.</source>
        <translation>Etwas anderes im Speicher hat diesen Namen oder diese Nummer schon. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>What was sent belongs to something that the store does not hold, or something still belongs to what was removed. Nothing was changed.</source>
        <translation>Was gesendet wurde, gehört zu etwas, das der Speicher nicht hat, oder zu Entferntem gehört noch etwas. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The store at %1 refused: %2 (%3). Nothing was changed.</source>
        <translation>Der Speicher auf %1 hat abgelehnt: %2 (%3). Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The connection to the store at %1 was lost in the middle (%2). What was under way is sent again at the next meeting.</source>
        <translation>Die Verbindung zum Speicher auf %1 ging mittendrin verloren (%2). Was unterwegs war, wird beim nächsten Abgleich noch einmal gesendet.</translation>
    </message>
    <message>
        <source>The store at %1 asks for a password of &apos;%2&apos;, and there is none. It is looked for where PostgreSQL&apos;s programs look: in a line of ~/.pgpass, or in PGPASSWORD.</source>
        <translation>Der Speicher auf %1 verlangt ein Passwort von „%2“, und es gibt keines. Es wird gesucht, wo die Programme von PostgreSQL suchen: in einer Zeile von ~/.pgpass oder in PGPASSWORD.</translation>
    </message>
    <message>
        <source>The address of the store does not lead anywhere: %1.</source>
        <translation>Die Adresse des Speichers führt nirgendwohin: %1.</translation>
    </message>
    <message>
        <source>No machine &apos;%1&apos; is known here. Is its name spelled right, and is there a network?</source>
        <translation>Ein Rechner „%1“ ist hier nicht bekannt. Ist sein Name richtig geschrieben, und gibt es ein Netz?</translation>
    </message>
    <message>
        <source>The store at %1 does not encrypt (TLS), and is not on this machine. Nothing was sent.</source>
        <translation>Der Speicher auf %1 verschlüsselt nicht (TLS) und ist nicht auf diesem Rechner. Nichts wurde gesendet.</translation>
    </message>
    <message>
        <source>The certificate of the store at %1 does not fit: %2. Nothing was sent. Who runs the store knows the right name and the certificate to hold it against (~/.postgresql/root.crt).</source>
        <translation>Das Zertifikat des Speichers auf %1 passt nicht: %2. Nichts wurde gesendet. Wer den Speicher betreibt, kennt den richtigen Namen und das Zertifikat, gegen das es geprüft wird (~/.postgresql/root.crt).</translation>
    </message>
    <message>
        <source>The store at %1 did not answer within %2 s. Is it running, and is there a network?</source>
        <translation>Der Speicher auf %1 hat innerhalb von %2 s nicht geantwortet. Läuft er, und gibt es ein Netz?</translation>
    </message>
    <message>
        <source>Nothing answers as a store at %1. Is it running, and is there a network?</source>
        <translation>Auf %1 antwortet kein Speicher. Läuft er, und gibt es ein Netz?</translation>
    </message>
    <message>
        <source>&apos;%1&apos;, which is no JSON</source>
        <translation>„%1“, was kein JSON ist</translation>
    </message>
    <message>
        <source>what a store of this version holds</source>
        <translation>was ein Speicher dieser Version enthält</translation>
    </message>
    <message>
        <source>A shared store needs PostgreSQL&apos;s library for clients (libpq.so.5), which is not on this machine.</source>
        <translation>Ein gemeinsamer Speicher braucht die Bibliothek von PostgreSQL für Clients (libpq.so.5); sie ist nicht auf diesem Rechner.</translation>
    </message>
    <message>
        <source>the name of a squad: &apos;%1&apos;</source>
        <translation>der Name eines Kaders: „%1“</translation>
    </message>
    <message>
        <source>a name of at most 200 letters</source>
        <translation>ein Name mit höchstens 200 Buchstaben</translation>
    </message>
    <message>
        <source>another one: lifts, tests and devices, which are everybody&apos;s, stand under that</source>
        <translation>ein anderer: unter diesem stehen Übungen, Tests und Messgeräte, die allen gehören</translation>
    </message>
    <message>
        <source>the squad &apos;%1&apos;</source>
        <translation>der Kader „%1“</translation>
    </message>
    <message>
        <source>one that is there; slopebook store init --squad NAME makes one</source>
        <translation>einer, den es gibt; slopebook store init --squad NAME legt einen an</translation>
    </message>
    <message>
        <source>one of: %1</source>
        <translation>einer von: %1</translation>
    </message>
    <message>
        <source>The server at %1 is PostgreSQL %2; a store needs 15 or newer.</source>
        <translation>Der Server auf %1 ist PostgreSQL %2; ein Speicher braucht 15 oder neuer.</translation>
    </message>
    <message>
        <source>the login &apos;%1&apos;</source>
        <translation>die Anmeldung „%1“</translation>
    </message>
    <message>
        <source>one that the server knows; who runs it makes one in psql: CREATE ROLE ... LOGIN, then \password</source>
        <translation>eine, die der Server kennt; wer ihn betreibt, legt sie in psql an: CREATE ROLE ... LOGIN, dann \password</translation>
    </message>
    <message>
        <source>an atom whose &apos;%1&apos; cannot be read</source>
        <translation>etwas, dessen „%1“ nicht zu lesen ist</translation>
    </message>
    <message>
        <source>%1 of the store that does not say what it was sent as</source>
        <translation>%1 aus dem Speicher, das nicht sagt, als was es gesendet wurde</translation>
    </message>
    <message>
        <source>what its last revision was made from</source>
        <translation>woraus seine letzte Fassung entstand</translation>
    </message>
    <message>
        <source>That choice is not open any more. Nothing was changed.</source>
        <translation>Diese Wahl ist nicht mehr offen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>That name or number is taken by another: %1. Change that one first. Nothing was changed.</source>
        <translation>Diesen Namen oder diese Nummer hat ein anderes: %1. Ändern Sie das zuerst. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Nobody knows any more what the other side said. Nothing was changed.</source>
        <translation>Was auf der anderen Seite stand, weiß niemand mehr. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>velocity</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>what counts</source>
        <translation>was zählt</translation>
    </message>
    <message>
        <source>thrown or jumped</source>
        <translation>geworfen oder gesprungen</translation>
    </message>
    <message>
        <source>moves the body</source>
        <translation>bewegt den Körper</translation>
    </message>
    <message>
        <source>MVT, m/s</source>
        <translation>MVT, m/s</translation>
    </message>
    <message>
        <source>SD of the MVT, m/s</source>
        <translation>SD der MVT, m/s</translation>
    </message>
    <message>
        <source>whose MVT</source>
        <translation>wessen MVT</translation>
    </message>
    <message>
        <source>source of the MVT</source>
        <translation>Quelle der MVT</translation>
    </message>
    <message>
        <source>smallest change, m/s</source>
        <translation>kleinste Änderung, m/s</translation>
    </message>
    <message>
        <source>smallest change of the 1RM, kg</source>
        <translation>kleinste Änderung des 1RM, kg</translation>
    </message>
    <message>
        <source>first day</source>
        <translation>erster Tag</translation>
    </message>
    <message>
        <source>last day</source>
        <translation>letzter Tag</translation>
    </message>
    <message>
        <source>ceiling</source>
        <translation>Obergrenze</translation>
    </message>
    <message>
        <source>trained</source>
        <translation>trainiert</translation>
    </message>
    <message>
        <source>sessions a week, fewest</source>
        <translation>Einheiten je Woche, wenigstens</translation>
    </message>
    <message>
        <source>sessions a week, most</source>
        <translation>Einheiten je Woche, höchstens</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit der Größe</translation>
    </message>
    <message>
        <source>higher is better</source>
        <translation>höher ist besser</translation>
    </message>
    <message>
        <source>two sides</source>
        <translation>zwei Seiten</translation>
    </message>
    <message>
        <source>both sides too</source>
        <translation>auch beidseitig</translation>
    </message>
    <message>
        <source>best attempts</source>
        <translation>beste Versuche</translation>
    </message>
    <message>
        <source>attempts</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>formula</source>
        <translation>Formel</translation>
    </message>
    <message>
        <source>decimals</source>
        <translation>Dezimalstellen</translation>
    </message>
    <message>
        <source>typical error</source>
        <translation>typischer Fehler</translation>
    </message>
    <message>
        <source>typical error in percent</source>
        <translation>typischer Fehler in Prozent</translation>
    </message>
    <message>
        <source>source of the typical error</source>
        <translation>Quelle des typischen Fehlers</translation>
    </message>
    <message>
        <source>smallest change</source>
        <translation>kleinste Änderung</translation>
    </message>
    <message>
        <source>source of the smallest change</source>
        <translation>Quelle der kleinsten Änderung</translation>
    </message>
    <message>
        <source>plate</source>
        <translation>Scheibe</translation>
    </message>
    <message>
        <source>pairs</source>
        <translation>Paare</translation>
    </message>
    <message>
        <source>alone or added</source>
        <translation>allein oder zusätzlich</translation>
    </message>
    <message>
        <source>use</source>
        <translation>Verwendung</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>test</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>device</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>surface</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>footwear</source>
        <translation>Schuhe</translation>
    </message>
    <message>
        <source>technique</source>
        <translation>Technik</translation>
    </message>
    <message>
        <source>planned sets</source>
        <translation>geplante Sätze</translation>
    </message>
    <message>
        <source>takes turns</source>
        <translation>wechselt ab</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>repeats</source>
        <translation>wiederholt</translation>
    </message>
    <message>
        <source>true maximum</source>
        <translation>echtes Maximum</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>Ausgang</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>RPE</source>
        <translation>RPE</translation>
    </message>
    <message>
        <source>left out because</source>
        <translation>ausgeschlossen, weil</translation>
    </message>
    <message>
        <source>speed, m/s</source>
        <translation>Geschwindigkeit, m/s</translation>
    </message>
    <message>
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>contact time, s</source>
        <translation>Kontaktzeit, s</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>athlete</source>
        <translation>Athlet</translation>
    </message>
    <message>
        <source>training block</source>
        <translation>Trainingsblock</translation>
    </message>
    <message>
        <source>set of equipment</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>station</source>
        <translation>Station</translation>
    </message>
    <message>
        <source>session</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>conditions of a lift</source>
        <translation>Bedingungen einer Übung</translation>
    </message>
    <message>
        <source>conditions of a test</source>
        <translation>Bedingungen eines Tests</translation>
    </message>
    <message>
        <source>set</source>
        <translation>Satz</translation>
    </message>
    <message>
        <source>attempt</source>
        <translation>Versuch</translation>
    </message>
    <message>
        <source>what was not possible</source>
        <translation>was nicht möglich war</translation>
    </message>
    <message>
        <source>check load</source>
        <translation>Prüflast</translation>
    </message>
    <message>
        <source>place in a roster</source>
        <translation>Platz in einer Reihenfolge</translation>
    </message>
    <message>
        <source>choice</source>
        <translation>Wahl</translation>
    </message>
    <message>
        <source>one that nobody knows any more</source>
        <translation>etwas, das niemand mehr kennt</translation>
    </message>
    <message>
        <source>set %1</source>
        <translation>Satz %1</translation>
    </message>
    <message>
        <source>attempt %1</source>
        <translation>Versuch %1</translation>
    </message>
    <message>
        <source>changed in both logs</source>
        <translation>in beiden Protokollen geändert</translation>
    </message>
    <message>
        <source>two of one name: this one has another name now</source>
        <translation>zwei mit demselben Namen: dies hier heißt jetzt anders</translation>
    </message>
    <message>
        <source>two sessions of one day and number: this one has another number now</source>
        <translation>zwei Einheiten mit demselben Tag und derselben Nummer: diese hat jetzt eine andere Nummer</translation>
    </message>
    <message>
        <source>two that can only be one, and did not say the same</source>
        <translation>zwei, die nur eins sein können und Verschiedenes sagten</translation>
    </message>
    <message>
        <source>removed in one log, in use in the other: it is back</source>
        <translation>im einen Protokoll entfernt, im anderen verwendet: es ist wieder da</translation>
    </message>
    <message>
        <source>no repeat test any more: what it repeated is another athlete&apos;s, or repeats it</source>
        <translation>kein Wiederholungstest mehr: was er wiederholte, gehört einem anderen Athleten oder wiederholt ihn</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is this log itself. Nothing was changed.</source>
        <translation>„%1“ ist dieses Protokoll selbst. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>a %1 whose trail does not lead to what it says</source>
        <translation>etwas (%1), dessen Spur nicht zu dem führt, was es sagt</translation>
    </message>
    <message>
        <source>two of a %1 under one identity</source>
        <translation>zwei (%1) unter einer Kennung</translation>
    </message>
    <message>
        <source>one kind of thing under one identity</source>
        <translation>eine Art von Ding unter einer Kennung</translation>
    </message>
    <message>
        <source>a %1 under the identity of a %2</source>
        <translation>etwas (%1) unter der Kennung von etwas anderem (%2)</translation>
    </message>
    <message>
        <source>a %1 that speaks of what is not there</source>
        <translation>etwas (%1), das von etwas spricht, das nicht da ist</translation>
    </message>
    <message>
        <source>what it speaks of in the same log</source>
        <translation>das, wovon es spricht, im selben Protokoll</translation>
    </message>
    <message>
        <source>number %1 of a %2</source>
        <translation>Nummer %1 (%2)</translation>
    </message>
    <message>
        <source>a number from 1 to %1</source>
        <translation>eine Nummer von 1 bis %1</translation>
    </message>
    <message>
        <source>something in use that was removed before logs kept what was</source>
        <translation>etwas Verwendetes, das entfernt wurde, bevor Protokolle Entferntes aufhoben</translation>
    </message>
    <message>
        <source>a log in which it still is</source>
        <translation>ein Protokoll, in dem es noch steht</translation>
    </message>
    <message>
        <source>what was to be taken does not stand as it was written (%1, %2)</source>
        <translation>was zu übernehmen war, steht nicht so da, wie es geschrieben wurde (%1, %2)</translation>
    </message>
    <message>
        <source>It cannot be removed while it is in use: %1. Remove that first. Nothing was changed.</source>
        <translation>Es kann nicht gelöscht werden, solange es gebraucht wird: %1. Erst das löschen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>It cannot repeat that session: %1. Change that one first. Nothing was changed.</source>
        <translation>Es kann diese Einheit nicht wiederholen: %1. Erst diese ändern. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>a choice that no meeting of two logs made</source>
        <translation>eine Auswahl, die kein Zusammenführen zweier Protokolle ergab</translation>
    </message>
    <message>
        <source>one under the identity of what it is about</source>
        <translation>eine unter der Kennung dessen, worum es geht</translation>
    </message>
    <message>
        <source>Lift %1; no stop speed: it would lie under the MVT.</source>
        <translation>Hebe %1; keine Stopp-Geschwindigkeit: sie läge unter der MVT.</translation>
    </message>
    <message>
        <source>%1 lies over the estimated 1RM.</source>
        <translation>%1 liegt über dem geschätzten 1RM.</translation>
    </message>
    <message>
        <source>The aim is %1.</source>
        <translation>Ziel ist %1.</translation>
    </message>
    <message>
        <source>The aim is %1 to %2.</source>
        <translation>Ziel ist %1 bis %2.</translation>
    </message>
    <message>
        <source>The aim is %1 to %2; over the estimated 1RM: %3.</source>
        <translation>Ziel ist %1 bis %2; über dem geschätzten 1RM: %3.</translation>
    </message>
    <message>
        <source>at another place</source>
        <translation>an anderem Ort</translation>
    </message>
    <message>
        <source>tested %1 than before</source>
        <translation>%1 getestet als zuvor</translation>
    </message>
    <message>
        <source>%1, but tested %2</source>
        <translation>%1, aber %2 getestet</translation>
    </message>
    <message>
        <source>%1 (%2; tested %3)</source>
        <translation>%1 (%2; %3 getestet)</translation>
    </message>
    <message>
        <source>%1 (tested %2)</source>
        <translation>%1 (%2 getestet)</translation>
    </message>
    <message>
        <source>%1 of %2 were tested %3 than before: part of their change may be its doing.</source>
        <translation>%1 von %2 wurden %3 getestet als zuvor: Ein Teil ihrer Änderung kann daher kommen.</translation>
    </message>
    <message>
        <source>%1 of %2 were tested under other conditions than before: part of their change may be that.</source>
        <translation>%1 von %2 wurden unter anderen Bedingungen getestet als zuvor: Ein Teil ihrer Änderung kann daher kommen.</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>none in %1</source>
        <translation>keiner in %1</translation>
    </message>
    <message>
        <source>the fastest rep</source>
        <translation>die schnellste Wiederholung</translation>
    </message>
    <message>
        <source>the mean of the reps</source>
        <translation>das Mittel der Wiederholungen</translation>
    </message>
    <message>
        <source>the athlete&apos;s own</source>
        <translation>die der Athletin oder des Athleten selbst</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>the best attempt</source>
        <translation>der beste Versuch</translation>
    </message>
    <message>
        <source>the mean of the attempts</source>
        <translation>das Mittel der Versuche</translation>
    </message>
    <message>
        <source>the number as read</source>
        <translation>die Zahl, wie sie abgelesen wird</translation>
    </message>
    <message>
        <source>the height, from the flight time</source>
        <translation>die Höhe, aus der Flugzeit</translation>
    </message>
    <message>
        <source>the height over the contact time</source>
        <translation>die Höhe geteilt durch die Kontaktzeit</translation>
    </message>
    <message>
        <source>the height, from the flight time, over the contact time</source>
        <translation>die Höhe, aus der Flugzeit, geteilt durch die Kontaktzeit</translation>
    </message>
    <message>
        <source>the force over the body mass</source>
        <translation>die Kraft geteilt durch die Körpermasse</translation>
    </message>
    <message>
        <source>both at once, or no side</source>
        <translation>beide zugleich oder ohne Seite</translation>
    </message>
    <message>
        <source>the left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>the right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>lifted</source>
        <translation>geschafft</translation>
    </message>
    <message>
        <source>a load by itself</source>
        <translation>für sich eine Last</translation>
    </message>
    <message>
        <source>on top of a load</source>
        <translation>zusätzlich zu einer Last</translation>
    </message>
    <message>
        <source>&apos;%1&apos; meets no store. Join it to one first.</source>
        <translation>„%1“ gleicht sich mit keinem Speicher ab. Lassen Sie es zuerst einem beitreten.</translation>
    </message>
    <message>
        <source>the squad to which what is new here goes</source>
        <translation>der Kader, in den geht, was hier neu ist</translation>
    </message>
    <message>
        <source>one in which this login may write; there is none: who manages the store grants it</source>
        <translation>einen, in den diese Anmeldung schreiben darf; es gibt keinen: Wer den Speicher verwaltet, gibt das Recht</translation>
    </message>
    <message>
        <source>the store at %1</source>
        <translation>der Speicher auf %1</translation>
    </message>
    <message>
        <source>the one that this log meets already, or a log that has left it</source>
        <translation>der, mit dem sich dieses Protokoll schon abgleicht, oder ein Protokoll, das ihn verlassen hat</translation>
    </message>
    <message>
        <source>a %1 of the store that speaks of what is not there</source>
        <translation>%1 aus dem Speicher, mit Verweis auf etwas, das nicht da ist</translation>
    </message>
    <message>
        <source>what it speaks of in the same store</source>
        <translation>das, worauf verwiesen wird, in demselben Speicher</translation>
    </message>
    <message>
        <source>Other desks write to the store at %1 without pause. What is not sent yet waits for the next meeting.</source>
        <translation>Andere Plätze schreiben ohne Pause in den Speicher auf %1. Was noch nicht gesendet ist, wartet auf den nächsten Abgleich.</translation>
    </message>
    <message>
        <source>The store at %1 is another one than this log has met. Nothing was changed. Leave the old one first, then join this one.</source>
        <translation>Der Speicher auf %1 ist ein anderer als der, mit dem sich dieses Protokoll abgleicht. Nichts wurde geändert. Verlassen Sie zuerst den alten, dann treten Sie diesem bei.</translation>
    </message>
    <message>
        <source>Both are as if the line were straight. To plan with it is ± %1 now: that also holds what a bend may add.</source>
        <translation>Beides gilt, als wäre die Gerade wirklich gerade. Zum Planen sind es jetzt ± %1: Darin steckt auch, was eine Krümmung hinzufügen kann.</translation>
    </message>
    <message>
        <source>Both take the MVT as exact and the line as straight. To plan with it is ± %1 now: that also holds the MVT&apos;s own spread and what a bend may add.</source>
        <translation>Beides nimmt die MVT als genau und die Gerade als gerade. Zum Planen sind es jetzt ± %1: Darin stecken auch die Streuung der MVT selbst und was eine Krümmung hinzufügen kann.</translation>
    </message>
    <message>
        <source>The connection to the store at %1 was lost in the middle (%2). Whether it was done there is not known; to ask for it once more does no harm.</source>
        <translation>Die Verbindung zum Speicher auf %1 ging mittendrin verloren (%2). Ob es dort geschehen ist, ist nicht bekannt; es noch einmal zu verlangen, schadet nicht.</translation>
    </message>
    <message>
        <source>The connection to the store at %1 was cut while it was made (%2). Is there a network?</source>
        <translation>Die Verbindung zum Speicher auf %1 brach ab, während sie aufgebaut wurde (%2). Gibt es ein Netz?</translation>
    </message>
    <message>
        <source>The store at %1 and this machine do not agree on how to encrypt: %2. Nothing was sent.</source>
        <translation>Der Speicher auf %1 und dieser Rechner einigen sich nicht, wie verschlüsselt wird: %2. Nichts wurde gesendet.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; has no right to manage a store at %2: it is made and managed by who owns the database &apos;%3&apos;. Nothing was changed.</source>
        <translation>„%1“ hat kein Recht, auf %2 einen Speicher zu verwalten: Angelegt und verwaltet wird er von dem, dem die Datenbank „%3“ gehört. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>tested under other conditions than before (%1)</source>
        <translation>unter anderen Bedingungen getestet als zuvor (%1)</translation>
    </message>
    <message>
        <source>%1: the store does not let this login write it</source>
        <translation>%1: Der Speicher lässt diese Anmeldung das nicht schreiben</translation>
    </message>
    <message>
        <source>%1: its name or number is taken in the store, by what is not seen here</source>
        <translation>%1: Name oder Nummer ist im Speicher vergeben, an etwas, das hier nicht zu sehen ist</translation>
    </message>
    <message>
        <source>%1: something in the store that is not seen here needs it, or it needs what is not there</source>
        <translation>%1: Im Speicher braucht es etwas, das hier nicht zu sehen ist, oder es braucht, was dort nicht ist</translation>
    </message>
    <message>
        <source>%1: it waits for the next meeting</source>
        <translation>%1: wartet auf den nächsten Abgleich</translation>
    </message>
    <message>
        <source>a UUID that no row above has</source>
        <translation>eine UUID, die in keiner Zeile darüber steht</translation>
    </message>
    <message>
        <source>by %1 of an estimate and a maximum lifted (%2 of them the athlete&apos;s own) such estimates read %3 %: plans take the %4 that were lifted that day in place of %5</source>
        <translation>nach %1 aus Schätzung und gehobenem Maximum (davon %2 vom Athleten selbst) weichen solche Schätzungen um %3 % ab: Pläne nehmen die %4, die an jenem Tag gehoben wurden, statt %5</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not the log any more that this meeting began with: it went back to an earlier state. Nothing more was written into it; the next meeting goes on from what is there.</source>
        <translation>„%1“ ist nicht mehr das Protokoll, mit dem dieses Treffen begann: Es ging auf einen früheren Stand zurück. Es wurde nichts mehr hineingeschrieben; das nächste Treffen macht mit dem weiter, was dort steht.</translation>
    </message>
    <message>
        <source>%1 points (%2 to %3): no clear change; a change is clear from %4</source>
        <translation>%1 Punkte (%2 bis %3): keine klare Änderung; klar wäre sie ab %4</translation>
    </message>
    <message>
        <source>%1 points (%2 to %3): no clear change, leaning to more uneven; a change is clear from %4</source>
        <translation>%1 Punkte (%2 bis %3): keine klare Änderung, eher ungleicher; klar wäre sie ab %4</translation>
    </message>
    <message>
        <source>%1 points (%2 to %3): no clear change, leaning to less uneven; a change is clear from %4</source>
        <translation>%1 Punkte (%2 bis %3): keine klare Änderung, eher weniger ungleich; klar wäre sie ab %4</translation>
    </message>
    <message>
        <source>%1 m/s (%2 to %3; a change is clear from %4 up)</source>
        <translation>%1 m/s (%2 bis %3; klar ab %4)</translation>
    </message>
    <message>
        <source>%1, leaning to better: %2</source>
        <translation>%1, eher besser: %2</translation>
    </message>
    <message>
        <source>%1, leaning to worse: %2</source>
        <translation>%1, eher schlechter: %2</translation>
    </message>
    <message>
        <source>%1, leaning to better at %2: %3</source>
        <translation>%1, eher besser bei %2: %3</translation>
    </message>
    <message>
        <source>%1, leaning to worse at %2: %3</source>
        <translation>%1, eher schlechter bei %2: %3</translation>
    </message>
    <message>
        <source>no clear change of the estimated max, leaning to better: %1 (%2 to %3; a change is clear from %4 up)</source>
        <translation>keine klare Änderung des geschätzten Maximums, eher besser: %1 (%2 bis %3; klar ab %4)</translation>
    </message>
    <message>
        <source>no clear change of the estimated max, leaning to worse: %1 (%2 to %3; a change is clear from %4 up)</source>
        <translation>keine klare Änderung des geschätzten Maximums, eher schlechter: %1 (%2 bis %3; klar ab %4)</translation>
    </message>
    <message>
        <source>no clear change of the estimated max: %1 (%2 to %3; a change is clear from %4 up)</source>
        <translation>keine klare Änderung des geschätzten Maximums: %1 (%2 bis %3; klar ab %4)</translation>
    </message>
    <message>
        <source>%1: a change is clear from %2 m/s up</source>
        <translation>%1: Eine Änderung ist klar ab %2 m/s</translation>
    </message>
    <message>
        <source>%1: a change is clear from %2 up</source>
        <translation>%1: Eine Änderung ist klar ab %2</translation>
    </message>
    <message>
        <source>%1; clear from %2</source>
        <translation>%1; klar ab %2</translation>
    </message>
    <message>
        <source>all blocks at once</source>
        <translation>alle Blöcke zugleich</translation>
    </message>
    <message>
        <source>each change alone</source>
        <translation>jede Änderung für sich</translation>
    </message>
    <message>
        <source>day against day, each change alone</source>
        <translation>Tag gegen Tag, jede Änderung für sich</translation>
    </message>
    <message>
        <source>block against block, each change alone</source>
        <translation>Block gegen Block, jede Änderung für sich</translation>
    </message>
    <message>
        <source>%1 unclear, leaning to better</source>
        <translation>%1 unklar, eher besser</translation>
    </message>
    <message>
        <source>%1 unclear, leaning to worse</source>
        <translation>%1 unklar, eher schlechter</translation>
    </message>
    <message>
        <source>%1; against %2 (%7) %3 m/s (%4 to %5), %6</source>
        <translation>%1; gegen %2 (%7) %3 m/s (%4 bis %5), %6</translation>
    </message>
    <message>
        <source>Each change alone: %1 better, %2 worse, %3 held, %4 unclear, %5 without a figure.</source>
        <translation>Jede Änderung für sich: %1 besser, %2 schlechter, %3 gehalten, %4 unklar, %5 ohne Angabe.</translation>
    </message>
    <message>
        <source>of %1 readings (%2), %3</source>
        <translation>von %1 Befunden (%2) %3</translation>
    </message>
    <message>
        <source>%1 (leaning to better: %2; clear from %3)</source>
        <translation>%1 (eher besser: %2; klar ab %3)</translation>
    </message>
    <message>
        <source>%1 (leaning to worse: %2; clear from %3)</source>
        <translation>%1 (eher schlechter: %2; klar ab %3)</translation>
    </message>
    <message>
        <source>%1 (%2; clear from %3)</source>
        <translation>%1 (%2; klar ab %3)</translation>
    </message>
    <message>
        <source>from %1 to %2 (%3), %4</source>
        <translation>von %1 zu %2 (%3): %4</translation>
    </message>
    <message>
        <source>Due: not tested since the running block began, or not for over %1 weeks, or over a week longer ago than most of the others; or never, where most of the others were lately.</source>
        <translation>Fällig: seit Beginn des laufenden Blocks nicht getestet, oder seit über %1 Wochen nicht, oder über eine Woche länger nicht als die meisten anderen; oder noch nie, wo die meisten anderen es vor Kurzem wurden.</translation>
    </message>
    <message>
        <source>the athlete&apos;s own: %1 repeats, days of one block among them</source>
        <translation>eigener Wert des Athleten: %1 Wiederholungen, darunter Tage desselben Blocks</translation>
    </message>
    <message>
        <source>all steps at once</source>
        <translation>alle Schritte zugleich</translation>
    </message>
    <message>
        <source>The best ladder can be expected to give the estimated 1RM to ± %1, were lines straight (this session&apos;s: ± %2).</source>
        <translation>Die beste Leiter sollte das geschätzte 1RM auf ± %1 genau liefern, wären Geraden gerade (diese Einheit: ± %2).</translation>
    </message>
    <message>
        <source>The best ladder can be expected to give the estimated 1RM to ± %1, were lines straight.</source>
        <translation>Die beste Leiter sollte das geschätzte 1RM auf ± %1 genau liefern, wären Geraden gerade.</translation>
    </message>
    <message>
        <source>%1 was lifted that day: its max is no less</source>
        <translation>%1 wurden an dem Tag gehoben: Weniger ist sein Maximum nicht</translation>
    </message>
    <message>
        <source>%1 was lifted that day and %2 was not: that day&apos;s max lies between</source>
        <translation>%1 an diesem Tag geschafft, %2 nicht: das Maximum dieses Tages liegt dazwischen</translation>
    </message>
    <message>
        <source>the days of one block are taken as alike, 0.5 from one to the next; where they are as alike as 0.7, up to 15 % of what is no change is read as one, instead of 5 %</source>
        <translation>die Tage eines Blocks gelten als einander ähnlich, 0,5 von einem zum nächsten; sind sie so ähnlich wie 0,7, wird bis zu 15 % dessen, was keine Änderung ist, als eine befunden, statt 5 %</translation>
    </message>
    <message>
        <source>RPE is read by how its own days differ, and no two days of a block do</source>
        <translation>RPE wird an den Unterschieden der eigenen Tage gemessen, und keine zwei Tage eines Blocks unterscheiden sich</translation>
    </message>
    <message>
        <source>estimated 1RM: a true change of %1 is seen with a chance of %2, no change with %3</source>
        <translation>geschätztes 1RM: eine wahre Änderung von %1 wird mit einer Wahrscheinlichkeit von %2 gesehen, keine mit %3</translation>
    </message>
    <message>
        <source>%1: a true change of %2 m/s is seen with a chance of %3, no change with %4</source>
        <translation>%1: eine wahre Änderung von %2 m/s wird mit einer Wahrscheinlichkeit von %3 gesehen, keine mit %4</translation>
    </message>
    <message>
        <source>Change: of the sessions of a side that cover a load the mean, each weighed by what its line and its day are known by; the later side less the earlier one. The lines that are drawn are the heaviest day of each.</source>
        <translation>Änderung: von den Einheiten einer Seite, die eine Last abdecken, das Mittel, jede gewichtet danach, wie genau ihre Gerade und ihr Tag bekannt sind; die spätere Seite weniger die frühere. Gezeichnet ist die Gerade des schwersten Tages von jeder.</translation>
    </message>
    <message>
        <source>Estimated 1RM: the load at which the mean of a side reaches the MVT; interval of the change: delta method.</source>
        <translation>Geschätztes 1RM: die Last, bei der das Mittel einer Seite die MVT erreicht; Intervall der Änderung: Delta-Methode.</translation>
    </message>
    <message>
        <source>What is one thing here and in the store is put together in one go, which gives way to what is entered: it waits until nothing is entered for %1 s. Nothing is lost; the next meeting tries it again.</source>
        <translation>Was hier und im Speicher eines ist, wird in einem Zug zusammengelegt, der dem Eintragen den Vortritt lässt: Er wartet, bis %1 s lang nichts eingetragen wird. Verloren geht nichts; der nächste Abgleich versucht es wieder.</translation>
    </message>
    <message>
        <source>unclear, better alone</source>
        <translation>unklar, allein besser</translation>
    </message>
    <message>
        <source>unclear, worse alone</source>
        <translation>unklar, allein schlechter</translation>
    </message>
    <message>
        <source>%1 was tested %2 than the baseline: part of its change may be that</source>
        <translation>%1 wurde anders getestet als der Bezug (%2): Ein Teil der Änderung kann daran liegen</translation>
    </message>
    <message>
        <source>%1 and one more session were tested %2 than the baseline: part of their change may be that</source>
        <translation>%1 und eine weitere Einheit wurden anders getestet als der Bezug (%2): Ein Teil der Änderung kann daran liegen</translation>
    </message>
    <message>
        <source>%1 and %3 more sessions were tested %2 than the baseline: part of their change may be that</source>
        <translation>%1 und %3 weitere Einheiten wurden anders getestet als der Bezug (%2): Ein Teil der Änderung kann daran liegen</translation>
    </message>
    <message>
        <source>%1 of %2 readings against %3 are better or worse (%4); chance alone gives %5. %6</source>
        <translation>%1 von %2 Befunden gegen %3 sind besser oder schlechter (%4); der Zufall allein gibt %5. %6</translation>
    </message>
    <message>
        <source>%1 unclear, better alone</source>
        <translation>%1 unklar, allein besser</translation>
    </message>
    <message>
        <source>%1 unclear, worse alone</source>
        <translation>%1 unklar, allein schlechter</translation>
    </message>
    <message>
        <source>%1 without a figure</source>
        <translation>%1 ohne Zahl</translation>
    </message>
    <message>
        <source>%1 (better alone: %2; clear from %3)</source>
        <translation>%1 (allein besser: %2; klar ab %3)</translation>
    </message>
    <message>
        <source>%1 (worse alone: %2; clear from %3)</source>
        <translation>%1 (allein schlechter: %2; klar ab %3)</translation>
    </message>
    <message>
        <source>%1 of %2 readings are better or worse; chance alone gives %3. %4</source>
        <translation>%1 von %2 Befunden sind besser oder schlechter; der Zufall allein gibt %3. %4</translation>
    </message>
    <message>
        <source>Taken all as one question (Holm&apos;s rule), none of them stands.</source>
        <translation>Alle als eine einzige Frage genommen (Regel von Holm), bleibt keiner.</translation>
    </message>
    <message>
        <source>Taken all as one question (Holm&apos;s rule), these stand: %1.</source>
        <translation>Alle als eine einzige Frage genommen (Regel von Holm), bleiben: %1.</translation>
    </message>
    <message>
        <source>Taken all as one question (Holm&apos;s rule), these stand: %1 and %2 more.</source>
        <translation>Alle als eine einzige Frage genommen (Regel von Holm), bleiben: %1 und %2 weitere.</translation>
    </message>
    <message>
        <source>Rule of thumb: from one test to another a speed at a load has changed clearly from about %1 m/s up, of %2 tests against %2 from about %3; all blocks read at once ask for more.</source>
        <translation>Faustregel: Von einem Test zum anderen hat sich die Geschwindigkeit bei einer Last ab etwa %1 m/s klar geändert, bei %2 Tests gegen %2 ab etwa %3; alle Blöcke zugleich gelesen verlangen mehr.</translation>
    </message>
    <message>
        <source>The rule of thumb is of days alone; beside a reading stands its own figure. Where blocks are read, their days count as repeats too, and the noise is a little other.</source>
        <translation>Die Faustregel gilt für die Tage allein; neben einem Befund steht sein eigener Wert. Wo Blöcke gelesen werden, zählen auch ihre Tage als Wiederholungen, und die Streuung ist ein wenig anders.</translation>
    </message>
    <message>
        <source>of %1 athletes about %2 can be expected to read better or worse by chance alone, at any one load</source>
        <translation>Von %1 Athleten dürften an jeder einzelnen Last etwa %2 allein durch Zufall als besser oder schlechter befunden werden</translation>
    </message>
    <message>
        <source>the earlier test was done once and cannot be done again: %1 tests before and %1 after would have settled it, and in the next block so many at its start and at its end would settle such a change</source>
        <translation>der frühere Test wurde einmal gemacht und lässt sich nicht nachholen: %1 Tests vorher und %1 nachher hätten es geklärt, und im nächsten Block würden so viele an seinem Anfang und an seinem Ende eine solche Änderung klären</translation>
    </message>
    <message>
        <source>lifted up to %1 % of it (reach %2), extrapolated very far</source>
        <translation>gehoben bis %1 % davon (Reichweite %2), sehr weit extrapoliert</translation>
    </message>
    <message>
        <source>lifted up to %1 % of it (reach %2), extrapolated far</source>
        <translation>gehoben bis %1 % davon (Reichweite %2), weit extrapoliert</translation>
    </message>
    <message>
        <source>lifted up to %1 % of it (reach %2)</source>
        <translation>gehoben bis %1 % davon (Reichweite %2)</translation>
    </message>
    <message>
        <source>*: under other conditions than before</source>
        <translation>*: unter anderen Bedingungen als vorher</translation>
    </message>
    <message>
        <source>°: under the same conditions</source>
        <translation>°: unter denselben Bedingungen</translation>
    </message>
    <message>
        <source>†: drawn beyond the loads lifted</source>
        <translation>†: über die gehobenen Lasten hinaus gezogen</translation>
    </message>
    <message>
        <source>‡: within the loads lifted</source>
        <translation>‡: innerhalb der gehobenen Lasten</translation>
    </message>
    <message>
        <source>All under other conditions than before</source>
        <translation>Alle unter anderen Bedingungen als vorher</translation>
    </message>
    <message>
        <source>Under other conditions than before: all but those marked °</source>
        <translation>Unter anderen Bedingungen als vorher: alle außer denen mit °</translation>
    </message>
    <message>
        <source>All drawn beyond the loads lifted</source>
        <translation>Alle über die gehobenen Lasten hinaus gezogen</translation>
    </message>
    <message>
        <source>Drawn beyond the loads lifted: all but those marked ‡</source>
        <translation>Über die gehobenen Lasten hinaus gezogen: alle außer denen mit ‡</translation>
    </message>
    <message>
        <source>in the chart %1</source>
        <translation>im Diagramm %1</translation>
    </message>
    <message>
        <source>Of a block or a stretch of days all sessions are made one, of a date the nearest that makes a line stands. Readings hold day-to-day noise; rows go better, worse, held, unclear, and by size in each. Drawn to all: an athlete&apos;s change moved towards the mean of all, the further the more of it the noise of tests may be.</source>
        <translation>Von einem Block oder einer Folge von Tagen werden alle Einheiten zu einer gemittelt, von einem Datum gilt die nächstgelegene Einheit, die eine Gerade ergibt. Die Befunde enthalten die Tag-zu-Tag-Streuung; die Zeilen gehen besser, schlechter, gehalten, unklar, und darin nach Größe. Zu allen gezogen: die Änderung eines Athleten, zum Mittel aller hin verschoben, umso weiter, je mehr von ihr Streuung der Tests sein kann.</translation>
    </message>
    <message>
        <source>Lift %1; %2</source>
        <translation>Hebe %1; %2</translation>
    </message>
    <message>
        <source>clear at all of them</source>
        <translation>klar an allen</translation>
    </message>
    <message>
        <source>clear at %1</source>
        <translation>klar an %1</translation>
    </message>
    <message>
        <source>held at all of them</source>
        <translation>gehalten an allen</translation>
    </message>
    <message>
        <source>held at %1</source>
        <translation>gehalten an %1</translation>
    </message>
    <message>
        <source>Not comparable with %1: %2.</source>
        <translation>Mit %1 nicht vergleichbar: %2.</translation>
    </message>
    <message>
        <source>Against %1, %2: %3</source>
        <translation>Gegen %1, %2: %3</translation>
    </message>
    <message>
        <source>tested %1</source>
        <translation>getestet %1</translation>
    </message>
    <message>
        <source>end a set %1 % under the day&apos;s fastest rep: at %2 m/s if that is the expected %3 m/s</source>
        <translation>Satz beenden %1 % unter der schnellsten Wiederholung des Tages: bei %2 m/s, wenn diese die erwarteten %3 m/s hat</translation>
    </message>
    <message>
        <source>in this log 1 session with sets or tests</source>
        <translation>in diesem Protokoll 1 Einheit mit Sätzen oder Tests</translation>
    </message>
    <message>
        <source>in this log %1 sessions with sets or tests</source>
        <translation>in diesem Protokoll %1 Einheiten mit Sätzen oder Tests</translation>
    </message>
    <message>
        <source>in this log 1 session with sets or tests, in %1 weeks</source>
        <translation>in diesem Protokoll 1 Einheit mit Sätzen oder Tests, in %1 Wochen</translation>
    </message>
    <message>
        <source>in this log %1 sessions with sets or tests, in %2 weeks</source>
        <translation>in diesem Protokoll %1 Einheiten mit Sätzen oder Tests, in %2 Wochen</translation>
    </message>
    <message>
        <source>in this log 1 session with sets or tests, in %1 weeks: %2 a week</source>
        <translation>in diesem Protokoll 1 Einheit mit Sätzen oder Tests, in %1 Wochen: %2 pro Woche</translation>
    </message>
    <message>
        <source>in this log %1 sessions with sets or tests, in %2 weeks: %3 a week</source>
        <translation>in diesem Protokoll %1 Einheiten mit Sätzen oder Tests, in %2 Wochen: %3 pro Woche</translation>
    </message>
    <message>
        <source>%1 was tested %2 than %3, all or some of it: part of a change may be its doing</source>
        <translation>%1 wurde, ganz oder zum Teil, anders getestet als %3 (%2): Ein Teil einer Änderung kann daran liegen</translation>
    </message>
    <message>
        <source>all or some of %1 was tested under other conditions than %2 (%3): part of a change may be their doing</source>
        <translation>%1 wurde, ganz oder zum Teil, unter anderen Bedingungen getestet als %2 (%3): Ein Teil einer Änderung kann daran liegen</translation>
    </message>
    <message>
        <source>Better or worse in something: %1 of %2 athletes (%3 of %4 readings; those of one athlete go together). Chance alone gives at most %5 such athletes.</source>
        <translation>In irgendetwas besser oder schlechter: %1 von %2 Athleten (%3 von %4 Befunden; die eines Athleten gehören zusammen). Der Zufall allein gibt höchstens %5 solche Athleten.</translation>
    </message>
    <message>
        <source>Mean change of %1 athletes %2 (%3 to %4): %5. With the noise of their own tests taken out, their changes still differ by an SD of %6.</source>
        <translation>Mittlere Änderung von %1 Athleten %2 (%3 bis %4): %5. Auch ohne die Streuung ihrer eigenen Tests unterscheiden sich ihre Änderungen noch mit einer SD von %6.</translation>
    </message>
    <message>
        <source>Mean change of %1 athletes %2 (%3 to %4): %5. Their changes differ by no more than the noise of their own tests.</source>
        <translation>Mittlere Änderung von %1 Athleten %2 (%3 bis %4): %5. Ihre Änderungen unterscheiden sich um nicht mehr als die Streuung ihrer eigenen Tests.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>no number of later tests makes it 80 %, for the earlier test was done once and cannot be done again: for the next block test %1 times before it and after it</source>
        <translation>keine Zahl späterer Tests bringt es auf 80 %, denn der frühere Test wurde einmal gemacht und lässt sich nicht nachholen: Für den nächsten Block %1-mal davor und danach testen</translation>
    </message>
    <message>
        <source>unclear at %1 (clear from %2 m/s)</source>
        <translation>unklar an %1 (klar ab %2 m/s)</translation>
    </message>
    <message>
        <source>%1 was lifted that day: its max is no less, though the interval begins under it</source>
        <translation>%1 wurden an dem Tag gehoben: sein Maximum ist nicht kleiner, auch wenn das Intervall darunter beginnt</translation>
    </message>
    <message>
        <source>All blocks at once, for what stands out among many; what is better or worse alone is so by itself, for what was asked before it was seen.</source>
        <translation>Alle Blöcke zugleich, für das, was unter vielem auffällt; was allein besser oder schlechter ist, ist es für sich genommen, für das, was gefragt war, ehe man es sah.</translation>
    </message>
    <message>
        <source>by the lines slower at all %1 loads, by %2 m/s</source>
        <translation>nach den Linien langsamer bei allen %1 Lasten, um %2 m/s</translation>
    </message>
    <message>
        <source>by the lines faster at all %1 loads, by %2 m/s</source>
        <translation>nach den Linien schneller bei allen %1 Lasten, um %2 m/s</translation>
    </message>
    <message>
        <source>by the lines faster at %1 of %2 loads, by %3 to %4 m/s</source>
        <translation>nach den Linien schneller bei %1 von %2 Lasten, um %3 bis %4 m/s</translation>
    </message>
    <message>
        <source>Estimated 1RM %1 (%2 %, days and bend: %3 to %4)</source>
        <translation>Geschätztes 1RM %1 (%2 %, Tage und Krümmung: %3 bis %4)</translation>
    </message>
    <message>
        <source>1RM to plan with %1, by this log&apos;s maxima (%2 %: %3 to %4); the line&apos;s own %5</source>
        <translation>1RM zum Planen %1, nach den Maxima dieses Protokolls (%2 %: %3 bis %4); das der Geraden %5</translation>
    </message>
    <message>
        <source>block against block, all blocks at once</source>
        <translation>Block gegen Block, alle Blöcke zugleich</translation>
    </message>
    <message>
        <source>Each change alone, for what was asked before it was seen. Overview, Whole season and Season read all blocks at once, for what stands out among many: their readings may differ.</source>
        <translation>Jede Änderung für sich: für das, wonach gefragt war, bevor es gesehen wurde. Überblick, Ganze Saison und Saison lesen alle Blöcke zugleich, für das, was unter vielem auffällt: Dort kann der Befund anders lauten.</translation>
    </message>
    <message>
        <source>%1 in %2 before it</source>
        <translation>%1 in %2 davor</translation>
    </message>
    <message>
        <source>none in %1 before it</source>
        <translation>keine in %1 davor</translation>
    </message>
    <message>
        <source>at %1 against %2 (%3), %4</source>
        <translation>bei %1 gegen %2 (%3), %4</translation>
    </message>
    <message>
        <source>none found beyond the scatter within a day</source>
        <translation>keine gefunden, die über die Streuung innerhalb eines Tages hinausgeht</translation>
    </message>
    <message>
        <source>%1 m/s day to day</source>
        <translation>%1 m/s von Tag zu Tag</translation>
    </message>
    <message>
        <source>from one test to another a change is clear from about %1 m/s up</source>
        <translation>von einem Test zum anderen ist eine Änderung ab etwa %1 m/s klar</translation>
    </message>
    <message>
        <source>No sets of this lift were measured by two devices at once. Enter the same sets as two sessions of one athlete and day, each with its device: then they are compared here.</source>
        <translation>Zu dieser Übung gibt es keine Sätze, die zwei Messgeräte zugleich gemessen haben. Dieselben Sätze als zwei Einheiten desselben Athleten und Tages eingeben, jede mit ihrem Messgerät: Dann werden sie hier verglichen.</translation>
    </message>
    <message>
        <source>%1, better alone: %2</source>
        <translation>%1, allein besser: %2</translation>
    </message>
    <message>
        <source>%1, worse alone: %2</source>
        <translation>%1, allein schlechter: %2</translation>
    </message>
    <message>
        <source>%1, better alone at %2: %3</source>
        <translation>%1, allein besser bei %2: %3</translation>
    </message>
    <message>
        <source>%1, worse alone at %2: %3</source>
        <translation>%1, allein schlechter bei %2: %3</translation>
    </message>
    <message>
        <source>%1 (%2, stands among all)</source>
        <translation>%1 (%2, bleibt unter allen)</translation>
    </message>
    <message>
        <source>%1 (%2, stands among all; tested %3)</source>
        <translation>%1 (%2, bleibt unter allen; getestet %3)</translation>
    </message>
    <message>
        <source>but clear beyond the noise at none of them (clear from %1 m/s)</source>
        <translation>aber bei keiner davon klar über dem Rauschen (klar ab %1 m/s)</translation>
    </message>
</context>
<context>
    <name>Plan</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 m/s</source>
        <translation>%1 m/s</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 (%2 sets)</source>
        <translation>%1 (%2 Sätze)</translation>
    </message>
    <message>
        <source>%1 (up to %2)</source>
        <translation>%1 (bis %2)</translation>
    </message>
    <message>
        <source>%1 sets of %2</source>
        <translation>%1 Sätze mit %2</translation>
    </message>
</context>
<context>
    <name>PlanChartWords</name>
    <message>
        <source>Load (%1)</source>
        <translation>Last (%1)</translation>
    </message>
    <message>
        <source>Fastest rep (m/s)</source>
        <translation>Schnellste Wiederholung (m/s)</translation>
    </message>
    <message>
        <source>m/s</source>
        <translation>m/s</translation>
    </message>
    <message>
        <source>%1: %2 m/s</source>
        <translation>%1: %2 m/s</translation>
    </message>
    <message>
        <source>stop at %1</source>
        <translation>Stopp bei %1</translation>
    </message>
    <message>
        <source>MVT %1</source>
        <translation>MVT %1</translation>
    </message>
    <message>
        <source>est. 1RM %1 (to plan with: %2)</source>
        <translation>gesch. 1RM %1 (zum Planen: %2)</translation>
    </message>
    <message>
        <source>est. 1RM %1</source>
        <translation>gesch. 1RM %1</translation>
    </message>
    <message>
        <source>not lifted that day</source>
        <translation>an dem Tag nicht gehoben</translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation>Last, %1</translation>
    </message>
    <message>
        <source>Fastest rep, m/s</source>
        <translation>Schnellste Wiederholung, m/s</translation>
    </message>
    <message>
        <source>Another day, m/s</source>
        <translation>Ein anderer Tag, m/s</translation>
    </message>
    <message>
        <source>Stop at, m/s</source>
        <translation>Stopp bei, m/s</translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation>Gewählt</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>gewählt</translation>
    </message>
    <message>
        <source>Nothing to plan yet</source>
        <translation>Noch nichts zu planen</translation>
    </message>
    <message>
        <source>○ a load that can be built</source>
        <translation>○ eine Last, die sich zusammenstellen lässt</translation>
    </message>
    <message>
        <source>band: one rep of another day</source>
        <translation>Band: eine Wiederholung an einem anderen Tag</translation>
    </message>
    <message>
        <source>dashes: stop the set here</source>
        <translation>Striche: Satz hier beenden</translation>
    </message>
    <message>
        <source>pale: over the estimate</source>
        <translation>blass: über der Schätzung</translation>
    </message>
</context>
<context>
    <name>QLineEdit</name>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Einfügen</translation>
    </message>
</context>
<context>
    <name>QPrintPreviewDialog</name>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
</context>
<context>
    <name>QProgressDialog</name>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Abbrechen</translation>
    </message>
</context>
<context>
    <name>RestOfRow</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1. F4 shows it under the row.</source>
        <translation>%1. F4 zeigt es unter der Zeile.</translation>
    </message>
    <message>
        <source>F4 shows under a row what has no column here: %1.</source>
        <translation>F4 zeigt unter einer Zeile, was hier keine Spalte hat: %1.</translation>
    </message>
</context>
<context>
    <name>Season</name>
    <message>
        <source>%1 at %2 (m/s)</source>
        <translation>%1 bei %2 (m/s)</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>baseline</source>
        <translation>Bezug</translation>
    </message>
    <message>
        <source>%1: %2 m/s (%3)</source>
        <translation>%1: %2 m/s (%3)</translation>
    </message>
    <message>
        <source>%1: %2 m/s</source>
        <translation>%1: %2 m/s</translation>
    </message>
    <message>
        <source>%1: seen %2 m/s</source>
        <translation>%1: gesehen %2 m/s</translation>
    </message>
    <message>
        <source>%1: no figure</source>
        <translation>%1: keine Zahl</translation>
    </message>
    <message>
        <source>the baseline</source>
        <translation>der Bezug</translation>
    </message>
    <message>
        <source>change %1 m/s (%2), %3</source>
        <translation>Änderung %1 m/s (%2), %3</translation>
    </message>
</context>
<context>
    <name>SeasonAskingText</name>
    <message>
        <source>Nothing of %1 yet.</source>
        <translation>Noch nichts von %1.</translation>
    </message>
    <message>
        <source>Type the first set under Floor. After two tests this page says what changed.</source>
        <translation>Den ersten Satz unter Halle eintippen. Nach zwei Tests sagt diese Seite, was sich verändert hat.</translation>
    </message>
    <message>
        <source>&amp;Type the first set</source>
        <translation>Ersten Sa&amp;tz eintippen</translation>
    </message>
    <message>
        <source>One test of %1: nothing to compare it with yet.</source>
        <translation>Ein Test von %1: noch nichts, womit er zu vergleichen wäre.</translation>
    </message>
    <message>
        <source>After a test on a second day this page says what changed.</source>
        <translation>Nach einem Test an einem zweiten Tag sagt diese Seite, was sich verändert hat.</translation>
    </message>
    <message>
        <source>&amp;Type the next test</source>
        <translation>Nächsten &amp;Test eintippen</translation>
    </message>
    <message>
        <source>Choose an athlete.</source>
        <translation>Einen Athleten wählen.</translation>
    </message>
    <message>
        <source>The list at the left has them all; F9 shows it where it is folded away.</source>
        <translation>In der Liste links stehen alle; F9 zeigt sie, wo sie zugeklappt ist.</translation>
    </message>
    <message>
        <source>No athlete yet.</source>
        <translation>Noch kein Athlet.</translation>
    </message>
    <message>
        <source>Add the first, then type a set under Floor. After two tests this page says what changed.</source>
        <translation>Den ersten hinzufügen, dann einen Satz unter Halle eintippen. Nach zwei Tests sagt diese Seite, was sich verändert hat.</translation>
    </message>
    <message>
        <source>Add an athlete…</source>
        <translation>Neuer Athlet…</translation>
    </message>
</context>
<context>
    <name>SeasonPages</name>
    <message>
        <source>To beware of, and where the figures come from</source>
        <translation>Was zu beachten ist und woher die Zahlen stammen</translation>
    </message>
    <message>
        <source>The last session&apos;s change: %1</source>
        <translation>Zur Änderung der letzten Einheit: %1</translation>
    </message>
    <message>
        <source>Season: %1, %2</source>
        <translation>Saison: %1, %2</translation>
    </message>
    <message>
        <source>At %1, %2 to %3</source>
        <translation>Bei %1, %2 bis %3</translation>
    </message>
    <message>
        <source>Speed at the load</source>
        <translation>Geschwindigkeit bei der Last</translation>
    </message>
    <message>
        <source>Maximum</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>%1, %2 at %3</source>
        <translation>%1, %2 bei %3</translation>
    </message>
</context>
<context>
    <name>SeasonRows</name>
    <message>
        <source>Device: %1</source>
        <translation>Messgerät: %1</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>Seen (m/s)</source>
        <translation>Beobachtet (m/s)</translation>
    </message>
    <message>
        <source>From the line (m/s)</source>
        <translation>Von der Geraden (m/s)</translation>
    </message>
    <message>
        <source>Interval</source>
        <translation>Intervall</translation>
    </message>
    <message>
        <source>Change (m/s)</source>
        <translation>Änderung (m/s)</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Estimated 1RM (%1)</source>
        <translation>Geschätztes 1RM (%1)</translation>
    </message>
    <message>
        <source>Measured 1RM (%1)</source>
        <translation>Gemessenes 1RM (%1)</translation>
    </message>
    <message>
        <source> (extrapolated)</source>
        <translation> (extrapoliert)</translation>
    </message>
    <message>
        <source>baseline</source>
        <translation>Bezug</translation>
    </message>
    <message>
        <source> (far)</source>
        <translation> (weit)</translation>
    </message>
    <message>
        <source>not bounded</source>
        <translation>nicht begrenzt</translation>
    </message>
    <message>
        <source>As if lines were straight: %1 m/s</source>
        <translation>Ohne Krümmung: %1 m/s</translation>
    </message>
    <message>
        <source>Interval, with noise and bend</source>
        <translation>Intervall mit Streuung und Krümmung</translation>
    </message>
    <message>
        <source>Felt at the load (RPE): %1</source>
        <translation>Gefühlt bei der Last (RPE): %1</translation>
    </message>
    <message>
        <source>RPE</source>
        <translation>RPE</translation>
    </message>
    <message>
        <source>%1 not lifted</source>
        <translation>%1 nicht geschafft</translation>
    </message>
    <message>
        <source>%1 not possible</source>
        <translation>%1 nicht möglich</translation>
    </message>
    <message>
        <source>not possible</source>
        <translation>nicht möglich</translation>
    </message>
    <message>
        <source>mean of 1 day</source>
        <translation>Mittel von 1 Tag</translation>
    </message>
    <message>
        <source>mean of %1 days</source>
        <translation>Mittel von %1 Tagen</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>From the line: %1 m/s</source>
        <translation>Aus der Geraden: %1 m/s</translation>
    </message>
    <message>
        <source>1RM by the line alone: %1</source>
        <translation>1RM aus der Geraden allein: %1</translation>
    </message>
    <message>
        <source>To plan with (%1)</source>
        <translation>Zum Planen (%1)</translation>
    </message>
    <message>
        <source>Line alone (%1)</source>
        <translation>Gerade allein (%1)</translation>
    </message>
    <message>
        <source>alone: %1</source>
        <comment>a reading</comment>
        <translation>allein: %1</translation>
    </message>
</context>
<context>
    <name>SeasonWords</name>
    <message>
        <source>seen at the load</source>
        <translation>bei der Last beobachtet</translation>
    </message>
    <message>
        <source>trend</source>
        <translation>Trend</translation>
    </message>
    <message>
        <source>measured 1RM</source>
        <translation>gemessenes 1RM</translation>
    </message>
    <message>
        <source>baseline</source>
        <translation>Bezug</translation>
    </message>
    <message>
        <source>Nothing to follow yet</source>
        <translation>Noch nichts zu verfolgen</translation>
    </message>
    <message>
        <source>1RM (%1)</source>
        <translation>1RM (%1)</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Interval (m/s)</source>
        <translation>Intervall (m/s)</translation>
    </message>
    <message>
        <source>Seen at the load (m/s)</source>
        <translation>Gesehen bei der Last (m/s)</translation>
    </message>
    <message>
        <source>Measured 1RM (%1)</source>
        <translation>Gemessenes 1RM (%1)</translation>
    </message>
    <message>
        <source>RPE</source>
        <translation>RPE</translation>
    </message>
    <message>
        <source>Against the baseline</source>
        <translation>Gegen den Bezug</translation>
    </message>
    <message>
        <source>%1 to %2, mean</source>
        <translation>%1 bis %2, Mittel</translation>
    </message>
    <message>
        <source>not lifted</source>
        <translation>nicht geschafft</translation>
    </message>
    <message>
        <source>not possible</source>
        <translation>nicht möglich</translation>
    </message>
    <message>
        <source>trend within a block</source>
        <translation>Trend innerhalb eines Blocks</translation>
    </message>
    <message>
        <source>from the line, %1</source>
        <translation>von der Geraden, %1</translation>
    </message>
    <message>
        <source>mean of a block, %1</source>
        <translation>Mittel eines Blocks, %1</translation>
    </message>
    <message>
        <source>extrapolated; 1RM: reach below 0.80</source>
        <translation>extrapoliert; 1RM: Reichweite unter 0,80</translation>
    </message>
    <message>
        <source>To plan with (%1)</source>
        <translation>Zum Planen (%1)</translation>
    </message>
    <message>
        <source>Line alone (%1)</source>
        <translation>Gerade allein (%1)</translation>
    </message>
    <message>
        <source>to plan with by the log’s maxima</source>
        <translation>zum Planen nach den Maxima des Protokolls</translation>
    </message>
    <message>
        <source>dashed, at the newest day: alone it is clear from ±%1 m/s</source>
        <translation>gestrichelt, am neuesten Tag: für sich ist er ab ±%1 m/s klar</translation>
    </message>
    <message>
        <source>1RM: reach below 0.80</source>
        <translation>1RM: Reichweite unter 0,80</translation>
    </message>
    <message>
        <source>extrapolated</source>
        <translation>extrapoliert</translation>
    </message>
    <message>
        <source>clear from ±%1 m/s, this day alone</source>
        <translation>klar ab ±%1 m/s, dieser Tag für sich</translation>
    </message>
    <message>
        <source>clear, this day alone</source>
        <translation>klar, dieser Tag für sich</translation>
    </message>
    <message>
        <source>by the log’s maxima</source>
        <translation>nach den Maxima des Protokolls</translation>
    </message>
    <message>
        <source>interval to plan with</source>
        <translation>Intervall zum Planen</translation>
    </message>
    <message>
        <source>reach below 0.80</source>
        <translation>Reichweite unter 0,80</translation>
    </message>
</context>
<context>
    <name>SessionChange</name>
    <message>
        <source>not noted</source>
        <translation>nicht vermerkt</translation>
    </message>
    <message numerus="yes">
        <source>Move the session from %1 to %2, %n day(s) away?</source>
        <translation>
            <numerusform>Die Einheit vom %1 auf den %2 verschieben, %n Tag entfernt?</numerusform>
            <numerusform>Die Einheit vom %1 auf den %2 verschieben, %n Tage entfernt?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Moved to %1 with %n set(s), from %2. Ctrl+Z moves it back.</source>
        <translation>
            <numerusform>Mit %n Satz auf den %1 verschoben, vom %2. Strg+Z verschiebt zurück.</numerusform>
            <numerusform>Mit %n Sätzen auf den %1 verschoben, vom %2. Strg+Z verschiebt zurück.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Device of %n set(s): now %1, was %2. Ctrl+Z changes it back.</source>
        <translation>
            <numerusform>Gerät von %n Satz: jetzt %1, vorher %2. Strg+Z ändert es zurück.</numerusform>
            <numerusform>Gerät von %n Sätzen: jetzt %1, vorher %2. Strg+Z ändert es zurück.</numerusform>
        </translation>
    </message>
    <message>
        <source>Change the session</source>
        <translation>Einheit ändern</translation>
    </message>
</context>
<context>
    <name>SetWords</name>
    <message>
        <source>Found %1, expected a number such as 62.5 or 0,92: digits and one decimal mark.</source>
        <translation>%1 gefunden, erwartet: eine Zahl wie 62,5 oder 0,92: Ziffern und ein Dezimalzeichen.</translation>
    </message>
    <message>
        <source>Found %1, expected one decimal mark: the comma is a decimal mark too, and there are no marks for thousands. Blanks go between numbers.</source>
        <translation>%1 gefunden, erwartet: ein Dezimalzeichen. Auch der Punkt ist ein Dezimalzeichen, Tausendertrennzeichen gibt es nicht. Zwischen Zahlen stehen Leerzeichen.</translation>
    </message>
    <message>
        <source>Found %1, expected digits after the decimal mark. Blanks go between numbers.</source>
        <translation>%1 gefunden, erwartet: Ziffern nach dem Dezimalzeichen. Zwischen Zahlen stehen Leerzeichen.</translation>
    </message>
    <message>
        <source>Found %1, expected the load alone: an x leaves out a rep and follows its speed.</source>
        <translation>%1 gefunden, erwartet: nur die Last. Ein x schließt eine Wiederholung aus und steht hinter deren Geschwindigkeit.</translation>
    </message>
    <message>
        <source>Found %1 among the speeds, expected a speed in m/s. The load stands first, and a ! for a true maximum follows it: 92.5! 0.18.</source>
        <translation>%1 unter den Geschwindigkeiten gefunden, erwartet: eine Geschwindigkeit in m/s. Die Last steht vorn, ein ! für ein echtes Maximum dahinter: 92,5! 0,18.</translation>
    </message>
    <message>
        <source>Found %1, expected a speed under 10 m/s, such as 0.92.</source>
        <translation>%1 gefunden, erwartet: eine Geschwindigkeit unter 10 m/s, etwa 0,92.</translation>
    </message>
    <message>
        <source>Found %1 in the load&apos;s place, expected the load first, then the speeds: 60 0.92 0.90.</source>
        <translation>%1 an der Stelle der Last gefunden, erwartet: erst die Last, dann die Geschwindigkeiten: 60 0,92 0,90.</translation>
    </message>
    <message>
        <source>Found %1 after the first rep of a true maximum, expected one rep: 92.5! 0.18.</source>
        <translation>%1 nach der ersten Wiederholung eines echten Maximums gefunden, erwartet: eine Wiederholung: 92,5! 0,18.</translation>
    </message>
    <message>
        <source>%1 m/s? Found %2, expected a speed under 10 m/s. Enter takes it as %1; Esc leaves it for you to correct.</source>
        <translation>%1 m/s? %2 gefunden, erwartet: eine Geschwindigkeit unter 10 m/s. Enter übernimmt %1; Esc lässt die Eingabe zum Berichtigen stehen.</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>kein Grund angegeben</translation>
    </message>
    <message>
        <source>%1 m/s?</source>
        <translation>%1 m/s?</translation>
    </message>
    <message>
        <source>Expected a load in %2, then the reps&apos; speeds in m/s: 60 0.92 0.90 0.88.</source>
        <translation>Erwartet: eine Last in %2, dann die Geschwindigkeiten der Wiederholungen in m/s: 60 0,92 0,90 0,88.</translation>
    </message>
    <message>
        <source>Found a load of %1, expected at most %2.</source>
        <translation>Last %1 gefunden, erwartet: höchstens %2.</translation>
    </message>
    <message>
        <source>A load of %1 %2? It looks like a speed. Enter takes it as the load; Esc leaves it for you to correct.</source>
        <translation>Eine Last von %1 %2? Das sieht nach einer Geschwindigkeit aus. Enter nimmt es als Last; Esc lässt es zum Korrigieren stehen.</translation>
    </message>
    <message>
        <source>Was the load forgotten? Found %1 in its place. Enter takes the speeds at the next load, %2; Esc leaves it for you to correct. A load of %1 is written %1%3.</source>
        <translation>Wurde die Last vergessen? An ihrer Stelle steht %1. Enter nimmt die Geschwindigkeiten bei der nächsten Last, %2; Esc lässt es zum Korrigieren stehen. Eine Last von %1 wird %1%3 geschrieben.</translation>
    </message>
    <message>
        <source>%1?</source>
        <translation>%1?</translation>
    </message>
    <message>
        <source>Enter takes it as typed; Esc leaves it for you to correct.</source>
        <translation>Enter übernimmt es wie eingegeben; Esc lässt es zum Berichtigen stehen.</translation>
    </message>
    <message>
        <source>Expected the reps&apos; speeds in m/s after the load (60 0.92 0.90 0.88), or - where it was not lifted (95 -).</source>
        <translation>Erwartet: nach der Last die Geschwindigkeiten der Wiederholungen in m/s (60 0,92 0,90 0,88), oder -, wo sie nicht geschafft wurde (95 -).</translation>
    </message>
    <message>
        <source>Found %1, expected a speed above 0. A load that was not lifted is typed 95 -; a rep that did not go up has no speed: leave it away and say so in a note (# last one missed).</source>
        <translation>Gefunden: %1, erwartet: eine Geschwindigkeit über 0. Eine nicht geschaffte Last wird 95 - getippt; eine Wiederholung, die nicht hochging, hat keine Geschwindigkeit: weglassen und in einer Notiz sagen (# letzte nicht geschafft).</translation>
    </message>
    <message>
        <source>Found %1 after the load, expected speeds, or - where it was not lifted: 95 -, 95 - # why.</source>
        <translation>Gefunden: %1 nach der Last, erwartet: Geschwindigkeiten, oder -, wo sie nicht geschafft wurde: 95 -, 95 - # warum.</translation>
    </message>
    <message>
        <source>Found %1 beside other figures: a load that was not lifted stands alone (95 - # why), and a set with speeds was lifted (95 0.31 # last one missed).</source>
        <translation>Gefunden: %1 neben anderen Zahlen. Eine nicht geschaffte Last steht allein (95 - # warum), und ein Satz mit Geschwindigkeiten wurde geschafft (95 0,31 # letzte nicht geschafft).</translation>
    </message>
    <message>
        <source>Found %1 in front: the load stands before it (95 -). Alone it says that the lift was not possible: - # why.</source>
        <translation>Gefunden: %1 am Anfang. Die Last steht davor (95 -). Allein sagt es, dass die Übung nicht möglich war: - # warum.</translation>
    </message>
    <message>
        <source>Found %1, expected the load alone before /: a load that was not possible is typed 100 / # why.</source>
        <translation>Gefunden: %1, erwartet: die Last allein vor /. Eine Last, die nicht möglich war, wird 100 / # warum getippt.</translation>
    </message>
    <message>
        <source>Found %1 without a load: a load that was not possible is typed 100 / # why, the lift - # why.</source>
        <translation>Gefunden: %1 ohne Last. Eine Last, die nicht möglich war, wird 100 / # warum getippt, die Übung - # warum.</translation>
    </message>
    <message>
        <source>Expected # and why it was not possible, at the end.</source>
        <translation>Erwartet: # und am Ende, warum es nicht möglich war.</translation>
    </message>
    <message>
        <source>Found %1, expected an effort from 1 to 10 in halves: @8 or @8.5.</source>
        <translation>Gefunden: %1, erwartet: eine Anstrengung von 1 bis 10 in halben Schritten: @8 oder @8,5.</translation>
    </message>
    <message>
        <source>Found a second effort, %1; expected one for the set.</source>
        <translation>Gefunden: eine zweite Anstrengung, %1; erwartet: eine für den Satz.</translation>
    </message>
    <message>
        <source>Found %1 in front, expected the load first: 60 0.92 @8.</source>
        <translation>Gefunden: %1 am Anfang, erwartet: zuerst die Last: 60 0,92 @8.</translation>
    </message>
    <message>
        <source>Found %1: l, r and b are sides, and a lift has none. A name takes two letters.</source>
        <translation>Gefunden: %1. l, r und b sind Seiten, und eine Übung hat keine. Ein Name braucht zwei Buchstaben.</translation>
    </message>
    <message>
        <source>Nobody here is called %1.</source>
        <translation>Hier heißt niemand %1.</translation>
    </message>
    <message>
        <source>Found %1: a name takes two letters.</source>
        <translation>Gefunden: %1. Ein Name braucht zwei Buchstaben.</translation>
    </message>
    <message>
        <source>Down puts %1 in its place.</source>
        <translation>Pfeil ab setzt %1 an seine Stelle.</translation>
    </message>
</context>
<context>
    <name>SquadForestWords</name>
    <message>
        <source>extrapolated</source>
        <translation>extrapoliert</translation>
    </message>
    <message>
        <source>Change of the estimated 1RM (%1)</source>
        <translation>Änderung des geschätzten 1RM (%1)</translation>
    </message>
    <message>
        <source>Change of speed at %1 (m/s)</source>
        <translation>Geschwindigkeitsänderung bei %1 (m/s)</translation>
    </message>
    <message>
        <source>Nobody to compare yet</source>
        <translation>Noch niemand zu vergleichen</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athlet</translation>
    </message>
    <message>
        <source>Interval</source>
        <translation>Intervall</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>not comparable</source>
        <translation>nicht vergleichbar</translation>
    </message>
    <message>
        <source>the same drawn to all</source>
        <translation>dieselbe, zum Mittel hin gezogen</translation>
    </message>
    <message>
        <source>mean of all</source>
        <translation>Mittel aller</translation>
    </message>
    <message>
        <source>All (%1)</source>
        <translation>Alle (%1)</translation>
    </message>
    <message>
        <source>Drawn to all</source>
        <translation>Zu allen gezogen</translation>
    </message>
    <message>
        <source>later − earlier, %1</source>
        <translation>später − früher, %1</translation>
    </message>
</context>
<context>
    <name>SquadPaper</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>the session nearest to %1 (%2)</source>
        <translation>die Einheit, die dem %1 am nächsten liegt (%2)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Squad: %1</source>
        <translation>Kader: %1</translation>
    </message>
    <message>
        <source>Change from %1 to %2</source>
        <translation>Änderung von %1 zu %2</translation>
    </message>
    <message>
        <source>To beware of</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>Squad: %1, from %2 to %3</source>
        <translation>Kader: %1, von %2 bis %3</translation>
    </message>
</context>
<context>
    <name>SquadRows</name>
    <message>
        <source>; extrapolated</source>
        <translation>; extrapoliert</translation>
    </message>
    <message>
        <source>; far from any load</source>
        <translation>; weit von jeder Last</translation>
    </message>
    <message>
        <source>; device corrected</source>
        <translation>; Messgerät korrigiert</translation>
    </message>
    <message>
        <source>; two devices</source>
        <translation>; zwei Messgeräte</translation>
    </message>
    <message>
        <source>Estimated 1RM</source>
        <translation>Geschätztes 1RM</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athlet</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Change (%1)</source>
        <translation>Änderung (%1)</translation>
    </message>
    <message>
        <source>%1 interval</source>
        <translation>Intervall (%1)</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Smallest</source>
        <translation>Kleinste</translation>
    </message>
    <message>
        <source>%1 sessions</source>
        <translation>%1 Einheiten</translation>
    </message>
    <message>
        <source>Drawn to all</source>
        <translation>Zu allen gezogen</translation>
    </message>
    <message>
        <source>All (%1)</source>
        <translation>Alle (%1)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Drawn to all (moved towards the mean of all by what noise may be): %1 (%2)</source>
        <translation>Zu allen gezogen (zum Mittel aller hin verschoben um das, was Streuung sein kann): %1 (%2)</translation>
    </message>
    <message>
        <source>Smallest change that matters: the mean of the athletes&apos; own</source>
        <translation>Kleinste bedeutsame Änderung: das Mittel der eigenen aller Athleten</translation>
    </message>
    <message>
        <source>Drawn to all, every athlete comes to the mean of all: %1 %2.</source>
        <translation>Zu allen gezogen steht jeder Athlet beim Mittel aller: %1 %2.</translation>
    </message>
</context>
<context>
    <name>StationWords</name>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beide</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 ×</source>
        <translation>%1 ×</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: not possible today.</source>
        <translation>%1: heute nicht möglich.</translation>
    </message>
    <message>
        <source>%1: done.</source>
        <translation>%1: fertig.</translation>
    </message>
    <message>
        <source>%1: %2 next.</source>
        <translation>%1: als Nächstes %2.</translation>
    </message>
    <message>
        <source>%1: set %2.</source>
        <translation>%1: Satz %2.</translation>
    </message>
    <message>
        <source>%1 of %2 attempts done.</source>
        <translation>%1 von %2 Versuchen gemacht.</translation>
    </message>
    <message>
        <source>not possible</source>
        <translation>nicht möglich</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>a true maximum</source>
        <translation>ein echtes Maximum</translation>
    </message>
    <message>
        <source>not lifted</source>
        <translation>nicht geschafft</translation>
    </message>
    <message>
        <source>1 rep</source>
        <translation>1 Wiederholung</translation>
    </message>
    <message>
        <source>%1 reps</source>
        <translation>%1 Wiederholungen</translation>
    </message>
    <message>
        <source>fastest %1 m/s</source>
        <translation>schnellste %1 m/s</translation>
    </message>
    <message>
        <source>felt %1</source>
        <translation>gefühlt %1</translation>
    </message>
    <message>
        <source>not possible: %1</source>
        <translation>nicht möglich: %1</translation>
    </message>
    <message>
        <source>%1 not possible</source>
        <translation>%1 nicht möglich</translation>
    </message>
    <message>
        <source>reads as: %1</source>
        <translation>gelesen als: %1</translation>
    </message>
    <message>
        <source>Whose is it: %1? Type more of the name.</source>
        <translation>Wer ist gemeint: %1? Mehr vom Namen tippen.</translation>
    </message>
</context>
<context>
    <name>Store</name>
    <message>
        <source>PostgreSQL&apos;s library is not on this machine</source>
        <translation>PostgreSQLs Bibliothek fehlt auf diesem Rechner</translation>
    </message>
    <message>
        <source>no machine of that name is known</source>
        <translation>kein Rechner dieses Namens ist bekannt</translation>
    </message>
    <message>
        <source>nobody answers there</source>
        <translation>niemand antwortet dort</translation>
    </message>
    <message>
        <source>it is starting, or full</source>
        <translation>er startet gerade oder ist voll belegt</translation>
    </message>
    <message>
        <source>wrong password, or no such login</source>
        <translation>falsches Passwort oder keine solche Anmeldung</translation>
    </message>
    <message>
        <source>no password was found</source>
        <translation>kein Passwort gefunden</translation>
    </message>
    <message>
        <source>it does not let this login in</source>
        <translation>er lässt diese Anmeldung nicht ein</translation>
    </message>
    <message>
        <source>no such database</source>
        <translation>keine solche Datenbank</translation>
    </message>
    <message>
        <source>its certificate does not fit</source>
        <translation>sein Zertifikat passt nicht</translation>
    </message>
    <message>
        <source>it does not encrypt</source>
        <translation>er verschlüsselt nicht</translation>
    </message>
    <message>
        <source>there is no store of this log</source>
        <translation>dort ist kein Speicher dieses Protokolls</translation>
    </message>
    <message>
        <source>it is of another version</source>
        <translation>er ist von einer anderen Version</translation>
    </message>
    <message>
        <source>this login has no right to it</source>
        <translation>diese Anmeldung hat kein Recht darauf</translation>
    </message>
    <message>
        <source>its disk is full</source>
        <translation>sein Datenträger ist voll</translation>
    </message>
    <message>
        <source>it is busy</source>
        <translation>er ist belegt</translation>
    </message>
    <message>
        <source>the connection was lost</source>
        <translation>die Verbindung ging verloren</translation>
    </message>
    <message>
        <source>it refused</source>
        <translation>er lehnte ab</translation>
    </message>
    <message>
        <source>the log is open for reading only</source>
        <translation>das Protokoll ist nur zum Lesen geöffnet</translation>
    </message>
    <message>
        <source>the log is damaged</source>
        <translation>das Protokoll ist beschädigt</translation>
    </message>
    <message>
        <source>this disk is full</source>
        <translation>dieser Datenträger ist voll</translation>
    </message>
    <message>
        <source>the log is busy</source>
        <translation>das Protokoll ist belegt</translation>
    </message>
    <message>
        <source>the log could not be read or written</source>
        <translation>das Protokoll ließ sich nicht lesen oder schreiben</translation>
    </message>
    <message numerus="yes">
        <source>%n things wait</source>
        <translation>
            <numerusform>%n Sache wartet</numerusform>
            <numerusform>%n Sachen warten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n choices are open</source>
        <translation>
            <numerusform>%n Wahl ist offen</numerusform>
            <numerusform>%n Wahlen sind offen</numerusform>
        </translation>
    </message>
    <message>
        <source>This log meets the store %1 at %2 as %3; what is new here goes to %4.</source>
        <translation>Dieses Protokoll gleicht sich mit dem Speicher %1 auf %2 ab, angemeldet als %3; was hier neu ist, geht an %4.</translation>
    </message>
    <message>
        <source>This log is open for reading only: it meets no store.</source>
        <translation>Dieses Protokoll ist nur zum Lesen geöffnet: Es gleicht sich mit keinem Speicher ab.</translation>
    </message>
    <message>
        <source>This log is damaged: it meets no store, so that nothing of the damage goes to others.</source>
        <translation>Dieses Protokoll ist beschädigt: Es gleicht sich mit keinem Speicher ab, damit nichts vom Schaden zu anderen gelangt.</translation>
    </message>
    <message>
        <source>something is wrong</source>
        <translation>etwas stimmt nicht</translation>
    </message>
    <message>
        <source>Meeting the store…</source>
        <translation>Abgleich mit dem Speicher…</translation>
    </message>
    <message>
        <source>The store was not met yet</source>
        <translation>Noch kein Abgleich mit dem Speicher</translation>
    </message>
    <message>
        <source>Met the store at %1</source>
        <translation>Abgleich mit dem Speicher um %1</translation>
    </message>
    <message>
        <source>Met the store on %1</source>
        <translation>Abgleich mit dem Speicher am %1</translation>
    </message>
    <message>
        <source>Meeting…</source>
        <translation>Abgleich…</translation>
    </message>
    <message>
        <source>Store not met</source>
        <translation>Kein Abgleich</translation>
    </message>
    <message>
        <source>Store: choices are open</source>
        <translation>Speicher: Wahlen sind offen</translation>
    </message>
    <message>
        <source>Store met</source>
        <translation>Abgeglichen</translation>
    </message>
    <message>
        <source>It was not met since %1. %2</source>
        <translation>Kein Abgleich seit %1. %2</translation>
    </message>
    <message>
        <source>Last meeting: %1.</source>
        <translation>Letzter Abgleich: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n things wait, %1 of them not this login&apos;s to write: they stay in this log alone.</source>
        <translation>
            <numerusform>%n Sache wartet, %1 davon darf diese Anmeldung nicht schreiben: Sie bleibt allein in diesem Protokoll.</numerusform>
            <numerusform>%n Sachen warten, %1 davon darf diese Anmeldung nicht schreiben: Sie bleiben allein in diesem Protokoll.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n things wait for the next meeting.</source>
        <translation>
            <numerusform>%n Sache wartet auf den nächsten Abgleich.</numerusform>
            <numerusform>%n Sachen warten auf den nächsten Abgleich.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing waits.</source>
        <translation>Nichts wartet.</translation>
    </message>
    <message>
        <source>Last news, %1: %2 new, %3 changed, %4 removed came; %5 went out (athletes, sessions, sets and all else together).</source>
        <translation>Zuletzt Neues, %1: %2 neu, %3 geändert, %4 entfernt kamen; %5 gingen hinaus (Athleten, Einheiten, Sätze und alles andere zusammen).</translation>
    </message>
    <message>
        <source>The store had gone back to a backup, and was told again what it lacked.</source>
        <translation>Der Speicher war auf eine Sicherung zurückgegangen; was ihm fehlte, wurde ihm noch einmal gegeben.</translation>
    </message>
    <message>
        <source>departed</source>
        <translation>gegangen</translation>
    </message>
    <message>
        <source>to another squad; what was not sent stays here</source>
        <translation>in einen anderen Kader; was nicht gesendet war, bleibt hier</translation>
    </message>
    <message>
        <source>to another squad</source>
        <translation>in einen anderen Kader</translation>
    </message>
    <message>
        <source>opened</source>
        <translation>geöffnet</translation>
    </message>
    <message>
        <source>a squad that this login sees now</source>
        <translation>ein Kader, den diese Anmeldung jetzt sieht</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>a squad that this login sees no more; what came of it stays</source>
        <translation>ein Kader, den diese Anmeldung nicht mehr sieht; was davon kam, bleibt</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>stays in the store, and is looked at again next time</source>
        <translation>bleibt im Speicher und wird beim nächsten Mal wieder angesehen</translation>
    </message>
    <message>
        <source>This log meets the store %1 at %2 as %3.</source>
        <translation>Dieses Protokoll gleicht sich mit dem Speicher %1 auf %2 ab, angemeldet als %3.</translation>
    </message>
    <message>
        <source>This log meets the store %1.</source>
        <translation>Dieses Protokoll gleicht sich mit dem Speicher %1 ab.</translation>
    </message>
    <message>
        <source>It is not tried again by itself: Log, Shared store, Meet now does.</source>
        <translation>Von selbst wird es nicht wieder versucht, sondern erst mit Protokoll, Gemeinsamer Speicher, Jetzt abgleichen.</translation>
    </message>
    <message>
        <source>Store not met since %1: %2</source>
        <translation>Kein Abgleich mit dem Speicher seit %1: %2</translation>
    </message>
    <message>
        <source>Store not reached since %1: %2</source>
        <translation>Speicher seit %1 nicht erreicht: %2</translation>
    </message>
    <message>
        <source>last met: %1</source>
        <translation>letzter Abgleich: %1</translation>
    </message>
    <message>
        <source>it was not met yet</source>
        <translation>noch kein Abgleich</translation>
    </message>
    <message>
        <source>work goes on</source>
        <translation>die Arbeit geht weiter</translation>
    </message>
    <message>
        <source>Store not met; choices are open</source>
        <translation>Kein Abgleich; Wahlen sind offen</translation>
    </message>
    <message>
        <source>Last news, %1: in the list.</source>
        <translation>Zuletzt Neues, %1: in der Liste.</translation>
    </message>
    <message>
        <source>it waits until nothing is entered for a moment</source>
        <translation>er wartet, bis einen Augenblick lang nichts eingetragen wird</translation>
    </message>
</context>
<context>
    <name>Tutorial</name>
    <message>
        <source>Open the sample</source>
        <translation>Das Beispiel öffnen</translation>
    </message>
    <message>
        <source>%1 opens an invented rowing squad. In winter a flood took the heavy plates of its weights room: for one block nobody could load more than what was left. What opens is a copy of your own; nothing that you try can spoil anything.</source>
        <translation>%1 öffnet einen erfundenen Ruderkader. Im Winter nahm ein Hochwasser die schweren Scheiben seines Kraftraums mit: Einen Block lang konnte niemand mehr auflegen, als übrig war. Was sich öffnet, ist eine eigene Kopie; beim Ausprobieren kann nichts verloren gehen.</translation>
    </message>
    <message>
        <source>One athlete at a glance</source>
        <translation>Eine Athletin auf einen Blick</translation>
    </message>
    <message>
        <source>At the left press %1. The sentence on top says what the last block changed in everything that she was tested in; the table below proves it, a line a test. &lt;i&gt;%2&lt;/i&gt; is no failure: beside it stands the change from which such tests would have shown one.</source>
        <translation>Links %1 drücken. Der Satz oben sagt, was der letzte Block in allem verändert hat, worin sie getestet wurde; die Tabelle darunter belegt es, eine Zeile je Test. &lt;i&gt;%2&lt;/i&gt; ist kein Versagen: Daneben steht, ab welcher Änderung solche Tests eine gezeigt hätten.</translation>
    </message>
    <message>
        <source>Two days, one sentence</source>
        <translation>Zwei Tage, ein Satz</translation>
    </message>
    <message>
        <source>Type a ladder</source>
        <translation>Eine Leiter eintippen</translation>
    </message>
    <message>
        <source>Press %1. A set is one line: the load, then the speed of every rep, and Enter. Type %2, %3, %4 and %5. Each point lands on today&apos;s line beside that of last time, &lt;i&gt;%6&lt;/i&gt; says what comes next, and the estimated 1RM grows an interval from the third load on.</source>
        <translation>%1 drücken. Ein Satz ist eine Zeile: die Last, dann die Geschwindigkeit jeder Wiederholung, und Enter. Nacheinander tippen: %2, %3, %4 und %5. Jeder Punkt landet auf der Geraden von heute neben der vom letzten Mal, &lt;i&gt;%6&lt;/i&gt; sagt, was folgt, und das geschätzte 1RM hat ab der dritten Last ein Intervall.</translation>
    </message>
    <message>
        <source>A slip is asked about</source>
        <translation>Nach einem Vertipper wird gefragt</translation>
    </message>
    <message>
        <source>Type %1, as happens between two sets. Whether &lt;i&gt;%2&lt;/i&gt; was meant is asked below the line, and nothing is written before you say so.</source>
        <translation>%1 tippen, wie es zwischen zwei Sätzen vorkommt. Unter der Zeile wird gefragt, ob &lt;i&gt;%2&lt;/i&gt; gemeint war, und bis zur Antwort wird nichts geschrieben.</translation>
    </message>
    <message>
        <source>Put right, take back</source>
        <translation>Berichtigen, zurücknehmen</translation>
    </message>
    <message>
        <source>&lt;kbd&gt;Esc&lt;/kbd&gt; says no, and the line is yours to mend: %1. What should not have been written is taken back by &lt;kbd&gt;%2&lt;/kbd&gt;, one step after the other: the set at 70 kg is gone again.</source>
        <translation>&lt;kbd&gt;Esc&lt;/kbd&gt; heißt nein, und die Zeile lässt sich berichtigen: %1. Was nicht hätte geschrieben werden sollen, nimmt &lt;kbd&gt;%2&lt;/kbd&gt; zurück, Schritt für Schritt: Der Satz mit 70 kg ist wieder weg.</translation>
    </message>
    <message>
        <source>How far to trust it</source>
        <translation>Wie weit ihm zu trauen ist</translation>
    </message>
    <message>
        <source>Press %1. Every session has its line, its estimated 1RM and the interval to plan with. &lt;i&gt;%2&lt;/i&gt; is the heaviest load lifted as a share of the estimate: the smaller it is, the further the line was drawn out.</source>
        <translation>%1 drücken. Jede Einheit hat ihre Gerade, ihr geschätztes 1RM und das Intervall zum Planen. &lt;i&gt;%2&lt;/i&gt; ist die schwerste gehobene Last als Anteil der Schätzung: Je kleiner sie ist, desto weiter wurde die Gerade verlängert.</translation>
    </message>
    <message>
        <source>Loads for the next block</source>
        <translation>Lasten für den nächsten Block</translation>
    </message>
    <message>
        <source>Press %1. An aim, 70 % of the estimated 1RM, becomes loads that the plates at hand can build, with the speed to expect and the speed to stop at. The tab %2 says which ladder would settle most of what is unclear.</source>
        <translation>%1 drücken. Aus einem Ziel, 70 % des geschätzten 1RM, werden Lasten, die sich mit den vorhandenen Scheiben zusammenstellen lassen, mit der erwarteten Geschwindigkeit und der, bei der Schluss ist. Der Reiter %2 sagt, welche Leiter am meisten von dem klären würde, was unklar ist.</translation>
    </message>
    <message>
        <source>The whole season</source>
        <translation>Die ganze Saison</translation>
    </message>
    <message>
        <source>Press %1: all that was measured, a column a training block, each read against the first and against the one before.</source>
        <translation>%1 drücken: alles, was gemessen wurde, eine Spalte je Trainingsblock, jeder gegen den ersten und gegen den davor gelesen.</translation>
    </message>
    <message>
        <source>The squad</source>
        <translation>Der Kader</translation>
    </message>
    <message>
        <source>Press %1: everybody&apos;s change of one lift on one axis, their mean, and how many readings chance alone would give.</source>
        <translation>%1 drücken: die Änderung aller in einer Übung auf einer Achse, ihr Mittel, und wie viele Befunde allein der Zufall ergäbe.</translation>
    </message>
    <message>
        <source>Your own</source>
        <translation>Das eigene Protokoll</translation>
    </message>
    <message>
        <source>%1 begins your own log, one file wherever you want it; %2 brings in the tables that you have. What a page shows goes to paper by %3 and %4, and everything comes out again by %5. Each set is on disk when it is typed; %6 makes a checked copy for a stick. How every figure is made, and from which paper, is told by %7.</source>
        <translation>%1 beginnt ein eigenes Protokoll, eine Datei am gewünschten Ort; %2 holt vorhandene Tabellen herein. Was eine Seite zeigt, kommt mit %3 und %4 aufs Papier, und alles kommt mit %5 wieder heraus. Jeder Satz ist gespeichert, sobald er getippt ist; %6 legt eine geprüfte Kopie an, etwa für einen Stick. Wie jede Zahl entsteht und aus welcher Arbeit, sagt %7.</translation>
    </message>
    <message>
        <source>Ten minutes with the sample log. Words in bold are there to press, in that order; the help stays open beside the window.</source>
        <translation>Zehn Minuten mit dem Beispielprotokoll. Was fett steht, wird gedrückt, in dieser Reihenfolge; die Hilfe bleibt neben dem Fenster offen.</translation>
    </message>
    <message>
        <source>Press %1 and choose %2; %3 %4, %5 %6. One sentence says what changed, by load and in the 1RM. In the chart a bar that does not touch zero is a change; a grey band is what is too small to matter.</source>
        <translation>%1 drücken und %2 wählen; %3 %4, %5 %6. Ein Satz sagt, was sich geändert hat, je Last und im 1RM. Im Diagramm ist ein Balken, der die Null nicht berührt, eine Änderung; das graue Band ist, was zu klein ist, um zu zählen.</translation>
    </message>
</context>
<context>
    <name>Units</name>
    <message>
        <source>%1 to %2</source>
        <extracomment>an interval: low to high</extracomment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>how a date is written, in QLocale&apos;s letters; German: d. MMM yyyy</extracomment>
        <translation>d. MMM yyyy</translation>
    </message>
</context>
<context>
    <name>WholeSeasonText</name>
    <message>
        <source>%1: whole season, %2 to %3</source>
        <translation>%1: ganze Saison, %2 bis %3</translation>
    </message>
    <message>
        <source>To beware of</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>What such a season can show, and what it cannot</source>
        <translation>Was eine solche Saison zeigen kann und was nicht</translation>
    </message>
    <message>
        <source>%1: whole season</source>
        <translation>%1: ganze Saison</translation>
    </message>
    <message>
        <source>What was done in the blocks</source>
        <translation>Was in den Blöcken getan wurde</translation>
    </message>
    <message>
        <source>%1: notes on the whole season</source>
        <translation>%1: Anmerkungen zur ganzen Saison</translation>
    </message>
</context>
<context>
    <name>Wording</name>
    <message>
        <source>Set one with the lift.</source>
        <translation>Sie wird bei der Übung festgelegt.</translation>
    </message>
</context>
<context>
    <name>format</name>
    <message>
        <source>mean velocity</source>
        <translation>mittlere Geschwindigkeit</translation>
    </message>
    <message>
        <source>mean propulsive velocity</source>
        <translation>mittlere propulsive Geschwindigkeit</translation>
    </message>
    <message>
        <source>peak velocity</source>
        <translation>Spitzengeschwindigkeit</translation>
    </message>
</context>
<context>
    <name>sessionview</name>
    <message>
        <source>%1 (m/s)</source>
        <translation>%1 (m/s)</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::AboutDialog</name>
    <message>
        <source>About Slopebook</source>
        <translation>Über Slopebook</translation>
    </message>
    <message>
        <source>Slopebook</source>
        <translation>Slopebook</translation>
    </message>
    <message>
        <source>Load-velocity lines, estimated 1RM with an honest interval, and what changed between sessions.</source>
        <translation>Last-Geschwindigkeits-Geraden, das geschätzte 1RM mit ehrlichem Intervall, und was sich zwischen Einheiten geändert hat.</translation>
    </message>
    <message>
        <source>Free software under the GNU General Public License, version 3 or later, without any warranty.</source>
        <translation>Freie Software unter der GNU General Public License, Version 3 oder später, ohne jede Gewährleistung.</translation>
    </message>
    <message>
        <source>Made with</source>
        <translation>Gemacht mit</translation>
    </message>
    <message>
        <source>Licence</source>
        <translation>Lizenz</translation>
    </message>
    <message>
        <source>To cite it:</source>
        <translation>So wird es zitiert:</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::AgreementView</name>
    <message>
        <source>Devices compared</source>
        <translation>Verglichene Messgeräte</translation>
    </message>
    <message>
        <source>What the devices differ by</source>
        <translation>Worin sich die Messgeräte unterscheiden</translation>
    </message>
    <message>
        <source>Figures of the agreement</source>
        <translation>Kennwerte der Übereinstimmung</translation>
    </message>
    <message>
        <source>Sets seen by both devices</source>
        <translation>Sätze, die beide Messgeräte gemessen haben</translation>
    </message>
    <message>
        <source>&amp;Devices</source>
        <translation>&amp;Messgeräte</translation>
    </message>
    <message>
        <source>Choose a lift.</source>
        <translation>Eine Übung wählen.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::AthleteDialog</name>
    <message>
        <source>Change athlete</source>
        <translation>Athlet ändern</translation>
    </message>
    <message>
        <source>Add athlete</source>
        <translation>Neuer Athlet</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>Expected a name.</source>
        <translation>Erwartet: ein Name.</translation>
    </message>
    <message>
        <source>The log has %1: is that the same athlete? If not, OK again takes the name as it stands.</source>
        <translation>Das Protokoll hat %1: Ist das derselbe Athlet? Wenn nicht, übernimmt ein zweites OK den Namen, wie er dasteht.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::AttemptsView</name>
    <message>
        <source>What a comparison rests on: where it changed, the comparison says so.</source>
        <translation>Worauf ein Vergleich beruht: Hat sich etwas geändert, sagt es der Vergleich.</translation>
    </message>
    <message>
        <source>S&amp;urface</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>&amp;Device</source>
        <translation>&amp;Messgerät</translation>
    </message>
    <message>
        <source>Techni&amp;que</source>
        <translation>Te&amp;chnik</translation>
    </message>
    <message>
        <source>Answer to what was typed</source>
        <translation>Antwort auf die Eingabe</translation>
    </message>
    <message>
        <source>Attempts</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>Values of the day</source>
        <translation>Tageswerte</translation>
    </message>
    <message>
        <source>Found %1, expected %2.</source>
        <translation>%1 gefunden, erwartet: %2.</translation>
    </message>
    <message>
        <source>add attempts</source>
        <translation>Versuche hinzufügen</translation>
    </message>
    <message>
        <source>Make a session first: New session today.</source>
        <translation>Erst eine Einheit anlegen: Neue Einheit heute.</translation>
    </message>
    <message>
        <source>note a gap</source>
        <translation>Lücke vermerken</translation>
    </message>
    <message>
        <source>Leave the attempt out</source>
        <translation>Versuch ausschließen</translation>
    </message>
    <message>
        <source>Why does it not count?</source>
        <translation>Warum zählt er nicht?</translation>
    </message>
    <message>
        <source>include attempt</source>
        <translation>Versuch wieder werten</translation>
    </message>
    <message>
        <source>exclude attempt</source>
        <translation>Versuch ausschließen</translation>
    </message>
    <message>
        <source>remove attempt</source>
        <translation>Versuch entfernen</translation>
    </message>
    <message>
        <source>remove gap</source>
        <translation>Lücke entfernen</translation>
    </message>
    <message>
        <source>a lift</source>
        <translation>eine Übung</translation>
    </message>
    <message>
        <source>not possible</source>
        <translation>nicht möglich</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>As read</source>
        <translation>Abgelesen</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Better side</source>
        <translation>Bessere Seite</translation>
    </message>
    <message>
        <source>Choose an athlete.</source>
        <translation>Einen Athleten wählen.</translation>
    </message>
    <message>
        <source>No session yet: make one with New session today.</source>
        <translation>Noch keine Einheit: mit Neue Einheit heute anlegen.</translation>
    </message>
    <message>
        <source>Tests…</source>
        <translation>Tests…</translation>
    </message>
    <message>
        <source>A double click on the attempt does the same</source>
        <translation>Ein Doppelklick auf den Versuch bewirkt dasselbe</translation>
    </message>
    <message>
        <source>Change the attempt</source>
        <translation>Versuch ändern</translation>
    </message>
    <message>
        <source>%1, attempt %2:</source>
        <translation>%1, Versuch %2:</translation>
    </message>
    <message>
        <source>One attempt was expected.</source>
        <translation>Ein Versuch wird erwartet.</translation>
    </message>
    <message>
        <source>change attempt</source>
        <translation>Versuch ändern</translation>
    </message>
    <message>
        <source>, 1 attempt</source>
        <translation>, 1 Versuch</translation>
    </message>
    <message>
        <source>, %1 attempts</source>
        <translation>, %1 Versuche</translation>
    </message>
    <message>
        <source>New session toda&amp;y</source>
        <translation>&amp;Neue Einheit heute</translation>
    </message>
    <message>
        <source>Sessi&amp;on</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>F&amp;rom a trace…</source>
        <translation>Messkurve &amp;lesen…</translation>
    </message>
    <message>
        <source>Foot&amp;wear</source>
        <translation>Schuhwer&amp;k</translation>
    </message>
    <message>
        <source>Te&amp;st</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>A&amp;ttempts</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>Cha&amp;nge…</source>
        <translation>Än&amp;dern…</translation>
    </message>
    <message>
        <source>Leave out or take &amp;in again…</source>
        <translation>Ausschl&amp;ießen oder wieder werten…</translation>
    </message>
    <message>
        <source>Re&amp;move</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>change conditions</source>
        <translation>Bedingungen ändern</translation>
    </message>
    <message>
        <source>take the conditions over</source>
        <translation>Bedingungen übernehmen</translation>
    </message>
    <message>
        <source>The conditions of the tests are taken over from %1: change what differs.</source>
        <translation>Die Bedingungen der Tests sind vom %1 übernommen: bitte ändern, was abweicht.</translation>
    </message>
    <message>
        <source>a reason, and this day is read against no other</source>
        <translation>ein Grund, und dieser Tag wird mit keinem anderen verglichen</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Not comparable, because</source>
        <translation>Nicht vergleichbar, weil</translation>
    </message>
    <message>
        <source>No conditions yet</source>
        <translation>Noch keine Bedingungen</translation>
    </message>
    <message>
        <source>Conditions: %1</source>
        <translation>Bedingungen: %1</translation>
    </message>
    <message>
        <source>Conditions: %1, and %2 more</source>
        <translation>Bedingungen: %1 und %2 weitere</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Bedingungen</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::BackupsDialog</name>
    <message>
        <source>Backups</source>
        <translation>Sicherungen</translation>
    </message>
    <message>
        <source>There is no backup of this log yet. One is made when the log is opened and the last is over a day old; they are kept in %1.</source>
        <translation>Von diesem Protokoll gibt es noch keine Sicherung. Eine wird beim Öffnen angelegt, wenn die letzte älter als ein Tag ist; sie liegen in %1.</translation>
    </message>
    <message>
        <source>Going back puts a copy of the backup in the place of the log. The log as it is now is kept beside it under another name, so that nothing is lost. The backups are in %1.</source>
        <translation>Zurückgehen setzt eine Kopie der Sicherung an die Stelle des Protokolls. Das Protokoll, wie es jetzt ist, bleibt unter anderem Namen daneben liegen, damit nichts verloren geht. Die Sicherungen liegen in %1.</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Angelegt</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>&amp;Go back to this one</source>
        <translation>Auf diese &amp;zurückgehen</translation>
    </message>
    <message>
        <source>whole and sound</source>
        <translation>vollständig und unbeschädigt</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>beschädigt</translation>
    </message>
    <message>
        <source>%1; made before Slopebook was updated</source>
        <translation>%1; vor einer neuen Slopebook-Version angelegt</translation>
    </message>
    <message>
        <source>%1; made before another log was merged</source>
        <translation>%1; angelegt, bevor ein anderes Protokoll aufgenommen wurde</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::BatteryPage</name>
    <message>
        <source>Attempts of a session</source>
        <translation>Versuche einer Einheit</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Vorher und nachher</translation>
    </message>
    <message>
        <source>Choose an athlete first: a trace is somebody&apos;s.</source>
        <translation>Zuerst Athlet wählen: Eine Messkurve gehört jemandem.</translation>
    </message>
    <message>
        <source>Kinds of answers</source>
        <translation>Arten von Antworten</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::BeforeAfterView</name>
    <message>
        <source>Choose an athlete.</source>
        <translation>Einen Athleten wählen.</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>&amp;Print...</source>
        <translation>&amp;Drucken...</translation>
    </message>
    <message>
        <source>P&amp;DF...</source>
        <translation>PD&amp;F...</translation>
    </message>
    <message>
        <source>What the battery says</source>
        <translation>Was die Testbatterie sagt</translation>
    </message>
    <message>
        <source>What the lifts say</source>
        <translation>Was die Übungen sagen</translation>
    </message>
    <message>
        <source>Notes and sources</source>
        <translation>Hinweise und Quellen</translation>
    </message>
    <message>
        <source>Tests before and after</source>
        <translation>Tests vorher und nachher</translation>
    </message>
    <message>
        <source>Left and right</source>
        <translation>Links und rechts</translation>
    </message>
    <message>
        <source>What was missing</source>
        <translation>Was fehlte</translation>
    </message>
    <message>
        <source>Left and right: the better side, and by how much of it</source>
        <translation>Links und rechts: die bessere Seite und um wie viel</translation>
    </message>
    <message>
        <source>block %1</source>
        <translation>Block %1</translation>
    </message>
    <message>
        <source>Two dates or two blocks with sessions are needed.</source>
        <translation>Zwei Daten oder zwei Blöcke mit Einheiten werden gebraucht.</translation>
    </message>
    <message>
        <source>Test (unit)</source>
        <translation>Test (Maßeinheit)</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>%1 interval</source>
        <translation>Intervall (%1)</translation>
    </message>
    <message>
        <source>Typical error</source>
        <translation>Typischer Messfehler</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Side of the comparison</source>
        <translation>Seite des Vergleichs</translation>
    </message>
    <message>
        <source>Test or lift</source>
        <translation>Test oder Übung</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Write PDF</source>
        <translation>PDF schreiben</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>Write CSV</source>
        <translation>CSV schreiben</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>P&amp;review...</source>
        <translation>Vors&amp;chau...</translation>
    </message>
    <message>
        <source>C&amp;SV...</source>
        <translation>C&amp;SV...</translation>
    </message>
    <message>
        <source>Print preview</source>
        <translation>Druckvorschau</translation>
    </message>
    <message>
        <source>Change of the difference (%1 interval)</source>
        <translation>Änderung des Unterschieds (Intervall %1)</translation>
    </message>
    <message>
        <source>Type attempts</source>
        <translation>Versuche eintippen</translation>
    </message>
    <message>
        <source>What the intervals hold for</source>
        <translation>Wofür die Intervalle gelten</translation>
    </message>
    <message>
        <source>Fro&amp;m</source>
        <translation>V&amp;on</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>Z&amp;u</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::BlockDialog</name>
    <message>
        <source>Change training block</source>
        <translation>Trainingsblock ändern</translation>
    </message>
    <message>
        <source>Add training block</source>
        <translation>Neuer Trainingsblock</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;First day</source>
        <translation>&amp;Erster Tag</translation>
    </message>
    <message>
        <source>&amp;Last day</source>
        <translation>&amp;Letzter Tag</translation>
    </message>
    <message>
        <source>The heaviest load at hand in that block. Empty: no ceiling.</source>
        <translation>Die schwerste in diesem Block verfügbare Last. Leer: keine Grenze.</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>Expected a name.</source>
        <translation>Erwartet: ein Name.</translation>
    </message>
    <message>
        <source>Expected a last day on or after the first.</source>
        <translation>Erwartet: ein letzter Tag, der nicht vor dem ersten liegt.</translation>
    </message>
    <message>
        <source>Load &amp;ceiling, %1</source>
        <translation>Last&amp;grenze, %1</translation>
    </message>
    <message>
        <source>Expected a load in %1, such as 40, or nothing.</source>
        <translation>Erwartet: eine Last in %1, etwa 40, oder nichts.</translation>
    </message>
    <message>
        <source>&amp;Trained</source>
        <translation>&amp;Trainiert</translation>
    </message>
    <message>
        <source>What was done in it, in a line, such as fast lifts and jumps. It stands beside every figure of the block.</source>
        <translation>Was darin getan wurde, in einer Zeile, etwa schnelles Heben und Sprünge. Es steht neben jeder Zahl des Blocks.</translation>
    </message>
    <message>
        <source>Sessions a &amp;week</source>
        <translation>Einheiten pro &amp;Woche</translation>
    </message>
    <message>
        <source>As planned: 3, 2-3 or 2.5. Empty: not said.</source>
        <translation>Wie geplant: 3, 2-3 oder 2,5. Leer: nicht gesagt.</translation>
    </message>
    <message>
        <source>Expected sessions a week in halves from 0.5 to 21, such as 3, 2-3 or 2.5, or nothing.</source>
        <translation>Erwartet: Einheiten pro Woche in Halben von 0,5 bis 21, etwa 3, 2-3 oder 2,5, oder nichts.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::BlocksDialog</name>
    <message>
        <source>Training blocks</source>
        <translation>Trainingsblöcke</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>&amp;Add…</source>
        <translation>&amp;Hinzufügen…</translation>
    </message>
    <message>
        <source>Training block</source>
        <translation>Trainingsblock</translation>
    </message>
    <message>
        <source>Ceiling, %1</source>
        <translation>Grenze, %1</translation>
    </message>
    <message>
        <source>Cha&amp;nge…</source>
        <translation>Än&amp;dern…</translation>
    </message>
    <message>
        <source>Re&amp;move</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Trained</source>
        <translation>Trainiert</translation>
    </message>
    <message>
        <source>Sessions a week</source>
        <translation>Einheiten pro Woche</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::BlocksPage</name>
    <message>
        <source>Training blocks</source>
        <translation>Trainingsblöcke</translation>
    </message>
    <message>
        <source>Sessions of the selected block</source>
        <translation>Einheiten des gewählten Blocks</translation>
    </message>
    <message>
        <source>Training &amp;blocks...</source>
        <translation>Trainingsblö&amp;cke...</translation>
    </message>
    <message>
        <source>, left</source>
        <translation>, links</translation>
    </message>
    <message>
        <source>, right</source>
        <translation>, rechts</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>outside any block</source>
        <translation>außerhalb der Blöcke</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>not possible: </source>
        <translation>nicht möglich: </translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>Load ceiling</source>
        <translation>Lastgrenze</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Entfallen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Choose an athlete.</source>
        <translation>Einen Athleten wählen.</translation>
    </message>
    <message>
        <source>No sessions in this block.</source>
        <translation>Keine Einheiten in diesem Block.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Lifts and tests</source>
        <translation>Übungen und Tests</translation>
    </message>
    <message>
        <source>Not possible, and why</source>
        <translation>Nicht möglich, und der Grund</translation>
    </message>
    <message>
        <source>Trained</source>
        <translation>Trainiert</translation>
    </message>
    <message>
        <source>What the selected block was</source>
        <translation>Was der gewählte Block war</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <translation>%1, %2 bis %3</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>No training blocks yet. A block is a stretch of days with one plan: readings are made from one to the next.</source>
        <translation>Noch keine Trainingsblöcke. Ein Block sind Tage mit einem Plan: Befunde gehen von einem zum nächsten.</translation>
    </message>
    <message>
        <source>Sessions outside any block.</source>
        <translation>Einheiten außerhalb aller Blöcke.</translation>
    </message>
    <message>
        <source>in %1 of %2</source>
        <translation>in %1 von %2</translation>
    </message>
    <message>
        <source>Lid on a block: a load ceiling.</source>
        <translation>Deckel auf einem Block: eine Lastgrenze.</translation>
    </message>
    <message>
        <source>&amp;Sessions of %1 in it</source>
        <translation>&amp;Einheiten von %1 darin</translation>
    </message>
    <message>
        <source>Planned a week</source>
        <translation>Geplant pro Woche</translation>
    </message>
    <message>
        <source>Dots: sessions of %1 in this log, with sets or tests. Hollow: something was not possible. Lid on a block: a load ceiling.</source>
        <translation>Punkte: Einheiten von %1 in diesem Protokoll, mit Sätzen oder Tests. Hohl: etwas war nicht möglich. Deckel auf einem Block: eine Lastgrenze.</translation>
    </message>
    <message>
        <source>Sessions here</source>
        <translation>Einheiten hier</translation>
    </message>
    <message>
        <source>Sessions of %1</source>
        <translation>Einheiten von %1</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::BodyField</name>
    <message>
        <source>&amp;Body, %1</source>
        <translation>&amp;Körper, %1</translation>
    </message>
    <message>
        <source>Body mass, %1</source>
        <translation>Körpermasse, %1</translation>
    </message>
    <message>
        <source>Of this athlete on this day, without what is added</source>
        <translation>Dieses Athleten an diesem Tag, ohne Zusatzlast</translation>
    </message>
    <message>
        <source>a body mass of %1</source>
        <translation>eine Körpermasse von %1</translation>
    </message>
    <message>
        <source>%1, such as 74.5, or nothing</source>
        <translation>%1, etwa 74,5, oder nichts</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::CheckLoadsDialog</name>
    <message>
        <source>Check loads</source>
        <translation>Prüflasten</translation>
    </message>
    <message>
        <source>The submaximal loads of %1&apos;s %2 to follow through the season, such as 40 60. Empty: none.</source>
        <translation>Die submaximalen Lasten (%1, %2), die über die Saison verfolgt werden, etwa 40 60. Leer: keine.</translation>
    </message>
    <message>
        <source>&amp;Loads, %1</source>
        <translation>&amp;Lasten, %1</translation>
    </message>
    <message>
        <source>Found %1, expected loads in %2 with blanks between them, such as 40 60 72.5.</source>
        <translation>%1 gefunden, erwartet: Lasten in %2 mit Leerzeichen dazwischen, etwa 40 60 72,5.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::ChoicesDialog</name>
    <message>
        <source>Both sides</source>
        <translation>Beide Seiten</translation>
    </message>
    <message>
        <source>Choose between two sides</source>
        <translation>Zwischen zwei Seiten wählen</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Welches</translation>
    </message>
    <message>
        <source>What waits</source>
        <translation>Was wartet</translation>
    </message>
    <message>
        <source>&amp;Keep what stands</source>
        <translation>Bisheriges &amp;behalten</translation>
    </message>
    <message>
        <source>&amp;Take the other side</source>
        <translation>Andere Seite überneh&amp;men</translation>
    </message>
    <message numerus="yes">
        <source>%n choices wait. One side of each counts until then; the choice goes along to the other log with the next merge.</source>
        <translation>
            <numerusform>%n Wahl wartet. Bis dahin zählt eine der Seiten; die Wahl geht mit der nächsten Aufnahme in das andere Protokoll.</numerusform>
            <numerusform>%n Wahlen warten. Bis dahin zählt jeweils eine Seite; die Wahl geht mit der nächsten Aufnahme in das andere Protokoll.</numerusform>
        </translation>
    </message>
    <message>
        <source>in the log</source>
        <translation>im Protokoll</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>entfernt</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>As it stands</source>
        <translation>Wie es steht</translation>
    </message>
    <message>
        <source>The other side</source>
        <translation>Die andere Seite</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::ComparePage</name>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>Save P&amp;DF…</source>
        <translation>PD&amp;F speichern…</translation>
    </message>
    <message>
        <source>one scatter for both days</source>
        <translation>eine Streuung für beide Tage</translation>
    </message>
    <message>
        <source>each day its own scatter</source>
        <translation>jeder Tag mit eigener Streuung</translation>
    </message>
    <message>
        <source>Chart of both &amp;lines</source>
        <translation>&amp;Diagramm beider Geraden</translation>
    </message>
    <message>
        <source>&amp;1RM</source>
        <translation>&amp;1RM</translation>
    </message>
    <message>
        <source>What is printed beside the sentence, the sources and the cautions</source>
        <translation>Was neben der Aussage, den Quellen und den Vorsichtshinweisen gedruckt wird</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Paper of the PDF</source>
        <translation>Papierformat des PDF</translation>
    </message>
    <message>
        <source>1 point</source>
        <translation>1 Punkt</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 Punkte</translation>
    </message>
    <message>
        <source>Save the comparison as PDF</source>
        <translation>Vergleich als PDF speichern</translation>
    </message>
    <message>
        <source>The page as it is printed</source>
        <translation>Die Seite, wie sie gedruckt wird</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>the days of a comparison, in a file&apos;s name</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Pri&amp;nt preview…</source>
        <translation>Druckvorschau…</translation>
    </message>
    <message>
        <source>Chart &amp;of the change</source>
        <translation>Diagramm der &amp;Änderung</translation>
    </message>
    <message>
        <source>&amp;Table by load</source>
        <translation>Tabelle je &amp;Last</translation>
    </message>
    <message>
        <source>How &amp;it was computed</source>
        <translation>B&amp;erechnung</translation>
    </message>
    <message>
        <source>Paper &amp;of the PDF</source>
        <translation>Papierf&amp;ormat</translation>
    </message>
    <message>
        <source>Earlier session or block</source>
        <translation>Frühere Einheit oder früherer Block</translation>
    </message>
    <message>
        <source>Later session or block</source>
        <translation>Spätere Einheit oder späterer Block</translation>
    </message>
    <message>
        <source>Choose an athlete and a lift to compare two of their sessions or blocks.</source>
        <translation>Athlet und Übung wählen, um zwei Einheiten oder Blöcke zu vergleichen.</translation>
    </message>
    <message>
        <source>bands of these two days alone</source>
        <translation>Bänder dieser zwei Tage allein</translation>
    </message>
    <message>
        <source>Level of the intervals, scatter about the lines, and bands</source>
        <translation>Niveau der Intervalle, Streuung um die Geraden und Bänder</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>Z&amp;u</translation>
    </message>
    <message>
        <source>intervals %1, one scatter</source>
        <translation>Intervalle %1, eine Streuung</translation>
    </message>
    <message>
        <source>intervals %1, two scatters</source>
        <translation>Intervalle %1, zwei Streuungen</translation>
    </message>
    <message>
        <source>What to pr&amp;int</source>
        <translation>Was gedruc&amp;kt wird</translation>
    </message>
    <message>
        <source>F&amp;rom</source>
        <translation>Vo&amp;n</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::ComparisonView</name>
    <message>
        <source>Change by load</source>
        <translation>Änderung je Last</translation>
    </message>
    <message>
        <source>1RM</source>
        <translation>1RM</translation>
    </message>
    <message>
        <source>To beware of, and where the figures come from</source>
        <translation>Was zu beachten ist und woher die Zahlen stammen</translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation>Last, %1</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Smallest</source>
        <translation>Kleinste</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>What would settle what is unclear:</source>
        <translation>Was das Unklare klären würde:</translation>
    </message>
    <message>
        <source>By load: &amp;what the lines say, m/s</source>
        <translation>Je Last: was die Geraden sagen, &amp;m/s</translation>
    </message>
    <message>
        <source>1R&amp;M</source>
        <translation>&amp;1RM</translation>
    </message>
    <message>
        <source>Tables and notes of the comparison</source>
        <translation>Tabellen und Hinweise zum Vergleich</translation>
    </message>
    <message>
        <source>%1, as if lines were straight: %2 m/s; these two days only: %3 m/s</source>
        <translation>%1, als gäbe es keine Krümmung: %2 m/s; nur diese zwei Tage: %3 m/s</translation>
    </message>
    <message>
        <source>%1 interval</source>
        <translation>Intervall (%1)</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>%1, as if lines were straight: %2 m/s; these days only: %3 m/s</source>
        <translation>%1, als gäbe es keine Krümmung: %2 m/s; nur diese Tage: %3 m/s</translation>
    </message>
    <message>
        <source>Lines: the heaviest day of each side</source>
        <translation>Geraden: der schwerste Tag jeder Seite</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::DayEdit</name>
    <message>
        <source>&quot;%1&quot; is no day: expected one such as %2 or %3.</source>
        <translation>„%1“ ist kein Tag: erwartet wird einer wie %2 oder %3.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::DeviceDialog</name>
    <message>
        <source>Change device</source>
        <translation>Messgerät ändern</translation>
    </message>
    <message>
        <source>Add device</source>
        <translation>Neues Messgerät</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>Expected a name.</source>
        <translation>Erwartet: ein Name.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::DevicesDialog</name>
    <message>
        <source>Devices</source>
        <translation>Messgeräte</translation>
    </message>
    <message>
        <source>&amp;Add…</source>
        <translation>&amp;Hinzufügen…</translation>
    </message>
    <message>
        <source>Cha&amp;nge…</source>
        <translation>Än&amp;dern…</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::DuePage</name>
    <message>
        <source>Who is due for what</source>
        <translation>Wer womit ansteht</translation>
    </message>
    <message>
        <source>&amp;Open the athlete&apos;s overview</source>
        <translation>Überbl&amp;ick des Athleten öffnen</translation>
    </message>
    <message>
        <source>Pri&amp;nt preview…</source>
        <translation>Druckvorschau…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>Save P&amp;DF…</source>
        <translation>PD&amp;F speichern…</translation>
    </message>
    <message>
        <source> weeks</source>
        <translation> Wochen</translation>
    </message>
    <message>
        <source>Weeks after which a test is due</source>
        <translation>Wochen, nach denen ein Test ansteht</translation>
    </message>
    <message>
        <source>D&amp;ue after</source>
        <translation>Fällig &amp;nach</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation>Was ansteht</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>A double click or Enter opens the athlete&apos;s overview</source>
        <translation>Ein Doppelklick oder die Eingabetaste öffnet den Überblick des Athleten</translation>
    </message>
    <message>
        <source>The stations, where it can be tested</source>
        <translation>Die Stationen, wo es getestet werden kann</translation>
    </message>
    <message>
        <source>Save what is due as PDF</source>
        <translation>Was ansteht als PDF speichern</translation>
    </message>
    <message>
        <source>What is due on %1</source>
        <translation>Was am %1 ansteht</translation>
    </message>
    <message>
        <source>&amp;Test it at a station</source>
        <translation>An einer Station testen</translation>
    </message>
    <message>
        <source>Nothing is due: there is nothing to print.</source>
        <translation>Nichts ist fällig: Es gibt nichts zu drucken.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::EmptyPlace</name>
    <message>
        <source>What is missing here</source>
        <translation>Was hier fehlt</translation>
    </message>
    <message>
        <source>What to do about it</source>
        <translation>Was zu tun ist</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::EntryLine</name>
    <message>
        <source>Doubtful as well, by their numbers: %1.</source>
        <translation>Ebenso zweifelhaft, nach ihren Nummern: %1.</translation>
    </message>
    <message>
        <source>Set: load, then the reps&apos; speeds</source>
        <translation>Satz: Last, dann die Geschwindigkeiten der Wiederholungen</translation>
    </message>
    <message>
        <source>Answer to the typed line</source>
        <translation>Antwort auf die eingegebene Zeile</translation>
    </message>
    <message>
        <source>Line %1 of what was pasted: </source>
        <translation>Zeile %1 des Eingefügten: </translation>
    </message>
    <message>
        <source>Taken, and flagged for a look: %1</source>
        <translation>Übernommen, aber einen Blick wert: %1</translation>
    </message>
    <message>
        <source>Speeds from a trace: type the load before them, then Enter.</source>
        <translation>Geschwindigkeiten aus einer Messkurve: die Last davor eingeben, dann Enter.</translation>
    </message>
    <message>
        <source>Set %1 of what was pasted: </source>
        <translation>Satz %1 des Eingefügten: </translation>
    </message>
    <message>
        <source>What was not possible is typed on its own.</source>
        <translation>Was nicht möglich war, wird für sich getippt.</translation>
    </message>
    <message>
        <source>Load in %1, each rep&apos;s speed in m/s, Enter.  -: not lifted.  @8: effort.  Up: next load.  !: true maximum.  x: left out.  # note.</source>
        <translation>Last in %1, Geschwindigkeit jeder Wiederholung in m/s, Enter.  -: nicht geschafft.  @8: Anstrengung.  Auf: nächste Last.  !: echtes Maximum.  x: ausgelassen.  # Notiz.</translation>
    </message>
    <message>
        <source>for example %1</source>
        <translation>zum Beispiel %1</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::EntryPage</name>
    <message>
        <source>Next load</source>
        <translation>Nächste Last</translation>
    </message>
    <message>
        <source>Sets of this session</source>
        <translation>Sätze dieser Einheit</translation>
    </message>
    <message>
        <source>The ladder of last time</source>
        <translation>Die Leiter vom letzten Mal</translation>
    </message>
    <message>
        <source>What counts of the selected set, and why not (Ctrl+Shift+E)</source>
        <translation>Was vom gewählten Satz zählt, und der Grund, wenn nicht (Strg+Umschalt+E)</translation>
    </message>
    <message>
        <source>Re&amp;move set</source>
        <translation>Sat&amp;z entfernen</translation>
    </message>
    <message>
        <source>Delete does the same in the table; Undo brings the set back</source>
        <translation>Entf bewirkt dasselbe in der Tabelle; Rückgängig holt den Satz zurück</translation>
    </message>
    <message>
        <source>Chart of load and velocity</source>
        <translation>Diagramm von Last und Geschwindigkeit</translation>
    </message>
    <message>
        <source>No athlete yet: add one (Ctrl+Shift+A).</source>
        <translation>Noch kein Athlet: einen anlegen (Strg+Umschalt+A).</translation>
    </message>
    <message>
        <source>No lift yet: add one (Ctrl+Shift+L).</source>
        <translation>Noch keine Übung: eine anlegen (Strg+Umschalt+L).</translation>
    </message>
    <message>
        <source>Last time</source>
        <translation>Letztes Mal</translation>
    </message>
    <message>
        <source>Last time, %1</source>
        <translation>Letztes Mal, %1</translation>
    </message>
    <message>
        <source>No earlier session</source>
        <translation>Keine frühere Einheit</translation>
    </message>
    <message>
        <source>Choose an athlete and a lift first.</source>
        <translation>Erst Athlet und Übung wählen.</translation>
    </message>
    <message>
        <source>Session removed. Ctrl+Z brings it back with its sets.</source>
        <translation>Einheit entfernt. Strg+Z holt sie mit ihren Sätzen zurück.</translation>
    </message>
    <message>
        <source>Set removed. Ctrl+Z brings it back.</source>
        <translation>Satz entfernt. Strg+Z holt ihn zurück.</translation>
    </message>
    <message>
        <source>Choose a lift first.</source>
        <translation>Erst eine Übung wählen.</translation>
    </message>
    <message>
        <source>%1 is measured in %2; the trace&apos;s speeds are %3. Values of different kinds are never put on one line.</source>
        <translation>Gemessen wird bei %1: %2; die Messkurve liefert: %3. Werte verschiedener Art kommen nie auf eine Gerade.</translation>
    </message>
    <message>
        <source>Earlier sessions on the chart</source>
        <translation>Frühere Einheiten im Diagramm</translation>
    </message>
    <message>
        <source>How many earlier sessions the chart shows beside this one</source>
        <translation>Wie viele frühere Einheiten das Diagramm neben dieser zeigt</translation>
    </message>
    <message>
        <source>Next load %1</source>
        <translation>Nächste Last %1</translation>
    </message>
    <message>
        <source>Next load %1,
a maximum attempt</source>
        <translation>Nächste Last %1,
ein Maximalversuch</translation>
    </message>
    <message>
        <source>This sessio&amp;n</source>
        <translation>Die&amp;se Einheit</translation>
    </message>
    <message>
        <source>Leave o&amp;ut, note…</source>
        <translation>Auss&amp;chließen, Notiz…</translation>
    </message>
    <message>
        <source>Not read of what was pasted: %1.</source>
        <translation>Vom Eingefügten nicht gelesen: %1.</translation>
    </message>
    <message>
        <source>Of %1 pasted sets this session has %2 already, with the same load and speeds.</source>
        <translation>Von %1 eingefügten Sätzen hat diese Einheit %2 schon, mit derselben Last und denselben Geschwindigkeiten.</translation>
    </message>
    <message>
        <source>Enter takes them for %1; Esc does not.</source>
        <translation>Enter übernimmt sie für %1; Esc nicht.</translation>
    </message>
    <message>
        <source>a new session</source>
        <translation>eine neue Einheit</translation>
    </message>
    <message>
        <source>Sets taken: %1, for %2.</source>
        <translation>Übernommene Sätze: %1, für %2.</translation>
    </message>
    <message>
        <source>note what was not possible</source>
        <translation>notieren, was nicht möglich war</translation>
    </message>
    <message>
        <source>Noted: %1 was not possible.</source>
        <translation>Notiert: %1 war nicht möglich.</translation>
    </message>
    <message>
        <source>Noted: the lift was not possible.</source>
        <translation>Notiert: die Übung war nicht möglich.</translation>
    </message>
    <message>
        <source>as last time</source>
        <translation>wie beim letzten Mal</translation>
    </message>
    <message>
        <source>the same rise again</source>
        <translation>noch einmal derselbe Schritt</translation>
    </message>
    <message>
        <source>%1 % of the estimated 1RM</source>
        <translation>%1 % des geschätzten 1RM</translation>
    </message>
    <message>
        <source>Where the next load comes from</source>
        <translation>Woher die nächste Last kommt</translation>
    </message>
    <message>
        <source>%1 % (%2) of the estimated 1RM</source>
        <translation>%1 % (%2) des geschätzten 1RM</translation>
    </message>
    <message>
        <source>Today beside last time</source>
        <translation>Heute neben letztem Mal</translation>
    </message>
    <message>
        <source>expected: %1 m/s (%2)</source>
        <translation>erwartet: %1 m/s (%2)</translation>
    </message>
    <message>
        <source>expected: %1 m/s (up to %2)</source>
        <translation>erwartet: %1 m/s (bis %2)</translation>
    </message>
    <message>
        <source>Earl&amp;ier lines</source>
        <translation>&amp;Frühere Linien</translation>
    </message>
    <message>
        <source>%1 % (%2) of the estimated 1RM: it may be a maximum</source>
        <translation>%1 % (%2) des geschätzten 1RM: es kann ein Maximum sein</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::EquipmentDialog</name>
    <message>
        <source>Bar</source>
        <translation>Stange</translation>
    </message>
    <message>
        <source>Mass with collars</source>
        <translation>Masse mit Verschlüssen</translation>
    </message>
    <message>
        <source>Bars</source>
        <translation>Stangen</translation>
    </message>
    <message>
        <source>Mass of one plate</source>
        <translation>Masse einer Scheibe</translation>
    </message>
    <message>
        <source>Pairs</source>
        <translation>Paare</translation>
    </message>
    <message>
        <source>Plates</source>
        <translation>Scheiben</translation>
    </message>
    <message>
        <source>Dumbbell, kettlebell, …</source>
        <translation>Kurzhantel, Kettlebell, …</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Masses on their own</source>
        <translation>Einzelgewichte</translation>
    </message>
    <message>
        <source>Vest, belt, band, …</source>
        <translation>Weste, Gürtel, Band, …</translation>
    </message>
    <message>
        <source>Masses added to any load</source>
        <translation>Gewichte, die zu jeder Last hinzukommen</translation>
    </message>
    <message>
        <source>Set of equipment</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>home, gym, travel</source>
        <translation>zu Hause, Kraftraum, unterwegs</translation>
    </message>
    <message>
        <source>&amp;Bars</source>
        <translation>&amp;Stangen</translation>
    </message>
    <message>
        <source>&amp;Plates, in pairs</source>
        <translation>Scheiben, &amp;paarweise</translation>
    </message>
    <message>
        <source>Masses &amp;on their own</source>
        <translation>&amp;Einzelgewichte</translation>
    </message>
    <message>
        <source>Masses &amp;added to any load</source>
        <translation>&amp;Zusatzgewichte zu jeder Last</translation>
    </message>
    <message>
        <source>&amp;Ceiling</source>
        <translation>&amp;Lastgrenze</translation>
    </message>
    <message>
        <source>none: the heaviest load that may be used</source>
        <translation>keine: die schwerste Last, die verwendet werden darf</translation>
    </message>
    <message>
        <source>No&amp;te</source>
        <translation>No&amp;tiz</translation>
    </message>
    <message>
        <source>Masses are kg; write lb behind a number for pounds (45 lb). Both are kept exactly. A band counts with the pull you measured.</source>
        <translation>Massen in kg; für Pfund lb hinter die Zahl schreiben (45 lb). Beides wird genau gespeichert. Ein Band zählt mit dem gemessenen Zug.</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Was nicht stimmt</translation>
    </message>
    <message>
        <source>the bar</source>
        <translation>die Stange</translation>
    </message>
    <message>
        <source>the plate</source>
        <translation>die Scheibe</translation>
    </message>
    <message>
        <source>the mass</source>
        <translation>die Masse</translation>
    </message>
    <message>
        <source>the ceiling</source>
        <translation>die Lastgrenze</translation>
    </message>
    <message>
        <source>a mass in kg, or in pounds with lb behind it, for %1</source>
        <translation>eine Masse in kg, oder in Pfund mit lb dahinter, für %1</translation>
    </message>
    <message>
        <source>how many pairs of the plate there are</source>
        <translation>wie viele Paare der Scheibe es gibt</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::EverythingModel</name>
    <message>
        <source>not comparable: %1</source>
        <translation>nicht vergleichbar: %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1, 1 set</source>
        <translation>%1, 1 Satz</translation>
    </message>
    <message>
        <source>%1, %2 sets</source>
        <translation>%1, %2 Sätze</translation>
    </message>
    <message>
        <source>%1 not lifted</source>
        <translation>%1 nicht geschafft</translation>
    </message>
    <message>
        <source>left %1</source>
        <translation>links %1</translation>
    </message>
    <message>
        <source>right %1</source>
        <translation>rechts %1</translation>
    </message>
    <message>
        <source>, left</source>
        <translation>, links</translation>
    </message>
    <message>
        <source>, right</source>
        <translation>, rechts</translation>
    </message>
    <message>
        <source>not possible</source>
        <translation>nicht möglich</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>Lift or test</source>
        <translation>Übung oder Test</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Bedingungen</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::FiguresPanel</name>
    <message>
        <source>Estimated 1RM</source>
        <translation>Geschätztes 1RM</translation>
    </message>
    <message>
        <source>About the estimate</source>
        <translation>Zur Schätzung</translation>
    </message>
    <message>
        <source>Figures of the line</source>
        <translation>Kennwerte der Geraden</translation>
    </message>
    <message>
        <source>Notes on the line</source>
        <translation>Hinweise zur Geraden</translation>
    </message>
    <message>
        <source>V0 %1 m/s</source>
        <translation>V0 %1 m/s</translation>
    </message>
    <message>
        <source>R² %1</source>
        <translation>R² %1</translation>
    </message>
    <message>
        <source>1 point</source>
        <translation>1 Punkt</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 Punkte</translation>
    </message>
    <message>
        <source>slope %1 m/s per %2</source>
        <translation>Steigung %1 m/s je %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Where the figures come from</source>
        <translation>Woher die Zahlen kommen</translation>
    </message>
    <message>
        <source>%1, on %2</source>
        <comment>an estimate, its day</comment>
        <translation>%1, am %2</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::ForestChart</name>
    <message>
        <source>worse</source>
        <translation>schlechter</translation>
    </message>
    <message>
        <source>better</source>
        <translation>besser</translation>
    </message>
    <message>
        <source>Changes of all tests in units of the smallest change that matters; the same figures stand in the table</source>
        <translation>Änderungen aller Tests in Vielfachen der kleinsten bedeutsamen Änderung; dieselben Zahlen stehen in der Tabelle</translation>
    </message>
    <message>
        <source>%1: %2 units, %3</source>
        <translation>%1: %2-fach, %3</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>Change, units</source>
        <translation>Änderung, Einheiten</translation>
    </message>
    <message>
        <source>Interval, units</source>
        <translation>Intervall, Einheiten</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>no bar: %1</source>
        <translation>kein Balken: %1</translation>
    </message>
    <message>
        <source>no bar: the reason stands below</source>
        <translation>kein Balken: der Grund steht unten</translation>
    </message>
    <message>
        <source>%1: %2; no bar: %3</source>
        <translation>%1: %2; kein Balken: %3</translation>
    </message>
    <message>
        <source>change, in units of the smallest change that matters (grey: %1)</source>
        <translation>Änderung, in Einheiten der kleinsten bedeutsamen Änderung (grau: %1)</translation>
    </message>
    <message>
        <source>filled: better or worse</source>
        <translation>gefüllt: besser oder schlechter</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::FormDialog</name>
    <message>
        <source>What is wrong</source>
        <translation>Was nicht stimmt</translation>
    </message>
    <message>
        <source>Found %1, expected %2.</source>
        <translation>%1 gefunden, erwartet: %2.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::HelpDialog</name>
    <message>
        <source>Alt and an underlined letter go to that control. Tab reaches every control, the charts too: on a chart Ctrl+C copies its picture and the menu key opens what else can be done with it.</source>
        <translation>Alt und ein unterstrichener Buchstabe führen zu diesem Bedienelement. Tab erreicht jedes Bedienelement, auch die Diagramme: Bei einem Diagramm kopiert Strg+C sein Bild, und die Menütaste öffnet, was sich sonst damit tun lässt.</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>&amp;Typing</source>
        <translation>&amp;Eingabe</translation>
    </message>
    <message>
        <source>&amp;Method</source>
        <translation>&amp;Methode</translation>
    </message>
    <message>
        <source>C&amp;autions</source>
        <translation>&amp;Vorsichtshinweise</translation>
    </message>
    <message>
        <source>Letters typed into the index at the left find an athlete, the arrows go on to the next, Enter takes one. F9 folds the index away; Ctrl+F then opens it for one choice.</source>
        <translation>Buchstaben, in das Verzeichnis links getippt, suchen einen Athleten, die Pfeile gehen zum nächsten, Eingabe nimmt einen. F9 klappt das Verzeichnis weg; Strg+F öffnet es dann für eine Wahl.</translation>
    </message>
    <message>
        <source>T&amp;utorial</source>
        <translation>&amp;Anleitung</translation>
    </message>
    <message>
        <source>The &amp;file</source>
        <translation>Die &amp;Datei</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Neues</translation>
    </message>
    <message>
        <source>Where a table has no room for a column, F4 shows under the chosen row what stands in it, and what else its tip tells; Esc puts it away.</source>
        <translation>Wo eine Tabelle für eine Spalte keinen Platz hat, zeigt F4 unter der gewählten Zeile, was darin steht und was ihr Hinweis sonst noch sagt; Esc schließt es.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::HistoryModel</name>
    <message>
        <source>%1 (no bound)</source>
        <translation>%1 (unbegrenzt)</translation>
    </message>
    <message>
        <source>%1; estimate %2</source>
        <translation>%1; Schätzung %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 far</source>
        <translation>%1 weit</translation>
    </message>
    <message>
        <source>* outside the loads lifted that day: extrapolated</source>
        <translation>* außerhalb der an diesem Tag gehobenen Lasten: extrapoliert</translation>
    </message>
    <message>
        <source>Heaviest load / estimated 1RM. Under %1 the estimate is extrapolated far.</source>
        <translation>Schwerste Last / geschätztes 1RM. Unter %1 ist die Schätzung weit extrapoliert.</translation>
    </message>
    <message>
        <source>Day of the session</source>
        <translation>Tag der Einheit</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Training block that the day lies in</source>
        <translation>Trainingsblock, in dem der Tag liegt</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>What measured the bar speed</source>
        <translation>Womit die Hantelgeschwindigkeit gemessen wurde</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>Sets that count</source>
        <translation>Gewertete Sätze</translation>
    </message>
    <message>
        <source>n</source>
        <translation>n</translation>
    </message>
    <message>
        <source>Loads, %1</source>
        <translation>Lasten, %1</translation>
    </message>
    <message>
        <source>Velocity at zero load, from the line</source>
        <translation>Geschwindigkeit bei Last null, von der Geraden</translation>
    </message>
    <message>
        <source>V0, m/s</source>
        <translation>V0, m/s</translation>
    </message>
    <message>
        <source>m/s per %1</source>
        <translation>m/s je %1</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Steigung</translation>
    </message>
    <message>
        <source>Share of the scatter that the line explains</source>
        <translation>Anteil der Streuung, den die Gerade erklärt</translation>
    </message>
    <message>
        <source>R²</source>
        <translation>R²</translation>
    </message>
    <message>
        <source>Est. 1RM, %1</source>
        <translation>Gesch. 1RM, %1</translation>
    </message>
    <message>
        <source>Heaviest load / estimated 1RM</source>
        <translation>Schwerste Last / geschätztes 1RM</translation>
    </message>
    <message>
        <source>Reach</source>
        <translation>Reichweite</translation>
    </message>
    <message>
        <source>A true maximum that was lifted</source>
        <translation>Ein echtes Maximum, das gehoben wurde</translation>
    </message>
    <message>
        <source>Lifted 1RM</source>
        <translation>Gehobenes 1RM</translation>
    </message>
    <message>
        <source>Velocity that the line gives at the check load of %1, m/s</source>
        <translation>Geschwindigkeit von der Geraden bei der Prüflast %1, m/s</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>Who was tested</source>
        <translation>Wer getestet wurde</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athlet</translation>
    </message>
    <message>
        <source>%1 not lifted</source>
        <translation>%1 nicht geschafft</translation>
    </message>
    <message>
        <source>Lightest and heaviest load, and what was tried above it</source>
        <translation>Leichteste und schwerste Last, und was darüber versucht wurde</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>What was written of the session</source>
        <translation>Was zur Einheit notiert wurde</translation>
    </message>
    <message>
        <source>Estimated 1RM with the interval of the line alone, to compare with other days; Plan and Lines have the one to plan with</source>
        <translation>Geschätztes 1RM mit dem Intervall der Geraden allein, zum Vergleich mit anderen Tagen; das zum Planen steht unter Plan und Geraden</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::HistoryPage</name>
    <message>
        <source>&amp;Open the session</source>
        <translation>Einheit ö&amp;ffnen</translation>
    </message>
    <message>
        <source>&amp;Copy the rows</source>
        <translation>&amp;Zeilen kopieren</translation>
    </message>
    <message>
        <source>&amp;Delete the session</source>
        <translation>Einheit &amp;löschen</translation>
    </message>
    <message>
        <source>Com&amp;pare these two</source>
        <translation>Diese beiden ver&amp;gleichen</translation>
    </message>
    <message>
        <source>Com&amp;pare with</source>
        <translation>Ver&amp;gleichen mit</translation>
    </message>
    <message>
        <source>The session of %1 is deleted. Undo brings it back.</source>
        <translation>Die Einheit vom %1 ist gelöscht. Rückgängig holt sie zurück.</translation>
    </message>
    <message>
        <source>Delete the session</source>
        <translation>Einheit löschen</translation>
    </message>
    <message>
        <source>The session of %1 also holds sets of: %2. Delete all of it? Undo brings it back.</source>
        <translation>Die Einheit vom %1 enthält auch Sätze von: %2. Alles löschen? Rückgängig holt sie zurück.</translation>
    </message>
    <message>
        <source>Find a session</source>
        <translation>Einheit suchen</translation>
    </message>
    <message>
        <source>History of sessions</source>
        <translation>Verlauf der Einheiten</translation>
    </message>
    <message>
        <source>Choose an athlete and a lift to see their sessions.</source>
        <translation>Athlet und Übung wählen, um ihre Einheiten zu sehen.</translation>
    </message>
    <message>
        <source>No session of this lift yet. Enter one in the session form, or import.</source>
        <translation>Noch keine Einheit dieser Übung. Auf der Seite Einheit eingeben oder importieren.</translation>
    </message>
    <message>
        <source>1 session.</source>
        <translation>1 Einheit.</translation>
    </message>
    <message>
        <source>%1 sessions.</source>
        <translation>%1 Einheiten.</translation>
    </message>
    <message>
        <source>Enter opens one; choose several to lay their lines over each other.</source>
        <translation>Enter öffnet eine; mehrere wählen, um ihre Geraden übereinanderzulegen.</translation>
    </message>
    <message>
        <source>Lines of %1 sessions; their figures are in the table.</source>
        <translation>Geraden von %1 Einheiten; ihre Kennwerte stehen in der Tabelle.</translation>
    </message>
    <message>
        <source>Whose sessions</source>
        <translation>Wessen Einheiten</translation>
    </message>
    <message>
        <source>Sho&amp;w</source>
        <translation>A&amp;nzeigen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Fi&amp;nd</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <source>No session with that in its date, block, device or note.</source>
        <translation>Keine Einheit, in deren Datum, Block, Messgerät oder Notiz das vorkommt.</translation>
    </message>
    <message>
        <source>One lift, this athlete&apos;s</source>
        <translation>Eine Übung, dieses Athleten</translation>
    </message>
    <message>
        <source>One lift, everybody&apos;s</source>
        <translation>Eine Übung, von allen</translation>
    </message>
    <message>
        <source>Every lift and test</source>
        <translation>Jede Übung und jeder Test</translation>
    </message>
    <message>
        <source>date, block, lift, device, note</source>
        <translation>Datum, Block, Übung, Messgerät, Notiz</translation>
    </message>
    <message>
        <source>Every lift and test of the athlete</source>
        <translation>Jede Übung und jeder Test des Athleten</translation>
    </message>
    <message>
        <source>Choose an athlete to see what they did.</source>
        <translation>Wähle einen Athleten, um zu sehen, was er gemacht hat.</translation>
    </message>
    <message>
        <source>Nothing with that in it.</source>
        <translation>Nichts, worin das vorkommt.</translation>
    </message>
    <message>
        <source>Nothing yet: type the first set or attempt under Floor, or import a table.</source>
        <translation>Noch nichts: Tippe den ersten Satz oder Versuch unter Halle ein, oder importiere eine Tabelle.</translation>
    </message>
    <message>
        <source>1 lift or test</source>
        <translation>1 Übung oder Test</translation>
    </message>
    <message>
        <source>%1 lifts and tests</source>
        <translation>%1 Übungen und Tests</translation>
    </message>
    <message>
        <source>%1 in 1 session.</source>
        <translation>%1 in 1 Einheit.</translation>
    </message>
    <message>
        <source>%1 in %2 sessions.</source>
        <translation>%1 in %2 Einheiten.</translation>
    </message>
    <message>
        <source>Enter opens the row where it was typed. A heading puts them in order.</source>
        <translation>Enter öffnet die Zeile dort, wo sie eingetippt wurde. Ein Spaltenkopf ordnet sie.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::ImportDialog</name>
    <message>
        <source>What the files hold</source>
        <translation>Was die Dateien enthalten</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importieren</translation>
    </message>
    <message>
        <source>%1 holds nothing that the log does not have.</source>
        <translation>%1 enthält nichts, was das Protokoll nicht schon hat.</translation>
    </message>
    <message>
        <source>The import failed; nothing was written.</source>
        <translation>Der Import ist fehlgeschlagen; nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Stopped. Nothing was changed.</source>
        <translation>Abgebrochen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Wird gelesen…</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>This cannot be taken in; nothing was written.</source>
        <translation>Das lässt sich nicht übernehmen; nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>%1 names athletes who are nearly others.</source>
        <translation>%1 nennt Athleten, die fast wie andere heißen.</translation>
    </message>
    <message>
        <source>%1 can go into the log, whole or not at all.</source>
        <translation>%1 kann in das Protokoll, ganz oder gar nicht.</translation>
    </message>
    <message>
        <source>%1 holds no rows below its header.</source>
        <translation>%1 hat keine Zeilen unter der Kopfzeile.</translation>
    </message>
    <message>
        <source>Import a table</source>
        <translation>Tabelle importieren</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::Index</name>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Find an &amp;athlete</source>
        <translation>A&amp;thlet suchen</translation>
    </message>
    <message>
        <source>Find an athlete</source>
        <translation>Athlet suchen</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <translation>Strg+F</translation>
    </message>
    <message>
        <source>Index</source>
        <translation>Verzeichnis</translation>
    </message>
    <message>
        <source>Add athlete…</source>
        <translation>Neuer Athlet…</translation>
    </message>
    <message>
        <source>F9 folds this away</source>
        <translation>F9 klappt dies weg</translation>
    </message>
    <message>
        <source>Nobody here is called “%1”.</source>
        <translation>Niemand hier heißt „%1“.</translation>
    </message>
    <message>
        <source>Of everybody</source>
        <translation>Für alle</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::JobDialog</name>
    <message>
        <source>Please wait</source>
        <translation>Bitte warten</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::JoinDialog</name>
    <message>
        <source>Join a shared store</source>
        <translation>Einem gemeinsamen Speicher beitreten</translation>
    </message>
    <message>
        <source>A&amp;ddress</source>
        <translation>A&amp;dresse</translation>
    </message>
    <message>
        <source>As PostgreSQL&apos;s programs take it. No password stands in it: passwords are looked for in ~/.pgpass or in PGPASSWORD.</source>
        <translation>Wie PostgreSQLs Programme sie nehmen. Ein Passwort steht nicht darin: Passwörter werden in ~/.pgpass oder in PGPASSWORD gesucht.</translation>
    </message>
    <message>
        <source>&amp;Squad</source>
        <translation>&amp;Kader</translation>
    </message>
    <message>
        <source>What is new here goes to it. The store names those in which this login may write.</source>
        <translation>Was hier neu ist, geht an ihn. Der Speicher nennt die, in denen diese Anmeldung schreiben darf.</translation>
    </message>
    <message>
        <source>What the store answered</source>
        <translation>Was der Speicher geantwortet hat</translation>
    </message>
    <message>
        <source>As&amp;k the store</source>
        <translation>Den Speicher &amp;fragen</translation>
    </message>
    <message>
        <source>&amp;Join</source>
        <translation>&amp;Beitreten</translation>
    </message>
    <message>
        <source>Desks that join one store meet in it: what is new at one comes to the others, and each works on without it. A store is a PostgreSQL database; who manages it gives its address and a login.</source>
        <translation>Plätze, die einem Speicher beitreten, gleichen sich darin ab: Was an einem neu ist, kommt zu den anderen, und jeder arbeitet auch ohne ihn weiter. Ein Speicher ist eine PostgreSQL-Datenbank; wer sie verwaltet, nennt Adresse und Anmeldung.</translation>
    </message>
    <message>
        <source>Stopped. Nothing was changed.</source>
        <translation>Abgebrochen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Type the address that you were given.</source>
        <translation>Tippen Sie die Adresse, die Sie bekommen haben.</translation>
    </message>
    <message>
        <source>Asking the store…</source>
        <translation>Der Speicher wird gefragt…</translation>
    </message>
    <message>
        <source>The store answers, but this login may write in no squad. Who manages the store gives it the right with: slopebook store grant</source>
        <translation>Der Speicher antwortet, aber diese Anmeldung darf in keinem Kader schreiben. Wer den Speicher verwaltet, gibt ihr das Recht mit: slopebook store grant</translation>
    </message>
    <message>
        <source>The store answers. All that this log holds goes to it with the first meeting, and what the squads there hold comes.</source>
        <translation>Der Speicher antwortet. Alles in diesem Protokoll geht mit dem ersten Abgleich an ihn, und was die Kader dort enthalten, kommt.</translation>
    </message>
    <message>
        <source>Joining the store…</source>
        <translation>Beitritt zum Speicher…</translation>
    </message>
    <message>
        <source>Found %1, expected %2.</source>
        <translation>%1 gefunden, erwartet: %2.</translation>
    </message>
    <message>
        <source>It is just being written…</source>
        <translation>Es wird gerade geschrieben…</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::LadderModel</name>
    <message>
        <source>next: %1</source>
        <translation>nächste: %1</translation>
    </message>
    <message>
        <source>Reps, m/s</source>
        <translation>Wdh., m/s</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation>Last, %1</translation>
    </message>
    <message>
        <source>not lifted</source>
        <translation>nicht geschafft</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::LiftDialog</name>
    <message>
        <source>Change lift</source>
        <translation>Übung ändern</translation>
    </message>
    <message>
        <source>Add lift</source>
        <translation>Neue Übung</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Measured as</source>
        <translation>&amp;Gemessen als</translation>
    </message>
    <message>
        <source>Changing this relabels the speeds that the log already holds.</source>
        <translation>Eine Änderung hier benennt die Geschwindigkeiten um, die das Protokoll schon enthält.</translation>
    </message>
    <message>
        <source>the fastest rep of the set</source>
        <translation>die schnellste Wiederholung des Satzes</translation>
    </message>
    <message>
        <source>the mean of the set&apos;s reps</source>
        <translation>das Mittel der Wiederholungen des Satzes</translation>
    </message>
    <message>
        <source>A set&apos;s &amp;point</source>
        <translation>&amp;Punkt eines Satzes</translation>
    </message>
    <message>
        <source>thrown or jumped: a line, and no 1RM</source>
        <translation>geworfen oder gesprungen: eine Gerade, aber kein 1RM</translation>
    </message>
    <message>
        <source>&amp;Ballistic</source>
        <translation>&amp;Ballistisch</translation>
    </message>
    <message>
        <source>MV&amp;T, m/s</source>
        <translation>MV&amp;T, m/s</translation>
    </message>
    <message>
        <source>Its S&amp;D, m/s</source>
        <translation>Deren S&amp;D, m/s</translation>
    </message>
    <message>
        <source>Its so&amp;urce</source>
        <translation>Deren &amp;Quelle</translation>
    </message>
    <message>
        <source>The minimal-velocity threshold: the speed at which the 1RM is lifted. An athlete&apos;s own true maxima come before it.</source>
        <translation>Die minimale Geschwindigkeitsschwelle: die Geschwindigkeit, mit der das 1RM gehoben wird. Eigene echte Maxima eines Athleten gehen vor.</translation>
    </message>
    <message>
        <source>Smallest change, m/&amp;s</source>
        <translation>Kleinste Änderung, m/&amp;s</translation>
    </message>
    <message>
        <source>The smallest changes that matter to you, of a speed and of the 1RM. Empty: published defaults, named as such.</source>
        <translation>Die kleinsten Änderungen einer Geschwindigkeit und des 1RM, auf die es ankommt. Leer: veröffentlichte Vorgaben, als solche benannt.</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>published: %1</source>
        <translation>veröffentlicht: %1</translation>
    </message>
    <message>
        <source>published: %1 % of the estimate</source>
        <translation>veröffentlicht: %1 % der Schätzung</translation>
    </message>
    <message>
        <source>Expected a speed between 0 and 2 m/s, such as 0.17.</source>
        <translation>Erwartet: eine Geschwindigkeit zwischen 0 und 2 m/s, etwa 0,17.</translation>
    </message>
    <message>
        <source>Expected a spread in m/s, such as 0.03, or nothing.</source>
        <translation>Erwartet: eine Streuung in m/s, etwa 0,03, oder nichts.</translation>
    </message>
    <message>
        <source>Expected a name.</source>
        <translation>Erwartet: ein Name.</translation>
    </message>
    <message>
        <source>Expected a change in m/s, such as 0.05, or nothing.</source>
        <translation>Erwartet: eine Änderung in m/s, etwa 0,05, oder nichts.</translation>
    </message>
    <message>
        <source>Smallest change, 1&amp;RM, %1</source>
        <translation>Kleinste Änderung, 1&amp;RM, %1</translation>
    </message>
    <message>
        <source>Expected a change in %1, such as 2.5, or nothing.</source>
        <translation>Erwartet: eine Änderung in %1, etwa 2,5, oder nichts.</translation>
    </message>
    <message>
        <source>its load is what is added and the body&apos;s own mass</source>
        <translation>die Last ist die Zusatzlast und die eigene Körpermasse</translation>
    </message>
    <message>
        <source>Mo&amp;ves the body</source>
        <translation>Be&amp;wegt den Körper</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::LinesModel</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Reach</source>
        <translation>Reichweite</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>V0, m/s</source>
        <translation>V0, m/s</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Steigung</translation>
    </message>
    <message>
        <source>R²</source>
        <translation>R²</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>Checked: on the chart</source>
        <translation>Angehakt: im Diagramm</translation>
    </message>
    <message>
        <source>Heaviest load lifted / estimated 1RM</source>
        <translation>Schwerste gehobene Last / geschätztes 1RM</translation>
    </message>
    <message>
        <source>Velocity at zero load</source>
        <translation>Geschwindigkeit bei Last null</translation>
    </message>
    <message>
        <source>Share of the spread that the line explains</source>
        <translation>Anteil der Streuung, den die Gerade erklärt</translation>
    </message>
    <message>
        <source>Sets that count</source>
        <translation>Gewertete Sätze</translation>
    </message>
    <message>
        <source>Lightest to heaviest load</source>
        <translation>Leichteste bis schwerste Last</translation>
    </message>
    <message>
        <source>Load at zero velocity</source>
        <translation>Last bei Geschwindigkeit null</translation>
    </message>
    <message>
        <source>Loads, %1</source>
        <translation>Lasten, %1</translation>
    </message>
    <message>
        <source>L0, %1</source>
        <translation>L0, %1</translation>
    </message>
    <message>
        <source>Measured 1RM: the heaviest true maximum, %1</source>
        <translation>Gemessenes 1RM: das schwerste echte Maximum, %1</translation>
    </message>
    <message>
        <source>m/s per %1</source>
        <translation>m/s je %1</translation>
    </message>
    <message>
        <source>Estimated 1RM; in brackets where reach is under half, or where it has no interval</source>
        <translation>Geschätztes 1RM; in Klammern, wo die Reichweite unter der Hälfte liegt oder es kein Intervall hat</translation>
    </message>
    <message>
        <source>95 % interval of the estimate by the line alone, for comparing sessions: the MVT taken as exact</source>
        <translation>95-%-Intervall der Schätzung aus der Geraden allein, zum Vergleich von Einheiten: die MVT als genau genommen</translation>
    </message>
    <message>
        <source>95 % interval to plan with: line, MVT, days and bend</source>
        <translation>95-%-Intervall zum Planen: Gerade, MVT, Tage und Krümmung</translation>
    </message>
    <message>
        <source>To plan with, %1</source>
        <translation>Zum Planen, %1</translation>
    </message>
    <message>
        <source>Line alone, %1</source>
        <translation>Gerade allein, %1</translation>
    </message>
    <message>
        <source>Scatter, m/s</source>
        <translation>Streuung, m/s</translation>
    </message>
    <message>
        <source>SD (standard deviation) of the points about the line</source>
        <translation>SD (Standardabweichung) der Punkte um die Gerade</translation>
    </message>
    <message>
        <source>Line&apos;s 1RM, %1</source>
        <translation>1RM der Geraden, %1</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::Logbook</name>
    <message>
        <source>add athlete</source>
        <translation>Athlet hinzufügen</translation>
    </message>
    <message>
        <source>add lift</source>
        <translation>Übung hinzufügen</translation>
    </message>
    <message>
        <source>add device</source>
        <translation>Messgerät hinzufügen</translation>
    </message>
    <message>
        <source>add training block</source>
        <translation>Trainingsblock hinzufügen</translation>
    </message>
    <message>
        <source>add set of equipment</source>
        <translation>Ausrüstung hinzufügen</translation>
    </message>
    <message>
        <source>add test</source>
        <translation>Test hinzufügen</translation>
    </message>
    <message>
        <source>change test</source>
        <translation>Test ändern</translation>
    </message>
    <message>
        <source>remove test</source>
        <translation>Test entfernen</translation>
    </message>
    <message>
        <source>change athlete</source>
        <translation>Athlet ändern</translation>
    </message>
    <message>
        <source>change lift</source>
        <translation>Übung ändern</translation>
    </message>
    <message>
        <source>change device</source>
        <translation>Messgerät ändern</translation>
    </message>
    <message>
        <source>change training block</source>
        <translation>Trainingsblock ändern</translation>
    </message>
    <message>
        <source>change set of equipment</source>
        <translation>Ausrüstung ändern</translation>
    </message>
    <message>
        <source>remove training block</source>
        <translation>Trainingsblock entfernen</translation>
    </message>
    <message>
        <source>remove set of equipment</source>
        <translation>Ausrüstung entfernen</translation>
    </message>
    <message>
        <source>add station</source>
        <translation>Station hinzufügen</translation>
    </message>
    <message>
        <source>change station</source>
        <translation>Station ändern</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::MainWindow</name>
    <message>
        <source>Slopebook</source>
        <translation>Slopebook</translation>
    </message>
    <message>
        <source>%1 – Slopebook</source>
        <translation>%1 – Slopebook</translation>
    </message>
    <message>
        <source>Logs (*.slopebook);;All files (*)</source>
        <translation>Protokolle (*.slopebook);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>There is nothing to print yet.</source>
        <translation>Noch nichts zu drucken.</translation>
    </message>
    <message>
        <source>&amp;Undo %1</source>
        <translation>%1 &amp;rückgängig machen</translation>
    </message>
    <message>
        <source>&amp;Redo %1</source>
        <translation>%1 &amp;wiederherstellen</translation>
    </message>
    <message>
        <source>New log</source>
        <translation>Neues Protokoll</translation>
    </message>
    <message>
        <source>Open a log</source>
        <translation>Protokoll öffnen</translation>
    </message>
    <message>
        <source>Back up to</source>
        <translation>Sichern unter</translation>
    </message>
    <message>
        <source>Backed up, and the copy checked: %1</source>
        <translation>Gesichert und die Kopie geprüft: %1</translation>
    </message>
    <message>
        <source>Go back to a backup…</source>
        <translation>Auf eine Sicherung zurückgehen…</translation>
    </message>
    <message>
        <source>A backup was made, and the copy checked.</source>
        <translation>Eine Sicherung wurde angelegt und die Kopie geprüft.</translation>
    </message>
    <message>
        <source>Today&apos;s backup could not be made. %1</source>
        <translation>Die heutige Sicherung konnte nicht angelegt werden. %1</translation>
    </message>
    <message>
        <source>The backup stands in the place of the log.</source>
        <translation>Die Sicherung steht jetzt an der Stelle des Protokolls.</translation>
    </message>
    <message>
        <source>The backup stands in the place of the log, which is kept as %1.</source>
        <translation>Die Sicherung steht jetzt an der Stelle des Protokolls; das bisherige liegt daneben als %1.</translation>
    </message>
    <message>
        <source>%1 is a workbook: copy its cells and paste them into a session, or save the sheet as CSV and import that.</source>
        <translation>%1 ist eine Arbeitsmappe: ihre Zellen kopieren und in eine Einheit einfügen, oder das Blatt als CSV speichern und das importieren.</translation>
    </message>
    <message>
        <source>There is no chart on this page.</source>
        <translation>Auf dieser Seite ist kein Diagramm.</translation>
    </message>
    <message>
        <source>The chart is on the clipboard.</source>
        <translation>Das Diagramm ist in der Zwischenablage.</translation>
    </message>
    <message>
        <source>The chart&apos;s figures are on the clipboard.</source>
        <translation>Die Zahlen des Diagramms sind in der Zwischenablage.</translation>
    </message>
    <message>
        <source>There is no table to import: copy its cells first.</source>
        <translation>Es ist keine Tabelle zum Importieren da: erst ihre Zellen kopieren.</translation>
    </message>
    <message>
        <source>Export to a new folder</source>
        <translation>In einen neuen Ordner exportieren</translation>
    </message>
    <message>
        <source>Exporting</source>
        <translation>Wird exportiert</translation>
    </message>
    <message>
        <source>Exported, as CSV and as a workbook: %1</source>
        <translation>Exportiert, als CSV und als Arbeitsmappe: %1</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>Abgebrochen. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Imported.</source>
        <translation>Importiert.</translation>
    </message>
    <message>
        <source>Backed up, but the log is not sound, and the copy %1 is no better. The first of what was found: %2</source>
        <translation>Gesichert, aber das Protokoll ist nicht in Ordnung, und die Kopie %1 ist nicht besser. Der erste Befund: %2</translation>
    </message>
    <message>
        <source>It is open for reading only, and what is damaged is left out.</source>
        <translation>Es ist nur zum Lesen geöffnet, und was beschädigt ist, fehlt hier.</translation>
    </message>
    <message>
        <source>Write into the damaged log?</source>
        <translation>In das beschädigte Protokoll schreiben?</translation>
    </message>
    <message>
        <source>What is written from now on goes into a damaged file, and no daily backups are made of it. What is damaged itself stays as it is. Going back to a backup, or importing an export of this log into a new one, is safer.</source>
        <translation>Was von jetzt an geschrieben wird, kommt in eine beschädigte Datei, von der keine täglichen Sicherungen gemacht werden. Was selbst beschädigt ist, bleibt, wie es ist. Sicherer ist es, auf eine Sicherung zurückzugehen oder einen Export dieses Protokolls in ein neues zu importieren.</translation>
    </message>
    <message>
        <source>Write all the same</source>
        <translation>Trotzdem schreiben</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>So lassen, wie es ist</translation>
    </message>
    <message>
        <source>This log is damaged, and is written to because you said so. What is damaged is left out.</source>
        <translation>Dieses Protokoll ist beschädigt und wird beschrieben, weil Sie es so wollten. Was beschädigt ist, fehlt hier.</translation>
    </message>
    <message>
        <source>Import tables</source>
        <translation>Tabellen einlesen</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv *.xlsx *.ods);;All files (*)</source>
        <translation>Tabellen (*.csv *.txt *.tsv *.xlsx *.ods);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The log that was open last is not there any more: %1</source>
        <translation>Das zuletzt offene Protokoll ist nicht mehr da: %1</translation>
    </message>
    <message>
        <source>%1 (not there any more)</source>
        <translation>%1 (nicht mehr da)</translation>
    </message>
    <message>
        <source>A table goes into a log: open one, or make a new one, then drop it again.</source>
        <translation>Eine Tabelle kommt in ein Protokoll: eines öffnen oder neu anlegen, dann noch einmal hineinziehen.</translation>
    </message>
    <message>
        <source>%1 – %2 – Slopebook</source>
        <translation>%1 – %2 – Slopebook</translation>
    </message>
    <message>
        <source>Merge another log</source>
        <translation>Anderes Protokoll aufnehmen</translation>
    </message>
    <message>
        <source>Nothing new: everything of %1 is in the log already.</source>
        <translation>Nichts Neues: Alles aus %1 steht schon im Protokoll.</translation>
    </message>
    <message>
        <source>Merged. A copy of the log as it was before is in its folder of backups.</source>
        <translation>Aufgenommen. Eine Kopie des Protokolls, wie es vorher war, liegt im Ordner seiner Sicherungen.</translation>
    </message>
    <message>
        <source>Nothing is to be chosen.</source>
        <translation>Es gibt nichts zu wählen.</translation>
    </message>
    <message numerus="yes">
        <source>%n choices between two logs wait: Log, Choose between two sides.</source>
        <translation>
            <numerusform>%n Wahl zwischen zwei Protokollen wartet: Protokoll, Zwischen zwei Seiten wählen.</numerusform>
            <numerusform>%n Wahlen zwischen zwei Protokollen warten: Protokoll, Zwischen zwei Seiten wählen.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is being read and compared.</source>
        <translation>%1 wird gelesen und verglichen.</translation>
    </message>
    <message>
        <source>%1 is being merged.</source>
        <translation>%1 wird aufgenommen.</translation>
    </message>
    <message>
        <source>This log meets no store: Log, Shared store, Join a store.</source>
        <translation>Dieses Protokoll gleicht sich mit keinem Speicher ab: Protokoll, Gemeinsamer Speicher, Beitreten.</translation>
    </message>
    <message>
        <source>The log has joined the store, and meets it now.</source>
        <translation>Das Protokoll ist dem Speicher beigetreten und gleicht sich jetzt mit ihm ab.</translation>
    </message>
    <message>
        <source>Leave the store?</source>
        <translation>Den Speicher verlassen?</translation>
    </message>
    <message>
        <source>&amp;Leave</source>
        <translation>&amp;Verlassen</translation>
    </message>
    <message>
        <source>&amp;Stay</source>
        <translation>&amp;Bleiben</translation>
    </message>
    <message>
        <source>Leaving the store</source>
        <translation>Der Speicher wird verlassen</translation>
    </message>
    <message>
        <source>The log meets no store any more.</source>
        <translation>Das Protokoll gleicht sich mit keinem Speicher mehr ab.</translation>
    </message>
    <message>
        <source>The log will meet the store no more. Nothing that it holds changes, and nothing in the store. It can join again.</source>
        <translation>Das Protokoll gleicht sich dann nicht mehr mit dem Speicher ab. Nichts darin ändert sich, und nichts im Speicher. Es kann wieder beitreten.</translation>
    </message>
    <message>
        <source>The log is still being checked. It meets its store once that is done.</source>
        <translation>Das Protokoll wird noch geprüft. Danach gleicht es sich mit seinem Speicher ab.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::MatrixView</name>
    <message>
        <source>All measures by training blocks</source>
        <translation>Alle Messgrößen nach Trainingsblöcken</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::MergeDialog</name>
    <message>
        <source>Merge another log</source>
        <translation>Anderes Protokoll aufnehmen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>to choose</source>
        <translation>zu wählen</translation>
    </message>
    <message>
        <source>joined</source>
        <translation>vereint</translation>
    </message>
    <message>
        <source>one with %1</source>
        <translation>eins mit %1</translation>
    </message>
    <message>
        <source>renamed</source>
        <translation>umbenannt</translation>
    </message>
    <message>
        <source>before: %1</source>
        <translation>vorher: %1</translation>
    </message>
    <message>
        <source>brought back</source>
        <translation>zurückgeholt</translation>
    </message>
    <message>
        <source>removed in one log, in use in the other</source>
        <translation>im einen Protokoll entfernt, im anderen verwendet</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Wovon</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>What is not simply added</source>
        <translation>Was nicht einfach dazukommt</translation>
    </message>
    <message>
        <source>A backup is made first, in %1. To undo the merge go back to it: Log, Go back to a backup.</source>
        <translation>Zuerst wird eine Sicherung angelegt, in %1. Um die Aufnahme rückgängig zu machen, gehen Sie auf sie zurück: Protokoll, Auf eine Sicherung zurückgehen.</translation>
    </message>
    <message>
        <source>&amp;Merge</source>
        <translation>Aufneh&amp;men</translation>
    </message>
    <message>
        <source>Both logs hold the same. How %1 came to it is noted, so that what both know is not asked about again. The other log is only read.</source>
        <translation>Beide Protokolle halten dasselbe. Wie %1 dazu kam, wird vermerkt, damit nach dem, was beide wissen, nicht noch einmal gefragt wird. Das andere Protokoll wird nur gelesen.</translation>
    </message>
    <message>
        <source>From %1 come: %2 new, %3 changed, %4 removed, %5 one with another (athletes, sessions, sets and all else together). The other log is only read.</source>
        <translation>Aus %1 kommen: %2 neu, %3 geändert, %4 entfernt, %5 eins mit anderen (Athleten, Einheiten, Sätze und alles andere zusammen). Das andere Protokoll wird nur gelesen.</translation>
    </message>
    <message>
        <source>These two logs have no common past: of %1 athletes here and %2 there none is in both. Who is in both under one name stands twice, with the sessions of each; lifts, tests and devices of one name become one.</source>
        <translation>Diese beiden Protokolle haben keine gemeinsame Vergangenheit: Von %1 Athleten hier und %2 dort ist niemand in beiden. Wer in beiden unter einem Namen steht, steht dann zweimal da, mit den jeweils eigenen Einheiten; Übungen, Tests und Geräte eines Namens werden eins.</translation>
    </message>
    <message>
        <source>What is joined is one from now on: everything that either log holds of it stands under the one that is left.</source>
        <translation>Was vereint wird, ist von da an eins: Alles, was eines der Protokolle davon hält, steht unter dem, das bleibt.</translation>
    </message>
    <message>
        <source>It is not what was shown before: the log was written to meanwhile.</source>
        <translation>Es ist nicht, was vorher gezeigt wurde: In das Protokoll wurde inzwischen geschrieben.</translation>
    </message>
    <message>
        <source>A backup was made first, in %1. To undo the merge go back to it: Log, Go back to a backup.</source>
        <translation>Zuerst wurde eine Sicherung angelegt, in %1. Um die Aufnahme rückgängig zu machen, gehen Sie auf sie zurück: Protokoll, Auf eine Sicherung zurückgehen.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::MessageBar</name>
    <message>
        <source>Message</source>
        <translation>Meldung</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Ausblenden</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::NameCombo</name>
    <message>
        <source>type to find</source>
        <translation>tippen zum Suchen</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::NearNamesPanel</name>
    <message>
        <source>Nearly the same names. Nothing is taken in before this is said:</source>
        <translation>Fast gleiche Namen. Nichts wird übernommen, bevor das gesagt ist:</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen …</translation>
    </message>
    <message>
        <source>%1 is new; the log has %2. It is</source>
        <translation>%1 ist neu; das Protokoll hat %2. Es ist</translation>
    </message>
    <message>
        <source>%1 and %2 are both new. It is</source>
        <translation>%1 und %2 sind beide neu. Es ist</translation>
    </message>
    <message>
        <source>the same athlete: %1</source>
        <translation>derselbe Athlet: %1</translation>
    </message>
    <message>
        <source>somebody new: %1</source>
        <translation>jemand Neues: %1</translation>
    </message>
    <message>
        <source>So many more names are nearly others: %1. They are</source>
        <translation>So viele weitere Namen sind fast andere: %1. Es sind</translation>
    </message>
    <message>
        <source>all the same athletes as those</source>
        <translation>alle dieselben Athleten wie jene</translation>
    </message>
    <message>
        <source>all somebody new</source>
        <translation>alle jemand Neues</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::NextTestPane</name>
    <message>
        <source>as before</source>
        <translation>wie bisher</translation>
    </message>
    <message>
        <source>the test&apos;s own scatter</source>
        <translation>Streuung dieses Tests</translation>
    </message>
    <message>
        <source>with earlier tests&apos; scatter</source>
        <translation>mit Streuung früherer Tests</translation>
    </message>
    <message>
        <source>scatter taken as known</source>
        <translation>Streuung als bekannt angenommen</translation>
    </message>
    <message>
        <source>What the interval is made with</source>
        <translation>Womit das Intervall gebildet wird</translation>
    </message>
    <message>
        <source>S&amp;teps</source>
        <translation>St&amp;ufen</translation>
    </message>
    <message>
        <source>Reps a set</source>
        <translation>Wdh. je Satz</translation>
    </message>
    <message>
        <source>Which ladder to test with</source>
        <translation>Mit welcher Leiter testen</translation>
    </message>
    <message>
        <source>Ladders for the next test, best first</source>
        <translation>Leitern für den nächsten Test, beste zuerst</translation>
    </message>
    <message>
        <source>Next test</source>
        <translation>Nächster Test</translation>
    </message>
    <message>
        <source>Heavie&amp;st, of 1RM</source>
        <translation>Schwerste, vom &amp;1RM</translation>
    </message>
    <message>
        <source>Intervals &amp;by</source>
        <translation>Intervall-&amp;Quelle</translation>
    </message>
    <message>
        <source>What two tests can show before they are done, and what would settle what is unclear</source>
        <translation>Was zwei Tests zeigen können, bevor sie gemacht sind, und was Unklares klären würde</translation>
    </message>
    <message>
        <source>%1 reps a set</source>
        <translation>%1 Wiederholungen je Satz</translation>
    </message>
    <message>
        <source>reps as before</source>
        <translation>Wiederholungen wie zuvor</translation>
    </message>
    <message>
        <source>Test with %1. %2</source>
        <translation>Teste mit %1. %2</translation>
    </message>
    <message>
        <source>%1 steps, %2, up to %3 of the 1RM</source>
        <translation>%1 Stufen, %2, bis %3 des 1RM</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::NoisePage</name>
    <message>
        <source>From &amp;repeat tests</source>
        <translation>Aus &amp;Wiederholungstests</translation>
    </message>
    <message>
        <source>Kinds of noise</source>
        <translation>Arten der Streuung</translation>
    </message>
    <message>
        <source>&amp;Between devices</source>
        <translation>&amp;Zwischen Messgeräten</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::NoiseView</name>
    <message>
        <source>Notes</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>Noise by lift, device and load</source>
        <translation>Streuung nach Übung, Messgerät und Last</translation>
    </message>
    <message>
        <source>Repeat tests used</source>
        <translation>Verwendete Wiederholungstests</translation>
    </message>
    <message>
        <source>Choose a lift, or every lift.</source>
        <translation>Eine Übung wählen, oder jede Übung.</translation>
    </message>
    <message>
        <source>Ever&amp;y lift</source>
        <translation>&amp;Jede Übung</translation>
    </message>
    <message>
        <source>The noise in use</source>
        <translation>Die verwendete Streuung</translation>
    </message>
    <message>
        <source>Repeat &amp;tests used</source>
        <translation>Ve&amp;rwendete Wiederholungstests</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::OverviewPage</name>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Was not possible</source>
        <translation>War nicht möglich</translation>
    </message>
    <message>
        <source>The stations, where it can be tested</source>
        <translation>Die Stationen, wo es getestet werden kann</translation>
    </message>
    <message>
        <source>What is due, and what was not possible</source>
        <translation>Was fällig ist und was nicht möglich war</translation>
    </message>
    <message>
        <source>&amp;Whole season</source>
        <translation>Gan&amp;ze Saison</translation>
    </message>
    <message>
        <source>What chance alone would give</source>
        <translation>Was der Zufall allein ergäbe</translation>
    </message>
    <message>
        <source>Nothing: all that was measured before was measured again.</source>
        <translation>Nichts: Alles, was zuvor gemessen wurde, wurde wieder gemessen.</translation>
    </message>
    <message>
        <source>That measure is of no load: there is no season of it.</source>
        <translation>Diese Messgröße gehört zu keiner Last: Es gibt keinen Verlauf davon.</translation>
    </message>
    <message>
        <source>Save the overview as PDF</source>
        <translation>Überblick als PDF speichern</translation>
    </message>
    <message>
        <source>%1 overview</source>
        <translation>%1 Überblick</translation>
    </message>
    <message>
        <source>What the last block changed</source>
        <translation>Was der letzte Block geändert hat</translation>
    </message>
    <message>
        <source>Block that changes are counted from</source>
        <translation>Block, von dem an Änderungen gezählt werden</translation>
    </message>
    <message>
        <source>Fr&amp;om</source>
        <translation>V&amp;on</translation>
    </message>
    <message>
        <source>Also to beware of: 1 thing, told with the whole season.</source>
        <translation>Auch zu beachten: 1 Punkt; er steht bei der ganzen Saison.</translation>
    </message>
    <message>
        <source>Also to beware of: %1 things, told with the whole season.</source>
        <translation>Auch zu beachten: %1 Punkte; sie stehen bei der ganzen Saison.</translation>
    </message>
    <message>
        <source>&amp;Test it at a station</source>
        <translation>An einer Station testen</translation>
    </message>
    <message>
        <source>Beside the newest figure, and in the table: the change. Bars reach to %1 times the smallest change that matters (grey), right is better.</source>
        <translation>Neben der neuesten Zahl und in der Tabelle: die Änderung. Balken reichen bis zum %1-Fachen der kleinsten bedeutsamen Änderung (grau), rechts ist besser.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::PaperTask</name>
    <message>
        <source>The page as it is printed</source>
        <translation>Die Seite, wie sie gedruckt wird</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::PasteDialog</name>
    <message>
        <source>Pasted sets</source>
        <translation>Eingefügte Sätze</translation>
    </message>
    <message>
        <source>Sets as they will be taken</source>
        <translation>Die Sätze, wie sie übernommen werden</translation>
    </message>
    <message>
        <source>&amp;Take these sets</source>
        <translation>Diese Sätze ü&amp;bernehmen</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Auswählen…</translation>
    </message>
    <message>
        <source>Rows below each other have the same load. A row is</source>
        <translation>Untereinanderstehende Zeilen haben dieselbe Last. Eine Zeile ist</translation>
    </message>
    <message>
        <source>one rep: rows of the same load make one set</source>
        <translation>eine Wiederholung: Zeilen mit derselben Last ergeben einen Satz</translation>
    </message>
    <message>
        <source>one set of its own</source>
        <translation>ein eigener Satz</translation>
    </message>
    <message>
        <source>The point is the decimal mark</source>
        <translation>Der Punkt ist das Dezimalzeichen</translation>
    </message>
    <message>
        <source>The comma is the decimal mark</source>
        <translation>Das Komma ist das Dezimalzeichen</translation>
    </message>
    <message>
        <source>cm/s, or hundredths: 92 is 0.92 m/s</source>
        <translation>cm/s oder Hundertstel: 92 ist 0,92 m/s</translation>
    </message>
    <message>
        <source>m/s</source>
        <translation>m/s</translation>
    </message>
    <message>
        <source>Nothing is taken before this is said.</source>
        <translation>Bevor das gesagt ist, wird nichts übernommen.</translation>
    </message>
    <message>
        <source>Sets: %1</source>
        <translation>Sätze: %1</translation>
    </message>
    <message>
        <source>and so on</source>
        <translation>und so weiter</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a load: its reps</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::PeriodChooser</name>
    <message>
        <source>On or near a date</source>
        <translation>An oder nahe einem Datum</translation>
    </message>
    <message>
        <source>%1: date</source>
        <translation>%1: Datum</translation>
    </message>
    <message>
        <source>%1: days around it</source>
        <translation>%1: Tage darum herum</translation>
    </message>
    <message>
        <source>± </source>
        <translation>± </translation>
    </message>
    <message>
        <source> days</source>
        <translation> Tage</translation>
    </message>
    <message>
        <source>From day to day</source>
        <translation>Von Tag bis Tag</translation>
    </message>
    <message>
        <source>%1: last day</source>
        <translation>%1: letzter Tag</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::PlanForm</name>
    <message>
        <source>Ne&amp;w…</source>
        <translation>&amp;Neu…</translation>
    </message>
    <message>
        <source>Every load</source>
        <translation>Jede Last</translation>
    </message>
    <message>
        <source>Share of the 1RM</source>
        <translation>Anteil am 1RM</translation>
    </message>
    <message>
        <source>Speed of the fastest rep</source>
        <translation>Geschw. der schnellsten Wdh.</translation>
    </message>
    <message>
        <source>Aim, from</source>
        <translation>Ziel, von</translation>
    </message>
    <message>
        <source>Aim, to</source>
        <translation>Ziel, bis</translation>
    </message>
    <message>
        <source>nearest</source>
        <translation>nächstgelegene</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>by speed</source>
        <translation>nach Geschw.</translation>
    </message>
    <message>
        <source>Ceiling toda&amp;y</source>
        <translation>Lastgren&amp;ze heute</translation>
    </message>
    <message>
        <source>From, to</source>
        <translation>Von, bis</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <source>Reps</source>
        <translation>Wdh.</translation>
    </message>
    <message>
        <source>Session of the line</source>
        <translation>Einheit der Geraden</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>Ceiling today</source>
        <translation>Lastgrenze heute</translation>
    </message>
    <message>
        <source>Aim at</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Load: which side of the aim</source>
        <translation>Last: auf welcher Seite des Ziels</translation>
    </message>
    <message>
        <source>Stop after losing, percent</source>
        <translation>Stopp bei Geschwindigkeitsverlust, Prozent</translation>
    </message>
    <message>
        <source>Show loads in</source>
        <translation>Gewichte in</translation>
    </message>
    <message>
        <source>m/s</source>
        <translation>m/s</translation>
    </message>
    <message>
        <source>the ceiling</source>
        <translation>die Lastgrenze</translation>
    </message>
    <message>
        <source>the aim</source>
        <translation>das Ziel</translation>
    </message>
    <message>
        <source>the velocity loss</source>
        <translation>den Geschwindigkeitsverlust</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Stange</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>any, or none</source>
        <translation>beliebig oder keine</translation>
    </message>
    <message>
        <source>a number for %1</source>
        <translation>eine Zahl für %1</translation>
    </message>
    <message>
        <source>Cha&amp;nge…</source>
        <translation>Än&amp;dern…</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Restricted-flow window</source>
        <translation>&amp;Fenster für Blutflussrestriktion</translation>
    </message>
    <message>
        <source>B&amp;orrow from earlier sessions</source>
        <translation>Frühere Einheiten &amp;mitnutzen</translation>
    </message>
    <message>
        <source>Sess&amp;ion of the line</source>
        <translation>Einheit der Geraden</translation>
    </message>
    <message>
        <source>Eq&amp;uipment</source>
        <translation>Au&amp;srüstung</translation>
    </message>
    <message>
        <source>Ai&amp;m at</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Sto&amp;p after losing (%)</source>
        <translation>St&amp;opp bei Verlust (%)</translation>
    </message>
    <message>
        <source>%1 (for other lifts)</source>
        <translation>%1 (für andere Übungen)</translation>
    </message>
    <message>
        <source>%1 (for %2)</source>
        <translation>%1 (für %2)</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>With a second figure: a window from one to the other</source>
        <translation>Mit einer zweiten Zahl: ein Fenster von der einen zur anderen</translation>
    </message>
    <message>
        <source>the set&apos;s own</source>
        <translation>eigene</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::PlanLadderModel</name>
    <message>
        <source>not bounded</source>
        <translation>nicht begrenzt</translation>
    </message>
    <message>
        <source>#</source>
        <translation>#</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>Leiter</translation>
    </message>
    <message>
        <source>Loads (%1)</source>
        <translation>Lasten (%1)</translation>
    </message>
    <message>
        <source>Heaviest</source>
        <translation>Schwerste</translation>
    </message>
    <message>
        <source>Estimated 1RM</source>
        <translation>Geschätztes 1RM</translation>
    </message>
    <message>
        <source>Change at %1</source>
        <translation>Änderung bei %1</translation>
    </message>
    <message>
        <source>Beware</source>
        <translation>Achtung</translation>
    </message>
    <message>
        <source>Its change</source>
        <translation>Dessen Änderung</translation>
    </message>
    <message>
        <source>%1: ± %2 by the lines alone</source>
        <translation>%1: ± %2 durch die Geraden allein</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::PlanModel</name>
    <message>
        <source>chosen</source>
        <translation>gewählt</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Put on (each side)</source>
        <translation>Auflegen (je Seite)</translation>
    </message>
    <message>
        <source>Of estimated 1RM</source>
        <translation>Vom gesch. 1RM</translation>
    </message>
    <message>
        <source>Fastest rep expected</source>
        <translation>Schnellste Wdh. erwartet</translation>
    </message>
    <message>
        <source>Stop at</source>
        <translation>Stopp bei</translation>
    </message>
    <message>
        <source>under the MVT</source>
        <translation>unter der MVT</translation>
    </message>
    <message>
        <source>over the 1RM</source>
        <translation>über dem 1RM</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::PlanPage</name>
    <message>
        <source>What is planned</source>
        <translation>Was geplant ist</translation>
    </message>
    <message>
        <source>Borrowed from earlier sessions</source>
        <translation>Gestützt auf frühere Einheiten</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorsichtshinweise</translation>
    </message>
    <message>
        <source>Loads that can be built</source>
        <translation>Lasten, die sich zusammenstellen lassen</translation>
    </message>
    <message>
        <source>Ne&amp;xt test</source>
        <translation>N&amp;ächster Test</translation>
    </message>
    <message>
        <source>S&amp;quad</source>
        <translation>&amp;Kader</translation>
    </message>
    <message>
        <source>What to plan</source>
        <translation>Was zu planen ist</translation>
    </message>
    <message>
        <source>Choose an athlete and a lift.</source>
        <translation>Athlet und Übung wählen.</translation>
    </message>
    <message>
        <source>No session of this lift yet: test first, then plan.</source>
        <translation>Noch keine Einheit dieser Übung: erst testen, dann planen.</translation>
    </message>
    <message>
        <source>Make a set of equipment first: the bars and plates at hand.</source>
        <translation>Erst eine Ausrüstung anlegen: die vorhandenen Stangen und Scheiben.</translation>
    </message>
    <message>
        <source>Set of equipment</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>Removed; undo brings it back.</source>
        <translation>Entfernt; Rückgängig holt sie zurück.</translation>
    </message>
    <message>
        <source>Save the card as PDF</source>
        <translation>Karte als PDF speichern</translation>
    </message>
    <message>
        <source>The card as it is printed</source>
        <translation>Die Karte, wie sie gedruckt wird</translation>
    </message>
    <message>
        <source>Loa&amp;ds</source>
        <translation>Ma&amp;chbare Lasten</translation>
    </message>
    <message>
        <source>The line that is planned from</source>
        <translation>Die Gerade, nach der geplant wird</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>a sentence on what is planned with, one on how old the line is</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>The line that is planned from, and what can be built on it</source>
        <translation>Die Gerade, von der geplant wird, und was auf ihr zusammengestellt werden kann</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::PointsModel</name>
    <message>
        <source>left out: %1</source>
        <translation>ausgeschlossen: %1</translation>
    </message>
    <message>
        <source>far from its line: have a look</source>
        <translation>weit von der Geraden: bitte prüfen</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Satz</translation>
    </message>
    <message>
        <source>m/s</source>
        <translation>m/s</translation>
    </message>
    <message>
        <source>Residual</source>
        <translation>Residuum</translation>
    </message>
    <message>
        <source>Leverage</source>
        <translation>Hebelwert</translation>
    </message>
    <message>
        <source>Studentised</source>
        <translation>Studentisiert</translation>
    </message>
    <message>
        <source>Cook</source>
        <translation>Cook</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation>Last, %1</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::ProfilePage</name>
    <message>
        <source>Choose an athlete and a lift.</source>
        <translation>Athlet und Übung wählen.</translation>
    </message>
    <message>
        <source>Chart of the chosen sessions&apos; lines</source>
        <translation>Diagramm der Geraden der gewählten Einheiten</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Was fehlt</translation>
    </message>
    <message>
        <source>Sessions and their lines</source>
        <translation>Einheiten und ihre Geraden</translation>
    </message>
    <message>
        <source>Points of the selected session</source>
        <translation>Punkte der gewählten Einheit</translation>
    </message>
    <message>
        <source>Session&amp;s (checked: on the chart)</source>
        <translation>&amp;Einheiten (angehakt: im Diagramm)</translation>
    </message>
    <message>
        <source>%1 (m/s)</source>
        <translation>%1 (m/s)</translation>
    </message>
    <message>
        <source>Points of %1</source>
        <translation>Punkte vom %1</translation>
    </message>
    <message>
        <source>Draw &amp;borrowed line</source>
        <translation>Gestützte Gerade &amp;zeichnen</translation>
    </message>
    <message>
        <source>Borrowed from earlier sessions</source>
        <translation>Gestützt auf frühere Einheiten</translation>
    </message>
    <message>
        <source>borrowed, %1</source>
        <translation>gestützt, %1</translation>
    </message>
    <message>
        <source>No sets of this lift yet: type the first under Floor.</source>
        <translation>Noch keine Sätze dieser Übung: den ersten unter Halle eingeben.</translation>
    </message>
    <message>
        <source>How well each point fits</source>
        <translation>Wie gut jeder Punkt passt</translation>
    </message>
    <message>
        <source>Residual, leverage and influence of every point (Ctrl+D)</source>
        <translation>Residuum, Hebelwert und Einfluss jedes Punkts (Strg+D)</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::RelationPane</name>
    <message>
        <source>not used</source>
        <translation>nicht verwendet</translation>
    </message>
    <message>
        <source>the squad&apos;s own</source>
        <translation>die des Kaders</translation>
    </message>
    <message>
        <source>the published equation</source>
        <translation>die veröffentlichte Gleichung</translation>
    </message>
    <message>
        <source>Of 1RM, by the squad&apos;s relation</source>
        <translation>Vom 1RM laut Kader</translation>
    </message>
    <message>
        <source>Of 1RM, by the published equation</source>
        <translation>Vom 1RM laut veröffentlichter Gleichung</translation>
    </message>
    <message>
        <source>Use in &amp;the table of loads</source>
        <translation>In der Lasttabelle n&amp;utzen</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::RestTimer</name>
    <message>
        <source>Rest %1:%2</source>
        <translation>Pause %1:%2</translation>
    </message>
    <message>
        <source>Rest since the last set</source>
        <translation>Pause seit dem letzten Satz</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::RosterDialog</name>
    <message>
        <source>Who is here, %1</source>
        <translation>Wer ist da, %1</translation>
    </message>
    <message>
        <source>a name; Enter takes the first</source>
        <translation>ein Name; Enter nimmt den ersten</translation>
    </message>
    <message>
        <source>Not here</source>
        <translation>Nicht da</translation>
    </message>
    <message>
        <source>Here, in the order of their turns</source>
        <translation>Da, in der Reihenfolge</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>&amp;Hinzu</translation>
    </message>
    <message>
        <source>Add a&amp;ll</source>
        <translation>A&amp;lle hinzu</translation>
    </message>
    <message>
        <source>As last &amp;time</source>
        <translation>Wie le&amp;tztes Mal</translation>
    </message>
    <message>
        <source>Re&amp;move</source>
        <translation>&amp;Weg</translation>
    </message>
    <message>
        <source>&amp;Earlier</source>
        <translation>F&amp;rüher</translation>
    </message>
    <message>
        <source>Alt+Up does the same in the list</source>
        <translation>Alt+Auf tut dasselbe in der Liste</translation>
    </message>
    <message>
        <source>Late&amp;r</source>
        <translation>S&amp;päter</translation>
    </message>
    <message>
        <source>Alt+Down does the same in the list</source>
        <translation>Alt+Ab tut dasselbe in der Liste</translation>
    </message>
    <message>
        <source>&amp;Find</source>
        <translation>&amp;Finden</translation>
    </message>
    <message>
        <source>&amp;Here, in turn</source>
        <translation>&amp;Da, der Reihe nach</translation>
    </message>
    <message>
        <source>Nobody else is called “%1”.</source>
        <translation>Sonst heißt niemand „%1“.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::RosterModel</name>
    <message>
        <source>%1, whose turn it is</source>
        <translation>%1, an der Reihe</translation>
    </message>
    <message>
        <source>done %1</source>
        <translation>fertig %1</translation>
    </message>
    <message>
        <source>next %1</source>
        <translation>als Nächstes %1</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation>zuletzt %1</translation>
    </message>
    <message>
        <source>Here today</source>
        <translation>Heute da</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Nun</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Zuletzt</translation>
    </message>
    <message>
        <source>Rest</source>
        <translation>Pause</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::SeasonButtons</name>
    <message>
        <source>Co&amp;mpare</source>
        <translation>Verglei&amp;chen</translation>
    </message>
    <message>
        <source>The comparison behind the line; Enter in the table</source>
        <translation>Der Vergleich hinter der Zeile; Eingabetaste in der Tabelle</translation>
    </message>
    <message>
        <source>The comparison behind the cell; Enter in the table</source>
        <translation>Der Vergleich hinter der Zelle; Eingabetaste in der Tabelle</translation>
    </message>
    <message>
        <source>The last session behind the line; the space bar in the table</source>
        <translation>Die letzte Einheit hinter der Zeile; Leertaste in der Tabelle</translation>
    </message>
    <message>
        <source>The last session behind the cell; the space bar in the table</source>
        <translation>Die letzte Einheit hinter der Zelle; Leertaste in der Tabelle</translation>
    </message>
    <message>
        <source>Load thro&amp;ugh the season</source>
        <translation>&amp;Last im Verlauf</translation>
    </message>
    <message>
        <source>Each session at that load; a full stop in the table</source>
        <translation>Jede Einheit mit dieser Last; Punkt in der Tabelle</translation>
    </message>
    <message>
        <source>Pri&amp;nt preview…</source>
        <translation>Druckvorschau…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>Save P&amp;DF…</source>
        <translation>PD&amp;F speichern…</translation>
    </message>
    <message>
        <source>Open it&amp;s session</source>
        <translation>Ihre &amp;Einheit öffnen</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::SeasonPage</name>
    <message>
        <source>Choose an athlete and a lift.</source>
        <translation>Athlet und Übung wählen.</translation>
    </message>
    <message>
        <source>Load to follow</source>
        <translation>Verfolgte Last</translation>
    </message>
    <message>
        <source>Sessions, the load and the estimated 1RM</source>
        <translation>Einheiten, die Last und das geschätzte 1RM</translation>
    </message>
    <message>
        <source>What the season says</source>
        <translation>Was die Saison sagt</translation>
    </message>
    <message>
        <source>Where the figures come from</source>
        <translation>Woher die Zahlen stammen</translation>
    </message>
    <message>
        <source>%1 (check load)</source>
        <translation>%1 (Prüflast)</translation>
    </message>
    <message>
        <source>Season of %1 at %2: %3</source>
        <translation>Saison von %1 bei %2: %3</translation>
    </message>
    <message>
        <source>L&amp;oad</source>
        <translation>&amp;Last</translation>
    </message>
    <message>
        <source>Pri&amp;nt preview…</source>
        <translation>Druckvorschau…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>Save P&amp;DF…</source>
        <translation>PD&amp;F speichern…</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Save the season as PDF</source>
        <translation>Saison als PDF speichern</translation>
    </message>
    <message>
        <source>%1 %2 season at %3</source>
        <translation>%1 %2 Saison bei %3</translation>
    </message>
    <message>
        <source>No sets of this lift yet: type the first under Floor.</source>
        <translation>Noch keine Sätze dieser Übung: den ersten unter Halle eingeben.</translation>
    </message>
    <message>
        <source>Which trends are drawn and told</source>
        <translation>Welche Trends gezeichnet und genannt werden</translation>
    </message>
    <message>
        <source>&amp;Trend of the season</source>
        <translation>&amp;Trend der Saison</translation>
    </message>
    <message>
        <source>Trend &amp;within each block</source>
        <translation>Trend &amp;innerhalb jedes Blocks</translation>
    </message>
    <message>
        <source>both trends</source>
        <translation>beide Trends</translation>
    </message>
    <message>
        <source>trend</source>
        <translation>Trend</translation>
    </message>
    <message>
        <source>trends of blocks</source>
        <translation>Trends der Blöcke</translation>
    </message>
    <message>
        <source>no trend</source>
        <translation>kein Trend</translation>
    </message>
    <message>
        <source>Click a session or a block&apos;s mean to make it the baseline.</source>
        <translation>Ein Klick auf eine Einheit oder auf das Mittel eines Blocks macht sie zum Bezug.</translation>
    </message>
    <message>
        <source>What the selected row says</source>
        <translation>Was die gewählte Zeile sagt</translation>
    </message>
    <message>
        <source>To beware of, and where this comes from</source>
        <translation>Zu beachten, und woher das kommt</translation>
    </message>
    <message>
        <source>Session or block that changes are counted from</source>
        <translation>Einheit oder Block, von dem an Änderungen gezählt werden</translation>
    </message>
    <message>
        <source>Fro&amp;m</source>
        <translation>V&amp;on</translation>
    </message>
    <message>
        <source>Compare &amp;it with where changes start</source>
        <translation>M&amp;it dem Anfang vergleichen</translation>
    </message>
    <message>
        <source>Coun&amp;t from the selected</source>
        <translation>Ab dem Gewählten &amp;zählen</translation>
    </message>
    <message>
        <source>The chosen day, and the trend</source>
        <translation>Der gewählte Tag und der Trend</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::SessionBar</name>
    <message>
        <source>Sta&amp;rt</source>
        <translation>Sta&amp;rten</translation>
    </message>
    <message>
        <source>Start this session (Enter in the last field does the same)</source>
        <translation>Diese Einheit starten (Enter im letzten Feld bewirkt dasselbe)</translation>
    </message>
    <message>
        <source>Repeat test, note and the rest of this session</source>
        <translation>Wiederholungstest, Notiz und übrige Angaben dieser Einheit</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Ort</translation>
    </message>
    <message>
        <source>New session</source>
        <translation>Neue Einheit</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>nicht vermerkt</translation>
    </message>
    <message>
        <source>Add device…</source>
        <translation>Neues Messgerät…</translation>
    </message>
    <message>
        <source>a body mass of %1</source>
        <translation>eine Körpermasse von %1</translation>
    </message>
    <message>
        <source>&amp;Body, %1</source>
        <translation>&amp;Körper, %1</translation>
    </message>
    <message>
        <source>Body mass, %1</source>
        <translation>Körpermasse, %1</translation>
    </message>
    <message>
        <source>%1, such as 74.5, or nothing</source>
        <translation>%1, etwa 74,5, oder nichts</translation>
    </message>
    <message>
        <source>Detail&amp;s…</source>
        <translation>Detai&amp;ls…</translation>
    </message>
    <message>
        <source>Sessi&amp;on</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Da&amp;te</source>
        <translation>&amp;Datum</translation>
    </message>
    <message>
        <source>&amp;Device</source>
        <translation>&amp;Messgerät</translation>
    </message>
    <message>
        <source>A new day: the session is dated %1.</source>
        <translation>Ein neuer Tag: Die Einheit bekommt das Datum %1.</translation>
    </message>
    <message>
        <source>A new day: the session of %1 is shown.</source>
        <translation>Ein neuer Tag: gezeigt wird die Einheit vom %1.</translation>
    </message>
    <message>
        <source>A new day: the next set begins a session of %1. The session of %2 stands in the list.</source>
        <translation>Ein neuer Tag: Der nächste Satz beginnt eine Einheit vom %1. Die Einheit vom %2 steht in der Liste.</translation>
    </message>
    <message>
        <source>Choose a lift first: device and place are written down with it.</source>
        <translation>Zuerst eine Übung wählen: Messgerät und Ort werden mit ihr aufgeschrieben.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::SessionDialog</name>
    <message>
        <source>Session details</source>
        <translation>Details der Einheit</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Ort</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>What may matter later: surface, footwear, sleep, soreness.</source>
        <translation>Was später wichtig sein kann: Untergrund, Schuhwerk, Schlaf, Muskelkater.</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>nicht vermerkt</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>&amp;Repeat test of</source>
        <translation>&amp;Wiederholungstest von</translation>
    </message>
    <message>
        <source>Same conditions within a few days and no training effect expected: such pairs tell the noise of the test.</source>
        <translation>Gleiche Bedingungen innerhalb weniger Tage, kein Trainingseffekt zu erwarten: Solche Paare zeigen die Streuung des Tests.</translation>
    </message>
    <message>
        <source>&amp;Body mass, %1</source>
        <translation>&amp;Körpermasse, %1</translation>
    </message>
    <message>
        <source> days</source>
        <translation> Tage</translation>
    </message>
    <message>
        <source>Repeat tests &amp;within</source>
        <translation>Wiederholungstests innerhal&amp;b von</translation>
    </message>
    <message numerus="yes">
        <source>%1 (%n day(s) apart)</source>
        <translation>
            <numerusform>%1 (%n Tag Abstand)</numerusform>
            <numerusform>%1 (%n Tage Abstand)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Expected a test within %n day(s): this one is %1 days away.</source>
        <translation>
            <numerusform>Erwartet: ein Test innerhalb von %n Tag; dieser liegt %1 Tage entfernt.</numerusform>
            <numerusform>Erwartet: ein Test innerhalb von %n Tagen; dieser liegt %1 Tage entfernt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Expected a body mass in %1, such as 74.5, or nothing.</source>
        <translation>Erwartet: eine Körpermasse in %1, etwa 74,5, oder nichts.</translation>
    </message>
    <message>
        <source>Da&amp;te</source>
        <translation>&amp;Datum</translation>
    </message>
    <message>
        <source>&amp;Device</source>
        <translation>&amp;Messgerät</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>&amp;Surface</source>
        <translation>&amp;Untergrund</translation>
    </message>
    <message>
        <source>&amp;Footwear</source>
        <translation>&amp;Schuhwerk</translation>
    </message>
    <message>
        <source>Techni&amp;que</source>
        <translation>Te&amp;chnik</translation>
    </message>
    <message>
        <source>Not compara&amp;ble, because</source>
        <translation>Nicht &amp;vergleichbar, weil</translation>
    </message>
    <message>
        <source>With a reason here, no day of %1 is read against this one.</source>
        <translation>Mit einem Grund hier wird kein Tag von %1 mit diesem verglichen.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::SetDialog</name>
    <message>
        <source>Set</source>
        <translation>Satz</translation>
    </message>
    <message>
        <source>&amp;Whole set</source>
        <translation>&amp;Ganzer Satz</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>zählt</translation>
    </message>
    <message>
        <source>Rep &amp;%1</source>
        <translation>Wdh. &amp;%1</translation>
    </message>
    <message>
        <source>Rep %1</source>
        <translation>Wiederholung %1</translation>
    </message>
    <message>
        <source>%1 m/s counts</source>
        <translation>%1 m/s zählt</translation>
    </message>
    <message>
        <source>a successful true maximum (1RM)</source>
        <translation>ein gelungenes echtes Maximum (1RM)</translation>
    </message>
    <message>
        <source>&amp;Maximum</source>
        <translation>&amp;Maximum</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>reason for leaving it out</source>
        <translation>Grund für das Ausschließen</translation>
    </message>
    <message>
        <source>%1: reason</source>
        <translation>%1: Grund</translation>
    </message>
    <message>
        <source>Expected a reason: it stays with what is left out.</source>
        <translation>Erwartet: ein Grund. Er bleibt bei dem, was ausgeschlossen ist.</translation>
    </message>
    <message>
        <source>Expected one rep in a true maximum; this set has %1.</source>
        <translation>Erwartet: eine Wiederholung bei einem echten Maximum; dieser Satz hat %1.</translation>
    </message>
    <message>
        <source>Set %1, %2</source>
        <translation>Satz %1, %2</translation>
    </message>
    <message>
        <source>Not &amp;lifted</source>
        <translation>Nicht &amp;geschafft</translation>
    </message>
    <message>
        <source>Why, where you want to say.</source>
        <translation>Warum, wenn Sie es sagen wollen.</translation>
    </message>
    <message>
        <source>&amp;RPE</source>
        <translation>&amp;RPE</translation>
    </message>
    <message>
        <source>1 to 10 in halves, or nothing</source>
        <translation>1 bis 10 in halben Schritten, oder nichts</translation>
    </message>
    <message>
        <source>a true maximum (1RM) was tried</source>
        <translation>ein echtes Maximum (1RM) wurde versucht</translation>
    </message>
    <message>
        <source>Expected an effort from 1 to 10 in halves, such as 8 or 8.5.</source>
        <translation>Erwartet: eine Anstrengung von 1 bis 10 in halben Schritten, etwa 8 oder 8,5.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::SetModel</name>
    <message>
        <source>true maximum</source>
        <translation>echtes Maximum</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>ausgeschlossen: %1</translation>
    </message>
    <message>
        <source>rep %1 left out: %2</source>
        <translation>Wdh. %1 ausgeschlossen: %2</translation>
    </message>
    <message>
        <source>have a look: %1</source>
        <translation>bitte prüfen: %1</translation>
    </message>
    <message>
        <source>have a look: %1 residuals from its line</source>
        <translation>bitte prüfen: %1 Residuen neben der Geraden</translation>
    </message>
    <message>
        <source>Reps, m/s</source>
        <translation>Wdh., m/s</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation>Last, %1</translation>
    </message>
    <message>
        <source>Found “%1”, expected an effort from 1 to 10 in halves, such as 8 or 8.5; or nothing.</source>
        <translation>Gefunden: „%1“, erwartet: eine Anstrengung von 1 bis 10 in halben Schritten, etwa 8 oder 8,5; oder nichts.</translation>
    </message>
    <message>
        <source>not lifted</source>
        <translation>nicht geschafft</translation>
    </message>
    <message>
        <source>RPE</source>
        <translation>RPE</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::ShapeEditor</name>
    <message>
        <source>What divides the cells</source>
        <translation>Was die Zellen trennt</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>Strichpunkt</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>How the letters are written</source>
        <translation>Wie die Zeichen kodiert sind</translation>
    </message>
    <message>
        <source>Rows passed over at the beginning</source>
        <translation>Zeilen, die am Anfang übersprungen werden</translation>
    </message>
    <message>
        <source>First row &amp;names the columns</source>
        <translation>Erste Zeile &amp;nennt die Spalten</translation>
    </message>
    <message>
        <source>Cells divided &amp;by</source>
        <translation>Zellen getrennt &amp;durch</translation>
    </message>
    <message>
        <source>&amp;Letters</source>
        <translation>Zeichen&amp;kodierung</translation>
    </message>
    <message>
        <source>&amp;Pass over rows</source>
        <translation>Zeilen ü&amp;berspringen</translation>
    </message>
    <message>
        <source>What a row is</source>
        <translation>Was eine Zeile ist</translation>
    </message>
    <message>
        <source>one rep</source>
        <translation>eine Wiederholung</translation>
    </message>
    <message>
        <source>one set, its velocities side by side</source>
        <translation>ein Satz, seine Geschwindigkeiten nebeneinander</translation>
    </message>
    <message>
        <source>A blank date, athlete, lift or load is the one abo&amp;ve</source>
        <translation>Leere Zellen bei Datum, Athlet, Übung oder Last gelten &amp;wie darüber</translation>
    </message>
    <message>
        <source>A ro&amp;w is</source>
        <translation>Eine &amp;Zeile ist</translation>
    </message>
    <message>
        <source>Columns of the table and what they are</source>
        <translation>Die Spalten der Tabelle und was sie sind</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>First cells</source>
        <translation>Erste Zellen</translation>
    </message>
    <message>
        <source>Is the</source>
        <translation>Ist</translation>
    </message>
    <message>
        <source>Written with</source>
        <translation>Schreibweise</translation>
    </message>
    <message>
        <source>In</source>
        <translation>In</translation>
    </message>
    <message>
        <source>The same in all rows:</source>
        <translation>In allen Zeilen gleich:</translation>
    </message>
    <message>
        <source>&amp;Athlete</source>
        <translation>A&amp;thlet</translation>
    </message>
    <message>
        <source>Athlete in all rows</source>
        <translation>Athlet in allen Zeilen</translation>
    </message>
    <message>
        <source>Li&amp;ft</source>
        <translation>&amp;Übung</translation>
    </message>
    <message>
        <source>Lift in all rows</source>
        <translation>Übung in allen Zeilen</translation>
    </message>
    <message>
        <source>Day of all rows</source>
        <translation>Tag aller Zeilen</translation>
    </message>
    <message>
        <source>Da&amp;y</source>
        <translation>Ta&amp;g</translation>
    </message>
    <message>
        <source>D&amp;evice</source>
        <translation>&amp;Messgerät</translation>
    </message>
    <message>
        <source>Device in all rows</source>
        <translation>Messgerät in allen Zeilen</translation>
    </message>
    <message>
        <source>Kind of velocity in all rows</source>
        <translation>Art der Geschwindigkeit in allen Zeilen</translation>
    </message>
    <message>
        <source>velocity as the lift has it</source>
        <translation>Geschwindigkeit wie bei der Übung festgelegt</translation>
    </message>
    <message>
        <source>What &quot;%1&quot; is</source>
        <translation>Was „%1“ ist</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>nicht verwendet</translation>
    </message>
    <message>
        <source>How &quot;%1&quot; is written</source>
        <translation>Wie „%1“ geschrieben ist</translation>
    </message>
    <message>
        <source>Unit of &quot;%1&quot;</source>
        <translation>Maßeinheit von „%1“</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Auswählen…</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>Jahr, Monat, Tag</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>Tag, Monat, Jahr</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>Monat, Tag, Jahr</translation>
    </message>
    <message>
        <source>decimal point: 1.5</source>
        <translation>Dezimalpunkt: 1.5</translation>
    </message>
    <message>
        <source>decimal comma: 1,5</source>
        <translation>Dezimalkomma: 1,5</translation>
    </message>
    <message>
        <source>A column says it.</source>
        <translation>Eine Spalte sagt es.</translation>
    </message>
    <message>
        <source>Sheet of the workbook</source>
        <translation>Blatt der Arbeitsmappe</translation>
    </message>
    <message>
        <source>S&amp;heet</source>
        <translation>Tab&amp;ellenblatt</translation>
    </message>
    <message>
        <source>%1 (hidden)</source>
        <translation>%1 (ausgeblendet)</translation>
    </message>
    <message>
        <source>The uni&amp;ts stand under the names</source>
        <translation>Unte&amp;r den Namen stehen die Einheiten</translation>
    </message>
    <message>
        <source>Columns are named by their l&amp;oads</source>
        <translation>S&amp;palten heißen nach ihren Lasten</translation>
    </message>
    <message>
        <source>Rows in order of ti&amp;me</source>
        <translation>Zeilen in zeitlicher Reihen&amp;folge</translation>
    </message>
    <message>
        <source>Words of totals, whose rows are left out</source>
        <translation>Summenwörter, deren Zeilen weggelassen werden</translation>
    </message>
    <message>
        <source>none: every row is read</source>
        <translation>keine: jede Zeile wird gelesen</translation>
    </message>
    <message>
        <source>Totals left out, rows that be&amp;gin with</source>
        <translation>S&amp;ummen weggelassen, Zeilen beginnen mit</translation>
    </message>
    <message>
        <source>one set, its velocities in one cell</source>
        <translation>ein Satz, seine Geschwindigkeiten in einer Zelle</translation>
    </message>
    <message>
        <source>days counted from 1900</source>
        <translation>Tage gezählt ab 1900</translation>
    </message>
    <message>
        <source>days counted from 1904</source>
        <translation>Tage gezählt ab 1904</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::SourcesFold</name>
    <message>
        <source>Where this comes from</source>
        <translation>Woher das kommt</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::SplitOffer</name>
    <message>
        <source>Two sessions of one day</source>
        <translation>Zwei Einheiten eines Tages</translation>
    </message>
    <message>
        <source>Join them</source>
        <translation>Zusammenlegen</translation>
    </message>
    <message>
        <source>One session, in which each lift and test keeps its device. Undo parts them again.</source>
        <translation>Eine Einheit, in der jede Übung und jeder Test sein Messgerät behält. Rückgängig trennt sie wieder.</translation>
    </message>
    <message>
        <source>Leave them</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>They stay two, and it is not asked again while this log is open.</source>
        <translation>Es bleiben zwei, und solange dieses Protokoll offen ist, wird nicht mehr gefragt.</translation>
    </message>
    <message>
        <source>Two sessions of %1 differ only by their device: are they one?</source>
        <translation>Zwei Einheiten vom %1 unterscheiden sich nur im Messgerät: Sind sie eine?</translation>
    </message>
    <message>
        <source>One session now, each lift and test with its device. Undo parts them again.</source>
        <translation>Jetzt eine Einheit, jede Übung und jeder Test mit seinem Messgerät. Rückgängig trennt sie wieder.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::SquadPage</name>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>Z&amp;u</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Choose a lift.</source>
        <translation>Eine Übung wählen.</translation>
    </message>
    <message>
        <source>What is compared</source>
        <translation>Was verglichen wird</translation>
    </message>
    <message>
        <source>Athletes and their changes</source>
        <translation>Athleten und ihre Änderungen</translation>
    </message>
    <message>
        <source>Readings counted</source>
        <translation>Befunde gezählt</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>Save P&amp;DF…</source>
        <translation>PD&amp;F speichern…</translation>
    </message>
    <message>
        <source>Squad %1 %2 to %3</source>
        <translation>Kader %1 %2 bis %3</translation>
    </message>
    <message>
        <source>Save the squad as PDF</source>
        <translation>Kader als PDF speichern</translation>
    </message>
    <message>
        <source>A double click on the athlete does the same</source>
        <translation>Ein Doppelklick auf den Athleten bewirkt dasselbe</translation>
    </message>
    <message>
        <source>&amp;Open the later session</source>
        <translation>&amp;Spätere Einheit öffnen</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>Abbr&amp;echen</translation>
    </message>
    <message>
        <source>Stopped. Choose a block or a date to compare again.</source>
        <translation>Abgebrochen. Für einen neuen Vergleich einen Block oder ein Datum wählen.</translation>
    </message>
    <message>
        <source>Comparing the squad…</source>
        <translation>Der Kader wird verglichen…</translation>
    </message>
    <message>
        <source>F&amp;rom</source>
        <translation>V&amp;on</translation>
    </message>
    <message>
        <source>Sho&amp;wn</source>
        <translation>A&amp;ngezeigt</translation>
    </message>
    <message>
        <source>Compare &amp;both sessions</source>
        <translation>Beide Einheiten verg&amp;leichen</translation>
    </message>
    <message>
        <source>Pri&amp;nt preview…</source>
        <translation>Druckvorschau…</translation>
    </message>
    <message>
        <source>What the squad did</source>
        <translation>Was der Kader getan hat</translation>
    </message>
    <message>
        <source>Still at work</source>
        <translation>Noch in Arbeit</translation>
    </message>
    <message>
        <source>%1, %2 to %3. %4</source>
        <translation>%1, %2 bis %3. %4</translation>
    </message>
    <message>
        <source>Nothing compared</source>
        <translation>Nichts verglichen</translation>
    </message>
    <message>
        <source>To beware of, and where this comes from</source>
        <translation>Zu beachten, und woher das kommt</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::StationDialog</name>
    <message>
        <source>Change station</source>
        <translation>Station ändern</translation>
    </message>
    <message>
        <source>New station</source>
        <translation>Neue Station</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>Rack 1</source>
        <translation>Gestell 1</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>Not&amp;iz</translation>
    </message>
    <message>
        <source>Tests:</source>
        <translation>Tests:</translation>
    </message>
    <message>
        <source>&amp;What is done</source>
        <translation>&amp;Was gemacht wird</translation>
    </message>
    <message>
        <source>&amp;Tests</source>
        <translation>&amp;Tests</translation>
    </message>
    <message>
        <source>Space takes one or leaves it out.</source>
        <translation>Die Leertaste nimmt einen hinzu oder lässt ihn weg.</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>&amp;Device</source>
        <translation>&amp;Messgerät</translation>
    </message>
    <message>
        <source>S&amp;urface</source>
        <translation>&amp;Untergrund</translation>
    </message>
    <message>
        <source>&amp;Footwear</source>
        <translation>S&amp;chuhe</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Ort</translation>
    </message>
    <message>
        <source>Techni&amp;que</source>
        <translation>Techni&amp;k</translation>
    </message>
    <message>
        <source>&amp;Ladder, %1</source>
        <translation>&amp;Leiter, %1</translation>
    </message>
    <message>
        <source>Loads from light to heavy; empty: each athlete&apos;s own of last time.</source>
        <translation>Lasten von leicht nach schwer; leer: für jeden die eigene vom letzten Mal.</translation>
    </message>
    <message>
        <source>as many as the ladder or the test has</source>
        <translation>so viele, wie die Leiter oder der Test hat</translation>
    </message>
    <message>
        <source>&amp;Sets or attempts</source>
        <translation>&amp;Sätze oder Versuche</translation>
    </message>
    <message>
        <source>a set that is written makes it the next one&apos;s turn</source>
        <translation>nach einem geschriebenen Satz ist der Nächste dran</translation>
    </message>
    <message>
        <source>Expected loads from light to heavy with blanks between them, such as 40 60 80.</source>
        <translation>Erwartet: Lasten von leicht nach schwer mit Leerzeichen dazwischen, etwa 40 60 80.</translation>
    </message>
    <message>
        <source>Expected a test, or a lift above.</source>
        <translation>Erwartet: ein Test, oder oben eine Übung.</translation>
    </message>
    <message>
        <source>Expected a name, such as Rack 1.</source>
        <translation>Erwartet: ein Name, etwa Gestell 1.</translation>
    </message>
    <message>
        <source>Not compara&amp;ble, because</source>
        <translation>Nicht &amp;vergleichbar, weil</translation>
    </message>
    <message>
        <source>With a reason here, what is measured at it stands beside no other day.</source>
        <translation>Mit einem Grund hier steht, was an ihr gemessen wird, neben keinem anderen Tag.</translation>
    </message>
    <message>
        <source>Whose turn &amp;is it</source>
        <translation>Wer ist dran</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::StationPage</name>
    <message>
        <source>Station</source>
        <translation>Station</translation>
    </message>
    <message>
        <source>Ne&amp;w…</source>
        <translation>&amp;Neu…</translation>
    </message>
    <message>
        <source>Set up a station: a lift or tests, with their conditions</source>
        <translation>Eine Station einrichten: eine Übung oder Tests, mit ihren Bedingungen</translation>
    </message>
    <message>
        <source>Cha&amp;nge…</source>
        <translation>Än&amp;dern…</translation>
    </message>
    <message>
        <source>This station: conditions, ladder, turns</source>
        <translation>Diese Station: Bedingungen, Leiter, Reihenfolge</translation>
    </message>
    <message>
        <source>Who &amp;is here…</source>
        <translation>&amp;Wer ist da…</translation>
    </message>
    <message>
        <source>In t&amp;urn</source>
        <translation>Reih&amp;um</translation>
    </message>
    <message>
        <source>A set that is written makes it the next one&apos;s turn</source>
        <translation>Nach einem geschriebenen Satz ist der Nächste dran</translation>
    </message>
    <message>
        <source>Stati&amp;on</source>
        <translation>Stati&amp;on</translation>
    </message>
    <message>
        <source>Who is here, in the order of their turns</source>
        <translation>Wer da ist, in der Reihenfolge</translation>
    </message>
    <message>
        <source>Who comes then</source>
        <translation>Wer dann kommt</translation>
    </message>
    <message>
        <source>Whose turn it is</source>
        <translation>Wer an der Reihe ist</translation>
    </message>
    <message>
        <source>Time since their last set</source>
        <translation>Zeit seit dem letzten Satz</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>Answer to the typed line</source>
        <translation>Antwort auf die getippte Zeile</translation>
    </message>
    <message>
        <source>Chart of load and velocity</source>
        <translation>Diagramm von Last und Geschwindigkeit</translation>
    </message>
    <message>
        <source>Done here today</source>
        <translation>Heute hier gemacht</translation>
    </message>
    <message>
        <source>Found %1, expected %2.</source>
        <translation>Gefunden: %1, erwartet: %2.</translation>
    </message>
    <message>
        <source>All done: %1 here.</source>
        <translation>Alle fertig: %1 da.</translation>
    </message>
    <message>
        <source>%1: load and speeds, or attempts</source>
        <translation>%1: Last und Geschwindigkeiten, oder Versuche</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>As read</source>
        <translation>Gelesen</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>not lifted</source>
        <translation>nicht geschafft</translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation>Last, %1</translation>
    </message>
    <message>
        <source>Reps, m/s</source>
        <translation>Wdh., m/s</translation>
    </message>
    <message>
        <source>RPE</source>
        <translation>RPE</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Then %1. Enter moves on; Alt+Down passes, Alt+Up goes back.</source>
        <translation>Dann %1. Enter geht weiter; Alt+Ab überspringt, Alt+Auf geht zurück.</translation>
    </message>
    <message>
        <source>Alt+Down and Alt+Up go to the others; so does a name.</source>
        <translation>Alt+Ab und Alt+Auf gehen zu den anderen; ein Name auch.</translation>
    </message>
    <message>
        <source>Ctrl+Z takes back: %1</source>
        <translation>Strg+Z nimmt zurück: %1</translation>
    </message>
    <message>
        <source>Who is here today?</source>
        <translation>Wer ist heute da?</translation>
    </message>
    <message>
        <source>No station yet.</source>
        <translation>Noch keine Station.</translation>
    </message>
    <message>
        <source>Who is here… takes them in the order of their turns.</source>
        <translation>Wer ist da… nimmt sie in ihrer Reihenfolge auf.</translation>
    </message>
    <message>
        <source>New… sets one up: a lift or a few tests, the device, the surface, the ladder. Athletes take turns at it.</source>
        <translation>Neu… richtet eine ein: eine Übung oder einige Tests, das Messgerät, den Untergrund, die Leiter. Die Athleten wechseln sich dort ab.</translation>
    </message>
    <message>
        <source>Load in %1, the reps&apos; speeds, @ effort; or - not lifted. Up: the next load. A name in front: theirs.</source>
        <translation>Last in %1, die Geschwindigkeiten, @ Anstrengung; oder - nicht geschafft. Auf: die nächste Last. Ein Name davor: dessen Satz.</translation>
    </message>
    <message>
        <source>Not written. %1</source>
        <translation>Nicht geschrieben. %1</translation>
    </message>
    <message>
        <source>add set</source>
        <translation>Satz hinzufügen</translation>
    </message>
    <message>
        <source>note what was not possible</source>
        <translation>notieren, was nicht möglich war</translation>
    </message>
    <message>
        <source>add attempts</source>
        <translation>Versuche hinzufügen</translation>
    </message>
    <message>
        <source>Written for %1: %2</source>
        <translation>Geschrieben für %1: %2</translation>
    </message>
    <message>
        <source>Line of the station</source>
        <translation>Zeile der Station</translation>
    </message>
    <message>
        <source>No body mass of today yet: without it this lift&apos;s sets are on no line.</source>
        <translation>Noch keine Körpermasse von heute: Ohne sie liegen die Sätze dieser Übung auf keiner Geraden.</translation>
    </message>
    <message>
        <source>Goes in with the first set of %1.</source>
        <translation>Kommt mit dem ersten Satz von %1 hinein.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::StepChartsView</name>
    <message>
        <source>Measure</source>
        <translation>Messgröße</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>grey: %1</source>
        <translation>grau: %1</translation>
    </message>
    <message>
        <source>change</source>
        <translation>Änderung</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::StoreDialog</name>
    <message>
        <source>Shared store</source>
        <translation>Gemeinsamer Speicher</translation>
    </message>
    <message>
        <source>&amp;Meet now</source>
        <translation>&amp;Jetzt abgleichen</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>&amp;Wählen…</translation>
    </message>
    <message>
        <source>&amp;Address…</source>
        <translation>&amp;Adresse…</translation>
    </message>
    <message>
        <source>&amp;Leave…</source>
        <translation>&amp;Verlassen…</translation>
    </message>
    <message>
        <source>Meeting the store…</source>
        <translation>Abgleich mit dem Speicher…</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::StoreLine</name>
    <message>
        <source>How it stands with the shared store; opens what came and waits</source>
        <translation>Wie es mit dem gemeinsamen Speicher steht; öffnet, was kam und was wartet</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::Strip</name>
    <message>
        <source>Li&amp;ft</source>
        <translation>&amp;Übung</translation>
    </message>
    <message>
        <source>Another athlete or page (F9 keeps the list open)</source>
        <translation>Anderer Athlet oder andere Seite (F9 lässt die Liste offen)</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>Add lift</source>
        <translation>Neue Übung</translation>
    </message>
    <message>
        <source>Add lift…</source>
        <translation>Neue Übung…</translation>
    </message>
    <message>
        <source>+ lift</source>
        <translation>+ Übung</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::TableDialog</name>
    <message>
        <source>Take in a pasted table</source>
        <translation>Eine eingefügte Tabelle übernehmen</translation>
    </message>
    <message>
        <source>Take in %1</source>
        <translation>%1 übernehmen</translation>
    </message>
    <message>
        <source>First rows, as found and as read</source>
        <translation>Erste Zeilen, wie vorgefunden und wie gelesen</translation>
    </message>
    <message>
        <source>Refused rows and why</source>
        <translation>Abgelehnte Zeilen und warum</translation>
    </message>
    <message>
        <source>As &amp;read</source>
        <translation>Wie ge&amp;lesen</translation>
    </message>
    <message>
        <source>Ref&amp;used</source>
        <translation>Abgele&amp;hnt</translation>
    </message>
    <message>
        <source>What will be taken</source>
        <translation>Was übernommen wird</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importieren</translation>
    </message>
    <message>
        <source>Stopped. Nothing was changed.</source>
        <translation>Abgebrochen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>&amp;Abbrechen</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Wird gelesen</translation>
    </message>
    <message>
        <source>Rows found: %1. Look at what each column is; nothing is written before Import.</source>
        <translation>Gefundene Zeilen: %1. Ansehen, was jede Spalte ist; vor Importieren wird nichts geschrieben.</translation>
    </message>
    <message>
        <source>A table with these headings was taken in before: its columns are set as then.</source>
        <translation>Eine Tabelle mit diesen Überschriften wurde schon einmal übernommen: Ihre Spalten sind eingestellt wie damals.</translation>
    </message>
    <message>
        <source>Counting…</source>
        <translation>Wird gezählt…</translation>
    </message>
    <message>
        <source>To be said first: %1</source>
        <translation>Noch offen: %1</translation>
    </message>
    <message>
        <source>Counting</source>
        <translation>Wird gezählt</translation>
    </message>
    <message>
        <source>Rows that would be taken: %1; refused: %2 (see Refused). A table goes in whole or not at all: change what the columns are, or put the rows right in the file.</source>
        <translation>Zeilen, die übernommen würden: %1; abgelehnt: %2 (siehe Abgelehnt). Eine Tabelle wird ganz oder gar nicht übernommen: ändern, was die Spalten sind, oder die Zeilen in der Datei berichtigen.</translation>
    </message>
    <message>
        <source>What stands after the last of them could not be looked at.</source>
        <translation>Was nach der letzten davon steht, ließ sich nicht ansehen.</translation>
    </message>
    <message>
        <source>Rows read: %1; the log has them all already.</source>
        <translation>Gelesene Zeilen: %1; das Protokoll hat sie schon alle.</translation>
    </message>
    <message>
        <source>Rows that will be taken: %1; none is refused.</source>
        <translation>Zeilen, die übernommen werden: %1; keine ist abgelehnt.</translation>
    </message>
    <message>
        <source>Ref&amp;used (%1)</source>
        <translation>Abgele&amp;hnt (%1)</translation>
    </message>
    <message>
        <source>Importing</source>
        <translation>Wird importiert</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Stopp</translation>
    </message>
    <message>
        <source>Where the table does not name athlete, lift or day, those shown in the window stand below for all rows.</source>
        <translation>Wo die Tabelle Athlet, Übung oder Tag nicht nennt, stehen unten die im Fenster gezeigten für alle Zeilen.</translation>
    </message>
    <message>
        <source>The table holds no rows.</source>
        <translation>Die Tabelle hat keine Zeilen.</translation>
    </message>
    <message>
        <source>To be said first: who the new athletes are whose names are nearly others&apos;.</source>
        <translation>Zuerst zu sagen: wer die neuen Athleten sind, deren Namen fast andere sind.</translation>
    </message>
    <message>
        <source>What each column is</source>
        <translation>Was jede Spalte ist</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::TestDialog</name>
    <message>
        <source>Test</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>New test</source>
        <translation>Neuer Test</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>&amp;Maßeinheit</translation>
    </message>
    <message>
        <source>of the day&apos;s value: m, s, N, points</source>
        <translation>des Tageswerts: m, s, N, Punkte</translation>
    </message>
    <message>
        <source>higher</source>
        <translation>höher</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>niedriger</translation>
    </message>
    <message>
        <source>&amp;Better is</source>
        <translation>&amp;Besser ist</translation>
    </message>
    <message>
        <source>no sides</source>
        <translation>keine Seiten</translation>
    </message>
    <message>
        <source>left and right apart</source>
        <translation>links und rechts getrennt</translation>
    </message>
    <message>
        <source>&amp;Sides</source>
        <translation>&amp;Seiten</translation>
    </message>
    <message>
        <source>best attempt</source>
        <translation>bester Versuch</translation>
    </message>
    <message>
        <source>mean of the attempts</source>
        <translation>Mittel der Versuche</translation>
    </message>
    <message>
        <source>Value of the &amp;day</source>
        <translation>&amp;Tageswert</translation>
    </message>
    <message>
        <source>&amp;Attempts planned</source>
        <translation>Geplante &amp;Versuche</translation>
    </message>
    <message>
        <source>the number as it is read</source>
        <translation>die Zahl, wie abgelesen</translation>
    </message>
    <message>
        <source>jump height from flight time (s)</source>
        <translation>Sprunghöhe aus der Flugzeit (s)</translation>
    </message>
    <message>
        <source>reactive strength from height (m) / contact time (s)</source>
        <translation>Reaktivkraft aus Höhe (m) / Kontaktzeit (s)</translation>
    </message>
    <message>
        <source>reactive strength from flight time / contact time (s)</source>
        <translation>Reaktivkraft aus Flugzeit / Kontaktzeit (s)</translation>
    </message>
    <message>
        <source>force (N) per kg of body mass</source>
        <translation>Kraft (N) je kg Körpermasse</translation>
    </message>
    <message>
        <source>&amp;Computed from</source>
        <translation>Bere&amp;chnet aus</translation>
    </message>
    <message>
        <source>D&amp;ecimals shown</source>
        <translation>Nac&amp;hkommastellen</translation>
    </message>
    <message>
        <source>&amp;Typical error</source>
        <translation>T&amp;ypischer Messfehler</translation>
    </message>
    <message>
        <source>used until the log has two repeat tests of its own</source>
        <translation>verwendet, bis das Protokoll zwei eigene Wiederholungstests hat</translation>
    </message>
    <message>
        <source>in the unit</source>
        <translation>in der Maßeinheit</translation>
    </message>
    <message>
        <source>percent of the value</source>
        <translation>in Prozent des Werts</translation>
    </message>
    <message>
        <source>Typical error &amp;in</source>
        <translation>Messfehler &amp;in</translation>
    </message>
    <message>
        <source>Where it comes &amp;from</source>
        <translation>&amp;Woher er stammt</translation>
    </message>
    <message>
        <source>S&amp;mallest change that matters</source>
        <translation>&amp;Kleinste bedeutsame Änderung</translation>
    </message>
    <message>
        <source>in the unit; used until eight athletes have the test</source>
        <translation>in der Maßeinheit; verwendet, bis acht Athleten den Test haben</translation>
    </message>
    <message>
        <source>Where that comes f&amp;rom</source>
        <translation>Wohe&amp;r sie stammt</translation>
    </message>
    <message>
        <source>left empty: your own</source>
        <translation>leer: eigener Wert</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>Give the test a name.</source>
        <translation>Dem Test einen Namen geben.</translation>
    </message>
    <message>
        <source>Give the unit of its value, such as m, s, N or points.</source>
        <translation>Die Maßeinheit seines Werts angeben, etwa m, s, N oder Punkte.</translation>
    </message>
    <message>
        <source>A number above 0, such as 0.05, or nothing.</source>
        <translation>Eine Zahl über 0, etwa 0,05, oder nichts.</translation>
    </message>
    <message>
        <source>Say where the typical error comes from.</source>
        <translation>Angeben, woher der typische Messfehler stammt.</translation>
    </message>
    <message>
        <source>left, right, and both at once</source>
        <translation>links, rechts und beide zugleich</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>Mean of t&amp;he best</source>
        <translation>Mittel &amp;der besten</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::TestsDialog</name>
    <message>
        <source>Tests of the battery</source>
        <translation>Tests der Batterie</translation>
    </message>
    <message>
        <source>Tests</source>
        <translation>Tests</translation>
    </message>
    <message>
        <source>&amp;New...</source>
        <translation>&amp;Neu...</translation>
    </message>
    <message>
        <source>&amp;Change...</source>
        <translation>&amp;Ändern...</translation>
    </message>
    <message>
        <source>Re&amp;move</source>
        <translation>&amp;Entfernen</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::Timeline</name>
    <message>
        <source>Timeline of training blocks; the same stands in the table</source>
        <translation>Zeitleiste der Trainingsblöcke; dasselbe steht in der Tabelle</translation>
    </message>
    <message>
        <source>No blocks and no sessions yet.</source>
        <translation>Noch keine Blöcke und keine Einheiten.</translation>
    </message>
    <message>
        <source>Block or session</source>
        <translation>Block oder Einheit</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>no load over %1</source>
        <translation>keine Last über %1</translation>
    </message>
    <message>
        <source>session</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>something was not possible</source>
        <translation>etwas war nicht möglich</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::TraceDialog</name>
    <message>
        <source>From a trace</source>
        <translation>Aus einer Messkurve</translation>
    </message>
    <message>
        <source>A CSV file with one row a sample: time in s, and force in N or displacement in m; 100 Hz to 10 kHz.</source>
        <translation>Eine CSV-Datei mit einer Zeile je Messpunkt: Zeit in s und Kraft in N oder Weg in m; 100 Hz bis 10 kHz.</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>&amp;File...</source>
        <translation>&amp;Datei...</translation>
    </message>
    <message>
        <source>isometric push or pull</source>
        <translation>isometrisches Drücken oder Ziehen</translation>
    </message>
    <message>
        <source>jumps</source>
        <translation>Sprünge</translation>
    </message>
    <message>
        <source>reps of a lift</source>
        <translation>Wiederholungen einer Übung</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Art</translation>
    </message>
    <message>
        <source>&amp;Time</source>
        <translation>&amp;Zeit</translation>
    </message>
    <message>
        <source>&amp;Value</source>
        <translation>&amp;Wert</translation>
    </message>
    <message>
        <source>Figures of the trace</source>
        <translation>Kennwerte der Messkurve</translation>
    </message>
    <message>
        <source>&amp;Becomes</source>
        <translation>Wi&amp;rd zu</translation>
    </message>
    <message>
        <source>Becomes</source>
        <translation>Wird zu</translation>
    </message>
    <message>
        <source>&amp;Accept</source>
        <translation>Ü&amp;bernehmen</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Messkurve</translation>
    </message>
    <message>
        <source>CSV (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>CSV (*.csv *.txt *.tsv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Kennwert</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Maßeinheit</translation>
    </message>
    <message>
        <source>push %1</source>
        <translation>Anspannung %1</translation>
    </message>
    <message>
        <source>jump %1</source>
        <translation>Sprung %1</translation>
    </message>
    <message>
        <source>rep %1</source>
        <translation>Wiederholung %1</translation>
    </message>
    <message>
        <source>%1 samples at %2 Hz. Drag a mark, or Tab to it and use the arrow keys: the figures follow.</source>
        <translation>%1 Messpunkte mit %2 Hz. Eine Marke ziehen oder mit Tab anwählen und mit den Pfeiltasten verschieben: Die Kennwerte folgen.</translation>
    </message>
    <message>
        <source>an attempt of %1</source>
        <translation>ein Versuch für %1</translation>
    </message>
    <message>
        <source>This trace does not give what that test needs (a jump without a contact before it has no contact time).</source>
        <translation>Diese Messkurve liefert nicht, was der Test braucht (ein Sprung ohne Bodenkontakt davor hat keine Kontaktzeit).</translation>
    </message>
    <message>
        <source>mean velocities to the session</source>
        <translation>mittlere Geschwindigkeiten für die Einheit</translation>
    </message>
    <message>
        <source>mean propulsive velocities to the session</source>
        <translation>mittlere propulsive Geschwindigkeiten für die Einheit</translation>
    </message>
    <message>
        <source>peak velocities to the session</source>
        <translation>Spitzengeschwindigkeiten für die Einheit</translation>
    </message>
    <message>
        <source>the selected figure as an attempt of %1 (%2)</source>
        <translation>den gewählten Kennwert als Versuch für %1 (%2)</translation>
    </message>
    <message>
        <source>In the session form: %1. Type the load before them there.</source>
        <translation>Auf der Seite Einheit: %1. Dort die Last davor eingeben.</translation>
    </message>
    <message>
        <source>Select the figure in the table above that this test takes: one in %1.</source>
        <translation>Oben in der Tabelle den Kennwert wählen, den dieser Test nimmt: einen in %1.</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Sho&amp;wn</source>
        <translation>A&amp;ngezeigt</translation>
    </message>
    <message>
        <source>For %1, the session of %2</source>
        <translation>Für %1, Einheit vom %2</translation>
    </message>
    <message>
        <source>For %1, a session of today, which is made with the first attempt</source>
        <translation>Für %1, eine Einheit von heute, die mit dem ersten Versuch angelegt wird</translation>
    </message>
    <message>
        <source>From a trace: %1</source>
        <translation>Aus einer Messkurve: %1</translation>
    </message>
    <message>
        <source>%1 of this trace stands in the session of %2 already, as %3. Add it a second time?</source>
        <translation>%1 dieser Messkurve steht schon in der Einheit von %2, als %3. Ein zweites Mal hinzufügen?</translation>
    </message>
    <message>
        <source>The session of %1 is of %2, not of today. Where does the attempt belong?</source>
        <translation>Die Einheit von %1 ist vom %2, nicht von heute. Wohin gehört der Versuch?</translation>
    </message>
    <message>
        <source>To %1</source>
        <translation>Zum %1</translation>
    </message>
    <message>
        <source>To today</source>
        <translation>Zu heute</translation>
    </message>
    <message>
        <source>Added to the session of %1 of %2: %3</source>
        <translation>In die Einheit von %1 vom %2 aufgenommen: %3</translation>
    </message>
    <message>
        <source>choose what it is</source>
        <translation>wählen, was es ist</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::TraceView</name>
    <message>
        <source>Curve with marks</source>
        <translation>Kurve mit Marken</translation>
    </message>
    <message>
        <source>Drag a mark, or Tab to it and move it with the arrow keys (Shift: ten samples). Wheel, plus and minus: zoom; 0: everything.</source>
        <translation>Eine Marke ziehen oder mit Tab anwählen und mit den Pfeiltasten verschieben (Umschalt: zehn Messpunkte). Mausrad, Plus und Minus: Zoom; 0: alles.</translation>
    </message>
    <message>
        <source>No trace</source>
        <translation>Keine Messkurve</translation>
    </message>
    <message>
        <source>Mark %1 at %2 s</source>
        <translation>Marke %1 bei %2 s</translation>
    </message>
    <message>
        <source>Choose a file.</source>
        <translation>Eine Datei wählen.</translation>
    </message>
    <message>
        <source>time (s); displacement (m)</source>
        <translation>Zeit (s); Weg (m)</translation>
    </message>
    <message>
        <source>time (s); force (N)</source>
        <translation>Zeit (s); Kraft (N)</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marke</translation>
    </message>
    <message>
        <source>Time, s</source>
        <translation>Zeit, s</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::WayOn</name>
    <message>
        <source>To the overview</source>
        <translation>Zum Überblick</translation>
    </message>
    <message>
        <source>To the whole season</source>
        <translation>Zur ganzen Saison</translation>
    </message>
    <message>
        <source>To the Floor: type a set</source>
        <translation>In die Halle: einen Satz eintippen</translation>
    </message>
    <message>
        <source>To the stations</source>
        <translation>Zu den Stationen</translation>
    </message>
    <message>
        <source>Add an athlete…</source>
        <translation>Neuer Athlet…</translation>
    </message>
    <message>
        <source>Add a lift…</source>
        <translation>Neue Übung…</translation>
    </message>
    <message>
        <source>No athlete yet. Add the first, then type a set under Floor.</source>
        <translation>Noch kein Athlet. Den ersten hinzufügen, dann einen Satz unter Halle eintippen.</translation>
    </message>
    <message>
        <source>No lift yet. Add the first, then type a set under Floor.</source>
        <translation>Noch keine Übung. Die erste hinzufügen, dann einen Satz unter Halle eintippen.</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::WelcomePage</name>
    <message>
        <source>&amp;Recent logs</source>
        <translation>&amp;Zuletzt geöffnete Protokolle</translation>
    </message>
    <message>
        <source>Slopebook</source>
        <translation>Slopebook</translation>
    </message>
    <message>
        <source>Type a ladder of loads and bar speeds, see its line and the estimated 1RM with an honest interval, compare it with last time&apos;s, print the page. Everything is kept in one file, your log; what you type is on disk at once.</source>
        <translation>Eine Leiter mit Hantelgeschwindigkeiten eingeben, ihre Gerade und das geschätzte 1RM mit ehrlichem Intervall sehen, mit dem letzten Mal vergleichen, die Seite drucken. Alles liegt in einer Datei, dem Protokoll; was eingegeben ist, ist sofort gespeichert.</translation>
    </message>
    <message>
        <source>What went wrong</source>
        <translation>Was schiefging</translation>
    </message>
    <message>
        <source>Recent logs</source>
        <translation>Zuletzt geöffnete Protokolle</translation>
    </message>
    <message>
        <source>Open the &amp;sample</source>
        <translation>Beispiel ö&amp;ffnen</translation>
    </message>
    <message>
        <source>A rowing squad, a flooded weights room: a copy to try on</source>
        <translation>Ein Ruderkader, ein überfluteter Kraftraum: eine Kopie zum Ausprobieren</translation>
    </message>
    <message>
        <source>&amp;New log</source>
        <translation>&amp;Neues Protokoll</translation>
    </message>
    <message>
        <source>One file, where you choose</source>
        <translation>Eine Datei am gewählten Ort</translation>
    </message>
    <message>
        <source>&amp;Open a log</source>
        <translation>Proto&amp;koll öffnen</translation>
    </message>
    <message>
        <source>Or drop it on this window</source>
        <translation>Oder auf dieses Fenster ziehen</translation>
    </message>
    <message>
        <source>Go back to a &amp;backup…</source>
        <translation>Auf eine &amp;Sicherung zurückgehen…</translation>
    </message>
    <message>
        <source>Enter opens the log, Delete takes it off the list</source>
        <translation>Eingabe öffnet das Protokoll, Entf nimmt es von der Liste</translation>
    </message>
    <message>
        <source>%1 is not there any more. Delete takes it off the list.</source>
        <translation>%1 ist nicht mehr da. Entf nimmt es von der Liste.</translation>
    </message>
    <message>
        <source>not there any more: %1</source>
        <translation>nicht mehr da: %1</translation>
    </message>
    <message>
        <source>&amp;Import a table</source>
        <translation>Tabelle &amp;importieren</translation>
    </message>
    <message>
        <source>CSV or a workbook (.xlsx, .ods): date, athlete, lift, load and velocity</source>
        <translation>CSV oder Arbeitsmappe (.xlsx, .ods): Datum, Athlet, Übung, Last und Geschwindigkeit</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::WholeSeasonPage</name>
    <message>
        <source>To beware of</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>What such a season can show, and what it cannot</source>
        <translation>Was eine solche Saison zeigen kann und was nicht</translation>
    </message>
    <message>
        <source>What chance alone would give</source>
        <translation>Was der Zufall allein ergäbe</translation>
    </message>
    <message>
        <source>To beware of, and what such a season can show</source>
        <translation>Zu beachten, und was eine solche Saison zeigen kann</translation>
    </message>
    <message>
        <source>The chosen cell</source>
        <translation>Die gewählte Zelle</translation>
    </message>
    <message>
        <source>Nothing was measured there.</source>
        <translation>Dort wurde nichts gemessen.</translation>
    </message>
    <message>
        <source>Save the whole season as PDF</source>
        <translation>Ganze Saison als PDF speichern</translation>
    </message>
    <message>
        <source>%1 whole season</source>
        <translation>%1 ganze Saison</translation>
    </message>
    <message>
        <source>What the season changed</source>
        <translation>Was die Saison geändert hat</translation>
    </message>
    <message>
        <source>What the marks mean</source>
        <translation>Was die Zeichen bedeuten</translation>
    </message>
    <message>
        <source>What such a season can show</source>
        <translation>Was eine solche Saison zeigen kann</translation>
    </message>
    <message>
        <source>What was done in the blocks</source>
        <translation>Was in den Blöcken getan wurde</translation>
    </message>
    <message>
        <source>What was done in the blocks, and what to beware of</source>
        <translation>Was in den Blöcken getan wurde, und was zu beachten ist</translation>
    </message>
    <message>
        <source>Block that changes are counted from</source>
        <translation>Block, von dem an Änderungen gezählt werden</translation>
    </message>
    <message>
        <source>Fr&amp;om</source>
        <translation>V&amp;on</translation>
    </message>
    <message>
        <source>Coun&amp;t from this block</source>
        <translation>Ab diesem Block zählen</translation>
    </message>
    <message>
        <source>Changes are counted from the block of the chosen cell; B in the table</source>
        <translation>Änderungen zählen ab dem Block der gewählten Zelle; B in der Tabelle</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::Workspace</name>
    <message>
        <source>Session</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Battery</source>
        <translation>Testbatterie</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Blöcke</translation>
    </message>
    <message>
        <source>Squad</source>
        <translation>Kader</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athlet</translation>
    </message>
    <message>
        <source>Messages</source>
        <translation>Meldungen</translation>
    </message>
    <message>
        <source>Imported.</source>
        <translation>Importiert.</translation>
    </message>
    <message>
        <source>Go back to a backup…</source>
        <translation>Auf eine Sicherung zurückgehen…</translation>
    </message>
    <message>
        <source>Undo once more to take this back: %1</source>
        <translation>Noch einmal Rückgängig nimmt dies zurück: %1</translation>
    </message>
    <message>
        <source>Redo once more to do this again: %1</source>
        <translation>Noch einmal Wiederherstellen tut dies wieder: %1</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Zurückgenommen: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Wieder getan: %1</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>gewählt</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Geraden</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>Noise and devices</source>
        <translation>Streuung und Messgeräte</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Halle</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Stations</source>
        <translation>Stationen</translation>
    </message>
    <message>
        <source>Overview</source>
        <translation>Überblick</translation>
    </message>
    <message>
        <source>Whole season</source>
        <translation>Ganze Saison</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation>Was ansteht</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::charts::CeilingChart</name>
    <message>
        <source>m/s</source>
        <translation>m/s</translation>
    </message>
    <message>
        <source>Ceiling, %1</source>
        <translation>Lastgrenze, %1</translation>
    </message>
    <message>
        <source>Best ladder, half-width in %1</source>
        <translation>Beste Leiter, halbe Breite in %1</translation>
    </message>
    <message>
        <source>Even steps, half-width in %1</source>
        <translation>Gleiche Stufen, halbe Breite in %1</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>can be had</source>
        <translation>ist möglich</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::charts::CeilingFigure</name>
    <message>
        <source>Heaviest load allowed (%1)</source>
        <translation>Schwerste erlaubte Last (%1)</translation>
    </message>
    <message>
        <source>Expected ± of the 1RM (%1)</source>
        <translation>Erwartetes ± des 1RM (%1)</translation>
    </message>
    <message>
        <source>Expected ± of the change (m/s)</source>
        <translation>Erwartetes ± der Änderung (m/s)</translation>
    </message>
    <message>
        <source>today&apos;s ceiling</source>
        <translation>Lastgrenze heute</translation>
    </message>
    <message>
        <source>Nothing to show yet</source>
        <translation>Noch nichts zu zeigen</translation>
    </message>
    <message>
        <source>even steps</source>
        <translation>gleiche Stufen</translation>
    </message>
    <message>
        <source>best ladder</source>
        <translation>beste Leiter</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::charts::ChangeFigure</name>
    <message>
        <source>Load (%1)</source>
        <translation>Last (%1)</translation>
    </message>
    <message>
        <source>Change (m/s)</source>
        <translation>Änderung (m/s)</translation>
    </message>
    <message>
        <source>faster</source>
        <translation>schneller</translation>
    </message>
    <message>
        <source>slower</source>
        <translation>langsamer</translation>
    </message>
    <message>
        <source>Nothing to compare yet</source>
        <translation>Noch nichts zu vergleichen</translation>
    </message>
    <message>
        <source>later − earlier</source>
        <translation>später − früher</translation>
    </message>
    <message>
        <source>%1 of these two days</source>
        <translation>%1 dieser zwei Tage</translation>
    </message>
    <message>
        <source>%1 over all loads</source>
        <translation>%1 über alle Lasten</translation>
    </message>
    <message>
        <source>the reading: %1, thick %2</source>
        <translation>der Befund: %1, dick %2</translation>
    </message>
    <message>
        <source>dashed: bend</source>
        <translation>gestrichelt: Krümmung</translation>
    </message>
    <message>
        <source>not lifted on both days</source>
        <translation>nicht an beiden Tagen gehoben</translation>
    </message>
    <message>
        <source>all %1</source>
        <translation>alle %1</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::charts::ChartMenu</name>
    <message>
        <source>Chart</source>
        <translation>Diagramm</translation>
    </message>
    <message>
        <source>Copy the picture</source>
        <translation>Bild kopieren</translation>
    </message>
    <message>
        <source>&amp;Copy the picture</source>
        <translation>Bild &amp;kopieren</translation>
    </message>
    <message>
        <source>Save as &amp;PNG…</source>
        <translation>Als &amp;PNG speichern…</translation>
    </message>
    <message>
        <source>Save as &amp;SVG…</source>
        <translation>Als &amp;SVG speichern…</translation>
    </message>
    <message>
        <source>Copy the &amp;figures</source>
        <translation>&amp;Zahlen kopieren</translation>
    </message>
    <message>
        <source>Show the f&amp;igures…</source>
        <translation>Zahlen a&amp;nzeigen…</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Bilder (*.png)</translation>
    </message>
    <message>
        <source>Drawings (*.svg)</source>
        <translation>Zeichnungen (*.svg)</translation>
    </message>
    <message>
        <source>Save the picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <source>chart</source>
        <translation>Diagramm</translation>
    </message>
    <message>
        <source>Figures of the chart</source>
        <translation>Zahlen des Diagramms</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::charts::LineFigure</name>
    <message>
        <source>Load (%1)</source>
        <translation>Last (%1)</translation>
    </message>
    <message>
        <source>Velocity (m/s)</source>
        <translation>Geschwindigkeit (m/s)</translation>
    </message>
    <message>
        <source>No sets yet</source>
        <translation>Noch keine Sätze</translation>
    </message>
    <message>
        <source>MVT %1 m/s</source>
        <translation>MVT %1 m/s</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>est. 1RM %1</source>
        <translation>gesch. 1RM %1</translation>
    </message>
    <message>
        <source>%1, lifted %2</source>
        <translation>%1, gehoben %2</translation>
    </message>
    <message>
        <source>%1 not lifted</source>
        <translation>%1 nicht geschafft</translation>
    </message>
    <message>
        <source>not comparable</source>
        <translation>nicht vergleichbar</translation>
    </message>
    <message>
        <source>est. 1RM %1 %2 (line alone %3)</source>
        <translation>gesch. 1RM %1 %2 (Gerade allein %3)</translation>
    </message>
    <message>
        <source>est. 1RM %1 %2 (thin: to plan with %3; thick: line alone %4)</source>
        <translation>gesch. 1RM %1 %2 (dünn: zum Planen %3; dick: Gerade allein %4)</translation>
    </message>
    <message>
        <source>est. 1RM %1 %2 (to plan with %3)</source>
        <translation>gesch. 1RM %1 %2 (zum Planen %3)</translation>
    </message>
    <message>
        <source>; by the log’s maxima %1</source>
        <translation>; nach den Maxima des Protokolls %1</translation>
    </message>
    <message>
        <source>est. 1RM %1 %2 (thin: with days and bend %3; thick: line alone %4)</source>
        <translation>gesch. 1RM %1 %2 (dünn: mit Tagen und Krümmung %3; dick: Gerade allein %4)</translation>
    </message>
    <message>
        <source>est. 1RM %1 %2 (with days and bend %3)</source>
        <translation>gesch. 1RM %1 %2 (mit Tagen und Krümmung %3)</translation>
    </message>
    <message>
        <source>not in the line</source>
        <translation>nicht in der Geraden</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::charts::MaxChart</name>
    <message>
        <source>Change of the max</source>
        <translation>Änderung des Maximums</translation>
    </message>
    <message>
        <source>Change, %1</source>
        <translation>Änderung, %1</translation>
    </message>
    <message>
        <source>Interval, %1</source>
        <translation>Intervall, %1</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Befund</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::charts::RelationChart</name>
    <message>
        <source>Velocity, m/s</source>
        <translation>Geschwindigkeit, m/s</translation>
    </message>
    <message>
        <source>% of 1RM</source>
        <translation>% des 1RM</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>the squad’s relation, %1</source>
        <translation>Kaderzusammenhang, %1</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
</context>
<context>
    <name>slopebook::ui::charts::RelationFigure</name>
    <message>
        <source>Velocity (m/s)</source>
        <translation>Geschwindigkeit (m/s)</translation>
    </message>
    <message>
        <source>Share of the 1RM (%)</source>
        <translation>Anteil am 1RM (%)</translation>
    </message>
    <message>
        <source>Nothing to show yet</source>
        <translation>Noch nichts zu zeigen</translation>
    </message>
    <message>
        <source>the squad, curved</source>
        <translation>der Kader, gekrümmt</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>gerade</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>the squad</source>
        <translation>der Kader</translation>
    </message>
    <message>
        <source>the squad, straight</source>
        <translation>der Kader, gerade</translation>
    </message>
    <message>
        <source>band: one point of an athlete</source>
        <translation>Band: ein Punkt eines Athleten</translation>
    </message>
</context>
</TS>
