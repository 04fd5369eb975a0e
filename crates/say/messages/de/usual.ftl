## Was irgendwo üblich oder Regel ist.

usual-bees-finland = etwa 20.000 Bienen; ein Fünftel mehr oder weniger ist Einschätzung
usual-bees-ontario = 7 bis 8 Waben Bienen in einem vollen Volk
usual-bees-minnesota-and-wisconsin = 10 Waben Bienen oder mehr, in drei tiefen Zargen; das Ideal im Norden der Vereinigten Staaten sind 32.000 bis 40.000 (Farrar)
usual-bees-cold-countries = 8 Wabengassen voller Größe und mehr sind gut; 6 bis 7 sind knapp
usual-bees-cool-countries = 7 Wabengassen voller Größe und mehr sind gut; 5 bis 6 sind knapp
usual-bees-mild-countries = 6 Wabengassen voller Größe reichen gut
usual-bees-nuclei-in-cold-countries = 4 bis 5 volle Wabengassen, neben oder über einem starken Volk
usual-bees-nuclei-in-cool-countries = dreieinhalb bis 5 volle Wabengassen, neben oder über einem starken Volk
usual-bees-nuclei-in-mild-countries = vorbereitete Ableger von 3 Waben überwintern in milden Küstengegenden

usual-mites-anywhere = 2 bis 3 auf 100
usual-mites-anywhere-from-10 = unter 1 auf 100 in den Winter; über 3 im Herbst ist bedenklich
usual-mites-anywhere-board = keine einheitliche Grenze: von 9 am Tag (Großbritannien) bis 30 am Tag (USDA)
usual-mites-united-states = 3 auf 100; die gängige Praxis denkt ab 2 daran
usual-mites-united-states-board = 30 am Tag
usual-mites-florida = über 3 auf 100
usual-mites-california = bei 2 oder weniger halten; ab 5 schlagen Viren durch
usual-mites-california-from-3 = 1 auf 100 Anfang April ist bis September nicht mehr einzuholen
usual-mites-saskatchewan = über 1 auf 100 eine Behandlung erwägen
usual-mites-ontario-from-4 = 2 auf 100 im Frühling
usual-mites-ontario-from-7 = 3 auf 100 ab August
usual-mites-ontario-board-from-4 = 9 am Tag im Frühling
usual-mites-ontario-board-from-7 = 12 am Tag ab August
usual-mites-britain-board = über 9 am Tag ist zu jeder Zeit schwer
usual-mites-switzerland-board-from-6 = über 10 am Tag Ende Juni: nicht auf die Hauptbehandlung im Sommer warten
usual-mites-switzerland-board-from-10 = über 5 am Tag von Mitte Oktober bis Mitte November: eine Behandlung zusätzlich, und die im Winter trotzdem

usual-stores-sweden-finland-and-norway-one = eine Zarge Bienen: { MASS(16, unit: "no") }-{ MASS(18) } Winterfutter; mindestens { MASS(15) } Zucker
usual-stores-sweden-finland-and-norway-two = zwei Zargen: { MASS(20, unit: "no") }-{ MASS(25) } Winterfutter
usual-stores-germany-and-neighbours = etwa { MASS(15) }, wo Bienen von November bis Januar ohne Brut ruhen, über { MASS(20) } in milden Wintern
usual-stores-britain-and-ireland-one = 20 kg (45 lb) für einen einzelnen Brutraum
usual-stores-britain-and-ireland-two = 25 kg (55 lb) für anderthalb Bruträume
usual-stores-ontario-and-quebec-one = die ganze Beute mit 32 kg (70 lb) oder mehr, ein Brutraum; Vorräte allein sind nicht genannt
usual-stores-ontario-and-quebec-two = die ganze Beute mit 45 kg (100 lb) oder mehr, zwei Bruträume; andere verlangen { MASS(61) }: die Regeln widersprechen sich
usual-stores-minnesota-and-wisconsin = 75-95 lb (34-43 kg) Vorräte in drei tiefen Zargen
usual-stores-canada-two = 70 lb (32 kg) Vorräte in zwei tiefen Zargen
usual-stores-canada-one = 55 lb (25 kg) Vorräte in einer tiefen Zarge
usual-stores-the-far-north-of-america = etwa 100 lb (45 kg) Vorräte
usual-stores-switzerland = { MASS(15, unit: "no") }-{ MASS(25) } Vorräte
usual-feeding-sweden-finland-and-norway = mit Sirup ist man Ende August fertig, und viele füttern bis in den September weiter
usual-feeding-germany-and-neighbours = mit Sirup ist man in den Alpen Mitte September fertig, anderswo spätestens am 1. Oktober
usual-feeding-southern-ontario = Sirup wird in der zweiten Septemberhälfte gefüttert

usual-spring-the-canadian-prairie = Mitte März bei { TEMPERATURE(0) } ist eine Traube über sechs bis acht Waben gut, über zwei oder drei sehr schwach
usual-spring-minnesota = Mitte März sind drei bis vier volle Waben Bienen etwa richtig, um im Mai geteilt zu werden
