## Die Lehren eines Winters, im Terminal.

lessons-terminal-title = { $yard }{ $invented ->
    [yes] , ein erfundener Stand
   *[no] {""}
}, Winter { $winter }: { NUMBER($lost) } von { NUMBER($colonies) } Völkern { $open ->
    [yes] bisher verloren
   *[no] verloren
}
lessons-terminal-counted = Gezählt vom { DAY($from) } bis zum { DAY($to) }, wie bis zum { DAY($as-of, style: "full") } notiert.
lessons-terminal-cost = { $colonies } an Völkern, { $food } an notiertem Futter

lessons-terminal-forecast = Vorhersage gegen das, was geschah
lessons-terminal-foretold = vorhergesagt lebend { NUMBER($hives) } von 100; { $alive ->
    [yes] lebend
   *[no] tot
}
lessons-terminal-log-score = Log-Wertung
lessons-terminal-log-scored = { NUMBER($score, digits: 2) }; Grundrate von { NUMBER($hives) } auf 100 lebend: { NUMBER($base, digits: 2) }. Kleiner ist besser. Stimmen die Aussichten, liegt sie zwischen { NUMBER($low, digits: 2) } und { NUMBER($high, digits: 2) }
lessons-terminal-brier = Brier
lessons-terminal-brier-scored = { NUMBER($score, digits: 2) }; Grundrate { NUMBER($base, digits: 2) }
lessons-terminal-today = Das heutige Modell, befragt für den Tag, an dem die Völker gezählt wurden.

lessons-terminal-winters = Winter
lessons-terminal-lost = { NUMBER($lost) } von { NUMBER($colonies) } verloren
lessons-terminal-lost-open = { NUMBER($lost) } von { NUMBER($colonies) } verloren, { NUMBER($open) } nicht gemeldet
lessons-terminal-fed = { MASS($food) } gefüttert für { $money }
lessons-terminal-mites = meiste Milben { NUMBER($found) } auf { NUMBER($bees) } Bienen ({ $colony }, { DAY($on) })
lessons-terminal-treated = { NUMBER($colonies) } behandelt
lessons-terminal-coldest = Kälteste notierte { TEMPERATURE($air) } am { DAY($on) }
lessons-terminal-not-counted = Völker wie notiert, der Herbst hier nicht gezählt

lessons-terminal-others = Andere
lessons-terminal-survey = { NUMBER($percent, digits: 1) } % ({ NUMBER($least, digits: 1) } bis { NUMBER($most, digits: 1) }): { $who }; { $source }
lessons-terminal-for-survey = Für eine Umfrage
lessons-terminal-not-in-records = (nicht in den Aufzeichnungen)
