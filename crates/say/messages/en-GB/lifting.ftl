## What to do about a box, by its lifting index.

lifting-one = one person can lift it, close to the body and without turning
lifting-two = about { NUMBER($index, digits: 1) } times what one person should lift: take frames out or get a second pair of hands
lifting-never = about { NUMBER($index, digits: 1) } times what one person should lift: never whole, take the frames out first
lifting-nobody = too high to be lifted by anybody: take the frames out where it stands
