## Pourquoi un texte n’est pas la grandeur qu’il devrait être.

quantity-empty = rien n’est écrit ici ; écrire un nombre et une unité, comme « { $example } »
quantity-no-number = « { $text } » ne commence pas par un nombre ; en écrire un avec son unité, comme « { $example } »
quantity-no-unit = « { $text } » n’a pas d’unité ; écrire « { $text } { $metric } » ou « { $text } { $us } »
quantity-two-readings = « { $text } » peut se lire de deux façons ; écrire « { $decimal } » ou « { $whole } »
quantity-unknown-unit = « { $unit } » n’est pas une unité { $of ->
    [length] de longueur
    [area] de surface
    [volume] de volume
    [temperature] de température
    [speed] de vitesse
    [angle] d’angle
   *[mass] de masse
} ; écrire l’une de celles-ci : { $units }, comme « { $example } »
