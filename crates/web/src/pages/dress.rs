//! A hive dressed by taps: each part with what can be chosen for it; what nobody said is assumed, and is grey.

use maud::{Markup, html};
use snowhum_apiary::ChosenDress;

use crate::view::Asked;

/// A part of a hive.
struct Part {
    /// As a yard file calls it.
    key: &'static str,
    name: &'static str,
    /// What is assumed where nothing is said.
    usual: &'static str,
    /// Each choice in words, and as a yard file has it.
    choices: &'static [(&'static str, &'static str)],
}

/// From the roof down.
const PARTS: [Part; 8] = [
    Part {
        key: "lid",
        name: "Lid",
        usual: "its usual board",
        choices: &[("50 mm foam", "foam 50 mm"), ("25 mm foam", "foam 25 mm"), ("straw", "straw 60 mm")],
    },
    Part {
        key: "board",
        name: "Candy over the bees",
        usual: "none",
        choices: &[
            ("board of 3 kg", "3 kg candy, rim 50 mm, hole 40 mm"),
            ("slab of 2 kg", "2 kg candy"),
            ("fondant, 2.5 kg", "2.5 kg fondant"),
        ],
    },
    Part {
        key: "boxes",
        name: "Boxes",
        usual: "as its kind winters",
        choices: &[("one deep", "deep"), ("two deep", "deep,deep")],
    },
    Part {
        key: "wrap",
        name: "Wrap",
        usual: "none",
        choices: &[("felt paper", "felt paper"), ("25 mm foam", "foam 25 mm"), ("surely none", "none")],
    },
    Part {
        key: "upper_hole",
        name: "Upper hole",
        usual: "none",
        choices: &[("20 mm", "20 mm"), ("25 mm", "25 mm"), ("surely none", "none")],
    },
    Part { key: "entrance", name: "Entrance", usual: "reduced", choices: &[("reduced", "reduced"), ("full", "full")] },
    Part {
        key: "guard",
        name: "Mouse guard",
        usual: "none",
        choices: &[("slot of 8 mm", "slot 8 mm"), ("holes of 9 mm", "holes 9 mm"), ("mesh of 6 mm", "mesh 6 mm")],
    },
    Part {
        key: "floor",
        name: "Floor",
        usual: "solid",
        choices: &[("solid", "solid"), ("open mesh", "open mesh"), ("mesh with tray", "mesh with tray")],
    },
];

/// The word of one who has not looked in: it stands chosen until a keeper taps.
pub(super) const NOT_LOOKED_AT: &str = "not looked at";

/// How a word is shown that says nothing: grey.
pub(super) fn unsaid(word: &str) -> Option<&'static str> {
    (word == NOT_LOOKED_AT).then_some("unasked")
}

/// The dress that a form says; `before` goes before the name of each field.
pub(super) fn typed(form: &Asked, before: &str) -> ChosenDress {
    ChosenDress::of(|key| form.get(&format!("{before}{key}")).unwrap_or_default().to_owned())
}

/// What was said of a dress that is not shown.
pub(super) fn carried(dress: &ChosenDress, before: &str) -> Markup {
    html! {
        @for (key, chosen) in dress.keys().into_iter().filter(|(_, chosen)| !chosen.is_empty()) {
            input type="hidden" name={ (before) (key) } value=(chosen);
        }
    }
}

/// Every part with its choices and what is wrong with it.
pub(super) fn parts(dress: &ChosenDress, before: &str, wrong: impl Fn(&str) -> Option<String>) -> Markup {
    let keys = dress.keys();
    let chosen = |key: &str| keys.iter().find(|(known, _)| *known == key).map_or("", |(_, chosen)| chosen);
    html! {
        @for part in &PARTS {
            (part.shown(&format!("{before}{}", part.key), chosen(part.key)))
            @if let Some(says) = wrong(part.key) { p class="caution" id={ (before) (part.key) ".wrong" } { (says) } }
        }
    }
}

impl Part {
    fn shown(&self, name: &str, chosen: &str) -> Markup {
        html! {
            fieldset class="choices" id=(name) tabindex="-1" {
                legend { (self.name) }
                label class="unasked" { input type="radio" name=(name) value="" checked[chosen.is_empty()]; span { (self.usual) ", assumed" } }
                @for (words, value) in self.choices {
                    label { input type="radio" name=(name) value=(value) checked[chosen == *value]; span { (words) } }
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_part_is_a_key_of_a_yard_file_and_every_choice_reads() {
        let yard = snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0;
        for part in &PARTS {
            for (words, value) in part.choices {
                let of = |key: &str| if key == part.key { (*value).to_owned() } else { String::new() };
                let another = snowhum_apiary::AnotherHive {
                    name: "Maple".to_owned(),
                    kind: "Langstroth 10".to_owned(),
                    strength: NOT_LOOKED_AT.to_owned(),
                    food: NOT_LOOKED_AT.to_owned(),
                    dress: ChosenDress::of(of),
                };
                assert!(another.dress.is_said(), "{}", part.key);
                assert!(yard.with_another(&another).is_ok(), "{}: {words}", part.name);
            }
        }
    }
}
