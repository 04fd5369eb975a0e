## Beuten, die die Bienen nicht verlassen können.

sealed-refused = { $colony }: { $why }; { $remedy }
sealed-why = jedes Flugloch und jede Öffnung ist zu: die Bienen können weder zum Abkoten hinaus noch ihre Toten hinaustragen; { $air }
sealed-mesh = der Gitterboden lässt Luft herein und keine Biene hinaus (Kohlendioxid etwa { NUMBER($percent, digits: 1) } Volumenprozent)
sealed-foul = und die Luft wird schlecht: bei Windstille am Gefrierpunkt etwa { NUMBER($percent, digits: 1) } Volumenprozent Kohlendioxid um die Bienen, { NUMBER($outdoors, digits: 2) } % draußen
sealed-remedy = ein Flugloch oder ein oberes Flugloch offen lassen, etwa entrance=reduced oder upper hole=25 mm
