## What is usual at a site.

site-cold-country = a cold country
site-cool-country = a cool country
site-mild-country = a mild country

site-winter-bees = Winter bees are taken to emerge about { DAY($middle) } here: about 20 September at Winnipeg, where it was measured, and elsewhere as much earlier or later as autumn cools (judgement).
site-sick-mites = { NUMBER($rate, digits: 1) } mites per 100 bees at its last count: viruses come with them

site-feeding-custom = By custom ({ $region }) { $says }. The safe day here is earlier: it is the one on which syrup fed until then is carried down and capped in nine years of ten; in most years bees still take it later, and what they do not cap ferments
site-top-feeder = a top feeder over the whole box
site-frame-feeder = a frame feeder
site-jar = a jar or pail over a hole
