## Une ruche morte examinée : ce qu’est chaque cause et ce qu’elle fait aux rayons et aux provisions, ce qu’on demande de chaque signe, ce qu’il faut faire d’autre.

deadout-table-sunken-cappings = Les opercules du couvain sont-ils affaissés, gras et sombres, ou percés de trous déchiquetés ?
deadout-table-sunken-cappings-seen = opercules affaissés
deadout-table-ropy-larvae = Une larve morte, remuée avec une allumette, file-t-elle sur plus de 2 cm (3/4 in) ?
deadout-table-ropy-larvae-seen = larves qui filent
deadout-table-foul-smell = Le couvain sent-il la colle ou le pourri ?
deadout-table-foul-smell-seen = odeur fétide
deadout-table-black-scale = Y a-t-il de l’écaille noire collée fort aux parois inférieures des cellules ?
deadout-table-black-scale-seen = écaille noire

deadout-table-mites = les varroas et les virus qu’ils portent
deadout-table-mites-comb = les réutiliser : les varroas meurent avec leurs abeilles ; congeler ne nuit pas
deadout-table-mites-stores = les donner à des abeilles

deadout-table-starved = la faim, plus de nourriture
deadout-table-starved-comb = les réutiliser : brosser les mortes et laisser sécher
deadout-table-starved-stores = ce qui reste, le donner à des abeilles

deadout-table-isolation = la faim à côté de nourriture hors d’atteinte
deadout-table-isolation-comb = les réutiliser : brosser les mortes et laisser sécher
deadout-table-isolation-stores = les donner à des abeilles telles quelles

deadout-table-queen = une reine défaillante
deadout-table-queen-comb = les réutiliser
deadout-table-queen-stores = les donner à des abeilles

deadout-table-small = trop peu d’abeilles pour se tenir chaud
deadout-table-small-comb = les réutiliser : brosser les mortes et laisser sécher
deadout-table-small-stores = les donner à des abeilles telles quelles

deadout-table-damp = du mouillé sous le toit
deadout-table-damp-comb = réutiliser ce que des abeilles peuvent nettoyer ; découper le pire de la moisissure
deadout-table-damp-stores = provisions moisies ou fermentées : non

deadout-table-dysentery = dysenterie, peut-être nosémose
deadout-table-dysentery-comb = les racler ; mettre au rebut les vieux rayons et les rayons souillés (acide acétique ou chaleur désinfectent, et sont un danger en soi)
deadout-table-dysentery-stores = pas aux abeilles sans traitement

deadout-table-mice = les souris
deadout-table-mice-comb = découper ce qui est souillé
deadout-table-mice-stores = provisions souillées : non

deadout-table-robbed = pillée à vide
deadout-table-robbed-comb = les réutiliser une fois le couvain regardé
deadout-table-robbed-stores = il n’en reste pas ; s’il en reste, les donner à des abeilles seulement si le couvain est sain

deadout-table-poison = un empoisonnement
deadout-table-poison-comb = rayons avec pollen : non
deadout-table-poison-stores = non

deadout-table-other = autre chose
deadout-table-other-comb = regarder encore le couvain avant de les réutiliser
deadout-table-other-stores = les garder enfermées jusqu’à savoir

deadout-table-small-cluster = La grappe morte est-elle petite, de la taille d’un poing ou d’une balle de softball ?
deadout-table-hive-empty = La ruche est-elle presque vide d’abeilles, mortes ou vives ?
deadout-table-hive-empty-yes = Les abeilles quittent rarement une ruche dans la moitié froide de l’année. Une ruche vide a le plus souvent décliné : une à une, elles sont sorties et ne sont pas revenues, et le varroa en est la raison habituelle.
deadout-table-pile-of-dead = Y a-t-il un tas d’abeilles mortes sur le plancher, des milliers ?
deadout-table-no-food = N’y a-t-il de miel nulle part dans la ruche ?
deadout-table-food-near = Y a-t-il du miel à moins d’une largeur de main de la grappe morte ?
deadout-table-heads-in-cells = Beaucoup d’abeilles sont-elles la tête dans des cellules vides ?
deadout-table-heads-in-cells-yes = Des têtes dans les cellules ne prouvent pas la faim : une grappe devenue trop petite, par le varroa ou le froid, se trouve de même.
deadout-table-spotty-brood = Le couvain operculé est-il épars, avec des abeilles mortes en naissant, la langue sortie ?
deadout-table-white-crystals = Y a-t-il des cristaux blancs comme du sel au plafond des cellules à couvain ? (déjections de varroas : ils étaient là)
deadout-table-white-crystals-yes = Les cristaux disent que des varroas étaient là ; ils ne prouvent pas que les varroas ont mis fin à la colonie.
deadout-table-crumpled-wings = Y a-t-il des mortes aux ailes froissées ou au corps raccourci ?
deadout-table-mites-over-line = Le dernier comptage dépassait-il 3 varroas pour 100 abeilles, ou un lavage d’une demi-tasse de mortes de la grappe en montre-t-il autant ?
deadout-table-died-before-midwinter = Est-elle morte avant la fin de l’année ?
deadout-table-drone-cells = Y a-t-il du couvain de mâles dans des cellules d’ouvrières, ou plus d’un œuf par cellule ?
deadout-table-queen-cells = Y a-t-il des cellules royales hors de saison ?
deadout-table-queen-found = La reine est-elle parmi les mortes ?
deadout-table-droppings-inside = Y a-t-il beaucoup de traînées brunes à l’intérieur, sur les cadres et leurs têtes ?
deadout-table-droppings-inside-yes = Des traînées ne prouvent pas la nosémose : seul un laboratoire peut le dire (Mussen 2011, University of California, Davis).
deadout-table-wet-mould = Abeilles et rayons sont-ils mouillés ou moisis ? (la moisissure pousse surtout après la mort)
deadout-table-wet-mould-yes = La moisissure ne les a pas tuées : elle pousse sur des abeilles déjà mortes.
deadout-table-chewed-comb = Des rayons sont-ils rongés, avec un nid, des crottes ou une odeur de souris ?
deadout-table-ragged-cappings = Les opercules du miel sont-ils déchirés, avec des miettes de cire sur le plancher ?
deadout-table-tongues-out = Beaucoup sont-elles mortes d’un coup par temps de vol, la langue sortie, peut-être dans plusieurs ruches ?
deadout-table-weak-in-autumn = Était-elle faible en automne, avec moins d’abeilles que ses voisines ?
deadout-table-light-in-autumn = Était-elle légère en automne, ou pas nourrie jusqu’à son poids ?
deadout-table-queen-trouble = Sa reine était-elle vieille, nouvelle tard dans la saison, ou douteuse ?
deadout-table-long-cold = Y a-t-il eu un long coup de froid juste avant ?
deadout-table-pictures = Photos
deadout-table-pictures-do = Avant de rien bouger : la grappe, les deux côtés des rayons, le plancher.
deadout-table-order = Ordre
deadout-table-order-do = De haut en bas, le plancher en dernier : ce qui s’y trouve raconte tout l’hiver.
deadout-table-wash = Varroas
deadout-table-wash-do = Laver une demi-tasse d’abeilles mortes dans de l’eau savonneuse et compter les varroas. Les prendre dans la grappe, pas sur le plancher.
deadout-table-laboratory = Laboratoire
deadout-table-laboratory-do = Congeler 30 à 60 mortes de la grappe. Seul un laboratoire dit la nosémose, et des mortes peuvent dire autre chose que des vivantes : dans une étude, les deux se contredisaient dans 36 colonies sur 100, donc envoyer les deux si possible.
deadout-table-wax-moth = Fausse teigne
deadout-table-wax-moth-do = Le froid tue tous ses stades : 2 heures à -15 °C (5 °F), 3 à -12 °C (10 °F), 4,5 à -7 °C (19 °F), comptées une fois le rayon lui-même à ce froid. Deux jours au congélateur sont d’usage ; ensuite garder les rayons au froid et à l’abri des papillons.
