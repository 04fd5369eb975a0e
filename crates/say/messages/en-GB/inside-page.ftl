## The page "Inside the cluster", to be shared with who keeps no bees.

inside-page-heading = Inside the cluster
inside-page-lede = What happens to bees in winter?
inside-page-none = No living colony to tell of yet.

inside-page-ball = It is { DAY($on) }, { TEMPERATURE($air) } outside. In the hive called <strong>{ $hive }</strong> about { $bees } bees hang together in a ball { $size } across. They do not sleep.
inside-page-inches = { NUMBER($across) } inches
inside-page-centimetres = { NUMBER($across) } cm
inside-page-warmth = In the middle, as long as there is no brood, it is { TEMPERATURE($core) }; at the skin, where bees sit head inwards and shoulder to shoulder, { TEMPERATURE($skin) }. They warm it by trembling their flight muscles without moving their wings: { NUMBER($heat) } watts in all, { $bulb ->
    [less] less than
    [more] more than
   *[alike] about as much as
} one small light bulb. They do not heat the hive: { TEMPERATURE($below) } is the air below them.
inside-page-fuel = The fuel is food from the combs, { GRAMS($food, us: 1) } today. It leaves as { GRAMS($water, us: 1) } of water in the air they breathe out; a dry hive lets it go, a cold one catches it as frost. No bee leaves to relieve herself until a mild day comes.
inside-page-spring = When the days grow longer the queen lays again, the middle is held near { TEMPERATURE(35) } for the brood, and the food goes fastest just before the first flowers.
inside-page-figures = Figures are computed for this hive and this day; the last line is what keepers know and the model holds too.
inside-page-others = Other hives
