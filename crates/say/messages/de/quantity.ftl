## Warum ein Text nicht die Größe ist, die er sein soll.

quantity-empty = hier steht nichts; eine Zahl mit Einheit schreiben, etwa „{ $example }“
quantity-no-number = „{ $text }“ beginnt nicht mit einer Zahl; eine mit ihrer Einheit schreiben, etwa „{ $example }“
quantity-no-unit = „{ $text }“ hat keine Einheit; „{ $text } { $metric }“ oder „{ $text } { $us }“ schreiben
quantity-two-readings = „{ $text }“ lässt sich auf zwei Arten lesen; „{ $decimal }“ oder „{ $whole }“ schreiben
quantity-unknown-unit = „{ $unit }“ ist keine Einheit { $of ->
    [length] der Länge
    [area] der Fläche
    [volume] des Volumens
    [temperature] der Temperatur
    [speed] der Geschwindigkeit
    [angle] des Winkels
   *[mass] der Masse
}; eine von diesen schreiben: { $units }, etwa „{ $example }“
