## Ein Volk: was geht da drin vor?

hive-page-not-yet = Die Schätzung ist unterwegs. Notieren geht inzwischen schon.
hive-page-walk = Völker in der Reihenfolge des Gangs
hive-page-note = Notieren
hive-page-weigh = Wiegen
hive-page-change = Ändern
hive-page-winter = Sein Winter
hive-page-what-to-do = Was zu tun ist, und was es wert ist
hive-page-dead-found = Gefundene tote Bienen
hive-page-alive-today = Heute am Leben? Gefundene tote Bienen
hive-page-expected = Was der nächste Blick zeigen sollte
hive-page-before = Vor dem Heben oder Öffnen
hive-page-well = Wohlauf bis zum { $goal }: { $chances }
hive-page-examine = Zeichen für Zeichen untersuchen

hive-page-food = Futter
hive-page-day-by-day = Tag für Tag
hive-page-noted = <span class="label">Notiert</span> { LIST($what, between: "; ") }.
hive-page-noted-on = { DAY($on) } { $what }
hive-page-weigh-it = Nur in Worten bekannt: wiegen, und der Fächer wird schmaler.

hive-page-alive-hardly = { CAPITAL($chance) } solcher Völker leben heute.
hive-page-alive = Von 100 solchen Völkern { $alive ->
    [one] lebt heute etwa { NUMBER($alive) }
   *[other] leben heute etwa { NUMBER($alive) }
}, { NUMBER($not) } nicht.
hive-page-queen-hardly = { CAPITAL($chance) } solcher Völker, die leben, haben eine Königin; kein Zeichen von außen beweist es.
hive-page-queen = Von 100 solchen Völkern, die leben, haben etwa { NUMBER($queen) } eine Königin, { NUMBER($without) } keine; kein Zeichen von außen beweist es.
hive-page-ended = { $seen-dead ->
    [yes] Was es am ehesten beendete, bei 100 solchen Völkern
   *[no] Falls es tot ist, bei 100 solchen Völkern
}: { LIST($causes) }.
hive-page-cause = { $cause } { NUMBER($hives) }
hive-page-ended-between = Am ehesten { DAY($middle, style: "part") }, zwischen dem { DAY($early) } und dem { DAY($late) }.
hive-page-dead-against = { CAPITAL($verdict) }: { $usual }. { SENTENCE($lie) }

hive-page-expected-on = Am { DAY($on, style: "marked") } bei { TEMPERATURE($air) }:
hive-page-dead-on-floor = Tote Bienen auf dem Boden
hive-page-new-dead = Neue tote Bienen
hive-page-rime = Neuer Reif am Loch
hive-page-hum = Ein Summen, mit dem Ohr an der Wand
hive-page-flight = Ein Reinigungsflug

hive-page-figures = Wärme, Luft und Wasser
hive-page-weather = { $is-in-room ->
    [yes] Heute in seinem Raum
   *[no] Beim heutigen Wetter
}: { TEMPERATURE($air) }, Wind { SPEED($wind, digits: 1) } an den Beuten.
hive-page-heat = Wärme des Volkes
hive-page-watts = { NUMBER($watts, digits: 1) } W
hive-page-heat-loss = Wärmeverlust
hive-page-loss = { LOSS($loss, digits: 2) }
hive-page-core-mantle = Kern, Mantel
hive-page-core-and-mantle = { TEMPERATURE($core, digits: 1) }, { TEMPERATURE($mantle, digits: 1) }
hive-page-warm-zone = Luft um die Traube
hive-page-degrees = { TEMPERATURE($air, digits: 1) }
hive-page-food-eaten = Futter gefressen
hive-page-water = Wasser abgegeben
hive-page-grams = { GRAMS($mass, us: 1) } am Tag
hive-page-caught = Niedergeschlagen an Deckel, Wänden, Boden
hive-page-caught-grams = { GRAMS($lid, us: 1) }, { GRAMS($walls, us: 1) }, { GRAMS($floor, us: 1) } am Tag
hive-page-dripping = Tropft auf die Traube
hive-page-air-flow = Luft herein und hinaus
hive-page-flow = { FLOW($flow, digits: 2, us: 1) }
hive-page-humidity = Feuchte, Kohlendioxid
hive-page-percent = { NUMBER($humidity) } %, { NUMBER($co2, digits: 1) } %

hive-page-nothing-helps = Nichts von dem, was im Modell versucht wurde, hilft mehr als der Zufall.
hive-page-action = { $is-instead ->
    [yes] Oder stattdessen:{" "}
   *[no] {""}
}<strong>{ CAPITAL($what) }</strong>, { $when }.
hive-page-on = am { DAY($on, style: "marked") }
hive-page-from-to = vom { DAY($from, style: "marked") } bis zum { DAY($to, style: "marked") }
hive-page-take-care = <strong>Vorsicht: </strong>{ $caution }.
hive-page-worth = Was es wert ist, und wer das sagt
hive-page-rule = Daneben eine Regel der Imkerei: { $rule }.

hive-page-lift = { CAPITAL($size) }, { $place }: { MASS($load) } aus { LENGTH($hands) } Höhe, { $says }.
hive-page-only-box = die einzige Zarge
hive-page-lowest = die unterste
hive-page-top = die oberste
hive-page-from-below = Nummer { NUMBER($number) } von unten
hive-page-reckoned = Gerechnet mit dem Futter von oben herab hängend und den Bienen in der untersten Zarge; gerade, nah am Körper, mit zwei Händen.
hive-page-which-rule = <a href="/words#lifting">Nach welcher Regel</a>.
hive-page-hazards = Vorsicht: Heben, Eis, Stiche

hive-page-notes = Notizen, und was jede bewirkte
hive-page-no-notes = Noch keine.
hive-page-change-note = ändern
hive-page-all-notes = Alle { NUMBER($notes) } Notizen
hive-page-take-back = Das zuletzt hier Getane zurücknehmen
