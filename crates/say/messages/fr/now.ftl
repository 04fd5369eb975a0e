## Où en est une colonie.

now-moved-dead = abeilles mortes { $against } : { $usual }
now-moved-unexplained = ne correspond à rien que le modèle tenait pour possible ; pris avec réserve. Est-ce exact ?
now-moved-alive = en vie : de { NUMBER($before) } à { NUMBER($after) } sur 100
now-moved-food = nourriture de { MASS($before, digits: 1) } à { MASS($after, digits: 1) }
now-moved-queen = avec une reine : de { NUMBER($before) } à { NUMBER($after) } sur 100 des vivantes
now-moved-several = { LIST($ways) }
now-moved-noted = noté
now-moved-little = dit guère plus que ce qu’on savait
