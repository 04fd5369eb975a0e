## Why a text is not the quantity it should be.

quantity-empty = nothing is written here; write a number and a unit, such as "{ $example }"
quantity-no-number = "{ $text }" does not start with a number; write one with its unit, such as "{ $example }"
quantity-no-unit = "{ $text }" has no unit; write "{ $text } { $metric }" or "{ $text } { $us }"
quantity-two-readings = "{ $text }" can be read two ways; write "{ $decimal }" or "{ $whole }"
quantity-unknown-unit = "{ $unit }" is no unit of { $of ->
    [length] length
    [area] area
    [volume] volume
    [temperature] temperature
    [speed] speed
    [angle] angle
   *[mass] mass
}; write one of { $units }, such as "{ $example }"
