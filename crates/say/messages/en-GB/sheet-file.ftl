## Files of notes that cannot be opened or are no table.

sheet-file-right = give a workbook (.xlsx) or a table as text (.csv)
sheet-file-columns = the columns
sheet-file-no-table = is no table
sheet-file-no-table-why = is no table ({ $why })
sheet-file-no-text = is no text and no workbook
sheet-file-large = has more than { NUMBER($rows) } rows or { NUMBER($columns) } columns
sheet-file-large-right = give the notes alone, in parts
sheet-file-no-writing = cannot be written as text ({ $why })

sheet-file-protected = is protected by a password, or in the old form of .xls
sheet-file-protected-right = save it without a password as .xlsx, or as .csv
sheet-file-read-alone = sheet "{ $sheet }" was read, and not { LIST($others) }
sheet-file-no-sheet = has no sheet "{ $sheet }"
sheet-file-sheets = its sheets are { LIST($sheets) }
sheet-file-holds-nothing = holds nothing
sheet-file-holds-nothing-right = give a workbook with a row for each look at a hive
sheet-file-open-document = is an OpenDocument sheet
sheet-file-open-document-right = save it as .xlsx or .csv
sheet-file-vast = unpacks to more than 16 MB
sheet-file-vast-right = save the sheet of notes alone, as .xlsx or .csv
sheet-file-dear = is made so that it cannot be read in the memory there is
sheet-file-again-right = open it in a spreadsheet and save it again as .xlsx, or as .csv
sheet-file-uncounted = sheet "{ $sheet }" holds a sum that was never counted, in row { NUMBER($row) }, column { NUMBER($column) }
sheet-file-wide = sheet "{ $sheet }" has more than { NUMBER($columns) } columns or 4 MB of words
sheet-file-wide-right = give a sheet with the notes alone
sheet-file-many-rows = sheet "{ $sheet }" has more than { NUMBER($rows) } rows
sheet-file-many-rows-right = give the notes in parts
sheet-file-damaged = is damaged, or no workbook ({ $why })
