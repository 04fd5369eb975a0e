## Die Seite „Behandlungen“.

treatments-page-heading = Aufzeichnung der Behandlungen
treatments-page-kept = Geführt für { $hives ->
    [one] { NUMBER($hives) } Volk.
   *[other] { NUMBER($hives) } Völker.
}
treatments-page-yard = Stand: <strong>{ $yard }</strong>
treatments-page-registration = Registriernummer: { $number }
treatments-page-keeper = Imker: ______________________________  Unterschrift, Tag: ______________________
treatments-page-none = Keine Behandlung ist notiert.
treatments-page-table = Behandlungen
treatments-page-not-told = Was eine Zeile nicht nennt, ist nicht notiert.

treatments-page-note = Eine Behandlung notieren
treatments-page-hive = Volk
treatments-page-all = Alle Völker
treatments-page-day = Tag, wenn nicht heute
treatments-page-substance = Wirkstoff
treatments-page-product = Mittel, wie das Etikett es nennt
treatments-page-batch = Charge
treatments-page-quantity = Gegebene Menge, wie Etikett oder Tierarzt sie nannten
treatments-page-supplier = Bezugsquelle
treatments-page-proof = Kaufnachweis, etwa eine Rechnungsnummer
treatments-page-withdrawal = Wartezeit, auch wenn sie null ist
treatments-page-duration = Wie lange es drin bleibt
treatments-page-keep = Speichern
treatments-page-empty = Leer Gelassenes erscheint als nicht notiert. Um eine Notiz zu berichtigen, sie bei ihrem Volk unter dem Notierten öffnen.

treatments-page-which-substance = Den Wirkstoff wählen.
treatments-page-which-hive = Ein Volk wählen, oder alle.
