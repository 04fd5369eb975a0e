## Was mehrere Antworten sagen.

answer-far = Der Ort von { $files } liegt { DISTANCE($distance) } vom Stand entfernt{ $way ->
    [higher] {" "}und { HEIGHT($height) } höher
    [lower] {" "}und { HEIGHT($height) } tiefer
   *[level] {""}
}: { $taken }. Eine Datei von einem Ort innerhalb von { DISTANCE($near) } um den Stand und { HEIGHT($as-high) } seiner Höhe angeben, oder keine, für das eingebaute Klima des Standes; steht der Stand wirklich dort, [site] berichtigen.
answer-far-reckoned = alles wird für jenen Ort gerechnet, seine Höhe, Uhr und Sonne, nicht für den Stand
answer-far-taken = sein Wetter wird genommen, wie es ist
answer-far-warmer = sein Wetter wird genommen, wie es ist, allein nach der Höhe etwa { WARMER($by, digits: 1) } { $is-warmer ->
    [yes] wärmer
   *[no] kälter
} als der Stand (Standardatmosphäre)

answer-lasts = { $barely ->
    [yes] reicht knapp
   *[no] reicht
} bis zum { $goal } in mindestens 9 von 10 Wintern
answer-most-last = { $barely ->
    [yes] reicht am ehesten knapp
   *[no] reicht am ehesten
} bis zum { $goal }; bei 1 von 10 ist vor dem { DAY($early) } Schluss
answer-until = reicht am ehesten bis { DAY($middle, style: "part") }; bei 1 von 10 ist vor dem { DAY($early) } Schluss

answer-by-custom = es ist so Brauch; sein Nutzen wird im Modell nicht gewogen
answer-too-close = zu knapp für ein Urteil: der Zufall könnte es so oder so wenden
answer-helps = hilft etwa { NUMBER($hives) } von 100 Völkern (± { NUMBER($plus-minus) }){ $worth ->
    [even] , und ist kaum mehr oder weniger wert als die Kosten von { NUMBER($cost) } { $currency }
    [more] , nach Kosten von { NUMBER($cost) } { $currency } noch { NUMBER($gain) } { $currency } wert
   *[less] , ist aber bei den meisten solchen Völkern weniger wert als die Kosten von { NUMBER($cost) } { $currency }
}
