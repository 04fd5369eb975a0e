## Hives that bees cannot leave.

sealed-refused = { $colony }: { $why }; { $remedy }
sealed-why = every entrance and hole is shut: bees can get out neither to void themselves nor to carry out their dead; { $air }
sealed-mesh = its { -mesh-floor } lets in air and no bee out (carbon dioxide about { NUMBER($percent, digits: 1) } % by volume)
sealed-foul = and the air grows foul: in calm air at freezing about { NUMBER($percent, digits: 1) } % carbon dioxide by volume round the bees, { NUMBER($outdoors, digits: 2) } % outdoors
# What is written after an equals sign is typed so in every language.
sealed-remedy = leave an entrance or an upper hole open, such as entrance=reduced or upper hole=25 mm
