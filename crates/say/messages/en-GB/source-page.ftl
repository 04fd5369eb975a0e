## The page "Where the figures come from".

source-page-heading = Where the figures come from
source-page-lede = Every figure the answers stand on: read in a named publication, common practice, recalled, or our own judgement.
source-page-find = Look for
source-page-look = Look
source-page-file = { $title }, { NUMBER($figures) }
source-page-low = One in ten below
source-page-high = One in ten above
source-page-varies = Each computed hive draws its own
source-page-value = Value
source-page-unit = Unit
source-page-status = Status
source-page-source = Source
source-page-all = All figures
