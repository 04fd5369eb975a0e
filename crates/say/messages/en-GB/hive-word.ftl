## Words of the trade that a page says of a hive, where a keeper chose them from a list.

hive-word-fondant = fondant
hive-word-sugar-board = sugar board
hive-word-candy = candy
hive-word-frame-feeder = frame feeder

hive-word-clear = clear
hive-word-blocked = blocked
hive-word-cleared = cleared
hive-word-drifted-over = drifted over
hive-word-iced = iced
hive-word-plugged = plugged with bees
hive-word-not-visible = not visible

hive-word-foulbrood-signs = foulbrood signs
hive-word-chalkbrood = chalkbrood
hive-word-crumpled-wings = crumpled wings
hive-word-dysentery = dysentery
hive-word-robbed = robbed
hive-word-wasps = { -wasps }

# How a form offers what a yard file calls by these words.
hive-word-weak = weak
hive-word-middling = middling
hive-word-strong = strong
hive-word-light = light
hive-word-fair = fair
hive-word-heavy = heavy
hive-word-not-looked-at = not looked at
