## Links, die einem Paten einen Stand zeigen.

links-page-heading = Ein Link für einen Paten
links-page-lede = Wer ihn öffnet, sieht den Stand und jedes Volk und ändert nichts. Er öffnet sich, wo dieser Server zu erreichen ist: { $network ->
    [yes] im eigenen Netz
   *[no] nur auf diesem Rechner, bis mit --lan gestartet wird
}.
links-page-for-whom = Für wen
links-page-holds = Er gilt
links-page-days = { NUMBER($days) } Tage
links-page-make = Einen Link anlegen
links-page-one = <strong>{ $reader }</strong>, bis { DAY($until, style: "marked") } { $year }
links-page-take-back = Zurücknehmen

links-page-a-link = Ein Link
links-page-welcome = Ein Stand zum Ansehen
links-page-welcome-lede = Dieser Link ist für <strong>{ $reader }</strong>. Er zeigt Stand und Völker eines Imkers; ändern lässt sich über ihn nichts.
links-page-look = Den Stand ansehen
links-page-cookie = Ein Cookie hält ihn in diesem Browser offen, bis der Link endet. „Abmelden“ am Fuß jeder Seite entfernt es.
links-page-needless = Selbst schon angemeldet
links-page-needless-lede = Der Link wirkt, und ohne ihn ist mehr zu sehen. Um zu sehen, was er zeigt, ihn in einem privaten Fenster öffnen.
links-page-shut = Dieser Link öffnet nichts
links-page-shut-lede = Er ist abgelaufen, wurde zurückgenommen oder nicht ganz kopiert. Den Imker um einen anderen bitten.

links-page-wrong-name = Schreiben, für wen der Link ist, in höchstens { NUMBER($most) } Zeichen.
links-page-wrong-days = Ein Link gilt 7, 30, 90 oder 365 Tage.
links-page-too-many = Es gibt schon { NUMBER($most) } Links; erst einen zurücknehmen.
