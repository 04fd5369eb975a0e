## Who answered a survey of losses, and of which kinds the losses were.

losses-survey-states-2013 = United States; the mean of the keepers' own rates was 44.8
losses-survey-world-2015 = 29 countries, 421,238 colonies
losses-survey-world-2015-of = 7.6 dead or empty, 4.4 queen problems
losses-survey-world-2016 = 30 countries, 425,762 colonies
losses-survey-world-2016-of = 14.1 dead or empty, 5.1 queen problems, 1.6 disaster
losses-survey-world-2018 = 35 countries, 738,233 colonies; single countries 5.8 to 32.0
losses-survey-world-2018-of = 10.7 dead or empty, 4.1 queen problems, 1.9 disaster
losses-survey-canada-2022 = Canada; the mean of 2007 to 2022 was 27.0
losses-survey-canada-2022-of = ranked: mites and viruses, weak in autumn, starvation
