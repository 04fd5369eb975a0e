## Notes out of a spreadsheet that cannot be read, and how they were.

# What stands before and behind an equals sign is typed so in every language.
sheet-fault-no-column = "{ $part }" names no column
sheet-fault-columns-right = write what each column is and its heading, such as "date=Datum, hive=Volk, scale=Gewicht:kg"
sheet-fault-no-heading = "{ $word }" has no heading
sheet-fault-named-twice = "{ $word }" is given twice
sheet-fault-none-named = no column is named
sheet-fault-no-role = "{ $word }" is nothing that a column can be
sheet-fault-turned-right = write it the other way round: "{ $heading }={ $word }"
sheet-fault-empty = is empty
sheet-fault-empty-right = give a sheet with a row of headings, and below it a row for each look
sheet-fault-no-role-told = no heading tells which column is the { $what ->
    [hive] hive
   *[day] day
}
sheet-fault-no-role-told-right = name it with --columns; the headings are { LIST($headings) }
sheet-fault-no-such-heading = there is no column "{ $heading }"
sheet-fault-no-value = is no value
sheet-fault-no-value-right = its sum went wrong: mend it in the sheet, or empty the cell
sheet-fault-nothing = nothing is noted in it
sheet-fault-nothing-right = write a row for each look at a hive below the headings
sheet-fault-no-day = the day is not written
sheet-fault-no-day-right = write the day in every row
sheet-fault-or-order = { $remedy }; or say it for the column, "date={ $heading }:dmy" or ":mdy"
sheet-fault-no-hive = the hive is not written
sheet-fault-no-hive-right = write it in every row
sheet-fault-no-colony = "{ $written }" is no colony of { $yard }
sheet-fault-long = is too long
sheet-fault-long-right = shorten it to { NUMBER($letters) } letters, or write two rows
sheet-fault-long-words = its words are too long
sheet-fault-long-words-right = shorten them to { NUMBER($letters) } letters in all, or write two rows
sheet-fault-two-shares = "{ $cell }" may be a share or a per cent
sheet-fault-two-shares-right = write "{ $cell } %", or "{ $hundredfold } %"

sheet-fault-dead-taken = { $heading } are taken to lie on snow, or on the ground where there is none; if not, name the place: "dead={ $heading }:on board"
sheet-fault-no-sign = { $heading } "{ $cell }" is no { $role }, and kept as a remark
sheet-fault-remark = { $heading } is kept as a remark, which no sum reads
sheet-fault-words = { $heading } is kept as words: { $wrong }
sheet-fault-nothing-kept = nothing is noted, and nothing is kept
sheet-fault-rows = { $number ->
    [one] row
   *[other] rows
} { LIST($rows) }
sheet-fault-rows-more = rows { LIST($rows) } and { NUMBER($more) } more
sheet-fault-row = row { NUMBER($row) }: { $colony }, { $at }: { $note }
sheet-fault-more-rows = and { NUMBER($more) } more rows
sheet-fault-more-kinds = and { NUMBER($more) } more of other kinds
sheet-fault-none-kept = Nothing was kept.
sheet-fault-say-columns = To say what the columns are:
