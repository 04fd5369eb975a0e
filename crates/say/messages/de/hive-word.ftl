## Fachwörter, die eine Seite von einer Beute sagt, wo sie aus einer Liste gewählt wurden.

hive-word-fondant = Futterteig
hive-word-sugar-board = Zuckerbrett
hive-word-candy = Zuckertafel
hive-word-frame-feeder = Futtertasche

hive-word-clear = frei
hive-word-blocked = verstopft
hive-word-cleared = freigemacht
hive-word-drifted-over = zugeweht
hive-word-iced = vereist
hive-word-plugged = mit Bienen verstopft
hive-word-not-visible = nicht zu sehen

hive-word-foulbrood-signs = Zeichen von Faulbrut
hive-word-chalkbrood = Kalkbrut
hive-word-crumpled-wings = verkrüppelte Flügel
hive-word-dysentery = Ruhr
hive-word-robbed = ausgeraubt
hive-word-wasps = Wespen

hive-word-weak = schwach
hive-word-middling = mittel
hive-word-strong = stark
hive-word-light = leicht
hive-word-fair = mittel
hive-word-heavy = schwer
hive-word-not-looked-at = nicht nachgesehen
