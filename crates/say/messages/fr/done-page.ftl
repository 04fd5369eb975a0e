## Le bouton qui dit que ce qui vient d’abord a été fait.

done-page-done = Fait : { $what }
done-page-fondant = apport de { $amount } de candi
done-page-syrup = apport de { $amount } de sirop 3:2
done-page-thin-syrup = apport de { $amount } de sirop 1:1
done-page-put-to = réunie à { $hive }
done-page-count = noter le compte
done-page-used = écrire ce qui a été employé
done-page-dressed = dire comment elle est habillée
done-page-saw = dire ce qui a été vu
done-page-found = noter ce qui a été trouvé
