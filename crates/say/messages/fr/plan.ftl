## L’hiver à venir : jusqu’où il regarde, ce qu’il laisse de côté, à quel point il est sûr.

plan-goal-spring = printemps
plan-goal-without-flow = { DAY($last) } sans miellée
plan-without-flow = Les premières fleurs sont proches ou passées. La nourriture est comptée jusqu’au { DAY($last) } comme si aucune ne donnait rien : c’est le moins qu’il y aura, et les semaines froides ou humides il n’y a pas plus.

plan-no-nectar = Aucun nectar n’est compté à partir du { DAY($from) } : tant que les fleurs donnent, il manque à une ruche moins que ce qui est dit ici. Repeser quand la miellée est passée et le miel retiré, avant de nourrir.
plan-as-counted = Il porte sur les ruches telles qu’elles ont été comptées le { DAY($on) } : nourriture donnée et colonies réunies depuis n’y sont pas, mais bien dans leur état actuel.
plan-how-sure = À quel point c’est sûr : ajusté sur de vrais hivers, où des colonies comptées, nourries et traitées ont été perdues aussi, { NUMBER($least) } à { NUMBER($most) } sur 100, pour des causes que personne ne nomme ; années et ruchers diffèrent plus que les ruches (docs/VALIDATION.md, classe D).
