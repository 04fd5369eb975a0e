## Ce qui est habituel ou de règle quelque part.

usual-bees-finland = environ 20 000 abeilles ; un cinquième de plus ou de moins est un jugement
usual-bees-ontario = 7 à 8 cadres d’abeilles dans une colonie de pleine taille
usual-bees-minnesota-and-wisconsin = 10 cadres d’abeilles ou plus, en trois corps profonds ; l’idéal du nord des États-Unis est de 32 000 à 40 000 (Farrar)
usual-bees-cold-countries = 8 ruelles de grande taille et plus sont bonnes ; 6 à 7 sont limites
usual-bees-cool-countries = 7 ruelles de grande taille et plus sont bonnes ; 5 à 6 sont limites
usual-bees-mild-countries = 6 ruelles de grande taille suffisent bien
usual-bees-nuclei-in-cold-countries = 4 à 5 ruelles pleines, à côté ou au-dessus d’une colonie forte
usual-bees-nuclei-in-cool-countries = 3 et demie à 5 ruelles pleines, à côté ou au-dessus d’une colonie forte
usual-bees-nuclei-in-mild-countries = des nucléus préparés de 3 cadres hivernent en lieux côtiers doux

usual-mites-anywhere = 2 à 3 pour 100
usual-mites-anywhere-from-10 = moins de 1 pour 100 à l’entrée de l’hiver ; plus de 3 en automne est suspect
usual-mites-anywhere-board = pas de seuil unique : de 9 par jour (Grande-Bretagne) à 30 par jour (USDA)
usual-mites-united-states = 3 pour 100 ; la pratique courante y pense à 2
usual-mites-united-states-board = 30 par jour
usual-mites-florida = plus de 3 pour 100
usual-mites-california = tenir à 2 ou moins ; à 5, les virus mordent
usual-mites-california-from-3 = 1 pour 100 au début d’avril ne se rattrape plus en septembre
usual-mites-saskatchewan = au-delà de 1 pour 100, envisager de traiter
usual-mites-ontario-from-4 = 2 pour 100 au printemps
usual-mites-ontario-from-7 = 3 pour 100 à partir d’août
usual-mites-ontario-board-from-4 = 9 par jour au printemps
usual-mites-ontario-board-from-7 = 12 par jour à partir d’août
usual-mites-britain-board = plus de 9 par jour, à tout moment, est grave
usual-mites-switzerland-board-from-6 = plus de 10 par jour à la fin de juin : ne pas attendre le traitement principal d’été
usual-mites-switzerland-board-from-10 = plus de 5 par jour de la mi-octobre à la mi-novembre : un traitement de plus, et celui d’hiver quand même

usual-stores-sweden-finland-and-norway-one = un corps d’abeilles : { MASS(16, unit: "no") }-{ MASS(18) } de nourriture d’hiver ; au moins { MASS(15) } de sucre
usual-stores-sweden-finland-and-norway-two = deux corps : { MASS(20, unit: "no") }-{ MASS(25) } de nourriture d’hiver
usual-stores-germany-and-neighbours = environ { MASS(15) } là où les abeilles se reposent sans couvain de novembre à janvier, plus de { MASS(20) } dans les hivers doux
usual-stores-britain-and-ireland-one = 20 kg (45 lb) pour un seul corps à couvain
usual-stores-britain-and-ireland-two = 25 kg (55 lb) pour un corps à couvain et demi
usual-stores-ontario-and-quebec-one = la ruche entière à 32 kg (70 lb) ou plus, un seul corps à couvain ; les provisions seules ne sont pas dites
usual-stores-ontario-and-quebec-two = la ruche entière à 45 kg (100 lb) ou plus, deux corps à couvain ; d’autres demandent { MASS(61) } : les règles se contredisent
usual-stores-minnesota-and-wisconsin = 75-95 lb (34-43 kg) de provisions en trois corps profonds
usual-stores-canada-two = 70 lb (32 kg) de provisions en deux corps profonds
usual-stores-canada-one = 55 lb (25 kg) de provisions en un corps profond
usual-stores-the-far-north-of-america = environ 100 lb (45 kg) de provisions
usual-stores-switzerland = { MASS(15, unit: "no") }-{ MASS(25) } de provisions
usual-feeding-sweden-finland-and-norway = le sirop est fini à la fin d’août, et beaucoup en donnent encore en septembre
usual-feeding-germany-and-neighbours = le sirop est fini à la mi-septembre dans les Alpes et le 1er octobre au plus tard ailleurs
usual-feeding-southern-ontario = le sirop se donne dans la seconde moitié de septembre

usual-spring-the-canadian-prairie = à la mi-mars, à { TEMPERATURE(0) }, une grappe sur six à huit cadres est bonne, sur deux ou trois très faible
usual-spring-minnesota = à la mi-mars, trois à quatre cadres pleins d’abeilles sont à peu près ce qu’il faut, à diviser en mai
