## What is usual or a rule somewhere, for an entry of a table by its name.

usual-bees-finland = about 20,000 bees; a fifth either way is judgement
usual-bees-ontario = 7 to 8 frames of bees in a full-size colony
usual-bees-minnesota-and-wisconsin = 10 frames of bees or more, in three deeps; the ideal of the northern United States is 32,000 to 40,000 (Farrar)
usual-bees-cold-countries = 8 full-size seams and more are good; 6 to 7 are marginal
usual-bees-cool-countries = 7 full-size seams and more are good; 5 to 6 are marginal
usual-bees-mild-countries = 6 full-size seams are fine
usual-bees-nuclei-in-cold-countries = 4 to 5 full seams, beside or over a strong colony
usual-bees-nuclei-in-cool-countries = 3 and a half to 5 full seams, beside or over a strong colony
usual-bees-nuclei-in-mild-countries = prepared nuclei of 3 frames winter in mild coastal places

usual-mites-anywhere = 2 to 3 per 100
usual-mites-anywhere-from-10 = under 1 per 100 into winter; over 3 in autumn is suspect
usual-mites-anywhere-board = no one line: from 9 a day (Britain) to 30 a day (USDA)
usual-mites-united-states = 3 per 100; common practice thinks of it at 2
usual-mites-united-states-board = 30 a day
usual-mites-florida = over 3 per 100
usual-mites-california = hold at 2 or less; viruses bite by 5
usual-mites-california-from-3 = 1 per 100 in early April grows past return by September
usual-mites-saskatchewan = over 1 per 100, consider treating
usual-mites-ontario-from-4 = 2 per 100 in spring
usual-mites-ontario-from-7 = 3 per 100 from August
usual-mites-ontario-board-from-4 = 9 a day in spring
usual-mites-ontario-board-from-7 = 12 a day from August
usual-mites-britain-board = over 9 a day at any time is severe
usual-mites-switzerland-board-from-6 = over 10 a day at the end of June: do not wait for the main summer treatment
usual-mites-switzerland-board-from-10 = over 5 a day from mid-October to mid-November: an extra treatment, and the winter one all the same

usual-stores-sweden-finland-and-norway-one = one box of bees: { MASS(16, unit: "no") }-{ MASS(18) } of winter feed; at least { MASS(15) } of sugar
usual-stores-sweden-finland-and-norway-two = two boxes: { MASS(20, unit: "no") }-{ MASS(25) } of winter feed
usual-stores-germany-and-neighbours = about { MASS(15) } where bees rest without brood from November to January, over { MASS(20) } in mild winters
usual-stores-britain-and-ireland-one = 20 kg (45 lb) for a single { -brood-box }
usual-stores-britain-and-ireland-two = 25 kg (55 lb) for brood and a half
usual-stores-ontario-and-quebec-one = the whole hive at 32 kg (70 lb) or more, single brood chamber; stores alone are not stated
usual-stores-ontario-and-quebec-two = the whole hive at 45 kg (100 lb) or more, double brood chamber; others ask for { MASS(61) }: rules contradict
usual-stores-minnesota-and-wisconsin = 75-95 lb (34-43 kg) of stores in three deeps
usual-stores-canada-two = 70 lb (32 kg) of stores in a double deep
usual-stores-canada-one = 55 lb (25 kg) of stores in a single deep
usual-stores-the-far-north-of-america = about 100 lb (45 kg) of stores
usual-stores-switzerland = { MASS(15, unit: "no") }-{ MASS(25) } of stores
usual-feeding-sweden-finland-and-norway = syrup is done by the end of August, and many feed on into September
usual-feeding-germany-and-neighbours = syrup is done by the middle of September in the Alps and by 1 October at the latest elsewhere
usual-feeding-southern-ontario = syrup is fed in the second half of September

usual-spring-the-canadian-prairie = in mid-March at { TEMPERATURE(0) } a cluster over six to eight frames is good, over two or three very weak
usual-spring-minnesota = in mid-March three to four full frames of bees are about right, to be split in May
