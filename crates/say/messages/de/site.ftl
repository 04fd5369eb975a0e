## Was an einem Standort üblich ist.

site-cold-country = Gegend mit kaltem Klima
site-cool-country = Gegend mit kühlem Klima
site-mild-country = Gegend mit mildem Klima

site-winter-bees = Es wird angenommen, dass die Winterbienen hier um den { DAY($middle) } schlüpfen: um den 20. September in Winnipeg, wo es gemessen wurde, und anderswo um so viel früher oder später, wie der Herbst abkühlt (Einschätzung).
site-sick-mites = { NUMBER($rate, digits: 1) } Milben auf 100 Bienen bei der letzten Zählung: mit ihnen kommen Viren

site-feeding-custom = Brauch ({ $region }): { $says }. Der sichere Tag hier liegt früher: es ist der, bis zu dem gefütterter Sirup in neun von zehn Jahren eingelagert und verdeckelt wird; in den meisten Jahren nehmen ihn die Bienen noch später, und was sie nicht verdeckeln, gärt
site-top-feeder = Futterzarge über der ganzen Beute
site-frame-feeder = Futtertasche
site-jar = Glas oder Eimer über einem Loch
