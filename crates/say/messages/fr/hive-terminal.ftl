## Une ruche par temps constant, dans le terminal.

hive-terminal-head = { $name }, { $hive }, { TEMPERATURE($outside, digits: 1) } dehors, à l’équilibre
hive-terminal-heater = Chauffage
hive-terminal-heated = { NUMBER($watts, digits: 1) } W à la place des abeilles
hive-terminal-cluster = Grappe
hive-terminal-bees = { NUMBER($bees) } abeilles, { LENGTH($across) } de diamètre ; cœur { TEMPERATURE($core, digits: 1) }, manteau { TEMPERATURE($mantle, digits: 1) }
hive-terminal-heat = Chaleur
hive-terminal-warmth = { NUMBER($watts, digits: 1) } W, tirés de { GRAMS($food, digits: 1, us: 2) } de provisions par jour, qui donnent aussi { GRAMS($water, digits: 1, us: 2) } d’eau
hive-terminal-air = Air
hive-terminal-airs = { TEMPERATURE($around, digits: 1) } autour de la grappe, { TEMPERATURE($floor, digits: 1) } au plancher ; il passe { FLOW($flow, digits: 2, us: 1) }, { NUMBER($humid) } % d’humidité, { NUMBER($spent, digits: 2) } % de dioxyde de carbone
hive-terminal-faces = Surfaces
hive-terminal-face = couvercle { TEMPERATURE($lid, digits: 1) }, parois { TEMPERATURE($walls, digits: 1) } (en bas { TEMPERATURE($below, digits: 1) }), plancher { TEMPERATURE($floor, digits: 1) }
hive-terminal-water = Eau
hive-terminal-caught = retenu par jour : couvercle { GRAMS($lid, digits: 1, us: 2) }, parois { GRAMS($walls, digits: 1, us: 2) }, plancher { GRAMS($floor, digits: 1, us: 2) } ; { GRAMS($drips, digits: 1, us: 2) } gouttent sur la grappe
hive-terminal-hole = Trou haut
hive-terminal-hole-is = { $state ->
    [none] il n’y en a pas
    [dry] sec
    [damp] un bord mouillé : de l’haleine, un signe de vie
   *[frost] du givre : de l’haleine, un signe de vie
}
hive-terminal-loss = Perte
hive-terminal-loses = { LOSS($loss, digits: 2) } au-dessus du dehors

hive-terminal-picture = L’image est dans { $file }.
hive-terminal-outside = { $option } : { NUMBER($value, digits: "all") } n’est pas entre { NUMBER($low) } et { NUMBER($high) }
hive-terminal-cluster-alone = --outside (°C ; il s’agit d’une grappe d’hiver)
