## Wie eine Beute ausgestattet ist, und was davon nicht zu lesen ist.

dress-fault-too-long = die Änderung ist viel zu lang
dress-fault-examples = eines schreiben von { LIST($examples, between: "; ") }
dress-fault-nothing = „{ $what }“ lässt sich nicht ändern
dress-fault-nothing-right = { $instead }, geschrieben wie „lid=50 mm foam“
dress-fault-no-floor = „{ $written }“ ist kein Boden
dress-fault-floor-right = „solid“, „open mesh“ oder „mesh with tray“ schreiben
dress-fault-no-box = { $hive } hat keine Zarge namens „{ $size }“
dress-fault-box-right = eine nehmen von { LIST($known) }
dress-fault-no-quilt = { $material } lässt kein Wasser durch und ist keine atmende Auflage
dress-fault-quilt-right = straw, hay, wood shavings, wool oder moisture board schreiben, oder lid=... für Schaum
dress-fault-no-hole = „{ $written }“ ist keine Größe für ein oberes Flugloch
dress-fault-hole-right = einen Durchmesser schreiben wie „25 mm“, einen Schlitz wie „60 mm x 8 mm“, oder „none“
dress-fault-no-stack = „{ $written }“ sind keine Zargen
dress-fault-stack-right = 1 bis { NUMBER($most) } Zargen von unten nennen, etwa „boxes=deep,deep“
dress-fault-no-opening = „{ $written }“ ist keine Größe für eine Öffnung einer Beute
dress-fault-opening-right = „reduced“, „full“, „none“, einen Durchmesser wie „25 mm“ oder Breite und Höhe wie „76 mm x 10 mm“ schreiben

dress-fault-no-material = „{ $written }“ nennt keinen Stoff
dress-fault-no-material-right = einen Stoff und seine Dicke schreiben, etwa „pine 19 mm“ oder „50 mm foam“
dress-fault-no-thickness = „{ $written }“ hat keine Dicke
dress-fault-no-thickness-right = die Dicke dazu schreiben, etwa „{ $material } 20 mm“
dress-fault-no-unit = „{ $written }“ hat keine Einheit
dress-fault-no-unit-right = „{ $written } mm“ oder „{ $written } in“ schreiben, etwa „50 mm“
dress-fault-thickness = „{ $written }“ ist keine Dicke für einen Teil einer Beute
dress-fault-thickness-right = eine Dicke zwischen 0,05 mm und 1 m schreiben, etwa „50 mm“
dress-fault-unknown-material = „{ $name }“ ist kein bekannter Stoff
dress-fault-or-own-material = { $instead }; oder einen eigenen in einer Tabelle [[material]] beschreiben

dress-fault-no-food = „{ $written }“ ist kein Futter, das auf eine Beute kommt
dress-fault-food-right = schreiben wie „3 kg candy with pollen, rim 50 mm, over the cluster, hole 40 mm“; Arten sind fondant, sugar board, candy und frame feeder, Orte „over the cluster“ und „to one side“
dress-fault-frame-feeder = eine Futtertasche hängt zwischen den Waben
dress-fault-food-mass-right = das Gewicht des Futters schreiben, bis { MASS($most) }
dress-fault-not-of-food = „{ $part }“ sagt nichts von Futter auf einer Beute
dress-fault-rim-right = { LENGTH(0.005, us: 2) } bis { LENGTH(0.2, us: 1) } schreiben
