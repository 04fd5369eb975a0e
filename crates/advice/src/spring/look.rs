//! What to look for when a hive is opened first, and what to do with a very weak one.

use snowhum_say::{Message, spring as say};

use super::answer::CheckItem;
use crate::cautions::Hazard;

/// The first look: what to look for, why, and what to do if it is not so; in the order of a few minutes.
pub(super) fn checklist() -> Vec<CheckItem> {
    let items = [
        (say::look_pollen(), say::look_pollen_why(), say::look_pollen_else()),
        (say::look_seams(), say::look_seams_why(), say::look_seams_else()),
        (say::look_food(), say::look_food_why(), say::look_food_else()),
        (say::look_eggs(), say::look_eggs_why(), say::look_eggs_else()),
        (say::look_brood(), say::look_brood_why(), Hazard::Foulbrood.says()),
        (say::look_droppings(), say::look_droppings_why(), say::look_droppings_else()),
        (say::look_floor(), say::look_floor_why(), say::look_floor_else()),
    ];
    items.map(|(look_for, why, otherwise)| CheckItem { look_for, why, otherwise }).into()
}

/// A colony of very few bees.
pub(super) fn weak() -> Vec<Message> {
    vec![say::weak_why(), say::weak_room(), say::weak_unite(), say::weak_feed()]
}
