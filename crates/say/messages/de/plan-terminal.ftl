## Der kommende Winter, Volk für Volk, im Terminal.

plan-terminal-chances = Aussichten
plan-terminal-chances-done = lebend, mit Futter und Königin bis zum { $goal }: { $done }, wenn all das getan wird, { $not }, wenn nichts.
plan-terminal-chances-gone = lebend, mit Futter und Königin bis zum { $goal }: die Bienen kommen zu einem anderen Volk; { $not }, wenn nichts getan wird.
plan-terminal-chances-why = Warum: { $reasons }.
plan-terminal-counted = Gezählt
plan-terminal-quick-start = nur die vier Angaben des Schnellstarts sind bekannt, also ist hier jede Spanne weit
plan-terminal-left = so belassen { $alive } am Leben; lebend, mit Futter und Königin: { $queenright }
plan-terminal-once-fed = Gefüttert mit dem, was fehlt: { $chance }
plan-terminal-to-do = Zu tun
plan-terminal-no-action = nichts, was jetzt getan wird, ändert das mehr als der Zufall
plan-terminal-ends = Ende je 100

plan-terminal-stores = { MASS($now, digits: 1) } jetzt, { MASS($reach, digits: 1) } in Reichweite; { $lasts }
plan-terminal-few-starve = wenige verhungern, aber das schlechteste Zehntel kommt mit weniger als { MASS($left) } in Reichweite ins Frühjahr
plan-terminal-rule = Regel
plan-terminal-rule-says = { $region }: { $says } ({ $source })
plan-terminal-but = Aber
plan-terminal-short = Fehlt
plan-terminal-short-nothing = nichts: 9 von 10 erreichen das Frühjahr mit { MASS($left) } in Reichweite oder mehr
plan-terminal-short-of = { MASS($short, digits: 1) } Vorräte (damit 9 von 10 { MASS($left) } in Reichweite behalten): { MASS($sugar, digits: 1) } Zucker, als { VOLUME($three-to-two, digits: 1) } Sirup 3:2 oder { VOLUME($two-to-one, digits: 1) } Sirup 2:1
plan-terminal-syrup-by = muss hier bis zum { DAY($safe) } fertig sein (abgenommen und verdeckelt), um sicher zu sein (der { DAY($usual) } reicht in der Hälfte aller Jahre){ $late ->
    [yes] ; das ist vorbei: stattdessen Futterteig, Zuckertafel oder Futterwaben geben
   *[no] {""}
}

plan-terminal-hive-empty = die Bienen sind vor dem kältesten Monat fort
plan-terminal-hive = verliert im kältesten Monat { LOSS($loss, digits: 1) }, { FLOW($air, digits: 2, us: 1) } Luft; Wasser am Tag: Deckel { GRAMS($lid, us: 1) }, Wände { GRAMS($walls, digits: 0, us: 1) }, Boden { GRAMS($floor, digits: 0, us: 1) }, auf die Traube tropfen { GRAMS($drips, digits: 0, us: 1) }; { $hole }
plan-terminal-no-hole = kein oberes Flugloch, also kein Reif zu suchen
plan-terminal-frost = Reif am oberen Flugloch in { NUMBER($percent) } % der Zeit
plan-terminal-bees = { $bars } von { NUMBER($now) } jetzt auf { NUMBER($low) } ({ NUMBER($least) } bis { NUMBER($most) }) { DAY($on, style: "part") }
plan-terminal-brood = Brut deutlich wieder da etwa { DAY($on, style: "part") }

plan-terminal-food-day = Futter/Tag
plan-terminal-dead-day = Tote/Tag
plan-terminal-dead-seen = Tot gesehen
plan-terminal-month-food = { DAY($month, style: "short-month") } { GRAMS($food, unit: "no", us: 1) }
plan-terminal-month-bees = { DAY($month, style: "short-month") } { NUMBER($bees) }
plan-terminal-month-seen = { DAY($month, style: "short-month") } { $usual }
plan-terminal-months-food = { LIST($months) } { $ounces ->
    [yes] oz
   *[no] g
}
plan-terminal-months-bees = { LIST($months) } Bienen
plan-terminal-months-seen = { LIST($months) } vor der Beute in zwei Wochen, bei 9 von 10 Gängen

plan-terminal-helps = Hilft { NUMBER($place) }
plan-terminal-action = { $what }: { $worth }
plan-terminal-action-when = { $what }, { $when }: { $worth }
plan-terminal-trade = Die Imkerei: { $rule }
plan-terminal-mind = Beachten: { $caution }
plan-terminal-after = { LIST($sentences, between: ". ") }

plan-terminal-stands = Beruht auf { $source }; { NUMBER($members) } Läufe auf { NUMBER($paths) } Wetterverläufen, Startwert { $seed }.
plan-terminal-parameters = Parameter und ihre Quellen: data/winter_parameters.toml. Etikett, örtliches Recht, Amtstierarzt und Tierarzt gehen jedem Wort hier vor.

plan-terminal-of-then = { $yard } wurde am { $counted } gezählt, für einen Winter, der vorbei ist; dies ist sein damaliger Plan. Für den dieses Herbstes: snowhum season
