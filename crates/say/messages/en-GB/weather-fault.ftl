## What is wrong with a weather file or a place, and what would be right.

weather-fault-whole = { $file }: { $says }
weather-fault-line = { $file }: line { NUMBER($line) }, { $says }
weather-fault-field = { $file }: line { NUMBER($line) }, { $field }: { $says }
weather-fault-row = row
weather-fault-numbered = field { NUMBER($number) }
weather-fault-date = date
weather-fault-days = year, month, day
weather-fault-hour = hour
weather-fault-hours = year, month, day, hour

weather-fault-short = holds { NUMBER($hours) } hours; give at least one day
weather-fault-gap = temperature is missing for { NUMBER($hours) } hours from { $from }; fill these hours from a station near by, or cut the file before or after them
weather-fault-no-sun = { $why }; check the place and the years
weather-fault-no-rows = holds no weather; give a file with at least one row of data
weather-fault-long = its rows span { NUMBER($years) } years; give at most sixty years and check the dates of the first and last row
weather-fault-first-date = its first date cannot be used ({ $why }); check the years
weather-fault-number = "{ $text }" is no number; write a number, or leave the field empty when it is missing
weather-fault-one-station = give the file of one station

weather-fault-epw-columns = has { NUMBER($columns) } columns; an EPW row has 35 columns, of which at least 22 are needed
weather-fault-epw-date = "{ $text }" is no date; write year, month 1-12, day 1-31
weather-fault-epw-hour = "{ $text }" is no hour; write 1 to 24; hour 1 ends at 01:00
weather-fault-epw-location = there is no LOCATION line; an EPW file begins with LOCATION,city,state,…
weather-fault-epw-number = LOCATION has { $what ->
    [latitude] latitude
    [longitude] longitude
    [zone] time zone
   *[elevation] elevation
} "{ $text }"; field { NUMBER($field) } should be a number from { NUMBER($lowest) } to { NUMBER($highest) }
weather-fault-epw-zone = time zone: { $why }; write hours from UTC, such as 2.0

weather-fault-ghcn-long = spans more than sixty years; cut it to the years that matter
weather-fault-ghcn-station = station "{ $other }" follows "{ $first }"; { $right }
weather-fault-ghcn-columns = has { NUMBER($columns) } columns; a row is ID,YYYYMMDD,ELEMENT,VALUE,M,Q,S,TIME
weather-fault-ghcn-date = "{ $text }" is no date; write YYYYMMDD
weather-fault-ghcn-number = "{ $text }" is no number; write tenths of a degree or of a millimetre

weather-fault-isd-number = "{ $text }" is no whole number; an ISD-lite row holds 12 whole numbers
weather-fault-isd-fields = has { NUMBER($fields) } fields; an ISD-lite row holds 12, apart by blanks
weather-fault-isd-hour = "{ $text }" is no hour; write year, month 1-12, day 1-31, hour 0-23 in UTC

weather-fault-station-empty = is empty; give a CSV file with a line of headings
weather-fault-station-column = there is no column "{ $asked }"; the headings are "{ LIST($headings, between: "\", \"") }"
weather-fault-station-place = { NUMBER($latitude) }, { NUMBER($longitude) } follows { NUMBER($first-latitude) }, { NUMBER($first-longitude) }; { $right }
weather-fault-station-coordinate = "{ $text }" is no { $what ->
    [latitude] latitude
    [longitude] longitude
   *[elevation] elevation
}; write a number from { NUMBER($lowest) } to { NUMBER($highest) }{ $what ->
    [elevation] {" "}m
   *[other] {""}
}
weather-fault-station-number = "{ $text }" is no number; { $comma ->
    [yes] write a number with a decimal comma
   *[no] write a number with a decimal point, or say that the file uses decimal commas
}
weather-fault-station-no-time = "{ $text }" is no time; { $right }
weather-fault-station-no-date = "{ $text }" is no date; { $right }
weather-fault-station-right = { $form ->
    [years] write a year from 1 to 9998
    [order] the order of day and month is open; name it with time=heading:mdy or :dmy
    [time] write a time of day such as 13:45 or 1:45 PM
   *[date] write a date such as 2025-01-31, 31.1.2025, or name the order with time=heading:mdy or :dmy
}
weather-fault-station-time-lacks = is not there
weather-fault-station-day = "{ NUMBER($day) }" is no day of month { NUMBER($month) } of { NUMBER($year) }; write a day that the month has
weather-fault-station-part = "{ $text }" is no { $what ->
    [year] year
    [month] month
    [day] day
    [hour] hour
   *[minute] minute
}; write a whole number from { NUMBER($lowest) } to { NUMBER($highest) }
weather-fault-station-unit = column "{ $column }" read in { $unit } has a mean of { TEMPERATURE($mean, digits: 0) } where { TEMPERATURE($usual, digits: 0) } is usual on these days; write temperature={ $column }:{ $other } if the column is in { $other }

weather-fault-columns-form = "{ $text }" is no mapping; write role=heading:unit, such as temperature=Temp Out:F
weather-fault-columns-role = "{ $text }" is no quantity; write one of { $roles }
weather-fault-columns-unit = "{ $unit }" is no unit of { $role }; write one of { $units }
weather-fault-columns-no-unit = { $role }={ $heading } has no unit; write one of { $units }, such as { $role }={ $heading }:{ $example }
weather-fault-columns-twice = { $role } is mapped twice; give each quantity one column
weather-fault-columns-lacks = nothing is mapped to { $role }; add { $role }=heading, as the heading stands in the file
weather-fault-columns-lacks-time = nothing is mapped to time; add time=heading, as the heading stands in the file, or year=, month=, day= and hour= where they stand apart
weather-fault-columns-same-twice = { $one } and { $other } say the same; map one of them

weather-fault-latitude = the built-in climate covers 30 to 75 N and 30 to 56 S, not latitude { NUMBER($latitude, digits: 2) }; give a weather file of the place (EPW, ISD-lite, GHCN-Daily or a station's CSV)
weather-fault-no-place = latitude { NUMBER($latitude) }, longitude { NUMBER($longitude) } is no place on earth; write degrees, north and east positive
weather-fault-open-sea = latitude { NUMBER($latitude, digits: 2) }, longitude { NUMBER($longitude, digits: 2) } lies in the open sea; check the signs (north and east are positive) or give a weather file
weather-fault-damaged = the built-in climate is damaged; build the program anew or give a weather file
weather-fault-drawn-from = weather from { $from } cannot be drawn; give a date from 1700 to 2900
weather-fault-drawn-hours = { NUMBER($hours) } hours of weather cannot be drawn; ask for 1 to 87840
weather-fault-too-short = the weather file holds { NUMBER($held) } hours and no stretch of { NUMBER($asked) } hours from { $from }; give a file of a whole year, or one that covers these dates
