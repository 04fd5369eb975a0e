## What is not fed, and why.

feed-never-brown-sugar = brown sugar, molasses, unrefined or organic sugar, maple syrup
feed-never-brown-sugar-why = what is not sugar in them gives dysentery
feed-never-unknown-honey = honey of unknown bees
feed-never-unknown-honey-why = it can carry foulbrood
feed-never-sour-syrup = syrup boiled, scorched, or soured with vinegar or cream of tartar
feed-never-sour-syrup-why = acid and heat make hydroxymethylfurfural, which poisons bees; some kitchen recipes say otherwise
feed-never-hard-honey = heather, honeydew, ivy or rape honey as the only winter stores
feed-never-hard-honey-why = they give dysentery, or set so hard that bees starve beside them
