## Ein Volk bei gleichbleibendem Wetter, im Terminal.

hive-terminal-head = { $name }, { $hive }, { TEMPERATURE($outside, digits: 1) } draußen, eingeschwungen
hive-terminal-heater = Heizung
hive-terminal-heated = { NUMBER($watts, digits: 1) } W anstelle der Bienen
hive-terminal-cluster = Traube
hive-terminal-bees = { NUMBER($bees) } Bienen, { LENGTH($across) } Durchmesser; Kern { TEMPERATURE($core, digits: 1) }, Mantel { TEMPERATURE($mantle, digits: 1) }
hive-terminal-heat = Wärme
hive-terminal-warmth = { NUMBER($watts, digits: 1) } W, aus { GRAMS($food, digits: 1, us: 2) } Vorräten am Tag, die auch { GRAMS($water, digits: 1, us: 2) } Wasser geben
hive-terminal-air = Luft
hive-terminal-airs = { TEMPERATURE($around, digits: 1) } um die Traube, { TEMPERATURE($floor, digits: 1) } am Boden; { FLOW($flow, digits: 2, us: 1) } gehen hindurch, { NUMBER($humid) } % Feuchte, { NUMBER($spent, digits: 2) } % Kohlendioxid
hive-terminal-faces = Flächen
hive-terminal-face = Deckel { TEMPERATURE($lid, digits: 1) }, Wände { TEMPERATURE($walls, digits: 1) } (unten { TEMPERATURE($below, digits: 1) }), Boden { TEMPERATURE($floor, digits: 1) }
hive-terminal-water = Wasser
hive-terminal-caught = am Tag niedergeschlagen: Deckel { GRAMS($lid, digits: 1, us: 2) }, Wände { GRAMS($walls, digits: 1, us: 2) }, Boden { GRAMS($floor, digits: 1, us: 2) }; { GRAMS($drips, digits: 1, us: 2) } tropfen auf die Traube
hive-terminal-hole = Loch oben
hive-terminal-hole-is = { $state ->
    [none] es gibt keines
    [dry] trocken
    [damp] ein nasser Rand: Atem, ein Lebenszeichen
   *[frost] Reif: Atem, ein Lebenszeichen
}
hive-terminal-loss = Wärme fort
hive-terminal-loses = { LOSS($loss, digits: 2) } über draußen

hive-terminal-picture = Das Bild liegt in { $file }.
hive-terminal-outside = { $option }: { NUMBER($value, digits: "all") } liegt nicht zwischen { NUMBER($low) } und { NUMBER($high) }
hive-terminal-cluster-alone = --outside (°C; gefragt ist eine Wintertraube)
