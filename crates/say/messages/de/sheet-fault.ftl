## Notizen aus einer Tabelle, die nicht zu lesen sind, und wie sie gelesen wurden.

sheet-fault-no-column = „{ $part }“ nennt keine Spalte
sheet-fault-columns-right = schreiben, was jede Spalte ist, und ihre Überschrift, etwa „date=Datum, hive=Volk, scale=Gewicht:kg“
sheet-fault-no-heading = „{ $word }“ hat keine Überschrift
sheet-fault-named-twice = „{ $word }“ ist zweimal angegeben
sheet-fault-none-named = keine Spalte ist genannt
sheet-fault-no-role = „{ $word }“ kann eine Spalte nicht sein
sheet-fault-turned-right = umgekehrt schreiben: „{ $heading }={ $word }“
sheet-fault-empty = ist leer
sheet-fault-empty-right = ein Blatt mit einer Zeile Überschriften geben, und darunter eine Zeile für jeden Blick
sheet-fault-no-role-told = keine Überschrift sagt, welche Spalte { $what ->
    [hive] das Volk
   *[day] der Tag
} ist
sheet-fault-no-role-told-right = mit --columns nennen; die Überschriften sind { LIST($headings) }
sheet-fault-no-such-heading = eine Spalte „{ $heading }“ gibt es nicht
sheet-fault-no-value = ist kein Wert
sheet-fault-no-value-right = ihre Rechnung ging schief: im Blatt berichtigen, oder die Zelle leeren
sheet-fault-nothing = nichts ist darin notiert
sheet-fault-nothing-right = unter den Überschriften eine Zeile für jeden Blick auf ein Volk schreiben
sheet-fault-no-day = der Tag ist nicht geschrieben
sheet-fault-no-day-right = den Tag in jede Zeile schreiben
sheet-fault-or-order = { $remedy }; oder es für die Spalte sagen, „date={ $heading }:dmy“ oder „:mdy“
sheet-fault-no-hive = das Volk ist nicht geschrieben
sheet-fault-no-hive-right = es in jede Zeile schreiben
sheet-fault-no-colony = „{ $written }“ ist kein Volk von { $yard }
sheet-fault-long = ist zu lang
sheet-fault-long-right = auf { NUMBER($letters) } Zeichen kürzen, oder zwei Zeilen schreiben
sheet-fault-long-words = die Worte sind zu lang
sheet-fault-long-words-right = sie auf zusammen { NUMBER($letters) } Zeichen kürzen, oder zwei Zeilen schreiben
sheet-fault-two-shares = „{ $cell }“ kann ein Anteil oder ein Prozentsatz sein
sheet-fault-two-shares-right = „{ $cell } %“ schreiben, oder „{ $hundredfold } %“

sheet-fault-dead-taken = { $heading }: als auf Schnee liegend genommen, oder auf dem Boden, wo keiner liegt; wenn nicht, den Ort nennen: „dead={ $heading }:on board“
sheet-fault-no-sign = { $heading } „{ $cell }“ ist kein { $role } und wird als Bemerkung behalten
sheet-fault-remark = { $heading } wird als Bemerkung behalten, die keine Rechnung liest
sheet-fault-words = { $heading } wird als Worte behalten: { $wrong }
sheet-fault-nothing-kept = nichts ist notiert, und nichts wird behalten
sheet-fault-rows = { $number ->
    [one] Zeile
   *[other] Zeilen
} { LIST($rows) }
sheet-fault-rows-more = Zeilen { LIST($rows) } und { NUMBER($more) } weitere
sheet-fault-row = Zeile { NUMBER($row) }: { $colony }, { $at }: { $note }
sheet-fault-more-rows = und { NUMBER($more) } weitere Zeilen
sheet-fault-more-kinds = und { NUMBER($more) } weitere anderer Art
sheet-fault-none-kept = Nichts wurde behalten.
sheet-fault-say-columns = Um zu sagen, was die Spalten sind:
