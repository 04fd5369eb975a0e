## Wo eine Zahl gilt.

regions-finland = Finnland
regions-ontario = Ontario
regions-minnesota-and-wisconsin = Minnesota und Wisconsin
regions-cold-countries = kalte Länder
regions-cool-countries = kühle Länder
regions-mild-countries = milde Länder
regions-nuclei-in-cold-countries = Ableger in kalten Ländern
regions-nuclei-in-cool-countries = Ableger in kühlen Ländern
regions-nuclei-in-mild-countries = Ableger in milden Ländern
regions-anywhere = überall
regions-united-states = Vereinigte Staaten
regions-florida = Florida
regions-california = Kalifornien
regions-saskatchewan = Saskatchewan
regions-britain = Großbritannien
regions-switzerland = Schweiz
regions-sweden-finland-and-norway = Schweden, Finnland und Norwegen
regions-germany-and-neighbours = Deutschland und Nachbarn
regions-britain-and-ireland = Großbritannien und Irland
regions-ontario-and-quebec = Ontario und Quebec
regions-canada = Kanada
regions-the-far-north-of-america = der hohe Norden Amerikas
regions-southern-ontario = südliches Ontario
regions-the-canadian-prairie = kanadische Prärie
regions-minnesota = Minnesota
