## Qui a répondu à une enquête sur les pertes, et de quelles sortes elles étaient.

losses-survey-states-2013 = États-Unis ; la moyenne des taux propres des apiculteurs était de 44,8
losses-survey-world-2015 = 29 pays, 421 238 colonies
losses-survey-world-2015-of = 7,6 mortes ou vides, 4,4 ennuis de reine
losses-survey-world-2016 = 30 pays, 425 762 colonies
losses-survey-world-2016-of = 14,1 mortes ou vides, 5,1 ennuis de reine, 1,6 désastre
losses-survey-world-2018 = 35 pays, 738 233 colonies ; pays isolés 5,8 à 32,0
losses-survey-world-2018-of = 10,7 mortes ou vides, 4,1 ennuis de reine, 1,9 désastre
losses-survey-canada-2022 = Canada ; la moyenne de 2007 à 2022 était de 27,0
losses-survey-canada-2022-of = dans l’ordre : varroas et virus, faibles en automne, faim
