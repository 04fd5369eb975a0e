## A hive changed in its winter, moved, or gone.

change-page-heading = Change { $hive }
change-page-lede = From the day it was done the hive is reckoned as it then stood; what was before stays.
change-page-or = Or
change-page-day = Day, if not today
change-page-keep = Keep it
change-page-back = Back to { $hive }
change-page-add = Add a hive
change-page-moved = moved to another stand
change-page-sold = its colony was sold
change-page-dead = its colony is dead
change-page-carried-into = carried into { $room }
change-page-carried-out = carried out
change-page-united = { -united } to { $hive }
