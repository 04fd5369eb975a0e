## The hives of the yard, and one to be added.

hives-page-heading = Hives
hives-page-stands = <strong>{ $hive }</strong> stands in the yard now.
hives-page-mend = To be mended
hives-page-in-yard = In the yard
hives-page-change = Change, move, retire
hives-page-add = Add one
hives-page-as-it-stood = As it stood on { DAY($on) }, the day of the yard's count. What is not said is taken as usual for its kind.
hives-page-add-it = Add it
hives-page-name = Name
hives-page-kind = Kind of hive
hives-page-bees = Bees
hives-page-food = Food
