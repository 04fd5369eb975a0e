## A caution whose own words cannot be read.

cautions-title = Take care
cautions-says = The label, local law, the { -bee-inspector } and the vet come first.
