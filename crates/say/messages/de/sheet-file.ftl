## Dateien mit Notizen, die sich nicht öffnen lassen oder keine Tabelle sind.

sheet-file-right = eine Arbeitsmappe (.xlsx) oder eine Tabelle als Text (.csv) geben
sheet-file-columns = die Spalten
sheet-file-no-table = ist keine Tabelle
sheet-file-no-table-why = ist keine Tabelle ({ $why })
sheet-file-no-text = ist kein Text und keine Arbeitsmappe
sheet-file-large = hat mehr als { NUMBER($rows) } Zeilen oder { NUMBER($columns) } Spalten
sheet-file-large-right = die Notizen allein geben, in Teilen
sheet-file-no-writing = lässt sich nicht als Text schreiben ({ $why })

sheet-file-protected = ist durch ein Kennwort geschützt, oder in der alten Form .xls
sheet-file-protected-right = ohne Kennwort als .xlsx speichern, oder als .csv
sheet-file-read-alone = das Blatt „{ $sheet }“ wurde gelesen, nicht { LIST($others) }
sheet-file-no-sheet = hat kein Blatt „{ $sheet }“
sheet-file-sheets = die Blätter sind { LIST($sheets) }
sheet-file-holds-nothing = enthält nichts
sheet-file-holds-nothing-right = eine Arbeitsmappe geben mit einer Zeile für jeden Blick auf ein Volk
sheet-file-open-document = ist ein Blatt in OpenDocument
sheet-file-open-document-right = als .xlsx oder .csv speichern
sheet-file-vast = wird ausgepackt größer als 16 MB
sheet-file-vast-right = das Blatt mit den Notizen allein speichern, als .xlsx oder .csv
sheet-file-dear = ist so gemacht, dass der Speicher zum Lesen nicht reicht
sheet-file-again-right = in einer Tabellenkalkulation öffnen und neu als .xlsx speichern, oder als .csv
sheet-file-uncounted = das Blatt „{ $sheet }“ enthält eine Rechnung, die nie gerechnet wurde, in Zeile { NUMBER($row) }, Spalte { NUMBER($column) }
sheet-file-wide = das Blatt „{ $sheet }“ hat mehr als { NUMBER($columns) } Spalten oder 4 MB Worte
sheet-file-wide-right = ein Blatt allein mit den Notizen geben
sheet-file-many-rows = das Blatt „{ $sheet }“ hat mehr als { NUMBER($rows) } Zeilen
sheet-file-many-rows-right = die Notizen in Teilen geben
sheet-file-damaged = ist beschädigt, oder keine Arbeitsmappe ({ $why })
