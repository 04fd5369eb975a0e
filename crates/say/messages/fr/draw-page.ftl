## Les mots des images.

draw-page-every-part = Chaque partie
draw-page-to-scale = À l’échelle, d’après le fichier du rucher. La place de la grappe et de la nourriture est calculée, non vue ; températures comme sans couvain.

draw-page-of-hundred = Sur 100 ruches comme celle-ci, d’ici au { $goal }
draw-page-lives = sont en vie, nourries et avec reine
draw-page-hungry = vivent et ont faim
draw-page-queenless = vivent et n’ont pas de reine
draw-page-starved = mortes de faim
draw-page-lost = mortes autrement

draw-page-days = Les jours qui viennent
draw-page-weekday = { DAY($on, style: "short-weekday") }
draw-page-day = { DAY($on, style: "weekday") } { DAY($on) }

draw-page-food = Nourriture à portée, { $hive }
draw-page-flow = première miellée, le plus probablement le { DAY($on) }
draw-page-feed-by = nourrir d’ici le { DAY($on) }
draw-page-month = { DAY($on, style: "short-month") }

draw-page-dead-found = Abeilles mortes trouvées, { $hive }
draw-page-counted = { DAY($since, style: "short") } au { DAY($until, style: "short") }

draw-page-entrance = entrée
draw-page-upper-hole = trou supérieur
draw-page-mesh = plancher grillagé
draw-page-joints = joints
draw-page-seen-dead = vue morte par l’apiculteur
draw-page-shut = noté le { DAY($on) } : { $state }
draw-page-left = il reste { MASS($left, digits: 1) } sur { MASS($whole, digits: 1) }{ $state ->
    [reached] , atteint
    [not-reached] , pas atteint
   *[not-said] {""}
}
draw-page-body = { CAPITAL($body) }{ $pollen ->
    [yes] {" "}avec pollen
   *[no] {""}
}
draw-page-material = { $material ->
    [pine] pin
    [cedar] cèdre
    [larch] mélèze
    [plywood] contreplaqué
    [osb] OSB
    [hardboard] panneau dur
    [polystyrene] polystyrène
    [eps-foam] mousse EPS
    [xps-foam] mousse XPS
    [polyiso-foam] mousse PIR
    [mineral-wool] laine minérale
    [straw] paille
    [hay] foin
    [wood-shavings] copeaux de bois
    [wool] laine
    [wood-fibre-board] panneau de fibres
    [cork] liège
    [felt-paper] feutre bitumé
    [bubble-foil] film à bulles
    [corrugated-plastic] plastique alvéolaire
    [plastic-sheet] film plastique
    [canvas] toile
    [newspaper] papier journal
    [steel-sheet] tôle d’acier
    [aluminium-sheet] tôle d’aluminium
   *[own] { $name }
}
