## Notes that cannot be read, or that are asked about.

# What stands before and behind an equals sign is typed so in every language.
note-fault-too-long = the note is far too long
note-fault-or-words = { $examples }; what no sum reads is "words={ $written }"
note-fault-examples = write such as { LIST($examples) }
note-fault-nothing = "{ $what }" is nothing that can be noted
note-fault-no-dead = "{ $written }" is no count of dead bees
note-fault-dead-right = write a number, "none", a band such as "6-20", or "over 100"
note-fault-no-seams = "{ $written }" is no number of seams
note-fault-seams-right = write a number from 0 to 30
note-fault-inside-right = write a temperature from -60 C to 60 C
note-fault-snow-right = write its depth over the ground at the box, 0 cm to 500 cm, such as "snow=45 cm"
note-fault-no-bees = no bees under the lid is weak
note-fault-no-bees-right = leave it out, or write "colony=dead" if they are

note-fault-no-colony = no colony is called "{ $name }"
note-fault-no-colony-right = write the name of a colony of this yard
note-fault-no-feed = "{ $written }" does not say what was fed
note-fault-feed-right = end it with one of { LIST($kinds) }, such as "fed=5 kg fondant"
note-fault-no-giver = "{ $written }" names no giver
note-fault-giver-right = write "frames=3.6 kg from Alder"
note-fault-no-room = there is no room "{ $room }"
note-fault-no-room-right = describe it in the yard file: [[indoors]] with name = "{ $room }" and temperature = "4 C"
note-fault-no-place = "{ $written }" does not say where to
note-fault-carried-right = write the room of the yard file, such as "carried=into Cellar", or "carried=out"
note-fault-no-mites = "{ $written }" is no count of mites
note-fault-mites-right = write mites and bees of the sample, up to { NUMBER($most) }, such as "mites=14 of 300"
note-fault-signs = { NUMBER($signs) } signs are told
note-fault-no-sign = "{ $written }" is no sign with its finding
note-fault-signs-right = write signs with yes, fairly yes, fairly no or no, such as "small-cluster yes, no-food no"
note-fault-no-cause = "{ $written }" is no cause with its chance
note-fault-cause-right = write "likeliest mites 71"

note-fault-no-sides = "{ $written }" is not two sides
note-fault-sides-right = write both with their units, such as "lift=42 kg, 38 kg inset 10 %"
note-fault-inset = the hive would rest on its middle
note-fault-inset-right = write an inset of at most 40 % of its width
note-fault-mass-right = write a mass from 0 to { MASS($most) }
note-fault-air = the air cannot be so
note-fault-air-right = from { TEMPERATURE($least) } to { TEMPERATURE($most) } can be noted
note-fault-wind = the wind cannot be so
note-fault-wind-right = up to { SPEED($most) } can be noted

note-fault-no-colon = "{ $written }" has no ":"
note-fault-treated-right = write such as "treated=oxalic | product: … | withdrawal: nil"
note-fault-detail-empty = the { $detail } is empty
note-fault-detail-empty-right = write it, or leave it out: it is then not noted
note-fault-detail-long = the { $detail } is too long
note-fault-detail-marks = the { $detail } holds "|", ";" or a line's end
note-fault-detail-marks-right = write a comma instead
note-fault-detail-twice = the { $detail } is given twice

note-fault-no-upper-hole = its hive has no upper hole
note-fault-no-upper-hole-right = if one was made, note it first, such as "changed=upper hole=25 mm"; the flight entrance is "entrance=..."

note-fault-ahead = { $at } is still to come; write a time up to now
note-fault-twice = the same stands noted at { $at } already
note-fault-before-count = { $on } lies before the colonies were counted, { $counted }: it is history, and this winter's answers do not heed it
