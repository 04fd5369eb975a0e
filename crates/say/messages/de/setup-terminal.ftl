## Aufbauten nebeneinander, im Terminal.

setup-terminal-title = { $hive }: Winteraufbauten unter demselben Wetter

setup-terminal-alive = lebend
setup-terminal-food = Futter
setup-terminal-water = Wasser, { $ounces ->
    [yes] oz
   *[no] g
}/Tag
setup-terminal-heat = { $british-thermal ->
    [yes] Btu/h
   *[no] W/K
}
setup-terminal-price = Preis
setup-terminal-gain = Gewinn
setup-terminal-of-hundred = je 100
setup-terminal-unit = { $pounds ->
    [yes] lb
   *[no] kg
}
setup-terminal-faces = Dach/Wand/Boden

setup-terminal-number = { NUMBER($number) }
setup-terminal-tenths = { NUMBER($number, digits: 1) }
setup-terminal-loss = { LOSS($loss, digits: 2, unit: "no") }
setup-terminal-stores = { MASS($stores, digits: 1, unit: "no") }
setup-terminal-caught = { GRAMS($lid, unit: "no", us: 2) }/{ GRAMS($walls, unit: "no", us: 2) }/{ GRAMS($base, unit: "no", us: 2) }

setup-terminal-margin = { $more ->
    [yes] +
   *[no] {""}
}{ NUMBER($hives, digits: 1) } ± { NUMBER($plus-minus, digits: 1) } von 100 Völkern
setup-terminal-chance = kein echter Unterschied: was da ist, kann Zufall sein ({ $margin })
setup-terminal-hardly = kein echter Unterschied: weniger als { NUMBER($least) } von 100 Völkern ({ $margin })
setup-terminal-better = besser: { $margin } lebend, mit Futter und Königin
setup-terminal-worse = schlechter: { $margin } lebend, mit Futter und Königin

setup-terminal-no-change = --try "": nennt keine Änderung; eine schreiben, etwa "lid=50 mm foam"
