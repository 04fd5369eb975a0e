## Eine Königin, die ihr Volk nicht durchbringt: was fehlt, und was mit ihr geschieht.

queen-trouble = { $trouble ->
    [no-queen] weisellos
    [virgin] unbegattete Königin
    [drone-layer] drohnenbrütige Königin
   *[laying-workers] Drohnenmütterchen
}
queen-why = { $trouble ->
    [no-queen] es hat keine Königin: auf die alten Bienen folgen keine jungen
    [virgin] die Königin ist nicht begattet: bis sie es ist, folgen auf die alten keine jungen Arbeiterinnen
    [drone-layer] die Königin legt Drohnen: auf die alten folgen keine jungen Arbeiterinnen
   *[laying-workers] die Arbeiterinnen legen: sie nehmen keine Königin an, und zu einem guten Volk gegeben, kann es dieses seine eigene kosten
}
queen-reason = { $why } ({ $trouble })

queen-join-healthy = die Bienen zu einem gesunden Volk mit legender Königin geben
queen-join = die Bienen zu { $name } geben
queen-join-none = kein Volk an diesem Stand ist geeignet, die Bienen aufzunehmen
queen-join-sick = es ist krank und kommt zu keinem anderen Volk: gegen Räuber schließen, sobald es leer ist
queen-requeen = bis etwa zum { DAY($by) } eine begattete Königin zusetzen; { $join }
queen-join-or-requeen = { $join }, oder bis etwa zum { DAY($by) } eine begattete Königin zusetzen
queen-join-or-soon = { $join }, oder eine begattete Königin zusetzen, sobald es welche gibt

queen-hardly-mates = sie wird kaum noch begattet: entnehmen, und { $join }
queen-may-mate = um den { DAY($on) } nach Eiern sehen, denn im Modell werden etwa { NUMBER($mate) } von 100 solcher Königinnen von heute an noch begattet; ohne Eier entnehmen, und { $join }
queen-take-out = suchen und entnehmen, und einen Tag später { $join }
queen-let-go = { $name } aufgeben: gegen Räuber schließen, sobald es leer ist; kranke Bienen werden nicht vor anderen Beuten abgekehrt
queen-shake-out = keine Königin zusetzen und, so wie es ist, zu keinem Volk geben: an einem warmen Tag { $name } weit wegtragen, die Bienen auf den Boden abschütteln und den Platz aus der Reihe nehmen, so betteln sich die Flugbienen bei den anderen ein; manche geben, was übrig ist, zu einem starken Volk, nie zu einem schwachen
queen-in-winter = { $trouble ->
    [no-queen] jetzt nichts, denn Bienen in der Traube nehmen keine Königin an und verschmelzen nicht; am ersten Tag, an dem die Bienen gut fliegen, nach Eiern sehen, und ohne sie { $join }
    [virgin] jetzt nichts, und begattet wird sie nicht mehr; am ersten Tag, an dem die Bienen gut fliegen, sehen, was sie legt, sie entnehmen, wenn es Drohnen sind, und { $join }
    [drone-layer] jetzt nichts, denn in der Traube ist sie nicht zu finden; am ersten Tag, an dem die Bienen gut fliegen, entnehmen, und { $join }
   *[laying-workers] jetzt nichts, denn in der Kälte abgekehrte Bienen sterben, wo sie fallen; am ersten Tag, an dem die Bienen gut fliegen, vor starken Völkern abkehren und keine Königin zusetzen
}
