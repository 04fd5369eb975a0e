## Wo ein Volk jetzt steht.

now-gone-examined = tot und untersucht: { $found }
now-gone-sold = verkauft: wird nicht mehr beobachtet
now-gone-disaster = durch ein Unglück verloren: wird nicht mehr beobachtet

now-beside-mites = { NUMBER($rate, digits: 1) } Milben auf 100 Bienen am { DAY($on) }, über der Schwelle hier, und seither ist keine Behandlung notiert: die Viren, die sie bringen, stecken kaum in den Aussichten, also der Zählung mehr trauen als der Aussicht
now-beside-opening = { $opening ->
    [entrance] Flugloch
   *[upper-hole] oberes Flugloch
} am { DAY($on) } als { $state } notiert: { $drifted ->
    [yes] durch den Schnee wird mit weniger Luft gerechnet, bis es als frei notiert ist
   *[no] es wird gerechnet, dass fast keine Luft und keine Biene hindurchkommt, bis es als freigemacht notiert ist
}
now-beside-room = was am { DAY($on) } notiert wurde, ist nur draußen zu sehen, und nach Plan steht es hier: { $room }; den Tag notieren, an dem es hineingetragen wird
now-beside-mouse = am { DAY($on) } wurde eine Maus notiert: an einem milden Tag nachsehen, dass keine drin ist, dann { $guard }
now-beside-drones = am { DAY($on) } wurden Drohnen notiert: zur Unzeit sprechen sie für eine versagende Königin oder keine; am ersten warmen Tag nach Arbeiterinnenbrut sehen
now-beside-no-pollen = am { DAY($on) } wurde kein Pollen eingetragen, während andere eintrugen: die Königin steht in Zweifel; dieses zuerst öffnen, sobald es warm ist

now-moved-dead = tote Bienen { $against }: { $usual }
now-moved-unexplained = passt zu nichts, was das Modell für möglich hielt; mit Vorbehalt genommen. Stimmt es?
now-moved-alive = am Leben: von { NUMBER($before) } auf { NUMBER($after) } von 100
now-moved-food = Futter von { MASS($before, digits: 1) } auf { MASS($after, digits: 1) }
now-moved-queen = mit Königin: von { NUMBER($before) } auf { NUMBER($after) } von 100 der lebenden
now-moved-several = { LIST($ways) }
now-moved-noted = notiert
now-moved-little = sagt wenig mehr, als bekannt war

now-look-first-nothing-helps = Nichts von dem, was im Modell versucht wurde, hilft mehr als der Zufall.
now-look-first-queen = Nicht erst wiegen: was wegen der Königin geschieht, hängt allein an der Brut.
now-look-first-listen = Erst horchen; sind sie zu hören, jetzt tun.
now-look-first-dear = Bei den meisten solchen Völkern ist es weniger wert, als es kostet; die Wahl liegt beim Imker.
now-look-first-no-need = Nicht erst nachsehen oder wiegen: es würde nicht ändern, was zu tun ist.
now-look-first-weigh = Erst wiegen: { $open ->
    [yes] was zu tun ist, ist offen
   *[no] es kann ändern, was zu tun ist
}.
now-look-first-life = Erst nach einem Lebenszeichen sehen: { $open ->
    [yes] was zu tun ist, ist offen
   *[no] es kann ändern, was zu tun ist
}.

now-open-first-well = flog gut
now-open-first-thin = flog schwach: wenige Bienen, oder Königin in Zweifel
now-open-first-soiled = verkotete die Beute: lange eingesperrt, oder das Futter ist schlecht
now-open-first-not-noted = nichts wurde notiert, während andere flogen
now-open-first-did-not-fly = flog nicht, während andere flogen

now-round = { DAY($on) } gegen { NUMBER($hour) } Uhr, bei { TEMPERATURE($air) }: { $hives }
now-round-nothing = von außen ist diese Woche wenig zu erfahren (in Zweifel sind höchstens { $hardly ->
    [yes] weniger als eines
   *[no] { NUMBER($doubt) }
} von 100)
now-round-hive = { $name } ({ $look })
now-round-hives = { LIST($hives) }
now-round-hives-more = { LIST($hives) } und { NUMBER($more) } weitere
now-round-dead-bees = die toten Bienen davor zählen
now-round-dead-on-floor = die toten Bienen auf dem Boden mit einem Haken zählen
now-round-poke = mit einem Strohhalm im Loch stochern
now-round-hole = nach Reif am oberen Flugloch sehen
now-round-hum = ein Ohr an die Wand
now-round-flight = sehen, ob es fliegt

now-lid = Bei { TEMPERATURE($air) } und Wind von { SPEED($wind) } an den Beuten { $may ->
    [look] dürfen Waben für einen kurzen Blick gezogen werden, die Brut warm halten
    [minutes] darf der Deckel einige Minuten ab sein; Waben lassen, wo sie sind
    [minute] darf der Deckel eine Minute ab sein: Futter drauf, Deckel drauf
    [seconds] nur, um ein hungerndes Volk zu retten: Sekunden, alles bereit in den Händen
   *[shut] zulassen: zu kalt oder zu windig
}.
now-lid-other-school = Manche Imker der Prärie warten auf { TEMPERATURE($zero) }, besser { TEMPERATURE($mild) }; manche geben bei { TEMPERATURE($frost) } in wenigen Sekunden Zucker.

now-alert-nothing = Nichts verlangt mehr Aufmerksamkeit.
now-alert-hive = { $name }: { $about }.
