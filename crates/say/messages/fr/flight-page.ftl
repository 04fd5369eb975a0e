## La page « Jour de vol ».

flight-page-heading = Jour de vol
flight-page-most-days = Les abeilles volent maintenant presque chaque jour.
flight-page-next = Le prochain est le plus probablement <strong>{ DAY($on, style: "weekday") }, { DAY($on, style: "marked") }</strong>, { $ahead ->
    [1] demain
   *[other] dans { NUMBER($ahead) } jours
} : les abeilles peuvent voler dans { $chance } des temps possibles.
flight-page-none = Aucun n’est probable d’ici dix jours.
flight-page-lede = Le premier jour doux et calme, les vivantes sortent. Une touche par ruche ; une seconde corrige la première.
flight-page-open-first = À ouvrir d’abord
flight-page-noted = Noté le { DAY($on) }.

flight-page-flew-well = a bien volé
flight-page-thin = peu
flight-page-did-not-fly = n’a pas volé
flight-page-soiled = a souillé la ruche
flight-page-pollen = pollen rentré

flight-page-wrong = Toucher un des mots à côté de la ruche.
