## Die Seite „Winterfest?“: sechs Maße für jedes Volk, und vorher eine Schätzung.

fit-page-heading = Winterfest?
fit-page-lede = Jedes Volk, wie es am { DAY($on) } vorgefunden wurde, neben dem hier Üblichen: { $country }.
fit-page-learning = Lernen? <a href="/fit?guess=1">Erst schätzen, dann sehen</a>.
fit-page-last-days = Die letzten Tage hier
fit-page-buy = Zu kaufen
fit-page-which = <a href="/feed">Wer was bekommt, und wie</a>.

fit-page-food = Futter
fit-page-short = Es fehlen { PORTION($short) } Vorräte.
fit-page-why = Warum
fit-page-six = Sechs Maße, und wer das sagt
fit-page-look = Was anzusehen ist
fit-page-who = Wer sagt das?
fit-page-range = { $region }, { $hive }: { $says } ({ $source }; { $status }).
fit-page-other-school = Andere Schule: { $says }.
fit-page-unite = { $is-verdict ->
    [yes] Wie die beiden vereinigt werden
   *[no] Falls doch lieber vereinigen
}
fit-page-carried = Im Modell, allein: { $alone }. Mit { $other } vereinigt: { $together }.
fit-page-no-other = keines
fit-page-alone = Von 100 solchen Völkern kommen etwa { NUMBER($so) } ins Frühjahr, { NUMBER($not) } nicht
fit-page-alone-nearly = { CAPITAL($chance) } solcher Völker kommen ins Frühjahr
fit-page-together = Als ein Volk schaffen es von 100 solchen etwa { NUMBER($so) }, { NUMBER($not) } nicht
fit-page-together-nearly = { CAPITAL($chance) } solcher Völker schaffen es als eines
fit-page-not-united = Nicht vereinigt

fit-page-picture = { $colony } auf sechs Maßen
fit-page-usual = üblich { $low } bis { $high }: { $region }
fit-page-no-range = für diesen Ort ist keine Spanne bekannt
fit-page-stands = { $figure } · { $stands }
fit-page-number = { $is-whole ->
    [yes] { NUMBER($number) }
   *[no] { NUMBER($number, digits: 1) }
}
fit-page-mass = { MASS($mass, digits: 1, us: 0) }
fit-page-mass-bare = { MASS($mass, digits: 1, unit: "no", us: 0) }
fit-page-resistance = { RESISTANCE($lid) }
fit-page-bees = { $number } Bienen
fit-page-frames = { $number } große { $is-one ->
    [yes] Wabe
   *[no] Waben
}
fit-page-winters = { $number } { $is-one ->
    [yes] Winter
   *[no] Winter
} hinter ihr
fit-page-mites = { $number } { $is-one ->
    [yes] Milbe
   *[no] Milben
} auf 100 Bienen
fit-page-lid = { $number } m² K/W über den Bienen

fit-page-guesses = Eigene Schätzungen neben denen des Modells. Keines von beiden hat im Frühjahr nachgesehen.
fit-page-facts = Die Fakten vom { DAY($on) }, { $country }. Was wäre mit jedem Volk zu tun?
fit-page-show = Die des Modells zeigen
fit-page-again = Noch einmal schätzen
fit-page-whole = Die ganze Seite
fit-page-seen = Gesehen
fit-page-not-known = nicht bekannt
fit-page-between = { $middle } ({ $low } bis { $high })
fit-page-treated = { $figure }; behandelt { LIST($days) }
fit-page-day = { DAY($on) }
fit-page-not-noted = nichts ist notiert, so oder so
fit-page-nothing-wrong = nichts auffällig
fit-page-guess = Eigene Schätzung
fit-page-you = Selbst
fit-page-model = Das Modell
fit-page-same = Dasselbe.
fit-page-differ = Sie gehen auseinander. Wo die Gründe nicht überzeugen, die Bienen noch einmal ansehen: selbst weiß man, was die Zahlen auslassen.
