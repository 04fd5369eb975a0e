## Die Seite „Winteraufbau“: eine Beute anders aufgebaut, daneben.

setup-page-heading = Winteraufbau
setup-page-lede = Was würde sich ändern, wenn { $hive } anders aufgebaut wäre?

setup-page-chance = Kein echter Unterschied: was da ist, kann Zufall sein.
setup-page-hardly = Kein echter Unterschied: weniger als { NUMBER($least) } von 100 Völkern.
setup-page-difference = Etwa { NUMBER($hives) } von 100 Völkern { $is-better ->
    [yes] mehr
   *[no] weniger
} kommen lebend, mit Futter und Königin ins Frühjahr ({ $is-sharp ->
    [yes] ± weniger als 1
   *[no] ± { NUMBER($error) }
}).
setup-page-beside = Nebeneinander
setup-page-caption = { $hive } vom { DAY($from) } bis ins Frühjahr, unter demselben Wetter
setup-page-alive = Im Frühjahr lebend, von 100
setup-page-food = Bis zum Frühjahr gefressenes Futter
setup-page-heat = Wärmeverlust im kältesten Monat
setup-page-lid-water = Wasser am Deckel, am Tag
setup-page-wall-water = Wasser an den Wänden, am Tag
setup-page-floor-water = Wasser am Boden, am Tag
setup-page-drip = Tropft auf die Traube, am Tag
setup-page-price = Preis
setup-page-whole = { NUMBER($number) }
setup-page-eaten = { MASS($food, digits: 1, us: 0) }
setup-page-loss = { LOSS($loss, digits: 2) }
setup-page-water = { GRAMS($water, us: 1) }
setup-page-money = { NUMBER($price) } { $currency }
setup-page-from-count = Ab dem Tag, an dem die Völker gezählt wurden, so wie sie damals waren; Notizen seither zählen hier nicht.
setup-page-who = Wer sagt das?

setup-page-hive = Beute
setup-page-as-it-is = wie jetzt
setup-page-words = Daneben, in eigenen Worten
setup-page-compare = Vergleichen
setup-page-seconds = Es dauert einige Sekunden: ganze Winter werden gerechnet, jeder unter demselben Wetter.

setup-page-lid = Deckel
setup-page-foam-thin = { LENGTH(0.025) } Schaumdämmung
setup-page-foam-thick = { LENGTH(0.05) } Schaumdämmung
setup-page-straw = Strohkissen
setup-page-bare = bloßes Brett
setup-page-wrap = Hülle
setup-page-felt = Dachpappe
setup-page-no-wrap = keine
setup-page-hole = Oberes Flugloch
setup-page-hole-small = { LENGTH(0.02, us: 1) }
setup-page-hole-large = { LENGTH(0.025) }
setup-page-hole-shut = zu
setup-page-floor = Boden
setup-page-floor-solid = geschlossen
setup-page-floor-mesh = offenes Gitter
setup-page-floor-tray = Gitter mit Schieber
setup-page-entrance = Flugloch
setup-page-entrance-reduced = eingeengt
setup-page-entrance-full = offen
setup-page-entrance-shut = zu
setup-page-boxes = Zargen
setup-page-one-deep = eine große
setup-page-two-deep = zwei große

setup-page-wrong = { $change }: { $wrong }
setup-page-too-many = Höchstens { NUMBER($most) } Aufbauten werden auf einmal verglichen.
setup-page-no-hive = Das Volk hat keine Beute.
setup-page-too-many-changes = Zu viele Änderungen für eine Beute.
