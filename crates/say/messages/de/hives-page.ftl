## Die Völker des Standes, und eines, das hinzukommt.

hives-page-heading = Völker
hives-page-stands = <strong>{ $hive }</strong> steht jetzt am Stand.
hives-page-mend = Zu berichtigen
hives-page-in-yard = Am Stand
hives-page-change = Ändern, Umzug, Ende
hives-page-add = Eines hinzufügen
hives-page-as-it-stood = Wie es am { DAY($on) } stand, dem Tag der Zählung. Was nicht gesagt ist, gilt als üblich für seine Art.
hives-page-add-it = Hinzufügen
hives-page-name = Name
hives-page-kind = Art der Beute
hives-page-bees = Bienen
hives-page-food = Futter
