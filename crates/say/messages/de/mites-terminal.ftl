## Eine Milbenzählung, im Terminal.

mites-terminal-line = Schwelle
mites-terminal-line-says = { $says } ({ $region }: { $source })
mites-terminal-a-day = am Tag
mites-terminal-per-100 = auf 100 Bienen
mites-terminal-in-bees = { $mites ->
    [one] { NUMBER($mites) } Milbe
   *[other] { NUMBER($mites) } Milben
} auf { NUMBER($bees) } Bienen
mites-terminal-in-days = { $mites ->
    [one] { NUMBER($mites) } Milbe
   *[other] { NUMBER($mites) } Milben
} in { NUMBER($days, digits: "all") } Tagen
mites-terminal-found = { $mites ->
    [one] { NUMBER($mites) } Milbe
   *[other] { NUMBER($mites) } Milben
}

mites-terminal-one = { $counted }, { NUMBER($rate, digits: 1) } { $unit }: { $verdict }
mites-terminal-range = Spanne
mites-terminal-ranges = { NUMBER($even-low, digits: 1) } bis { NUMBER($even-high, digits: 1) } { $unit } in 95 von 100 solcher Proben, wenn Milben gleichmäßig säßen; das tun sie nicht: { NUMBER($low, digits: 1) } bis { NUMBER($high, digits: 1) } trifft es eher
mites-terminal-truly = Wirklich
mites-terminal-missed = { NUMBER($rate, digits: 1) } auf 100 Bienen ({ NUMBER($low, digits: 1) } bis { NUMBER($high, digits: 1) }) mit denen, die dieser Probe entgehen ({ $method }); Schwellen gelten für die Zählung, wie sie ist
mites-terminal-chance = Chance
mites-terminal-over = { NUMBER($hundred) } von 100, dass es in Wahrheit über { NUMBER($line, digits: "all") } auf 100 sind
mites-terminal-clean = Saubere
mites-terminal-finds-none = findet keine Milbe bei wirklichen { LIST($misses, between: "; ") }
mites-terminal-miss = { NUMBER($mites, digits: "all") } auf 100 in { $samples } von 100 Proben
mites-terminal-under-one = weniger als 1
mites-terminal-at-most = höchstens { NUMBER($most) }
mites-terminal-about = { NUMBER($samples) }
mites-terminal-between = { NUMBER($least) } bis { NUMBER($most) }

mites-terminal-most = Am meisten: { $colony }, { NUMBER($rate, digits: 1) } { $unit }. { NUMBER($colonies) } Völker geprüft
mites-terminal-of-several = { $counted }, { NUMBER($rate, digits: 1) } { $unit } ({ NUMBER($low, digits: 1) } bis { NUMBER($high, digits: 1) }): { $verdict }
mites-terminal-yard = Stand
mites-terminal-mean = Mittel
mites-terminal-mean-is = { NUMBER($mean, digits: 1) } { $unit }, { NUMBER($low, digits: 1) } bis { NUMBER($high, digits: 1) } für das Mittel des Standes
mites-terminal-not-counted = Nicht gezählt: { LIST($colonies) }. Vielleicht sind das die schlimmsten.

mites-terminal-what-counted = was wurde bei { $colony } gezählt? Etwa: snowhum mites { $colony } 14/300
mites-terminal-wrong-count = „{ $count }“: Milben und Bienen schreiben, etwa 14/300
mites-terminal-nobody-counted = in { $yard } hat niemand Milben gezählt; --found und --bees angeben oder die Milben in die Standdatei schreiben
mites-terminal-days-wanted = eine Windel wird je Tag gelesen: mit --days angeben, wie lange sie lag
mites-terminal-sample-right = NAME=MILBEN/BIENEN schreiben, etwa Alder=2/300
mites-terminal-the-colony = das Volk
