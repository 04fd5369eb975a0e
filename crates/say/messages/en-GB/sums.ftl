## Why a small sum cannot be done.

sums-out-of-range = { $what }: { NUMBER($value, digits: "all") } is outside { NUMBER($low, digits: "all") } to { NUMBER($high, digits: "all") }
sums-unknown = { $what } "{ $name }" is not known; known: { $known }
sums-table = the program's own table { $table } cannot be read: { $fault }

sums-hive = the hive
sums-hive-box = the box
sums-sign = the sign
