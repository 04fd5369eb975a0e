## Wer eine Umfrage zu Verlusten beantwortet hat, und welcher Art die Verluste waren.

losses-survey-states-2013 = Vereinigte Staaten; das Mittel der Verlustraten der einzelnen Imker war 44,8
losses-survey-world-2015 = 29 Länder, 421.238 Völker
losses-survey-world-2015-of = 7,6 tot oder leer, 4,4 Weiselprobleme
losses-survey-world-2016 = 30 Länder, 425.762 Völker
losses-survey-world-2016-of = 14,1 tot oder leer, 5,1 Weiselprobleme, 1,6 Unglück
losses-survey-world-2018 = 35 Länder, 738.233 Völker; einzelne Länder 5,8 bis 32,0
losses-survey-world-2018-of = 10,7 tot oder leer, 4,1 Weiselprobleme, 1,9 Unglück
losses-survey-canada-2022 = Kanada; das Mittel von 2007 bis 2022 war 27,0
losses-survey-canada-2022-of = der Reihe nach: Milben und Viren, im Herbst schwach, Hunger
