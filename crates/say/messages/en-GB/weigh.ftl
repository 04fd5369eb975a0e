## A hive weighed.

weigh-other = other weight (kg)
weigh-whole = the whole hive (kg)
weigh-left = the reading at the left (kg)
weigh-right = the reading at the right (kg)
weigh-width = width between the lift points (mm)
weigh-inset = inset of the supports (mm)
weigh-lift = height of the lift (mm)
weigh-centre = height of the centre of gravity (mm)
weigh-empty = the empty hive (kg)
weigh-bees = bees
weigh-frames = frames
weigh-reading = the reading (kg)
weigh-tips = lifted so far, such a hive would tip over; measure the lift again
weigh-too-light = the hive weighs less than empty with its bees; look at --tare, --bees and --other

weigh-two-sided = two-sided lift
weigh-scale = scale
weigh-one-side = one side: a trend
weigh-counted = frames counted

weigh-part-boxes = { NUMBER($count) } boxes, empty
weigh-part-frames = { NUMBER($count) } frames of drawn comb
weigh-part-floor = { -floor }
weigh-part-over = what lies over the frames
weigh-part-roof = { -roof }

weigh-lift-side = one side, as it was lifted
weigh-lift-waist = a full ten-frame deep at waist height
weigh-lift-low = the same from a low stand, turning
weigh-lift-box = box { NUMBER($place) } from below ({ $size }) on a stand of 40 cm (16 in)

weigh-no-food = No food can be told: give the empty hive with --tare, or its kind with --hive and --boxes.
weigh-wet = Wet wood adds 1 to 3 kg (2 to 7 lb), wet snow on the { -roof } 0.5 to 1 kg a centimetre (3 to 6 lb an inch): sweep it, or tell it as other weight.
weigh-brood = Brood and pollen weigh too: in spring the whole can hold while the food falls.
weigh-frozen = A hive frozen to its stand is not jerked: break the ice first, or wait.
weigh-off-middle = The load sits far off the middle: read both sides again to be sure of them.
weigh-side-no-weight = One side says no weight: with the middle of the load a tenth of the width off, twice the reading is 20 % wrong.
weigh-side-same = Lift the same side each time, from the same stand and to the same height, and go by the change.
weigh-side-both = For a weight lift both sides: --left and --right.

weigh-sources-lifting = lifting: Applications Manual for the Revised NIOSH Lifting Equation (1994, publication 94-110)
weigh-sources-sides = two sides: moments about the far support; errors of reading: judgement
weigh-sources-parts = empty hive: its sizes and wood; frames, comb and { -roof } from memory
weigh-sources-own = empty hive: your own figure
weigh-sources-bees = bees: about { MASS(2) } (Bee Craft, September 2016)
weigh-sources-comb = 0.32 ± 0.03 kg/dm² of comb capped on both sides: Swedish Beekeepers 0.30, Bienen-Zeitung wiki 0.35
