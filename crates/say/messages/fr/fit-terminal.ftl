## Prête pour l’hiver, dans le terminal.

fit-terminal-scales = Échelles
fit-terminal-how = Comment
fit-terminal-not-known = { $what ->
    [bees] abeilles
    [brood] couvain
    [stores] provisions
    [queen] reine
    [mites] varroas
   *[hive] ruche
} : inconnu
fit-terminal-off = { $perhaps ->
    [yes] peut-être{" "}
   *[no] {""}
}{ $what ->
    [bees-under] moins d’abeilles
    [bees-over] plus d’abeilles
    [brood-under] moins de couvain
    [brood-over] plus de couvain
    [stores-under] moins de nourriture
    [stores-over] plus de nourriture
    [queen-under] une reine plus jeune
    [queen-over] une reine plus vieille
    [mites-under] moins de varroas
    [mites-over] plus de varroas
    [hive-under] un dessus plus froid
   *[hive-over] un dessus plus chaud
} que d’ordinaire
fit-terminal-yard = Le rucher
fit-terminal-buy = À acheter
fit-terminal-buy-nothing = pas de nourriture : aucune colonie n’est à court
fit-terminal-buy-no-feed = pas de nourriture
fit-terminal-buy-sugar = { MASS($sugar, digits: 1) } de sucre, soit { VOLUME($syrup, digits: 1) } de sirop 3:2
fit-terminal-buy-solid = { MASS($solid, digits: 1) } de candi, ou autant de sucre humide, où { $late ->
    [yes] il est trop tard ici pour du sirop
   *[no] aucun nourrisseur n’est assez rapide pour du sirop
}
fit-terminal-buy-later = { MASS($fondant, digits: 1) } de candi sous la main pour la pesée du milieu de l’hiver
fit-terminal-buy-spared = des cadres de ruches lourdes peuvent remplacer { MASS($stores, digits: 1) } des provisions
