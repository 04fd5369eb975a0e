## Pourquoi un petit calcul ne peut se faire.

sums-out-of-range = { $what } : { NUMBER($value, digits: "all") } est hors de { NUMBER($low, digits: "all") } à { NUMBER($high, digits: "all") }
sums-unknown = { $what } « { $name } » : inconnu ; connus : { $known }
sums-table = la table { $table } du programme ne peut être lue : { $fault }

sums-hive = la ruche
sums-hive-box = le corps
sums-sign = le signe
