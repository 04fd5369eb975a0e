## Der erste Bildschirm eines Standes im Terminal.

first-terminal-title = { $yard }{ $invented ->
    [yes] , ein erfundener Stand
   *[no] {""}
}, { DAY($on) }: { $hives ->
    [one] { NUMBER($hives) } Volk
   *[other] { NUMBER($hives) } Völker
}
first-terminal-mites = Milben nicht gezählt bei { $all ->
    [yes] allen
   *[no] { NUMBER($hives) }
}
first-terminal-lost = { $all ->
    [yes] alle
   *[no] { NUMBER($hives) }
} verloren oder fort
first-terminal-short = zu wenig Futter bei { $all ->
    [yes] allen
   *[no] { NUMBER($hives) }
}
first-terminal-weigh = Futter nicht gewogen bei { $all ->
    [yes] allen
   *[no] { NUMBER($hives) }
}
first-terminal-nothing-presses = nichts drängt

first-terminal-today = Heute
first-terminal-by = Bis { DAY($on, style: "short") }
first-terminal-next-walk = Beim Gang
first-terminal-mild-day = Milder Tag
first-terminal-now = Jetzt
first-terminal-then = Dann
first-terminal-later = Später
first-terminal-nothing-in-any = bei keinem Volk steht etwas an; zulassen
first-terminal-nothing = nichts steht an
first-terminal-rest = { NUMBER($more) } weitere: snowhum { $command } --all
first-terminal-all-hives = Alle Völker:
first-terminal-hive-by = { $hive } ({ DAY($by, style: "short") })
first-terminal-step = { CAPITAL($task) }
first-terminal-step-from = { CAPITAL($task) }, ab { DAY($from, style: "short") }

first-terminal-head-hive = Volk
first-terminal-head-word = Urteil
first-terminal-head-done = Getan
first-terminal-head-not = Nicht
first-terminal-head-short = Fehlt
first-terminal-head-why = Warum

first-terminal-stands = Wo
first-terminal-chances-on = Von 100 solchen Völkern lebend, mit Futter und Königin am { DAY($on) }.
first-terminal-chances-to = Von 100 solchen Völkern lebend, mit Futter und Königin bis zum { $goal }.
first-terminal-no-nectar = Von hier an wird kein Nektar gerechnet: noch einmal wiegen, wenn die Tracht vorbei ist.
first-terminal-indoors = { LIST($hives) }: { $says }.
first-terminal-indoors-all = Alle Völker: { $says }.
first-terminal-numbers = Zahlen: Startwert { $seed }, { NUMBER($members) } Läufe: { $source }
first-terminal-more = Mehr: snowhum { $command } NAME, snowhum { $command } --all. Etikett, Recht und Tierarzt gehen vor.
