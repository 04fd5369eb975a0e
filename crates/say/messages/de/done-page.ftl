## Der Knopf, der sagt, dass das Erste getan ist.

done-page-done = Getan: { $what }
done-page-fondant = { $amount } Futterteig gegeben
done-page-syrup = { $amount } Sirup 3:2 gegeben
done-page-thin-syrup = { $amount } Sirup 1:1 gegeben
done-page-put-to = mit { $hive } vereinigt
done-page-count = Zählung eintragen
done-page-used = eintragen, was verwendet wurde
done-page-dressed = sagen, wie die Beute ausgestattet ist
done-page-saw = sagen, was zu sehen war
done-page-found = notieren, was zu finden war
