## The page "Settings".

settings-page-heading = Settings
settings-page-kept = Kept.
settings-page-units = Units
settings-page-metric = kilograms, °C
settings-page-us = pounds, °F
settings-page-language = Language
settings-page-unread = German and French have not been read by a keeper of the tongue yet: cautions have their English text beside them there.
settings-page-currency = Currency
settings-page-colony = What a colony alive, fed and queenright in spring is worth
settings-page-keep = Keep
settings-page-records = Where the records lie
settings-page-records-at = In <code>{ $path }</code>. Every version of every note is kept there.
settings-page-records-nowhere = In memory alone: they are gone when the program ends. Start it with --store to keep them.
settings-page-import = Notes from a spreadsheet

settings-page-wrong-units = Units are metric or us.
settings-page-wrong-language = Language is one of en-GB, en-US, de and fr.
settings-page-wrong-currency = Write the currency in at most 8 letters.
settings-page-wrong-colony = Write the worth of a colony as a number, such as 180.
settings-page-wrong-yard = Only an invented yard can be looked at on another day; start the program with --as-of.
settings-page-wrong-day = Name a day such as 2026-02-07.
settings-page-wrong-before = That day lies before the colonies were counted.
