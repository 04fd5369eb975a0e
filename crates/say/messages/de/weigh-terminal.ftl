## Eine gewogene Beute, im Terminal.

weigh-terminal-food-by = Futter nach { $way }: { MASS($food, digits: 1) }
weigh-terminal-whole-by = Ganze Beute nach { $way }: { MASS($whole, digits: 1) }
weigh-terminal-side-first = { MASS($now, digits: 1) } auf einer Seite: aufschreiben, und wieder dieselbe Seite anheben
weigh-terminal-side-same = Eine Seite: keine Änderung über das Ablesen hinaus ({ MASS($change, digits: 1) }, plus oder minus { MASS($plus-minus, digits: 1) })
weigh-terminal-side-changed = Eine Seite ist { MASS($change, digits: 1) } { $lighter ->
    [yes] leichter
   *[no] schwerer
}, plus oder minus { MASS($plus-minus, digits: 1) }

weigh-terminal-whole = Ganze
weigh-terminal-readings = Anzeigen
weigh-terminal-read = { MASS($sum, digits: 1) } abgelesen, mal { NUMBER($factor, digits: 3) } für Auflagen, die { LENGTH($inset, us: 1) } eingerückt sind, ein Anheben um { LENGTH($lift, us: 1) } und die Mitte der Last in { LENGTH($centre, us: 1) } Höhe; sie liegt { LENGTH($off, us: 1) } { $left ->
    [yes] links
   *[no] rechts
} der Mitte
weigh-terminal-empty = Leere Beute
weigh-terminal-empty-of = { $range }: { LIST($parts) }
weigh-terminal-part = { $what } { MASS($mass, digits: 1) }
weigh-terminal-other = Anderes
weigh-terminal-stores = { $range }; in 8 von 10 Fällen liegt es in dieser Spanne
weigh-terminal-stores-hive = { $range } ({ $hive }); in 8 von 10 Fällen liegt es in dieser Spanne
weigh-terminal-back = Rücken
weigh-terminal-heavy = { $what }, { MASS($load, digits: 1) }: { $advice } (empfohlen: { MASS($advised, digits: 1) })

weigh-terminal-none-reckoned = aus dieser Wägung ließ sich kein Futter rechnen, und nichts ist notiert
weigh-terminal-one-alone = { $read } allein: für die ganze Beute auf einer Waage --scale "{ $read }" schreiben, für eine Seite --one-side "{ $read }"
weigh-terminal-width-wanted = --width: den Abstand der Hebepunkte angeben
weigh-terminal-frames-right = eine Zahl schreiben, etwa 7.5, oder deep=4
