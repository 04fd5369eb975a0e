## Du sucre pour ce qui manque.

feed-short = provisions qui manquent (kg)
feed-feeder = ce que tient le nourrisseur (L)
feed-slab = épaisseur de la plaque (mm)

feed-syrup-too-late = Le jour du sirop est passé : les abeilles ne peuvent plus le mûrir. Donner des cadres de provisions, sinon une nourriture solide.
feed-syrup-autumn = Le sirop doit être fini à son jour, non commencé. Pas de 1:1 à l’automne : les abeilles devraient en sécher trois fois plus d’eau que du 2:1.
feed-syrup-winter = Pas de sirop en hiver : des abeilles en grappe ne l’atteignent ni ne le mûrissent, et il les refroidit.
feed-syrup-spring = Du sirop seulement quand les journées restent au-dessus de 10 °C (50 °F) ; le 1:1 est pris comme une miellée, ne donc pas donner plus qu’il ne manque.

feed-which-stores = Ce sur quoi une colonie hiverne compte : le sucre et la plupart des miels se gardent ; miellat et bruyère souillent des abeilles enfermées des mois ; lierre et colza durcissent, et les abeilles meurent de faim à côté faute d’eau. Donner le sucre en dernier, pour qu’il soit mangé d’abord.
feed-frames-first = Un cadre de provisions operculées d’une ruche lourde et saine du même rucher passe en premier quand il y en a un.
feed-over-the-cluster = La nourriture solide se met juste au-dessus de la grappe ; laisser aux abeilles un passage autour.
feed-fondant-alone = Le candi peut être toute la nourriture d’automne, comme beaucoup le font en Grande-Bretagne : un bloc de { MASS(12.5, digits: 1) } dure quatre à cinq semaines à une colonie, posé tant que les journées sont douces.
feed-no-pollen = Du pollen ou des protéines dans la nourriture font commencer tôt un couvain qu’il faut tenir chaud et nourrir : du sucre pur jusqu’à ce que les abeilles rentrent du pollen. Certains en mélangent quand même ; alors il ne doit pas s’épuiser.
feed-dry-sugar = Le sucre sec n’est pris qu’où l’humidité l’atteint : sur du papier au-dessus des têtes de cadres, humecté, un passage laissé libre.

feed-rule-asks = le modèle demande { MASS($need) } en tout, la règle ({ $region }) { MASS($low) } à { MASS($high) }.
feed-rule-eaten = La moitié de ces colonies mangent ici { MASS($eaten) } d’ici le { DAY($by) } ; le reste est pour l’hiver le plus gourmand sur dix, et { MASS($left) } de réserve.
feed-rule-now = À cet écart, aucun des deux n’est sûr : { $fed ->
    [yes] nourrir maintenant jusqu’à la règle, { MASS($first) } de provisions en plus
   *[no] elle a ce que demande la règle
}, peser au milieu de l’hiver, et garder { MASS($later) } de candi sous la main

feed-sources-stores = provisions tirées du sucre : { $source }
feed-sources-densities = densités du sirop : de mémoire, d’après les tables de saccharose à { TEMPERATURE(20) } des manuels
feed-sources-poured = sucre versé { NUMBER($density, digits: "all") } kg/L : { $source }
feed-sources-frame = un cadre plein : 0,30 (apiculteurs suédois) à 0,35 kg/dm² (wiki de la Bienen-Zeitung)
feed-sources-candy = le sucre en plaque ne peut remplacer les provisions d’automne par grand froid : université du Minnesota

feed-solid-dry = sucre sec sur papier
feed-solid-damp = sucre humide pris en bloc
feed-solid-cooked = plaque de sucre cuit
feed-solid-fondant = candi acheté
