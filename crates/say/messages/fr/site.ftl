## Ce qui est habituel en un lieu.

site-cold-country = un pays froid
site-cool-country = un pays frais
site-mild-country = un pays doux

site-winter-bees = On admet que les abeilles d’hiver éclosent ici vers le { DAY($middle) } : vers le 20 septembre à Winnipeg, où cela a été mesuré, et ailleurs d’autant plus tôt ou plus tard que l’automne se refroidit (jugement).
site-sick-mites = { NUMBER($rate, digits: 1) } varroas pour 100 abeilles à son dernier comptage : des virus viennent avec eux

site-feeding-custom = L’usage ({ $region }) : { $says }. Le jour sûr est ici plus tôt : c’est celui où le sirop donné jusque-là est descendu et operculé neuf années sur dix ; la plupart des années, les abeilles en prennent encore plus tard, et ce qu’elles n’operculent pas fermente
site-top-feeder = un nourrisseur couvre-cadres sur tout le corps
site-frame-feeder = un nourrisseur-cadre
site-jar = un bocal ou un seau sur un trou
