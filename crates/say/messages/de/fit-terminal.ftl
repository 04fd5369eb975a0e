## Winterfest, im Terminal.

fit-terminal-scales = Maße
fit-terminal-how = Wie
fit-terminal-not-known = { $what ->
    [bees] Bienen
    [brood] Brut
    [stores] Vorräte
    [queen] Königin
    [mites] Milben
   *[hive] Beute
} nicht bekannt
fit-terminal-off = { $perhaps ->
    [yes] vielleicht{" "}
   *[no] {""}
}{ $what ->
    [bees-under] weniger Bienen
    [bees-over] mehr Bienen
    [brood-under] weniger Brut
    [brood-over] mehr Brut
    [stores-under] weniger Futter
    [stores-over] mehr Futter
    [queen-under] eine jüngere Königin
    [queen-over] eine ältere Königin
    [mites-under] weniger Milben
    [mites-over] mehr Milben
    [hive-under] ein kälterer Deckel
   *[hive-over] ein wärmerer Deckel
} als üblich
fit-terminal-yard = Der Stand
fit-terminal-buy = Zu kaufen
fit-terminal-buy-nothing = kein Futter: keinem Volk fehlt etwas
fit-terminal-buy-no-feed = kein Futter
fit-terminal-buy-sugar = { MASS($sugar, digits: 1) } Zucker als { VOLUME($syrup, digits: 1) } Sirup 3:2
fit-terminal-buy-solid = { MASS($solid, digits: 1) } Futterteig, oder ebenso viel feuchter Zucker, wo { $late ->
    [yes] es hier zu spät für Sirup ist
   *[no] kein Futtergeschirr schnell genug für Sirup ist
}
fit-terminal-buy-later = { MASS($fondant, digits: 1) } Futterteig bereit für das Wiegen mitten im Winter
fit-terminal-buy-spared = Waben aus schweren Völkern können { MASS($stores, digits: 1) } der Vorräte ersetzen
