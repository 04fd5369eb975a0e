## Où un chiffre vaut.

regions-finland = Finlande
regions-ontario = Ontario
regions-minnesota-and-wisconsin = Minnesota et Wisconsin
regions-cold-countries = pays froids
regions-cool-countries = pays frais
regions-mild-countries = pays doux
regions-nuclei-in-cold-countries = nucléus en pays froids
regions-nuclei-in-cool-countries = nucléus en pays frais
regions-nuclei-in-mild-countries = nucléus en pays doux
regions-anywhere = partout
regions-united-states = États-Unis
regions-florida = Floride
regions-california = Californie
regions-saskatchewan = Saskatchewan
regions-britain = Grande-Bretagne
regions-switzerland = Suisse
regions-sweden-finland-and-norway = Suède, Finlande et Norvège
regions-germany-and-neighbours = Allemagne et voisins
regions-britain-and-ireland = Grande-Bretagne et Irlande
regions-ontario-and-quebec = Ontario et Québec
regions-canada = Canada
regions-the-far-north-of-america = Grand Nord américain
regions-southern-ontario = sud de l’Ontario
regions-the-canadian-prairie = prairie canadienne
regions-minnesota = Minnesota
