## What can hurt keeper, bees or neighbours, to stand after a colon. None tells a quantity of a medicine: label, local law, bee
## inspector and vet come first.

cautions-sentence = { SENTENCE($caution) }

cautions-lifting-title = Lifting
cautions-lifting = a full box of a large hive weighs 36 to 41 kg (80 to 90 lb): take frames out, or lift it with two people, close to the body, without turning
cautions-one-side-title = Lifting one side
cautions-one-side = a side at a time, straight up, no more than a finger's breadth
cautions-carrying-title = Moving a hive
cautions-carrying = strapped, level, by two people or on a barrow
cautions-closed-room-title = A room full of bees
cautions-closed-room = bees use up air and give off carbon dioxide, which gathers low: leave a way in for fresh air below and out above, always open. Air the room before you go in, leave the door open, and let somebody know; a headache or hard breathing means out at once. A carbon dioxide meter tells: people at work are kept below 5000 ppm over a day and 30,000 ppm for a quarter of an hour. No engine, gas heater or acid vapour in there
cautions-acids-title = Acids
cautions-acids = organic acids burn eyes, skin and lungs. The product's label says what to wear: goggles, acid-proof gloves, for vapour the right respirator. Water at hand, wind at your back, nobody near, never indoors
cautions-label-title = Medicines
cautions-label = no quantity is told here. The label of a product allowed in your country, local law, and where one must prescribe it the vet, come before any word here
cautions-antibiotics-title = Antibiotics
cautions-antibiotics = antibiotics for bees are for a vet to prescribe, where they are allowed at all; they do not cure American foulbrood
cautions-hot-sugar-title = Hot sugar
cautions-hot-sugar = cooked sugar is near 115 °C (240 °F) and sticks to skin, and hot syrup burns deep: long spoon, deep pot, cold water at hand, no children near; let it cool before you carry it. Damp sugar needs no heat
cautions-robbing-title = Robbing
cautions-robbing = feed at dusk with entrances reduced, and spill nothing: robbers and { -wasps } come for it
cautions-lid-off-title = The lid off
cautions-lid-off = on a calm day, lid off for less than a minute; do not move combs
cautions-before-tight-title = Combs in the cold
cautions-before-tight = do it on a calm day before the cluster is tight; leave brood combs where they are
cautions-entrance-title = Clearing an entrance
cautions-entrance = gently and without knocking; break ice with warm water, not with force
cautions-healthy-combs-title = Combs from hive to hive
cautions-healthy-combs = only between healthy colonies of the same yard: combs carry foulbrood
cautions-foulbrood-title = Foulbrood
cautions-foulbrood = sunken greasy caps, a rope drawn out on a match, a foul smell, or black scale that will not come off: close the hive, move nothing between hives, tell the { -bee-inspector }. Nothing of it is used again before that
cautions-ice-title = Ice and lone work
cautions-ice = ice, snow and the dark: tell somebody where you are and when you are back, carry a telephone, wear spikes, and clear the snow off a lid before you lift it. Ice over water carries nobody in a thaw
cautions-stings-title = Stings
cautions-stings = hard breathing, a swollen face or tongue, faintness, a rash all over, cramps or vomiting after a sting are an emergency, mostly within minutes: call the emergency number, use the adrenaline pen if there is one, lie flat, or sit if breathing is hard. Who has reacted so before never works bees alone
cautions-fire-title = Fire, electricity, gas
cautions-fire = smoker, torch, heater and wax are a fire: water at hand, nothing lit on straw, no lamp in a hive. Mains current outdoors only behind a residual-current switch. Burning gas or vapour in a closed room can kill
cautions-fence-title = Electric fence
cautions-fence = the energiser as its maker says, warning signs on the fence, its mains wire indoors
cautions-food-law-title = Food for people
cautions-food-law = sugar is fed only with no honey boxes on, and what bees make of it is never sold as honey. No honey for people from combs that were medicated
