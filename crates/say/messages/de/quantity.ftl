## Warum ein Text nicht die Größe ist, die er sein soll, und was richtig wäre.

quantity-empty = hier steht nichts
quantity-empty-right = eine Zahl mit Einheit schreiben
quantity-no-number = „{ $text }“ beginnt nicht mit einer Zahl
quantity-no-number-right = eine mit ihrer Einheit schreiben
quantity-no-unit = „{ $text }“ hat keine Einheit
quantity-no-unit-right = „{ $text } { $metric }“ oder „{ $text } { $us }“ schreiben
quantity-two-readings = „{ $text }“ lässt sich auf zwei Arten lesen
quantity-two-readings-right = „{ $decimal }“ oder „{ $whole }“ schreiben
quantity-unknown-unit = „{ $unit }“ ist keine Einheit { $of ->
    [length] der Länge
    [area] der Fläche
    [volume] des Volumens
    [temperature] der Temperatur
    [speed] der Geschwindigkeit
    [angle] des Winkels
   *[mass] der Masse
}
quantity-unknown-unit-right = eine von diesen schreiben: { $units }
quantity-such-as = { $right }, etwa „{ $example }“
