## Des équipements côte à côte.

setup-as-it-is = telle quelle
