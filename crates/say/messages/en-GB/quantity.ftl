## Why a text is not the quantity it should be, and what would be right.

quantity-empty = nothing is written here
quantity-empty-right = write a number and a unit
quantity-no-number = "{ $text }" does not start with a number
quantity-no-number-right = write one with its unit
quantity-no-unit = "{ $text }" has no unit
quantity-no-unit-right = write "{ $text } { $metric }" or "{ $text } { $us }"
quantity-two-readings = "{ $text }" can be read two ways
quantity-two-readings-right = write "{ $decimal }" or "{ $whole }"
quantity-unknown-unit = "{ $unit }" is no unit of { $of ->
    [length] length
    [area] area
    [volume] volume
    [temperature] temperature
    [speed] speed
    [angle] angle
   *[mass] mass
}
quantity-unknown-unit-right = write one of { $units }
quantity-such-as = { $right }, such as "{ $example }"
