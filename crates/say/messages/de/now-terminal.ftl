## Wo jedes Volk steht, im Terminal.

now-terminal-sign = { DAY($on, style: "short") } { $note }
now-terminal-stands = Beruht auf { $source }, Startwert { $seed }.
now-terminal-judgement = Wie viel ein Zeichen sagen kann, ist durchweg Einschätzung: data/watch_parameters.toml. Etikett, örtliches Recht, Amtstierarzt und Tierarzt gehen jedem Wort hier vor.

now-terminal-flight-day = Flugtag
now-terminal-flies-most-days = die Bienen fliegen jetzt an den meisten Tagen; ein Volk, das nicht fliegt, während andere es tun, wird zuerst geöffnet
now-terminal-flies = { DAY($on) }, { $days ->
    [one] morgen
   *[other] in { NUMBER($days) } Tagen
} ({ $chance }): bei jedem Volk notieren, ob es gut, schwach oder gar nicht flog, und die zuerst öffnen, die nicht flogen
now-terminal-flies-not = binnen zehn Tagen wohl keiner
now-terminal-look = Nachsehen
now-terminal-open = Erst öffnen
now-terminal-lid = Deckel
now-terminal-lid-tomorrow = Morgen um eins: { $lid } { $others }

now-terminal-mind = Beachten
now-terminal-queen = Königin
now-terminal-with-queen = { $chance } der lebenden haben eine; kein Zeichen von außen beweist es
now-terminal-bees = etwa { NUMBER($likely) } ({ NUMBER($least) } bis { NUMBER($most) })
now-terminal-stores = { MASS($likely, digits: 1) } (8 von 10 zwischen { MASS($least, digits: 1) } und { MASS($most, digits: 1) }); in Reichweite { MASS($reach, digits: 1) }
now-terminal-until = Bis
now-terminal-board = Tafel
now-terminal-ahead = Voraus
now-terminal-comes = lebend, mit Futter und Königin: { $chance }
now-terminal-comes-to = bis zum { $goal }, lebend, mit Futter und Königin: { $chance }
now-terminal-dead = Falls tot
now-terminal-dead-of = { LIST($causes) } von 100
now-terminal-since = Seit
now-terminal-since-day = am ehesten { DAY($likely, style: "part") }, zwischen dem { DAY($from) } und dem { DAY($to) }

now-terminal-next = Erwartet
now-terminal-next-look = am { DAY($on) } bei { TEMPERATURE($air) }: { LIST($parts) }
now-terminal-new-dead = { $dead } neue tote Bienen{ $indoors ->
    [yes] {" "}auf dem Boden
   *[no] {""}
}
now-terminal-new-rime = neuer Reif am Loch { $chance }
now-terminal-new-hum = ein Summen { $chance }
now-terminal-new-flight = ein Reinigungsflug { $chance }
now-terminal-no-flight = im Dunkeln fliegt keine Biene

now-terminal-look-first = Erst sehen?
now-terminal-action = { $what }, { $when }: { $worth }. { $why }.
now-terminal-caution = Vorsicht: { $caution }.
now-terminal-signs = Zeichen
now-terminal-evidence = { DAY($on) }: { $note }: { $moved }
