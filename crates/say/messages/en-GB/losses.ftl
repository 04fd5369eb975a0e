## A winter's losses.

losses-price = price of a colony
losses-season = worth of a season
losses-colonies = colonies
losses-none-at-risk = { NUMBER($all) } colonies less { NUMBER($removed) } sold or { -united } leave none at risk
losses-more-than-at-risk = { NUMBER($lost) } lost and { NUMBER($weak) } weak are more than the { NUMBER($at_risk) } colonies at risk
losses-winter-cannot-be = a winter with { NUMBER($lost) } lost of { NUMBER($at_risk) } colonies cannot be
losses-no-member = no member is given
losses-member-cannot-be = { $name }: { NUMBER($lost) } lost of { NUMBER($colonies) } colonies cannot be
losses-too-many = more colonies than there are

losses-quasi-binomial = quasi-binomial, dispersion not below 1
losses-exact-binomial = exact binomial

losses-luck = Luck alone fits any yearly rate from { NUMBER($low) } to { NUMBER($high) } %.
losses-luck-of-few = With { $hives ->
    [one] 1 hive
   *[other] { NUMBER($hives) } hives
} { $lost ->
    [0] no loss proves no method
    [one] one loss tells almost nothing about your method
   *[other] { NUMBER($lost) } losses tell little about your method
}: luck alone fits any yearly rate from { NUMBER($low) } to { NUMBER($high) } %.
losses-exact = Every hive was counted, so the rate is exact for this yard and this winter; ranges speak of luck, not of a sample.
losses-two-rates = Overall and average rate differ: small yards weigh as much as large ones in the average, and lose more often all or nothing.
losses-who-answers = Those who answer are seldom all members: those with losses, or with none, may keep silent.
losses-few-members = With so few members the range is wide for good reason.

losses-definition = Lost: no living bees, or too small to be a colony; or a queen problem that cannot be mended; or taken by a disaster. Weak but alive is not lost; { -united } with another is one fewer at risk, not a loss.

losses-sources-rates = case definitions and rates: van der Zee et al. 2013, J. Apic. Res. 52(4), COLOSS BEEBOOK survey methods 2.3 and 10.3.2; one apiary is a census: vanEngelsdorp et al. 2013
losses-sources-usual = usual rate 20 %: COLOSS 12.0 % (2015/16), 20.9 % (2016/17), 16.7 % (2018/19); Canada 27 % (mean of 2007 to 2022, CAPA); its weight of 20 colonies: judgement
losses-sources-intervals = intervals: Clopper and Pearson 1934, Wilson 1927, quasi-binomial logit

## What a yard's own winters say of losses to what nobody names.

losses-any-yard = Of 100 colonies well fed and with few mites, { $any } are lost over a middling winter in a yard like any other (8 chances in 10); none of your own winters is told yet.
losses-own-yard = Of 100 colonies well fed and with few mites, { $any } are lost over a middling winter in a yard like any other (8 chances in 10); after { $winters ->
    [one] your winter
   *[other] your { NUMBER($winters) } winters
} ({ NUMBER($lost) } of { NUMBER($at_risk) } lost so), { $own } in yours.
losses-doubt-left = That leaves { NUMBER($percent) } % of the doubt: hives of one yard share its luck and its winters, so that more winters say more than more hives; and a count never says why they died.
losses-no-cause = The record has no cause for { NUMBER($not_told) } of the { NUMBER($lost) }: mites or hunger may have been behind them, yet they count here.
losses-between = { $least } to { $most }
losses-in-100 = { $is_small ->
    [yes] { NUMBER($hives, digits: 1) }
   *[no] { NUMBER($hives) }
}

losses-sources-unnamed = lost to what nobody names: { $source } ({ $status })
losses-sources-by-year = its spread between years: { $source } ({ $status })
losses-sources-by-yard = its spread between yards: { $source } ({ $status })
losses-sources-left-out = left out: sizes of colonies (the figures are for one of 18,000 bees), and that years differ alike for neighbouring yards
