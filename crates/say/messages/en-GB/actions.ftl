## What is worth doing for a colony, why, the trade's rule beside it, and where it comes from.

actions-clear = clear { $openings ->
    [entrance] the entrance
    [upper-hole] the upper hole
   *[both] the entrance and the upper hole
} of ice and dead bees
actions-clear-why = { $openings ->
    [entrance] it was noted as blocked: damp stays in, and bees cannot get out on the next mild day
    [upper-hole] it was noted as blocked: damp stays in under the lid
   *[both] both were noted as blocked: damp and bad air stay in, and bees cannot get out on the next mild day
}
actions-clear-rule = leave snow: it is porous and keeps the hive warm; an ice sheet is not

actions-treat = treat it for mites with what label and law allow here, all of the yard on one day
actions-treat-why = { NUMBER($rate, digits: 1) } mites per 100 bees at its count, over the line: { $in-time ->
    [yes] begun by { DAY($all) } it spares all of this winter's bees
   *[no] too late for part of this winter's bees, and for all of them after { DAY($none) }
}; weighed in a colony given what it is short of; the product's price is not counted

actions-near = hang the { MASS($food, digits: 1) } from the far side next to the cluster
actions-near-why = food two bare combs away might as well not be there in a cold spell

actions-frames = hang in { $frames } full { $frames ->
    [one] frame
   *[other] frames
} of sealed stores from { $giver } ({ MASS($stores, digits: 1) })
actions-frames-why = { $giver } has more than it needs even in the hungriest winter in ten, and its frames fit (what it can spare is given once in this yard, to the hive that is shortest)
actions-frames-rule = a frame of sealed stores against the cluster is the first remedy where there is one

actions-syrup = feed { MASS($sugar, digits: 1) } of sugar as { VOLUME($syrup) } of 3:2 syrup, finished by { DAY($finish) }{ $is-all ->
    [yes] {""}
   *[no] ; the other { MASS($rest, digits: 1) } of stores as frames, fondant or damp sugar
}
actions-syrup-safe = with { $feeder } begin by { DAY($begin) }: fed, taken and capped before bees stop taking syrup here ({ DAY($half) } is in time in half of all years)
actions-syrup-late = begin at once with { $feeder }: { DAY($half) } is in time in half of all years, { DAY($safe) } would have been safe{ $is-all ->
    [yes] {""}
   *[no] ; it gives no more than that in the days left
}
# Two sentences; the last has no stop.
actions-syrup-custom = { $said }. { $custom }

actions-thin-syrup = feed { MASS($sugar, digits: 1) } of sugar as { VOLUME($syrup) } of thin syrup, 1:1, about { VOLUME(0.001, us: 1) } at a time
actions-thin-syrup-hungry = one in ten colonies like this is hungry by { DAY($by) } unless flowers give some; days are warm enough for bees to take it
actions-thin-syrup-little = the worst tenth is left with little unless flowers give some; days are warm enough for bees to take it
actions-thin-syrup-rule = solid food, then thin syrup once days are warm, then pollen; no more than is short

actions-fondant = put { MASS($fondant, digits: 1) } of fondant right over the cluster
actions-fondant-hungry = one in ten colonies like this is hungry by { DAY($by) }; set three weeks ahead of that
actions-fondant-little = few go hungry before spring, but the worst tenth reaches it with { MASS($left, digits: 1) } within reach or less
actions-fondant-rule = solid sugar helps once bees can use it; autumn stores are better (University of Minnesota Extension)

actions-lid = lay { LENGTH(0.05) } of foam over the { -crownboard }
actions-lid-why = moves the water from the lid, where it drips on the cluster, to the walls, and saves heat
actions-lid-rule = both schools agree: top insulation before side insulation, no cold surface over the cluster

actions-wrap = wrap the walls in felt paper
actions-wrap-why = keeps wind off the joints and takes in sun; it holds hardly any heat by itself
actions-wrap-rule = soon after 1 November in Minnesota; too early keeps bees rearing brood

actions-tray = push the tray in under the mesh
actions-tray-why = less wind through the hive; clear the tray when dead bees cover it
actions-tray-rule = open mesh is left open by many: it lowered losses in one survey (Mazur 2022, Poland)

actions-by-practice = common practice
actions-by-lines = lines of data/mites.toml
actions-by-nine-in-ten = nine in ten gone: judgement
actions-by-isolation = isolation starvation as the model reaches it
actions-by-run-out = computed run-out
actions-by-limit = 55 F limit: Ontario beekeeping extension
actions-by-sugar = sugar makes 1.1 times its weight of stores, range 1.0-1.2
actions-by-covers = hive covers trial: St. Clair et al. 2022, PLoS ONE 17:e0266219
actions-by-poster = University of Minnesota poster 163
actions-by-iso-6946 = ISO 6946
actions-by-air-flow = computed air flow
