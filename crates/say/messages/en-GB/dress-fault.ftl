## How a hive is dressed, and what of it cannot be read.

# What stands in quotes, or behind an equals sign, is typed so in every language.
dress-fault-too-long = the change is far too long
dress-fault-examples = write one of { LIST($examples, between: "; ") }
dress-fault-nothing = "{ $what }" is nothing that can be changed
dress-fault-nothing-right = { $instead }, written as "lid=50 mm foam"
dress-fault-no-floor = "{ $written }" is no { -floor }
dress-fault-floor-right = write "solid", "open mesh" or "mesh with tray"
dress-fault-no-box = { $hive } has no box called "{ $size }"
dress-fault-box-right = use one of { LIST($known) }
dress-fault-no-quilt = { $material } lets no water through and is no quilt
dress-fault-quilt-right = write straw, hay, wood shavings, wool or moisture board, or use lid=... for foam
dress-fault-no-hole = "{ $written }" is no size for an upper hole
dress-fault-hole-right = write a diameter such as "25 mm", a slot such as "60 mm x 8 mm", or "none"
dress-fault-no-stack = "{ $written }" is no stack of boxes
dress-fault-stack-right = name 1 to { NUMBER($most) } boxes from below, such as "boxes=deep,deep"
dress-fault-no-opening = "{ $written }" is no size for an opening of a hive
dress-fault-opening-right = write "reduced", "full", "none", a diameter such as "25 mm", or width and height such as "76 mm x 10 mm"

dress-fault-no-material = "{ $written }" names no material
dress-fault-no-material-right = write a material and its thickness, such as "pine 19 mm" or "50 mm foam"
dress-fault-no-thickness = "{ $written }" has no thickness
dress-fault-no-thickness-right = write its thickness, such as "{ $material } 20 mm"
dress-fault-no-unit = "{ $written }" has no unit
dress-fault-no-unit-right = write "{ $written } mm" or "{ $written } in", such as "50 mm"
dress-fault-thickness = "{ $written }" is no thickness for a part of a hive
dress-fault-thickness-right = write a thickness between 0.05 mm and 1 m, such as "50 mm"
dress-fault-unknown-material = "{ $name }" is no known material
dress-fault-or-own-material = { $instead }; or describe your own in a [[material]] table

dress-fault-no-food = "{ $written }" is no food that is put on a hive
dress-fault-food-right = write such as "3 kg candy with pollen, rim 50 mm, over the cluster, hole 40 mm"; kinds are fondant, sugar board, candy and frame feeder, places "over the cluster" and "to one side"
dress-fault-frame-feeder = a frame feeder hangs among the combs
dress-fault-food-mass-right = write the food's weight, up to { MASS($most) }
dress-fault-not-of-food = "{ $part }" says nothing of food on a hive
dress-fault-rim-right = write { LENGTH(0.005, us: 2) } to { LENGTH(0.2, us: 1) }
