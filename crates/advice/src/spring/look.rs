//! What to look for when a hive is opened first, and what to do with a very weak one.

use super::answer::CheckItem;
use crate::cautions::Hazard;

/// Stands for the caution, which is written once.
const FOULBROOD: &str = "foulbrood";

/// What to look for, why, and what to do if it is not so; in the order of a few minutes.
const FIRST_LOOK: [(&str, &str, &str); 7] = [
    (
        "Before you open: do bees carry pollen in?",
        "A colony that carries pollen most likely has a laying queen; you may leave its brood alone today.",
        "No pollen while neighbours carry it: open this one first.",
    ),
    (
        "How many seams of bees, and where in the hive?",
        "Strength and place before anything is moved.",
        "None alive: close it at once against robbers, and look for foulbrood before anything is used again.",
    ),
    (
        "Food: one to two full combs beside the brood",
        "Brood eats most now, and cold days keep bees at home.",
        "Less than that: feed today, above or beside the cluster.",
    ),
    (
        "Eggs or young brood, in worker cells",
        "A queen was there three days ago; you need not see her.",
        "Only drone brood, or drones already in early spring: the queen is failing or gone; unite it if it is healthy.",
    ),
    ("Brood caps domed, dry and whole; larvae pearly", "What is catching shows in the brood first.", FOULBROOD),
    (
        "Droppings on combs and bars",
        "Long confinement or bad food; from outside nobody can tell nosema from it.",
        "Much of it: a sample to a laboratory, soiled combs out later.",
    ),
    (
        "Floor clear, no damp above the cluster",
        "The dead of winter mould and block the way. A little mould on outer combs is no harm: bees clean it.",
        "Change or scrape the floor; dry the lid.",
    ),
];

/// The first look.
pub(super) fn checklist() -> Vec<CheckItem> {
    let item = |(look_for, why, otherwise): &(&str, &str, &str)| CheckItem {
        look_for: (*look_for).to_owned(),
        why: (*why).to_owned(),
        otherwise: if *otherwise == FOULBROOD { Hazard::Foulbrood.says() } else { *otherwise }.to_owned(),
    };
    FIRST_LOOK.iter().map(item).collect()
}

/// A colony of very few bees.
pub(super) fn weak() -> Vec<String> {
    [
        "Find out why first. Never unite a sick colony: disease goes with it. Crumpled wings, spotty or sunken brood or \
         droppings all over mean do not unite.",
        "Make its room small: bees, brood and food on few combs behind a dummy board, entrance small, wrap and warm lid left \
         on.",
        "Two weak colonies do not make a strong one. A healthy weak one is put over a strong one with a sheet of newspaper \
         between, once bees fly most days; of two queens keep the better.",
        "Give no brood to warm and no stirring syrup beyond its strength; food straight beside its brood.",
    ]
    .map(str::to_owned)
    .to_vec()
}
