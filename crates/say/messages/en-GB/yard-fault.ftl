## A yard file that cannot be read: its form, its head, its place, its visits.

# Keys and values, and what stands in straight quotes, are typed so in every language.
yard-fault-no-text = this is not plain text in UTF-8
yard-fault-no-text-right = save the yard as a text file in UTF-8; a spreadsheet or word processor file will not do
yard-fault-missing = is missing
yard-fault-no-toml = cannot be read as TOML: { $why }
yard-fault-no-toml-right = write key = value, texts in "quotes", and close every quote and bracket
yard-fault-more = has { NUMBER($more) } more faults that are not written out
yard-fault-more-right = mend those above first
yard-fault-no-yard = describes no yard
yard-fault-empty = is empty
yard-fault-template-right = start from the template that `snowhum new` writes
yard-fault-long = is { NUMBER($mib) } MiB long
yard-fault-long-right = a yard of { NUMBER($hives) } hives fits in 4 MiB; split it into yards
yard-fault-lines = has more than { NUMBER($lines) } lines
yard-fault-many-right = keep a yard file to { NUMBER($hives) } hives; split it into yards
yard-fault-long-line = this line is far too long
yard-fault-long-line-right = break it into lines of under 2,000 letters
yard-fault-stops = this line has far too many full stops
yard-fault-stops-right = write one key and one value a line

yard-fault-text-long = is far too long
yard-fault-no-name = "{ $written }" is no name
yard-fault-name-right = write a name of 1 to { NUMBER($letters) } letters on one line
yard-fault-number = { NUMBER($number, digits: "all") } cannot be
yard-fault-number-right = write a number { $limits }
yard-fault-no-whole = { NUMBER($number, digits: "all") } is no whole number
yard-fault-whole-right = write a whole number { $limits }
yard-fault-limits-right = write it { $limits }
yard-fault-quoted-right = write it { $limits } in quotes
yard-fault-unit-right = write it with its unit, { $limits }
yard-fault-then-limits = { $remedy }, { $limits }
yard-fault-not-a = is { $kind ->
    [text] the text "{ $text }"
    [number] a bare number
    [date] a date
    [list] a list
    [table] a table
   *[truth] { $text }
}, not a { $wanted ->
    [text] text in quotes
    [number] number
    [truth] yes or no
    [quantity] number with its unit
    [date] date
    [list] list
   *[table] table
}
yard-fault-text-right = write it in "quotes"
yard-fault-truth-right = write true or false, without quotes
yard-fault-date-right = write year, month and day, such as 2025-10-05
yard-fault-list-right = write a list in brackets, such as ["deep", "deep"]
yard-fault-table-right = write it such as { $example }
yard-fault-write = write { $example }

yard-fault-between = between { $least } and { $most }, such as "{ $such }"
yard-fault-from = from { $least } to { $most }
yard-fault-from-such = from { $least } to { $most }, such as { $such }
yard-fault-from-in = from { $least } to { $most }, in { $unit }

yard-fault-no-key = is no key that is known here
yard-fault-key-out = take it out; known here are { LIST($known) }
yard-fault-key-out-near = take it out; { $instead }
yard-fault-tables = should be written [[{ $key }]]
yard-fault-tables-right = write [[{ $key }]] with two brackets
yard-fault-table = should be a table [[{ $key }]]
yard-fault-table-below-right = write [[{ $key }]] and its keys on the lines below
yard-fault-no-id = "{ $written }" is no id
yard-fault-no-id-right = take it out, and one is made from the name; or write one as exported, 36 letters long

yard-fault-needs-head = write [apiary] with name = "…" and as_of = 2025-10-05
yard-fault-needs-name = give the yard a name, such as name = "Rowan Bank"
yard-fault-needs-as-of = write the day the colonies were looked at, such as as_of = 2025-10-05
yard-fault-needs-colony = describe at least one colony in a [[colony]] table
yard-fault-many = the file has { NUMBER($many) } { $what ->
    [hives] hives
   *[colonies] colonies
}
yard-fault-same-name = is the name of the { $what ->
    [hive] hive
    [room] room
   *[colony] colony
} on line { NUMBER($line) } too
yard-fault-same-name-right = give each { $what ->
    [hive] hive
    [room] room
   *[colony] colony
} a name of its own
yard-fault-same-id = is the id of something else in this file too
yard-fault-same-id-right = take it out, and one is made from the name
yard-fault-needs-site = write [site] with latitude, longitude, elevation and zone
yard-fault-needs-latitude = degrees north, such as latitude = 61.7
yard-fault-needs-longitude = degrees east, such as longitude = 27.3
yard-fault-needs-elevation = height above the sea, such as elevation = "105 m"
yard-fault-needs-zone = the time zone by its city, such as zone = "Europe/Helsinki"
yard-fault-degrees = of degrees, such as 61.7
yard-fault-no-angle = "{ $written }" is no angle
yard-fault-off-globe = { NUMBER($degrees, digits: "all") } is off the globe
yard-fault-angle-right = write degrees between -{ $most } and { $most }, such as 61.7 or "61.7 { $letter }"
yard-fault-no-zone = "{ $written }" is no known time zone
yard-fault-zone-right = write a region and a city, such as "Europe/Helsinki" or "America/Winnipeg"
yard-fault-no-day-of-year = "{ $written }" is no day of the year
yard-fault-day-of-year-right = write month and day, such as first_flow = "05-25" or "25 May"
yard-fault-price = from 0 to 1000000, in your own currency

yard-fault-visits = is visit { NUMBER($visit) }
yard-fault-visits-right = keep a yard file to one winter
yard-fault-needs-seen = write [visit.seen] and a line for each colony below it
yard-fault-needs-at = write the day and the hour, such as at = 2025-11-24T10:00:00
yard-fault-same-visit = says the same as another visit in the same minute
yard-fault-same-visit-right = take one of the two out, or write the time at which it was seen again
yard-fault-cannot-be = cannot be
yard-fault-air-right = write the air's temperature, such as "-5 C"
yard-fault-wind-right = write the wind, such as "3 m/s"
