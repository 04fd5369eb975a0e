## One hive at steady weather, in the terminal.

hive-terminal-head = { $name }, { $hive }, { TEMPERATURE($outside, digits: 1) } outside, settled
hive-terminal-heater = Heater
hive-terminal-heated = { NUMBER($watts, digits: 1) } W in place of the bees
hive-terminal-cluster = Cluster
hive-terminal-bees = { NUMBER($bees) } bees, { LENGTH($across) } across; core { TEMPERATURE($core, digits: 1) }, mantle { TEMPERATURE($mantle, digits: 1) }
hive-terminal-heat = Heat
hive-terminal-warmth = { NUMBER($watts, digits: 1) } W, from { GRAMS($food, digits: 1, us: 2) } of stores a day, which also give { GRAMS($water, digits: 1, us: 2) } of water
hive-terminal-air = Air
hive-terminal-airs = { TEMPERATURE($around, digits: 1) } round the cluster, { TEMPERATURE($floor, digits: 1) } at the { -floor }; { FLOW($flow, digits: 2, us: 1) } goes through, { NUMBER($humid) } % humid, { NUMBER($spent, digits: 2) } % carbon dioxide
hive-terminal-faces = Faces
hive-terminal-face = lid { TEMPERATURE($lid, digits: 1) }, walls { TEMPERATURE($walls, digits: 1) } (below { TEMPERATURE($below, digits: 1) }), { -floor } { TEMPERATURE($floor, digits: 1) }
hive-terminal-water = Water
hive-terminal-caught = caught a day: lid { GRAMS($lid, digits: 1, us: 2) }, walls { GRAMS($walls, digits: 1, us: 2) }, { -floor } { GRAMS($floor, digits: 1, us: 2) }; { GRAMS($drips, digits: 1, us: 2) } drips on the cluster
hive-terminal-hole = Upper hole
hive-terminal-hole-is = { $state ->
    [none] there is none
    [dry] dry
    [damp] a wet rim: breath, a sign of life
   *[frost] frost: breath, a sign of life
}
hive-terminal-loss = Heat loss
hive-terminal-loses = { LOSS($loss, digits: 2) } over outdoors

hive-terminal-picture = The picture is in { $file }.
hive-terminal-outside = { $option }: { NUMBER($value, digits: "all") } is outside { NUMBER($low) } to { NUMBER($high) }
hive-terminal-cluster-alone = --outside (°C; a winter cluster is asked about)
