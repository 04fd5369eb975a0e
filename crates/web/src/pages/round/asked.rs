//! What the round asks at a hive: answers to tap and figures to type.

use maud::{Markup, html};
use snowhum_apiary::Entry;
use snowhum_say::{Text, Tongue, round_page as text};
use snowhum_units::System;

/// An answer to tap, and what it is written as.
type Answer = (Text, &'static str);

/// One question of the round: what is asked, the field, and each answer with what it is written as.
pub(crate) struct Question {
    pub(crate) asks: Text,
    pub(crate) field: &'static str,
    pub(crate) answers: &'static [Answer],
}

impl Question {
    /// Whether it is asked at a hive with an upper hole alone.
    pub(crate) fn is_of_hole(&self) -> bool {
        matches!(self.field, "hole" | "upper")
    }

    /// What stands chosen until a keeper taps: nothing of it is stored.
    fn unasked(&self) -> Text {
        match self.field {
            "poke" => text::untried,
            _ => text::unasked,
        }
    }

    /// Its answers at a hive: indoors without what nobody can see there.
    pub(crate) fn answers(&self, indoors: bool) -> Vec<Answer> {
        let is_seen = |written: &str| {
            let read = Entry::read(written, &|_| None);
            !matches!(read, Ok(Entry::Sign(sign)) if !sign.is_seen_indoors())
        };
        self.answers.iter().copied().filter(|(_, written)| !indoors || is_seen(written)).collect()
    }

    /// The question under this name, with its answers to tap; nothing where none of them can be given.
    pub(crate) fn shown(&self, name: &str, indoors: bool, tongue: Tongue) -> Markup {
        self.shown_as(name, indoors, None, tongue)
    }

    /// The same, with the answer that was tapped before.
    pub(crate) fn shown_as(&self, name: &str, indoors: bool, chosen: Option<&str>, tongue: Tongue) -> Markup {
        let answers = self.answers(indoors);
        html! { @if !answers.is_empty() { (choices((self.asks, name), (self.unasked(), chosen), &answers, tongue)) } }
    }
}

/// Asked at every hive, in the order a keeper sees things.
pub(crate) const USUAL: [Question; 7] = [
    Question {
        asks: text::dead,
        field: "dead",
        answers: &[
            (text::dead_none, "dead=0"),
            (text::dead_few, "dead=1-5"),
            (text::dead_some, "dead=6-20"),
            (text::dead_many, "dead=21-100"),
            (text::dead_most, "dead=over 100"),
        ],
    },
    ENTRANCE,
    UPPER,
    Question {
        asks: text::rime,
        field: "hole",
        answers: &[
            (text::rime_new, "hole=new rime"),
            (text::rime_old, "hole=rime"),
            (text::rime_damp, "hole=damp"),
            (text::rime_dry, "hole=dry"),
        ],
    },
    Question {
        asks: text::hum,
        field: "hum",
        answers: &[(text::hum_heard, "hum=heard by ear"), (text::hum_silent, "hum=silent by ear")],
    },
    POKE,
    Question {
        asks: text::flight,
        field: "flight",
        answers: &[
            (text::flight_well, "flight=well"),
            (text::flight_thin, "flight=thin"),
            (text::flight_traffic, "flight=traffic"),
            (text::flight_none, "flight=none"),
        ],
    },
];

/// How the flight entrance stands, on the round and on a hive's own page.
pub(crate) const ENTRANCE: Question = Question {
    asks: text::entrance,
    field: "entrance",
    answers: &[
        (text::clear, "entrance=clear"),
        (text::blocked, "entrance=blocked"),
        (text::cleared, "entrance=cleared"),
        (text::drifted_over, "entrance=drifted over"),
        (text::iced, "entrance=iced"),
        (text::plugged, "entrance=plugged with bees"),
        (text::not_visible, "entrance=not visible"),
    ],
};

/// How the upper hole stands.
pub(crate) const UPPER: Question = Question {
    asks: text::upper,
    field: "upper",
    answers: &[
        (text::clear, "upper=clear"),
        (text::blocked, "upper=blocked"),
        (text::cleared, "upper=cleared"),
        (text::drifted_over, "upper=drifted over"),
        (text::iced, "upper=iced"),
        (text::plugged, "upper=plugged with bees"),
        (text::not_visible, "upper=not visible"),
    ],
};

/// The sign that settles it, on the round and on a hive's own page.
pub(crate) const POKE: Question = Question {
    asks: text::poke,
    field: "poke",
    answers: &[(text::poke_answered, "poke=answered"), (text::poke_silent, "poke=silent")],
};

/// Asked on a hive's own page.
pub(crate) const AT_A_HIVE: [Question; 3] = [ENTRANCE, UPPER, POKE];

/// Asked a tap further down.
pub(crate) const FURTHER: [Question; 6] = [
    Question {
        asks: text::pollen,
        field: "pollen",
        answers: &[(text::pollen_carried, "pollen=yes"), (text::pollen_none, "pollen=no")],
    },
    Question {
        asks: text::droppings,
        field: "droppings",
        answers: &[
            (text::droppings_snow, "droppings=on snow"),
            (text::droppings_hive, "droppings=on hive"),
            (text::droppings_none, "droppings=none"),
        ],
    },
    Question {
        asks: text::robbers,
        field: "robbers",
        answers: &[(text::yes, "robbers=yes"), (text::no, "robbers=no")],
    },
    Question { asks: text::wasps, field: "wasps", answers: &[(text::yes, "wasps=yes"), (text::no, "wasps=no")] },
    Question { asks: text::lid, field: "lid", answers: &[(text::lid_warm, "lid=warm"), (text::lid_cold, "lid=cold")] },
    Question {
        asks: text::heft,
        field: "heft",
        answers: &[(text::heft_light, "heft=light"), (text::heft_fair, "heft=fair"), (text::heft_heavy, "heft=heavy")],
    },
];

/// Typed figures: what is asked, the field, what goes before, and whether it is a mass.
pub(super) const TYPED: [(Text, &str, &str, Figure); 5] = [
    (text::depth, "depth", "snow=", Figure::Depth),
    (text::count, "count", "dead=", Figure::Count),
    (text::hook, "hook", "hook=", Figure::Count),
    (text::scale, "scale", "scale=", Figure::Mass),
    (text::side, "side", "side=", Figure::Mass),
];

/// The typed figures of a hive: indoors without the dead before it.
pub(crate) fn typed(indoors: bool) -> impl Iterator<Item = (Text, &'static str, &'static str, Figure)> {
    TYPED.into_iter().filter(move |(_, field, ..)| !indoors || !matches!(*field, "count" | "depth"))
}

/// What a typed figure is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Figure {
    Count,
    Mass,
    Depth,
}

impl Figure {
    pub(crate) const fn unit(self, system: System) -> &'static str {
        match (self, system) {
            (Self::Count, _) => "",
            (Self::Mass, System::Metric) => " kg",
            (Self::Mass, System::Us) => " lb",
            (Self::Depth, System::Metric) => " cm",
            (Self::Depth, System::Us) => " in",
        }
    }
}

impl Figure {
    /// The entry: a bare depth is in the keeper's small unit, a bare mass in the keeper's own.
    pub(crate) fn written(self, before: &str, typed: &str, system: System) -> String {
        let is_bare_depth = self == Self::Depth && snowhum_units::number(typed).is_ok();
        format!("{before}{typed}{}", if is_bare_depth { self.unit(system) } else { "" })
    }
}

/// Big targets of which one may be chosen; the first is that nobody looked.
pub(super) fn choices(
    (asks, name): (Text, &str),
    (unasked, chosen): (Text, Option<&str>),
    answers: &[Answer],
    tongue: Tongue,
) -> Markup {
    let say = |message: Text| tongue.say(&message());
    html! {
        fieldset class="choices" {
            legend { (say(asks)) }
            label class="unasked" { input type="radio" name=(name) value="" checked[chosen.is_none()]; span { "–" span class="unseen" { " " (say(unasked)) } } }
            @for (words, written) in answers {
                label { input type="radio" name=(name) value=(written) checked[chosen == Some(*written)]; span { (say(*words)) } }
            }
        }
    }
}
