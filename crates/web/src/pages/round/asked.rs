//! What the round asks at a hive: answers to tap and figures to type.

use maud::{Markup, html};
use snowhum_apiary::Entry;
use snowhum_units::System;

/// One question of the round: what is asked, the field, and each answer with what it is written as.
pub(crate) struct Question {
    pub(crate) asks: &'static str,
    pub(crate) field: &'static str,
    pub(crate) answers: &'static [(&'static str, &'static str)],
}

impl Question {
    /// Whether it is asked at a hive with an upper hole alone.
    pub(crate) fn is_of_hole(&self) -> bool {
        matches!(self.field, "hole" | "upper")
    }

    /// What stands chosen until a keeper taps: nothing of it is stored.
    const fn unasked(&self) -> &'static str {
        match self.field.as_bytes() {
            b"poke" => "not tried",
            _ => UNASKED,
        }
    }

    /// Its answers at a hive: indoors without what nobody can see there.
    pub(crate) fn answers(&self, indoors: bool) -> Vec<(&'static str, &'static str)> {
        let is_seen = |written: &str| {
            let read = Entry::read(written, &|_| None);
            !matches!(read, Ok(Entry::Sign(sign)) if !sign.is_seen_indoors())
        };
        self.answers.iter().copied().filter(|(_, written)| !indoors || is_seen(written)).collect()
    }

    /// The question under this name, with its answers to tap; nothing where none of them can be given.
    pub(crate) fn shown(&self, name: &str, indoors: bool) -> Markup {
        self.shown_as(name, indoors, None)
    }

    /// The same, with the answer that was tapped before.
    pub(crate) fn shown_as(&self, name: &str, indoors: bool, chosen: Option<&str>) -> Markup {
        let answers = self.answers(indoors);
        html! { @if !answers.is_empty() { (choices(self.asks, name, (self.unasked(), chosen), &answers)) } }
    }
}

pub(super) const UNASKED: &str = "did not look";
/// Said at a hive that stands indoors, on the round and on its sheet.
pub(crate) const INDOORS: &str = "Stands indoors: no flight, snow or rime to look for; its dead lie on its floor.";

/// Asked at every hive, in the order a keeper sees things.
pub(crate) const USUAL: [Question; 7] = [
    Question {
        asks: "Dead bees, new",
        field: "dead",
        answers: &[
            ("none", "dead=0"),
            ("1–5", "dead=1-5"),
            ("6–20", "dead=6-20"),
            ("21–100", "dead=21-100"),
            ("over 100", "dead=over 100"),
        ],
    },
    ENTRANCE,
    UPPER,
    Question {
        asks: "Rime at the upper hole",
        field: "hole",
        answers: &[("new rime", "hole=new rime"), ("rime", "hole=rime"), ("damp", "hole=damp"), ("dry", "hole=dry")],
    },
    Question {
        asks: "Hum, ear at the wall",
        field: "hum",
        answers: &[("heard", "hum=heard by ear"), ("silent", "hum=silent by ear")],
    },
    POKE,
    Question {
        asks: "Flying",
        field: "flight",
        answers: &[
            ("well", "flight=well"),
            ("thin", "flight=thin"),
            ("to and fro", "flight=traffic"),
            ("no bee", "flight=none"),
        ],
    },
];

/// How the flight entrance stands, on the round and on a hive's own page.
pub(crate) const ENTRANCE: Question = Question {
    asks: "Entrance",
    field: "entrance",
    answers: &[
        ("clear", "entrance=clear"),
        ("blocked", "entrance=blocked"),
        ("I cleared it", "entrance=cleared"),
        ("drifted over", "entrance=drifted over"),
        ("iced", "entrance=iced"),
        ("plugged with bees", "entrance=plugged with bees"),
        ("not visible", "entrance=not visible"),
    ],
};

/// How the upper hole stands.
pub(crate) const UPPER: Question = Question {
    asks: "Upper hole",
    field: "upper",
    answers: &[
        ("clear", "upper=clear"),
        ("blocked", "upper=blocked"),
        ("I cleared it", "upper=cleared"),
        ("drifted over", "upper=drifted over"),
        ("iced", "upper=iced"),
        ("plugged with bees", "upper=plugged with bees"),
        ("not visible", "upper=not visible"),
    ],
};

/// The sign that settles it, on the round and on a hive's own page.
pub(crate) const POKE: Question = Question {
    asks: "Poke at the hole or entrance",
    field: "poke",
    answers: &[("a bee answered", "poke=answered"), ("silent", "poke=silent")],
};

/// Asked on a hive's own page.
pub(crate) const AT_A_HIVE: [Question; 3] = [ENTRANCE, UPPER, POKE];

/// Asked a tap further down.
pub(crate) const FURTHER: [Question; 6] = [
    Question { asks: "Pollen", field: "pollen", answers: &[("carried in", "pollen=yes"), ("none", "pollen=no")] },
    Question {
        asks: "Droppings",
        field: "droppings",
        answers: &[("on snow", "droppings=on snow"), ("on the hive", "droppings=on hive"), ("none", "droppings=none")],
    },
    Question { asks: "Robbers", field: "robbers", answers: &[("yes", "robbers=yes"), ("no", "robbers=no")] },
    Question { asks: "Wasps", field: "wasps", answers: &[("yes", "wasps=yes"), ("no", "wasps=no")] },
    Question { asks: "Under the lid, by hand", field: "lid", answers: &[("warm", "lid=warm"), ("cold", "lid=cold")] },
    Question {
        asks: "Lifted by hand",
        field: "heft",
        answers: &[("light", "heft=light"), ("fair", "heft=fair"), ("heavy", "heft=heavy")],
    },
];

/// Typed figures: what is asked, the field, what goes before, and whether it is a mass.
pub(super) const TYPED: [(&str, &str, &str, Figure); 5] = [
    ("Snow against the box, over the ground", "depth", "snow=", Figure::Depth),
    ("Dead bees, counted", "count", "dead=", Figure::Count),
    ("Dead bees pulled out with a hook", "hook", "hook=", Figure::Count),
    ("Whole hive on a scale", "scale", "scale=", Figure::Mass),
    ("One side lifted, always the same", "side", "side=", Figure::Mass),
];

/// The typed figures of a hive: indoors without the dead before it.
pub(crate) fn typed(indoors: bool) -> impl Iterator<Item = (&'static str, &'static str, &'static str, Figure)> {
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
    asks: &str,
    name: &str,
    (unasked, chosen): (&str, Option<&str>),
    answers: &[(&str, &str)],
) -> Markup {
    html! {
        fieldset class="choices" {
            legend { (asks) }
            label class="unasked" { input type="radio" name=(name) value="" checked[chosen.is_none()]; span { "–" span class="unseen" { " " (unasked) } } }
            @for (words, written) in answers {
                label { input type="radio" name=(name) value=(written) checked[chosen == Some(*written)]; span { (words) } }
            }
        }
    }
}
