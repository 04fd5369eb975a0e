## Des ruches que les abeilles ne peuvent quitter.

sealed-refused = { $colony } : { $why } ; { $remedy }
sealed-why = chaque entrée et chaque trou est fermé : les abeilles ne peuvent sortir ni pour se soulager ni pour emporter leurs mortes ; { $air }
sealed-mesh = son plancher grillagé laisse entrer l’air et sortir aucune abeille (dioxyde de carbone environ { NUMBER($percent, digits: 1) } % en volume)
sealed-foul = et l’air se vicie : par air calme et à zéro degré, environ { NUMBER($percent, digits: 1) } % de dioxyde de carbone en volume autour des abeilles, { NUMBER($outdoors, digits: 2) } % dehors
sealed-remedy = laisser ouvert une entrée ou un trou supérieur, par exemple entrance=reduced ou upper hole=25 mm
