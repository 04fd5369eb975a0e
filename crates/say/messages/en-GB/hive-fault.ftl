## Hives, rooms and materials of a yard file.

# Keys and values, and what stands in straight quotes, are typed so in every language.
hive-fault-needs-kind = say what it is built to, such as kind = "Langstroth 10"
hive-fault-no-kind = "{ $written }" is no known kind of hive
hive-fault-or-own-sizes = { $instead }; or write "own" with the sizes
hive-fault-stack = a hive of { NUMBER($boxes) } boxes cannot be
hive-fault-stack-right = name 1 to { NUMBER($most) } boxes from below, such as ["deep", "deep"]
hive-fault-no-sizes = needs its sizes, since the hive is of its own kind
hive-fault-box-right = use one of { LIST($known) }, or write the sizes out
hive-fault-needs-size = every size of an own box is needed, such as "450 mm"
hive-fault-needs-frames = say how many combs it holds
hive-fault-large-combs = has combs larger than the box
hive-fault-large-combs-right = measure the comb inside its frame, the box inside its walls
hive-fault-narrow = is too narrow for { NUMBER($frames) } combs
hive-fault-narrow-right = a comb with its gap takes { LENGTH(0.032, unit: "no", us: 1) } to { LENGTH(0.04, us: 1) } of the width
hive-fault-needs-name = give the hive a name or number, such as name = "Alder"
hive-fault-shut = the entrance and every hole are shut: bees can get out neither to void themselves nor to carry out their dead
hive-fault-shut-right = leave one way open, entrance = "reduced" or upper_hole = "25 mm"; a { -mesh-floor } lets in air and no bee out
hive-fault-needs-wall = say what the walls are, such as wall = "pine 19 mm"
hive-fault-no-cover = leaves the hive without a cover
hive-fault-no-cover-right = name at least one sheet, such as ["plywood 10 mm"]
hive-fault-facing = clockwise from north, such as "180 deg" or "south"
hive-fault-needs-side = say which side of this hive touches it: front, back, left or right
hive-fault-no-hive = there is no hive "{ $name }"
hive-fault-no-hive-right = name a hive of this file
hive-fault-itself = a hive cannot touch itself
hive-fault-itself-right = name another hive of this file
hive-fault-sheets = has { NUMBER($sheets) } sheets
hive-fault-sheets-right = name at most { NUMBER($most) } sheets

hive-fault-materials = the file has { NUMBER($materials) } materials
hive-fault-materials-right = keep to { NUMBER($most) }
hive-fault-needs-material-name = give the material a name
hive-fault-still-air = from { $least } to { $most }, times still air

hive-fault-rooms = is room { NUMBER($room) }
hive-fault-rooms-right = keep to { NUMBER($most) } rooms
hive-fault-needs-room-name = give the room a name, such as name = "Cellar"
hive-fault-needs-warmth = write how warm it is in there, such as temperature = "4 C"
hive-fault-warmth = between -20 C and 25 C, such as "4 C" or "2 C to 6 C"
hive-fault-coldest-right = write the coldest first, { $limits }
hive-fault-no-record = stands without a record
hive-fault-no-record-right = name the file too, such as record = "cellar.csv"
hive-fault-out-early = { $out } is not after the day in, { $enters }
hive-fault-out-early-right = write a day after { $enters }
hive-fault-out-over = { $out } is not after as_of, { $as-of }: that winter is over
hive-fault-out-over-right = mend the year, or take in and out out
hive-fault-in-late = { $enters } is no day of the winter that follows as_of, { $as-of }
hive-fault-in-late-right = mend the year
hive-fault-no-room-named = stands without a room
hive-fault-no-room-named-right = name it too, such as indoors = "Cellar"
hive-fault-room-right = describe it in a table [[indoors]] with name and temperature, or write "none"
