## Fragen des Winters, und was oft zu hören ist.

questions-page-heard = Oft zu hören
questions-page-heard-here = Oft zu hören:
questions-page-told = „{ $says }.“ { $truth }
questions-page-here = An diesem Stand
questions-page-see = Siehe <a href="{ $address }">{ $page }</a> oder <code>snowhum { $command }</code>.
questions-page-stands-on = Beruht auf: { $source } ({ $status }).

questions-page-each = { LIST($hives, between: "; ") }.
questions-page-hive = { $hive }: { $figure }
questions-page-nothing = nichts zu sagen.
questions-page-dead = { $dead } bis zum { DAY($on) }
questions-page-lid = morgen um eins: { $lid }
questions-page-most-days = jetzt an den meisten Tagen.
questions-page-flight = am { DAY($on) } können die Bienen in { $chance } solchen Wintern fliegen.
questions-page-no-flight = binnen zehn Tagen ist wohl kein Flugtag.
