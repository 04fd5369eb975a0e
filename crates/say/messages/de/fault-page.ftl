## Was sich so, wie gefragt wurde, nicht beantworten lässt.

fault-page-missing = Hier gibt es { $what ->
    [page] keine solche Seite
    [note] keine solche Notiz
    [hive] keine solche Beute
    [figure] keine solche Zahl
    [import] keine Übernahme, die sich zurücknehmen ließe
    [any-colony] kein Volk
   *[colony] kein solches Volk
}.
fault-page-no-colony = Ein Volk „{ $asked }“ gibt es an diesem Stand nicht.
fault-page-elsewhere = Es steht unter { $address }.
fault-page-foreign = Das wurde von einer anderen Seite gesendet und wird abgelehnt.
fault-page-sign-in = Zuerst anmelden.
fault-page-only-shown = Dieser Link zeigt den Stand und seine Völker, sonst nichts. Über ihn lässt sich nichts ändern.
fault-page-not-yet = Die erste Schätzung wird noch gerechnet. Gleich noch einmal fragen.
fault-page-trouble = Es gibt keine Schätzung: { $why }
fault-page-cut = Eine Rechnung endete vorzeitig. Noch einmal fragen; geschieht es wieder, ist es ein Fehler des Programms.
fault-page-ended-early = die Rechnung endete vorzeitig: ein Fehler des Programms

fault-page-title-shown = Nur zum Ansehen
fault-page-title-missing = Nicht hier
fault-page-title-asked = Stimmt das?
fault-page-title-wrong = Nicht getan
fault-page-yard = <a href="/">Den Stand ansehen</a>.
fault-page-mistyped = Die Adresse ist vielleicht vertippt. <a href="/">Den Stand ansehen</a>.
fault-page-colonies = Dies sind seine:
fault-page-not-noted = Noch wurde nichts notiert.
fault-page-right = Es stimmt: notieren
fault-page-mend = Sonst zurückgehen und berichtigen, oder <a href="/">den Stand ansehen</a>.
fault-page-unchanged = Nichts wurde geändert. Zurückgehen und berichtigen, oder <a href="/">den Stand ansehen</a>.

fault-page-too-large = Das ist zu groß oder brach ab.
fault-page-too-slow = Das kam zu langsam.
fault-page-way = Diese Adresse wird nicht so gefragt.
fault-page-file = { $file } lässt sich nicht schreiben: { $why }
fault-page-keep = keep={ $word }: yes, all oder unasked schreiben.
fault-page-no-json = Das ist keine Notiz, wie /api sie beschreibt ({ $why }).
