## What is missing of a hive that is chosen and typed on a page.

quick-fault-name = give it a name
quick-fault-same-name = another hive has this name; give each its own
quick-fault-as-of = say on what day you last looked, such as 2025-10-05
quick-fault-latitude = choose a town, or write degrees north, such as 61.7
quick-fault-longitude = choose a town, or write degrees east, such as 27.3
quick-fault-elevation = choose a town, or write the height above the sea, such as 105 m
quick-fault-zone = choose a town, or write the time zone by its city, such as Europe/Helsinki
quick-fault-kind = choose the kind of hive
quick-fault-strength = say how many bees: weak, middling or strong, or the frames they cover
quick-fault-food = say how much food: light, fair or heavy, or its weight without hive and bees
quick-fault-mites = write the mites found in the sample; 0 if there were none
quick-fault-mites-of = write the bees in the sample, such as 300
