## Where a hive stands that winters indoors, and what its room asks for; no capitals, no stops.

indoors-degrees = { TEMPERATURE($air) }
indoors-air = { LIST($ends, alike: "once", between: " to ") }
indoors-since = in { $room } since { DAY($from) }; { $air } in there; no day out is written
indoors-since-until = in { $room } since { DAY($from) }, to come out on { DAY($until) }; { $air } in there
indoors-by-plan = in { $room } since { DAY($from) } by the plan; { $air } in there; note "carried=into { $room }" with the day it went in
indoors-by-plan-until = in { $room } since { DAY($from) } by the plan, to come out on { DAY($until) }; { $air } in there; note "carried=into { $room }" with the day it went in
indoors-to-go = to go into { $room } on { DAY($from) }; { $air } in there; no day out is written
indoors-to-go-until = to go into { $room } on { DAY($from) } and come out on { DAY($until) }; { $air } in there

indoors-warm = { $room } is too warm at { TEMPERATURE($air) }: bees stir, eat and begin brood; let in night air, keep it at { $best }, and carry out early if it stays warm
indoors-cold = { $room } is cold at { TEMPERATURE($air) }: it saves little food; { $best } is best, but never shut off its air
indoors-light = light comes into { $room }: bees fly to it and are lost; darken it, and use a red lamp
indoors-damp = { $room } is damp: combs grow mouldy; more air through it
indoors-dry = { $room } is dry: bees grow thirsty and stir; wet its { -floor }
