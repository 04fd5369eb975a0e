## Questions of the winter, each answered short, with the beliefs that the answer corrects.

questions-alive-asks = Are my bees alive?
questions-alive-answer = Each hive's page weighs every sign you noted and gives a chance, never a certainty. A hum, a flight, new rime at the hole or a melted patch speak for life; that nothing is seen speaks of little.
questions-cold-kills-says = Cold kills bees
questions-cold-kills-truth = Dry, fed, big and healthy colonies stand spells of minus forty; mites, hunger and small numbers kill.
questions-hibernate-says = Bees hibernate
questions-hibernate-truth = They cluster and shiver all winter, awake.
questions-heats-the-hive-says = The cluster heats the hive
questions-heats-the-hive-truth = It heats itself: the air at the walls is nearly as cold as outside.

questions-dead-bees-asks = Dead bees on the snow: is that bad?
questions-dead-bees-answer = Mostly not. From a strong colony some thirty to a hundred and twenty a day die in midwinter. Count them, and ask whether it is more than such a colony should show.
questions-dead-outside-says = Dead bees outside mean a dying hive
questions-dead-outside-truth = Most are the winter's ordinary dead, carried out on a mild day.

questions-open-asks = Can I open it, and how warm must it be?
questions-open-answer = To lay feed on, seconds are enough and calm counts for more than warmth. Combs are lifted in spring, from about 13 °C (55 °F).

questions-hungry-asks = Are they hungry?
questions-hungry-answer = What counts is food within reach, not food in the hive. Each hive's page says when that runs out, with its range.
questions-honey-in-the-hive-says = Honey in the hive, so they cannot starve
questions-honey-in-the-hive-truth = In a cold spell food two bare combs away is out of reach: bees starve beside it.
questions-danger-ends-says = Danger ends in February
questions-danger-ends-truth = Most food goes in March and April, when brood is fed: more starve then than in the cold.

questions-left-asks = How much food is left?
questions-left-answer = Weigh it: both sides lifted, or a scale, less the empty hive, bees, snow and wet wood. One side alone shows a trend.
questions-weight-is-stores-says = Weight is stores
questions-weight-is-stores-truth = Brood, snow and wet wood weigh too: { MASS(1, unit: "no") } to { MASS(3) } of water in the wood alone.
questions-twice-one-side-says = Twice one side is the weight
questions-twice-one-side-truth = If the load lies { LENGTH(0.05) } off the middle of a hive of { LENGTH(0.5) }, that is wrong by a fifth.

questions-sugar-now-asks = Sugar now, or wait?
questions-sugar-now-answer = The plan compares feeding with doing nothing in the same winters. Solid feed goes on about three weeks before the first hunger, in one visit.
questions-candy-saves-says = Candy saves a hive that went into a hard winter unfed
questions-candy-saves-truth = In deep cold bees can hardly use it; stores in the comb are better.

questions-which-feed-asks = Dry sugar, a brick, fondant or syrup?
questions-which-feed-answer = While bees fly and take it: syrup. In the cold: fondant or a set sugar brick right over the cluster. In spring, once days stay above { TEMPERATURE(10) }: thin syrup.
questions-by-cups-says = Two to one by cups is two to one
questions-by-cups-truth = By cups of sugar and water it makes about 63 of 100 parts sugar, not 67.
questions-boiled-says = Syrup should be boiled, or soured with vinegar
questions-boiled-truth = Heat and acid make substances that harm bees. Hot water and stirring are enough.
questions-brown-sugar-says = Brown or raw sugar is better
questions-brown-sugar-truth = Its ash loads a gut that cannot empty for months. White sugar only.
questions-syrup-in-january-says = Syrup helps in January
questions-syrup-in-january-truth = Cold bees do not take it, cannot ripen it, and it chills them.

questions-ignored-asks = They do not touch the candy.
questions-ignored-answer = It must lie right over the cluster: a hand's width aside is out of reach. Bees with food beside them leave it, and dry sugar needs damp air. Leave it on; move it over them at the next calm hour.

questions-rime-asks = Frost in the hole?
questions-rime-answer = New rime at the upper hole is breath: a sign of life. Brush it out, so that only new rime counts from then on.

questions-water-asks = Water under the lid?
questions-water-answer = Water on walls and { -floor } does little harm and some of it is drunk. Water over the cluster is the harm: warm the lid from above and tilt the hive a little to the front.
questions-moisture-says = Moisture is always the enemy
questions-moisture-truth = Some of it is their drink. Where it drips on the bees it kills.
questions-mould-says = Mould killed them
questions-mould-truth = Mould grows after the bees have gone.

questions-wrap-asks = Wrap it or not, and in which colour?
questions-wrap-answer = A wrap stops wind, and a dark one takes sun on still, clear days. Most heat leaves at the top: insulate the lid first. Compare them for your own hive.
questions-wrap-warms-says = A wrap keeps them warm
questions-wrap-warms-truth = It slows wind and takes sun; what lies over the bees matters most.

questions-upper-hole-asks = Upper hole open or shut?
questions-upper-hole-answer = Both schools winter bees. A hole lets water out and some heat with it, and gives a way out under snow; without one the lid must be warm. Compare both for your own hive.
questions-top-open-says = The top must always, or never, be open
questions-top-open-truth = It depends on lid, climate and colony.

questions-mesh-asks = Shut the { -mesh-floor }?
questions-mesh-answer = Under a warm lid an open mesh does little harm out of the wind; in wind the tray makes the lower part calmer. A Polish survey found somewhat fewer losses over mesh.

questions-mouse-asks = A mouse?
questions-mouse-answer = Chewed comb, leaves or a smell on the tray: drive it out on a mild day and fit a guard with slots of at most { LENGTH(0.008, us: 2) } or holes of at most { LENGTH(0.009, us: 2) }.

questions-snow-asks = Snow covers the hive: dig it out?
questions-snow-answer = Snow is porous and warm: leave it. Keep the holes open where you can reach them, and do not shake the hive.
questions-snow-smothers-says = Snow smothers bees
questions-snow-smothers-truth = Rarely: air passes through snow. A sheet of ice over the whole hive is another thing.

questions-ice-asks = Ice before the entrance?
questions-ice-answer = A sheet of ice over a hive or its hole is opened, with warm water and without blows. Dead bees behind it are drawn out with a bent wire.

questions-cold-flight-asks = Bees flying at { TEMPERATURE(3) }?
questions-cold-flight-answer = In sun and calm some fly even just above freezing, and a few fall on the snow. Many on a still grey day point to trouble: hunger, robbing or a sick gut.

questions-spots-asks = Brown spots on the hive or the snow?
questions-spots-answer = After a flying day, on snow and on the front: normal, and a sign of life. Inside or on the top bars: dysentery, from stores, damp or a long wait.
questions-nosema-says = Dysentery is nosema
questions-nosema-truth = One is seen, the other needs a microscope, and each comes without the other.

questions-noise-asks = It is loud, or silent?
questions-noise-answer = A tap should give a short roar that dies down. Silence says little in deep cold or through thick walls. A long moan on a mild day may be a missing queen: look in spring. Do not tap again and again.

questions-on-top-asks = The cluster sits on top in December?
questions-on-top-answer = Either it is large, or it has eaten its way up and little is left above it. Weigh it.

questions-oxalic-asks = Oxalic acid now?
questions-oxalic-answer = Only where the label and the law allow it, only once as a trickle in a winter, and only when there is no brood: mites in cells are not reached.
questions-one-treatment-says = One oxalic treatment does it, brood or not
questions-one-treatment-truth = With brood most mites sit in cells where it does not reach.
questions-trickled-again-says = Trickling again does no harm
questions-trickled-again-truth = It harms the bees: once a winter.

questions-late-treatment-asks = Nothing was done against mites: too late?
questions-late-treatment-answer = In late autumn it is too late for bees already hurt, but a treatment without brood still protects the neighbours and next year. Count first.
questions-november-says = A treatment in November is enough
questions-november-truth = The winter's bees are raised from August to October; those are the ones to protect.
questions-strong-in-autumn-says = Strong in autumn is safe
questions-strong-in-autumn-truth = Large colonies reared the most mites with the most brood.
questions-no-mites-seen-says = I see no mites, so there are none
questions-no-mites-seen-truth = At one mite on a hundred bees more than a third of samples of a hundred bees are empty.
questions-survived-says = It survived, so it has no mites
questions-survived-truth = Count in spring: survivors carry mites into the summer.

questions-unite-asks = Two weak ones: { -unite } them now?
questions-unite-answer = Not in mid-winter: clusters do not join in the cold. { CAPITAL(-unite) } in September, weak onto strong, healthy to healthy.
questions-united-in-december-says = Two weak ones { -united } in December make a strong one
questions-united-in-december-truth = Weak and weak is still weak, and opening costs both.

questions-move-asks = Move the hive?
questions-move-answer = Not while it is clustered in frost: a jolt drops bees off the cluster for good. If it must be, on a mild still day, by hand, level; when no bee has flown for weeks the distance does not matter.

questions-heat-asks = Heat the hive?
questions-heat-answer = No lamp, cable or warm room: warm bees fly, eat more and begin brood they cannot feed. Fix the lid, the wind and the food.

questions-animals-asks = A woodpecker, or a bear?
questions-animals-answer = Round holes in the walls: net or wrap the hive off its sides. A bear: a live electric fence before the first frost of autumn and again from the thaw. Guns and traps are a matter of local law.

questions-dead-asks = It is dead: why, and what can be used again?
questions-dead-answer = Foulbrood is looked for first, and stops everything. Then the signs are weighed together, with what they leave open, and what may be used again is told.
questions-heads-in-cells-says = Heads in the cells, so they starved
questions-heads-in-cells-truth = A cluster too small to keep warm, after mites, dies so too.
questions-flew-away-says = They flew away
questions-flew-away-truth = Most dwindled: old bees died outside, one by one.

questions-edible-asks = Is that honey for people?
questions-edible-answer = Sugar stores are not honey. From a dead hive nothing is for people if it was treated, fed, fouled or unexplained. For other bees only if foulbrood is ruled out.

questions-patties-asks = When pollen patties?
questions-patties-answer = When brood can be kept fed until flowers come without a break: here counted back from the first flow. Early ones start brood that eats the stores.
questions-pollen-early-says = Feeding pollen early helps
questions-pollen-early-truth = It starts brood too soon, and the stores go into it.

questions-first-look-asks = When the first look, the unwrapping, the split?
questions-first-look-answer = First look: calm, from about 13 °C (55 °F). Unwrap when the nights' mean stays above freezing. Split only when the colony is strong and queens can be mated.
questions-none-of-two-says = None of my two died, so the way I winter is right
questions-none-of-two-truth = None lost of two still allows that of colonies wintered so two in three are lost.
