## Der Stand: wie geht es allen, und was zuerst?

yard-page-title = Der Stand
yard-page-heading = Der Stand am { DAY($on) }
yard-page-autumn-begun = <strong>Der neue Herbst ist begonnen.</strong> Der letzte Winter ist unter <a href="/losses">Verluste und Lehren</a> aufbewahrt.
yard-page-lid-shut = Der Deckel ist bis Frühjahr zu. Sehen, was darunter vorgeht.
yard-page-begin-own = <a href="/begin">Eigenen Stand beginnen</a>.
yard-page-dead-bees = Tote Bienen auf dem Schnee? <a href="/normal">Ist das normal?</a>
yard-page-begun = <strong>Der eigene Stand ist begonnen.</strong>
yard-page-begun-kept = Er liegt in <code>{ $path }</code>; <code>snowhum serve</code> öffnet ihn wieder.
yard-page-begun-memory = Er steht nur im Speicher und ist weg, wenn das Programm endet; die Datei speichern, um ihn zu behalten.
yard-page-begun-words = Bienen und Futter sind nur in Worten bekannt, also ist jede Spanne weit: zählen und wiegen macht sie enger.

yard-page-calm = Nichts steht an. Die Deckel zulassen.
yard-page-next-are = Diese Woche ist nichts zu tun. Als Nächstes: { $hives }.
yard-page-needed = <strong>{ $hives }</strong> { $number ->
    [one] ist zuerst an der Reihe
   *[other] sind zuerst an der Reihe
}.
yard-page-after = Danach { $hives }.
yard-page-names = { LIST($names, last: " und ") }
yard-page-names-more = { LIST($names) } und { NUMBER($more) } weitere

yard-page-first = Zuerst: { NUMBER($hives) }
yard-page-then = Dann: { NUMBER($hives) }
yard-page-alone = In Ruhe zu lassen, oder fort: { NUMBER($hives) }
yard-page-mind = Beachten
yard-page-food = Futter
yard-page-next = Dann
yard-page-well-in = Wohlauf im { $goal }
yard-page-chances = { $is-same ->
    [yes] { NUMBER($now) } von 100.
   *[no] { NUMBER($now) } von 100 jetzt, <strong>{ NUMBER($done) }</strong> danach.
}

yard-page-flight = Flugtag
yard-page-flight-most-days = Bienen fliegen jetzt an den meisten Tagen; ein Volk, das nicht mitfliegt, wird zuerst geöffnet.
yard-page-flight-on = { DAY($on, style: "weekday") }, { DAY($on, style: "marked") }: in { $chance } solchen Wintern können die Bienen fliegen.
yard-page-flight-ready = <a href="/flight">Dafür bereit sein</a>.
yard-page-flight-none = Binnen zehn Tagen wohl keiner.
yard-page-look = Nachsehen gehen
yard-page-lid = Der Deckel, morgen um eins
yard-page-days = Die kommenden Tage
yard-page-days-of = Die Mitte der Wetterverläufe, auf denen die Schätzung geht, keine Vorhersage, außer es wurde eine angegeben. Der Wind ist der des offenen Landes in { HEIGHT(10) } Höhe.
yard-page-told = Der Winter erzählt
yard-page-hives = Ein Volk hinzufügen oder ändern
