## Where a figure is usual.

regions-finland = Finland
regions-ontario = Ontario
regions-minnesota-and-wisconsin = Minnesota and Wisconsin
regions-cold-countries = cold countries
regions-cool-countries = cool countries
regions-mild-countries = mild countries
regions-nuclei-in-cold-countries = nuclei in cold countries
regions-nuclei-in-cool-countries = nuclei in cool countries
regions-nuclei-in-mild-countries = nuclei in mild countries
regions-anywhere = anywhere
regions-united-states = United States
regions-florida = Florida
regions-california = California
regions-saskatchewan = Saskatchewan
regions-britain = Britain
regions-switzerland = Switzerland
regions-sweden-finland-and-norway = Sweden, Finland and Norway
regions-germany-and-neighbours = Germany and neighbours
regions-britain-and-ireland = Britain and Ireland
regions-ontario-and-quebec = Ontario and Quebec
regions-canada = Canada
regions-the-far-north-of-america = the far north of America
regions-southern-ontario = southern Ontario
regions-the-canadian-prairie = the Canadian prairie
regions-minnesota = Minnesota
