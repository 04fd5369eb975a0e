//! A hive dressed by taps: each part with what can be chosen for it; what nobody said is assumed, and is grey.

use maud::{Markup, html};
use snowhum_apiary::ChosenDress;
use snowhum_say::{Message, Text, Tongue, dress_page as text};

use crate::view::Asked;

/// A part of a hive.
struct Part {
    /// As a yard file calls it.
    key: &'static str,
    name: Text,
    /// What is assumed where nothing is said.
    usual: Text,
    /// Each choice in words, and as a yard file has it.
    choices: &'static [(Text, &'static str)],
}

/// From the roof down.
const PARTS: [Part; 8] = [
    Part {
        key: "lid",
        name: text::lid,
        usual: text::usual_board,
        choices: &[(text::foam_50, "foam 50 mm"), (text::foam_25, "foam 25 mm"), (text::straw, "straw 60 mm")],
    },
    Part {
        key: "board",
        name: text::board,
        usual: text::none,
        choices: &[
            (text::candy_board, "3 kg candy, rim 50 mm, hole 40 mm"),
            (text::slab, "2 kg candy"),
            (text::fondant, "2.5 kg fondant"),
        ],
    },
    Part {
        key: "boxes",
        name: text::boxes,
        usual: text::as_its_kind,
        choices: &[(text::one_deep, "deep"), (text::two_deep, "deep,deep")],
    },
    Part {
        key: "wrap",
        name: text::wrap,
        usual: text::none,
        choices: &[(text::felt, "felt paper"), (text::foam_25, "foam 25 mm"), (text::surely_none, "none")],
    },
    Part {
        key: "upper_hole",
        name: text::upper_hole,
        usual: text::none,
        choices: &[(text::hole_20, "20 mm"), (text::hole_25, "25 mm"), (text::surely_none, "none")],
    },
    Part {
        key: "entrance",
        name: text::entrance,
        usual: text::reduced,
        choices: &[(text::reduced, "reduced"), (text::full, "full")],
    },
    Part {
        key: "guard",
        name: text::guard,
        usual: text::none,
        choices: &[(text::slot, "slot 8 mm"), (text::holes, "holes 9 mm"), (text::mesh, "mesh 6 mm")],
    },
    Part {
        key: "floor",
        name: text::floor,
        usual: text::solid,
        choices: &[(text::solid, "solid"), (text::open_mesh, "open mesh"), (text::mesh_tray, "mesh with tray")],
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
pub(super) fn parts(
    dress: &ChosenDress,
    before: &str,
    wrong: impl Fn(&str) -> Option<String>,
    tongue: Tongue,
) -> Markup {
    let keys = dress.keys();
    let chosen = |key: &str| keys.iter().find(|(known, _)| *known == key).map_or("", |(_, chosen)| chosen);
    html! {
        @for part in &PARTS {
            (part.shown(&format!("{before}{}", part.key), chosen(part.key), tongue))
            @if let Some(says) = wrong(part.key) { p class="caution" id={ (before) (part.key) ".wrong" } { (says) } }
        }
    }
}

impl Part {
    fn shown(&self, name: &str, chosen: &str, tongue: Tongue) -> Markup {
        let say = |message: Message| tongue.say(&message);
        html! {
            fieldset class="choices" id=(name) tabindex="-1" {
                legend { (say((self.name)())) }
                label class="unasked" { input type="radio" name=(name) value="" checked[chosen.is_empty()]; span { (say(text::assumed((self.usual)()))) } }
                @for (words, value) in self.choices {
                    label { input type="radio" name=(name) value=(value) checked[chosen == *value]; span { (say(words())) } }
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
            for (_, value) in part.choices {
                let of = |key: &str| if key == part.key { (*value).to_owned() } else { String::new() };
                let another = snowhum_apiary::AnotherHive {
                    name: "Maple".to_owned(),
                    kind: "Langstroth 10".to_owned(),
                    strength: NOT_LOOKED_AT.to_owned(),
                    food: NOT_LOOKED_AT.to_owned(),
                    dress: ChosenDress::of(of),
                };
                assert!(another.dress.is_said(), "{}", part.key);
                assert!(yard.with_another(&another).is_ok(), "{}: {value}", part.key);
            }
        }
    }
}
