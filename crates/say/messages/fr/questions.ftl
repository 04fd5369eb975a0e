## Questions d’hiver, chacune avec une réponse courte et ce qu’on entend souvent dire d’autre.

questions-alive-asks = Mes abeilles sont-elles en vie ?
questions-alive-answer = La page de chaque ruche pèse chaque signe noté et donne une chance, jamais une certitude. Un bourdonnement, un vol, du givre frais au trou ou une plaque fondue parlent pour la vie ; ne rien voir dit peu.
questions-cold-kills-says = Le froid tue les abeilles
questions-cold-kills-truth = Des colonies au sec, nourries, grandes et saines supportent des jours à moins quarante ; ce sont les varroas, la faim et le petit nombre qui tuent.
questions-hibernate-says = Les abeilles hibernent
questions-hibernate-truth = Elles font grappe et frissonnent tout l’hiver, éveillées.
questions-heats-the-hive-says = La grappe chauffe la ruche
questions-heats-the-hive-truth = Elle se chauffe elle-même : contre les parois, l’air est presque aussi froid que dehors.

questions-dead-bees-asks = Des abeilles mortes sur la neige : est-ce grave ?
questions-dead-bees-answer = Le plus souvent non. D’une colonie forte, il en meurt trente à cent vingt par jour au cœur de l’hiver. Les compter et demander s’il y en a plus qu’une telle colonie n’en devrait montrer.
questions-dead-outside-says = Des mortes dehors, c’est une ruche qui meurt
questions-dead-outside-truth = La plupart sont les mortes ordinaires de l’hiver, sorties un jour doux.

questions-open-asks = Puis-je ouvrir, et combien doit-il faire ?
questions-open-answer = Pour poser de la nourriture, quelques secondes suffisent, et l’absence de vent compte plus que la chaleur. Les rayons se lèvent au printemps, à partir d’environ 13 °C (55 °F).

questions-hungry-asks = Ont-elles faim ?
questions-hungry-answer = Ce qui compte est la nourriture à portée, pas celle de la ruche. La page de chaque ruche dit quand elle s’épuise, avec la fourchette.
questions-honey-in-the-hive-says = Il y a du miel dans la ruche, elles ne peuvent donc pas mourir de faim
questions-honey-in-the-hive-truth = Par un coup de froid, la nourriture à deux rayons vides de là est hors de portée : elles meurent de faim à côté.
questions-danger-ends-says = Le danger finit en février
questions-danger-ends-truth = Le plus de nourriture part en mars et avril, quand on nourrit le couvain : il en meurt alors plus de faim que par le froid.

questions-left-asks = Combien reste-t-il de nourriture ?
questions-left-answer = Peser : les deux côtés levés, ou une balance, moins la ruche vide, les abeilles, la neige et le bois mouillé. Un seul côté montre une tendance.
questions-weight-is-stores-says = Le poids, ce sont les provisions
questions-weight-is-stores-truth = Couvain, neige et bois mouillé pèsent aussi : { MASS(1, unit: "no") } à { MASS(3) } d’eau dans le bois seul.
questions-twice-one-side-says = Deux fois un côté, c’est le poids
questions-twice-one-side-truth = Si la charge est à { LENGTH(0.05) } du milieu d’une ruche de { LENGTH(0.5) }, c’est faux d’un cinquième.

questions-sugar-now-asks = Du sucre maintenant, ou attendre ?
questions-sugar-now-answer = Le plan compare nourrir et ne rien faire dans les mêmes hivers. La nourriture solide se pose environ trois semaines avant la première faim, en une visite.
questions-candy-saves-says = Le candi sauve une ruche entrée sans être nourrie dans un hiver dur
questions-candy-saves-truth = Par grand froid, les abeilles ne peuvent guère s’en servir ; mieux valent des provisions dans les rayons.

questions-which-feed-asks = Sucre sec, bloc de sucre, candi ou sirop ?
questions-which-feed-answer = Tant que les abeilles volent et le prennent : du sirop. Au froid : du candi ou un bloc de sucre pris, juste au-dessus de la grappe. Au printemps, dès que les jours restent au-dessus de { TEMPERATURE(10) } : du sirop léger.
questions-by-cups-says = Deux pour un en tasses, c’est deux pour un
questions-by-cups-truth = En tasses de sucre et d’eau, cela fait environ 63 parts de sucre sur 100, pas 67.
questions-boiled-says = Il faut bouillir le sirop, ou l’acidifier au vinaigre
questions-boiled-truth = Chaleur et acide font des substances qui nuisent aux abeilles. De l’eau chaude et remuer suffisent.
questions-brown-sugar-says = Le sucre brun ou brut est meilleur
questions-brown-sugar-truth = Ses cendres chargent un intestin qui ne peut se vider pendant des mois. Du sucre blanc seulement.
questions-syrup-in-january-says = Le sirop aide en janvier
questions-syrup-in-january-truth = Des abeilles froides ne le prennent pas, ne peuvent le mûrir, et il les refroidit.

questions-ignored-asks = Elles ne touchent pas au candi.
questions-ignored-answer = Il doit être juste au-dessus de la grappe : à une largeur de main, il est hors de portée. Des abeilles qui ont de la nourriture à côté le laissent, et le sucre sec demande de l’air humide. Le laisser ; à la prochaine heure sans vent, le pousser au-dessus d’elles.

questions-rime-asks = Du givre dans le trou ?
questions-rime-answer = Du givre frais au trou supérieur est de l’haleine : un signe de vie. Le brosser, pour que seul le givre nouveau compte ensuite.

questions-water-asks = De l’eau sous le toit ?
questions-water-answer = L’eau sur les parois et le plancher nuit peu, et une part en est bue. C’est l’eau au-dessus de la grappe qui nuit : isoler le dessus et pencher un peu la ruche vers l’avant.
questions-moisture-says = L’humidité est toujours l’ennemie
questions-moisture-truth = Une part est leur boisson. Là où elle goutte sur les abeilles, elle tue.
questions-mould-says = La moisissure les a tuées
questions-mould-truth = La moisissure pousse quand les abeilles ne sont plus là.

questions-wrap-asks = Emballer ou non, et de quelle couleur ?
questions-wrap-answer = Une housse arrête le vent, et une housse sombre prend le soleil les jours clairs et calmes. Le plus de chaleur part par le haut : isoler d’abord le dessus. Comparer pour sa propre ruche.
questions-wrap-warms-says = Une housse les tient au chaud
questions-wrap-warms-truth = Elle freine le vent et prend le soleil ; ce qui couvre les abeilles compte le plus.

questions-upper-hole-asks = Trou supérieur ouvert ou fermé ?
questions-upper-hole-answer = Les deux écoles hivernent des abeilles. Un trou laisse sortir l’eau et un peu de chaleur avec, et donne une sortie sous la neige ; sans lui, le dessus doit être chaud. Comparer les deux pour sa propre ruche.
questions-top-open-says = Le haut doit toujours, ou jamais, être ouvert
questions-top-open-truth = Cela dépend du dessus, du climat et de la colonie.

questions-mesh-asks = Fermer le plancher grillagé ?
questions-mesh-answer = Sous un dessus chaud, un grillage ouvert nuit peu à l’abri du vent ; au vent, le lange rend le bas plus calme. Une enquête polonaise a trouvé un peu moins de pertes sur grillage.

questions-mouse-asks = Une souris ?
questions-mouse-answer = Rayons rongés, feuilles ou odeur sur le lange : la chasser un jour doux et poser une grille à fentes de { LENGTH(0.008, us: 2) } au plus ou à trous de { LENGTH(0.009, us: 2) } au plus.

questions-snow-asks = La neige couvre la ruche : la dégager ?
questions-snow-answer = La neige est poreuse et chaude : la laisser. Garder les trous ouverts là où on les atteint, et ne pas secouer la ruche.
questions-snow-smothers-says = La neige étouffe les abeilles
questions-snow-smothers-truth = Rarement : l’air passe par la neige. Une couche de glace sur toute la ruche est autre chose.

questions-ice-asks = De la glace devant l’entrée ?
questions-ice-answer = Une couche de glace sur une ruche ou son trou s’ouvre, à l’eau tiède et sans coups. Les mortes derrière se tirent avec un fil de fer recourbé.

questions-cold-flight-asks = Des abeilles volent à { TEMPERATURE(3) } ?
questions-cold-flight-answer = Au soleil et sans vent, quelques-unes volent même juste au-dessus de zéro, et quelques-unes tombent sur la neige. Beaucoup, un jour gris et calme, annoncent un ennui : faim, pillage ou intestin malade.

questions-spots-asks = Des taches brunes sur la ruche ou la neige ?
questions-spots-answer = Après un jour de vol, sur la neige et la façade : normal, et signe de vie. Dedans ou sur les têtes de cadres : dysenterie, due aux provisions, à l’humidité ou à une longue attente.
questions-nosema-says = La dysenterie, c’est la nosémose
questions-nosema-truth = L’une se voit, l’autre demande un microscope, et chacune vient sans l’autre.

questions-noise-asks = Elle est bruyante, ou muette ?
questions-noise-answer = Un coup léger doit donner un bref grondement qui s’éteint. Le silence dit peu par grand froid ou à travers des parois épaisses. Une longue plainte un jour doux peut être une reine manquante : regarder au printemps. Ne pas frapper encore et encore.

questions-on-top-asks = La grappe est tout en haut en décembre ?
questions-on-top-answer = Ou elle est grande, ou elle a mangé en montant et il reste peu au-dessus. Peser.

questions-oxalic-asks = De l’acide oxalique maintenant ?
questions-oxalic-answer = Seulement là où la notice et la loi le permettent, une seule fois par hiver en dégouttement, et seulement sans couvain : les varroas dans les cellules ne sont pas atteints.
questions-one-treatment-says = Un traitement à l’acide oxalique suffit, couvain ou non
questions-one-treatment-truth = Avec du couvain, la plupart des varroas sont dans des cellules qu’il n’atteint pas.
questions-trickled-again-says = Dégoutter encore ne fait pas de mal
questions-trickled-again-truth = Cela nuit aux abeilles : une fois par hiver.

questions-late-treatment-asks = Rien n’a été fait contre le varroa : trop tard ?
questions-late-treatment-answer = En fin d’automne, c’est trop tard pour les abeilles déjà atteintes, mais un traitement sans couvain protège encore les voisins et l’année suivante. Compter d’abord.
questions-november-says = Un traitement en novembre suffit
questions-november-truth = Les abeilles d’hiver s’élèvent d’août à octobre ; ce sont elles qu’il faut protéger.
questions-strong-in-autumn-says = Forte en automne, elle est sauve
questions-strong-in-autumn-truth = Les grandes colonies ont élevé, avec le plus de couvain, le plus de varroas.
questions-no-mites-seen-says = Je ne vois pas de varroas, donc il n’y en a pas
questions-no-mites-seen-truth = À un varroa pour cent abeilles, plus d’un tiers des prélèvements de cent abeilles sont vides.
questions-survived-says = Elle a survécu, donc elle n’a pas de varroas
questions-survived-truth = Compter au printemps : les survivantes portent des varroas dans l’été.

questions-unite-asks = Deux faibles : les réunir maintenant ?
questions-unite-answer = Pas au cœur de l’hiver : les grappes ne se joignent pas au froid. Réunir en septembre, la faible sur la forte, saine avec saine.
questions-united-in-december-says = Deux faibles réunies en décembre en font une forte
questions-united-in-december-truth = Faible et faible reste faible, et ouvrir coûte aux deux.

questions-move-asks = Déplacer la ruche ?
questions-move-answer = Pas tant qu’elle est en grappe par le gel : un choc fait tomber des abeilles de la grappe pour de bon. S’il le faut, un jour doux et calme, à la main, à plat ; quand aucune abeille n’a volé depuis des semaines, la distance n’importe pas.

questions-heat-asks = Chauffer la ruche ?
questions-heat-answer = Ni lampe, ni câble, ni pièce chaude : des abeilles au chaud volent, mangent plus et commencent un couvain qu’elles ne peuvent nourrir. Remédier au dessus, au vent et à la nourriture.

questions-animals-asks = Un pic, ou un ours ?
questions-animals-answer = Des trous ronds dans les parois : un filet ou une housse écartés des côtés. Un ours : une clôture électrique sous tension avant le premier gel d’automne et de nouveau dès le dégel. Armes et pièges relèvent de la loi locale.

questions-dead-asks = Elle est morte : pourquoi, et que peut-on réutiliser ?
questions-dead-answer = On cherche d’abord la loque, et elle arrête tout. Puis les signes sont pesés ensemble, avec ce qu’ils laissent ouvert, et il est dit ce qui peut resservir.
questions-heads-in-cells-says = Les têtes dans les cellules, donc elles sont mortes de faim
questions-heads-in-cells-truth = Une grappe trop petite pour se tenir chaud, après le varroa, meurt aussi ainsi.
questions-flew-away-says = Elles se sont envolées
questions-flew-away-truth = La plupart ont décliné : de vieilles abeilles sont mortes dehors, une à une.

questions-edible-asks = Ce miel est-il pour les gens ?
questions-edible-answer = Des provisions de sucre ne sont pas du miel. D’une ruche morte, rien n’est pour les gens si elle a été traitée, nourrie, souillée ou reste inexpliquée. Pour d’autres abeilles, seulement si la loque est exclue.

questions-patties-asks = Quand les galettes de pollen ?
questions-patties-answer = Quand le couvain peut être nourri jusqu’à ce que les fleurs viennent sans trou : ici à rebours de la première miellée. Plus tôt, elles lancent un couvain qui mange les provisions.
questions-pollen-early-says = Donner du pollen tôt aide
questions-pollen-early-truth = Cela lance le couvain trop tôt, et les provisions y passent.

questions-first-look-asks = Quand la première visite, le déballage, la division ?
questions-first-look-answer = Première visite : sans vent, à partir d’environ 13 °C (55 °F). Déballer quand la moyenne des nuits reste au-dessus de zéro. Diviser seulement quand la colonie est forte et que des reines peuvent être fécondées.
questions-none-of-two-says = Aucune de mes deux n’est morte, donc j’hiverne bien
questions-none-of-two-truth = Aucune perdue sur deux laisse encore possible que, de colonies hivernées ainsi, deux sur trois soient perdues.
