## Comment une ruche est habillée, et ce qui n’en peut être lu.

dress-fault-too-long = le changement est beaucoup trop long
dress-fault-examples = écrire l’un de { LIST($examples, between: " ; ") }
dress-fault-nothing = « { $what } » ne peut pas se changer
dress-fault-nothing-right = { $instead }, écrit comme « lid=50 mm foam »
dress-fault-no-floor = « { $written } » n’est pas un plancher
dress-fault-floor-right = écrire « solid », « open mesh » ou « mesh with tray »
dress-fault-no-box = { $hive } n’a pas de corps appelé « { $size } »
dress-fault-box-right = prendre l’un de { LIST($known) }
dress-fault-no-quilt = { $material } ne laisse pas passer l’eau et n’est pas un coussin
dress-fault-quilt-right = écrire straw, hay, wood shavings, wool ou moisture board, ou lid=... pour la mousse
dress-fault-no-hole = « { $written } » n’est pas une taille de trou supérieur
dress-fault-hole-right = écrire un diamètre comme « 25 mm », une fente comme « 60 mm x 8 mm », ou « none »
dress-fault-no-stack = « { $written } » n’est pas une pile de corps
dress-fault-stack-right = nommer de 1 à { NUMBER($most) } corps depuis le bas, par exemple « boxes=deep,deep »
dress-fault-no-opening = « { $written } » n’est pas une taille d’ouverture de ruche
dress-fault-opening-right = écrire « reduced », « full », « none », un diamètre comme « 25 mm », ou largeur et hauteur comme « 76 mm x 10 mm »

dress-fault-no-material = « { $written } » ne nomme pas de matériau
dress-fault-no-material-right = écrire un matériau et son épaisseur, par exemple « pine 19 mm » ou « 50 mm foam »
dress-fault-no-thickness = « { $written } » n’a pas d’épaisseur
dress-fault-no-thickness-right = écrire son épaisseur, par exemple « { $material } 20 mm »
dress-fault-no-unit = « { $written } » n’a pas d’unité
dress-fault-no-unit-right = écrire « { $written } mm » ou « { $written } in », par exemple « 50 mm »
dress-fault-thickness = « { $written } » n’est pas une épaisseur pour une partie de ruche
dress-fault-thickness-right = écrire une épaisseur entre 0,05 mm et 1 m, par exemple « 50 mm »
dress-fault-unknown-material = « { $name } » n’est pas un matériau connu
dress-fault-or-own-material = { $instead } ; ou en décrire un à soi dans une table [[material]]

dress-fault-no-food = « { $written } » n’est pas une nourriture que l’on pose sur une ruche
dress-fault-food-right = écrire par exemple « 3 kg candy with pollen, rim 50 mm, over the cluster, hole 40 mm » ; les sortes sont fondant, sugar board, candy et frame feeder, les places « over the cluster » et « to one side »
dress-fault-frame-feeder = un nourrisseur-cadre pend parmi les rayons
dress-fault-food-mass-right = écrire le poids de la nourriture, jusqu’à { MASS($most) }
dress-fault-not-of-food = « { $part } » ne dit rien d’une nourriture sur une ruche
dress-fault-rim-right = écrire de { LENGTH(0.005, us: 2) } à { LENGTH(0.2, us: 1) }
