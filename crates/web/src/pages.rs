//! The pages, one handler a file.

pub(crate) mod apiary;
pub(crate) mod begin;
pub(crate) mod change;
pub(crate) mod dead;
pub(crate) mod feed;
pub(crate) mod fit;
pub(crate) mod flight;
pub(crate) mod hive;
pub(crate) mod hives;
pub(crate) mod import;
pub(crate) mod inside;
pub(crate) mod jobs;
pub(crate) mod losses;
pub(crate) mod mites;
pub(crate) mod normal;
pub(crate) mod notes;
pub(crate) mod paper;
pub(crate) mod round;
pub(crate) mod season;
pub(crate) mod settings;
pub(crate) mod setup;
pub(crate) mod sheet;
pub(crate) mod source;
pub(crate) mod spring;
pub(crate) mod tell;
pub(crate) mod treatments;
pub(crate) mod weigh;
pub(crate) mod words;

mod action;
mod done;
mod dress;
mod hive_figures;
mod lifting;
mod note_form;
mod questions;
mod signs;
