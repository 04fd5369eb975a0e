## Eine Beute im Winter verändert, versetzt oder fort.

change-page-heading = { $hive } ändern
change-page-lede = Ab dem Tag, an dem es geschah, wird die Beute gerechnet, wie sie dann stand; was vorher war, bleibt.
change-page-or = Oder
change-page-day = Tag, wenn nicht heute
change-page-keep = Speichern
change-page-back = Zurück zu { $hive }
change-page-add = Ein Volk hinzufügen
change-page-moved = an einen anderen Platz versetzt
change-page-sold = das Volk wurde verkauft
change-page-dead = das Volk ist tot
change-page-carried-into = hineingetragen: { $room }
change-page-carried-out = hinausgetragen
change-page-united = mit { $hive } vereinigt
