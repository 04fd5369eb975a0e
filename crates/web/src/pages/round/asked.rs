//! What the round asks at a hive: answers to tap and figures to type.

use maud::{Markup, html};
use snowhum_apiary::{Entry, SignKind};
use snowhum_say::{Text, Tongue, round_page as text};
use snowhum_units::System;

/// An answer to tap, and how it is written behind the `=` of its field.
type Answer = (Text, &'static str);

/// When the round asks for a sign by answers to tap.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Round {
    /// At every hive, in the order a keeper sees things.
    Usual,
    /// A tap further down, in this order.
    Further(u8),
    Never,
}

/// A sign as a keeper is asked for it.
pub(crate) struct Question {
    kind: SignKind,
    /// What the sign is called.
    called: Text,
    pub(crate) asks: Text,
    pub(crate) field: &'static str,
    round: Round,
    answers: &'static [Answer],
}

impl Question {
    fn of(kind: SignKind) -> Self {
        use Round::{Further, Never, Usual};
        let (called, round, answers): (Text, Round, &'static [Answer]) = match kind {
            SignKind::DeadBees => (text::dead, Usual, DEAD),
            SignKind::Entrance => (text::entrance, Usual, OPENING),
            SignKind::UpperEntrance => (text::upper, Usual, OPENING),
            SignKind::UpperHole => (text::rime, Usual, RIME),
            SignKind::Hum => (text::hum, Usual, HUM),
            SignKind::Poke => (text::poke, Usual, POKE),
            SignKind::Flight => (text::flight, Usual, FLIGHT),
            SignKind::Pollen => (text::pollen, Further(0), POLLEN),
            SignKind::Droppings => (text::droppings, Further(1), DROPPINGS),
            SignKind::MeltedSnow => (text::melted_snow, Never, &[]),
            SignKind::Stripes => (text::stripes, Never, &[]),
            SignKind::Weight => (text::weight, Further(5), HEFT),
            SignKind::InsideTemperature => (text::inside, Never, &[]),
            SignKind::InsideHumidity => (text::humidity, Never, &[]),
            SignKind::ThermalSpot => (text::warm_spot, Never, &[]),
            SignKind::WarmUnderLid => (text::lid, Further(4), LID),
            SignKind::SnowAtBox => (text::depth, Never, &[]),
            SignKind::ClusterSeen => (text::bees_seen, Never, &[]),
            SignKind::Drones => (text::drones, Never, &[]),
            SignKind::DeadQueen => (text::queen_dead, Never, &[]),
            SignKind::LarvaeThrownOut => (text::larvae, Never, &[]),
            SignKind::CrumpledWings => (text::wings, Never, &[]),
            SignKind::Robbers => (text::robbers, Further(2), YES),
            SignKind::Wasps => (text::wasps, Further(3), YES),
            SignKind::Bird => (text::bird, Never, &[]),
            SignKind::Mouse => (text::mouse, Never, &[]),
            SignKind::Damage => (text::damage, Never, &[]),
            SignKind::Smell => (text::smell, Never, &[]),
            SignKind::SeenDead => (text::seen_dead, Never, &[]),
        };
        // A weight is tapped as the hand says it.
        let by_hand = (text::heft as Text, "heft");
        let (asks, field) = if kind == SignKind::Weight { by_hand } else { (called, kind.word()) };
        Self { kind, called, asks, field, round, answers }
    }

    /// Every one that is asked, in the order of the round.
    pub(crate) fn all() -> Vec<Self> {
        let mut asked: Vec<Self> = SignKind::ALL.iter().map(|kind| Self::of(*kind)).collect();
        asked.retain(|question| question.round != Round::Never);
        asked.sort_by_key(|question| question.round);
        asked
    }

    /// Those on a hive's own page.
    pub(crate) fn at_a_hive() -> [Self; 3] {
        [SignKind::Entrance, SignKind::UpperEntrance, SignKind::Poke].map(Self::of)
    }

    pub(crate) fn is_usual(&self) -> bool {
        self.round == Round::Usual
    }

    /// What the sign of a note is called.
    pub(crate) fn called(note: &str) -> Option<Text> {
        let Ok(Entry::Sign(sign)) = Entry::read(note, &|_| None) else { return None };
        Some(Self::of(sign.kind()).called)
    }

    /// Whether it is asked at a hive with an upper hole alone.
    pub(crate) fn is_of_hole(&self) -> bool {
        matches!(self.kind, SignKind::UpperHole | SignKind::UpperEntrance)
    }

    /// What stands chosen until a keeper taps: nothing of it is stored.
    fn unasked(&self) -> Text {
        if self.kind == SignKind::Poke { text::untried } else { text::unasked }
    }

    /// Its answers at a hive: indoors without what nobody can see there.
    pub(crate) fn answers(&self, indoors: bool) -> Vec<(Text, String)> {
        let is_seen = |written: &str| {
            let read = Entry::read(written, &|_| None);
            !matches!(read, Ok(Entry::Sign(sign)) if !sign.is_seen_indoors())
        };
        let all = self.answers.iter().map(|(words, how)| (*words, format!("{}={how}", self.field)));
        all.filter(|(_, written)| !indoors || is_seen(written)).collect()
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

const DEAD: &[Answer] = &[
    (text::dead_none, "0"),
    (text::dead_few, "1-5"),
    (text::dead_some, "6-20"),
    (text::dead_many, "21-100"),
    (text::dead_most, "over 100"),
];
const OPENING: &[Answer] = &[
    (text::clear, "clear"),
    (text::blocked, "blocked"),
    (text::cleared, "cleared"),
    (text::drifted_over, "drifted over"),
    (text::iced, "iced"),
    (text::plugged, "plugged with bees"),
    (text::not_visible, "not visible"),
];
const RIME: &[Answer] =
    &[(text::rime_new, "new rime"), (text::rime_old, "rime"), (text::rime_damp, "damp"), (text::rime_dry, "dry")];
const HUM: &[Answer] = &[(text::hum_heard, "heard by ear"), (text::hum_silent, "silent by ear")];
const POKE: &[Answer] = &[(text::poke_answered, "answered"), (text::poke_silent, "silent")];
const FLIGHT: &[Answer] = &[
    (text::flight_well, "well"),
    (text::flight_thin, "thin"),
    (text::flight_traffic, "traffic"),
    (text::flight_none, "none"),
];
const POLLEN: &[Answer] = &[(text::pollen_carried, "yes"), (text::pollen_none, "no")];
const DROPPINGS: &[Answer] =
    &[(text::droppings_snow, "on snow"), (text::droppings_hive, "on hive"), (text::droppings_none, "none")];
const LID: &[Answer] = &[(text::lid_warm, "warm"), (text::lid_cold, "cold")];
const HEFT: &[Answer] = &[(text::heft_light, "light"), (text::heft_fair, "fair"), (text::heft_heavy, "heavy")];
const YES: &[Answer] = &[(text::yes, "yes"), (text::no, "no")];

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
    answers: &[(Text, impl AsRef<str>)],
    tongue: Tongue,
) -> Markup {
    let say = |message: Text| tongue.say(&message());
    html! {
        fieldset class="choices" {
            legend { (say(asks)) }
            label class="unasked" { input type="radio" name=(name) value="" checked[chosen.is_none()]; span { "–" span class="unseen" { " " (say(unasked)) } } }
            @for (words, written) in answers {
                label { input type="radio" name=(name) value=(written.as_ref()) checked[chosen == Some(written.as_ref())]; span { (say(*words)) } }
            }
        }
    }
}
