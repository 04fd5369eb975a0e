## Pourquoi un texte n’est pas la grandeur qu’il devrait être, et ce qui serait juste.

quantity-empty = rien n’est écrit ici
quantity-empty-right = écrire un nombre et une unité
quantity-no-number = « { $text } » ne commence pas par un nombre
quantity-no-number-right = en écrire un avec son unité
quantity-no-unit = « { $text } » n’a pas d’unité
quantity-no-unit-right = écrire « { $text } { $metric } » ou « { $text } { $us } »
quantity-two-readings = « { $text } » peut se lire de deux façons
quantity-two-readings-right = écrire « { $decimal } » ou « { $whole } »
quantity-unknown-unit = « { $unit } » n’est pas une unité { $of ->
    [length] de longueur
    [area] de surface
    [volume] de volume
    [temperature] de température
    [speed] de vitesse
    [angle] d’angle
   *[mass] de masse
}
quantity-unknown-unit-right = écrire l’une de celles-ci : { $units }
quantity-such-as = { $right }, comme « { $example } »
