## The page on which a new autumn begins.

season-page-heading = A new autumn
season-page-lede = The colonies were counted last on { DAY($counted, style: "full") }. Count those that live; their hives stay as they are. The winter of { NUMBER($year) } is kept, with its losses as they are.
season-page-gone = Left out, as noted: { LIST($colonies) }.
season-page-mend = To be mended
season-page-day = The day you looked
season-page-new = A hive that is new
season-page-begin = Begin this autumn

# Weak, middling, strong, laying and the like are words the program reads.
season-page-bees = Frames of bees, or weak, middling, strong
season-page-food = Food, or light, fair, heavy, { $unit }
season-page-mites = Mites, if you counted
season-page-queen = Queen, if you looked
season-page-is-gone = It is dead, sold or { -united }

season-page-invented = The invented yard has one winter; begin a yard of your own.
