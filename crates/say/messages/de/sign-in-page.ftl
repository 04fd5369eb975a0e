## Die Seite „Anmelden“, und wer angemeldet ist.

sign-in-page-heading = Anmelden
sign-in-page-lede = Dies ist der Stand eines Imkers. Seine Seiten öffnen sich mit dem Kennsatz.
sign-in-page-phrase = Kennsatz
sign-in-page-forgotten = Dieser Browser bleibt dann 30 Tage nach seinem letzten Besuch angemeldet, höchstens 180 Tage. Vergessen? Am Rechner selbst fragt <code>snowhum serve --lan --new-pass-phrase</code> nach einem neuen; <code>snowhum sign-in-code</code> nennt einen Code, der einmal an seine Stelle tritt.
sign-in-page-wrong = Das ist nicht der Kennsatz. Nichts wurde geöffnet.
sign-in-page-too-soon = Zu viele falsche Versuche. { $wait } warten, dann noch einmal versuchen; oder am Rechner selbst nach einem Code fragen, der sofort gilt.
sign-in-page-seconds = { NUMBER($count) } { $count ->
    [one] Sekunde
   *[other] Sekunden
}
sign-in-page-minutes = { NUMBER($count) } { $count ->
    [one] Minute
   *[other] Minuten
}

sign-in-page-signed-in = Angemeldet
sign-in-page-browsers = { $count ->
    [1] Nur dieser Browser ist angemeldet.
   *[other] { NUMBER($count) } Browser sind angemeldet, dieser darunter.
}
sign-in-page-sign-out = Überall abmelden

sign-in-page-phrase-short = der Kennsatz ist zu kurz; mindestens { NUMBER($fewest) } Zeichen nehmen, etwa vier Wörter, die nichts miteinander zu tun haben
sign-in-page-phrase-long = der Kennsatz ist zu lang; höchstens { NUMBER($most) } Zeichen werden gelesen

sign-in-page-not-kept = Noch nicht gespeichert
sign-in-page-again = Vor dem Speichern ist neu anzumelden.
sign-in-page-window = In einem eigenen Fenster <a href="/sign-in" target="_blank">anmelden</a>, dann hierher zurückgehen und noch einmal senden. Was geschrieben wurde, ist noch da.
