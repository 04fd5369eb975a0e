## Der kommende Winter: wie weit geschaut wird, was ausgelassen ist, wie sicher es ist.

plan-goal-spring = Frühjahr
plan-goal-without-flow = { DAY($last) } ohne Tracht
plan-without-flow = Die ersten Blüten sind nah oder vorbei. Das Futter wird bis zum { DAY($last) } gerechnet, als gäbe keine etwas: weniger wird es nicht, und in kalten oder nassen Wochen ist es nicht mehr.

plan-no-nectar = Ab dem { DAY($from) } wird kein Nektar gerechnet: solange Blüten noch etwas geben, fehlt einem Volk weniger, als hier steht. Wenn die Tracht vorbei und der Honig abgenommen ist, noch einmal wiegen, bevor gefüttert wird.
plan-as-counted = Es gilt für die Völker, wie sie am { DAY($on) } gezählt wurden: seither gegebenes Futter und vereinigte Völker stehen nicht darin, sondern darin, wo sie jetzt stehen.
plan-how-sure = Wie sicher: an wirkliche Winter angepasst, in denen auch gezählte, gefütterte und behandelte Völker verlorengingen, { NUMBER($least) } bis { NUMBER($most) } von 100 an Ursachen, die niemand benennt; Jahre und Stände unterscheiden sich mehr als Völker (docs/VALIDATION.md, Klasse D).
