//! The yard file and its notes, read and changed.

mod another;
mod any_input;
mod autumn;
mod change;
mod demo;
mod faults;
mod indoors;
mod past;
mod quick_start;
mod shut;
mod standards;
mod treatments;
mod visits;
mod words;

/// A part of a fault in British words.
fn said(part: &snowhum_say::Message) -> String {
    snowhum_say::Tongue::BRITISH.say(part)
}
