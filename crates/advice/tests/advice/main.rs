//! What is told, each promise by its name.

mod at_the_hive;
mod background;
mod calendar;
mod common;
mod deadout;
mod demo;
mod examined;
mod feed;
mod film;
mod fit;
mod indoors;
mod jobs;
mod lessons;
mod losses;
mod mite_counts;
mod mite_season;
mod mites;
mod now;
mod queens;
mod real_winters;
mod setup;
mod spring;
mod weigh;
