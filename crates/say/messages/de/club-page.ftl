## Die Seiten eines Vereins.

club-page-week = Diese Woche
club-page-sharing = Teilen
club-page-losses = Verluste
club-page-night = Die Nacht
club-page-language = Sprache
club-page-who = Angemeldet: { $member }
club-page-back = Es wurde nichts geändert. <a href="/">Zur ersten Seite</a>.
club-page-missing = Diese Seite gibt es hier nicht, oder sie ist für andere bestimmt.
club-page-unreadable = Die Aufzeichnungen des Vereins sind gerade nicht zu lesen. In einer Minute noch einmal versuchen; bleibt es so, den Betreuer der Vereinsmaschine fragen.

## Der Eingang.

club-page-sign-in = Anmelden
club-page-sign-in-lede = Das sind die Seiten eines Vereins. Sie öffnen sich mit dem Schlüssel, den der Verein ausgibt.
club-page-key = Schlüssel
club-page-key-lost = Dieser Browser bleibt danach bis 30 Tage nach dem letzten Besuch angemeldet, höchstens 180 Tage. Verloren? Wer die Vereinsmaschine betreut, macht mit <code>snowhum club member NAME</code> einen neuen; der alte öffnet dann nichts mehr.
club-page-key-wrong = Das ist kein Schlüssel dieses Vereins. Nichts wurde geöffnet.

## Wer diese Woche Hilfe braucht.

club-page-help-heading = Wer diese Woche Hilfe braucht
club-page-read = Hier zu lesen: die Nacht des { DAY($on, style: "full") }, die letzte vollständige.
club-page-old = Das ist { NUMBER($days) } Tage her. Was seither kam, steht nicht darin.
club-page-no-night = Noch ist keine Nacht vollständig; hier ist also nichts bekannt.
club-page-no-yards = Diese Nacht fragte nach keinem eigenen und keinem geteilten Stand.
club-page-help-needed = { $yards ->
    [one] <strong>{ NUMBER($yards) }</strong> von { NUMBER($of) } Ständen braucht
   *[other] <strong>{ NUMBER($yards) }</strong> von { NUMBER($of) } Ständen brauchen
} binnen einer Woche jemanden.
club-page-help-none = { $yards ->
    [one] Der eine Stand hier braucht binnen einer Woche niemanden.
   *[other] Keiner von { NUMBER($yards) } Ständen braucht binnen einer Woche jemanden.
}
club-page-help-none-known = { $yards ->
    [one] Der eine Stand, von dem man weiß, braucht binnen einer Woche niemanden.
   *[other] Keiner der { NUMBER($yards) } Stände, von denen man weiß, braucht binnen einer Woche jemanden.
}
club-page-help-unknown = { $yards ->
    [one] Von einem Stand ist für diese Woche nichts bekannt.
   *[other] Von { NUMBER($yards) } Ständen ist für diese Woche nichts bekannt.
}
club-page-first = Zuerst: { NUMBER($yards) }
club-page-then = Danach: { NUMBER($yards) }
club-page-unknown = Für diese Woche nicht bekannt: { NUMBER($yards) }
club-page-alone = In Ruhe zu lassen, oder fort: { NUMBER($yards) }
club-page-invented = { $keeper }, ein erfundener Stand
club-page-other-day = Beantwortet für den { DAY($of, style: "full") }: Über diese Woche sagt das nichts.
club-page-failed = Keine Antwort: { $why }
club-page-later = Später, für den ganzen Stand
club-page-well = Wohlauf bis zum Frühjahr: { $is-same ->
    [yes] { NUMBER($now) } von 100.
   *[no] jetzt { NUMBER($now) } von 100, { NUMBER($done) }, wenn alles getan ist.
}

## Was geteilt wird.

club-page-sharing-heading = Teilen
club-page-sharing-lede = Einen Stand sieht nur sein Imker, bis er hier geteilt wird. Wer ihn als Berater liest, sieht seinen Namen, den des Imkers und was jede Nacht über die Völker sagt.
club-page-count-what = Der Verein zählt Völker und Verluste vergangener Winter. Er zeigt sie nur als Summen, von mindestens { NUMBER($yards) } Ständen von { NUMBER($members) } Mitgliedern.
club-page-no-own = Noch wurde kein eigener Stand abgegeben.
club-page-readers = Wer ihn liest
club-page-no-mentors = Der Verein hat noch keinen anderen Berater.
club-page-count = Seine Winter mitzählen
club-page-keep = Aufbewahren

## Verluste.

club-page-losses-heading = Verluste im Verein
club-page-of-own = Gezählt werden Stände, deren Imker es unter <a href="/sharing">Teilen</a> so gewählt haben.
club-page-none-counted = Noch wird kein Winter gezählt.
club-page-winter = Winter { $winter }
club-page-too-few = Weniger als { NUMBER($yards) } Stände von { NUMBER($members) } Mitgliedern werden gezählt: Gezeigt wird nichts.
club-page-regions = Nach Gegend
club-page-cells-what = Eine Gegend misst { NUMBER($latitude) }° Breite mal { NUMBER($longitude) }° Länge. Für sich steht sie ab { NUMBER($yards) } Ständen von { NUMBER($members) } Mitgliedern; alle anderen stehen zusammen.
club-page-region = Gegend
club-page-cell = { NUMBER($from-north) }–{ NUMBER($to-north) }° { $is-north ->
    [yes] N
   *[no] S
}, { NUMBER($from-east) }–{ NUMBER($to-east) }° { $is-east ->
    [yes] O
   *[no] W
}
club-page-elsewhere = anderswo
club-page-yards = Stände
club-page-number = { NUMBER($count) }
club-page-lost = Verloren
club-page-lost-of = { NUMBER($lost) } von { NUMBER($at-risk) }
club-page-rate = Rate, und was sie sein kann
club-page-rate-of = { NUMBER($rate, digits: 1) } % ({ NUMBER($low, digits: 1) } bis { NUMBER($high, digits: 1) })

## Wie die Nächte vorankommen.

club-page-night-heading = Die Nacht
club-page-night-of = Nacht des { DAY($on, style: "full") }
club-page-progress = { COUNT($done) } von { COUNT($asked) } Ständen
club-page-progress-failed = { COUNT($done) } von { COUNT($asked) } Ständen; { COUNT($failed) } gescheitert
club-page-workers = { $workers ->
    [0] Kein Rechner arbeitet.
    [one] Ein Rechner arbeitet.
   *[other] { NUMBER($workers) } Rechner arbeiten.
}
club-page-waiting = { COUNT($waiting) } Stände warten, { COUNT($taken) } sind vergeben.
club-page-left = Noch { COUNT($left) }, { $minutes ->
    [one] eine Minute oder so
   *[other] etwa { COUNT($minutes) } Minuten
} bei diesem Tempo.
club-page-stalled = Noch { COUNT($left) }, und in den letzten fünf Minuten keine Antwort.
club-page-failure = <strong>{ $yard }</strong>: { $why }
club-page-others-failed = { $yards ->
    [one] Ein weiterer scheiterte und steht nicht hier: Er ist für andere bestimmt, oder die Liste ist voll.
   *[other] { COUNT($yards) } weitere scheiterten und stehen nicht hier: Sie sind für andere bestimmt, oder die Liste ist voll.
}
