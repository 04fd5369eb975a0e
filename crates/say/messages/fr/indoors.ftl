## Où se trouve une ruche qui hiverne à l’intérieur, et ce que demande son local.

indoors-degrees = { TEMPERATURE($air) }
indoors-air = { LIST($ends, alike: "once", between: " à ") }
indoors-since = dans { $room } depuis le { DAY($from) } ; { $air } là-dedans ; aucun jour de sortie n’est écrit
indoors-since-until = dans { $room } depuis le { DAY($from) }, à sortir le { DAY($until) } ; { $air } là-dedans
indoors-by-plan = dans { $room } depuis le { DAY($from) } d’après le plan ; { $air } là-dedans ; noter « carried=into { $room } » avec le jour où elle a été rentrée
indoors-by-plan-until = dans { $room } depuis le { DAY($from) } d’après le plan, à sortir le { DAY($until) } ; { $air } là-dedans ; noter « carried=into { $room } » avec le jour où elle a été rentrée
indoors-to-go = à rentrer dans { $room } le { DAY($from) } ; { $air } là-dedans ; aucun jour de sortie n’est écrit
indoors-to-go-until = à rentrer dans { $room } le { DAY($from) } et à sortir le { DAY($until) } ; { $air } là-dedans

indoors-warm = { $room } : trop chaud à { TEMPERATURE($air) } : les abeilles s’agitent, mangent et commencent du couvain ; faire entrer l’air de la nuit, tenir à { $best }, et sortir tôt si cela reste chaud
indoors-cold = { $room } : froid à { TEMPERATURE($air) } : cela n’épargne que peu de nourriture ; { $best } est le mieux, mais ne jamais couper l’air
indoors-light = { $room } : la lumière entre : les abeilles volent vers elle et se perdent ; obscurcir, et prendre une lampe rouge
indoors-damp = { $room } : humide : les rayons moisissent ; y faire passer plus d’air
indoors-dry = { $room } : sec : les abeilles ont soif et s’agitent ; mouiller le sol
