## De quoi une colonie peut finir.

ends-starved = famine
ends-beside-food = famine à côté des provisions
ends-too-small = trop petite ou trop froide
ends-queen = reine défaillante
ends-mites = varroas
ends-other = pertes ordinaires
