## Warum sich eine kleine Rechnung nicht machen lässt.

sums-out-of-range = { $what }: { NUMBER($value, digits: "all") } liegt nicht zwischen { NUMBER($low, digits: "all") } und { NUMBER($high, digits: "all") }
sums-unknown = { $what } „{ $name }“ ist nicht bekannt; bekannt: { $known }
sums-table = die programmeigene Tabelle { $table } ist nicht lesbar: { $fault }

sums-hive = die Beute
sums-hive-box = die Zarge
sums-sign = das Zeichen
