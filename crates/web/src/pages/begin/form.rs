//! The form of a yard begun.

use maud::{Markup, html};
use snowhum_apiary::{Combs, QuickFault, SizedWord, food_words, standards, strength_words, towns};
use snowhum_picture::PlateWidth;
use snowhum_say::{Message, Tongue, begin_page as text};
use snowhum_units::System;

use super::typed::{TOWN, Typed, TypedHive};
use crate::pages::dress;
use crate::view::View;
use crate::{draw, section};

/// Where on the page the field of a fault is.
pub(super) fn id(fault: &QuickFault) -> String {
    fault.hive.map_or_else(|| fault.field.to_owned(), |at| format!("{at}.{}", fault.field))
}

/// What a fault says, after whose it is.
pub(super) fn whose(fault: &QuickFault, typed: &Typed) -> Message {
    match fault.hive.and_then(|at| Some((at, typed.hives.get(at)?))) {
        Some((at, hive)) => text::whose(&fault.says, name(at, hive)),
        None => (&fault.says).into(),
    }
}

/// A hive's name, or its number where it has none.
fn name(at: usize, hive: &TypedHive) -> Message {
    if hive.name.is_empty() { text::hive(at + 1) } else { (&hive.name).into() }
}

pub(super) fn form(view: &View, typed: &Typed, faults: &[QuickFault]) -> Markup {
    let own = &typed.own;
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let height = if view.settings.system == System::Us { "ft" } else { "m" };
    let field = |name, asks: Message, value: &str| Field { tongue, faults, hive: None, name }.text(&say(asks), value);
    html! {
        script type="module" src="/dress.js" {}
        form method="post" action="/begin" data-dress="" {
            // What the Enter key presses.
            button class="unseen" name="do" value="keep" tabindex="-1" { (say(text::begin())) }
            input type="hidden" name="hives" value=(typed.hives.len());
            (field("name", text::name(), &own.name))
            (Field { tongue, faults, hive: None, name: "as_of" }.day(&say(text::last_looked()), &own.as_of))
            (town(typed, faults, tongue))
            details open[!own.latitude.is_empty() || !own.zone.is_empty() || !own.elevation.is_empty()] {
                summary { (say(text::far())) }
                div class="stack" {
                    (field("latitude", text::latitude(), &own.latitude))
                    (field("longitude", text::longitude(), &own.longitude))
                    (field("elevation", text::elevation(height), &own.elevation))
                    (field("zone", text::zone(), &own.zone))
                }
            }
            @for (at, hive) in typed.hives.iter().enumerate() { (hive_form(view, (at, typed), hive, faults)) }
            div class="taps" {
                button name="do" value="more" { (say(text::add())) }
                @if typed.hives.len() > 1 { button name="do" value="fewer" { (say(text::fewer())) } }
            }
            div class="taps" {
                @if view.apiary.invented { button class="main" name="do" value="keep" { (say(text::begin())) } }
                button name="do" value="file" { (say(text::save())) }
            }
        }
    }
}

fn town(typed: &Typed, faults: &[QuickFault], tongue: Tongue) -> Markup {
    let field = Field { tongue, faults, hive: None, name: TOWN };
    let towns = || towns().iter().enumerate();
    let mut countries: Vec<&str> = towns().map(|(_, town)| town.country.as_str()).collect();
    countries.dedup();
    html! {
        label for=(TOWN) { (tongue.say(&text::town())) }
        select id=(TOWN) name=(TOWN) aria-describedby=[field.described()] aria-invalid=[field.invalid()] {
            option value="" { (tongue.say(&text::choose())) }
            @for country in countries {
                optgroup label=(country) {
                    @for (at, town) in towns().filter(|(_, town)| town.country == country) {
                        option value=(at) selected[typed.town == at.to_string()] { (town.name) }
                    }
                }
            }
        }
        (field.told())
    }
}

fn hive_form(view: &View, (at, typed): (usize, &Typed), hive: &TypedHive, faults: &[QuickFault]) -> Markup {
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let weight = if view.settings.system == System::Us { "lb" } else { "kg" };
    let field = |name| Field { tongue, faults, hive: Some(at), name };
    let is_counted = [&hive.frames, &hive.weight].iter().any(|typed| !typed.is_empty());
    html! {
        fieldset class="round-hive" {
            legend { (say(name(at, hive))) }
            div class="stack" {
                (field("name").text(&say(text::hive_name()), &hive.name))
                div { (kind(&field("kind"), &hive.kind, tongue)) }
            }
            @if typed.hives.len() > MOST_DRAWN { (dress::carried(&hive.dress, &format!("{at}."))) } @else {
                (dressed(view, at, typed))
                details open[hive.dress.is_said()] {
                    summary { (say(text::dress())) }
                    (dress::parts(&hive.dress, &format!("{at}."), |key| wrong_with(key, at, faults, tongue), tongue))
                    button name="do" value="look" { (say(text::show())) }
                }
            }
            (words(&field("strength"), &say(text::bees()), strength_words(), &hive.strength))
            (words(&field("food"), &say(text::food()), food_words(), &hive.food))
            div class="stack" {
                (field("mites").text(&say(text::mites()), &hive.mites))
                (field("mites_of").text(&say(text::mites_of()), &hive.mites_of))
            }
            details open[is_counted] {
                summary { (say(text::counted())) }
                div class="stack" {
                    (field("frames").text(&say(text::frames()), &hive.frames))
                    (field("weight").text(&say(text::weight(weight)), &hive.weight))
                    (field("mites_on").day(&say(text::mites_on()), &hive.mites_on))
                }
            }
        }
    }
}

/// Hives up to which each is drawn and dressed here, so that the page of a long row stays light; of a longer one
/// each is dressed on its own page.
const MOST_DRAWN: usize = 12;

/// The hive as it stands so far.
fn dressed(view: &View, at: usize, typed: &Typed) -> Markup {
    let tongue = view.tongue();
    let is_drawn = typed.hives.len() <= MOST_DRAWN;
    let drawn =
        is_drawn.then(|| typed.dressed(at, &view.apiary)).flatten().map(|housed| section::dressed(&housed, tongue));
    html! {
        @if let Some(hive) = drawn {
            figure class="plate dressed" { (draw::bare(&hive.cutaway_of_dress(PlateWidth::Phone), &format!("dressed{at}"))) }
        }
    }
}

fn wrong_with(key: &str, at: usize, faults: &[QuickFault], tongue: Tongue) -> Option<String> {
    faults.iter().find(|fault| fault.hive == Some(at) && fault.field == key).map(|fault| tongue.sentence(&fault.says))
}

fn kind(field: &Field<'_>, chosen: &str, tongue: Tongue) -> Markup {
    let id = field.id();
    html! {
        label for=(id) { (tongue.say(&text::kind())) }
        select id=(id) name=(id) aria-describedby=[field.described()] aria-invalid=[field.invalid()] {
            @for standard in standards() { option selected[standard.name == chosen] { (standard.name) } }
        }
        (field.told())
    }
}

/// Big targets with the words that a fact is told in.
fn words(field: &Field<'_>, asks: &str, words: &[SizedWord], chosen: &str) -> Markup {
    let id = field.id();
    let known = words.iter().filter(|row| row.combs == Combs::OneBox);
    html! {
        fieldset class="choices" id=(id) tabindex="-1" aria-describedby=[field.described()] {
            legend { (asks) }
            @for row in known {
                label class=[dress::unsaid(&row.word)] { input type="radio" name=(id) value=(row.word) checked[row.word == chosen]; span { (field.tongue.say(&row.message())) } }
            }
        }
        (field.told())
    }
}

/// A field with what is wrong with it.
struct Field<'a> {
    tongue: Tongue,
    faults: &'a [QuickFault],
    hive: Option<usize>,
    name: &'static str,
}

impl Field<'_> {
    fn id(&self) -> String {
        self.hive.map_or_else(|| self.name.to_owned(), |at| format!("{at}.{}", self.name))
    }

    fn says(&self) -> Option<String> {
        let found = self.faults.iter().find(|fault| fault.hive == self.hive && fault.field == self.name);
        found.map(|fault| self.tongue.sentence(&fault.says))
    }

    fn described(&self) -> Option<String> {
        self.says().map(|_| format!("{}.wrong", self.id()))
    }

    fn invalid(&self) -> Option<&'static str> {
        self.says().map(|_| "true")
    }

    fn told(&self) -> Markup {
        html! { @if let Some(says) = self.says() { p class="caution" id={ (self.id()) ".wrong" } { (says) } } }
    }

    fn text(&self, asks: &str, value: &str) -> Markup {
        self.input("text", asks, value)
    }

    fn day(&self, asks: &str, value: &str) -> Markup {
        self.input("date", asks, value)
    }

    fn input(&self, kind: &str, asks: &str, value: &str) -> Markup {
        let id = self.id();
        html! {
            div {
                label for=(id) { (asks) }
                input type=(kind) id=(id) name=(id) value=(value) maxlength="60" autocomplete="off"
                    aria-describedby=[self.described()] aria-invalid=[self.invalid()];
                (self.told())
            }
        }
    }
}
