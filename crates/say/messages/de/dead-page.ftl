## Die Seite „Totes Volk“.

dead-page-heading = Totes Volk
dead-page-lede = Warum ist es gestorben, und was davon lässt sich noch verwenden? Zuerst wird nach Faulbrut gesehen.
dead-page-seen-dead = tot gesehen
dead-page-shut = Im Winter bleibt eine Beute, die nur still ist, zu: <a href="/">die Seite des Standes</a> sagt, wie wahrscheinlich sie tot ist.
dead-page-kept = untersucht { DAY($on) }: { $found }

dead-page-title = { $colony }: totes Volk
dead-page-why = { $colony }: warum ist es gestorben?
dead-page-in-record = In der Aufzeichnung: { $kept }.
dead-page-wrong-sign = { $text }: bitte yes, fairly sure, no schreiben, oder es offen lassen.
dead-page-wrong-none = Kein Zeichen ist genannt; erst nachsehen, dann aufbewahren, was zu finden war.

dead-page-brood-lede = Zuerst die Brut. Eine Wabe, die Brut hatte, herausnehmen und bei gutem Licht in ihre Zellen sehen.
dead-page-go-on = Weiter
dead-page-brood-note = Ein Ja oder ein Ziemlich-sicher hält hier an. Solche Zeichen sind sicher, wenn gesehen, und oft übersehen: ein Nein spricht die Brut nicht frei.
dead-page-what = Was ist zu sehen?
dead-page-what-note = Auslassen, was nicht angesehen wurde. Je mehr gesagt ist, desto enger die Spannen.
dead-page-part-bees = Die Bienen
dead-page-part-food = Futter
dead-page-part-brood = Brut
dead-page-part-hive = Die Beute
dead-page-part-known = Was davon bekannt ist
dead-page-brood-again = Noch einmal die Brut
dead-page-ask = Warum ist es gestorben?
dead-page-yes = ja
dead-page-fairly-sure = ziemlich sicher
dead-page-fairly-sure-not = ziemlich sicher nicht
dead-page-no = nein
dead-page-did-not-look = nicht nachgesehen
dead-page-not-looked-at = nicht angesehen
dead-page-from-records = Aus den Aufzeichnungen, wenn nichts anderes gesagt ist: { $seen } ({ $because }).

dead-page-stop = Halt: das kann Faulbrut sein
dead-page-seen = Gesehen: { LIST($signs, between: ", ") }.
dead-page-stop-reuse = Waben: { $comb }. Vorräte: { $stores }.
dead-page-looked-again = Noch einmal nachgesehen: zurück zu den vier Fragen

dead-page-look-next = Als Nächstes ansehen
dead-page-tell-more = Mehr von dem sagen, was zu sehen ist
dead-page-reuse = Was sich noch verwenden lässt
dead-page-comb = Waben
dead-page-stores = Vorräte, für Bienen
dead-page-people = Menschen
dead-page-open = Solange sie offen ist
dead-page-watch = Was die Beobachtung von außen daraus machte
dead-page-watch-note = Allein aus Wetter und Notizen. In die Ursachen oben ist es nicht gemischt, weil es auf denselben Fakten beruht.
dead-page-who = Wer sagt das?
dead-page-causes = Von 100 Völkern, die so aussehen; die Spanne ist, was andere Kundige sagen könnten
dead-page-cause = Ursache
dead-page-of-hundred = Von 100
dead-page-between = Zwischen
dead-page-range = { NUMBER($low) } und { NUMBER($high) }
dead-page-taken = { NUMBER($signs) } aus den Aufzeichnungen übernommen
dead-page-taken-one = { $asked } <strong>{ CAPITAL($seen) }</strong>: { $because }.
dead-page-examined-on = Tag der Untersuchung, wenn nicht { DAY($today) }
dead-page-keep = In der Aufzeichnung behalten
